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
    internal static IReadOnlyList<Signature> List(SqliteConnection connection) => [.. connection.Query<Signature>(
        """
        WITH standing AS (
            SELECT revision FROM journal
            WHERE content ->> 'edit' NOT IN ('sign', 'undo')
            AND revision NOT IN (SELECT content ->> 'of' FROM journal WHERE content ->> 'edit' = 'undo'))
        SELECT revision, statement, who AS By, device, at, over, signature.seal AS Seal,
            (SELECT count(*) FROM standing WHERE standing.revision > signature.revision) AS EditsSince
        FROM signature JOIN journal USING (revision)
        ORDER BY revision
        """)];

    /// <summary>The first entry whose signature is over a seal that the entry before it does not bear; null when there is none.</summary>
    internal static JournalEntry? FirstLoose(IReadOnlyList<JournalEntry> entries) => entries.Where((entry, i) =>
        entry.Edit is Sign sign && (i == 0 || sign.Over != entries[i - 1].Revision || sign.Seal != Convert.ToHexStringLower(entries[i - 1].Seal))).FirstOrDefault();
}
