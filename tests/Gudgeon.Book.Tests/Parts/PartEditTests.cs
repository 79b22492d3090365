using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Parts;

/// <summary>A part moved on by one press, in either form of a book and from any layer.</summary>
public sealed class PartEditTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 11, 30);

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("parts.json")]
    [InlineData("parts.gudgeon")]
    public void A_part_is_added_and_comes_all_the_way(string name)
    {
        var file = PartEdits.Add(BookFile.Create(_folder.PathOf(name), "parts"), "belt", "Toothed belt", "needed", "Ada", Day);
        List<string> states = [];
        for (var state = "needed"; state is not null; state = PartEdits.After(state))
        {
            file = PartEdits.Move(file, "belt", state, "Tom", Day);
            states.Add(file.Book.Now().Holding("part[belt].state"));
        }

        Assert.Equal(["needed", "ordered", "here", "fitted"], states);
        Assert.Equal("2026-11-30", file.Book.Now().Holding("part[belt].orderedOn"));
        var found = file.Book.Now().Find(new FieldAddress(Part.State, "belt"))!.Value;
        Assert.Equal(("Tom", "2026-11-30", How.Measured), (found.By, found.On, found.How));
    }

    [Fact]
    public void An_order_that_is_taken_back_and_given_again_has_its_own_day()
    {
        var file = PartEdits.Add(Fresh(), "belt", "Toothed belt", "needed", "Ada", Day).Set("part[belt].leadTime", "10 d", []);
        file = PartEdits.Move(file, "belt", "ordered", "Ada", Day);
        Assert.Equal(new DateOnly(2026, 12, 10), Due(file));
        file = PartEdits.Move(file, "belt", "needed", "Ada", Day);
        Assert.Null(Due(file));
        file = PartEdits.Move(file, "belt", "ordered", "Ada", Day.AddDays(7));
        Assert.Equal(new DateOnly(2026, 12, 17), Due(file));
    }

    [Fact]
    public void A_state_that_a_change_or_a_reading_holds_is_moved_there()
    {
        var file = Fresh().AddChange("blown", "Blown", "more air").Set("part[belt].state", "needed", [], "blown");
        file = PartEdits.Move(file, "belt", "ordered", "Ada", Day);
        Assert.Equal("ordered", file.Book.Changes.Single().Values["part[belt].state"].Content);
        Assert.Empty(file.Book.Baseline);
        file = PartEdits.Move(file.Measure("part[belt].state", "here", "", "Tom", "2026-11-30", ""), "belt", "fitted", "Ada", Day);
        Assert.Equal("fitted", file.Book.Now().Holding("part[belt].state"));
        Assert.Equal(2, file.Book.Measurements.Count);
    }

    [Fact]
    public void What_cannot_be_is_refused_in_one_sentence()
    {
        var file = PartEdits.Add(Fresh(), "belt", "Toothed belt", "needed", "Ada", Day);
        Assert.Equal("part[belt] is in the book already; wanted another short name for the new part", Refused(() => PartEdits.Add(file, "belt", "Another", "needed", "Ada", Day)));
        Assert.Equal("part[a belt]: wanted a name of letters and digits, such as part[head]", Refused(() => PartEdits.Add(file, "a belt", "Another", "needed", "Ada", Day)));
        Assert.Contains("lost", Refused(() => PartEdits.Move(file, "belt", "lost", "Ada", Day)), StringComparison.Ordinal);
        Assert.Equal("needed", BookFile.Open(_folder.PathOf("fresh.json")).Book.Now().Holding("part[belt].state"));
    }

    private static DateOnly? Due(BookFile file) => PartLine.Of(new View(file.Book.Now()), "belt").Due;

    private BookFile Fresh() => BookFile.Create(_folder.PathOf("fresh.json"), "parts");

    private static string Refused(Func<BookFile> edit) => Assert.Throws<BadInputException>(edit).Message;
}
