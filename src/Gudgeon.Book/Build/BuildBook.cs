using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Build;

/// <summary>Everything about one build: the engine as it was, what was changed, what was measured.</summary>
public sealed record BuildBook
{
    /// <summary>Name of the build.</summary>
    public required string Name { get; init; }

    /// <summary>What the builder says of it.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Values of the engine as it left its factory, by path.</summary>
    public required IReadOnlyDictionary<string, KnownValue> Baseline { get; init; }

    /// <summary>Changes in the order in which they are laid over the baseline.</summary>
    public required IReadOnlyList<Change> Changes { get; init; }

    /// <summary>Readings in the order in which they were taken.</summary>
    public required IReadOnlyList<Measurement> Measurements { get; init; }

    /// <summary>Limits that the user has set in place of a check's own, by the limit's name.</summary>
    public required IReadOnlyDictionary<string, LimitSetting> Limits { get; init; }

    /// <summary>Runs that somebody wanted kept, in the order in which they were.</summary>
    public IReadOnlyList<KeptRun> Runs { get; init; } = [];

    /// <summary>Job cards of the book's own, in place of the program's or besides.</summary>
    public IReadOnlyList<CardTemplate> Cards { get; init; } = [];

    /// <summary>What was done to job cards, in order.</summary>
    public IReadOnlyList<CardAct> Acts { get; init; } = [];

    /// <summary>Ids of the changes that are on.</summary>
    public IReadOnlySet<string> On => Changes.Where(c => c.On).Select(c => c.Id).ToHashSet(StringComparer.Ordinal);

    /// <summary>The values that hold with the changes as they are switched.</summary>
    public Snapshot Now() => new(this, On);

    /// <summary>The build with values laid over all that it holds, readings included: to see what they would do, not to be kept.</summary>
    /// <param name="values">The values, by path.</param>
    public BuildBook Supposing(IReadOnlyDictionary<string, KnownValue> values) => values.Count == 0 ? this : this with
    {
        Changes = [.. Changes, new Change("as-asked", "Asked for once", "", true, values)],
        Measurements = [.. Measurements.Where(m => !m.Address.WithGroups().Any(a => values.ContainsKey(a.Path)))],
    };

    /// <summary>The change with this id.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public Change Find(string id) => Changes.FirstOrDefault(c => c.Id == id)
        ?? throw new BadInputException(Changes.Count == 0
            ? $"there is no change '{id}'; the book has none yet"
            : $"there is no change '{id}'; the nearest is '{Nearest.To(id, Changes.Select(c => c.Id))}'");
}

/// <summary>A named set of new values laid over the baseline.</summary>
/// <param name="Id">Short name, unique in the book.</param>
/// <param name="Title">What was done.</param>
/// <param name="Reason">Why.</param>
/// <param name="On">Whether it is laid over the baseline now.</param>
/// <param name="Values">The new values, by path.</param>
public sealed record Change(string Id, string Title, string Reason, bool On, IReadOnlyDictionary<string, KnownValue> Values)
{
    /// <summary>Whether it sets this address or a group that the address belongs to.</summary>
    public bool Sets(FieldAddress address) => address.WithGroups().Any(a => Values.ContainsKey(a.Path));
}

/// <summary>A reading of a field by a person with an instrument at a time.</summary>
/// <param name="Address">What was measured.</param>
/// <param name="Value">The reading.</param>
/// <param name="Under">Ids of the changes that were on when it was taken; null when not recorded, and then it always holds.</param>
public sealed record Measurement(FieldAddress Address, KnownValue Value, IReadOnlySet<string>? Under)
{
    /// <summary>A GUID that was made where the reading was taken, so that a reading sent twice is taken once; empty when it has none.</summary>
    public string Id { get; init; } = "";

    /// <summary>The entry of the journal that brought it; 0 in a book without one.</summary>
    public long Revision { get; init; }

    /// <summary>Reads the text of an id, so that one id has one spelling.</summary>
    /// <exception cref="BadInputException">It is no GUID.</exception>
    public static string ReadId(string text) => Guid.TryParseExact(text.Trim(), "D", out var id)
        ? id.ToString("D")
        : throw new BadInputException($"given '{text}' as the id of a reading, wanted a GUID such as 4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f");
}

/// <summary>A limit that the user has set.</summary>
/// <param name="Text">Value with its unit.</param>
/// <param name="Reason">Why.</param>
public sealed record LimitSetting(string Text, string Reason);
