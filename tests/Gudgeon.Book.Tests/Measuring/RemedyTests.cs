using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Tests.Checks;

namespace Gudgeon.Book.Tests.Measuring;

/// <summary>
/// Squish of 0.90 mm gasket and 0.12 mm deck is 1.02 mm against 1 mm: 20 µm inside. With u = 20 µm of the deck it is too close to
/// tell; it is decided from u = 20/1.645 = 12.16 µm on, that is ± 24.3 µm.
/// </summary>
public class RemedyTests
{
    private static readonly DateOnly Today = new(2026, 6, 1);

    private static readonly BuildBook Squish = Books.Of(("engine.cylinders", "1"), ("cylinder.gasketThickness", "0.9 mm"), ("cylinder.deckHeight", "0.12 mm ± 0.04 mm"));

    private static IReadOnlyList<Remedy> For(BuildBook book) => Remedy.For(Appraisal.Of(book, "squish", "1"), book.Now(), Today);

    private static BuildBook Gauge(BuildBook book, string name, string error, string cost, params (string, string)[] more) => book.Set(
        [($"instrument[{name}].kind", "dial gauge"), ($"instrument[{name}].error", error), ($"instrument[{name}].cost", cost), .. more.Select(m => ($"instrument[{name}].{m.Item1}", m.Item2))]);

    [Fact]
    public void What_is_decided_needs_nothing() => Assert.Empty(For(Squish.Set(("cylinder.deckHeight", "0.2 mm ± 0.04 mm"))));

    [Fact]
    public void The_cheapest_instrument_that_decides_is_proposed()
    {
        // 0.02 mm gives u = 11.5 µm and decides; 0.022 mm gives 12.7 µm and does not.
        var book = Gauge(Gauge(Gauge(Squish, "coarse", "0.022 mm", "1"), "good", "0.02 mm", "3"), "best", "0.005 mm", "8");
        var remedy = Assert.Single(For(book));
        Assert.Equal(("cylinder.deckHeight", "good", 3, 1), (remedy.Source, remedy.Instrument, remedy.Cost, remedy.Readings));
        Assert.Equal("read cylinder.deckHeight with instrument[good] (± 0.023 mm, cost of a use 3): decided if it reads the same", remedy.Words);
    }

    [Fact]
    public void One_that_is_overdue_cannot_reach_or_is_of_another_kind_is_not()
    {
        var overdue = Gauge(Squish, "overdue", "0.005 mm", "1", ("due", "2026-05-31"));
        var far = Gauge(overdue, "far", "0.005 mm", "1", ("from", "5 mm"));
        var book = far.Set(("instrument[scale].kind", "scale"), ("instrument[scale].error", "0.1 g"), ("instrument[mic].kind", "micrometer"), ("instrument[mic].error", "0.004 mm"));
        var remedy = Assert.Single(For(book));
        Assert.Equal("neither an instrument of the book nor up to 30 repeats of one reading would decide it: cylinder.deckHeight would have to be known to ± 0.024318 mm", remedy.Words);
        Assert.Equal("overdue", Assert.Single(Remedy.For(Appraisal.Of(book, "squish", "1"), book.Now(), Today.AddDays(-1))).Instrument);
    }

    [Fact]
    public void Repeats_are_proposed_where_scatter_makes_the_spread()
    {
        // 0.10 and 0.14: s = 28.3 µm, U of the mean 12.7 × 20 µm. With an exact instrument half of t95 s/√n is under 12.16 µm from
        // n = 8 on: 2.365 × 10.0/2 = 11.8 µm, and 2.447 × 10.7/2 = 13.1 µm at n = 7.
        var book = Squish.Without("cylinder.deckHeight");
        book = Repeated(book, "0.10 mm", "0.14 mm");
        Assert.Equal(Verdict.TooCloseToTell, Appraisal.Of(book, "squish", "1").Verdict);
        var remedy = Assert.Single(For(book));
        Assert.Equal(("cylinder[1].deckHeight", "", 8), (remedy.Source, remedy.Instrument, remedy.Readings));

        // With ± 0.02 mm of the instrument 10 µm stay: n = (28.28 / √(12.16² − 10²))² = 16.7. With ± 0.03 mm no number helps.
        Assert.Equal(17, Assert.Single(For(Repeated(Squish, "0.10 mm ± 0.02 mm", "0.14 mm ± 0.02 mm"))).Readings);
        Assert.Equal(0, Assert.Single(For(Repeated(Squish, "0.10 mm ± 0.03 mm", "0.14 mm ± 0.03 mm"))).Readings);
    }

    [Fact]
    public void How_closely_it_would_have_to_be_read_is_said()
    {
        var book = Squish.Set(("cylinder.deckHeight", "0.12 mm"), ("cylinder.gasketThickness", "0.9 mm ± 0.04 mm"));
        Assert.Contains("cylinder.gasketThickness would have to be known", Assert.Single(For(book)).Words, StringComparison.Ordinal);
        var both = book.Set(("cylinder.deckHeight", "0.12 mm ± 0.04 mm"));
        Assert.Contains("not even an exact", Assert.Single(For(both)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_read_off_a_part_is_said_to_be_the_trouble()
    {
        // 80 µm cold, about 16 µm hot; 6 K of the skirt are 11 µm of it.
        var book = Books.Of(("engine.cylinders", "1"), ("cylinder.bore", "90 mm ± 0.002 mm"), ("cylinder.expansion", "21 µm/(m·K)"), ("cylinder.temperature", "110 °C"), ("piston.diameter", "89.92 mm ± 0.002 mm"), ("piston.expansion", "20 µm/(m·K)"), ("piston.skirtTemperature", "150 ± 12 °C"), ("piston.hotMin", "0.01 mm"));
        var finding = Appraisal.Of(book, "piston-clearance-hot", "1");
        Assert.Equal(Verdict.TooCloseToTell, finding.Verdict);
        Assert.Equal("no reading of a part would decide it: most of its ± comes from piston.skirtTemperature, which is not read off one", Assert.Single(Remedy.For(finding, book.Now(), Today)).Words);
    }

    [Fact]
    public void The_instrument_that_is_in_use_is_not_proposed()
    {
        // Kept with a ± from before the instrument was known better: it would be read the same again.
        var book = Gauge(Squish.Without("cylinder.deckHeight"), "Dial-gauge", "0.005 mm", "1");
        var remedy = Assert.Single(For(Repeated(book, "0.12 mm ± 0.04 mm")));
        Assert.Equal((0, ""), (remedy.Readings, remedy.Instrument));
        Assert.Equal("best", Assert.Single(For(Repeated(Gauge(book, "best", "0.005 mm", "8"), "0.12 mm ± 0.04 mm"))).Instrument);
    }

    // 0.106, 0.12 and 0.134: s = 14 µm, s/√3 = 8.08 µm; with ± 0.04 mm of the instrument u = 21.6 µm. An instrument of 2 µm gives
    // u = √(8.08² + 1.155²) = 8.165 µm with 2.08 degrees of freedom, t95(2) = 4.303: 17.6 µm, which does not decide; 12.16 would.
    [Fact]
    public void Repeats_scatter_as_much_with_another_instrument()
    {
        var book = Gauge(Squish.Without("cylinder.deckHeight"), "best", "0.002 mm", "1");
        Assert.DoesNotContain(For(Repeated(book, "0.106 mm ± 0.04 mm", "0.12 mm ± 0.04 mm", "0.134 mm ± 0.04 mm")), r => r.Instrument.Length > 0);

        // s = 4 µm: √(2.31² + 1.155²) = 2.58 µm, 3.12 degrees, t95(3) = 3.182: ± 0.0082 mm.
        var remedy = For(Repeated(book, "0.116 mm ± 0.04 mm", "0.12 mm ± 0.04 mm", "0.124 mm ± 0.04 mm"))[0];
        Assert.Equal(("best", 3), (remedy.Instrument, remedy.Readings));
        Assert.Equal("read cylinder[1].deckHeight 3 times with instrument[best] (± 0.0082 mm, cost of a use 1): decided if it reads the same", remedy.Words);
    }

    private static BuildBook Repeated(BuildBook book, params string[] texts) => texts.Aggregate(book, (b, text) =>
    {
        var read = b.Read("cylinder[1].deckHeight", text);
        return read with { Measurements = [.. read.Measurements.SkipLast(1), read.Measurements[^1] with { Value = read.Measurements[^1].Value with { By = "Ada", With = "dial gauge", On = "2026-05-01" } }] };
    });
}
