using Dapper;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>A statement that a person signed over the book as it stood.</summary>
/// <param name="Revision">The entry of the journal that holds it.</param>
/// <param name="Statement">What was stated.</param>
/// <param name="By">Who signed.</param>
/// <param name="Device">The machine or tablet.</param>
/// <param name="At">UTC.</param>
/// <param name="Over">The last entry before it: what was done until then is what was signed.</param>
/// <param name="Seal">The seal of that entry, hexadecimal.</param>
/// <param name="EditsSince">Edits made since that stand, other signatures left out; 0 while the book is as it was signed.</param>
public sealed record Signature(long Revision, string Statement, string By, string Device, string At, long Over, string Seal, long EditsSince)
{
    /// <summary>Whether the book is still as it was signed, in words.</summary>
    public string Since => EditsSince switch
    {
        0 => "the book is as it was signed",
        1 => "the book was edited since: 1 edit stands",
        _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"the book was edited since: {EditsSince} edits stand"),
    };

    internal static IReadOnlyList<Signature> List(SqliteConnection connection)
    {
        var edits = connection.Query<long>(
            """
            SELECT revision FROM journal
            WHERE content ->> 'edit' NOT IN ('sign', 'undo')
            AND revision NOT IN (SELECT content ->> 'of' FROM journal WHERE content ->> 'edit' = 'undo')
            """).AsList();
        var signed = Tables.Signatures(connection);
        var entries = connection.Query<JournalEntry>("SELECT revision, at, who, device, content, journal.seal FROM journal JOIN signature USING (revision) ORDER BY revision");
        return [.. signed.Zip(entries, (s, e) => new Signature(s.Revision, s.Statement, e.Who, e.Device, e.At, s.Over, s.Seal, edits.Count(r => r > s.Revision)))];
    }

    /// <summary>The first entry whose signature is over a seal that the entry before it does not bear; null when there is none.</summary>
    internal static JournalEntry? FirstLoose(IReadOnlyList<JournalEntry> entries) => entries.Where((entry, i) =>
        entry.Edit is Sign sign && (i == 0 || sign.Over != entries[i - 1].Revision || sign.Seal != Convert.ToHexStringLower(entries[i - 1].Seal))).FirstOrDefault();
}
