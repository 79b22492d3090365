using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Inlet Mach index and what it is made of.</summary>
/// <param name="PistonSpeed">Mean piston speed, m/s.</param>
/// <param name="SoundSpeed">Speed of sound at the inlet, m/s.</param>
/// <param name="Index">Mach index Z.</param>
public readonly record struct MachIndex(
    [Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "Sp")] double PistonSpeed,
    [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a")] double SoundSpeed,
    [Quantity("inlet Mach index", Dimension.Number, Symbol = "Z")] double Index);

/// <summary>Taylor's inlet Mach index: how near to choking the inlet valves breathe on the mean.</summary>
public static class InletMachIndex
{
    private const string Source = "Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 1, chapter 6; Rajput, A Textbook of Internal Combustion Engines, 2nd ed., example 7.12";
    private const string Threshold = "Filling falls away somewhere between 0.5 and 0.6: a threshold, not a sharp law.";

    /// <summary>Inlet Mach index of an engine at a speed.</summary>
    /// <param name="bore">Bore, m.</param>
    /// <param name="stroke">Stroke, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="valveDiameter">Inlet valve head diameter, m.</param>
    /// <param name="flowCoefficient">Mean inlet flow coefficient, on the head area.</param>
    /// <param name="temperature">Inlet temperature, K.</param>
    /// <param name="valves">Inlet valves per cylinder.</param>
    /// <param name="heatRatio">Ratio of specific heats.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("inlet Mach index", "Sp = s w / π; a = sqrt(k R T); Z = b^2 Sp / (z D^2 Ci a)", Source, Caution = Threshold)]
    public static MachIndex Index(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "b", Above = 0)] double bore,
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0)] double stroke,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("inlet valve diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double valveDiameter,
        [Quantity("mean flow coefficient", Dimension.Number, Symbol = "Ci", Above = 0, Max = 1)] double flowCoefficient,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("inlet valves per cylinder", Dimension.Number, Symbol = "z", Min = 1)] int valves = 1,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "k", Above = 1)] double heatRatio = 1.4,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = 287)
    {
        var piston = stroke * speed / Math.PI;
        var sound = Math.Sqrt(heatRatio * gasConstant * temperature);
        return new MachIndex(piston, sound, bore * bore * piston / (valves * valveDiameter * valveDiameter * flowCoefficient * sound));
    }

    /// <summary>Inlet valve diameter that keeps the Mach index at a wanted value, m.</summary>
    /// <param name="bore">Bore, m.</param>
    /// <param name="stroke">Stroke, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="index">Mach index wanted.</param>
    /// <param name="flowCoefficient">Mean inlet flow coefficient, on the head area.</param>
    /// <param name="temperature">Inlet temperature, K.</param>
    /// <param name="valves">Inlet valves per cylinder.</param>
    /// <param name="heatRatio">Ratio of specific heats.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("inlet valve diameter from Mach index", "D = b sqrt(s w / π / (z Z Ci sqrt(k R T)))", Source, Caution = Threshold)]
    [return: Quantity("inlet valve diameter", Dimension.Length, "mm", Symbol = "D")]
    public static double ValveDiameter(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "b", Above = 0)] double bore,
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0)] double stroke,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("inlet Mach index", Dimension.Number, Symbol = "Z", Above = 0)] double index,
        [Quantity("mean flow coefficient", Dimension.Number, Symbol = "Ci", Above = 0, Max = 1)] double flowCoefficient,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("inlet valves per cylinder", Dimension.Number, Symbol = "z", Min = 1)] int valves = 1,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "k", Above = 1)] double heatRatio = 1.4,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = 287) =>
        bore * Math.Sqrt(Index(bore, stroke, speed, bore, flowCoefficient, temperature, valves, heatRatio, gasConstant).Index / index);

    /// <summary>Crank speed at which the Mach index reaches a value, rad/s.</summary>
    /// <param name="bore">Bore, m.</param>
    /// <param name="stroke">Stroke, m.</param>
    /// <param name="valveDiameter">Inlet valve head diameter, m.</param>
    /// <param name="index">Mach index.</param>
    /// <param name="flowCoefficient">Mean inlet flow coefficient, on the head area.</param>
    /// <param name="temperature">Inlet temperature, K.</param>
    /// <param name="valves">Inlet valves per cylinder.</param>
    /// <param name="heatRatio">Ratio of specific heats.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("crank speed at an inlet Mach index", "w = π z Z Ci (D / b)^2 sqrt(k R T) / s", Source, Caution = Threshold)]
    [return: Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w")]
    public static double CrankSpeed(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "b", Above = 0)] double bore,
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0)] double stroke,
        [Quantity("inlet valve diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double valveDiameter,
        [Quantity("inlet Mach index", Dimension.Number, Symbol = "Z", Above = 0)] double index,
        [Quantity("mean flow coefficient", Dimension.Number, Symbol = "Ci", Above = 0, Max = 1)] double flowCoefficient,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("inlet valves per cylinder", Dimension.Number, Symbol = "z", Min = 1)] int valves = 1,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "k", Above = 1)] double heatRatio = 1.4,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = 287) =>
        index / Index(bore, stroke, 1, valveDiameter, flowCoefficient, temperature, valves, heatRatio, gasConstant).Index;
}
