using Gudgeon.Book.Files;

namespace Gudgeon.Book.Tests.Store;

public sealed class DutyShelfTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_run_is_found_again_under_its_key_and_the_last_without_nudges_is_told()
    {
        var book = Stores.Begin(_folder.PathOf("wren.gudgeon"));
        Assert.Null(book.Shelf.Find(Key(1)));
        Assert.Null(book.Shelf.Latest());
        book.Shelf.Keep(Key(1), nudged: false, "[1]");
        book.Shelf.Keep(Key(2), nudged: false, "[2]");
        book.Shelf.Keep(Key(3), nudged: true, "[3]");
        var again = Stores.Open(_folder.PathOf("wren.gudgeon"));
        Assert.Equal(["[1]", "[2]", "[3]"], new[] { 1, 2, 3 }.Select(n => again.Shelf.Find(Key(n))));
        Assert.Equal("[2]", again.Shelf.Latest());
        again.Shelf.Keep(Key(1), nudged: false, "[11]");
        Assert.Equal(("[11]", "[11]"), (again.Shelf.Find(Key(1)), again.Shelf.Latest()));
    }

    [Fact]
    public void It_is_no_part_of_the_book()
    {
        var path = _folder.PathOf("wren.gudgeon");
        var book = Stores.Begin(path);
        var before = book.Document();
        book.Shelf.Keep(Key(1), nudged: false, "[1]");
        var after = Stores.Open(path);
        Assert.Equal(book.Revision, after.Revision);
        Assert.Equal(JsonText.OneLine(before), JsonText.OneLine(after.Document()));
        Stores.VerifiesWell(path);
    }

    [Fact]
    public void The_oldest_are_let_go_each_kind_for_itself()
    {
        var shelf = Stores.Begin(_folder.PathOf("wren.gudgeon")).Shelf;
        shelf.Keep(Key(0), nudged: true, "[0]");
        for (var n = 1; n <= 9; n++)
        {
            shelf.Keep(Key(n), nudged: false, "[]");
        }

        Assert.Null(shelf.Find(Key(1)));
        Assert.Equal("[]", shelf.Find(Key(2)));
        Assert.Equal("[0]", shelf.Find(Key(0)));
    }

    [Fact]
    public void A_book_that_cannot_be_written_keeps_nothing_and_refuses_nothing()
    {
        var path = _folder.PathOf("gone.gudgeon");
        var shelf = Stores.Begin(path).Shelf;
        File.Delete(path);
        shelf.Keep(Key(1), nudged: false, "[1]");
        Assert.Null(shelf.Find(Key(1)));
        Assert.False(File.Exists(path));
    }

    private static string Key(int number) => number.ToString("x64", System.Globalization.CultureInfo.InvariantCulture);
}
