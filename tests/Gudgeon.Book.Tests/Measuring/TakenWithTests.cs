using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Measuring;

/// <summary>A reading with an instrument of the book's is kept with the ± that it had at that moment, in either form of a book.</summary>
public sealed class TakenWithTests : IDisposable
{
    private const string Bore = "cylinder[1].bore";

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Forms => ["wren.gudgeon", "wren.json"];

    public void Dispose() => _folder.Dispose();

    // 6 µm and 1 µm: U = 2 √(36/3 + 1/12) µm = 6.952 µm.
    [Theory]
    [MemberData(nameof(Forms))]
    public void A_reading_without_its_own_is_kept_with_the_instruments(string form)
    {
        Begin(form);
        Assert.Equal("81.004 mm ± 0.007 mm", Taken(form, "81.004 mm").Kept);
        Assert.Equal("3.1891 in ± 0.00027 in", Taken(form, "3.1891 in").Kept);
        Assert.Equal("8.1004e-2 m ± 7E-06 m", Taken(form, "8.1004e-2 m").Text);
        Assert.Equal("81.004 mm ± 0.01 mm", Taken(form, "81.004 ± 0.01 mm").Kept);
        Assert.Equal("81.004 mm", Taken(form, "81.004 mm", with: "grandfather's gauge").Kept);
        Assert.Equal("81.004 mm ± 0.007 mm", Taken(form, "81.004 mm", with: "Bore 100").Kept);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void It_stays_when_the_instrument_is_known_better_later(string form)
    {
        Begin(form);
        Taken(form, "81.004 mm", id: "4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f");
        Open(form).Set("instrument[bore-100].error", "0.002 mm", []);
        Assert.Equal(["81.004 mm ± 0.007 mm"], Open(form).Book.Measurements.Select(m => m.Value.Content.ToString()));

        // Sent again it is the same reading, though its ± would be another one now.
        Assert.True(Open(form).Measure(Bore, "81.004 mm", "bore-100", "Ada", "2026-05-01", "", "4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f").Repeated);
        Assert.Equal("81.004 mm ± 0.0024 mm", Taken(form, "81.004 mm").Kept);
    }

    [Fact]
    public void An_overdue_instrument_warns_and_is_taken()
    {
        Begin("wren.json");
        Assert.Empty(Taken("wren.json", "81.004 mm", on: "2026-12-31 18:00").Warnings);
        Assert.Equal(["instrument[bore-100] is overdue: its calibration ran until 2026-12-31"], Taken("wren.json", "81.004 mm", on: "2027-01-01").Warnings);
    }

    [Fact]
    public void One_that_measures_something_else_or_is_known_too_little_warns_and_gives_no_spread()
    {
        Begin("wren.json");
        var mass = Open("wren.json").Measure("piston[1].mass", "300 g", "bore-100", "Ada", "2026-05-01", "");
        Assert.Equal(["instrument[bore-100] measures a length and piston[1].mass is a mass: its ± says nothing of it"], mass.Warnings);
        Assert.Equal("300 g", mass.Book.Measurements[^1].Value.Content.ToString());
        Open("wren.json").Set("instrument[old].kind", "bore gauge", []);
        var old = Taken("wren.json", "81.004 mm", with: "old");
        Assert.Equal(("81.004 mm", "instrument[old] has neither permissible error nor calibration in the book: the reading is kept without ±"), (old.Kept, Assert.Single(old.Warnings)));
    }

    [Fact]
    public void One_that_cannot_show_such_a_reading_is_refused_and_the_book_is_as_it_was()
    {
        Begin("wren.json");
        var refusal = Assert.Throws<BadInputException>(() => Taken("wren.json", "120.004 mm"));
        Assert.Equal("cylinder[1].bore: given '120.004 mm' with instrument[bore-100], which reads 50 mm to 100 mm; wanted an instrument that reaches so far", refusal.Message);
        Assert.Empty(Open("wren.json").Book.Measurements);
    }

    [Fact]
    public void A_wrench_below_a_fifth_of_its_range_warns()
    {
        Begin("wren.json");
        Open("wren.json").Set("instrument[wrench].kind", "torque wrench", []);
        Open("wren.json").Set("instrument[wrench].to", "100 N·m", []);
        Open("wren.json").Set("instrument[wrench].error", "4 %", []);
        var low = Open("wren.json").Measure("joint[head].torque", "15 N·m", "wrench", "Ada", "2026-05-01", "");
        Assert.Contains("below a fifth of its range", Assert.Single(low.Warnings), StringComparison.Ordinal);
        Assert.Equal("15 N·m ± 0.69 N·m", low.Book.Measurements[^1].Value.Content.ToString());
    }

    private BookFile Open(string name) => BookFile.Open(_folder.PathOf(name));

    private void Begin(string name)
    {
        var file = BookFile.Create(_folder.PathOf(name), "Wren");
        foreach (var (field, text) in new[] { ("kind", "bore gauge"), ("from", "50 mm"), ("to", "100 mm"), ("resolution", "0.001 mm"), ("error", "0.006 mm"), ("due", "2026-12-31") })
        {
            file = Open(name).Set($"instrument[bore-100].{field}", text, []);
        }
    }

    private (string Kept, string Text, IReadOnlyList<string> Warnings) Taken(string name, string text, string with = "bore-100", string on = "2026-05-01", string id = "")
    {
        var after = Open(name).Measure(Bore, text, with, "Ada", on, "", id);
        var amount = (Amount)after.Book.Measurements[^1].Value.Content;
        var words = amount.Decimals < 0 ? $"8.1004e-2 m ± {Figures.Number(amount.Uncertainty)} m" : "";
        return (amount.ToString(), words, after.Warnings);
    }
}
