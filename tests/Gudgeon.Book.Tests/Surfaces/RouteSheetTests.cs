using Gudgeon.Book.Build;
using Gudgeon.Book.Surfaces;
using Gudgeon.Book.Values;
using static Gudgeon.Book.Tests.Surfaces.RouteBooks;

namespace Gudgeon.Book.Tests.Surfaces;

/// <summary>Route cards.</summary>
public class RouteSheetTests
{
    private static RouteSheet Of(BuildBook book) => RouteSheet.All(book.Now()).Single();

    private static Fact Fact(RouteSheet sheet, string step, string fact) => sheet.Steps.Single(s => s.Title == step).Facts.Single(f => f.Name == fact);

    [Fact]
    public void StepsStandInTheOrderOfTheWork()
    {
        Assert.Equal(["Shot peening, gears.coarse", "Shot peening, gears.fine", "Superfinishing, gears"], Of(Gears).Steps.Select(s => s.Title));
        Assert.Equal(["Coating, shaft", "Bake for hydrogen, shaft"], Of(Shaft).Steps.Select(s => s.Title));
        var swapped = Gears.Set(("peening[gears.coarse].step", "2"), ("peening[gears.fine].step", "1"));
        Assert.Equal("gears.fine", Of(swapped).Steps[0].Name);
    }

    [Fact]
    public void ABakeFollowsWhatPutTheHydrogenIn()
    {
        var dry = Gears.Set(("superfinish[gears].chemistry", "acid"), ("coating[gears].thickness", "3 µm"), ("coating[gears].process", "dry"), ("bake[gears].time", "12 h"));
        Assert.Equal(["Superfinishing", "Bake for hydrogen", "Coating"], Of(dry).Steps.Skip(2).Select(s => s.Process));
        Assert.Equal(["Superfinishing", "Coating", "Bake for hydrogen"], Of(dry.Set(("coating[gears].process", "acid or electrolytic"))).Steps.Skip(2).Select(s => s.Process));
    }

    [Fact]
    public void ABakeThatTheBookLacksStandsOnTheCardAndIsWanted()
    {
        var sheet = Of(Gears.Set(("superfinish[gears].chemistry", "acid")));
        Assert.Equal("Bake for hydrogen, gears", sheet.Steps[^1].Title);
        Assert.Equal(12 * 3600, Fact(sheet, "Bake for hydrogen, gears", "least time for this strength").Value);
        Assert.Equal(["Hydrogen goes into hard steel and the book has no bake: bake[gears].time is wanted."], sheet.Troubles);
    }

    [Fact] // P06: 4.754 min, 0.00641 in.
    public void TheCurveIsDrawnFromTheStrips()
    {
        var strips = Of(Gears).Steps[0].Strips!;
        Assert.Equal("", strips.Trouble);
        Assert.Equal(4.754 * 60, strips.Saturation!.Value.Time, 0.1);
        Assert.Equal(1.1, strips.Doubled!.Value.Height / strips.Intensity!.Value, 1e-9);
        Assert.Equal(12 * 60, strips.End, 1e-9);
        Assert.Equal((0, 0), (strips.Course[0].Time, strips.Course[0].Height));
        Assert.Equal(strips.End, strips.Course[^1].Time, 1e-9);
        Assert.Equal(0.14e-3, strips.Least!.Value, 1e-12);
        Assert.Equal(0.00641 * 25.4e-3, Fact(Of(Gears), "Shot peening, gears.coarse", "intensity found").Value!.Value, 1e-7);
    }

    [Fact] // P11.
    public void AnInvalidCurveIsDrawnAndTellsNoIntensity()
    {
        var sheet = Of(Gears.Set(("peening[gears.coarse].readings", P11)));
        Assert.Contains("one more strip, exposed longer", sheet.Troubles.Single(), StringComparison.Ordinal);
        Assert.Equal(2 * 6.51 * 60, sheet.Steps[0].Strips!.End, 1.5);
        Assert.DoesNotContain(sheet.Steps[0].Facts, f => f.Name == "intensity found");
    }

    [Fact]
    public void TooFewStripsAreDrawnWithoutACurve()
    {
        var sheet = Of(Gears.Set(("peening[gears.coarse].readings", "4 min at 0.0060 in; 12 min at 0.0070 in")));
        Assert.Empty(sheet.Steps[0].Strips!.Course);
        Assert.Equal("gears.coarse: There is no saturation curve: exposure times: at least four strips are wanted.", sheet.Troubles.Single());
    }

    [Fact]
    public void CautionsStandBesideTheStep()
    {
        Assert.Contains("never silica", Of(Gears).Steps[0].Cautions.Single(), StringComparison.Ordinal);
        Assert.Contains("class D powder", Of(Gears.Set(("treatment[gears].metal", "titanium"))).Steps[0].Cautions[1], StringComparison.Ordinal);
        Assert.DoesNotContain(Of(Gears).Steps[2].Cautions, c => c.Contains("oxalic", StringComparison.Ordinal));
        Assert.Contains("oxalic", Of(Gears.Set(("superfinish[gears].chemistry", "acid"))).Steps[2].Cautions[1], StringComparison.Ordinal);
        Assert.Contains("no bake guarantees freedom", Of(Shaft).Steps[1].Cautions.Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void MaskedFacesAreAList()
    {
        Assert.Equal(["splines", "bores"], Of(Gears).Steps[0].Masked);
        Assert.Equal("peening[gears.coarse].masked", Of(Gears).Steps[0].MaskedPath);
    }

    [Theory]
    [InlineData("cast steel", "steel", "1500 MPa", "hard shot or ceramic")]
    [InlineData("cast steel", "steel", "1250 MPa", null)]
    [InlineData("hard cast steel", "steel", "1500 MPa", null)]
    [InlineData("cut wire", "titanium", "900 MPa", "iron left on aluminium or titanium")]
    [InlineData("ceramic bead", "titanium", "900 MPa", null)]
    public void MediaThatSpoilThePartAreRefused(string media, string metal, string strength, string? sentence)
    {
        var troubles = Of(Gears.Set(("peening[gears.coarse].media", media), ("treatment[gears].metal", metal), ("treatment[gears].tensileStrength", strength))).Troubles;
        Assert.Equal(sentence is null ? 0 : 1, troubles.Count);
        Assert.All(troubles, t => Assert.Contains(sentence!, t, StringComparison.Ordinal));
    }

    [Fact]
    public void TheLambdaRatioIsToldBeforeAndAfter()
    {
        var rq = Math.Sqrt(Math.PI);
        Assert.Equal(0.3 / (rq * 0.434), Fact(Of(Gears), "Superfinishing, gears", "lambda ratio before").Value!.Value, 1e-9);
        Assert.Equal(0.3 / (rq * 0.083), Fact(Of(Gears), "Superfinishing, gears", "lambda ratio after").Value!.Value, 1e-9);
    }

    [Theory]
    [InlineData("to come", null, "counted there, as the coat is still to come")]
    [InlineData("done", null, "not counted there: the coat is on, and the size is as measured")]
    [InlineData("to come", "5 µm", "not counted there: the fit has a coating of its own, which goes first")]
    public void WhatIsHandedToTheFitIsTold(string state, string? own, string words)
    {
        var book = Shaft.Set(("coating[shaft].state", state));
        var handed = Of(own is null ? book : book.Set(("fit[bush].shaftCoating", own))).Handed.Single();
        Assert.Equal("fit[bush] loses of its clearance", handed.Name);
        Assert.Equal(16e-6, handed.Value!.Value, 1e-12);
        Assert.Equal(words, handed.Remark);
    }

    [Fact]
    public void PeeningGetsNoCreditAndSaysSo()
    {
        Assert.Contains("AGMA 938-A05", Of(Gears).Notes[0], StringComparison.Ordinal);
        Assert.Empty(Of(Shaft).Notes);
    }

    [Fact]
    public void ATreatmentIsNamed()
    {
        Assert.Equal("shaft", RouteSheet.Named(Shaft.Now(), "shaft").Single().Name);
        Assert.Equal("there is no treatment 'gear'; wanted one of shaft", Assert.Throws<BadInputException>(() => RouteSheet.Named(Shaft.Now(), "gear")).Message);
        Assert.Empty(RouteSheet.Named(Books.Of(("engine.revLimit", "9000 rpm")).Now(), null));
        Assert.Contains("no surface treatment yet", Assert.Throws<BadInputException>(() => RouteSheet.Named(Books.Of(("engine.revLimit", "9000 rpm")).Now(), "gears")).Message, StringComparison.Ordinal);
    }
}
