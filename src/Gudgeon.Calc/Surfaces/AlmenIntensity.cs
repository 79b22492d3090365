using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Surfaces;

/// <summary>Almen strips by thickness.</summary>
public enum AlmenStrip
{
    /// <summary>Thin strip for light peening.</summary>
    N,

    /// <summary>Standard strip.</summary>
    A,

    /// <summary>Thick strip for heavy peening.</summary>
    C,
}

/// <summary>A saturation curve h = a (1 - exp(-b t)) through arc heights, and its intensity.</summary>
/// <param name="Intensity">Arc height at the saturation time, m.</param>
/// <param name="SaturationTime">Least time after which doubling it adds no more than 10 %, in the unit of the times.</param>
/// <param name="Limit">Arc height that the curve tends to, m.</param>
/// <param name="Rate">Rate b of the curve.</param>
/// <param name="Reach">Longest exposure over saturation time; at least 2 for a valid curve.</param>
public readonly record struct SaturationCurve(
    [Quantity("intensity", Dimension.Length, "mm", Symbol = "hT")] double Intensity,
    [Quantity("saturation time", Dimension.Number, Symbol = "T", Help = "in the unit of the exposure times")] double SaturationTime,
    [Quantity("limit of the curve", Dimension.Length, "mm", Symbol = "a")] double Limit,
    [Quantity("rate of the curve", Dimension.Number, Symbol = "b")] double Rate,
    [Quantity("longest exposure over saturation time", Dimension.Number)] double Reach);

/// <summary>Peening intensity from Almen strips.</summary>
public static class AlmenIntensity
{
    /// <summary>Saturation curve, saturation time and intensity by least squares.</summary>
    /// <param name="times">Exposure times or passes, any unit; at least four.</param>
    /// <param name="heights">Arc heights of the strips, m; each strip used once.</param>
    [Formula(
        "Almen saturation curve",
        "h = a (1 - exp(-b t)); T = ln(10) / b; hT = 0.9 a",
        "SAE J443 and J2597 (curve and 10 % rule), AMS-S-13165 4.2.3 (points)",
        Validity = "At least four strips, one at twice the saturation time or more: a reach below 2 means the curve is not valid and a longer exposure is wanted.",
        Caution = "Blasting and peening: closed cabinet, interlocked door, extraction, eye and hearing protection, never silica sand. The agreed specification rules, not this sheet.")]
    public static SaturationCurve Fit(
        [Quantity("exposure times", Dimension.Number, Symbol = "t", Above = 0)] double[] times,
        [Quantity("arc heights", Dimension.Length, "mm", Symbol = "h", Above = 0, Max = 0.005)] double[] heights)
    {
        FormulaDomainException.Unless(times.Length == heights.Length, "arc heights: one for each exposure time is wanted");
        FormulaDomainException.Unless(times.Length >= 4, "exposure times: at least four strips are wanted");
        var (low, high) = (1e-3 / times.Max(), 50 / times.Min());
        FormulaDomainException.Unless(
            Slope(low, times, heights) * Slope(high, times, heights) < 0,
            "arc heights: do not level off, or are level from the first strip; the exposure times are badly chosen");
        var rate = Brent.FindRoot(b => Slope(b, times, heights), low, high, 1e-14, 500);
        var limit = Amplitude(rate, times, heights);
        var saturation = Math.Log(10) / rate;
        return new SaturationCurve(0.9 * limit, saturation, limit, rate, times.Max() / saturation);
    }

    /// <summary>Arc height of another strip for about the same peening, m.</summary>
    /// <param name="height">Arc height, m.</param>
    /// <param name="from">Strip it was read on.</param>
    /// <param name="to">Strip it is wanted for.</param>
    [Formula(
        "Almen strip comparison",
        "A = 3.5 C; N = 3 A",
        "AMS-S-13165 (1997), 6.10",
        Caution = "A nominal comparison only; a specification given on one strip is not to be checked on another.")]
    [return: Quantity("arc height", Dimension.Length, "mm", Symbol = "h")]
    public static double Compare(
        [Quantity("arc height", Dimension.Length, "mm", Symbol = "h", Min = 0)] double height,
        [Quantity("strip read", Dimension.Number)] AlmenStrip from,
        [Quantity("strip wanted", Dimension.Number)] AlmenStrip to) =>
        height * Scale(to) / Scale(from);

    /// <summary>Thickness of an Almen strip, m.</summary>
    /// <param name="strip">Strip.</param>
    [Formula("Almen strip thickness", "table, ± 0.025 mm", "SAE J442")]
    [return: Quantity("strip thickness", Dimension.Length, "mm")]
    public static double Thickness([Quantity("strip", Dimension.Number)] AlmenStrip strip) => strip switch
    {
        AlmenStrip.N => 0.79e-3,
        AlmenStrip.A => 1.29e-3,
        _ => 2.39e-3,
    };

    /// <summary>Arc heights for which a strip is meant, read on that strip.</summary>
    /// <param name="strip">Strip.</param>
    [Formula("Almen strip range", "A 0.004 in to 0.024 in; N below, C above, by A = 3.5 C and N = 3 A", "AMS-S-13165 (1997), 6.10 and Table VI note 3")]
    public static IntensityRange Range([Quantity("strip", Dimension.Number)] AlmenStrip strip)
    {
        const double Thou = 25.4e-6;
        return strip switch
        {
            AlmenStrip.N => new IntensityRange(0, Compare(4 * Thou, AlmenStrip.A, AlmenStrip.N)),
            AlmenStrip.A => new IntensityRange(4 * Thou, 24 * Thou),
            _ => new IntensityRange(Compare(24 * Thou, AlmenStrip.A, AlmenStrip.C), double.PositiveInfinity),
        };
    }

    private static double Scale(AlmenStrip strip) => strip switch { AlmenStrip.N => 3, AlmenStrip.A => 1, _ => 1 / 3.5 };

    /// <summary>Best limit for a rate: the sum of squares is linear in it.</summary>
    private static double Amplitude(double rate, double[] times, double[] heights)
    {
        double cross = 0, square = 0;
        for (var i = 0; i < times.Length; i++)
        {
            var rise = 1 - Math.Exp(-rate * times[i]);
            cross += rise * heights[i];
            square += rise * rise;
        }

        return cross / square;
    }

    /// <summary>
    /// Slope of the least sum of squares with the rate, up to a positive factor that keeps it of order one: at high
    /// rates the slope itself fades to nothing and would pass for a root.
    /// </summary>
    private static double Slope(double rate, double[] times, double[] heights)
    {
        var limit = Amplitude(rate, times, heights);
        var first = times.Min();
        var sum = 0.0;
        for (var i = 0; i < times.Length; i++)
        {
            var miss = (heights[i] / limit) - 1 + Math.Exp(-rate * times[i]);
            sum += miss * times[i] / first * Math.Exp(-rate * (times[i] - first));
        }

        return sum;
    }
}
