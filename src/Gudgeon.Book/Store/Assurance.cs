using System.Globalization;
using Dapper;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>One thing that a book was held to.</summary>
/// <param name="Good">Whether it is as it must be.</param>
/// <param name="Sentence">What was found.</param>
public sealed record Assurance(bool Good, string Sentence)
{
    internal static IReadOnlyList<Assurance> All(SqliteConnection connection) => [Whole(connection), Linked(connection), Shaped(connection), Sealed(connection), Signed(connection), Replayed(connection), Kept(connection)];

    private static Assurance Whole(SqliteConnection connection)
    {
        var found = connection.Query<string>("PRAGMA integrity_check").First();
        return found == "ok" ? new(true, "the file is whole") : new(false, $"the file is damaged: {found}");
    }

    private static Assurance Linked(SqliteConnection connection)
    {
        var loose = connection.Query("PRAGMA foreign_key_check").AsList().Count;
        return loose == 0 ? new(true, "every row that points to another finds it") : new(false, Line($"{loose} rows point to others that are not there"));
    }

    private static Assurance Shaped(SqliteConnection connection) => Formats.Shape(connection).SequenceEqual(Formats.Shape())
        ? new(true, "tables and guards are those that the program made")
        : new(false, "tables or guards are not those that the program made: another program has altered them");

    private static Assurance Sealed(SqliteConnection connection)
    {
        var entries = Journal.After(connection).ToList();
        return entries switch
        {
            [] => new(false, "the journal is empty"),
            _ when Journal.FirstBroken(entries) is { } broken => new(false, Line($"entry {broken.Revision} of the journal was altered after it was written, or one before it is gone")),
            _ => new(true, Line($"all {entries.Count} entries of the journal bear their seals; the last is {Convert.ToHexStringLower(entries[^1].Seal)}")),
        };
    }

    private static Assurance Signed(SqliteConnection connection)
    {
        try
        {
            var entries = Journal.After(connection).ToList();
            return Signature.FirstLoose(entries) is { } loose
                ? new(false, Line($"the signature of entry {loose.Revision} is over another book: the entry before it does not bear the seal that was signed"))
                : new(true, Line($"{entries.Count(e => e.Edit is Sign)} signatures are over the seals that the journal bears"));
        }
        catch (BadInputException e)
        {
            return new(false, $"the signatures cannot be read: {e.Message}");
        }
    }

    private static Assurance Replayed(SqliteConnection connection)
    {
        try
        {
            var (told, held) = (Replay.Rows(Journal.After(connection)).Lines().ToList(), Tables.Read(connection).Lines().ToList());
            var differs = told.Except(held, StringComparer.Ordinal).Concat(held.Except(told, StringComparer.Ordinal)).FirstOrDefault();
            return told.SequenceEqual(held) ? new(true, "the tables hold what the journal comes to") : new(false, $"the tables do not hold what the journal comes to: {differs ?? "the order differs"}");
        }
        catch (Exception e) when (e is BadInputException or InvalidOperationException)
        {
            return new(false, $"the journal cannot be replayed: {e.Message}");
        }
    }

    private static Assurance Kept(SqliteConnection connection)
    {
        var altered = Attaching.Altered(connection).FirstOrDefault();
        return altered is null ? new(true, Line($"{Tables.Attachments(connection).Count} attached files are as they came")) : new(false, $"the attached file {altered} is not as it came");
    }

    private static string Line(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
}
