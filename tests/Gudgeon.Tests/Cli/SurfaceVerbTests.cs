using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon surface on the invented twin.</summary>
public sealed class SurfaceVerbTests : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact] // Strips of 0.187 to 0.392 mm at 20 to 160 s: 0.35384 mm at 72.1 s by a least-squares fit made apart; the fine step 0.24840 mm.
    public void TheGearsAreToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("surface", "heron.json", "gears", "--svg", "strips.svg");
        Assert.Matches(@"1\. Shot peening, gears\.coarse\n  Caution: Closed cabinet", said);
        Assert.Matches(@"intensity found +0\.3538 mm  on strip A", said);
        Assert.Matches(@"3\. Superfinishing, gears", said);
        Assert.Matches(@"lambda ratio after +2\.01", said);
        Assert.Contains("    - selector groove", said, StringComparison.Ordinal);
        Assert.Contains("Not counted:", said, StringComparison.Ordinal);
        Assert.DoesNotContain("spindle", said, StringComparison.Ordinal);
        var drawn = XDocument.Parse(_workshop.Read("strips.svg")).Root!.Value;
        Assert.Contains("gears.coarse: intensity 0.354 mm", drawn, StringComparison.Ordinal);
        Assert.Contains("gears.fine: intensity 0.248 mm", drawn, StringComparison.Ordinal);
        Assert.Contains("2 T", drawn, StringComparison.Ordinal);
    }

    [Fact]
    public void AllAreToldInInchesToo()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("surface", "heron.json", "--imperial");
        Assert.Matches(@"intensity found +0\.01393 in  on strip A", said);
        Assert.Matches(@"2\. Bake for hydrogen, spindle", said);
        Assert.Matches(@"least temperature +374 °F", said);
        Assert.Contains("fit[idlerSpindle] loses of its clearance", said, StringComparison.Ordinal);
    }

    [Fact]
    public void JsonIsInSiUnits()
    {
        _workshop.Unpack("heron");
        var coarse = _workshop.Run("surface", "heron.json", "gears", "--json").Json[0].GetProperty("steps")[0];
        Assert.Equal("gears.coarse", coarse.GetProperty("name").GetString());
        Assert.Equal(160, coarse.GetProperty("strips").GetProperty("readings")[3].GetProperty("time").GetDouble(), 1e-9);
        Assert.Equal(0.3e-3, coarse.GetProperty("strips").GetProperty("least").GetDouble(), 1e-12);
    }

    [Fact]
    public void ATreatmentThatIsNotThereIsOneSentence()
    {
        _workshop.Unpack("heron");
        var outcome = _workshop.Run("surface", "heron.json", "gear");
        Assert.Equal(2, outcome.Code);
        Assert.Equal("gudgeon: there is no treatment 'gear'; wanted one of gears, spindle", outcome.Error.Trim());
    }

    [Fact]
    public void NoCurveToDrawIsOneSentence()
    {
        _workshop.Unpack("heron");
        var outcome = _workshop.Run("surface", "heron.json", "spindle", "--svg", "none.svg");
        Assert.Equal(2, outcome.Code);
        Assert.Contains("no step has strip readings", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void ABookWithoutAnySaysHowToBegin()
    {
        _workshop.Unpack("wren");
        var outcome = _workshop.Run("surface", "wren.json");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("set treatment[name].part", outcome.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void ACurveThatIsNotValidLeavesTheCardUnfinished()
    {
        _workshop.Good("new", "gear.json", "--name", "Gear");
        _workshop.Good("set", "gear.json", "peening[gear].shotSize", "0.3 mm");
        _workshop.Good("set", "gear.json", "peening[gear].readings", "2 min at 0.008 in; 4 min at 0.012 in; 6 min at 0.014 in; 8 min at 0.015 in; 10 min at 0.0153 in");
        var outcome = _workshop.Run("surface", "gear.json", "--svg", "strips.svg");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("the curve is not valid and gives no intensity", outcome.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("intensity found", outcome.Output, StringComparison.Ordinal);
        Assert.Contains("gear: not valid", XDocument.Parse(_workshop.Read("strips.svg")).Root!.Value, StringComparison.Ordinal);
    }
}
