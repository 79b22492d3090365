using System.ComponentModel;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Spectre.Console;
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

/// <summary>Verbs that make a run and may keep it: gudgeon run heron.gudgeon --keep "before the head was ported".</summary>
internal abstract class KeepSettings : ReadSettings
{
    [CommandOption("--keep <TITLE>")]
    [Description("Keep the figures in the book under this title.")]
    public string? Keep { get; init; }

    [CommandOption("--by <NAME>")]
    [Description("Who keeps it; whoever is logged in when left out.")]
    public string By { get; init; } = "";

    public override ValidationResult Validate() => Keep is null || Keep.Trim().Length > 0 ? base.Validate() : ValidationResult.Error("--keep: a run that is kept needs a title");

    /// <summary>Keeps a run when that was asked for, and says so unless the output is for a program.</summary>
    /// <param name="book">The book that it was made from.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="trace">What it read.</param>
    /// <param name="given">Values laid over the book for this run only.</param>
    /// <param name="quiet">Whether to say nothing.</param>
    public void KeepRun(BuildBook book, Func<RunFigures> figures, Trace trace, IReadOnlyDictionary<string, KnownValue> given, bool quiet)
    {
        if (Keep is not null)
        {
            var hand = Hand.Here(By);
            var run = KeptRun.Of(figures(), Keep, hand.Who, book, trace, given);
            BookFile.Open(Books.Find(Path), hand).Keep(run);
            Out.LineIf(!quiet, $"kept as \"{run.Title}\": {run.Figures.Headline} (gudgeon runs lists what is kept)");
        }
    }
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
        ?? throw new BadInputException($"the book '{path}' is kept as JSON, without journal, conflicts, signatures or attachments; this makes one that has them: gudgeon import {path} {System.IO.Path.ChangeExtension(path, "gudgeon")}");

    /// <summary>Values given on the command line, by path: "temperature=30 °C".</summary>
    /// <exception cref="BadInputException">Not name=value, or a value that the field does not take.</exception>
    public static Dictionary<string, KnownValue> Given(IEnumerable<string> settings, string prefix) => settings
        .SelectMany(s => s.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        .Select(s => s.Split('=', 2, StringSplitOptions.TrimEntries))
        .Select(p => p.Length == 2 ? p : throw new BadInputException($"given '{p[0]}', wanted name=value, such as temperature=30°C"))
        .Select(p => (Address: FieldCatalogue.Address(prefix + p[0]), Text: p[1]))
        .ToDictionary(p => p.Address.Path, p => KnownValue.Read(p.Address.Field, p.Text), StringComparer.Ordinal);

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
    public static DutyDesk Desk(BookFile file, CancellationToken stop) => new() { Cancellation = stop, Shelf = file.Shelf, Progress = Progress.OnTerminal("engine run") };
}
