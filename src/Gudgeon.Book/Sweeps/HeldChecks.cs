using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Sweeps;

/// <summary>Checks that must hold while values are tried. Uncertainties are left out here, as on every ladder and sweep of reserves.</summary>
public sealed class HeldChecks
{
    /// <summary>The word that stands for every check that holds now.</summary>
    public const string All = "all";

    private readonly Appraiser _appraiser;
    private readonly IReadOnlyList<(Check Check, string Index)> _held;

    private HeldChecks(Appraiser appraiser, IReadOnlyList<(Check Check, string Index)> held)
    {
        _appraiser = appraiser;
        _held = held;
    }

    /// <summary>Whether there is anything to hold.</summary>
    public bool Any => _held.Count > 0;

    /// <summary>Picks the checks.</summary>
    /// <param name="now">The values that hold now.</param>
    /// <param name="desk">Where engine runs are made and kept.</param>
    /// <param name="names">Ids of checks ("squish") or of findings ("squish[1]"), or "all" for every finding that holds now.</param>
    /// <exception cref="BadInputException">There is no such check or finding, or it is not known yet.</exception>
    public static HeldChecks Of(Snapshot now, DutyDesk desk, IReadOnlyList<string> names)
    {
        var appraiser = new Appraiser(desk) { WithUncertainty = false };
        var held = names.SelectMany(n => n == All
            ? appraiser.Appraise(now).Where(f => f.Verdict == Verdict.Holds)
            : Named(n, appraiser, now));
        return new HeldChecks(appraiser, [.. held.DistinctBy(f => f.Id).Select(f => (f.Check, f.Index))]);
    }

    /// <summary>The findings on other values.</summary>
    public IReadOnlyList<Finding> On(Snapshot snapshot) => [.. _held.Select(h => _appraiser.Appraise(h.Check, h.Index, snapshot))];

    /// <summary>How far the least of them is inside its limit, as a share: its reserve less 1, negative where one falls short.</summary>
    public static double Margin(IReadOnlyList<Finding> findings) => findings.Count == 0 ? double.PositiveInfinity : findings.Min(Margin);

    // A limit of nothing or a value of no sign makes no ratio; the verdict goes before it.
    private static double Margin(Finding finding) => finding.Verdict switch
    {
        Verdict.Holds => Math.Max(finding.Reserve - 1, 0),
        Verdict.NotKnownYet => -1,
        _ => Math.Min(finding.Reserve - 1, -1e-9),
    };

    private static IReadOnlyList<Finding> Named(string name, Appraiser appraiser, Snapshot now)
    {
        var check = CheckCatalogue.Find(name.Split('[')[0]);
        var all = appraiser.Appraise(now, [check]);
        List<Finding> findings = [.. all.Where(f => name == check.Id || name == f.Id)];
        if (findings.Count == 0)
        {
            throw new BadInputException(all.Count == 0 ? $"--holding: the build has nothing for '{name}' to look at" : $"--holding: there is no finding '{name}'; the nearest is '{Nearest.To(name, all.Select(f => f.Id))}'");
        }

        return findings.Find(f => f.Verdict == Verdict.NotKnownYet) is { } unknown
            ? throw new BadInputException($"--holding: {unknown.Id} is not known yet; wanted: {Wanted.Words(unknown.Missing)}")
            : findings;
    }
}
