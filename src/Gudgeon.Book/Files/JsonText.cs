using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Gudgeon.Book.Files;

/// <summary>Writes JSON for people: two spaces, what was on one line stays on it, empty lines and comments are kept.</summary>
public static class JsonText
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The text of a document.</summary>
    public static string Write(JsonPlace root)
    {
        var text = new StringBuilder();
        Comments(text, root.Comments, "");
        Value(text, root, "");
        text.Append('\n');
        Comments(text, root.After, "");
        return text.ToString();
    }

    /// <summary>A value on one line, without comments and without spaces between its parts: one value, one text.</summary>
    public static string OneLine(JsonPlace place) => place.Kind switch
    {
        JsonValueKind.Object => $"{{{string.Join(',', place.Members.Select(m => $"{Quoted(m.Name)}:{OneLine(m.Value)}"))}}}",
        JsonValueKind.Array => $"[{string.Join(',', place.Items.Select(OneLine))}]",
        _ => Scalar(place),
    };

    private static void Value(StringBuilder text, JsonPlace place, string indent)
    {
        switch (place.Kind)
        {
            case JsonValueKind.Object:
                Block(text, place, "{", "}", [.. place.Members.Select(m => ((string?)m.Name, m.Value))], indent);
                break;
            case JsonValueKind.Array:
                Block(text, place, "[", "]", [.. place.Items.Select(i => ((string?)null, i))], indent);
                break;
            default:
                text.Append(Scalar(place));
                break;
        }
    }

    private static void Block(StringBuilder text, JsonPlace place, string open, string close, List<(string? Name, JsonPlace Value)> parts, string indent)
    {
        var inner = indent + "  ";
        var pad = open == "{" ? " " : "";
        text.Append(open);
        for (var i = 0; i < parts.Count; i++)
        {
            var (name, value) = parts[i];
            text.Append(i > 0 ? "," : "");
            Lead(text, value, i == 0 ? pad : " ", inner);
            if (name is not null)
            {
                text.Append(Quoted(name)).Append(": ");
            }

            Value(text, value, inner);
        }

        if (place.Closing.Count > 0 || (parts.Count > 0 && !place.ClosesOnLine))
        {
            text.Append('\n');
            Comments(text, place.Closing, inner);
            text.Append(indent);
        }
        else if (parts.Count > 0)
        {
            text.Append(pad);
        }

        text.Append(close);
    }

    /// <summary>What stands between a part and the one before: a space, or line ends, comments and the indent.</summary>
    private static void Lead(StringBuilder text, JsonPlace value, string space, string indent)
    {
        if (value.Breaks == 0 && value.Comments.Count == 0)
        {
            text.Append(space);
            return;
        }

        text.Append('\n', Math.Max(value.Breaks, 1));
        Comments(text, value.Comments, indent);
        text.Append(indent);
    }

    private static void Comments(StringBuilder text, List<string> comments, string indent)
    {
        foreach (var line in comments.SelectMany(c => c.Split('\n')))
        {
            text.Append(indent).Append("// ").Append(line.Trim()).Append('\n');
        }
    }

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
