using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Changes;

/// <summary>A finding before and after a change; one of the two is null when the change brings or takes the part.</summary>
/// <param name="Id">The finding's id.</param>
/// <param name="Before">Without the change.</param>
/// <param name="After">With the change.</param>
public sealed record Move(string Id, Finding? Before, Finding? After)
{
    /// <summary>Whether the verdict is another one.</summary>
    public bool Turned => Before?.Verdict != After?.Verdict;

    /// <summary>Change of the reserve; NaN when it was or is not known.</summary>
    public double Shift => (After?.Reserve ?? double.NaN) - (Before?.Reserve ?? double.NaN);
}

/// <summary>A field that a change calls to be measured.</summary>
/// <param name="Path">Path under which the value is written.</param>
/// <param name="Field">The field.</param>
/// <param name="Reason">Why.</param>
public sealed record ToMeasure(string Path, Field Field, string Reason);

/// <summary>What a change does: findings that moved, and what must be measured again.</summary>
/// <param name="Change">The change.</param>
/// <param name="Moves">Findings that moved, turned verdicts first, then by how far the reserve moved.</param>
/// <param name="Measure">What must be measured, in the order of the paths.</param>
/// <param name="Still">Findings that did not move.</param>
public sealed record Consequences(Change Change, IReadOnlyList<Move> Moves, IReadOnlyList<ToMeasure> Measure, int Still)
{
    /// <summary>Compares the build as it is switched, without and with a change.</summary>
    public static Consequences Of(BuildBook book, Change change, Appraiser appraiser)
    {
        var others = book.On.Where(id => id != change.Id).ToHashSet(StringComparer.Ordinal);
        var with = new Snapshot(book, others.Append(change.Id).ToHashSet(StringComparer.Ordinal));
        var before = appraiser.Appraise(new Snapshot(book, others)).ToDictionary(f => f.Id, StringComparer.Ordinal);
        var after = appraiser.Appraise(with).ToDictionary(f => f.Id, StringComparer.Ordinal);
        var all = before.Keys.Union(after.Keys, StringComparer.Ordinal)
            .Select(id => new Move(id, before.GetValueOrDefault(id), after.GetValueOrDefault(id)))
            .ToList();
        var moves = all.Where(Moved)
            .OrderByDescending(m => m.Turned)
            .ThenByDescending(m => double.IsNaN(m.Shift) ? double.MaxValue : Math.Abs(m.Shift))
            .ToList();
        return new Consequences(change, moves, [.. Wanted(change, with, moves)], all.Count - moves.Count);
    }

    private static bool Moved(Move move)
    {
        if (move.Turned)
        {
            return true;
        }

        // Runs repeat to about 1e-6; less than that is not a move.
        var (a, b) = (move.Before!.Judgement, move.After!.Judgement);
        return a is not null && b is not null && (Apart(a.Value, b.Value) || Apart(a.Reserve, b.Reserve));
    }

    private static bool Apart(double a, double b) => Math.Abs(a - b) > 1e-5 * Math.Max(Math.Abs(a), Math.Abs(b));

    /// <summary>
    /// Readings taken before the change on which findings rest that the change moves by its own fields, and the parts that
    /// the change brings. A finding that moves only through the engine run calls for no reading: a charge cooler does not
    /// make anybody measure the stroke again.
    /// </summary>
    private static IEnumerable<ToMeasure> Wanted(Change change, Snapshot with, List<Move> moves)
    {
        var old = moves
            .Select(m => m.After?.Trace.Direct.ToList() ?? [])
            .Where(reads => reads.Exists(r => change.Sets(r.Address)))
            .SelectMany(reads => reads)
            .Where(r => r.Found?.Reading is { } reading && reading.Under?.Contains(change.Id) != true)
            .Select(r => new ToMeasure(r.Found!.Source, r.Address.Field, "read before the change"));
        var brought = change.Values
            .Where(v => v.Value.Field.Measured.Length > 0 && v.Value.How != Values.How.Measured)
            .Select(v => (Address: FieldCatalogue.Address(v.Key), v.Value))
            .Where(v => with.Find(v.Address)?.Reading is null)
            .Select(v => new ToMeasure(v.Address.Path, v.Value.Field, "new with the change and not measured yet"));
        return old.Concat(brought).DistinctBy(w => w.Path).OrderBy(w => w.Path, StringComparer.Ordinal);
    }
}
