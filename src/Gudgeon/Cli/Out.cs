using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Gudgeon.Book.Values;

namespace Gudgeon.Cli;

/// <summary>What the verbs print, and the files they open.</summary>
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

    public static void Json(object value) => Line(JsonSerializer.Serialize(value, Options));

    /// <summary>Opens a text file that the user named.</summary>
    /// <exception cref="BadInputException">It is not there or cannot be read.</exception>
    public static StreamReader OpenText(string path)
    {
        try
        {
            return new StreamReader(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"the file '{path}' cannot be read: {(File.Exists(path) ? e.Message : "there is no such file")}");
        }
    }
}
