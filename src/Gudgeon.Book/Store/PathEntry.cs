using Dapper;
using Gudgeon.Book.Files;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>One thing done to a value: given, read, contested, settled, or one of these taken back.</summary>
/// <param name="Entry">The entry of the journal: who, when, at which device.</param>
/// <param name="Words">What was done, for people.</param>
/// <param name="Stands">Whether it was not taken back; true for a taking back itself.</param>
public sealed record PathEntry(JournalEntry Entry, string Words, bool Stands)
{
    /// <summary>What was done to a value, newest first.</summary>
    internal static IReadOnlyList<PathEntry> Of(SqliteConnection connection, string path)
    {
        var touched = connection.Query<JournalEntry>(
            """
            WITH touching AS (SELECT revision FROM journal WHERE @path IN (content ->> 'path', content ->> '$.reading.field'))
            SELECT revision, at, who, device, content, seal FROM journal
            WHERE revision = 1 OR revision IN touching OR (content ->> 'edit' = 'undo' AND content ->> 'of' IN touching)
            ORDER BY revision DESC
            """,
            new { path }).AsList();
        var edits = touched.ToDictionary(e => e.Revision, e => e.Edit);
        var takenBack = edits.Values.OfType<UndoEdit>().Select(u => (long)u.Of).ToHashSet();
        return [.. touched
            .Where(e => edits[e.Revision] is not BeginBook begin || Holds(begin, path))
            .Select(e => new PathEntry(e, edits[e.Revision] is UndoEdit undo ? $"taken back: {edits[undo.Of].Words}" : edits[e.Revision].Words, !takenBack.Contains(e.Revision)))];
    }

    /// <summary>Whether the book held the value when it was begun or imported.</summary>
    private static bool Holds(BeginBook begin, string path)
    {
        var rows = BookRows.Of(begin.Document);
        return rows.Values.Any(v => v.Path == path) || rows.Readings.Any(r => JsonPlace.Parse(r.Content, "the store")["field"]?.Text == path);
    }
}
