using System.ComponentModel;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon journal: every edit.</summary>
internal sealed class JournalCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var history = Books.Store(Books.Find(settings.Path)).History;
        if (settings.Json)
        {
            Out.Json(history.Select(h => new { h.Entry.Revision, h.Entry.At, h.Entry.Who, h.Entry.Device, what = h.Entry.Edit.Words, h.Stands, seal = Convert.ToHexStringLower(h.Entry.Seal) }));
            return 0;
        }

        foreach (var (entry, stands) in history)
        {
            Out.Line($"{entry.Revision,5}  {entry.At}  {entry.Who} at {entry.Device}: {entry.Edit.Words}{(stands || entry.Edit is UndoEdit ? "" : " (taken back)")}");
        }

        return 0;
    }
}

/// <summary>gudgeon undo: takes back the last edit.</summary>
internal sealed class UndoCommand : Command<UndoCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "[BOOK]")]
        [Description("The book; the only one in this folder when left out.")]
        public string? Path { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (_, undone) = Books.Store(Books.Find(settings.Path), settings.By).Undo();
        Out.Line($"taken back: {undone.Edit.Words} (revision {undone.Revision}, {undone.Who}, {undone.At})");
        return 0;
    }
}

/// <summary>gudgeon conflicts: values that two people set without seeing each other's.</summary>
internal sealed class ConflictsCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var conflicts = Books.Store(Books.Find(settings.Path)).Conflicts;
        if (settings.Json)
        {
            Out.Json(conflicts.Select(c => new { c.Path, c.Change, first = Side(c.First, c.FirstFrom), second = Side(c.Second, c.SecondFrom) }));
            return 0;
        }

        foreach (var c in conflicts)
        {
            Out.Line(c.Path + (c.Change.Length > 0 ? $" in the change {c.Change}" : ""));
            Out.Line($"  first:  {c.First} ({c.FirstFrom.Who}, {c.FirstFrom.At}), holds until somebody settles");
            Out.Line($"  second: {c.Second} ({c.SecondFrom.Who}, {c.SecondFrom.At})");
        }

        Out.Line(conflicts.Count == 0 ? "no conflicts" : "settle one with: gudgeon settle PATH first|second");
        return 0;
    }

    private static object Side(string value, JournalEntry from) => new { value, from.Revision, from.Who, from.At };
}

/// <summary>gudgeon settle: for the value that came first or second.</summary>
internal sealed class SettleCommand : Command<SettleCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] PATH first|second>")]
        [Description("The book, the only one in this folder when left out; the path of the value; which of the two to keep.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--change <ID>")]
        [Description("The conflict is about a value of this change instead of the baseline.")]
        public string Change { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (book, rest) = Books.Split(settings.Words, 2, "gudgeon settle [BOOK] PATH first|second");
        var second = rest[1] switch
        {
            "first" => false,
            "second" => true,
            var other => throw new BadInputException($"given '{other}', wanted first or second"),
        };
        var settled = Books.Store(book, settings.By).Settle(rest[0], second, settings.Change).Book;
        var values = settings.Change.Length > 0 ? settled.Find(settings.Change).Values : settled.Baseline;
        Out.Line($"settled: {rest[0]} is {values[rest[0]].Content}");
        return 0;
    }
}

/// <summary>gudgeon verify: holds a book to its journal.</summary>
internal sealed class VerifyCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var path = Books.Find(settings.Path);
        if (!StoredBook.IsStore(path))
        {
            Books.Store(path);
        }

        var found = StoredBook.Verify(path);
        if (settings.Json)
        {
            Out.Json(found);
        }
        else
        {
            foreach (var assurance in found)
            {
                Out.Line($"{(assurance.Good ? "good" : "BAD ")}  {assurance.Sentence}");
            }
        }

        return found.All(a => a.Good) ? 0 : 1;
    }
}
