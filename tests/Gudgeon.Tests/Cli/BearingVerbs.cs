using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon bottom bearings and shells on the invented builds.</summary>
public sealed class BearingVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void EveryBearingIsToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("bottom", "bearings", "heron.json", "--svg", "bearings.svg");
        Assert.Matches(@"main\.2 +49\.013 mm +1\.992 mm +44\.983 mm +0\.046 mm +0\.042 mm +0\.05 mm", said);
        Assert.Matches(@"crank speed +bigEnd\.1 film +main\.1 film", said);
        Assert.Contains("bigEnd.2: its film is not known yet; wanted bearing[bigEnd.2].housing", said, StringComparison.Ordinal);
        Assert.Contains("Prime before the first start", said, StringComparison.Ordinal);
        Assert.Contains("Diametral clearances", XDocument.Parse(_workshop.Read("bearings.svg")).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void JsonIsInSiUnits()
    {
        _workshop.Unpack("heron");
        var json = _workshop.Run("bottom", "bearings", "heron.json", "--at", "9700rpm", "--json").Json;
        var main = json.GetProperty("bearings").EnumerateArray().First(b => b.GetProperty("bearing").GetString() == "main.1");
        Assert.InRange(main.GetProperty("film").GetDouble(), 1e-6, 5e-6);
        Assert.InRange(main.GetProperty("pressure").GetDouble(), 8e7, 2e8);
        Assert.Equal(14, json.GetProperty("speeds").GetArrayLength());
    }

    [Fact]
    public void ShellsAreChosenAndDrawn()
    {
        _workshop.Unpack("heron");
        var outcome = _workshop.Run("bottom", "shells", "heron.json", "--svg", "shells.svg");
        Assert.Equal(3, outcome.Code);
        Assert.Matches(@"main\.1 .*grade \d +grade \d +0\.04\d mm", outcome.Output);
        Assert.Contains("bigEnd.2: not planned; wanted bearing[bigEnd.2].housing", outcome.Output, StringComparison.Ordinal);
        Assert.Contains("Shells chosen", XDocument.Parse(_workshop.Read("shells.svg")).Root!.Value, StringComparison.Ordinal);
        Assert.Contains(" in ", _workshop.Run("bottom", "shells", "heron.json", "--imperial").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void ABookWithoutAnEngineRunStillShowsItsClearances()
    {
        _workshop.Unpack("wren");
        var outcome = _workshop.Run("bottom", "bearings", "wren.json");
        Assert.Equal(3, outcome.Code);
        Assert.Matches(@"main\.1 +42\.008 mm +1\.991 mm +37\.985 mm +0\.041 mm", outcome.Output);
    }
}
