using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Gudgeon.Cli;

/// <summary>What the verbs print.</summary>
internal static class Out
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    private static TextWriter _writer = Console.Out;

    public static void Line(string text = "") => _writer.WriteLine(text);

    /// <summary>Sends on what was printed while the program goes on.</summary>
    public static void Flush() => _writer.Flush();

    /// <summary>Sends what is printed while <paramref name="print"/> runs to a file.</summary>
    public static void IntoFile(string path, Action print)
    {
        var before = _writer;
        using var file = new StreamWriter(path);
        _writer = file;
        try
        {
            print();
        }
        finally
        {
            _writer = before;
        }
    }

    public static void LineIf(bool condition, string text)
    {
        if (condition)
        {
            Line(text);
        }
    }

    /// <summary>Prints things one after the other, or as JSON; <paramref name="none"/> when there are none.</summary>
    public static void List<T>(IReadOnlyList<T> things, bool json, Func<T, string> words, string none)
    {
        if (json)
        {
            Json(things);
            return;
        }

        foreach (var thing in things)
        {
            Line(words(thing));
        }

        LineIf(things.Count == 0, none);
    }

    public static void Json(object value) => Line(JsonSerializer.Serialize(value, Options));
}
