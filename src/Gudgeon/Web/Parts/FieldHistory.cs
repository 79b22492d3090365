using Gudgeon.Book.Files;
using Gudgeon.Book.Store;

namespace Gudgeon.Web.Parts;

/// <summary>What was done to one value.</summary>
internal static class FieldHistory
{
    /// <summary>Entries that touched a path, newest first, each with whether it still stands.</summary>
    public static IReadOnlyList<(JournalEntry Entry, bool Stands)> Of(IReadOnlyList<(JournalEntry Entry, bool Stands)> history, string path)
    {
        var edits = history.ToDictionary(h => h.Entry.Revision, h => h.Entry.Edit);
        return [.. history.Where(h => Touches(edits[h.Entry.Revision], path, edits)).Reverse()];
    }

    /// <summary>The last edit that stands and can be taken back; null when only the book's beginning stands.</summary>
    public static JournalEntry? Last(IReadOnlyList<(JournalEntry Entry, bool Stands)> history) =>
        history.LastOrDefault(h => h.Stands && h.Entry.Edit is not BeginBook).Entry;

    private static bool Touches(Edit edit, string path, Dictionary<long, Edit> edits) => edit switch
    {
        SetValue set => set.Path == path,
        ContestValue contest => contest.Path == path,
        SettleValue settle => settle.Path == path,
        AddReading reading => reading.Reading["field"]?.Text == path,
        AttachFile file => file.About == path,
        UndoEdit undo => Touches(edits[undo.Of], path, edits),
        _ => false,
    };
}
