using System.Globalization;
using System.Text.Json;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>Places in the JSON tree of a book.</summary>
internal static class BookTree
{
    /// <summary>A book without values.</summary>
    public static JsonPlace Empty(string name) => JsonPlace.Object(
    [
        ("gudgeon", JsonPlace.Of(BookReader.Format)),
        ("name", JsonPlace.Of(name)),
        ("baseline", JsonPlace.Object()),
        ("changes", JsonPlace.Array([])),
        ("measurements", JsonPlace.Array([])),
        ("limits", JsonPlace.Object()),
    ]);

    /// <summary>The list of this name, made when it is not there.</summary>
    public static JsonPlace List(JsonPlace root, string name)
    {
        if (root[name] is null)
        {
            root.Set(name, JsonPlace.Array([]));
        }

        return root[name]!;
    }

    /// <summary>The change with this id.</summary>
    public static JsonPlace Change(JsonPlace root, string id) => List(root, "changes").Items.First(c => c["id"]?.Text == id);

    /// <summary>Puts a value in its place in the baseline or a change.</summary>
    public static void Put(JsonPlace layer, FieldAddress address, JsonPlace value)
    {
        var place = address.Field.Subject.Path.Split('.').Aggregate(layer, (at, part) => at.Child(part));
        if (address.Index.Length > 0)
        {
            place = place.Child($"[{address.Index}]");
        }

        var names = address.Field.Name.Split('.');
        names[..^1].Aggregate(place, (at, part) => at.Child(part)).Set(names[^1], value);
    }

    /// <summary>A value as a person wrote it, with its story when there is one.</summary>
    public static JsonPlace Value(KnownValue value, string text, IEnumerable<KeyValuePair<string, string>> story)
    {
        var scalar = value.Content switch
        {
            // Printed anew these two would lose digits.
            Table or Amount { Decimals: < 0 } => JsonPlace.Of(text.Trim()),
            int count => JsonPlace.Of(count),
            _ => JsonPlace.Of(value.Content.ToString()!),
        };
        var told = story.Where(s => s.Value.Length > 0).Select(s => (s.Key, JsonPlace.Of(s.Value))).ToList();
        return told.Count == 0 ? scalar : JsonPlace.Object([("value", scalar), .. told]).OnOneLine();
    }

    /// <summary>The columns and rows of a table.</summary>
    public static IEnumerable<(string Name, JsonPlace Value)> Rows(Table table) =>
    [
        ("columns", JsonPlace.Array(table.Headings.Select(JsonPlace.Of))),
        ("rows", JsonPlace.Array(table.Shown.Select(row => JsonPlace.Array(row.Select(cell => JsonPlace.Raw(JsonValueKind.Number, cell.ToString("R", CultureInfo.InvariantCulture))))))),
    ];

    /// <summary>A value for people, without its story.</summary>
    public static string Words(this JsonPlace value) => value.Kind != JsonValueKind.Object
        ? value.Text
        : value["value"]?.Text ?? string.Create(CultureInfo.InvariantCulture, $"{value["rows"]?.Items.Count ?? 0} rows");
}
