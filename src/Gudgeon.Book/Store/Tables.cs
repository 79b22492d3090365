using Dapper;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Store;

/// <summary>The tables that hold what the journal comes to.</summary>
internal static class Tables
{
    private const string AddChangeRow = "INSERT INTO change (id, title, reason, is_on) VALUES (@Id, @Title, @Reason, @IsOn)";
    private const string SetValueRow = "INSERT INTO value (change, path, content) VALUES (nullif(@Change, ''), @Path, @Content) ON CONFLICT (ifnull(change, ''), path) DO UPDATE SET content = excluded.content";
    private const string AddReadingRow = "INSERT INTO reading (revision, content) VALUES (@Revision, @Content)";
    private const string AddRunRow = "INSERT INTO run (revision, content) VALUES (@Revision, @Content)";
    private const string PutCardRow = "INSERT INTO card (id, content) VALUES (@Id, @Content) ON CONFLICT (id) DO UPDATE SET content = excluded.content";
    private const string AddActRow = "INSERT INTO act (revision, content) VALUES (@Revision, @Content)";
    private const string SetLimitRow = "INSERT INTO limits (name, value, reason) VALUES (@Name, @Value, @Reason) ON CONFLICT (name) DO UPDATE SET value = excluded.value, reason = excluded.reason";
    private const string AddConflictRow = "INSERT INTO conflict (revision, change, path, content) VALUES (@Revision, nullif(@Change, ''), @Path, @Content)";
    private const string AddAttachmentRow = "INSERT INTO attachment (revision, name, type, size, sha256, about) VALUES (@Revision, @Name, @Type, @Size, @Sha256, @About)";
    private const string AddSignatureRow = "INSERT INTO signature (revision, statement, over, seal) VALUES (@Revision, @Statement, @Over, @Seal)";

    /// <summary>All rows.</summary>
    public static BookRows Read(SqliteConnection connection)
    {
        var (name, notes) = connection.QueryFirstOrDefault<(string?, string)>("SELECT name, notes FROM book");
        return new BookRows(
            name ?? throw new BadInputException("the store holds no book any more; gudgeon verify says what it holds"),
            notes,
            [.. connection.Query<ChangeRow>("SELECT id, title, reason, is_on AS IsOn FROM change ORDER BY place")],
            [.. connection.Query<ValueRow>("SELECT change, path, content FROM value ORDER BY place").Select(v => v with { Change = v.Change ?? "" })],
            [.. connection.Query<DatedRow>("SELECT revision, content FROM reading ORDER BY place")],
            [.. connection.Query<LimitRow>("SELECT name, value, reason FROM limits ORDER BY place")])
        {
            Runs = [.. connection.Query<DatedRow>("SELECT revision, content FROM run ORDER BY place")],
            Cards = [.. connection.Query<CardRow>("SELECT id, content FROM card ORDER BY place")],
            Acts = [.. connection.Query<DatedRow>("SELECT revision, content FROM act ORDER BY place")],
            Conflicts = Conflicts(connection),
            Attachments = Attachments(connection),
            Signatures = Signatures(connection),
        };
    }

    /// <summary>Open conflicts, oldest first.</summary>
    public static IReadOnlyList<ConflictRow> Conflicts(SqliteConnection connection) =>
        [.. connection.Query<ConflictRow>("SELECT revision, change, path, content FROM conflict ORDER BY revision").Select(c => c with { Change = c.Change ?? "" })];

    /// <summary>Attached files, oldest first.</summary>
    public static IReadOnlyList<AttachmentRow> Attachments(SqliteConnection connection) =>
        [.. connection.Query<AttachmentRow>("SELECT revision, name, type, size, sha256, about FROM attachment ORDER BY revision")];

    /// <summary>Signatures that stand, oldest first.</summary>
    public static IReadOnlyList<SignatureRow> Signatures(SqliteConnection connection) =>
        [.. connection.Query<SignatureRow>("SELECT revision, statement, over, seal FROM signature ORDER BY revision")];

    /// <summary>Puts these rows in place of all that the tables hold.</summary>
    public static void Write(SqliteConnection connection, BookRows rows)
    {
        connection.Execute("DELETE FROM signature; DELETE FROM act; DELETE FROM card; DELETE FROM run; DELETE FROM attachment; DELETE FROM conflict; DELETE FROM limits; DELETE FROM reading; DELETE FROM value; DELETE FROM change; DELETE FROM book");
        connection.Execute("INSERT INTO book (only, name, notes) VALUES (1, @Name, @Notes)", new { rows.Name, rows.Notes });
        connection.Execute(AddChangeRow, rows.Changes);
        connection.Execute(SetValueRow, rows.Values);
        connection.Execute(AddReadingRow, rows.Readings);
        connection.Execute(AddRunRow, rows.Runs);
        connection.Execute(PutCardRow, rows.Cards);
        connection.Execute(AddActRow, rows.Acts);
        connection.Execute(SetLimitRow, rows.Limits);
        connection.Execute(AddConflictRow, rows.Conflicts);
        connection.Execute(AddAttachmentRow, rows.Attachments);
        connection.Execute(AddSignatureRow, rows.Signatures);
    }

    /// <summary>Does one edit to the tables.</summary>
    /// <param name="connection">The store.</param>
    /// <param name="revision">The edit's number in the journal.</param>
    /// <param name="edit">The edit; an undoing is done by <see cref="Write"/>.</param>
    public static void Do(SqliteConnection connection, int revision, Edit edit)
    {
        switch (edit)
        {
            case BeginBook begin:
                Write(connection, BookRows.Of(begin.Document));
                break;
            case SetValue set:
                connection.Execute(SetValueRow, new ValueRow(set.Change, set.Path, JsonText.OneLine(set.Value)));
                break;
            case AddChange change:
                connection.Execute(AddChangeRow, new ChangeRow(change.Id, change.Title, change.Reason, 1));
                break;
            case SwitchChange change:
                connection.Execute("UPDATE change SET is_on = @On WHERE id = @Id", new { change.On, change.Id });
                break;
            case AddReading reading:
                connection.Execute(AddReadingRow, new DatedRow(revision, JsonText.OneLine(reading.Reading)));
                break;
            case KeepRun run:
                connection.Execute(AddRunRow, new DatedRow(revision, JsonText.OneLine(run.Run)));
                break;
            case PutCard card:
                connection.Execute(PutCardRow, new CardRow(card.Id, JsonText.OneLine(card.Card)));
                break;
            case AddAct act:
                connection.Execute(AddActRow, new DatedRow(revision, JsonText.OneLine(act.Act)));
                break;
            case SetLimit limit:
                connection.Execute(SetLimitRow, new LimitRow(limit.Name, limit.Text, limit.Reason));
                break;
            case ContestValue contest:
                connection.Execute(AddConflictRow, ConflictRow.Of(revision, contest));
                break;
            case SettleValue settle:
                connection.Execute("DELETE FROM conflict WHERE revision = @Of", new { settle.Of });
                if (settle.Second is { } second)
                {
                    connection.Execute(SetValueRow, new ValueRow(settle.Change, settle.Path, JsonText.OneLine(second)));
                }

                break;
            case AttachFile file:
                connection.Execute(AddAttachmentRow, AttachmentRow.Of(revision, file));
                break;
            case Sign sign:
                connection.Execute(AddSignatureRow, SignatureRow.Of(revision, sign));
                break;
            default:
                throw new InvalidOperationException($"'{edit.Kind}' is not done to tables");
        }
    }
}
