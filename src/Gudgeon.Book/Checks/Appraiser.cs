using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;
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
    public IReadOnlyList<Finding> Appraise(Snapshot snapshot, IEnumerable<Check>? checks = null) =>
        [.. (checks ?? CheckCatalogue.All).SelectMany(c => Instances(c, snapshot).Select(i => Appraise(c, i, snapshot)))];

    /// <summary>One finding on a snapshot.</summary>
    public Finding Appraise(Check check, string index, Snapshot snapshot)
    {
        var key = $"{check.Id}[{index}]";
        if (_kept.TryGetValue(key, out var kept) && kept.Trace.HoldsIn(snapshot))
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
            return check.Examine(new View(snapshot, desk, nudged, slightly), index);
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
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
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
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

        // A demand of nothing has reserve without end, and no nudge brings it near the edge.
        var (effects, valueVariance) = WithUncertainty && double.IsFinite(judgement.Reserve) ? Effects(check, index, snapshot, view.Trace, judgement) : ([], 0);
        var spread = Math.Sqrt(effects.Sum(c => c.Effect * c.Effect));
        return new Finding
        {
            Check = check,
            Index = index,
            Judgement = judgement,
            Verdict = DecisionRule.Decide(judgement.Reserve, spread),
            Trace = view.Trace,
            ReserveUncertainty = spread,
            ValueUncertainty = Math.Sqrt(valueVariance),
            Contributions = effects,
        };
    }

    private (List<Contribution> Effects, double ValueVariance) Effects(Check check, string index, Snapshot snapshot, Trace trace, Judgement judgement)
    {
        var effects = new List<Contribution>();
        var variance = 0.0;
        foreach (var found in trace.Uncertain)
        {
            var u = found.Value.StandardUncertainty;
            var up = At(found.Value.Si + u);
            var down = At(found.Value.Si - u);
            var (effect, valueEffect) = (up, down) switch
            {
                ({ } a, { } b) => ((a.Reserve - b.Reserve) / 2, (a.Value - b.Value) / 2),
                ({ } a, null) => (a.Reserve - judgement.Reserve, a.Value - judgement.Value),
                (null, { } b) => (judgement.Reserve - b.Reserve, judgement.Value - b.Value),
                _ => (double.NaN, double.NaN),
            };
            if (effect != 0)
            {
                effects.Add(new Contribution(found, effect));
            }

            variance += valueEffect * valueEffect;

            Judgement? At(double si) => Nudge(check, index, snapshot, new Dictionary<string, double>(StringComparer.Ordinal) { [found.Source] = si });
        }

        effects.Sort((a, b) => Math.Abs(b.Effect).CompareTo(Math.Abs(a.Effect)));
        return (effects, variance);
    }
}
