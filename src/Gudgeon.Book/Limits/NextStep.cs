using Gudgeon.Book.Checks;

namespace Gudgeon.Book.Limits;

/// <summary>What to do next, in one sentence, and the finding that says so.</summary>
/// <param name="Sentence">For people.</param>
/// <param name="Finding">The finding; null when nothing asks for anything.</param>
public sealed record NextStep(string Sentence, Finding? Finding)
{
    private const int MostInputs = 4;

    /// <summary>
    /// First what falls short, the least reserve first; then what is too close to tell and what to measure; then what is
    /// not known; else what gives first.
    /// </summary>
    /// <param name="findings">Every finding.</param>
    /// <param name="ladder">What gives first; null while it is not known.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public static NextStep Of(IReadOnlyList<Finding> findings, Ladder? ladder, bool imperial = false)
    {
        if (Worst(findings, Verdict.FallsShort) is { Judgement: { } j } shortfall)
        {
            return new($"{shortfall.Id} falls short with reserve {shortfall.ReserveText}: {j.Quantity} is {shortfall.ValueIn(imperial)}, wanted {j.LimitIn(imperial)}{From(shortfall)}", shortfall);
        }

        if (Worst(findings, Verdict.TooCloseToTell) is { } close)
        {
            return new($"{close.Id} is too close to tell: {(close.Advice.Length > 0 ? close.Advice : "its limit lies inside the uncertainty")}", close);
        }

        if (findings.FirstOrDefault(f => f.Verdict == Verdict.NotKnownYet) is { } unknown)
        {
            return new($"{unknown.Id} is not known yet; {unknown.Advice}", unknown);
        }

        return ladder?.Rungs is [{ } first, ..]
            ? new($"every check holds; the first to give is {first.Finding.Id}, which {ladder.Words(first, imperial)}", first.Finding)
            : new("every check holds", null);
    }

    private static Finding? Worst(IReadOnlyList<Finding> findings, Verdict verdict) => findings.Where(f => f.Verdict == verdict).MinBy(f => f.Reserve);

    /// <summary>What a finding was worked from, for whoever must change one of them.</summary>
    private static string From(Finding finding)
    {
        var read = finding.Trace.Direct.Where(r => r.Found is not null).Select(r => r.Found!.Source).Distinct(StringComparer.Ordinal).Take(MostInputs).ToList();
        return read.Count == 0 ? "" : $"; it rests on {string.Join(", ", read)}";
    }
}
