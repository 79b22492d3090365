using System.Globalization;
using System.Text.Json;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>Reads a build from JSON. Every error says file, line, path and reason.</summary>
/// <param name="file">Name of the file, for the sentences.</param>
/// <param name="lines">Whether the lines of what is read are lines of the file.</param>
internal sealed class BookReader(string file, bool lines = true)
{
    /// <summary>Version of the format that this program writes.</summary>
    public const int Format = 1;

    private static readonly string[] Known = ["$schema", "gudgeon", "name", "notes", "baseline", "changes", "measurements", "limits", "runs", "cards", "acts"];
    private static readonly string[] ValueMembers = ["value", "columns", "rows", "how", "by", "on", "with", "note"];

    /// <summary>The build that a document describes.</summary>
    /// <exception cref="BadInputException">Anything that cannot be taken.</exception>
    public BuildBook Read(JsonPlace root)
    {
        Expect(root, JsonValueKind.Object, "", "an object");
        foreach (var (name, value) in root.Members.Where(m => !Known.Contains(m.Name)))
        {
            throw Bad(value, name, $"there is no such part of a book; the nearest is '{Nearest.To(name, Known)}'");
        }

        if (root["gudgeon"] is not { Kind: JsonValueKind.Number } format || format.Text != Format.ToString(CultureInfo.InvariantCulture))
        {
            throw Bad(root["gudgeon"] ?? root, "gudgeon", $"wanted the number {Format}, the format of this book");
        }

        var changes = Items(root["changes"], "changes").Select((c, i) => Change(c, $"changes[{i}]")).ToList();
        if (changes.GroupBy(c => c.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw Bad(root["changes"]!, "changes", $"the change '{twice.Key}' is given twice");
        }

        return new BuildBook
        {
            Name = Text(root, "name", "") is { Length: > 0 } name1 ? name1 : throw Bad(root, "name", "missing; wanted the name of the build"),
            Notes = Text(root, "notes", ""),
            Baseline = root["baseline"] is { } baseline ? Values(baseline, "baseline", How.Manual) : new Dictionary<string, KnownValue>(StringComparer.Ordinal),
            Changes = changes,
            Measurements = Measurements(root["measurements"]),
            Limits = Limits(root["limits"]),
            Runs = [.. Items(root["runs"], "runs").Select((r, i) => new RunReader(this).Read(r, $"runs[{i}]"))],
            Cards = Cards(root["cards"]),
            Acts = [.. Items(root["acts"], "acts").Select((a, i) => new CardReader(this).Act(a, $"acts[{i}]"))],
        };
    }

    /// <summary>A reading on its own.</summary>
    internal Measurement Reading(JsonPlace place) => Measurement(place, "the reading");

    /// <summary>Error at a place.</summary>
    internal BadInputException Bad(JsonPlace place, string path, string reason) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{file}{(lines && place.Line > 0 ? $", line {place.Line}" : "")}, {path}: {reason}"));

    private List<CardTemplate> Cards(JsonPlace? place)
    {
        var cards = Items(place, "cards").Select((c, i) => new CardReader(this).Card(c, $"cards[{i}]") with { Own = true }).ToList();
        return cards.GroupBy(c => c.Id).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? throw Bad(place!, "cards", $"the card '{twice.Key}' is given twice")
            : cards;
    }

    private Change Change(JsonPlace place, string path)
    {
        Expect(place, JsonValueKind.Object, path, "an object");
        Only(place, path, "id", "title", "reason", "on", "set");
        var id = ShortName(place, "id", path);
        var on = place["on"] switch
        {
            null => true,
            { Kind: JsonValueKind.True } => true,
            { Kind: JsonValueKind.False } => false,
            { } other => throw Bad(other, path + ".on", "wanted true or false"),
        };
        var values = place["set"] is { } set ? Values(set, $"changes.{id}", How.Assumed) : new Dictionary<string, KnownValue>(StringComparer.Ordinal);
        return new Change(id, Text(place, "title", path), Text(place, "reason", path), on, values);
    }

    private List<Measurement> Measurements(JsonPlace? place)
    {
        var readings = Items(place, "measurements").Select((m, i) => Measurement(m, $"measurements[{i}]")).ToList();
        return readings.Where(r => r.Id.Length > 0).GroupBy(r => r.Id).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? throw Bad(place!, "measurements", $"the reading with the id {twice.Key} is given twice")
            : readings;
    }

    private Measurement Measurement(JsonPlace place, string path)
    {
        Expect(place, JsonValueKind.Object, path, "an object");
        Only(place, path, [.. ValueMembers, "field", "id", "under"]);
        var fieldPath = Text(place, "field", path);
        var address = Guard(place, path + ".field", () => FieldCatalogue.Address(fieldPath));
        var under = place["under"] is { } list ? Items(list, path + ".under").Select(i => i.Text).ToHashSet(StringComparer.Ordinal) : null;
        var id = Text(place, "id", path);
        return new Measurement(address, Value(place, address.Field, fieldPath, How.Measured), under)
        {
            Id = id.Length == 0 ? "" : Guard(place, path + ".id", () => Build.Measurement.ReadId(id)),
        };
    }

    private Dictionary<string, LimitSetting> Limits(JsonPlace? place)
    {
        var limits = new Dictionary<string, LimitSetting>(StringComparer.Ordinal);
        if (place is null)
        {
            return limits;
        }

        Expect(place, JsonValueKind.Object, "limits", "an object");
        foreach (var (name, value) in place.Members)
        {
            Expect(value, JsonValueKind.Object, $"limits.{name}", "an object with value and reason");
            Only(value, $"limits.{name}", "value", "reason");
            var reason = Text(value, "reason", "limits." + name);
            limits[name] = reason.Length > 0
                ? new LimitSetting(Text(value, "value", "limits." + name), reason)
                : throw Bad(value, "limits." + name, "missing the reason; a limit of one's own needs one");
        }

        return limits;
    }

    private Dictionary<string, KnownValue> Values(JsonPlace place, string where, How how)
    {
        Expect(place, JsonValueKind.Object, where, "an object of fields");
        var values = new Dictionary<string, KnownValue>(StringComparer.Ordinal);
        foreach (var (address, value) in Leaves(place))
        {
            Only(value, address.Path, ValueMembers);
            values[address.Path] = Value(value, address.Field, address.Path, how);
        }

        return values;
    }

    /// <summary>The values in a baseline or a change, each with its address, in the order in which they are written.</summary>
    internal IEnumerable<(FieldAddress Address, JsonPlace Value)> Leaves(JsonPlace place, string path = "", string index = "")
    {
        foreach (var (name, value) in place.Members)
        {
            var instance = name.StartsWith('[') && name.EndsWith(']');
            var plain = instance ? path : path.Length == 0 ? name : $"{path}.{name}";
            var shown = instance ? path + name : index.Length == 0 ? plain : $"{path}{index}.{name}";
            if (instance)
            {
                if (path.Length == 0 || index.Length > 0)
                {
                    throw Bad(value, path + index + name, "an index stands once, under the part that it tells apart, such as cylinder, [1], bore");
                }

                Expect(value, JsonValueKind.Object, shown, "an object of fields");
            }
            else if (FieldCatalogue.Find(plain) is not null)
            {
                yield return (Guard(value, shown, () => FieldCatalogue.Address(shown)), value);
                continue;
            }
            else if (value.Kind != JsonValueKind.Object || !FieldCatalogue.Subjects.Any(s => s.Path == plain || s.Path.StartsWith(plain + ".", StringComparison.Ordinal)))
            {
                throw Bad(value, shown, $"there is no such field; the nearest is '{Nearest.To(plain, FieldCatalogue.All.Select(f => f.Path))}'");
            }

            foreach (var leaf in Leaves(value, plain, instance ? name : index))
            {
                yield return leaf;
            }
        }
    }

    private KnownValue Value(JsonPlace place, Field field, string path, How usual)
    {
        if (place.Kind != JsonValueKind.Object)
        {
            return Read(place, field, path, usual);
        }

        var how = Text(place, "how", path) is { Length: > 0 } word
            ? HowKnown(place["how"]!, path, word)
            : usual;
        var content = place["rows"] is not null
            ? KnownValue.Of(field, ReadTable(place, field, path), how)
            : Read(place["value"] ?? throw Bad(place, path, "missing the value"), field, path, how);
        return content with { By = Text(place, "by", path), On = Text(place, "on", path), With = Text(place, "with", path), Note = Text(place, "note", path) };
    }

    /// <summary>By name only: a number is not a way of knowing, though an enumeration would take it.</summary>
    private How HowKnown(JsonPlace place, string path, string word)
    {
        foreach (var how in Enum.GetValues<How>())
        {
            if (string.Equals(how.ToString(), word, StringComparison.OrdinalIgnoreCase))
            {
                return how;
            }
        }

        throw Bad(place, path, $"how it is known: given '{word}', wanted manual, drawing, measured or assumed");
    }

    private KnownValue Read(JsonPlace place, Field field, string path, How how)
    {
        var text = Scalar(place, path);
        return Guard(place, path, () => KnownValue.Read(field, text, how));
    }

    private Table ReadTable(JsonPlace place, Field field, string path)
    {
        if (field.Kind != FieldKind.Table)
        {
            throw Bad(place, path, "wanted one value, not a table");
        }

        var headings = place["columns"] is { } columns
            ? Items(columns, path + ".columns").Select(c => c.Text).ToList()
            : [.. field.Columns.Where(c => !c.Optional).Select(c => $"{c.Name} {c.Unit}".Trim())];
        var rows = Items(place["rows"], path + ".rows").Select(r => (IReadOnlyList<double>)[.. Row(r, path).Select(n => Number(n, path))]).ToList();
        return Guard(place, path, () => Table.Read(field, headings, rows));
    }

    private IEnumerable<JsonPlace> Row(JsonPlace row, string path) => row.Kind == JsonValueKind.Number ? [row] : Items(row, path + ".rows");

    private double Number(JsonPlace place, string path) =>
        place.Kind == JsonValueKind.Number && double.TryParse(place.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw Bad(place, path, $"given '{place.Text}' in the table, wanted a number");

    private string Scalar(JsonPlace place, string path) => place.Kind is JsonValueKind.String or JsonValueKind.Number
        ? place.Text
        : throw Bad(place, path, "wanted a value such as \"34.52 mm ± 0.01 mm\"");

    internal List<JsonPlace> Items(JsonPlace? place, string path)
    {
        if (place is null)
        {
            return [];
        }

        Expect(place, JsonValueKind.Array, path, "a list");
        return place.Items;
    }

    internal string Text(JsonPlace place, string name, string path) => place[name] switch
    {
        null => "",
        { Kind: JsonValueKind.String or JsonValueKind.Number } text => text.Text,
        { } other => throw Bad(other, $"{path}.{name}".TrimStart('.'), "wanted text"),
    };

    /// <summary>A word of an enumeration.</summary>
    internal TEnum Word<TEnum>(JsonPlace place, string path)
        where TEnum : struct, Enum
    {
        foreach (var value in Enum.GetValues<TEnum>())
        {
            if (EnumWords.Of(value.ToString()) == place.Text)
            {
                return value;
            }
        }

        throw Bad(place, path, $"given '{place.Text}', wanted {string.Join(" or ", Enum.GetNames<TEnum>().Select(EnumWords.Of))}");
    }

    /// <summary>A name by which people call a change or a job card.</summary>
    internal string ShortName(JsonPlace place, string name, string path) => Text(place, name, path) is var id && IsShortName(id)
        ? id
        : throw Bad(place, $"{path}.{name}", $"given '{id}', wanted a short name of letters, digits and dashes");

    /// <summary>Whether a word is such a name.</summary>
    internal static bool IsShortName(string word) => word.Length > 0 && word.All(c => char.IsLetterOrDigit(c) || c is '-' or '_');

    internal void Only(JsonPlace place, string path, params string[] names)
    {
        foreach (var (name, value) in place.Members.Where(m => !names.Contains(m.Name)))
        {
            throw Bad(value, $"{path}.{name}", $"not known here; the nearest is '{Nearest.To(name, names)}'");
        }
    }

    internal void Expect(JsonPlace place, JsonValueKind kind, string path, string wanted)
    {
        if (place.Kind != kind)
        {
            throw Bad(place, path.Length == 0 ? "the book" : path, $"wanted {wanted}");
        }
    }

    internal T Guard<T>(JsonPlace place, string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (BadInputException e)
        {
            throw Bad(place, path, e.Message);
        }
    }
}
