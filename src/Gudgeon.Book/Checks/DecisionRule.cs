using MathNet.Numerics.Distributions;

namespace Gudgeon.Book.Checks;

/// <summary>
/// How a verdict follows from a reserve and its uncertainty: a guard band of 1.645 standard uncertainties on either side
/// of the edge, which is 95 % confidence for a one-sided limit.
/// Source: ISO 14253-1:2017, default rule; JCGM 106:2012, clause 8.3.
/// </summary>
public static class DecisionRule
{
    /// <summary>95 % quantile of the normal distribution.</summary>
    public const double Guard = 1.6448536269514722;

    /// <summary>The verdict.</summary>
    /// <param name="reserve">Capacity over demand.</param>
    /// <param name="uncertainty">Standard uncertainty of the reserve.</param>
    public static Verdict Decide(double reserve, double uncertainty)
    {
        if (double.IsNaN(reserve) || double.IsNaN(uncertainty))
        {
            return Verdict.NotKnownYet;
        }

        if (reserve - (Guard * uncertainty) >= 1)
        {
            return Verdict.Holds;
        }

        return reserve + (Guard * uncertainty) < 1 ? Verdict.FallsShort : Verdict.TooCloseToTell;
    }

    /// <summary>Probability that the true reserve is at least 1, for a normal distribution (JCGM 106:2012, clause 7.2).</summary>
    public static double Conformity(double reserve, double uncertainty) => uncertainty > 0
        ? Normal.CDF(0, 1, (reserve - 1) / uncertainty)
        : reserve >= 1 ? 1 : 0;
}
