using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Gudgeon.Book.Files;

/// <summary>Writes JSON for people: two spaces, rows of numbers on one line, comments kept.</summary>
public static class JsonText
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The text of a document.</summary>
    public static string Write(JsonPlace root)
    {
        var text = new StringBuilder();
        Comments(text, root.Comments, "");
        Value(text, root, "");
        return text.Append('\n').ToString();
    }

    private static void Value(StringBuilder text, JsonPlace place, string indent)
    {
        switch (place.Kind)
        {
            case JsonValueKind.Object:
                Block(text, place, '{', '}', place.Members.Select(m => ((string?)m.Name, m.Value)), indent);
                break;
            case JsonValueKind.Array when place.Items.TrueForAll(IsScalar):
                text.Append('[').AppendJoin(", ", place.Items.Select(Scalar)).Append(']');
                break;
            case JsonValueKind.Array:
                Block(text, place, '[', ']', place.Items.Select(i => ((string?)null, i)), indent);
                break;
            default:
                text.Append(Scalar(place));
                break;
        }
    }

    private static void Block(StringBuilder text, JsonPlace place, char open, char close, IEnumerable<(string? Name, JsonPlace Value)> parts, string indent)
    {
        var inner = indent + "  ";
        text.Append(open);
        var first = true;
        foreach (var (name, value) in parts)
        {
            text.Append(first ? "\n" : ",\n");
            first = false;
            Comments(text, value.Comments, inner);
            text.Append(inner);
            if (name is not null)
            {
                text.Append(Quoted(name)).Append(": ");
            }

            Value(text, value, inner);
        }

        if (!first)
        {
            text.Append('\n');
            Comments(text, place.Closing, inner);
            text.Append(indent);
        }

        text.Append(close);
    }

    private static void Comments(StringBuilder text, List<string> comments, string indent)
    {
        foreach (var line in comments.SelectMany(c => c.Split('\n')))
        {
            text.Append(indent).Append("// ").Append(line.Trim()).Append('\n');
        }
    }

    private static bool IsScalar(JsonPlace place) => place.Kind is not (JsonValueKind.Object or JsonValueKind.Array) && place.Comments.Count == 0;

    private static string Scalar(JsonPlace place) => place.Kind switch
    {
        JsonValueKind.String => Quoted(place.Text),
        JsonValueKind.Number => place.Text,
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };

    private static string Quoted(string text) => JsonSerializer.Serialize(text, Plain);
}
