using Dapper;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>Two values for one field: the one that the book holds, and one that was set by somebody who had not seen it.</summary>
/// <param name="Path">"cylinder[1].bore".</param>
/// <param name="Change">Id of the change; empty for the baseline.</param>
/// <param name="First">The value that the book holds.</param>
/// <param name="Second">The value that came second.</param>
/// <param name="FirstFrom">The entry that set the first.</param>
/// <param name="SecondFrom">The entry that brought the second.</param>
public sealed record Conflict(string Path, string Change, string First, string Second, JournalEntry FirstFrom, JournalEntry SecondFrom)
{
    /// <summary>Whether a value was edited since the revision that somebody saw, and holds something else.</summary>
    internal static bool Arises(SqliteConnection connection, SetValue set, int seen)
    {
        var newest = Journal.Revision(connection);
        if (seen > newest || seen < 0)
        {
            throw new BadInputException($"the book has {newest} revisions, and cannot have been seen at {seen}");
        }

        return Held(connection, set.Change, set.Path) is { } held && held != JsonText.OneLine(set.Value) && Journal.After(connection, seen).Any(e => Touches(connection, e, set));
    }

    internal static Conflict Of(SqliteConnection connection, ConflictRow row)
    {
        var set = new SetValue(row.Path, row.Change, JsonPlace.Of(""));
        var second = Entry(connection, row.Revision);
        var first = Replay.Standing(Journal.After(connection)).Last(s => s.Edit is BeginBook || Touches(connection, s.Entry, set)).Entry;
        return new Conflict(row.Path, row.Change, Words(Held(connection, row.Change, row.Path)!), Words(row.Content), first, second);
    }

    private static bool Touches(SqliteConnection connection, JournalEntry entry, SetValue set) => entry.Edit switch
    {
        SetValue other => (other.Path, other.Change) == (set.Path, set.Change),
        SettleValue { Second: not null } other => (other.Path, other.Change) == (set.Path, set.Change),
        UndoEdit undo => Touches(connection, Entry(connection, undo.Of), set),
        _ => false,
    };

    private static JournalEntry Entry(SqliteConnection connection, long revision) => Journal.After(connection, revision - 1).First();

    private static string? Held(SqliteConnection connection, string change, string path) =>
        connection.ExecuteScalar<string>("SELECT content FROM value WHERE ifnull(change, '') = @change AND path = @path", new { change, path });

    private static string Words(string content) => JsonPlace.Parse(content, "the store").Words();
}
