using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Boost;

/// <summary>Which slip correlation.</summary>
public enum SlipCorrelation
{
    /// <summary>Wiesner 1967: for any backsweep.</summary>
    Wiesner,

    /// <summary>Stanitz 1952: radial blades.</summary>
    Stanitz,
}

/// <summary>Stage of a centrifugal compressor.</summary>
/// <param name="TipSpeed">m/s.</param>
/// <param name="SpecificWork">J/kg.</param>
/// <param name="OutletTemperature">K.</param>
/// <param name="TemperatureRise">K.</param>
/// <param name="IsentropicTemperature">K.</param>
/// <param name="PressureRatio">Outlet over inlet stagnation pressure.</param>
public readonly record struct ImpellerStage(
    [Quantity("tip speed", Dimension.Speed, "m/s", Symbol = "U")] double TipSpeed,
    [Quantity("specific work", Dimension.SpecificEnergy, "kJ/kg", Symbol = "w")] double SpecificWork,
    [Quantity("outlet temperature", Dimension.Temperature, "°C", Symbol = "T2")] double OutletTemperature,
    [Quantity("temperature rise", Dimension.TemperatureDifference, "K")] double TemperatureRise,
    [Quantity("isentropic outlet temperature", Dimension.Temperature, "°C", Symbol = "T2s")] double IsentropicTemperature,
    [Quantity("pressure ratio", Dimension.Number, Symbol = "Π")] double PressureRatio);

/// <summary>Centrifugal compressors from their wheel.</summary>
public static class CentrifugalImpeller
{
    private const string Source = "Saravanamuttoo, Rogers, Cohen, Gas Turbine Theory, ch. 4";

    /// <summary>Slip factor.</summary>
    /// <param name="blades">Number of blades at the tip.</param>
    /// <param name="correlation">Which correlation.</param>
    /// <param name="backsweep">Blade angle at the tip, rad from radial.</param>
    [Formula("slip factor", "Wiesner: σ = 1 - sqrt(cos β) / Z^0.7; Stanitz: σ = 1 - 0.63 π / Z", "Wiesner, ASME J. Eng. Power 89 (1967) 558; Stanitz, Trans. ASME 74 (1952) 473", Provenance = Provenance.FromMemory)]
    [return: Quantity("slip factor", Dimension.Number, Symbol = "σ")]
    public static double SlipFactor(
        [Quantity("blades at the tip", Dimension.Number, Symbol = "Z", Min = 3, Max = 100)] int blades,
        [Quantity("slip correlation", Dimension.Number)] SlipCorrelation correlation = SlipCorrelation.Wiesner,
        [Quantity("backsweep from radial", Dimension.Angle, "°", Symbol = "β", Min = 0, Below = Math.PI / 2)] double backsweep = 0) =>
        correlation == SlipCorrelation.Wiesner
            ? 1 - (Math.Sqrt(Math.Cos(backsweep)) / Math.Pow(blades, 0.7))
            : 1 - (0.63 * Math.PI / blades);

    /// <summary>Pressure ratio of a stage with a known slip factor.</summary>
    /// <param name="diameter">Tip diameter, m.</param>
    /// <param name="speed">Wheel speed, rad/s.</param>
    /// <param name="slip">Slip factor.</param>
    /// <param name="efficiency">Isentropic efficiency.</param>
    /// <param name="inletTemperature">Inlet stagnation temperature, K.</param>
    /// <param name="workFactor">Power input factor for disc friction and the like.</param>
    /// <param name="backsweep">Blade angle at the tip, rad from radial.</param>
    /// <param name="flowCoefficient">Radial gas speed at the tip over tip speed.</param>
    /// <param name="heatCapacity">Heat capacity, J/(kg·K).</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("centrifugal pressure ratio", "U = D ω / 2; w = ψ U^2 (σ - Φ tan β); T2s = T1 + η w / cp; Π = (T2s / T1)^(γ/(γ - 1))", Source, Provenance = Provenance.FromMemory)]
    public static ImpellerStage Stage(
        [Quantity("tip diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("wheel speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double speed,
        [Quantity("slip factor", Dimension.Number, Symbol = "σ", Above = 0, Max = 1)] double slip,
        [Quantity("isentropic efficiency", Dimension.Number, Symbol = "η", Above = 0, Max = 1)] double efficiency,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double inletTemperature,
        [Quantity("power input factor", Dimension.Number, Symbol = "ψ", Min = 1, Max = 1.5)] double workFactor = 1,
        [Quantity("backsweep from radial", Dimension.Angle, "°", Symbol = "β", Min = 0, Below = Math.PI / 2)] double backsweep = 0,
        [Quantity("flow coefficient", Dimension.Number, Symbol = "Φ", Min = 0, Max = 1)] double flowCoefficient = 0,
        [Quantity("heat capacity", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp", Above = 0)] double heatCapacity = 1005,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var tip = 0.5 * diameter * speed;
        var swirl = slip - (flowCoefficient * Math.Tan(backsweep));
        FormulaDomainException.Unless(swirl > 0, "flow coefficient: with this backsweep the wheel would do no work");
        var work = workFactor * swirl * tip * tip;
        var rise = work / heatCapacity;
        var isentropic = inletTemperature + (efficiency * rise);
        return new(tip, work, inletTemperature + rise, rise, isentropic, Math.Pow(isentropic / inletTemperature, gamma / (gamma - 1)));
    }

    /// <summary>Pressure ratio of a stage, the slip factor taken from the number of blades.</summary>
    /// <param name="diameter">Tip diameter, m.</param>
    /// <param name="speed">Wheel speed, rad/s.</param>
    /// <param name="blades">Number of blades at the tip.</param>
    /// <param name="efficiency">Isentropic efficiency.</param>
    /// <param name="inletTemperature">Inlet stagnation temperature, K.</param>
    /// <param name="correlation">Slip correlation.</param>
    /// <param name="workFactor">Power input factor.</param>
    /// <param name="backsweep">Blade angle at the tip, rad from radial.</param>
    /// <param name="flowCoefficient">Radial gas speed at the tip over tip speed.</param>
    /// <param name="heatCapacity">Heat capacity, J/(kg·K).</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("centrifugal pressure ratio from blades", "U = D ω / 2; w = ψ U^2 (σ - Φ tan β), σ from Z; T2s = T1 + η w / cp; Π = (T2s / T1)^(γ/(γ - 1))", Source + "; Wiesner 1967, Stanitz 1952", Provenance = Provenance.FromMemory)]
    public static ImpellerStage StageFromBlades(
        [Quantity("tip diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("wheel speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double speed,
        [Quantity("blades at the tip", Dimension.Number, Symbol = "Z", Min = 3, Max = 100)] int blades,
        [Quantity("isentropic efficiency", Dimension.Number, Symbol = "η", Above = 0, Max = 1)] double efficiency,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double inletTemperature,
        [Quantity("slip correlation", Dimension.Number)] SlipCorrelation correlation = SlipCorrelation.Wiesner,
        [Quantity("power input factor", Dimension.Number, Symbol = "ψ", Min = 1, Max = 1.5)] double workFactor = 1,
        [Quantity("backsweep from radial", Dimension.Angle, "°", Symbol = "β", Min = 0, Below = Math.PI / 2)] double backsweep = 0,
        [Quantity("flow coefficient", Dimension.Number, Symbol = "Φ", Min = 0, Max = 1)] double flowCoefficient = 0,
        [Quantity("heat capacity", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp", Above = 0)] double heatCapacity = 1005,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4) =>
        Stage(diameter, speed, SlipFactor(blades, correlation, backsweep), efficiency, inletTemperature, workFactor, backsweep, flowCoefficient, heatCapacity, gamma);
}
