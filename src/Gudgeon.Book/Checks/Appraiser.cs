using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks;

/// <summary>
/// Runs checks on snapshots. A finding is computed again only when something that it read has changed; the uncertainty of
/// each is found by nudging every uncertain value that it read (JCGM 100:2008, 5.1.3 note 2) and adding the effects as
/// squares (eq. 10). Values written once for a group are nudged together, so that shared errors do not cancel by mistake.
/// </summary>
/// <param name="desk">Where engine runs are made and kept.</param>
public sealed class Appraiser(DutyDesk desk)
{
    private readonly Dictionary<string, Finding> _kept = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (Trace Trace, List<string> Indices)> _instances = new(StringComparer.Ordinal);

    /// <summary>Findings computed so far, kept ones not counted.</summary>
    public int Computed { get; private set; }

    /// <summary>Whether uncertainties are worked out; off for sweeps that need only the reserves.</summary>
    public bool WithUncertainty { get; init; } = true;

    /// <summary>Every finding on a snapshot.</summary>
    /// <param name="snapshot">The values that hold.</param>
    /// <param name="checks">The checks to run; all when null.</param>
    /// <param name="progress">Told the share of findings done, 0 to 1.</param>
    public IReadOnlyList<Finding> Appraise(Snapshot snapshot, IEnumerable<Check>? checks = null, IProgress<double>? progress = null)
    {
        var asked = (checks ?? CheckCatalogue.All).SelectMany(c => Instances(c, snapshot).Select(i => (Check: c, Index: i))).ToList();
        var findings = new List<Finding>(asked.Count);
        foreach (var (check, index) in asked)
        {
            findings.Add(Appraise(check, index, snapshot));
            progress?.Report((double)findings.Count / asked.Count);
        }

        return findings;
    }

    /// <summary>One finding on a snapshot.</summary>
    public Finding Appraise(Check check, string index, Snapshot snapshot)
    {
        var key = $"{check.Id}[{index}]";
        if (_kept.TryGetValue(key, out var kept) && kept.Trace.HoldsIn(snapshot) && kept.RuleTrace.HoldsIn(snapshot))
        {
            return kept;
        }

        Computed++;
        return _kept[key] = Examine(check, index, snapshot);
    }

    /// <summary>The judgement with values nudged; null when it cannot be worked.</summary>
    /// <param name="check">The check.</param>
    /// <param name="index">The instance.</param>
    /// <param name="snapshot">The values that hold.</param>
    /// <param name="nudged">SI values put in place of known ones.</param>
    /// <param name="slightly">Whether the nudges are no more than uncertainties.</param>
    public Judgement? Nudge(Check check, string index, Snapshot snapshot, IReadOnlyDictionary<string, double> nudged, bool slightly = true)
    {
        try
        {
            var view = new View(snapshot, desk, nudged, slightly);
            var judgement = check.Examine(view, index);
            return view.Trace.Missing.Any() ? null : judgement;
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException or BadInputException)
        {
            return null;
        }
    }

    private List<string> Instances(Check check, Snapshot snapshot)
    {
        if (_instances.TryGetValue(check.Id, out var kept) && kept.Trace.HoldsIn(snapshot))
        {
            return kept.Indices;
        }

        var view = new View(snapshot, desk);
        List<string> indices = [.. check.Instances(view)];
        _instances[check.Id] = (view.Trace, indices);
        return indices;
    }

    private Finding Examine(Check check, string index, Snapshot snapshot)
    {
        var view = new View(snapshot, desk);
        Judgement? judgement = null;
        try
        {
            judgement = check.Examine(view, index);
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException or BadInputException)
        {
            // With something missing the formula was handed nothing to work on; otherwise the sentence is the finding.
            if (!view.Trace.Missing.Any())
            {
                view.Unknown(e is OutOfRangeException range ? Rows.FormulaCall.Sentence(range) : e.Message);
            }
        }

        var missing = view.Trace.Missing.ToList();
        if (missing.Count > 0 || judgement is null || double.IsNaN(judgement.Reserve))
        {
            return new Finding { Check = check, Index = index, Verdict = Verdict.NotKnownYet, Trace = view.Trace, Missing = missing };
        }

        var nudges = WithUncertainty ? Nudges(check, index, snapshot, view.Trace, judgement) : [];
        double Spread(Func<NudgedValue, double> effect) => Math.Sqrt(nudges.Sum(n => effect(n) * effect(n)));
        Margin At(Limit limit) => new(judgement.Margin(limit), Spread(n => n.Effect(j => j.Margin(limit))));
        var shop = new View(snapshot);
        var (rule, lower, upper, decisive) = (DecisionRule.Of(shop), At(Limit.Lower), At(Limit.Upper), judgement.Decisive);
        return new Finding
        {
            Check = check,
            Index = index,
            Judgement = judgement,
            Rule = rule,
            RuleTrace = shop.Trace,
            Verdict = rule.Decide(lower, upper),
            Lower = lower,
            Upper = upper,
            Trace = view.Trace,
            ReserveUncertainty = Spread(n => n.Effect(j => j.ReserveAt(decisive))),
            ValueUncertainty = Spread(n => n.Effect(j => j.Value)),
            Conformity = DecisionRule.Conformity(lower, upper),
            Contributions = [.. nudges.Select(n => n.On(decisive)).Where(c => c.Effect != 0).OrderByDescending(c => Math.Abs(c.Effect))],
        };
    }

    private NudgedValue[] Nudges(Check check, string index, Snapshot snapshot, Trace trace, Judgement judgement)
    {
        Judgement? At(Found found, double si) => Nudge(check, index, snapshot, new Dictionary<string, double>(StringComparer.Ordinal) { [found.Source] = si });
        var uncertain = trace.Uncertain.ToList();
        var nudges = new NudgedValue[uncertain.Count];
        try
        {
            // Without the desk's token: a desk that may not begin a run still lets checks be nudged that ask for none.
            Parallel.For(0, nudges.Length, i =>
            {
                var (found, value) = (uncertain[i], uncertain[i].Value);
                nudges[i] = new(found, judgement, At(found, value.Si + value.StandardUncertainty), At(found, value.Si - value.StandardUncertainty));
            });
        }
        catch (AggregateException e) when (e.InnerExceptions.All(i => i is OperationCanceledException))
        {
            throw new OperationCanceledException(e.Message, e, desk.Cancellation);
        }

        return nudges;
    }

    /// <summary>The judgement with one value a standard uncertainty up and down; null where it could not be worked.</summary>
    private sealed record NudgedValue(Found Found, Judgement Centre, Judgement? Up, Judgement? Down)
    {
        /// <summary>What the value does to the reserve at one limit, and to the margins at both.</summary>
        public Contribution On(Limit decisive) => new(Found, Effect(j => j.ReserveAt(decisive)), Effect(j => j.Margin(Limit.Lower)), Effect(j => j.Margin(Limit.Upper)));

        /// <summary>Change of a figure for one standard uncertainty of the value; nothing for a figure without end.</summary>
        public double Effect(Func<Judgement, double> figure)
        {
            if (double.IsInfinity(figure(Centre)))
            {
                return 0;
            }

            return (Up, Down) switch
            {
                ({ } up, { } down) => (figure(up) - figure(down)) / 2,
                ({ } up, null) => figure(up) - figure(Centre),
                (null, { } down) => figure(Centre) - figure(down),
                _ => double.NaN,
            };
        }
    }
}
