using System.Globalization;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Tests.Store;

/// <summary>What is altered behind the program's back shows.</summary>
public sealed class TamperTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public TamperTests()
    {
        _path = _folder.PathOf("wren.gudgeon");
        Stores.Begin(_path).Attach(_folder.Write("note.txt", "read cold"));
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("UPDATE journal SET who = 'Tom' WHERE revision = 3")]
    [InlineData("DELETE FROM journal WHERE revision = 3")]
    [InlineData("DELETE FROM journal")]
    [InlineData("INSERT OR REPLACE INTO journal SELECT revision, at, 'Tom', device, content, seal FROM journal WHERE revision = 3")]
    [InlineData("INSERT INTO journal SELECT revision + 20, at, who, device, content, seal FROM journal WHERE revision = 3")]
    [InlineData("UPDATE OR REPLACE journal SET revision = 2 WHERE revision = 3")]
    [InlineData("UPDATE blob SET content = zeroblob(9)")]
    [InlineData("DELETE FROM blob")]
    public void The_journal_and_what_is_attached_are_guarded(string sql)
    {
        Assert.Throws<SqliteException>(() => Stores.Sql(_path, sql));
        Stores.VerifiesWell(_path);
    }

    // One byte of every part of every entry in turn: letters, digits and seal.
    [Theory]
    [InlineData("at")]
    [InlineData("who")]
    [InlineData("device")]
    [InlineData("content")]
    [InlineData("seal")]
    public void A_byte_altered_in_an_entry_names_that_entry(string column)
    {
        for (var revision = 1; revision <= 8; revision++)
        {
            var copy = _folder.PathOf(string.Create(CultureInfo.InvariantCulture, $"{column}{revision}.gudgeon"));
            File.Copy(_path, copy);
            Alter(copy, column, revision);
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"entry {revision} of the journal was altered after it was written, or one before it is gone"), Stores.Bad(copy));
        }
    }

    [Fact]
    public void An_entry_taken_out_shows_at_the_next()
    {
        Stores.Sql(_path, "DROP TRIGGER journal_stays; PRAGMA foreign_keys = OFF; DELETE FROM journal WHERE revision = 4");
        Assert.Contains(Stores.Bad(_path), s => s.StartsWith("entry 5 of the journal", StringComparison.Ordinal));
    }

    [Fact]
    public void The_last_entry_taken_out_shows_in_the_tables()
    {
        Stores.Open(_path).Set("crank.stroke", "70 mm", Stores.NoStory);
        Stores.Sql(_path, "DROP TRIGGER journal_stays; DELETE FROM journal WHERE revision = 9");
        Assert.Contains(Stores.Bad(_path), s => s.Contains("crank.stroke", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("UPDATE value SET content = '\"81.50 mm\"' WHERE change IS NULL", "81.50 mm")]
    [InlineData("DELETE FROM reading", "82.004 mm")]
    [InlineData("UPDATE change SET is_on = 1", "bored")]
    [InlineData("UPDATE limits SET value = '0.1 mm'", "0.1 mm")]
    [InlineData("UPDATE attachment SET name = 'other.txt'", "other.txt")]
    [InlineData("UPDATE book SET name = 'Other'", "Other")]
    public void A_table_that_is_not_what_the_journal_comes_to_shows(string sql, string named)
    {
        Stores.Sql(_path, sql);
        var sentence = Assert.Single(Stores.Bad(_path));
        Assert.StartsWith("the tables do not hold what the journal comes to", sentence, StringComparison.Ordinal);
        Assert.True(sentence.Contains(named, StringComparison.Ordinal) || sql.StartsWith("UPDATE", StringComparison.Ordinal), sentence);
    }

    [Fact]
    public void A_guard_taken_away_shows()
    {
        Stores.Sql(_path, "DROP TRIGGER journal_is_kept");
        Assert.Equal(["tables or guards are not those that the program made: another program has altered them"], Stores.Bad(_path));
    }

    [Fact]
    public void An_attached_file_altered_shows()
    {
        Stores.Sql(_path, "DROP TRIGGER blob_is_kept; UPDATE blob SET content = CAST('read warm' AS BLOB)");
        Assert.Contains(Stores.Bad(_path), s => s.EndsWith("is not as it came", StringComparison.Ordinal));
    }

    [Fact]
    public void A_row_that_points_nowhere_shows()
    {
        Stores.Sql(_path, "UPDATE attachment SET sha256 = 'none'");
        Assert.Contains("1 rows point to others that are not there", Stores.Bad(_path));
    }

    // Overwrites the middle of the file, pages of tables and all.
    [Fact]
    public void A_damaged_file_shows_or_is_refused_in_one_sentence()
    {
        var bytes = File.ReadAllBytes(_path);
        new Random(7).NextBytes(bytes.AsSpan(4096, bytes.Length - 8192));
        File.WriteAllBytes(_path, bytes);
        Assert.Throws<BadInputException>(() => BookFile.Open(_path));
        try
        {
            Assert.Contains(StoredBook.Verify(_path), a => !a.Good);
        }
        catch (BadInputException e)
        {
            Assert.Contains("is damaged", e.Message, StringComparison.Ordinal);
        }
    }

    /// <summary>Changes the last letter or digit of a text, or the last bit of a seal.</summary>
    private static void Alter(string path, string column, int revision)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = string.Create(CultureInfo.InvariantCulture, $"PRAGMA ignore_check_constraints = ON; DROP TRIGGER journal_is_kept; SELECT CAST({column} AS BLOB) FROM journal WHERE revision = {revision}");
        var bytes = (byte[])command.ExecuteScalar()!;
        var at = column == "seal" ? bytes.Length - 1 : Array.FindLastIndex(bytes, b => char.IsAsciiLetterOrDigit((char)b));
        bytes[at] ^= 1;
        command.CommandText = string.Create(CultureInfo.InvariantCulture, $"UPDATE journal SET {column} = {(column == "seal" ? "@bytes" : "CAST(@bytes AS TEXT)")} WHERE revision = {revision}");
        command.Parameters.AddWithValue("@bytes", bytes);
        Assert.Equal(1, command.ExecuteNonQuery());
    }
}
