using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Dapper;
using Gudgeon.Book.Files;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>One thing done to a book: by whom, when, at which device.</summary>
/// <param name="Revision">Counts from 1, without gaps.</param>
/// <param name="At">UTC, ISO 8601.</param>
/// <param name="Who">The person.</param>
/// <param name="Device">The machine or tablet.</param>
/// <param name="Content">The edit, as JSON on one line.</param>
/// <param name="Seal">SHA-256 of the seal before and of all the above.</param>
public sealed record JournalEntry(long Revision, string At, string Who, string Device, string Content, byte[] Seal)
{
    /// <summary>The edit.</summary>
    /// <exception cref="Values.BadInputException">It holds none that this program knows.</exception>
    public Edit Edit => EditReader.Read(this);

    /// <summary>The seal that the entry must bear after one with this seal.</summary>
    internal byte[] SealAfter(byte[] before)
    {
        var text = JsonText.OneLine(JsonPlace.Array([JsonPlace.Of(Revision), JsonPlace.Of(At), JsonPlace.Of(Who), JsonPlace.Of(Device), JsonPlace.Of(Content)]));
        return SHA256.HashData([.. before, .. Encoding.UTF8.GetBytes(text)]);
    }
}

/// <summary>
/// All that was ever done to a book, in order. Entries are only added; each seals the one before, so that an entry altered
/// later no longer fits its seal, nor the next one's.
/// </summary>
internal static class Journal
{
    /// <summary>The seal before the first entry.</summary>
    public static readonly byte[] Blank = new byte[32];

    /// <summary>The entries after a revision, in order.</summary>
    public static IEnumerable<JournalEntry> After(SqliteConnection connection, long revision = 0) =>
        connection.Query<JournalEntry>("SELECT revision, at, who, device, content, seal FROM journal WHERE revision > @revision ORDER BY revision", new { revision });

    /// <summary>Number of the last entry.</summary>
    public static int Revision(SqliteConnection connection) => connection.ExecuteScalar<int>("SELECT ifnull(max(revision), 0) FROM journal");

    /// <summary>The entry that brought the reading with this id, also when it was taken back since; null when none did.</summary>
    public static JournalEntry? Reading(SqliteConnection connection, string id) => connection.QueryFirstOrDefault<JournalEntry>(
        "SELECT revision, at, who, device, content, seal FROM journal WHERE CASE WHEN json_valid(content) THEN content ->> '$.reading.id' END = @id",
        new { id });

    /// <summary>Adds an edit and returns its revision.</summary>
    public static int Add(SqliteConnection connection, Hand hand, Edit edit)
    {
        var before = connection.QueryFirstOrDefault<byte[]>("SELECT seal FROM journal ORDER BY revision DESC LIMIT 1") ?? Blank;
        var at = DateTime.UtcNow.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
        var entry = new JournalEntry(Revision(connection) + 1, at, hand.Who, hand.Device, JsonText.OneLine(edit.Written()), Blank);
        connection.Execute("INSERT INTO journal (revision, at, who, device, content, seal) VALUES (@Revision, @At, @Who, @Device, @Content, @Seal)", entry with { Seal = entry.SealAfter(before) });
        return (int)entry.Revision;
    }

    /// <summary>The first entry that does not fit its seal; null when all do.</summary>
    public static JournalEntry? FirstBroken(IEnumerable<JournalEntry> entries)
    {
        var before = Blank;
        long revision = 0;
        foreach (var entry in entries)
        {
            if (entry.Revision != ++revision || !entry.SealAfter(before).AsSpan().SequenceEqual(entry.Seal))
            {
                return entry;
            }

            before = entry.Seal;
        }

        return null;
    }
}
