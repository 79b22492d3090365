using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Store;

public sealed class UndoTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;

    public UndoTests() => _path = _folder.PathOf("wren.gudgeon");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Undoing_step_by_step_gives_back_every_state_before()
    {
        var book = BookFile.Create(_path, "Wren");
        var states = new List<Gudgeon.Book.Build.BuildBook> { book.Book };
        foreach (var edit in Edits)
        {
            book = edit(book);
            states.Add(book.Book);
        }

        for (var i = states.Count - 2; i >= 0; i--)
        {
            Stores.Same(states[i], Stores.Open(_path).Undo().Book.Book);
            Stores.Same(states[i], BookFile.Open(_path).Book);
            Stores.VerifiesWell(_path);
        }

        Assert.Contains("holds no edit to take back", Assert.Throws<BadInputException>(() => Stores.Open(_path).Undo()).Message, StringComparison.Ordinal);
        Assert.Equal(1 + (2 * Edits.Length), BookFile.Open(_path).Revision);
    }

    [Fact]
    public void An_undoing_is_an_entry_and_what_it_takes_back_stays_readable()
    {
        Stores.Begin(_path).Measure("cylinder[1].bore", "99.9 mm", "gauge", "Tom", "today", "");
        var (_, undone) = Stores.Open(_path, "Tom").Undo();
        Assert.Equal("cylinder[1].bore reads 99.9 mm", undone.Edit.Words);
        var history = Stores.Open(_path).History;
        Assert.Equal(("undo", "Tom"), (history[^1].Entry.Edit.Kind, history[^1].Entry.Who));
        Assert.Equal([true, true, true, true, true, true, true, false, false], history.Select(h => h.Stands));
        Assert.Contains("99.9 mm", history[^2].Entry.Content, StringComparison.Ordinal);
        Assert.Single(BookFile.Open(_path).Book.Measurements);
    }

    [Fact]
    public void An_edit_after_an_undoing_is_undone_before_what_stands_beneath()
    {
        Stores.Begin(_path);
        Stores.Open(_path).Undo();
        Stores.Open(_path).Limit("squish.min", "0.9 mm", "steel rod");
        Assert.Equal(9, Stores.Open(_path).Undo().Undone.Revision);
        Assert.Equal("0.8 mm", BookFile.Open(_path).Book.Limits["squish.min"].Text);
        Assert.Equal(6, Stores.Open(_path).Undo().Undone.Revision);
        Assert.Empty(BookFile.Open(_path).Book.Limits);
    }

    private static Func<BookFile, BookFile>[] Edits { get; } =
    [
        b => b.Set("cylinder.bore", "81 mm", Stores.NoStory),
        b => b.Set("cylinder.bore", "81.0 mm", Stores.NoStory),
        b => b.AddChange("bored", "Bored", "worn"),
        b => b.Set("cylinder[1].bore", "82 mm", Stores.NoStory, "bored"),
        b => b.Measure("cylinder[1].bore", "82.01 mm", "gauge", "Ada", "today", ""),
        b => b.Switch("bored", false),
        b => b.Limit("squish.min", "0.8 mm", "rod"),
        b => b.Limit("squish.min", "0.9 mm", "rod"),
    ];
}
