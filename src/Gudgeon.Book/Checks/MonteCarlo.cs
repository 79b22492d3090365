using Gudgeon.Book.Build;
using Gudgeon.Calc.Metrology;

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

        var (linear, full) = (finding.Contributions.Where(c => ThroughDuty(finding, c)).ToList(), finding.Contributions.Where(c => !ThroughDuty(finding, c)).ToList());
        var drawn = Propagation.Run(
            [
                .. full.Select(c => new DrawnInput(DrawnShape.Normal, c.Found.Value.Si, c.Found.Value.StandardUncertainty)),
                .. linear.Select(c => new DrawnInput(DrawnShape.Normal, 0, c.Effect)),
            ],
            x =>
            {
                var reserve = full.Count == 0 ? finding.Reserve : Drawn(appraiser, finding, snapshot, full, x);
                foreach (var effect in x[full.Count..])
                {
                    reserve += effect;
                }

                return reserve;
            },
            draws);
        return new MonteCarloResult(draws, drawn.Mean, drawn.Deviation, drawn.At(0.025), drawn.At(0.975), drawn.Share(r => r >= 1));
    }

    private static double Drawn(Appraiser appraiser, Finding finding, Snapshot snapshot, List<Contribution> full, ReadOnlySpan<double> x)
    {
        var nudged = new Dictionary<string, double>(full.Count, StringComparer.Ordinal);
        for (var i = 0; i < full.Count; i++)
        {
            nudged[full[i].Found.Source] = x[i];
        }

        return appraiser.Nudge(finding.Check, finding.Index, snapshot, nudged)?.Reserve ?? 0;
    }

    private static bool ThroughDuty(Finding finding, Contribution c) => finding.Trace.DutySources.Contains(c.Found.Source);
}
