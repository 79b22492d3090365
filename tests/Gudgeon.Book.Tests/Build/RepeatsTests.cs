using Gudgeon.Book.Build;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Build;

/// <summary>Readings that repeat one another are one measurement.</summary>
public class RepeatsTests
{
    private const string Bore = "cylinder[1].bore";
    private static readonly BuildBook Plain = Books.Of(("cylinder.bore", "80 mm")).Changed("bored", (Bore, "81 mm")).Changed("gasket", ("cylinder.gasketThickness", "0.9 mm"));

    // JCGM 100:2008, 4.2: of 10.0, 10.2, 10.4 and 10.6 the mean is 10.3 and s² = 0.2/3, so s²/n = 0.016667;
    // with ± 0.1 (k = 2) of the instrument, u = √(0.05² + 0.016667) = 0.138444. Effective degrees of freedom (G.4.1)
    // 3 × 0.138444⁴/0.016667² = 3.97, cut to 3: t95 = 3.18 (table G.2), U = 0.4406 and half of it is kept.
    [Fact]
    public void Their_mean_holds_with_the_scatter_of_the_mean_and_the_instruments_uncertainty()
    {
        var book = Plain;
        foreach (var reading in new[] { "10.0", "10.2", "10.4", "10.6" })
        {
            book = Read(book, $"{reading} mm ± 0.1 mm");
        }

        var found = Found(book);
        Assert.Equal(4, found.Repeats);
        Assert.Equal(10.3e-3, found.Value.Si, 12);
        Assert.Equal(3.18245 * 0.138444e-3 / 2, found.Value.StandardUncertainty, 1e-9);
        Assert.Equal("10.30 mm ± 0.44 mm", found.Value.Content.ToString());
        Assert.Equal("10.6 mm ± 0.1 mm", found.Reading!.Value.Content.ToString());
    }

    // s/√2 = 1 µm with 1 degree of freedom and 1.1908 µm of the instrument: u = 1.555 µm, 5.8 degrees, t95(5) = 2.57, U = 3.998 µm.
    [Fact]
    public void Few_repeats_ask_for_a_larger_factor_than_two()
    {
        var value = Found(Read(Read(Plain, "89.421 mm ± 0.0023816 mm"), "89.423 mm ± 0.0023816 mm")).Value;
        Assert.Equal("89.4220 mm ± 0.004 mm", value.Content.ToString());
        Assert.Equal(3.998e-6, ((Amount)value.Content).Uncertainty, 2e-9);
    }

    // An instrument of u = 50 µm drowns a scatter of 1 µm: k stays 2.
    [Fact]
    public void Repeats_that_hardly_scatter_keep_the_factor_of_two()
    {
        var value = Found(Read(Read(Plain, "81.000 mm ± 0.1 mm"), "81.002 mm ± 0.1 mm")).Value;
        Assert.Equal(2 * Math.Sqrt((50e-6 * 50e-6) + 1e-12), ((Amount)value.Content).Uncertainty, 1e-12);
        Assert.Equal("81.0010 mm ± 0.1 mm", value.Content.ToString());
    }

    // JCGM 100:2008, table G.2: 12.71, 4.30, 3.18 for 1, 2, 3 degrees of freedom, 2.01 for 50.
    [Fact]
    public void The_larger_factors_are_those_of_the_table_and_end_at_two()
    {
        var factors = RepeatedUncertainty.LargerFactors;
        Assert.Equal([12.71, 4.30, 3.18, 2.01], new[] { factors[0], factors[1], factors[2], factors[49] }.Select(k => Math.Round(k, 2)));
        Assert.InRange(factors[^1], 2, 2.001);
    }

    [Fact]
    public void One_alone_is_as_it_was_read()
    {
        var book = Read(Plain, "81.004 mm ± 0.01 mm");
        Assert.Same(book.Measurements[0].Value, Found(book).Value);
        Assert.Equal(1, Found(book).Repeats);
    }

    [Theory]
    [InlineData("Tom", "bore gauge", "2026-10-02 10:00")]
    [InlineData("Ada", "calliper", "2026-10-02 10:00")]
    [InlineData("Ada", "bore gauge", "2026-10-03 10:00")]
    [InlineData("Ada", "bore gauge", "")]
    public void Another_person_instrument_or_day_replaces(string by, string with, string on)
    {
        var found = Found(Read(Read(Plain, "81.00 mm"), "81.02 mm", by, with, on));
        Assert.Equal((1, "81.02 mm"), (found.Repeats, found.Value.Content.ToString()));
    }

    [Theory]
    [InlineData("2026-10-02")]
    [InlineData("2026-10-02 23:59")]
    [InlineData("2026-10-02T08:00:00Z")]
    public void The_hour_does_not_matter(string on) => Assert.Equal(2, Found(Read(Read(Plain, "81.00 mm"), "81.02 mm", on: on)).Repeats);

    [Fact]
    public void A_reading_of_the_part_before_a_change_is_no_repeat()
    {
        var book = Read(Read(Plain, "80.00 mm", under: []), "81.02 mm", under: ["bored"]);
        Assert.Equal("81.02 mm", book.Now().Holding(Bore));
        Assert.Equal("80.00 mm", book.Switched("bored", false).Now().Holding(Bore));
    }

    [Fact]
    public void A_change_that_does_not_bear_on_the_field_leaves_repeats_together() =>
        Assert.Equal(2, Found(Read(Read(Plain, "81.00 mm", under: ["bored"]), "81.02 mm", under: ["bored", "gasket"])).Repeats);

    [Fact]
    public void Words_and_tables_are_not_averaged()
    {
        var book = Plain;
        foreach (var kind in new[] { "none", "centrifugal" })
        {
            book = Read(book, kind, path: "blower.kind");
        }

        Assert.Equal("centrifugal", book.Now().Holding("blower.kind"));
    }

    [Fact]
    public void Readings_in_different_units_are_one_mean_in_that_of_the_latest() =>
        Assert.Equal("25.450 mm", new Amount(Found(Read(Read(Plain, "1.00 in"), "25.50 mm")).Value.Si, Units.Find(Gudgeon.Calc.Catalogue.Dimension.Length, "mm")!, 0, 3).ToString());

    private static Found Found(BuildBook book) => book.Now().Find(Gudgeon.Book.Fields.FieldCatalogue.Address(Bore))!;

    private static BuildBook Read(BuildBook book, string text, string by = "Ada", string with = "bore gauge", string on = "2026-10-02 09:00", string[]? under = null, string path = Bore)
    {
        var next = book.Read(path, text, under ?? ["bored", "gasket"]);
        return next with { Measurements = [.. next.Measurements.SkipLast(1), next.Measurements[^1] with { Value = next.Measurements[^1].Value with { By = by, With = with, On = on } }] };
    }
}
