using CsCheck;
using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tests.Jobs;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Parts;

/// <summary>Parts over a network of four cards that is worked by hand: a 0 to 2, c 2 to 2.5 with half a day, b 2 to 3, first-start 3 to 4.</summary>
public sealed class PartSheetTests
{
    private static readonly DateOnly Monday = new(2026, 11, 30);
    private static readonly string[] States = ["needed", "ordered", "here", "fitted", "scrapped"];

    private static readonly BuildBook Book = CriticalPathTests.Network().Set(
        ("part[pistons].name", "Pistons"), ("part[pistons].state", "fitted"), ("part[pistons].quantity", "2"), ("part[pistons].price", "148"), ("part[pistons].mass", "390 g"), ("part[pistons].massBefore", "410 g"), ("part[pistons].source", "bought"),
        ("part[plate].name", "Plate"), ("part[plate].state", "ordered"), ("part[plate].price", "100"), ("part[plate].card", "b"), ("part[plate].orderedOn", "2026-11-27"), ("part[plate].leadTime", "10 d"),
        ("part[seal].name", "Seal ring"), ("part[seal].state", "needed"), ("part[seal].quantity", "2"), ("part[seal].price", "10"), ("part[seal].card", "c"), ("part[seal].leadTime", "5 d"), ("part[seal].supplier", "a seal maker"),
        ("part[belt].name", "Belt"), ("part[belt].state", "needed"), ("part[belt].price", "62.5"), ("part[belt].card", "b"), ("part[belt].leadTime", "2 d"), ("part[belt].supplier", "a belt stockist"), ("part[belt].mass", "300 g"), ("part[belt].massBefore", "250 g"),
        ("part[pin].name", "Pin"), ("part[pin].state", "needed"), ("part[pin].leadTime", "3 d"),
        ("part[bush].name", "Bush"), ("part[bush].state", "needed"), ("part[bush].card", "a"),
        ("part[old].name", "Old belt"), ("part[old].state", "scrapped"), ("part[old].price", "20"), ("part[old].mass", "100 g"));

    [Fact]
    public void Money_and_mass_are_what_the_lines_come_to()
    {
        var sheet = Of(Book);
        Assert.Equal((396, 82.5, 20, 498.5), (sheet.Spent, sheet.ToSpend, sheet.OnScrap, sheet.Total));
        Assert.Equal(1.08, sheet.Mass, 12);
        Assert.Equal(-0.01, sheet.MassSaved, 12);
        Assert.Equal("396.00 spent, 82.50 still to spend, 20.00 on scrapped parts: 498.50 in all, no budget is set (target.budget).", sheet.BudgetWords);
    }

    [Theory]
    [InlineData("500", "498.50 in all, 1.50 under the budget of 500.00.")]
    [InlineData("450", "498.50 in all, 48.50 over the budget of 450.00.")]
    public void The_budget_is_held_to(string budget, string words) => Assert.EndsWith(words, Of(Book.Set(("target.budget", budget))).BudgetWords, StringComparison.Ordinal);

    [Fact]
    public void The_mass_is_held_to_its_target_in_either_units()
    {
        var sheet = Of(Book.Set(("target.mass", "1 kg")));
        Assert.StartsWith("1.08 kg together, 0.08 kg over the target of 1 kg; 10 g heavier than what they replace. Not weighed: Bush, Pin, Plate, Seal ring.", sheet.MassWords(imperial: false), StringComparison.Ordinal);
        Assert.StartsWith("2.381 lb together, 0.17637 lb over the target of 2.2046 lb", sheet.MassWords(imperial: true), StringComparison.Ordinal);
    }

    // c and b can start on 2 December. The seal takes 5 days: to be ordered by 27 November, 3 days ago. The belt takes 2: today.
    [Fact]
    public void Orders_come_by_supplier_soonest_first_with_the_day_to_order_by()
    {
        var orders = Of(Book).Orders;
        Assert.Equal(["a seal maker", "a belt stockist", "no supplier said"], orders.Select(s => s.Words));
        Assert.Equal(
            ["order now: 3 d late, was to be ordered by 2026-11-27", "order by 2026-11-30", "lead time not known", "no job card before the first start waits for it"],
            orders.SelectMany(s => s.Orders).Select(o => o.Words));
        Assert.Equal([20, 62.5, 0], orders.Select(s => s.Cost));
        Assert.Equal(new DateOnly(2026, 12, 2), orders[0].Orders[0].WantedOn);
    }

    // Plate: ordered on 27 November, 10 days: here on 7 December, day 7; b starts on day 2 without slack: 5 days. Seal: here on
    // day 5, c starts on day 2 and has half a day: 2.5 days. Belt: here on day 2: none. All together: b 7 to 8, first-start 8 to 9.
    [Fact]
    public void What_puts_off_the_first_start_is_told_in_days()
    {
        var sheet = Of(Book);
        Assert.Equal([("plate", 5), ("seal", 2.5), ("belt", 0), ("bush", 0)], sheet.Blocks.Select(b => (b.Part.Key, b.Delay)));
        Assert.Equal("Plate (ordered): here on 2026-12-07, b could start on 2026-12-02: puts off the first start by 5 d.", sheet.Blocks[0].Words);
        Assert.Equal("Seal ring (needed): here on 2026-12-05 if it is ordered today, c could start on 2026-12-02: puts off the first start by 2.5 d.", sheet.Blocks[1].Words);
        Assert.EndsWith("does not put off the first start.", sheet.Blocks[2].Words, StringComparison.Ordinal);
        Assert.Equal("Bush (needed): nobody knows when it comes, a could start on 2026-11-30; counted as here.", sheet.Blocks[3].Words);
        Assert.Equal(new DateOnly(2026, 12, 8), sheet.FirstStart);
    }

    [Fact]
    public void A_scrapped_part_without_another_a_past_promise_and_a_part_without_a_state_are_told()
    {
        var book = Book.Set(("part[plate].due", "2026-11-28"), ("part[shim].name", "Shim"));
        Assert.Equal(
            [
                "Plate was promised for 2026-11-28 and is not here: ask whoever sends it.",
                "Old belt is scrapped, and there is no other in its place.",
                "Shim: the book does not say how far it has come (part[shim].state).",
            ],
            Of(book).Remarks);
        Assert.DoesNotContain(Of(book.Set(("part[belt].name", "old belt"))).Remarks, r => r.Contains("scrapped", StringComparison.Ordinal));
    }

    [Fact]
    public void Totals_are_the_sums_of_the_lines() =>
        Gen.Select(Gen.OneOf(States), Gen.Int[1, 9], Gen.Int[1, 900], Gen.Int[1, 5000]).Array[1, 8].Sample(parts =>
        {
            var sheet = Of(CriticalPathTests.Network().Set([.. parts.SelectMany((p, i) => new[] { ($"part[p{i}].state", p.Item1), ($"part[p{i}].quantity", $"{p.Item2}"), ($"part[p{i}].price", $"{p.Item3}"), ($"part[p{i}].mass", $"{p.Item4} g") })]));
            Assert.Equal(parts.Sum(p => p.Item2 * p.Item3), sheet.Total, 6);
            Assert.Equal(sheet.Total, sheet.Spent + sheet.ToSpend + sheet.OnScrap, 6);
            Assert.Equal(sheet.ToSpend, sheet.Orders.Sum(s => s.Cost), 6);
            Assert.Equal(parts.Where(p => p.Item1 != "scrapped").Sum(p => p.Item2 * p.Item4) / 1000.0, sheet.Mass, 9);
        }, iter: 100);

    [Fact]
    public void The_order_list_is_a_file_to_order_from()
    {
        var lines = PartOrderFile.Csv(Of(Book)).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("supplier,part,order number,quantity,price of one,cost,lead time d,order by,wanted on,late d,key", lines[0]);
        Assert.Equal("a seal maker,Seal ring,,2,10,20,5,2026-11-27,2026-12-02,3,seal", lines[1]);
        Assert.Equal(5, lines.Length);
        Assert.Equal("PK"u8.ToArray(), PartOrderFile.Xlsx(Of(Book))[..2]);
        Assert.Equal("order list: given the file 'orders.txt', wanted a name that ends in .csv or .xlsx", Assert.Throws<BadInputException>(() => PartOrderFile.Write(Of(Book), "orders.txt")).Message);
    }

    [Fact]
    public void The_demo_keeps_to_its_budget_and_no_bolt_is_listed_twice()
    {
        var sheet = PartSheet.Of(DemoBooks.Heron.Book, DemoBooks.Heron.Now, Monday);
        Assert.Equal(12, sheet.Lines.Count);
        Assert.Equal((1492, 238, 62), (Math.Round(sheet.Spent, 6), Math.Round(sheet.ToSpend, 6), sheet.OnScrap));
        Assert.Equal(["head-gasket", "stem-seals", "clutch-plates", "belt", "spare-rings", "oil"], sheet.Blocks.Select(b => b.Part.Key).OrderBy(k => k switch { "head-gasket" => 0, "stem-seals" => 1, "clutch-plates" => 2, "belt" => 3, "spare-rings" => 4, _ => 5 }));
        Assert.Empty(sheet.Remarks);
    }

    private static PartSheet Of(BuildBook book) => PartSheet.Of(book, book.Now(), Monday);
}
