using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Store;

/// <summary>Two people set the same value, each from what they saw.</summary>
public sealed class ConflictTests : IDisposable
{
    private const string Bore = "cylinder.bore";
    private readonly TemporaryFolder _folder = new();
    private readonly string _path;
    private readonly int _seen;

    public ConflictTests()
    {
        _path = _folder.PathOf("wren.gudgeon");
        _seen = Stores.Begin(_path).Revision;
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Both_values_are_kept_and_the_first_holds_until_somebody_settles()
    {
        Clash();
        Assert.Equal("81.1 mm", BookFile.Open(_path).Book.Baseline[Bore].Content.ToString());
        var conflict = Assert.Single(Stores.Open(_path).Conflicts);
        Assert.Equal((Bore, "", "81.1 mm", "81.2 mm", "Ada", "Tom"), (conflict.Path, conflict.Change, conflict.First, conflict.Second, conflict.FirstFrom.Who, conflict.SecondFrom.Who));
        Stores.VerifiesWell(_path);
    }

    [Theory]
    [InlineData(false, "81.1 mm")]
    [InlineData(true, "81.2 mm")]
    public void Settling_keeps_one_and_the_journal_both(bool second, string kept)
    {
        Clash();
        Assert.Equal(kept, Stores.Open(_path).Settle(Bore, second).Book.Baseline[Bore].Content.ToString());
        Assert.Empty(Stores.Open(_path).Conflicts);
        Assert.All(["81.1 mm", "81.2 mm"], v => Assert.Contains(Stores.Open(_path).History, h => h.Entry.Content.Contains(v, StringComparison.Ordinal)));
        Stores.VerifiesWell(_path);
        Assert.Equal("settle", Stores.Open(_path).Undo().Undone.Edit.Kind);
        var open = Assert.Single(Stores.Open(_path).Conflicts);
        Assert.Equal(("81.1 mm", "Ada"), (open.First, open.FirstFrom.Who));
        Stores.VerifiesWell(_path);
    }

    [Fact]
    public void Several_that_saw_the_same_are_settled_one_by_one()
    {
        Clash();
        Assert.True(((StoredBook)Stores.Open(_path, "Eve").Set(Bore, "81.3 mm", Stores.NoStory, basedOn: _seen)).Contested);
        Assert.Equal(2, Stores.Open(_path).Conflicts.Count);
        Stores.Open(_path).Settle(Bore, second: true);
        Assert.Equal(("81.2 mm", "81.3 mm"), (Stores.Open(_path).Conflicts[0].First, Stores.Open(_path).Conflicts[0].Second));
        Assert.Equal("81.3 mm", Stores.Open(_path).Settle(Bore, second: true).Book.Baseline[Bore].Content.ToString());
    }

    [Fact]
    public void There_is_none_when_the_value_was_not_edited_since_or_holds_the_same()
    {
        Stores.Open(_path).Set("crank.stroke", "70 mm", Stores.NoStory);
        Stores.Open(_path).Set(Bore, "83 mm", Stores.NoStory, "bored");
        Stores.Open(_path).Measure(Bore, "81.05 mm", "", "", "", "");
        Assert.Equal("81.1 mm", Stores.Open(_path).Set(Bore, "81.1 mm", Stores.NoStory, basedOn: _seen).Book.Baseline[Bore].Content.ToString());
        Stores.Open(_path).Set(Bore, "81.1 mm", Stores.NoStory, basedOn: _seen);
        Assert.Empty(Stores.Open(_path).Conflicts);
        Stores.Open(_path).Set(Bore, "81.2 mm", Stores.NoStory);
        Assert.Empty(Stores.Open(_path).Conflicts);
    }

    [Fact]
    public void A_value_of_a_change_conflicts_with_that_change_only()
    {
        Stores.Open(_path).Set(Bore, "83 mm", Stores.NoStory, "bored");
        Stores.Open(_path).Set(Bore, "84 mm", Stores.NoStory, "bored", _seen);
        Assert.Equal("bored", Assert.Single(Stores.Open(_path).Conflicts).Change);
        Assert.Throws<BadInputException>(() => Stores.Open(_path).Settle(Bore, second: true));
        Assert.Equal("84 mm", Stores.Open(_path).Settle(Bore, second: true, "bored").Book.Find("bored").Values[Bore].Content.ToString());
    }

    [Fact]
    public void Taking_back_counts_as_an_edit()
    {
        Stores.Open(_path).Set(Bore, "81.1 mm", Stores.NoStory);
        var seen = Stores.Open(_path).Revision;
        Stores.Open(_path).Undo();
        Assert.True(((StoredBook)Stores.Open(_path).Set(Bore, "81.2 mm", Stores.NoStory, basedOn: seen)).Contested);
    }

    [Fact]
    public void A_book_with_an_open_conflict_does_not_go_into_json()
    {
        Clash();
        Assert.Contains("a conflict that is not settled", Assert.Throws<BadInputException>(() => BookFile.Open(_path).CopyTo(_folder.PathOf("x.json"))).Message, StringComparison.Ordinal);
        Assert.Equal(["wren.gudgeon"], _folder.Files);
    }

    [Fact]
    public void Json_counts_no_revisions_and_says_so()
    {
        var json = BookFile.Create(_folder.PathOf("x.json"), "x");
        Assert.Equal("81 mm", json.Set(Bore, "81 mm", Stores.NoStory, basedOn: json.Revision).Book.Baseline[Bore].Content.ToString());
        Assert.Contains("counts no revisions", Assert.Throws<BadInputException>(() => json.Set(Bore, "81 mm", Stores.NoStory, basedOn: 1)).Message, StringComparison.Ordinal);
    }

    private void Clash()
    {
        Stores.Open(_path, "Ada").Set(Bore, "81.1 mm", Stores.NoStory, basedOn: _seen);
        Assert.True(((StoredBook)Stores.Open(_path, "Tom").Set(Bore, "81.2 mm", Stores.NoStory, basedOn: _seen)).Contested);
    }
}
