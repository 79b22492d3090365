using MathNet.Numerics.Distributions;

namespace Gudgeon.Book.Checks;

/// <summary>
/// How a verdict follows from a value, its limit and its uncertainty: a guard band of 1.645 standard uncertainties on either side
/// of the edge, which is 95 % confidence for a one-sided limit.
/// Source: ISO 14253-1:2017, default rule; JCGM 106:2012, clause 8.3.
/// </summary>
public static class DecisionRule
{
    /// <summary>What a ± beside a finding counts, said under every list of findings.</summary>
    public const string OfUncertainty = "A ± counts the values that carry one; assumed values without, and the engine model's own error, are not in it.";

    /// <summary>What a verdict is, said under every list of findings.</summary>
    public const string Advice = "Advice to a competent person: the makers' data, local rules and the scrutineers have the last word.";

    /// <summary>95 % quantile of the normal distribution.</summary>
    public const double Guard = 1.6448536269514722;

    /// <summary>
    /// The verdict of one limit. It is decided on the margin, value against limit, and not on the reserve: near a value
    /// of nothing a ratio makes every uncertainty look large.
    /// </summary>
    /// <param name="margin">How far the value lies inside the limit; without end where there is none.</param>
    /// <param name="uncertainty">Standard uncertainty of the margin, same unit.</param>
    public static Verdict Decide(double margin, double uncertainty)
    {
        if (double.IsNaN(margin) || double.IsNaN(uncertainty))
        {
            return Verdict.NotKnownYet;
        }

        if (margin - (Guard * uncertainty) >= 0)
        {
            return Verdict.Holds;
        }

        return margin + (Guard * uncertainty) < 0 ? Verdict.FallsShort : Verdict.TooCloseToTell;
    }

    /// <summary>The worse of the verdicts of two limits.</summary>
    public static Verdict Worse(Verdict a, Verdict b) => Rank(a) >= Rank(b) ? a : b;

    /// <summary>Probability that the true value lies inside the limit, for a normal distribution (JCGM 106:2012, clause 7.2).</summary>
    /// <param name="margin">How far the value lies inside the limit.</param>
    /// <param name="uncertainty">Standard uncertainty of the margin, same unit.</param>
    public static double Conformity(double margin, double uncertainty) => uncertainty > 0
        ? Normal.CDF(0, 1, margin / uncertainty)
        : margin >= 0 ? 1 : 0;

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Holds => 0,
        Verdict.TooCloseToTell => 1,
        Verdict.FallsShort => 2,
        _ => 3,
    };
}
