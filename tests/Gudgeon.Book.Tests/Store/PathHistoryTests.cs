using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Store;

public sealed class PathHistoryTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public PathHistoryTests() => _path = _folder.PathOf("wren.gudgeon");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void All_that_touched_a_value_is_told_newest_first()
    {
        Stores.Begin(_path);
        Stores.Open(_path, "Tom").Set("cylinder.bore", "81.1 mm", Stores.NoStory, basedOn: 7);
        Stores.Open(_path, "Eve").Set("cylinder.bore", "81.2 mm", Stores.NoStory, basedOn: 7);
        Stores.Open(_path).Settle("cylinder.bore", second: true);
        Stores.Open(_path, "Tom").Undo();
        Assert.Equal(
            [
                (11, "Tom", "taken back: cylinder.bore is settled for the second, 81.2 mm", true),
                (10, "Ada", "cylinder.bore is settled for the second, 81.2 mm", false),
                (9, "Eve", "cylinder.bore could be 81.2 mm, says who saw revision 7", true),
                (8, "Tom", "cylinder.bore is 81.1 mm", true),
                (4, "Ada", "cylinder.bore is 82.000 mm ± 0.01 mm in the change bored", true),
                (2, "Ada", "cylinder.bore is 81.00 mm", true),
            ],
            Stores.Open(_path).HistoryOf("cylinder.bore").Select(h => ((int)h.Entry.Revision, h.Entry.Who, h.Words, h.Stands)));
        Assert.Equal(["cylinder[1].bore reads 82.004 mm"], Stores.Open(_path).HistoryOf("cylinder[1].bore").Select(h => h.Words));
        Assert.Empty(Stores.Open(_path).HistoryOf("crank.stroke"));
    }

    [Fact]
    public void What_a_book_held_when_it_was_imported_is_told()
    {
        var json = BookFile.Create(_folder.PathOf("x.json"), "Wren").Set("crank.stroke", "70 mm", Stores.NoStory).Measure("cylinder[1].bore", "81 mm", "", "", "", "");
        var store = json.CopyTo(_path);
        Assert.All(["crank.stroke", "cylinder[1].bore"], p => Assert.Equal([1L], store.HistoryOf(p).Select(h => h.Entry.Revision)));
        Assert.Empty(store.HistoryOf("crank.mass"));
        Assert.Empty(json.HistoryOf("crank.stroke"));
    }

    [Fact]
    public void A_reading_and_its_taking_back_are_told()
    {
        Stores.Begin(_path).Measure("crank.mass", "11 kg", "scale", "Ada", "today", "");
        Stores.Open(_path).Undo();
        Assert.Equal([("taken back: crank.mass reads 11 kg", true), ("crank.mass reads 11 kg", false)], Stores.Open(_path).HistoryOf("crank.mass").Select(h => (h.Words, h.Stands)));
    }

    [Fact]
    public void A_path_of_no_field_is_refused()
    {
        Stores.Begin(_path);
        Assert.Throws<BadInputException>(() => Stores.Open(_path).HistoryOf("cylinder.boar"));
    }

    [Fact]
    public void The_revision_on_the_disk_is_read_without_the_book()
    {
        Stores.Begin(_path);
        Assert.Equal(7, StoredBook.RevisionAt(_path));
        Stores.Open(_path).Switch("bored", true);
        Assert.Equal(8, StoredBook.RevisionAt(_path));

        // A book that cannot be read any more still has its revision.
        Stores.Sql(_path, "DELETE FROM book");
        Assert.Throws<BadInputException>(() => Stores.Open(_path));
        Assert.Equal(8, StoredBook.RevisionAt(_path));
        Assert.Equal(0, StoredBook.RevisionAt(_folder.Write("x.json", "{")));
        Assert.Throws<BadInputException>(() => StoredBook.RevisionAt(_folder.PathOf("nosuch.gudgeon")));
        Assert.Equal(["wren.gudgeon", "x.json"], _folder.Files);
    }
}
