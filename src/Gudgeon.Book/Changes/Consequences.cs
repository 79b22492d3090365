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
    /// <summary>The check.</summary>
    public Check Check => (After ?? Before)!.Check;

    /// <summary>Whether the verdict is another one.</summary>
    public bool Turned => Before?.Verdict != After?.Verdict;

    /// <summary>Change of the reserve; NaN when it was or is not known.</summary>
    public double Shift => (After?.Reserve ?? double.NaN) - (Before?.Reserve ?? double.NaN);

    /// <summary>1 when the reserve is better after the change, -1 when it is not, 0 when the two cannot be compared.</summary>
    public int Way => double.IsNaN(Shift) ? 0 : Shift > 0 ? 1 : -1;
}

/// <summary>Moves of one check that fare alike: the same verdicts before and after, and the reserve the same way.</summary>
/// <param name="Least">The one with the least reserve after the change.</param>
/// <param name="All">All of them.</param>
public sealed record MovesAlike(Move Least, IReadOnlyList<Move> All);

/// <summary>A field that a change calls to be measured.</summary>
/// <param name="Path">Path under which the value is written.</param>
/// <param name="Field">The field.</param>
/// <param name="Reason">Why.</param>
public sealed record ToMeasure(string Path, Field Field, string Reason);

/// <summary>What a change does: findings that moved, and what must be measured again.</summary>
/// <param name="Change">The change.</param>
/// <param name="Moves">Findings that moved, turned verdicts first, then by how far the reserve moved.</param>
/// <param name="Measure">What must be measured, in the order of the paths.</param>
/// <param name="RestsOn">Other readings from before the change on which what moved rests; they are of parts that the change leaves alone.</param>
/// <param name="Still">Findings that did not move.</param>
public sealed record Consequences(Change Change, IReadOnlyList<Move> Moves, IReadOnlyList<ToMeasure> Measure, IReadOnlyList<string> RestsOn, int Still)
{
    /// <summary>The moves in their order, valves and cylinders that fare alike together.</summary>
    public IEnumerable<MovesAlike> Alike => Moves
        .GroupBy(m => (m.Check.Id, Before: m.Before?.Verdict, After: m.After?.Verdict, m.Way))
        .Select(g => new MovesAlike(g.MinBy(m => m.After?.Reserve ?? double.MaxValue)!, [.. g]));

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
        var old = Old(change, moves).ToList();
        var touched = change.Values.Values.Select(v => v.Field.Subject).ToHashSet();
        return new Consequences(
            change,
            moves,
            [.. old.Where(o => touched.Contains(o.Field.Subject)).Concat(Brought(change, with, book)).DistinctBy(w => w.Path).OrderBy(w => w.Path, StringComparer.Ordinal)],
            [.. old.Where(o => !touched.Contains(o.Field.Subject)).Select(o => o.Path).Order(StringComparer.Ordinal)],
            all.Count - moves.Count);
    }

    private static bool Moved(Move move)
    {
        if (move.Turned)
        {
            return true;
        }

        // Runs repeat to about 1e-6; less than that is not a move.
        var (a, b) = (move.Before!.Judgement, move.After!.Judgement);
        if (a is not null && b is not null && double.IsInfinity(a.Reserve) && double.IsInfinity(b.Reserve))
        {
            return false;
        }

        return a is not null && b is not null && (Apart(a.Value, b.Value) || Apart(a.Reserve, b.Reserve));
    }

    private static bool Apart(double a, double b) => Math.Abs(a - b) > 1e-5 * Math.Max(Math.Abs(a), Math.Abs(b));

    /// <summary>
    /// Readings taken before the change on which findings rest that the change moves by its own fields. A finding that
    /// moves only through the engine run calls for no reading: a charge cooler does not make anybody measure the stroke
    /// again.
    /// </summary>
    private static IEnumerable<ToMeasure> Old(Change change, List<Move> moves) => moves
        .Select(m => m.After?.Trace.Direct.ToList() ?? [])
        .Where(reads => reads.Exists(r => change.Sets(r.Address)))
        .SelectMany(reads => reads)
        .Where(r => r.Found?.Reading is { } reading && reading.Under?.Contains(change.Id) != true)
        .Select(r => new ToMeasure(r.Found!.Source, r.Address.Field, "read before the change"))
        .DistinctBy(w => w.Path);

    /// <summary>Measurable values that the change brings and nobody has read on the new part, as a group or on any instance.</summary>
    /// <param name="change">The change.</param>
    /// <param name="with">The values that hold with it.</param>
    /// <param name="book">The build.</param>
    public static IEnumerable<ToMeasure> Brought(Change change, Snapshot with, BuildBook book) => change.Values
        .Where(v => v.Value.Field.Measured.Length > 0 && v.Value.How != Values.How.Measured)
        .Select(v => (Address: FieldCatalogue.Address(v.Key), v.Value))
        .Where(v => with.Find(v.Address)?.Reading is null && !book.Measurements.Any(m => m.Address.WithGroups().Contains(v.Address) && m.Under?.Contains(change.Id) == true))
        .Select(v => new ToMeasure(v.Address.Path, v.Value.Field, "new with the change and not measured yet"));
}
