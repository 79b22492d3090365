using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Checks;

/// <summary>The answer of a check.</summary>
public enum Verdict
{
    /// <summary>The reserve is at least 1 with the uncertainty counted against it.</summary>
    Holds,

    /// <summary>The reserve is under 1 even with the uncertainty counted for it.</summary>
    FallsShort,

    /// <summary>The edge lies inside the uncertainty.</summary>
    TooCloseToTell,

    /// <summary>Something needed is not known.</summary>
    NotKnownYet,
}

/// <summary>How a verdict is spoken.</summary>
public static class Verdicts
{
    /// <summary>"holds", "falls short", "too close to tell", "not known yet".</summary>
    public static string Words(this Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.FallsShort => "falls short",
        Verdict.TooCloseToTell => "too close to tell",
        _ => "not known yet",
    };
}

/// <summary>What one uncertain value does to a reserve.</summary>
/// <param name="Found">The value.</param>
/// <param name="Effect">Change of the reserve for one standard uncertainty of the value.</param>
/// <param name="OnLower">Change of the margin at the lower limit, SI, for the same.</param>
/// <param name="OnUpper">Change of the margin at the upper limit, SI, for the same.</param>
public sealed record Contribution(Found Found, double Effect, double OnLower, double OnUpper);

/// <summary>What a check found for one instance.</summary>
public sealed record Finding
{
    /// <summary>The check.</summary>
    public required Check Check { get; init; }

    /// <summary>Instance that it is about; empty for the whole engine.</summary>
    public required string Index { get; init; }

    /// <summary>Verdict by the stated decision rule.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Value and limits; null when not known yet.</summary>
    public Judgement? Judgement { get; init; }

    /// <summary>What it read and worked.</summary>
    public required Trace Trace { get; init; }

    /// <summary>Standard uncertainty of the reserve.</summary>
    public double ReserveUncertainty { get; init; }

    /// <summary>Standard uncertainty of the value, SI.</summary>
    public double ValueUncertainty { get; init; }

    /// <summary>The rule that gave the verdict.</summary>
    public DecisionRule Rule { get; init; } = DecisionRule.Usual;

    /// <summary>What the shop's choice of the rule rests on: kept apart, for it is no value of the part.</summary>
    public Trace RuleTrace { get; init; } = new();

    /// <summary>How far the value lies inside the lower limit.</summary>
    public Margin Lower { get; init; } = new(double.NaN, double.NaN);

    /// <summary>How far the value lies inside the upper limit.</summary>
    public Margin Upper { get; init; } = new(double.NaN, double.NaN);

    /// <summary>Probability that the true value lies inside the limits.</summary>
    public double Conformity { get; init; } = double.NaN;

    /// <summary>Uncertain values by the size of their effect, largest first.</summary>
    public IReadOnlyList<Contribution> Contributions { get; init; } = [];

    /// <summary>What is needed and not known.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>"squish[1]", or "squish" for the whole engine.</summary>
    public string Id => Index.Length == 0 ? Check.Id : $"{Check.Id}[{Index}]";

    /// <summary>Capacity over demand; NaN when not known.</summary>
    public double Reserve => Judgement?.Reserve ?? double.NaN;

    /// <summary>"1.12 mm ± 0.028": the value with its expanded uncertainty (k = 2); empty when not known.</summary>
    public string ValueIn(bool imperial) => Judgement is not { } j ? "" : j.Print(j.Value, imperial) + (ValueUncertainty > 0
        ? $" ± {Figures.Number(2 * ValueUncertainty / Figures.Shown(j.Dimension, j.Unit, imperial).Factor, 2)}"
        : "");

    /// <summary>"1.12 ± 0.028": the reserve with its expanded uncertainty (k = 2); empty when not known.</summary>
    public string ReserveText => Judgement is null ? "" : Figures.Number(Reserve, 3) + (ReserveUncertainty > 0 ? $" ± {Figures.Number(2 * ReserveUncertainty, 2)}" : "");

    /// <summary>Assumed and customary amounts that it read and that carry no ±.</summary>
    public IEnumerable<string> TakenAsExact => Trace.Reads
        .Where(r => r.Address.Field.Kind == FieldKind.Amount && (r.Found is null ? r.Fallback is not null and not "none" : r.Found.Value.How == How.Assumed && r.Found.Value.StandardUncertainty == 0))
        .Select(r => r.Found?.Source ?? r.Address.Path)
        .Distinct(StringComparer.Ordinal);

    /// <summary>Questions about values outside what is usual.</summary>
    public IEnumerable<string> Questions => Trace.Reads.Select(r => r.Found?.Value.Question ?? "").Where(q => q.Length > 0).Distinct(StringComparer.Ordinal);

    /// <summary>What to do next, in one sentence; empty when it holds.</summary>
    public string Advice => Verdict switch
    {
        Verdict.NotKnownYet => "wanted: " + Wanted.Words(Missing),
        Verdict.TooCloseToTell when Contributions.Count > 0 => $"measure {Contributions[0].Found.Source} more closely",
        _ => "",
    };
}
