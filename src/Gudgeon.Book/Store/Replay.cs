using System.Globalization;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Store;

/// <summary>What a journal comes to when all that stands in it is done again.</summary>
internal static class Replay
{
    /// <summary>The entries that stand: those not taken back, without the undoings themselves.</summary>
    public static List<(JournalEntry Entry, Edit Edit)> Standing(IEnumerable<JournalEntry> entries)
    {
        var standing = new List<(JournalEntry Entry, Edit Edit)>();
        foreach (var entry in entries)
        {
            var edit = entry.Edit;
            if (edit is not UndoEdit undo)
            {
                standing.Add((entry, edit));
            }
            else if (standing.Count > 1 && standing[^1].Entry.Revision == undo.Of)
            {
                standing.RemoveAt(standing.Count - 1);
            }
            else
            {
                throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"entry {entry.Revision}: takes back {undo.Of}, which is not the last that stands"));
            }
        }

        return standing;
    }

    /// <summary>What the tables must hold.</summary>
    public static BookRows Rows(IEnumerable<JournalEntry> entries)
    {
        var standing = Standing(entries);
        var root = standing is [{ Edit: BeginBook begin }, ..] ? begin.Document : throw new BadInputException("entry 1: does not begin a book");
        var conflicts = new List<ConflictRow>();
        var attachments = new List<AttachmentRow>();
        var signatures = new List<SignatureRow>();
        foreach (var (entry, edit) in standing.Skip(1))
        {
            edit.Do(root);
            switch (edit)
            {
                case ContestValue contest:
                    conflicts.Add(ConflictRow.Of(entry.Revision, contest));
                    break;
                case SettleValue settle:
                    conflicts.RemoveAll(c => c.Revision == settle.Of);
                    break;
                case AttachFile file:
                    attachments.Add(AttachmentRow.Of(entry.Revision, file));
                    break;
                case Sign sign:
                    signatures.Add(SignatureRow.Of(entry.Revision, sign));
                    break;
            }
        }

        return BookRows.Of(root, Brought<AddReading>(standing), Brought<KeepRun>(standing), Brought<AddAct>(standing)) with { Conflicts = conflicts, Attachments = attachments, Signatures = signatures };
    }

    /// <summary>The entries that hold an edit of this kind.</summary>
    private static List<long> Brought<TEdit>(IEnumerable<(JournalEntry Entry, Edit Edit)> standing)
        where TEdit : Edit => [.. standing.Where(s => s.Edit is TEdit).Select(s => s.Entry.Revision)];
}
