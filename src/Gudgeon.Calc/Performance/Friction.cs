using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Performance;

/// <summary>Friction mean effective pressure of the whole engine.</summary>
public static class Friction
{
    /// <summary>Friction mean effective pressure in the form of Chen and Flynn, Pa.</summary>
    /// <param name="peakPressure">Peak cylinder pressure, Pa.</param>
    /// <param name="pistonSpeed">Mean piston speed, m/s.</param>
    /// <param name="constant">Constant part, Pa.</param>
    /// <param name="pressureFactor">Part per peak pressure.</param>
    /// <param name="speedFactor">Part per piston speed, bar per m/s.</param>
    /// <param name="squareFactor">Part per piston speed squared, bar per (m/s)².</param>
    [Formula("Chen-Flynn friction", "fmep = A + B pmax + (C Sp + D Sp^2) 1 bar", "Chen and Flynn, SAE 650733", Provenance = Provenance.FromMemory, Caution = "The published constants are of a diesel engine; set them from a measured friction of an engine like yours.")]
    [return: Quantity("friction mean effective pressure", Dimension.Pressure, "bar", Symbol = "fmep")]
    public static double ChenFlynn(
        [Quantity("peak cylinder pressure", Dimension.Pressure, "bar", Symbol = "pmax", Min = 0)] double peakPressure,
        [Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "Sp", Min = 0)] double pistonSpeed,
        [Quantity("constant part", Dimension.Pressure, "bar", Symbol = "A", Min = 0)] double constant = 0.137e5,
        [Quantity("part per peak pressure", Dimension.Number, Symbol = "B", Min = 0)] double pressureFactor = 0.005,
        [Quantity("part per piston speed, bar/(m/s)", Dimension.Number, Symbol = "C", Min = 0)] double speedFactor = 0.162,
        [Quantity("part per piston speed squared, bar/(m/s)²", Dimension.Number, Symbol = "D")] double squareFactor = 0) =>
        constant + (pressureFactor * peakPressure) + (1e5 * pistonSpeed * (speedFactor + (squareFactor * pistonSpeed)));

    /// <summary>Total motored friction of four-cylinder car engines after Barnes-Moss, Pa.</summary>
    /// <param name="speed">Crank speed, rad/s.</param>
    [Formula("Barnes-Moss friction", "fmep = (0.97 + 0.15 n + 0.05 n^2) bar; n = N / 1000 rpm", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 13.6", Provenance = Provenance.FromMemory, Validity = "Four-cylinder car engines at wide-open throttle; above about 6000 rpm it is extrapolation.")]
    [return: Quantity("friction mean effective pressure", Dimension.Pressure, "bar", Symbol = "fmep")]
    public static double BarnesMoss([Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "N", Min = 0)] double speed)
    {
        var n = speed * 30 / Math.PI / 1000;
        return 1e5 * (0.97 + (n * (0.15 + (0.05 * n))));
    }
}
