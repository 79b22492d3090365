using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
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

    [Theory]
    [MemberData(nameof(Forms))]
    public void Every_reading_of_a_table_is_held_to_the_range_but_not_its_places(string form)
    {
        Begin(form);

        // Stations 10 mm and 40 mm are far below 50 mm: there the part is read, not the gauge.
        var taken = Open(form).Measure(Table("10,81.002,81.006\n40,81.001,81.003\n"), "bore-100", "Ada", "2026-05-01", "");
        Assert.Equal(2, ((Table)taken.Book.Measurements[^1].Value.Content).Rows.Count);
        Assert.Empty(taken.Warnings);
        var refusal = Assert.Throws<BadInputException>(() => Open(form).Measure(Table("10,81.002,81.006\n40,81.001,120.003\n"), "bore-100", "Ada", "2026-05-01", ""));
        Assert.Equal("cylinder[1].boreTable, row 2, second: given '120.003 mm' with instrument[bore-100], which reads 50 mm to 100 mm; wanted an instrument that reaches so far", refusal.Message);
        Assert.Throws<BadInputException>(() => Open(form).Measure("cylinder[1].boreTable", "10 mm at 8.1002 mm at 81.006 mm", "bore-100", "Ada", "2026-05-01", ""));
        Assert.Single(Open(form).Book.Measurements);
    }

    [Fact]
    public void A_reading_of_a_table_outside_what_is_usual_asks_as_a_single_one_does()
    {
        Begin("wren.json");
        string Question(string rows) => Open("wren.json").Measure(Table(rows), "eye", "Ada", "2026-05-01", "").Book.Measurements[^1].Value.Question;
        Assert.Equal("Bore readings, row 2, first: 895.1 mm is outside what is usual (30 mm to 130 mm): is it right?", Question("10,89.502,89.506\n40,895.1,89.503\n"));
        Assert.Equal("", Question("10,89.502,89.506\n40,89.51,89.503\n"));
        Assert.Equal("Bore of 895.1 mm is outside what is usual (30 mm to 130 mm): is it right?", KnownValue.Read(FieldCatalogue.Address(Bore).Field, "895.1 mm").Question);
    }

    [Fact]
    public void A_table_without_what_the_instrument_measures_warns()
    {
        Begin("wren.json");
        Open("wren.json").Set("instrument[scale].kind", "scale", []);
        Assert.Equal(["instrument[scale] measures a mass and cylinder[1].boreTable holds none: its ± says nothing of it"], Open("wren.json").Measure(Table("10,81.002,81.006\n"), "scale", "Ada", "2026-05-01", "").Warnings);
    }

    [Theory]
    [InlineData("bore-10", "bore-10 is none of the book's instruments, so no ± is known; the nearest is bore-100")]
    [InlineData("Boar 100", "Boar 100 is none of the book's instruments, so no ± is known; the nearest is bore-100")]
    [InlineData("grandfather's gauge", "grandfather's gauge is none of the book's instruments, so no ± is known")]
    public void One_that_the_book_does_not_list_warns(string with, string warning)
    {
        Begin("wren.json");
        var taken = Taken("wren.json", "81.004 mm", with: with);
        Assert.Equal(("81.004 mm", warning), (taken.Kept, Assert.Single(taken.Warnings)));

        // A bench is on no list: of a table only a name that is nearly another's is asked about.
        var near = warning.Contains("nearest", StringComparison.Ordinal);
        Assert.Equal(near ? [warning] : Array.Empty<string>(), Open("wren.json").Measure(Table("10,81.002,81.006\n"), with, "Ada", "2026-05-01", "").Warnings);
    }

    [Fact]
    public void One_that_the_book_does_not_list_is_well_where_the_spread_is_said_or_no_instrument_is_listed()
    {
        Begin("wren.json");
        Assert.Empty(Taken("wren.json", "81.004 mm ± 0.006 mm", with: "bore-10").Warnings);
        Assert.Empty(Open("wren.json").Measure("engine.cylinders", "2", "eye", "Ada", "2026-05-01", "").Warnings);
        BookFile.Create(_folder.PathOf("bare.json"), "Bare");
        Assert.Empty(Taken("bare.json", "81.004 mm", with: "bore-10").Warnings);
    }

    // 1.5 K: U = 2 × 1.5/√3 K = 1.732 K.
    [Fact]
    public void A_temperature_has_the_difference_of_its_thermometer()
    {
        Begin("wren.json");
        foreach (var (field, text) in new[] { ("kind", "thermometer"), ("from", "-50 °C"), ("to", "60 °C"), ("error", "1.5 K") })
        {
            Open("wren.json").Set($"instrument[probe].{field}", text, []);
        }

        Assert.Equal("21 °C ± 1.7 °C", Open("wren.json").Measure("weather.temperature", "21 °C", "probe", "Ada", "2026-05-01", "").Book.Measurements[^1].Value.Content.ToString());
        Assert.Contains("which reads -50 °C to 60 °C", Assert.Throws<BadInputException>(() => Open("wren.json").Measure("weather.temperature", "61 °C", "probe", "Ada", "2026-05-01", "")).Message, StringComparison.Ordinal);
    }

    private static TableFile Table(string rows) => TableFile.Read("cylinder[1].boreTable", "station mm,first mm,second mm\n" + rows, "bore.csv");

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
