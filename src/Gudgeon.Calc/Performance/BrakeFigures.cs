using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Performance;

/// <summary>Mean effective pressure and power of a torque.</summary>
/// <param name="MeanPressure">Brake mean effective pressure, Pa.</param>
/// <param name="Power">Brake power, W.</param>
public readonly record struct BrakeOutput(
    [Quantity("brake mean effective pressure", Dimension.Pressure, "bar", Symbol = "bmep")] double MeanPressure,
    [Quantity("brake power", Dimension.Power, "kW", Symbol = "P")] double Power);

/// <summary>Torque and power of a mean effective pressure.</summary>
/// <param name="Torque">Torque, N·m.</param>
/// <param name="Power">Power, W.</param>
public readonly record struct ShaftOutput(
    [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T")] double Torque,
    [Quantity("power", Dimension.Power, "kW", Symbol = "P")] double Power);

/// <summary>Fuel consumption and efficiency.</summary>
/// <param name="Consumption">Brake specific fuel consumption, kg/J.</param>
/// <param name="Efficiency">Brake efficiency.</param>
public readonly record struct FuelEconomy(
    [Quantity("brake specific fuel consumption", Dimension.SpecificFuelConsumption, "g/kWh", Symbol = "bsfc")] double Consumption,
    [Quantity("brake efficiency", Dimension.Number, Symbol = "η")] double Efficiency);

/// <summary>How indicated work is spent.</summary>
/// <param name="NetIndicated">Net indicated mean effective pressure, Pa.</param>
/// <param name="Brake">Brake mean effective pressure, Pa.</param>
/// <param name="MechanicalEfficiency">Brake over gross indicated.</param>
public readonly record struct MeanPressureBalance(
    [Quantity("net indicated mean effective pressure", Dimension.Pressure, "bar", Symbol = "nimep")] double NetIndicated,
    [Quantity("brake mean effective pressure", Dimension.Pressure, "bar", Symbol = "bmep")] double Brake,
    [Quantity("mechanical efficiency on gross", Dimension.Number, Symbol = "ηm")] double MechanicalEfficiency);

/// <summary>The figures a dynamometer gives, and what follows from them. Two crank turns a cycle unless said.</summary>
public static class BrakeFigures
{
    private const string Heywood = "Heywood, Internal Combustion Engine Fundamentals, 1st ed., ";

    /// <summary>Mean effective pressure and power of a torque.</summary>
    /// <param name="torque">Torque, N·m.</param>
    /// <param name="displacement">Engine displacement, m³.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="turns">Crank turns per cycle: 2 four-stroke, 1 two-stroke.</param>
    [Formula("brake mean effective pressure and power", "bmep = 2 π n T / Vd; P = T ω", Heywood + "eqs 2.13, 2.19-2.20", Provenance = Provenance.FromMemory)]
    public static BrakeOutput FromTorque(
        [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T")] double torque,
        [Quantity("displacement", Dimension.Volume, "cm³", Symbol = "Vd", Above = 0)] double displacement,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double speed,
        [Quantity("crank turns per cycle", Dimension.Number, Symbol = "n", Min = 1, Max = 2)] int turns = 2) =>
        new(2 * Math.PI * turns * torque / displacement, torque * speed);

    /// <summary>Torque and power of a brake mean effective pressure.</summary>
    /// <param name="meanPressure">Brake mean effective pressure, Pa.</param>
    /// <param name="displacement">Engine displacement, m³.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="turns">Crank turns per cycle.</param>
    [Formula("torque and power from mean effective pressure", "T = bmep Vd / (2 π n); P = T ω", Heywood + "eqs 2.19-2.20", Provenance = Provenance.FromMemory)]
    public static ShaftOutput FromMeanPressure(
        [Quantity("brake mean effective pressure", Dimension.Pressure, "bar", Symbol = "bmep")] double meanPressure,
        [Quantity("displacement", Dimension.Volume, "cm³", Symbol = "Vd", Above = 0)] double displacement,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double speed,
        [Quantity("crank turns per cycle", Dimension.Number, Symbol = "n", Min = 1, Max = 2)] int turns = 2)
    {
        var torque = meanPressure * displacement / (2 * Math.PI * turns);
        return new(torque, torque * speed);
    }

    /// <summary>Specific fuel consumption and efficiency of a fuel flow.</summary>
    /// <param name="fuelFlow">Fuel flow, kg/s.</param>
    /// <param name="power">Brake power, W.</param>
    /// <param name="heatingValue">Lower heating value, J/kg.</param>
    [Formula("brake specific fuel consumption", "bsfc = m / P; η = P / (m Hu)", Heywood + "eqs 2.22-2.25", Provenance = Provenance.FromMemory)]
    public static FuelEconomy Consumption(
        [Quantity("fuel flow", Dimension.MassFlow, "g/s", Symbol = "m", Above = 0)] double fuelFlow,
        [Quantity("brake power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("lower heating value", Dimension.SpecificEnergy, "MJ/kg", Symbol = "Hu", Above = 0)] double heatingValue) =>
        new(fuelFlow / power, power / (fuelFlow * heatingValue));

    /// <summary>Brake efficiency of a specific fuel consumption.</summary>
    /// <param name="consumption">Brake specific fuel consumption, kg/J.</param>
    /// <param name="heatingValue">Lower heating value, J/kg.</param>
    [Formula("brake efficiency from fuel consumption", "η = 1 / (bsfc Hu); η = 3600 / (g/kWh MJ/kg)", Heywood + "eq. 2.25", Provenance = Provenance.Definition)]
    [return: Quantity("brake efficiency", Dimension.Number, Symbol = "η")]
    public static double Efficiency(
        [Quantity("brake specific fuel consumption", Dimension.SpecificFuelConsumption, "g/kWh", Symbol = "bsfc", Above = 0)] double consumption,
        [Quantity("lower heating value", Dimension.SpecificEnergy, "MJ/kg", Symbol = "Hu", Above = 0)] double heatingValue) => 1 / (consumption * heatingValue);

    /// <summary>Volumetric efficiency on a reference density.</summary>
    /// <param name="airFlow">Air flow, kg/s.</param>
    /// <param name="density">Reference density, kg/m³: of the room air, or of the manifold.</param>
    /// <param name="displacement">Engine displacement, m³.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="turns">Crank turns per cycle.</param>
    [Formula("volumetric efficiency", "ηv = 2 π n m / (ρ Vd ω)", Heywood + "eq. 2.27", Provenance = Provenance.FromMemory, Caution = "Say which density: of the room, or of the manifold.")]
    [return: Quantity("volumetric efficiency", Dimension.Number, Symbol = "ηv")]
    public static double VolumetricEfficiency(
        [Quantity("air flow", Dimension.MassFlow, "kg/s", Symbol = "m", Min = 0)] double airFlow,
        [Quantity("reference density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("displacement", Dimension.Volume, "cm³", Symbol = "Vd", Above = 0)] double displacement,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Above = 0)] double speed,
        [Quantity("crank turns per cycle", Dimension.Number, Symbol = "n", Min = 1, Max = 2)] int turns = 2) =>
        2 * Math.PI * turns * airFlow / (density * displacement * speed);

    /// <summary>Brake mean effective pressure from charge and efficiency, Pa.</summary>
    /// <param name="brakeEfficiency">Brake efficiency.</param>
    /// <param name="volumetricEfficiency">Volumetric efficiency on <paramref name="density"/>.</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <param name="heatingValue">Lower heating value, J/kg.</param>
    /// <param name="airFuelRatio">Air/fuel ratio by mass.</param>
    [Formula("brake mean effective pressure from charge", "bmep = ηb ηv ρ Hu / AFR", Heywood + "eq. 2.41", Provenance = Provenance.FromMemory)]
    [return: Quantity("brake mean effective pressure", Dimension.Pressure, "bar", Symbol = "bmep")]
    public static double FromCharge(
        [Quantity("brake efficiency", Dimension.Number, Symbol = "ηb", Above = 0, Below = 1)] double brakeEfficiency,
        [Quantity("volumetric efficiency", Dimension.Number, Symbol = "ηv", Above = 0, Max = 5)] double volumetricEfficiency,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("lower heating value", Dimension.SpecificEnergy, "MJ/kg", Symbol = "Hu", Above = 0)] double heatingValue,
        [Quantity("air/fuel ratio by mass", Dimension.Number, Symbol = "AFR", Above = 0)] double airFuelRatio) =>
        brakeEfficiency * volumetricEfficiency * density * heatingValue / airFuelRatio;

    /// <summary>From gross indicated to brake mean effective pressure.</summary>
    /// <param name="grossIndicated">Gross indicated mean effective pressure, Pa.</param>
    /// <param name="pumping">Pumping mean effective pressure, Pa, positive when it costs work.</param>
    /// <param name="friction">Friction mean effective pressure, Pa, accessories included.</param>
    [Formula("mean effective pressure balance", "nimep = gimep - pmep; bmep = nimep - fmep; ηm = bmep / gimep", Heywood + "sections 2.3-2.4", Provenance = Provenance.FromMemory)]
    public static MeanPressureBalance Balance(
        [Quantity("gross indicated mean effective pressure", Dimension.Pressure, "bar", Symbol = "gimep", Above = 0)] double grossIndicated,
        [Quantity("pumping mean effective pressure", Dimension.Pressure, "bar", Symbol = "pmep")] double pumping,
        [Quantity("friction mean effective pressure", Dimension.Pressure, "bar", Symbol = "fmep", Min = 0)] double friction)
    {
        var net = grossIndicated - pumping;
        return new(net, net - friction, (net - friction) / grossIndicated);
    }
}
