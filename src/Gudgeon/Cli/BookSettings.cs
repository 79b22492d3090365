using System.ComponentModel;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>What every verb that opens a book takes.</summary>
internal abstract class BookSettings : CommandSettings
{
    [CommandOption("--imperial")]
    [Description("Print in inch units.")]
    public bool Imperial { get; init; }

    [CommandOption("--json")]
    [Description("Print JSON.")]
    public bool Json { get; init; }
}

/// <summary>Verbs that read one book: gudgeon check heron.json.</summary>
internal class ReadSettings : BookSettings
{
    [CommandArgument(0, "[BOOK]")]
    [Description("The book; the only one in this folder when left out.")]
    public string? Path { get; init; }

    public BookFile Open() => BookFile.Open(Books.Find(Path));
}

/// <summary>What every verb that edits a book takes.</summary>
internal abstract class EditSettings : CommandSettings
{
    [CommandOption("--by <NAME>")]
    [Description("Who does it; whoever is logged in when left out.")]
    public string By { get; init; } = "";

    public BookFile Open(string path) => BookFile.Open(path, Hand.Here(By));
}

/// <summary>Finds the book that a command means.</summary>
internal static class Books
{
    /// <summary>The book named, else the one in GUDGEON_BOOK, else the only one in this folder.</summary>
    /// <exception cref="BadInputException">None, or more than one.</exception>
    public static string Find(string? named)
    {
        if (named is not null && !Directory.Exists(named))
        {
            return named;
        }

        if (named is null && Environment.GetEnvironmentVariable("GUDGEON_BOOK") is { Length: > 0 } set)
        {
            return set;
        }

        var folder = named ?? ".";
        var books = Directory.EnumerateFiles(folder).Where(IsBook).Order(StringComparer.Ordinal).ToList();
        return books.Count switch
        {
            1 => books[0],
            0 => throw new BadInputException($"there is no book in {(named is null ? "this folder" : $"'{named}'")}; name one, or begin one with: gudgeon new heron.json --name Heron"),
            _ => throw new BadInputException($"there are several books here ({string.Join(", ", books.Select(System.IO.Path.GetFileName))}); name one"),
        };
    }

    /// <summary>Splits "[BOOK] PATH VALUE": the first word is the book when it is one more than wanted, and a file or named like a book.</summary>
    public static (string Book, string[] Words) Split(string[] words, int wanted, string usage)
    {
        var named = words.Length > wanted && IsNamed(words[0]);
        var rest = named ? words[1..] : words;
        return rest.Length == wanted
            ? (Find(named ? words[0] : null), rest)
            : throw new BadInputException($"wanted: {usage}");
    }

    /// <summary>Whether a word names a book rather than a field: it ends in .json or .gudgeon, or is a file or a folder.</summary>
    public static bool IsNamed(string word) =>
        word.EndsWith(".json", StringComparison.OrdinalIgnoreCase) || word.EndsWith(".gudgeon", StringComparison.OrdinalIgnoreCase) || Path.Exists(word);

    /// <summary>Opens a book that keeps a journal.</summary>
    /// <exception cref="BadInputException">It is kept as JSON.</exception>
    public static StoredBook Store(string path, string by = "") => BookFile.Open(path, Hand.Here(by)) as StoredBook
        ?? throw new BadInputException($"the book '{path}' is kept as JSON, without journal, conflicts or attachments; this makes one that has them: gudgeon import {path} {System.IO.Path.ChangeExtension(path, "gudgeon")}");

    /// <summary>A book with values laid over it for one command: "temperature=30 °C".</summary>
    /// <exception cref="BadInputException">Not name=value, or a value that the field does not take.</exception>
    public static BuildBook With(BuildBook book, IEnumerable<string> settings, string prefix)
    {
        var values = settings
            .SelectMany(s => s.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .Select(s => s.Split('=', 2, StringSplitOptions.TrimEntries))
            .Select(p => p.Length == 2 ? p : throw new BadInputException($"given '{p[0]}', wanted name=value, such as temperature=30°C"))
            .Select(p => (Address: FieldCatalogue.Address(prefix + p[0]), Text: p[1]))
            .ToDictionary(p => p.Address.Path, p => KnownValue.Read(p.Address.Field, p.Text), StringComparer.Ordinal);
        return book.Supposing(values);
    }

    internal static bool IsBook(string path)
    {
        if (!path.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            return path.EndsWith(".gudgeon", StringComparison.OrdinalIgnoreCase);
        }

        using var reader = new StreamReader(path);
        var head = new char[2048];
        return head.AsSpan(0, reader.ReadBlock(head)).Contains("\"gudgeon\"", StringComparison.Ordinal);
    }

    /// <summary>A desk for engine runs that shows its progress on a terminal.</summary>
    public static DutyDesk Desk(CancellationToken stop) => new() { Cancellation = stop, Progress = Progress.OnTerminal("engine run") };
}
