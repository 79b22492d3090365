using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Build;

/// <summary>What one layer of a book says of a field.</summary>
/// <param name="Origin">Kind of the layer.</param>
/// <param name="Change">Id of the change; empty for baseline and readings.</param>
/// <param name="Source">Path under which it is written there.</param>
/// <param name="Value">The value.</param>
/// <param name="Holds">Whether it is what holds, or a part of the mean that holds.</param>
/// <param name="Why">Why it holds or does not, in a few words.</param>
public sealed record Layer(Origin Origin, string Change, string Source, KnownValue Value, bool Holds, string Why);

/// <summary>All that the layers of a book say of a field, and which of it holds.</summary>
public static class Layers
{
    /// <summary>Every value written for an address or a group of it: baseline, changes, readings in order.</summary>
    /// <param name="book">The build.</param>
    /// <param name="now">The values that hold.</param>
    /// <param name="address">The field.</param>
    public static IReadOnlyList<Layer> Of(BuildBook book, Snapshot now, FieldAddress address)
    {
        var found = now.Find(address);
        return
        [
            .. Written(address, book.Baseline, Origin.Baseline, "", found, isOn: true),
            .. book.Changes.SelectMany(c => Written(address, c.Values, Origin.Change, c.Id, found, now.On.Contains(c.Id))),
            .. Readings(book, now, address, found),
        ];
    }

    private static IEnumerable<Layer> Written(FieldAddress address, IReadOnlyDictionary<string, KnownValue> values, Origin origin, string change, Found? found, bool isOn)
    {
        foreach (var source in address.WithGroups().Select(a => a.Path).Where(values.ContainsKey))
        {
            var holds = isOn && found is not null && (found.Origin, found.Under, found.Source) == (origin, change, source);
            yield return new Layer(origin, change, source, values[source], holds, holds ? "holds" : isOn ? Instead(found, origin, change) : "the change is off");
        }
    }

    private static IEnumerable<Layer> Readings(BuildBook book, Snapshot now, FieldAddress address, Found? found)
    {
        var groups = address.WithGroups().Select(a => a.Path).ToHashSet(StringComparer.Ordinal);
        foreach (var reading in book.Measurements.Where(m => groups.Contains(m.Address.Path)))
        {
            var (holds, why) = Standing(now, address, reading, found);
            yield return new Layer(Origin.Measurement, "", reading.Address.Path, reading.Value, holds, why);
        }
    }

    private static (bool Holds, string Why) Standing(Snapshot now, FieldAddress address, Measurement reading, Found? found)
    {
        if (!now.Holds(reading, address))
        {
            return (false, "taken of another part: other changes bore on it then");
        }

        if (reading.Address.Path != found?.Source)
        {
            return (false, "a reading of the part itself goes before one of its group");
        }

        return found.Repeated.Any(r => ReferenceEquals(r, reading))
            ? (true, found.Repeats > 1 ? "holds, in the mean" : "holds")
            : (false, "a later reading goes before it");
    }

    private static string Instead(Found? found, Origin origin, string change) => found?.Origin switch
    {
        Origin.Measurement => "a reading goes before it",
        Origin.Change when origin == Origin.Baseline => "a change goes before it",
        Origin.Change when found.Under != change => "a later change goes before it",
        _ => "the value of the part itself goes before that of its group",
    };
}
