using System.Collections.Concurrent;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Build;

/// <summary>Where a value of a snapshot comes from.</summary>
public enum Origin
{
    /// <summary>The engine as it was.</summary>
    Baseline,

    /// <summary>A change that is on.</summary>
    Change,

    /// <summary>A reading.</summary>
    Measurement,
}

/// <summary>A value found for a field.</summary>
/// <param name="Value">The value.</param>
/// <param name="Source">Path under which it is written: the group's path when the group's value holds.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="Under">Id of the change; empty for baseline and readings.</param>
/// <param name="Reading">The latest reading; null for baseline and changes.</param>
/// <param name="Repeats">How many readings the value is the mean of; 1 when it is no mean.</param>
public sealed record Found(KnownValue Value, string Source, Origin Origin, string Under, Measurement? Reading, int Repeats = 1)
{
    /// <summary>The readings of which it is the mean, or the one that it is; none for baseline and changes.</summary>
    public IReadOnlyList<Measurement> Repeated { get; init; } = [];

    /// <summary>Where it comes from, for people: "baseline", "change bored", "reading", "mean of 3 readings".</summary>
    public string From => Origin switch
    {
        Origin.Measurement when Repeats > 1 => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"mean of {Repeats} readings"),
        Origin.Measurement => "reading",
        Origin.Change => $"change {Under}",
        _ => "baseline",
    };
}

/// <summary>
/// The values that hold at one moment: the latest reading with its repeats, else the last change that sets the field, else the baseline;
/// in each of these the instance before its group. A reading belongs to the part that was there when it was taken, so it
/// holds only while the same changes bear on its field.
/// </summary>
public sealed class Snapshot
{
    private readonly BuildBook _book;
    private readonly ConcurrentDictionary<string, Found?> _found = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, bool> _uses = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, IReadOnlyList<string>> _indices = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Measurement>> _readings;
    private readonly List<Change> _changes;

    /// <param name="book">The build.</param>
    /// <param name="on">Ids of the changes laid over the baseline.</param>
    public Snapshot(BuildBook book, IReadOnlySet<string> on)
    {
        _book = book;
        On = on;
        _changes = [.. book.Changes.Where(c => on.Contains(c.Id)).Reverse()];
        _readings = book.Measurements.GroupBy(m => m.Address.Path).ToDictionary(g => g.Key, g => g.Reverse().ToList(), StringComparer.Ordinal);
    }

    /// <summary>Ids of the changes laid over the baseline.</summary>
    public IReadOnlySet<string> On { get; }

    /// <summary>Limits that the user has set.</summary>
    public IReadOnlyDictionary<string, LimitSetting> Limits => _book.Limits;

    /// <summary>The value that holds for this address, or null.</summary>
    public Found? Find(FieldAddress address) => _found.GetOrAdd(address.Path, _ => Resolve(address));

    /// <summary>Every value that holds, by the path under which it is written.</summary>
    public IEnumerable<Found> All() => Paths().Order(StringComparer.Ordinal).Select(p => Find(FieldCatalogue.Address(p))).OfType<Found>();

    /// <summary>Index keys that the book uses for a subject, in order; groups such as "inlet" included.</summary>
    public IReadOnlyList<string> Indices(Subject subject) => _indices.GetOrAdd(subject.Path, Used);

    /// <summary>Whether the book says anything of a part: "blower", "joint[head]".</summary>
    public bool Uses(string part) => _uses.GetOrAdd(part, p => Paths().Any(path => path.StartsWith(p, StringComparison.Ordinal) && (path.Length == p.Length || path[p.Length] is '.' or '[')));

    private List<string> Used(string subject)
    {
        var open = subject + "[";
        return [.. Paths().Where(p => p.StartsWith(open, StringComparison.Ordinal)).Select(p => p[open.Length..p.IndexOf(']', StringComparison.Ordinal)]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    private HashSet<string> Paths() => [.. _book.Baseline.Keys, .. _changes.SelectMany(c => c.Values.Keys), .. _readings.Keys];

    private Found? Resolve(FieldAddress address)
    {
        var chain = address.WithGroups().ToList();
        foreach (var path in chain.Select(a => a.Path))
        {
            if (_readings.TryGetValue(path, out var readings) && readings.FindAll(r => Holds(r, address)) is [var latest, ..] holding)
            {
                var repeats = Repeats.Of(latest, holding);
                return new Found(Repeats.Mean(repeats), path, Origin.Measurement, "", latest, repeats.Count) { Repeated = repeats };
            }
        }

        foreach (var change in _changes)
        {
            if (First(chain, change.Values) is { } changed)
            {
                return new Found(changed.Value, changed.Path, Origin.Change, change.Id, null);
            }
        }

        return First(chain, _book.Baseline) is { } original ? new Found(original.Value, original.Path, Origin.Baseline, "", null) : null;
    }

    /// <summary>Whether a reading is of the part that is there now: the same changes bear on the address as when it was taken.</summary>
    public bool Holds(Measurement reading, FieldAddress address) =>
        reading.Under is null
        || _book.Changes.Where(c => c.Sets(address)).All(c => On.Contains(c.Id) == reading.Under.Contains(c.Id));

    private static (KnownValue Value, string Path)? First(List<FieldAddress> chain, IReadOnlyDictionary<string, KnownValue> values)
    {
        foreach (var path in chain.Select(a => a.Path))
        {
            if (values.TryGetValue(path, out var value))
            {
                return (value, path);
            }
        }

        return null;
    }
}
