using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Tests.Checks;
using static Gudgeon.Book.Tests.Surfaces.RouteBooks;

namespace Gudgeon.Book.Tests.Surfaces;

/// <summary>Peening: strips of the references, media, coverage, heat.</summary>
public class PeeningCheckTests
{
    private const double Inch = 25.4e-3;

    [Fact] // P06: 0.006410 in at T 4.754 min, the last strip at 12 min.
    public void AStandardSetOfStripsGivesItsIntensity()
    {
        var intensity = Of(Gears, "peening-intensity[gears.coarse]");
        Assert.Equal(0.00641 * Inch, intensity.Judgement!.Value, 1e-6 * Inch);
        Assert.Equal(Verdict.Holds, intensity.Verdict);
        Assert.Equal(12 / 4.754, Of(Gears, "peening-saturation[gears.coarse]").Judgement!.Value, 1e-3);
        Assert.Equal(Verdict.FallsShort, Of(Gears.Set(("peening[gears.coarse].intensityMin", "0.17 mm")), "peening-intensity[gears.coarse]").Verdict);
    }

    [Fact] // P09: rounded from a = 0.300 mm, b = 0.25 for each minute.
    public void ConstructedStripsGiveTheirCurveBack()
    {
        Assert.Equal(0.270e-3, Of(Gears, "peening-intensity[gears.fine]").Judgement!.Value, 0.001e-3);
        Assert.Equal(32 / 9.21, Of(Gears, "peening-saturation[gears.fine]").Judgement!.Value, 0.02);
        var four = Gears.Set(("peening[gears.fine].readings", P09));
        var reach = Of(four, "peening-saturation[gears.fine]");
        Assert.Equal(16 / 9.22, reach.Judgement!.Value, 0.01);
        Assert.Equal(Verdict.FallsShort, reach.Verdict);
    }

    [Fact] // P11: 10 min against 2 · 6.51 min.
    public void AnInvalidCurveGivesNoIntensity()
    {
        var book = Gears.Set(("peening[gears.coarse].readings", P11));
        var reach = Of(book, "peening-saturation[gears.coarse]");
        Assert.Equal(10 / 6.51, reach.Judgement!.Value, 0.005);
        Assert.Equal(Verdict.FallsShort, reach.Verdict);
        var intensity = Of(book, "peening-intensity[gears.coarse]");
        Assert.Equal(Verdict.NotKnownYet, intensity.Verdict);
        Assert.Equal(["a strip of peening[gears.coarse].readings at twice the saturation time or more"], intensity.Missing);
    }

    [Theory]
    [InlineData("4 min at 0.0060 in; 6 min at 0.0069 in; 12 min at 0.0070 in", "exposure times: at least four strips are wanted")]
    [InlineData("1 min at 0.1 mm; 2 min at 0.22 mm; 3 min at 0.35 mm; 4 min at 0.5 mm", "arc heights: do not level off, or are level from the first strip; the exposure times are badly chosen")]
    public void StripsThatTellNothingSaySo(string readings, string sentence)
    {
        var finding = Of(Gears.Set(("peening[gears.coarse].readings", readings)), "peening-saturation[gears.coarse]");
        Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
        Assert.Equal([sentence], finding.Missing);
    }

    [Fact] // P20: half of 1.2 mm; a quarter of 3.6 mm.
    public void MediaFitFilletAndSlot()
    {
        Of(Gears, "peening-fillet[gears.coarse]").Is(0.6e-3, 1, Verdict.Holds);
        Of(Gears, "peening-slot[gears.coarse]").Is(0.6e-3, 1.5, Verdict.Holds);
        Of(Gears.Set(("treatment[gears].smallestFillet", "1 mm")), "peening-fillet[gears.coarse]").Is(0.6e-3, 0.5 / 0.6, Verdict.FallsShort);
        Assert.Equal(["treatment[gears].smallestFillet"], Of(Gears.Without("treatment[gears].smallestFillet").Without("treatment[gears].slotWidth"), "peening-fillet[gears.coarse]").Missing);
        Assert.Null(Find(Gears.Without("treatment[gears].smallestFillet"), "peening-fillet[gears.coarse]"));
        Assert.Null(Find(Gears.Without("treatment[gears].slotWidth"), "peening-slot[gears.coarse]"));
    }

    [Fact] // P13, P15: half after a minute is full after ln 50 / ln 2 = 5.644 min.
    public void CoverageIsAMultipleOfTheTimeToFull()
    {
        var full = Math.Log(50) / Math.Log(2);
        Of(Gears, "peening-coverage[gears.coarse]").Is(12 / full, 12 / full / 2, Verdict.Holds);
        Of(Gears.Set(("peening[gears.coarse].exposure", "11 min")), "peening-coverage[gears.coarse]").Is(11 / full, 11 / full / 2, Verdict.FallsShort);
        Of(Gears.Without("peening[gears.coarse].coverageWanted").Set(("peening[gears.coarse].exposure", "6 min")), "peening-coverage[gears.coarse]").Is(6 / full, 6 / full, Verdict.Holds);
    }

    [Fact] // 0.270 mm N is 0.090 mm A, below 0.1628 mm A.
    public void TheSecondStepIsFinerAndLighter()
    {
        Of(Gears, "peening-finer[gears.fine]").Is(0.2e-3, 3, Verdict.Holds);
        Assert.Null(Find(Gears, "peening-finer[gears.coarse]"));
        Assert.Equal(0.090e-3, Of(Gears, "peening-lighter[gears.fine]").Judgement!.Value, 0.0005e-3);
        Assert.Equal(Verdict.Holds, Of(Gears, "peening-lighter[gears.fine]").Verdict);
        var swapped = Gears.Set(("peening[gears.coarse].step", "2"), ("peening[gears.fine].step", "1"));
        Of(swapped, "peening-finer[gears.coarse]").Is(0.6e-3, 1.0 / 3, Verdict.FallsShort);
        Assert.Equal(Verdict.FallsShort, Of(swapped, "peening-lighter[gears.coarse]").Verdict);
        Assert.Equal(Verdict.FallsShort, Of(Gears.Set(("peening[gears.fine].strip", "A")), "peening-lighter[gears.fine]").Verdict);
    }

    [Fact] // P04: N up to 0.012 in (0.3048 mm), A from 0.004 in, C from 0.024 / 3.5 in.
    public void TheStripIsMeantForTheIntensity()
    {
        Assert.Equal(0.3048e-3, Of(Gears, "peening-strip[gears.fine]").Judgement!.Upper!.Value, 1e-9);
        Assert.Equal(Verdict.Holds, Of(Gears, "peening-strip[gears.fine]").Verdict);
        Assert.Equal(Verdict.Holds, Of(Gears, "peening-strip[gears.coarse]").Verdict);
        var c = Of(Gears.Set(("peening[gears.coarse].strip", "C")), "peening-strip[gears.coarse]");
        Assert.Equal(0.024 / 3.5 * Inch, c.Judgement!.Lower!.Value, 1e-9);
        Assert.Equal(Verdict.FallsShort, c.Verdict);
    }

    [Theory] // P21, P22: by thickness and strength, inches on strip A.
    [InlineData("5 mm", "1250 MPa", 0.008, 0.012)]
    [InlineData("12 mm", "1250 MPa", 0.012, 0.016)]
    [InlineData("12 mm", "1500 MPa", 0.006, 0.010)]
    public void SteelHasACustomaryIntensity(string thickness, string strength, double least, double greatest)
    {
        var book = Gears.Without("peening[gears.coarse].intensityMin").Without("peening[gears.coarse].intensityMax").Set(("treatment[gears].thickness", thickness), ("treatment[gears].tensileStrength", strength));
        var judgement = Of(book, "peening-intensity[gears.coarse]").Judgement!;
        Assert.Equal(least * Inch, judgement.Lower!.Value, 1e-9);
        Assert.Equal(greatest * Inch, judgement.Upper!.Value, 1e-9);
    }

    [Fact]
    public void OtherMetalsAndStripsHaveNoCustomaryIntensity()
    {
        var book = Gears.Without("peening[gears.coarse].intensityMin").Without("peening[gears.coarse].intensityMax").Set(("treatment[gears].thickness", "5 mm"));
        string[] wanted = ["peening[gears.coarse].intensityMin", "peening[gears.coarse].intensityMax"];
        Assert.Equal(wanted, Of(book.Set(("treatment[gears].metal", "titanium")), "peening-intensity[gears.coarse]").Missing);
        Assert.Equal(wanted, Of(book.Set(("peening[gears.coarse].strip", "C")), "peening-intensity[gears.coarse]").Missing);
    }

    [Theory] // P29: 475, 200 and 600 °F.
    [InlineData("steel", 475)]
    [InlineData("aluminium", 200)]
    [InlineData("titanium", 600)]
    public void HeatAfterwardsIsHeldToTheMetal(string metal, double fahrenheit)
    {
        var book = Gears.Set(("treatment[gears].metal", metal), ("peening[gears.fine].heatAfterwards", "120 °C"));
        var heat = Of(book, "peening-heat[gears.coarse]");
        Assert.Equal(((fahrenheit - 32) / 1.8) + 273.15, heat.Judgement!.Upper!.Value, 1e-6);
        Assert.Equal(393.15, heat.Judgement.Value, 1e-6);
        Assert.Equal(metal == "aluminium" ? Verdict.FallsShort : Verdict.Holds, heat.Verdict);
        Assert.Null(Find(Gears, "peening-heat[gears.coarse]"));
    }

    [Fact]
    public void AHotCoatCountsAsHeatAfterwards() =>
        Assert.Equal(623.15, Of(Gears.Set(("coating[gears].thickness", "3 µm"), ("coating[gears].process", "dry"), ("coating[gears].temperature", "350 °C")), "peening-heat[gears.fine]").Judgement!.Value, 1e-6);
}
