using Gudgeon.Book.Build;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace Gudgeon.Book.Checks;

/// <summary>What random draws of the uncertain values give for a reserve.</summary>
/// <param name="Draws">Number of draws.</param>
/// <param name="Mean">Mean reserve.</param>
/// <param name="Deviation">Standard deviation of the reserve.</param>
/// <param name="Low">2.5 % point.</param>
/// <param name="High">97.5 % point.</param>
/// <param name="Conformity">Share of draws in which the reserve is at least 1.</param>
public sealed record MonteCarloResult(int Draws, double Mean, double Deviation, double Low, double High, double Conformity);

/// <summary>
/// Propagation of distributions (JCGM 101:2008): every uncertain value is drawn from a normal distribution. Values that
/// the engine run reads act through their first-order effect on the reserve, since a run for every draw would take hours;
/// all others go through the check itself.
/// </summary>
public static class MonteCarlo
{
    /// <summary>Fewest draws from which a spread can be read.</summary>
    public const int Fewest = 100;

    private const int Seed = 20250101;

    /// <summary>Draws; null when the finding is not known yet or nothing that it read is uncertain.</summary>
    public static MonteCarloResult? Run(Appraiser appraiser, Finding finding, Snapshot snapshot, int draws)
    {
        if (draws < Fewest)
        {
            throw new Values.BadInputException($"given {draws} draws, wanted at least {Fewest}");
        }

        if (finding.Judgement is null || finding.Contributions.Count == 0)
        {
            return null;
        }

        var random = new Xoshiro256StarStar(Seed);
        var (linear, full) = (finding.Contributions.Where(c => ThroughDuty(finding, c)).ToList(), finding.Contributions.Where(c => !ThroughDuty(finding, c)).ToList());
        var reserves = new double[draws];
        var nudged = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var i = 0; i < draws; i++)
        {
            foreach (var c in full)
            {
                nudged[c.Found.Source] = Normal.Sample(random, c.Found.Value.Si, c.Found.Value.StandardUncertainty);
            }

            var reserve = full.Count == 0 ? finding.Reserve : appraiser.Nudge(finding.Check, finding.Index, snapshot, nudged)?.Reserve ?? 0;
            reserves[i] = reserve + linear.Sum(c => c.Effect * Normal.Sample(random, 0, 1));
        }

        return Sum(reserves);
    }

    private static bool ThroughDuty(Finding finding, Contribution c) => finding.Trace.DutySources.Contains(c.Found.Source);

    private static MonteCarloResult Sum(double[] reserves)
    {
        var mean = reserves.Average();
        var deviation = Math.Sqrt(reserves.Sum(r => (r - mean) * (r - mean)) / (reserves.Length - 1));
        Array.Sort(reserves);
        return new MonteCarloResult(
            reserves.Length,
            mean,
            deviation,
            reserves[(int)(0.025 * reserves.Length)],
            reserves[Math.Min(reserves.Length - 1, (int)(0.975 * reserves.Length))],
            (double)reserves.Count(r => r >= 1) / reserves.Length);
    }
}
