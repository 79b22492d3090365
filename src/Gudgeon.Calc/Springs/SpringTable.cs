using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.Interpolation;

namespace Gudgeon.Calc.Springs;

/// <summary>
/// A spring whose rate changes with its height, such as one wound progressively, as the tester read it: a curve through the
/// readings that nowhere turns back between them.
/// </summary>
public static class SpringTable
{
    /// <summary>How far past the outer readings the curve is followed, as a share of the heights between them.</summary>
    private const double Overhang = 0.1;

    private const string Source = "monotone cubic through the readings: Fritsch & Carlson, SIAM J. Numer. Anal. 17 (1980) 238";
    private const string Validity = "three readings or more; past the outer ones straight on for a tenth of what they span, and no further";

    /// <summary>Load at a height, N.</summary>
    /// <param name="heights">Heights of the readings, m, in any order, no two alike.</param>
    /// <param name="loads">Loads there, N; greater at the lesser height.</param>
    /// <param name="height">Height at which the load is wanted, m.</param>
    [Formula("spring load from a table", "F = f(L); Fi = f(Li)", Source, Provenance = Provenance.FromMemory, Validity = Validity)]
    [return: Quantity("load", Dimension.Force, "N", Symbol = "F")]
    public static double Load(
        [Quantity("heights of the readings", Dimension.Length, "mm", Symbol = "Li", Above = 0)] double[] heights,
        [Quantity("loads of the readings", Dimension.Force, "N", Symbol = "Fi", Min = 0)] double[] loads,
        [Quantity("height", Dimension.Length, "mm", Symbol = "L", Above = 0)] double height)
    {
        var (sorted, along) = Sorted(heights, loads);
        var curve = CubicSpline.InterpolatePchipSorted(sorted, along);
        var inside = Math.Clamp(height, sorted[0], sorted[^1]);
        Reach(sorted, height);
        return curve.Interpolate(inside) + ((height - inside) * curve.Differentiate(inside));
    }

    /// <summary>Rate at a height: how steeply the load rises there as the spring shortens, N/m.</summary>
    /// <param name="heights">Heights of the readings, m, in any order, no two alike.</param>
    /// <param name="loads">Loads there, N; greater at the lesser height.</param>
    /// <param name="height">Height at which the rate is wanted, m.</param>
    [Formula("spring rate from a table", "R = -f'(L); Fi = f(Li)", Source, Provenance = Provenance.FromMemory, Validity = Validity)]
    [return: Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R")]
    public static double Rate(
        [Quantity("heights of the readings", Dimension.Length, "mm", Symbol = "Li", Above = 0)] double[] heights,
        [Quantity("loads of the readings", Dimension.Force, "N", Symbol = "Fi", Min = 0)] double[] loads,
        [Quantity("height", Dimension.Length, "mm", Symbol = "L", Above = 0)] double height)
    {
        var (sorted, along) = Sorted(heights, loads);
        Reach(sorted, height);
        return -CubicSpline.InterpolatePchipSorted(sorted, along).Differentiate(Math.Clamp(height, sorted[0], sorted[^1]));
    }

    private static (double[] Heights, double[] Loads) Sorted(double[] heights, double[] loads)
    {
        FormulaDomainException.Unless(heights.Length == loads.Length, "loads of the readings: must be as many as the heights");
        FormulaDomainException.Unless(heights.Length >= 3, "heights of the readings: must be three or more");
        var (sorted, along) = ((double[])heights.Clone(), (double[])loads.Clone());
        Array.Sort(sorted, along);
        for (var i = 1; i < sorted.Length; i++)
        {
            FormulaDomainException.Unless(sorted[i] > sorted[i - 1], "heights of the readings: two are alike");
            FormulaDomainException.Unless(along[i] < along[i - 1], "loads of the readings: must rise as the spring is pressed shorter");
        }

        return (sorted, along);
    }

    private static void Reach(double[] sorted, double height)
    {
        var past = Overhang * (sorted[^1] - sorted[0]);
        FormulaDomainException.Unless(
            height >= sorted[0] - past && height <= sorted[^1] + past,
            FormattableString.Invariant($"height: the spring was tested between {sorted[0] * 1e3:0.##} and {sorted[^1] * 1e3:0.##} mm, and {height * 1e3:0.##} mm is too far outside"));
    }
}
