using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Bearings;

/// <summary>How the film numbers at a Sommerfeld number are found.</summary>
public enum FilmMethod
{
    /// <summary>Reynolds equation solved for the bearing's own length.</summary>
    Reynolds,

    /// <summary>Raimondi and Boyd's tables read linearly in the Sommerfeld number, as textbooks do.</summary>
    Table,
}

/// <summary>A journal bearing under steady load.</summary>
/// <param name="Sommerfeld">Sommerfeld number.</param>
/// <param name="Eccentricity">Eccentricity ratio.</param>
/// <param name="LeastFilm">Least film thickness, m.</param>
/// <param name="FilmRatio">Least film over radial clearance.</param>
/// <param name="Attitude">Attitude angle, rad.</param>
/// <param name="Friction">Coefficient of friction.</param>
/// <param name="Loss">Friction power, W.</param>
/// <param name="Flow">Oil flow, m³/s.</param>
/// <param name="SideFlow">Oil flow over the ends, m³/s.</param>
/// <param name="PeakPressure">Greatest film pressure, Pa.</param>
/// <param name="TemperatureRise">Rise when the heat leaves with all of the flow, K.</param>
/// <param name="SideTemperatureRise">Rise when the side flow leaves half warmed, K.</param>
public readonly record struct JournalState(
    [Quantity("Sommerfeld number", Dimension.Number, Symbol = "S")] double Sommerfeld,
    [Quantity("eccentricity ratio", Dimension.Number, Symbol = "ε")] double Eccentricity,
    [Quantity("least film thickness", Dimension.Length, "µm", Symbol = "h0")] double LeastFilm,
    [Quantity("least film over radial clearance", Dimension.Number)] double FilmRatio,
    [Quantity("attitude angle", Dimension.Angle, "°", Symbol = "φ")] double Attitude,
    [Quantity("coefficient of friction", Dimension.Number, Symbol = "f")] double Friction,
    [Quantity("friction power", Dimension.Power, "W", Symbol = "Pf")] double Loss,
    [Quantity("oil flow", Dimension.VolumeFlow, "L/min", Symbol = "Q")] double Flow,
    [Quantity("side flow", Dimension.VolumeFlow, "L/min", Symbol = "Qs")] double SideFlow,
    [Quantity("greatest film pressure", Dimension.Pressure, "MPa", Symbol = "pmax")] double PeakPressure,
    [Quantity("temperature rise, all of the flow", Dimension.TemperatureDifference, "K", Symbol = "ΔT")] double TemperatureRise,
    [Quantity("temperature rise, side flow", Dimension.TemperatureDifference, "K", Symbol = "ΔTs")] double SideTemperatureRise);

/// <summary>Rise of the oil in a bearing.</summary>
/// <param name="AllFlow">When the heat leaves with all of the flow, K.</param>
/// <param name="SideFlow">When the side flow leaves half warmed, K.</param>
public readonly record struct OilRise(
    [Quantity("temperature rise, all of the flow", Dimension.TemperatureDifference, "K", Symbol = "ΔT")] double AllFlow,
    [Quantity("temperature rise, side flow", Dimension.TemperatureDifference, "K", Symbol = "ΔTs")] double SideFlow);

/// <summary>Steadily loaded plain journal bearings with dimensions.</summary>
public static class JournalBearing
{
    private const string Source = "Raimondi & Boyd, ASLE Trans. 1 (1958) 159-209; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., ch. 12";

    /// <summary>Sommerfeld number.</summary>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="speed">Journal speed, rad/s.</param>
    /// <param name="load">Load, N.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Bearing length, m.</param>
    /// <param name="clearance">Radial clearance, m.</param>
    [Formula("Sommerfeld number", "S = (D / (2 c))^2 μ w L D / (2 π W)", Source)]
    [return: Quantity("Sommerfeld number", Dimension.Number, Symbol = "S")]
    public static double Sommerfeld(
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("journal speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("load", Dimension.Force, "N", Symbol = "W", Above = 0)] double load,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bearing length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance)
    {
        var ratio = diameter / (2 * clearance);
        return ratio * ratio * viscosity * speed * length * diameter / (Math.Tau * load);
    }

    /// <summary>Viscosity that gives a wanted Sommerfeld number, Pa·s.</summary>
    /// <param name="sommerfeld">Wanted Sommerfeld number.</param>
    /// <param name="speed">Journal speed, rad/s.</param>
    /// <param name="load">Load, N.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Bearing length, m.</param>
    /// <param name="clearance">Radial clearance, m.</param>
    [Formula("viscosity for a Sommerfeld number", "μ = S (2 c / D)^2 2 π W / (w L D)", Source)]
    [return: Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ")]
    public static double ViscosityFor(
        [Quantity("Sommerfeld number", Dimension.Number, Symbol = "S", Above = 0)] double sommerfeld,
        [Quantity("journal speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("load", Dimension.Force, "N", Symbol = "W", Above = 0)] double load,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bearing length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance) =>
        sommerfeld / Sommerfeld(1, speed, load, diameter, length, clearance);

    /// <summary>Film, friction, flow and temperature rise of a steadily loaded journal bearing.</summary>
    /// <param name="viscosity">Dynamic viscosity at the film's mean temperature, Pa·s.</param>
    /// <param name="speed">Journal speed, rad/s.</param>
    /// <param name="load">Load, N.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Bearing length, m.</param>
    /// <param name="clearance">Radial clearance, m; half of the diametral clearance.</param>
    /// <param name="method">Reynolds solution, or the published tables.</param>
    /// <param name="density">Oil density, kg/m³.</param>
    /// <param name="specificHeat">Specific heat of the oil, J/(kg·K).</param>
    [Formula(
        "journal bearing",
        "S = (D / (2 c))^2 μ w L D / (2 π W); h0 = c (1 - ε); f = 2 c fv / D; Pf = f W w D / 2; Q = Qv D c w L / (4 π); pmax = W / (L D pr)",
        Source,
        Validity = "Steady load, 360° bearing without a groove through the loaded part, eccentricity 0.01 to 0.97.",
        Caution = "Friction counts shear round the full circle, as the charts do. Wear, roughness and misalignment come on top: compare the least film with the finish.")]
    public static JournalState Steady(
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("journal speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("load", Dimension.Force, "N", Symbol = "W", Above = 0)] double load,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bearing length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance,
        [Quantity("method", Dimension.Number)] FilmMethod method = FilmMethod.Reynolds,
        [Quantity("oil density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 861,
        [Quantity("specific heat of the oil", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp", Above = 0)] double specificHeat = 1760)
    {
        var sommerfeld = Sommerfeld(viscosity, speed, load, diameter, length, clearance);
        var (eccentricity, film) = method == FilmMethod.Table ? ChartNumbers.At(sommerfeld, length / diameter) : Solve(sommerfeld, length / diameter);
        var friction = 2 * clearance / diameter * film.FrictionVariable;
        var flow = film.FlowVariable * diameter / 2 * clearance * length * speed / Math.Tau;
        var rise = TemperatureRise(load / (length * diameter), film.FrictionVariable, film.FlowVariable, film.SideFlowRatio, density, specificHeat);
        return new JournalState(
            sommerfeld,
            eccentricity,
            clearance * (1 - eccentricity),
            1 - eccentricity,
            film.Attitude,
            friction,
            friction * load * speed * diameter / 2,
            flow,
            flow * film.SideFlowRatio,
            load / (length * diameter * film.PressureRatio),
            rise.AllFlow,
            rise.SideFlow);
    }

    /// <summary>Temperature rise of the oil from the chart numbers.</summary>
    /// <param name="pressure">Mean bearing pressure W/(L D), Pa.</param>
    /// <param name="friction">Friction variable (R/c) f.</param>
    /// <param name="flow">Flow variable Q/(R c N L).</param>
    /// <param name="sideFlowRatio">Side flow over total flow.</param>
    /// <param name="density">Oil density, kg/m³.</param>
    /// <param name="specificHeat">Specific heat, J/(kg·K).</param>
    [Formula(
        "journal bearing temperature rise",
        "ΔT = 4 π P fv / (ρ cp Qv); ΔTs = ΔT / (1 - qs / 2)",
        Source)]
    public static OilRise TemperatureRise(
        [Quantity("mean bearing pressure", Dimension.Pressure, "MPa", Symbol = "P", Above = 0)] double pressure,
        [Quantity("friction variable", Dimension.Number, Symbol = "fv", Above = 0)] double friction,
        [Quantity("flow variable", Dimension.Number, Symbol = "Qv", Above = 0)] double flow,
        [Quantity("side flow over total flow", Dimension.Number, Symbol = "qs", Min = 0, Max = 1)] double sideFlowRatio,
        [Quantity("oil density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 861,
        [Quantity("specific heat of the oil", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp", Above = 0)] double specificHeat = 1760)
    {
        var rise = 4 * Math.PI * pressure * friction / (density * specificHeat * flow);
        return new OilRise(rise, rise / (1 - (sideFlowRatio / 2)));
    }

    /// <summary>Friction torque of an unloaded journal by Petroff, N·m.</summary>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="speed">Journal speed, rad/s.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Bearing length, m.</param>
    /// <param name="clearance">Radial clearance, m.</param>
    [Formula("Petroff torque", "T = 2 π μ w (D / 2)^3 L / c", "Petroff's equation: concentric journal", Provenance = Provenance.Definition)]
    [return: Quantity("friction torque", Dimension.Torque, "N·m", Symbol = "T")]
    public static double Petroff(
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("journal speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bearing length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance) =>
        Math.PI * viscosity * speed * diameter * diameter * diameter * length / (4 * clearance);

    private static (double Eccentricity, FilmNumbers Film) Solve(double sommerfeld, double slenderness)
    {
        FormulaDomainException.Unless(slenderness is >= 0.1 and <= 4, "bearing length: must be between 0.1 and 4 journal diameters");
        double Miss(double e) => Math.Log(FiniteBearing.At(e, slenderness).Sommerfeld / sommerfeld);
        const double Light = 0.01;
        const double Heavy = 0.97;
        if (!Brent.TryFindRoot(Miss, Light, Heavy, 1e-6, 100, out var eccentricity))
        {
            throw new FormulaDomainException(Miss(Heavy) > 0
                ? "load: the film is thinner than 3 % of the clearance; the journal is about to touch"
                : "load: too light for the film solution; the journal runs almost concentric");
        }

        return (eccentricity, FiniteBearing.At(eccentricity, slenderness));
    }
}
