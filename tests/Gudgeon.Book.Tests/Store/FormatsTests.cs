using Dapper;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Tests.Store;

public sealed class FormatsTests : IDisposable
{
    private static readonly string[] Steps =
    [
        "CREATE TABLE bolt (name TEXT NOT NULL) STRICT; INSERT INTO bolt VALUES ('head')",
        "ALTER TABLE bolt ADD COLUMN torque TEXT NOT NULL DEFAULT ''",
        "UPDATE bolt SET torque = '44 N·m' WHERE name = 'head'",
    ];

    private readonly SqliteConnection _connection = new("Data Source=:memory:");

    public FormatsTests() => _connection.Open();

    public void Dispose() => _connection.Dispose();

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_store_of_any_age_is_brought_forward_with_what_it_holds(int age)
    {
        Formats.BringForward(_connection, "x", Steps[..age]);
        Formats.BringForward(_connection, "x", Steps);
        Assert.Equal(("head", "44 N·m"), _connection.QuerySingle<(string, string)>("SELECT name, torque FROM bolt"));
        Assert.Equal(3, _connection.ExecuteScalar<int>("PRAGMA user_version"));
    }

    [Fact]
    public void A_step_that_fails_leaves_the_store_as_it_was()
    {
        Formats.BringForward(_connection, "x", Steps[..1]);
        Assert.Throws<SqliteException>(() => Formats.BringForward(_connection, "x", [Steps[0], Steps[1], "UPDATE nut SET name = ''"]));
        Assert.Equal(1, _connection.ExecuteScalar<int>("PRAGMA user_version"));
        Assert.Equal("head", _connection.QuerySingle<string>("SELECT * FROM bolt"));
    }

    [Fact]
    public void A_newer_format_is_refused_in_one_sentence()
    {
        Formats.BringForward(_connection, "x", Steps);
        var e = Assert.Throws<BadInputException>(() => Formats.BringForward(_connection, "heron.gudgeon", Steps[..2]));
        Assert.Equal("heron.gudgeon: written by a newer Gudgeon (format 3; this one knows 2); a newer program is wanted to open it", e.Message);
    }

    [Fact]
    public void Another_programs_database_is_left_alone()
    {
        _connection.Execute("CREATE TABLE song (name TEXT)");
        Assert.Contains("a database of another program", Assert.Throws<BadInputException>(() => Formats.BringForward(_connection, "x", Steps)).Message, StringComparison.Ordinal);
        Assert.Equal(1, _connection.ExecuteScalar<int>("SELECT count(*) FROM sqlite_schema"));
    }

    [Fact]
    public void A_newer_book_on_the_disk_is_neither_read_nor_edited()
    {
        using var folder = new TemporaryFolder();
        var path = folder.PathOf("wren.gudgeon");
        var book = Stores.Begin(path);
        Stores.Sql(path, "PRAGMA user_version = 99");
        Assert.All<Action>([() => Stores.Open(path), () => book.Switch("bored", true), () => StoredBook.Verify(path)], a => Assert.Contains("newer Gudgeon (format 99; this one knows ", Assert.Throws<BadInputException>(a).Message, StringComparison.Ordinal));
    }
}
