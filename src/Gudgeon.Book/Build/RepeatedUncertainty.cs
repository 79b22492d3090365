using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Build;

/// <summary>
/// Uncertainty of the mean of repeated readings: the scatter of the repeats is type A, all else type B and known for certain;
/// effective degrees of freedom by Welch and Satterthwaite, and the coverage factor that goes with them (JCGM 100:2008, 5.1.2,
/// G.4). SI.
/// </summary>
/// <param name="Combined">Combined standard uncertainty.</param>
/// <param name="Freedom">Effective degrees of freedom; without end where nothing scatters.</param>
/// <param name="Factor">Coverage factor for <see cref="Coverage"/>.</param>
public readonly record struct RepeatedUncertainty(double Combined, double Freedom, double Factor)
{
    /// <summary>Coverage probability of the expanded uncertainty.</summary>
    public const double Coverage = 0.95;

    // A ± in a book is of k = 2 where few repeats do not ask for more.
    private const double Ordinary = 2;

    // From there on a Student factor is the normal one to six digits.
    private const double Certain = 1e6;

    /// <summary>Expanded uncertainty for <see cref="Coverage"/>.</summary>
    public double Expanded => Factor * Combined;

    /// <summary>The ± that a book keeps: U of k = 2, or of the larger factor that few repeats ask for.</summary>
    public double Kept => Math.Max(Ordinary, Factor) * Combined;

    /// <summary>Standard uncertainty of which the ± that a book keeps is twice.</summary>
    public double Standard => Kept / 2;

    /// <summary>The factors of <see cref="Kept"/> for 1, 2, 3 and so on degrees of freedom, as long as they are larger than 2.</summary>
    public static IReadOnlyList<double> LargerFactors { get; } = [.. Enumerable.Range(1, 1000).Select(n => CombinedUncertainty.Student(n, Coverage)).TakeWhile(k => k > Ordinary)];

    /// <summary>Combines the scatter of repeats with all else.</summary>
    /// <param name="repeats">Standard uncertainty of the mean by the scatter of repeats; 0 where nothing was read twice.</param>
    /// <param name="freedom">Degrees of freedom of the scatter.</param>
    /// <param name="others">Standard uncertainties of all else.</param>
    public static RepeatedUncertainty Of(double repeats, int freedom, params double[] others)
    {
        if (repeats == 0 && others.All(o => o == 0))
        {
            return new RepeatedUncertainty(0, double.PositiveInfinity, CombinedUncertainty.Student(Certain, Coverage));
        }

        var sum = CombinedUncertainty.WelchSatterthwaite([repeats, .. others], [Math.Max(1, freedom), .. others.Select(_ => double.MaxValue)]);
        return new RepeatedUncertainty(sum.Combined, repeats == 0 ? double.PositiveInfinity : sum.Freedom, CombinedUncertainty.Student(Math.Clamp(sum.Truncated, 1, Certain), Coverage));
    }
}
