using System.ComponentModel;
using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon export: a book as JSON.</summary>
internal sealed class ExportCommand : Command<ExportCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<[BOOK] FILE>")]
        [Description("The book, the only one in this folder when left out; the new JSON file.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 1, "gudgeon export [BOOK] FILE");
        if (StoredBook.IsStoreName(rest[0]))
        {
            throw new BadInputException($"export writes JSON; for a copy with its journal: gudgeon backup {path} {rest[0]}");
        }

        var file = BookFile.Open(path);
        var copy = file.CopyTo(rest[0]).Book;
        var signatures = file is StoredBook store ? store.Signatures.Count : 0;
        Out.Line($"{Holds(copy, rest[0])}; journal and attachments stay behind{(signatures > 0 ? $", and with them {signatures} {(signatures == 1 ? "signature, which is" : "signatures, which are")} over the journal" : "")}");
        return 0;
    }

    internal static string Holds(BuildBook copy, string file) =>
        $"{copy.Name} is in {file}: {copy.Baseline.Count} values, {copy.Changes.Count} changes, {copy.Measurements.Count} readings, {copy.Limits.Count} limits{(copy.Runs.Count > 0 ? $", {copy.Runs.Count} kept runs" : "")}";
}

/// <summary>gudgeon import: a book with a journal from JSON.</summary>
internal sealed class ImportCommand : Command<ImportCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<FILE>")]
        [Description("The JSON file.")]
        public string File { get; init; } = "";

        [CommandArgument(1, "<BOOK>")]
        [Description("The new book, such as heron.gudgeon.")]
        public string Book { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (!StoredBook.IsStoreName(settings.Book))
        {
            throw new BadInputException($"given '{settings.Book}', wanted a name that ends in .gudgeon");
        }

        var copy = BookFile.Open(settings.File).CopyTo(settings.Book, Hand.Here(settings.By)).Book;
        Out.Line($"{ExportCommand.Holds(copy, settings.Book)}; comments stay behind in {settings.File}");
        return 0;
    }
}

/// <summary>gudgeon backup: a copy with journal and all.</summary>
internal sealed class BackupCommand : Command<BackupCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<[BOOK] FILE>")]
        [Description("The book, the only one in this folder when left out; the new file.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 1, "gudgeon backup [BOOK] FILE");
        Books.Store(path).BackUpTo(rest[0]);
        var bad = StoredBook.Verify(rest[0]).FirstOrDefault(a => !a.Good);
        Out.Line(bad is null ? $"{rest[0]} holds revision {BookFile.Open(rest[0]).Revision} of {path}, verified" : $"{rest[0]} is written, but {bad.Sentence}");
        return bad is null ? 0 : 1;
    }
}
