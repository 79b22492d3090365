using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>How oil comes into a bearing.</summary>
public enum OilFeed
{
    /// <summary>By one hole in shell or journal.</summary>
    Hole,

    /// <summary>By a groove round the shell that is not loaded.</summary>
    HalfGroove,

    /// <summary>By a groove all round, which parts the bearing in two.</summary>
    FullGroove,
}

/// <summary>Oil that goes through bearings and the warmth it takes along.</summary>
public static class BearingOil
{
    /// <summary>Density of engine oil at a temperature, kg/m³.</summary>
    /// <param name="density">Density at 15 °C, kg/m³.</param>
    /// <param name="temperature">Temperature, K.</param>
    [Formula(
        "oil density at temperature",
        "ρ = ρ15 (1 - 0.00065 (T - 288.15))",
        "expansion of mineral oil of about 870 kg/m³, 0.00065 1/K",
        Provenance = Provenance.FromMemory,
        Validity = "0 to 180 °C")]
    [return: Quantity("oil density", Dimension.Density, "kg/m³", Symbol = "ρ")]
    public static double Density(
        [Quantity("density at 15 °C", Dimension.Density, "kg/m³", Symbol = "ρ15", Above = 0)] double density,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 200, Below = 600)] double temperature) =>
        density * (1 - (0.00065 * (temperature - 288.15)));

    /// <summary>Oil that its supply pressure pushes through a bearing, m³/s, beside what the film itself pumps out.</summary>
    /// <param name="feed">How it comes in.</param>
    /// <param name="pressure">Supply pressure at the bearing, Pa.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="land">Length of the film from groove to end, m; of the whole bearing with a hole.</param>
    /// <param name="clearance">Radial clearance, m.</param>
    /// <param name="eccentricity">Eccentricity ratio.</param>
    /// <param name="opening">Diameter of the hole, m; not used with a groove.</param>
    [Formula(
        "bearing feed flow",
        "groove: Q = π D c^3 p (1 + 1.5 ε^2) / (6 μ l), half of it for half a groove; hole: Q = 0.675 c^3 (1 + 1.5 ε^2) p (dh / l + 0.4)^1.75 / μ",
        "groove: two lands fed from the middle, Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., sec. 12-9 (pressure-fed bearings); hole: after Martin & Lee, from memory",
        Provenance = Provenance.FromMemory,
        Validity = "Laminar, isoviscous. The hole is taken at the mean cube of the film round the journal, for it passes every film in turn.")]
    [return: Quantity("feed flow", Dimension.VolumeFlow, "L/min", Symbol = "Q")]
    public static double FeedFlow(
        [Quantity("feed", Dimension.Number)] OilFeed feed,
        [Quantity("supply pressure", Dimension.Pressure, "bar", Symbol = "p", Min = 0)] double pressure,
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("length of the film", Dimension.Length, "mm", Symbol = "l", Above = 0)] double land,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance,
        [Quantity("eccentricity ratio", Dimension.Number, Symbol = "ε", Min = 0, Max = 1)] double eccentricity,
        [Quantity("diameter of the hole", Dimension.Length, "mm", Symbol = "dh", Min = 0)] double opening = 0)
    {
        var room = clearance * clearance * clearance * (1 + (1.5 * eccentricity * eccentricity));
        var groove = Math.PI * diameter * room * pressure / (6 * viscosity * land);
        return feed switch
        {
            OilFeed.Hole => 0.675 * room * pressure * Math.Pow((opening / land) + 0.4, 1.75) / viscosity,
            OilFeed.HalfGroove => groove / 2,
            _ => groove,
        };
    }

    /// <summary>Volume that a pump gives, m³/s.</summary>
    /// <param name="displacement">Displacement for a turn of the pump, m³.</param>
    /// <param name="ratio">Turns of the pump for a turn of the crank.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="efficiency">Share of the displacement that comes out against the pressure.</param>
    [Formula("oil pump delivery", "Q = η V i w / (2 π)", "definition of displacement and volumetric efficiency", Provenance = Provenance.Definition)]
    [return: Quantity("oil pump delivery", Dimension.VolumeFlow, "L/min", Symbol = "Q")]
    public static double PumpDelivery(
        [Quantity("displacement for a turn", Dimension.Volume, "cm³", Symbol = "V", Above = 0)] double displacement,
        [Quantity("turns for a turn of the crank", Dimension.Number, Symbol = "i", Above = 0)] double ratio,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("volumetric efficiency", Dimension.Number, Symbol = "η", Above = 0, Max = 1)] double efficiency = 0.85) =>
        efficiency * displacement * ratio * speed / Math.Tau;

    /// <summary>Load of a bearing over its projected area, Pa.</summary>
    /// <param name="load">Load, N.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Length that carries, m.</param>
    [Formula("bearing load by projected area", "P = W / (L D)", "Definition", Provenance = Provenance.Definition)]
    [return: Quantity("load by projected area", Dimension.Pressure, "MPa", Symbol = "P")]
    public static double ProjectedLoad(
        [Quantity("load", Dimension.Force, "kN", Symbol = "W", Min = 0)] double load,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("length that carries", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length) =>
        load / (length * diameter);
}
