using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Jobs;

/// <summary>What speaks against signing a card.</summary>
/// <param name="Sentence">What it is.</param>
/// <param name="Overridable">Whether a person may sign all the same, with a reason.</param>
public sealed record Hindrance(string Sentence, bool Overridable);

/// <summary>What a card stands on at the moment of signing: the findings of its checks, what they read, and its readings.</summary>
/// <param name="Findings">The findings of its checks.</param>
/// <param name="Reads">What they, the card's readings and its tightening plans read, as written, by path; what only the engine run read is not among it.</param>
/// <param name="Limits">The limits that the findings were held to, by name; empty text for a check's usual one.</param>
public sealed record Examined(IReadOnlyList<Finding> Findings, IReadOnlyDictionary<string, string> Reads, IReadOnlyDictionary<string, string> Limits)
{
    private const string Unknown = "not known";

    /// <summary>A long value is kept as its fingerprint.</summary>
    private const int Long = 80;

    /// <summary>Examines a card: works the checks that it stands on.</summary>
    /// <param name="card">The card.</param>
    /// <param name="now">The values that hold.</param>
    /// <param name="appraiser">Works the findings.</param>
    public static Examined Of(CardState card, Snapshot now, Appraiser appraiser)
    {
        var findings = appraiser.Appraise(now, CheckCatalogue.All.Where(c => card.Card.Asks(c.Id))).Where(f => card.Card.StandsOn(f.Check.Id, f.Index)).ToList();
        var addresses = findings.SelectMany(f => f.Trace.Direct.Select(r => r.Address)).Concat(card.Steps.Select(s => s.Address).OfType<FieldAddress>())
            .Concat(card.Steps.Where(s => s.Plan is not null).Select(s => s.Step.What).Distinct().SelectMany(joint => PlanReads(now, joint)));
        return new Examined(
            findings,
            addresses.DistinctBy(a => a.Path).OrderBy(a => a.Path, StringComparer.Ordinal).ToDictionary(a => a.Path, a => Written(now.Find(a)), StringComparer.Ordinal),
            findings.SelectMany(f => f.Trace.Limits).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToDictionary(n => n, n => LimitOf(now, n), StringComparer.Ordinal));
    }

    /// <summary>A limit of the builder's own; empty for a check's usual one.</summary>
    internal static string LimitOf(Snapshot now, string name) => now.Limits.TryGetValue(name, out var own) ? own.Text : "";

    private static IEnumerable<FieldAddress> PlanReads(Snapshot now, string joint)
    {
        var view = new View(now);
        TighteningPlan.Of(view, joint);
        return view.Trace.Direct.Select(r => r.Address);
    }

    /// <summary>What was found, as it is kept with a signature.</summary>
    internal static string Written(Found? found)
    {
        var text = found?.Value.Written ?? Unknown;
        return text.Length <= Long ? text : $"sha256 {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16]}";
    }

    /// <summary>The same for people.</summary>
    internal static string Shown(string written) => written.StartsWith("sha256 ", StringComparison.Ordinal) ? $"a table ({written[7..13]}…)" : written;

    /// <summary>What speaks against signing the card as it stands.</summary>
    public IEnumerable<Hindrance> Hindrances(CardState card)
    {
        var open = card.Steps.Where(s => !s.Done).ToList();
        if (open.Count > 0)
        {
            yield return new Hindrance(string.Create(CultureInfo.InvariantCulture, $"{open.Count} of {card.Steps.Count} steps {(open.Count == 1 ? "is" : "are")} not done; the next is: {open[0].Words}"), Overridable: false);
        }

        foreach (var wait in card.WaitsFor)
        {
            yield return new Hindrance($"comes after: {wait}", Overridable: true);
        }

        foreach (var finding in Findings.Where(f => f.Verdict is Verdict.FallsShort or Verdict.NotKnownYet))
        {
            yield return new Hindrance($"{finding.Id} {finding.Verdict.Words()}{(finding.Judgement is null ? $" ({finding.Advice})" : $": {finding.ValueIn(imperial: false)}, reserve {finding.ReserveText}")}", Overridable: true);
        }
    }
}
