using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Jobs;

/// <summary>The way to the first start, against a network that is worked by hand.</summary>
public sealed class CriticalPathTests
{
    private static readonly DateOnly Monday = new(2026, 11, 30);

    // a 8 h -> b 4 h -> first-start 4 h, and c 2 h beside b; 4 h a day. a 0..2, b 2..3, c 2..2.5, end 3..4: c has half a day.
    [Fact]
    public void The_longest_chain_sets_the_day_and_the_others_have_slack()
    {
        var path = Path(Network());
        Assert.Equal([("a", 0, 2, 0), ("c", 2, 2.5, 0.5), ("b", 2, 3, 0), ("first-start", 3, 4, 0)], path.Cards.Select(c => (c.Card.Card.Id, c.Start, c.Finish, Math.Round(c.Slack, 9))));
        Assert.Equal((new DateOnly(2026, 12, 3), 18 * 3600.0), (path.End, path.Work));
    }

    [Fact]
    public void A_part_that_comes_late_sets_the_start_of_its_card()
    {
        var path = Path(Network().Set(("part[seal].state", "ordered"), ("part[seal].card", "c"), ("part[seal].due", "2026-12-07")));
        var late = path.Cards.First(c => c.Card.Card.Id == "c");
        Assert.Equal((7.0, 7.5, true, "seal"), (late.Start, late.Finish, late.Critical, late.Part!.Key));
        Assert.Equal(new DateOnly(2026, 12, 8), path.End);
        Assert.False(path.Cards.First(c => c.Card.Card.Id == "b").Critical);
    }

    [Fact]
    public void A_part_without_a_day_is_named()
    {
        var path = Path(Network().Set(("part[seal].state", "needed"), ("part[seal].card", "c")));
        Assert.Equal("seal", Assert.Single(path.Undated).Key);
        Assert.Equal(4, path.Length, 9);
    }

    [Fact]
    public void A_part_that_is_not_ordered_comes_its_lead_time_from_today()
    {
        var path = Path(Network().Set(("part[seal].state", "needed"), ("part[seal].card", "c"), ("part[seal].leadTime", "7 d")));
        Assert.Equal(("seal", 7.0), (path.Cards.First(c => c.Card.Card.Id == "c").Part!.Key, path.Cards.First(c => c.Card.Card.Id == "c").Start));
        Assert.Empty(path.Undated);
        Assert.Equal("part seal (needed, 7 d from the order)", path.Cards.First(c => c.Card.Card.Id == "c").Part!.Words);
    }

    [Fact]
    public void Cards_that_wait_for_each_other_are_refused()
    {
        var book = Network();
        book = book with { Cards = [.. book.Cards.Select(c => c.Id == "a" ? c with { After = ["b"] } : c)] };
        Assert.Equal("job cards: a and b wait for each other; take one out of the other's 'after'", Assert.Throws<BadInputException>(() => Path(book)).Message);
    }

    private static CriticalPath Path(BuildBook book) => CriticalPath.Of(book, book.Now(), Monday);

    /// <summary>Four cards of its own; all of the program's are left out.</summary>
    internal static BuildBook Network()
    {
        static CardTemplate Card(string id, double hours, params string[] after) => new(id, id, "trial", hours * 3600) { After = after, Own = true, Steps = [new CardStep("s", StepKind.Do, "Do.")] };
        var book = Books.Of(("engine.cylinders", "1"));
        return book with
        {
            Cards = [Card("a", 8), Card("b", 4, "a"), Card("c", 2, "a"), Card(CriticalPath.FirstStart, 4, "b", "c")],
            Acts = [.. CardCatalogue.All.Where(c => c.Id != CriticalPath.FirstStart).Select(c => new CardAct(c.Id, ActKind.LeaveOut, "Ada", "2026-11-29T08:00:00Z") { Note = "trial" })],
        };
    }
}
