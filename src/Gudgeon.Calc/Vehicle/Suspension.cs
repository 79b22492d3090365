using Gudgeon.Calc.Gas;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>How one end of the machine sits on its springs.</summary>
/// <param name="WheelRate">Spring rate at the wheel, N/m.</param>
/// <param name="TopOutLoad">Load at the wheel that just leaves the top-out stop, N.</param>
/// <param name="Sag">Travel of the wheel from top-out, m.</param>
/// <param name="Frequency">Natural frequency of the load on the wheel rate, undamped, Hz.</param>
public readonly record struct SuspensionState(
    [Quantity("wheel rate", Dimension.ForcePerLength, "N/mm", Symbol = "kw")] double WheelRate,
    [Quantity("top-out load", Dimension.Force, "N", Symbol = "F0")] double TopOutLoad,
    [Quantity("sag", Dimension.Length, "mm", Symbol = "x")] double Sag,
    [Quantity("natural frequency", Dimension.Frequency, "Hz", Symbol = "f")] double Frequency);

/// <summary>Static sag and wheel rate of fork and shock.</summary>
public static class Suspension
{
    /// <summary>Wheel rate, sag and natural frequency of a constant-ratio suspension.</summary>
    /// <param name="rate">Rate of the spring, N/m; for a fork the sum of both legs.</param>
    /// <param name="preload">Preload at the spring, m.</param>
    /// <param name="load">Load carried by the springs at this wheel, N.</param>
    /// <param name="ratio">Spring travel over wheel travel; 1 for a fork taken along its legs.</param>
    /// <returns>Wheel rate, top-out load, sag and frequency; no sag while the load does not leave the top-out stop.</returns>
    [Formula("suspension sag", "kw = k r^2; F0 = k d r; x = (F - F0) / kw; f = (kw 9.80665 / F)^0.5 / (2 pi)", "virtual work at the wheel; undamped single mass", Provenance = Provenance.Definition, Validity = "Constant ratio; a rising-rate linkage needs the integral over its travel.")]
    public static SuspensionState Sag(
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "k", Above = 0)] double rate,
        [Quantity("preload", Dimension.Length, "mm", Symbol = "d", Min = 0)] double preload,
        [Quantity("load at the wheel", Dimension.Force, "N", Symbol = "F", Above = 0)] double load,
        [Quantity("spring travel over wheel travel", Dimension.Number, Symbol = "r", Above = 0, Max = 3)] double ratio = 1)
    {
        var wheelRate = rate * ratio * ratio;
        var topOut = rate * preload * ratio;
        var frequency = Math.Sqrt(wheelRate * PhysicalConstants.StandardGravity / load) / (2 * Math.PI);
        return new SuspensionState(wheelRate, topOut, Math.Max(load - topOut, 0) / wheelRate, frequency);
    }
}
