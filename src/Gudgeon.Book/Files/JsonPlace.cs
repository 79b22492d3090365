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

    /// <summary>Comments that stand before the value or its name.</summary>
    public List<string> Comments { get; } = [];

    /// <summary>Comments before the closing bracket.</summary>
    public List<string> Closing { get; } = [];

    /// <summary>The member of this name, or null.</summary>
    public JsonPlace? this[string name] => Members.FirstOrDefault(m => m.Name == name).Value;

    /// <summary>A string value.</summary>
    public static JsonPlace Of(string text) => new() { Kind = JsonValueKind.String, Text = text };

    /// <summary>A number or a word such as true.</summary>
    public static JsonPlace Raw(JsonValueKind kind, string text) => new() { Kind = kind, Text = text };

    /// <summary>An empty object.</summary>
    public static JsonPlace Object() => new() { Kind = JsonValueKind.Object };

    /// <summary>An array.</summary>
    public static JsonPlace Array(IEnumerable<JsonPlace> items)
    {
        var array = new JsonPlace { Kind = JsonValueKind.Array };
        array.Items.AddRange(items);
        return array;
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
            var comments = Next(ref reader);
            var root = Value(ref reader, bytes, file, "", comments);
            Next(ref reader);
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
        return message.Contains("depth to be zero", StringComparison.Ordinal)
            ? "the file ends in the middle; a bracket was never closed"
            : "this is no JSON: " + (end < 0 ? message : message[..end]);
    }

    /// <summary>Moves to the next token and returns the comments passed over.</summary>
    private static List<string> Next(ref Utf8JsonReader reader)
    {
        var comments = new List<string>();
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.Comment)
            {
                return comments;
            }

            comments.Add(reader.GetComment().Trim());
        }

        return comments;
    }

    private static JsonPlace Value(ref Utf8JsonReader reader, byte[] bytes, string file, string path, List<string> comments)
    {
        var place = new JsonPlace
        {
            Kind = Kinds(reader.TokenType),
            Line = LineAt(bytes, (int)reader.TokenStartIndex),
            Text = reader.TokenType is JsonTokenType.String ? reader.GetString()! : reader.TokenType is JsonTokenType.Number ? Encoding.UTF8.GetString(reader.ValueSpan) : "",
        };
        place.Comments.AddRange(comments);
        while (place.Kind is JsonValueKind.Object or JsonValueKind.Array)
        {
            var before = Next(ref reader);
            if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                place.Closing.AddRange(before);
                break;
            }

            if (place.Kind == JsonValueKind.Array)
            {
                place.Items.Add(Value(ref reader, bytes, file, $"{path}[{place.Items.Count}]", before));
                continue;
            }

            var name = reader.GetString()!;
            var line = LineAt(bytes, (int)reader.TokenStartIndex);
            var inner = path.Length == 0 ? name : name.StartsWith('[') ? path + name : $"{path}.{name}";
            if (place[name] is { } first)
            {
                throw new BadInputException($"{file}, line {line}, {inner}: given twice, first on line {first.Line}");
            }

            before.AddRange(Next(ref reader));
            place.Members.Add((name, Value(ref reader, bytes, file, inner, before)));
        }

        return place;
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
