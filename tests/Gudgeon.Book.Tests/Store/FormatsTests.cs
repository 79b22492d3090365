using System.IO.Compression;
using Dapper;
using Gudgeon.Book.Duty;
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

    // Made by the program of format 1: a reading imported, one taken back, two later, a conflict, a change, a limit, a file.
    [Fact]
    public void A_book_of_format_1_is_brought_forward_with_all_that_it_holds()
    {
        using var folder = new TemporaryFolder();
        var path = folder.PathOf("tern.gudgeon");
        Unpack("format-1.gudgeon.gz", path);
        Assert.Equal(1, Stores.Ask<int>(path, "PRAGMA user_version"));
        var seals = Stores.Ask<string>(path, "SELECT group_concat(hex(seal)) FROM (SELECT seal FROM journal ORDER BY revision)");
        var book = Stores.Open(path);
        Assert.Equal((Formats.Steps.Count, 11), (Stores.Ask<int>(path, "PRAGMA user_version"), book.Revision));
        Assert.Equal(
            [(1L, "cylinder[1].bore", "81.010 mm"), (6L, "cylinder[2].bore", "81.012 mm ± 0.006 mm"), (9L, "cylinder[1].bore", "82.004 mm")],
            book.Book.Measurements.Select(m => (m.Revision, m.Address.Path, m.Value.Content.ToString()!)));
        Assert.Equal(("Tern", "Kept by an early program", "82.000 mm", "0.9 mm"), (book.Book.Name, book.Book.Notes, book.Book.Find("bored").Values["cylinder.bore"].Content.ToString(), book.Book.Limits["squish.min"].Text));
        Assert.Equal(("81.10 mm", "81.20 mm"), Assert.Single(book.Conflicts) is var conflict ? (conflict.First, conflict.Second) : default);
        Assert.Equal("read cold\n"u8.ToArray(), book.Content(Assert.Single(book.Attachments)));
        Assert.Equal(seals, Stores.Ask<string>(path, "SELECT group_concat(hex(seal)) FROM (SELECT seal FROM journal ORDER BY revision)"));
        Stores.VerifiesWell(path);
        book.Sign("as it was");
        book.Measure("cylinder[1].bore", "82.005 mm", "bore gauge", "Ada", "2026-03-04", "", Guid.NewGuid().ToString()).Keep(Runs.Of(book.Book));
        Stores.VerifiesWell(path);
    }

    // Made by the program of format 2: the invented single, a kept run that does not say its depth, a reading with an id, a signature.
    [Fact]
    public void A_book_of_format_2_is_brought_forward_with_all_that_it_holds()
    {
        using var folder = new TemporaryFolder();
        var path = folder.PathOf("wren.gudgeon");
        Unpack("format-2.gudgeon.gz", path);
        Assert.Equal(2, Stores.Ask<int>(path, "PRAGMA user_version"));
        var book = Stores.Open(path);
        Assert.Equal((Formats.Steps.Count, 4), (Stores.Ask<int>(path, "PRAGMA user_version"), book.Revision));
        var run = Assert.Single(book.Book.Runs);
        Assert.Equal(("before there were pipes", Depth.Lumped, "35.0 kW at 6000 rpm"), (run.Title, run.Depth, run.Figures.Headline));
        Assert.Equal((3L, "418.2 g"), (book.Book.Measurements[^1].Revision, book.Book.Measurements[^1].Value.Content.ToString()));
        Assert.Equal("as it was", Assert.Single(book.Signatures).Statement);
        Stores.VerifiesWell(path);
    }

    // Made by the program of format 3: a change, a reading, a limit, a signature.
    [Fact]
    public void A_book_of_format_3_is_brought_forward_and_takes_job_cards()
    {
        using var folder = new TemporaryFolder();
        var path = folder.PathOf("plover.gudgeon");
        Unpack("format-3.gudgeon.gz", path);
        Assert.Equal(3, Stores.Ask<int>(path, "PRAGMA user_version"));
        var book = Stores.Open(path);
        Assert.Equal((Formats.Steps.Count, 6, "bores are done"), (Stores.Ask<int>(path, "PRAGMA user_version"), book.Revision, Assert.Single(book.Signatures).Statement));
        book.Work(b => Book.Jobs.CardWork.Now("Ada").Tick(b, "strip", "drain", "", "", ""));
        Assert.Equal("drain", Assert.Single(Stores.Open(path).Book.Acts).Step);
        Stores.VerifiesWell(path);
    }

    [Fact]
    public void A_store_made_new_and_one_brought_forward_have_the_same_shape()
    {
        Formats.BringForward(_connection, "x", [.. Formats.Steps.Take(1)]);
        Formats.BringForward(_connection, "x", Formats.Steps);
        Assert.Equal(Formats.Shape(), Formats.Shape(_connection));
    }

    internal static void Unpack(string asset, string path)
    {
        using var packed = new GZipStream(typeof(FormatsTests).Assembly.GetManifestResourceStream(asset)!, CompressionMode.Decompress);
        using var file = File.Create(path);
        packed.CopyTo(file);
    }
}
