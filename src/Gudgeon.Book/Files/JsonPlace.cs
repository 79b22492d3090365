using System.Text;
using System.Text.Json;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>
/// A JSON value that knows its line and the comments before it, so that an error can say where and nothing that a person
/// wrote is lost when the file is written again.
/// </summary>
public sealed class JsonPlace
{
    /// <summary>Kind of the value.</summary>
    public required JsonValueKind Kind { get; init; }

    /// <summary>Line in the file, from 1; 0 for a value that was not read from a file.</summary>
    public int Line { get; init; }

    /// <summary>Text of a string, digits of a number; empty otherwise.</summary>
    public string Text { get; init; } = "";

    /// <summary>Members of an object in their order.</summary>
    public List<(string Name, JsonPlace Value)> Members { get; } = [];

    /// <summary>Items of an array.</summary>
    public List<JsonPlace> Items { get; } = [];

    /// <summary>Line ends before the value or its name as it was written: 0 on the line of the one before, 1, or 2 with an empty line between.</summary>
    public int Breaks { get; set; } = 1;

    /// <summary>Whether the closing bracket was written on the line of the last part.</summary>
    public bool ClosesOnLine { get; set; }

    /// <summary>Comments that stand before the value or its name.</summary>
    public List<string> Comments { get; } = [];

    /// <summary>Comments before the closing bracket.</summary>
    public List<string> Closing { get; } = [];

    /// <summary>Comments after the last bracket of the document; none but on its root.</summary>
    public List<string> After { get; } = [];

    /// <summary>The member of this name, or null.</summary>
    public JsonPlace? this[string name] => Members.FirstOrDefault(m => m.Name == name).Value;

    /// <summary>A string value.</summary>
    public static JsonPlace Of(string text) => new() { Kind = JsonValueKind.String, Text = text };

    /// <summary>A number or a word such as true.</summary>
    public static JsonPlace Raw(JsonValueKind kind, string text) => new() { Kind = kind, Text = text };

    /// <summary>True or false.</summary>
    public static JsonPlace Of(bool word) => Raw(word ? JsonValueKind.True : JsonValueKind.False, "");

    /// <summary>A whole number.</summary>
    public static JsonPlace Of(long number) => Raw(JsonValueKind.Number, number.ToString(System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>An empty object.</summary>
    public static JsonPlace Object() => new() { Kind = JsonValueKind.Object };

    /// <summary>An object with members.</summary>
    public static JsonPlace Object(IEnumerable<(string Name, JsonPlace Value)> members)
    {
        var place = Object();
        place.Members.AddRange(members);
        return place;
    }

    /// <summary>An object of those members that have a value.</summary>
    public static JsonPlace Filled(IEnumerable<(string Name, JsonPlace? Value)> members) => Object(members.Where(m => m.Value is not null).Select(m => (m.Name, m.Value!)));

    /// <summary>An array.</summary>
    public static JsonPlace Array(IEnumerable<JsonPlace> items)
    {
        var array = new JsonPlace { Kind = JsonValueKind.Array };
        array.Items.AddRange(items);
        return array;
    }

    /// <summary>The value with all that is in it on one line.</summary>
    public JsonPlace OnOneLine()
    {
        ClosesOnLine = true;
        foreach (var part in Members.Select(m => m.Value).Concat(Items))
        {
            part.OnOneLine().Breaks = 0;
        }

        return this;
    }

    /// <summary>Sets or adds a member, keeping its place and comments.</summary>
    public void Set(string name, JsonPlace value)
    {
        var at = Members.FindIndex(m => m.Name == name);
        if (at < 0)
        {
            Members.Add((name, value));
            return;
        }

        value.Comments.InsertRange(0, Members[at].Value.Comments);
        value.Breaks = Members[at].Value.Breaks;
        Members[at] = (name, value);
    }

    /// <summary>The member of this name, made an empty object when it is not there.</summary>
    public JsonPlace Child(string name)
    {
        if (this[name] is { } child)
        {
            return child;
        }

        Members.Add((name, Object()));
        return Members[^1].Value;
    }

    /// <summary>Reads a file's text: comments and trailing commas are taken, a member given twice is not.</summary>
    /// <exception cref="BadInputException">Not JSON; the sentence says the line and why.</exception>
    public static JsonPlace Parse(string text, string file)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            throw new BadInputException($"{file}: the file is empty; wanted a book (gudgeon new begins one)");
        }

        var bytes = Encoding.UTF8.GetBytes(text);
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Allow, AllowTrailingCommas = true, MaxDepth = 32 });
        try
        {
            var (comments, _) = Next(ref reader, bytes);
            var root = Value(ref reader, bytes, file, "", comments);
            root.After.AddRange(Next(ref reader, bytes).Comments);
            return root;
        }
        catch (JsonException e)
        {
            throw new BadInputException($"{file}, line {(e.LineNumber ?? 0) + 1}: {Reason(e)}");
        }
    }

    private static string Reason(JsonException e)
    {
        var message = e.Message;
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return message.Contains("depth to be zero", StringComparison.Ordinal) || message.Contains("end of data", StringComparison.Ordinal)
            ? "the file ends in the middle; a bracket was never closed"
            : "this is no JSON: " + (end < 0 ? message : message[..end]);
    }

    /// <summary>Moves to the next token; returns the comments passed over, and the line ends before the first of them.</summary>
    private static (List<string> Comments, int Breaks) Next(ref Utf8JsonReader reader, byte[] bytes)
    {
        var comments = new List<string>();
        var breaks = 0;
        while (reader.Read())
        {
            if (comments.Count == 0)
            {
                breaks = BreaksBefore(bytes, (int)reader.TokenStartIndex);
            }

            if (reader.TokenType != JsonTokenType.Comment)
            {
                return (comments, breaks);
            }

            comments.Add(reader.GetComment().Trim());
        }

        return (comments, breaks);
    }

    private static JsonPlace Value(ref Utf8JsonReader reader, byte[] bytes, string file, string path, List<string> comments)
    {
        var kind = Kinds(reader.TokenType);
        var line = LineAt(bytes, (int)reader.TokenStartIndex);
        var text = reader.TokenType is JsonTokenType.String ? Words(ref reader, bytes, file) : reader.TokenType is JsonTokenType.Number ? Encoding.UTF8.GetString(reader.ValueSpan) : "";
        var parts = new List<(string? Name, JsonPlace Value)>();
        var (closing, breaks) = kind is JsonValueKind.Object or JsonValueKind.Array ? Parts(ref reader, bytes, file, path, kind, parts) : ([], 0);
        var place = new JsonPlace { Kind = kind, Line = line, Text = text, ClosesOnLine = breaks == 0 };
        place.Comments.AddRange(comments);
        place.Closing.AddRange(closing);
        place.Members.AddRange(parts.Where(p => p.Name is not null).Select(p => (p.Name!, p.Value)));
        place.Items.AddRange(parts.Where(p => p.Name is null).Select(p => p.Value));
        return place;
    }

    /// <summary>Reads members or items up to the closing bracket; returns the comments and line ends before that.</summary>
    private static (List<string> Closing, int Breaks) Parts(ref Utf8JsonReader reader, byte[] bytes, string file, string path, JsonValueKind kind, List<(string? Name, JsonPlace Value)> parts)
    {
        while (true)
        {
            var (comments, breaks) = Next(ref reader, bytes);
            if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                return (comments, breaks);
            }

            var name = kind == JsonValueKind.Object ? Words(ref reader, bytes, file) : null;
            var inner = name is null ? $"{path}[{parts.Count}]" : path.Length == 0 ? name : name.StartsWith('[') ? path + name : $"{path}.{name}";
            if (name is not null)
            {
                Once(parts, name, inner, file, LineAt(bytes, (int)reader.TokenStartIndex));
                comments.AddRange(Next(ref reader, bytes).Comments);
            }

            var value = Value(ref reader, bytes, file, inner, comments);
            value.Breaks = breaks;
            parts.Add((name, value));
        }
    }

    private static string Words(ref Utf8JsonReader reader, byte[] bytes, string file)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            throw new BadInputException($"{file}, line {LineAt(bytes, (int)reader.TokenStartIndex)}: the text holds half a character (a surrogate without its other half)");
        }
    }

    private static void Once(List<(string? Name, JsonPlace Value)> parts, string name, string path, string file, int line)
    {
        if (parts.Find(p => p.Name == name).Value is { } first)
        {
            throw new BadInputException($"{file}, line {line}, {path}: given twice, first on line {first.Line}");
        }
    }

    private static int BreaksBefore(byte[] bytes, int at)
    {
        var ends = 0;
        for (var i = at - 1; i >= 0 && bytes[i] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n' or (byte)','; i--)
        {
            ends += bytes[i] == (byte)'\n' ? 1 : 0;
        }

        return Math.Min(ends, 2);
    }

    private static JsonValueKind Kinds(JsonTokenType token) => token switch
    {
        JsonTokenType.StartObject => JsonValueKind.Object,
        JsonTokenType.StartArray => JsonValueKind.Array,
        JsonTokenType.String => JsonValueKind.String,
        JsonTokenType.Number => JsonValueKind.Number,
        JsonTokenType.True => JsonValueKind.True,
        JsonTokenType.False => JsonValueKind.False,
        _ => JsonValueKind.Null,
    };

    private static int LineAt(byte[] bytes, int at) => 1 + bytes.AsSpan(0, at).Count((byte)'\n');
}
