using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Book.Tests.Store;

public sealed class StoredBookTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public StoredBookTests() => _path = _folder.PathOf("wren.gudgeon");

    public static TheoryData<string> Refused => [.. Refusals.Keys];

    private static Dictionary<string, Action<BookFile>> Refusals { get; } = new(StringComparer.Ordinal)
    {
        ["a wrong unit"] = b => b.Set("cylinder.bore", "81 N", Stores.NoStory),
        ["no such field"] = b => b.Set("cylinder.boar", "81 mm", Stores.NoStory),
        ["no such change"] = b => b.Set("cylinder.bore", "81 mm", Stores.NoStory, "pistons"),
        ["no such way of knowing"] = b => b.Set("cylinder.bore", "81 mm", new Dictionary<string, string>(StringComparer.Ordinal) { ["how"] = "guessed" }),
        ["a lift curve that does not close"] = b => b.Set("valve[inlet].liftTable", "310° at 0 mm; 450° at 9 mm; 600° at 1 mm", Stores.NoStory),
        ["a reading with a wrong unit"] = b => b.Measure("cylinder[1].bore", "81 N·m", "gauge", "Ada", "today", ""),
        ["a change that is there"] = b => b.AddChange("bored", "again", ""),
        ["a change with a long name"] = b => b.AddChange("a b", "spaces", ""),
        ["a switch of nothing"] = b => b.Switch("pistons", true),
        ["a limit without a reason"] = b => b.Limit("squish.min", "0.8 mm", ""),
        ["a limit of no check"] = b => b.Limit("squash.min", "0.8 mm", "rod"),
        ["a revision that is not there yet"] = b => b.Set("cylinder.bore", "81 mm", Stores.NoStory, basedOn: 99),
        ["a settling of nothing"] = b => ((StoredBook)b).Settle("cylinder.bore", true),
        ["an attachment that is not there"] = b => ((StoredBook)b).Attach("nosuch.png"),
    };

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_new_book_is_one_file_and_does_not_write_over_another()
    {
        Assert.Equal("Wren", BookFile.Create(_path, "Wren").Book.Name);
        Assert.Equal(["wren.gudgeon"], _folder.Files);
        Assert.Throws<BadInputException>(() => BookFile.Create(_path, "Other"));
        Assert.Equal("Wren", BookFile.Open(_path).Book.Name);
    }

    // Bytes 68 to 71 of an SQLite file are its application id; PRAGMA synchronous gives 2 for FULL (sqlite.org/fileformat2.html, /pragma.html).
    [Fact]
    public void The_file_says_what_it_is_and_is_kept_safely()
    {
        Stores.Begin(_path);
        Assert.Equal("Gudg"u8, File.ReadAllBytes(_path).AsSpan(68, 4));
        Assert.Equal(4, Stores.Ask<int>(_path, "PRAGMA user_version"));
        Assert.Equal("wal", Stores.Ask<string>(_path, "PRAGMA journal_mode"));
        Assert.Equal((2L, 1L), StoreFile.Read(_path, c => (Scalar(c, "PRAGMA synchronous"), Scalar(c, "PRAGMA foreign_keys"))));
        Assert.Equal(0, Stores.Ask<int>(_path, "SELECT count(*) FROM pragma_table_list WHERE type = 'table' AND schema = 'main' AND name NOT LIKE 'sqlite%' AND strict = 0"));
        Assert.Equal(["wren.gudgeon"], _folder.Files);
    }

    [Fact]
    public void Every_edit_is_in_the_journal_with_who_when_and_where()
    {
        var before = DateTime.UtcNow.AddSeconds(-1);
        var book = Stores.Begin(_path);
        var history = book.History;
        Assert.Equal(["begin", "set", "change", "set", "reading", "limit", "switch"], history.Select(h => h.Entry.Edit.Kind));
        Assert.Equal(Enumerable.Range(1, 7).Select(i => (long)i), history.Select(h => h.Entry.Revision));
        Assert.Equal(7, book.Revision);
        Assert.All(history, h => Assert.Equal(("Ada", "bench"), (h.Entry.Who, h.Entry.Device)));
        Assert.All(history, h => Assert.InRange(DateTime.Parse(h.Entry.At, System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.AdjustToUniversal), before, DateTime.UtcNow));
        Assert.All(history, h => Assert.EndsWith("Z", h.Entry.At, StringComparison.Ordinal));
        Assert.Equal("cylinder.bore is 82.000 mm ± 0.01 mm in the change bored", history[3].Entry.Edit.Words);
    }

    [Fact]
    public void Whoever_is_logged_in_edits_when_no_name_is_given()
    {
        BookFile.Create(_path, "Wren");
        var (entry, _) = Stores.Open(_path).History[0];
        Assert.Equal((Environment.UserName, Environment.MachineName), (entry.Who, entry.Device));
    }

    [Theory]
    [InlineData("engine.cylinders", "3", "3")]
    [InlineData("blower.kind", "Centrifugal", "centrifugal")]
    [InlineData("cylinder.bore", "3.190 in", "3.190 in")]
    [InlineData("cylinder.bore", "8.1234567e-2 m ± 1e-6 m", "0.081235 m ± 1E-06 m")]
    [InlineData("driveline.gears", "2.7; 1.9; 1.5", "2.7; 1.9; 1.5")]
    [InlineData("spring[inlet].loadTable", "431 N at 34.5 mm; 720 N at 25 mm", "431 N at 34.5 mm; 720 N at 25 mm")]
    public void Every_kind_of_value_is_kept_as_written(string path, string text, string kept)
    {
        BookFile.Create(_path, "Wren").Set(path, text, Stores.NoStory).Measure(path, text, "eye", "Ada", "", "");
        var book = BookFile.Open(_path).Book;
        Assert.Equal((kept, kept), (book.Baseline[path].Content.ToString(), book.Measurements[0].Value.Content.ToString()));
        Assert.Equal(KnownValue.Read(book.Baseline[path].Field, text).Content, book.Baseline[path].Content);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_refused_edit_leaves_the_file_as_it_was(string what)
    {
        Stores.Begin(_path);
        Assert.Throws<BadInputException>(() => Refusals[what](BookFile.Open(_path)));
        Assert.Equal(7, Stores.Open(_path).Revision);
        Assert.Equal(["wren.gudgeon"], _folder.Files);
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void A_reading_is_taken_under_the_changes_that_are_on_in_the_file()
    {
        var stale = Stores.Begin(_path);
        Stores.Open(_path).Switch("bored", true);
        Assert.Equal(["bored"], stale.Measure("cylinder[1].bore", "82 mm", "", "", "", "").Book.Measurements[^1].Under!);
    }

    [Fact]
    public void A_book_in_the_hands_of_another_program_gives_one_sentence()
    {
        Stores.Begin(_path);
        using var other = new SqliteConnection($"Data Source={_path};Pooling=False");
        other.Open();
        using var held = other.BeginTransaction(deferred: false);
        var e = Assert.Throws<BadInputException>(() => Stores.Open(_path).Switch("bored", true));
        Assert.Equal($"the book '{_path}' is being written by another program and is as it was; try again when that is done", e.Message);
    }

    // The limit on pages makes SQLite refuse as a full disk does, in the middle of a transaction.
    [Fact]
    public void A_full_disk_gives_one_sentence_and_nothing_half_written()
    {
        Stores.Begin(_path);
        var e = Assert.Throws<BadInputException>(() => StoreFile.Write(_path, connection =>
        {
            Scalar(connection, "PRAGMA max_page_count = 1");
            Journal.Add(connection, new Hand("Ada", "bench"), new UndoEdit(7));
            Attaching.Keep(connection, "x", new byte[1 << 20]);
            return true;
        }));
        Assert.Equal($"the disk is full: the book '{_path}' is as it was; make room and do it again", e.Message);
        Assert.Equal(7, Stores.Open(_path).Revision);
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void On_a_medium_that_cannot_be_written_the_book_is_read_and_not_edited()
    {
        Stores.Begin(_path);
        using var connection = StoreFile.OpenUnchanging(_path);
        Assert.Equal("Wren", Tables.Read(connection).Name);
        Assert.All(Assurance.All(connection), a => Assert.True(a.Good, a.Sentence));
        var refusal = Assert.Throws<SqliteException>(() => Journal.Add(connection, new Hand("Ada", "bench"), new UndoEdit(7)));
        Assert.Equal($"the book '{_path}' can only be read here, and is as it was: the file or its folder cannot be written", StoreFile.Refusal(_path, refusal).Message);
        Assert.Equal(["wren.gudgeon"], _folder.Files);
    }

    [Fact]
    public void A_book_that_was_not_closed_is_not_read_without_what_stands_beside_it()
    {
        Stores.Begin(_path);
        _folder.Write("wren.gudgeon-wal", "something");
        Assert.Contains("was not closed before it came", Assert.Throws<BadInputException>(() => StoreFile.OpenUnchanging(_path)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("no book at all, but long enough to look at")]
    public void What_is_no_store_gives_one_sentence(string text)
    {
        _folder.Write("wren.gudgeon", text);
        Assert.Contains("wren.gudgeon", Assert.Throws<BadInputException>(() => BookFile.Open(_path)).Message, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(_path));
    }

    [Fact]
    public void A_store_is_known_by_what_it_holds_whatever_its_name()
    {
        Stores.Begin(_path);
        File.Move(_path, _folder.PathOf("wren.book"));
        Assert.Equal(7, BookFile.Open(_folder.PathOf("wren.book")).Revision);
    }

    [Fact]
    public void A_backup_is_the_book_at_that_moment()
    {
        var book = Stores.Begin(_path);
        book.BackUpTo(_folder.PathOf("copy.gudgeon"));
        book.Switch("bored", true);
        var copy = Stores.Open(_folder.PathOf("copy.gudgeon"));
        Assert.Equal((7, 8), (copy.Revision, Stores.Open(_path).Revision));
        Assert.Equal(book.History.Select(h => Convert.ToHexString(h.Entry.Seal)).Take(7), copy.History.Select(h => Convert.ToHexString(h.Entry.Seal)));
        Stores.VerifiesWell(_folder.PathOf("copy.gudgeon"));
        Assert.Throws<BadInputException>(() => book.BackUpTo(_folder.PathOf("copy.gudgeon")));
        Assert.Equal(["copy.gudgeon", "wren.gudgeon"], _folder.Files);
    }

    private static long Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return (long)command.ExecuteScalar()!;
    }
}
