using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon drive on the invented twin, and on the single that has no blower.</summary>
public sealed class DriveVerbsTests : IDisposable
{
    private readonly Workshop _workshop = new();

    public static TheoryData<string> Sheets => ["belt", "nose", "hits", "heat", "air"];

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void TheBeltIsToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("drive", "belt", "heron.json", "--svg", "belt.svg");
        Assert.Matches(@"ratio of the pulleys +1\.3226 ", said);
        Assert.Matches(@"length that the course takes +672\.04 mm", said);
        Assert.Matches(@"greatest pull, hits counted in +\d+ N +shift from gear 1 to 2", said);
        Assert.Matches(@"tight over slack +\S+ +8 at the most", said);
        Assert.Contains("Caution: Set the tension with the engine off", said, StringComparison.Ordinal);
        Assert.Contains("Belt to scale", XDocument.Parse(_workshop.Read("belt.svg")).Root!.Value, StringComparison.Ordinal);
        Assert.Matches(@"length that the course takes +26\.458 in", _workshop.Good("drive", "belt", "heron.json", "--imperial"));
    }

    [Fact]
    public void JsonIsInSiUnits()
    {
        _workshop.Unpack("heron");
        var sheet = _workshop.Run("drive", "belt", "heron.json", "--json").Json;
        Assert.Equal(9700 * Math.PI / 30, sheet.GetProperty("table").EnumerateArray().Last().GetProperty("speed").GetDouble(), 1e-6);
    }

    [Fact]
    public void TheNoseIsToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("drive", "nose", "heron.json", "--svg", "nose.svg");
        Assert.Matches(@"torque that the key carries alone +179\.4 N·m  the second path", said);
        Assert.Matches(@"outboard +104 mm", said);
        Assert.Contains("Greatest bending moment", XDocument.Parse(_workshop.Read("nose.svg")).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void HitsAreToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("drive", "hits", "heron.json", "--svg", "hits.svg");
        Assert.Matches(@"shift from gear 1 to 2 +-2782 rpm +25 ms", said);
        Assert.Contains("shrapnel", said, StringComparison.Ordinal);
        Assert.Contains("key alone", XDocument.Parse(_workshop.Read("hits.svg")).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void HeatIsToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("drive", "heat", "heron.json", "--svg", "heat.svg");
        Assert.Contains("Caution: Hot oil burns", said, StringComparison.Ordinal);
        Assert.Contains("Charge before and behind its cooler", XDocument.Parse(_workshop.Read("heat.svg")).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void TheAirIsToldAndLaidOnTheMap()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("drive", "air", "heron.json", "--svg", "air.svg");
        Assert.Matches(@"area of the medium +1250 cm²", said);
        Assert.Matches(@"inlet: air speed +4\d\.\d m/s  before the blower, 60 m/s allowed", said);
        Assert.Matches(@"greatest speed of the impeller +96219 rpm  at 9700 rpm; 98000 rpm allowed", said);
        Assert.Matches(@"\n +9700 rpm +96219 rpm +98\.2 % ", said);
        Assert.Contains("Caution: A blower without its filter", said, StringComparison.Ordinal);
        var drawn = XDocument.Parse(_workshop.Read("air.svg")).Root!.Value;
        Assert.All(["Compressor map with the run on it", "surge", "choke", "the run", "100000 rpm", "Margins over the speeds"], words => Assert.Contains(words, drawn, StringComparison.Ordinal));

        Assert.Matches(@"area of the medium +193\.8 in²", _workshop.Good("drive", "air", "heron.json", "--imperial"));
        var speeds = _workshop.Run("drive", "air", "heron.json", "--json").Json.GetProperty("table").GetProperty("speeds");
        Assert.Equal(9700 * 1.3226 * 7.5 * Math.PI / 30, speeds.EnumerateArray().Last().GetProperty("rotor").GetDouble(), 1e-6);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void ABookWithoutABlowerSaysSo(string sheet)
    {
        _workshop.Unpack("wren");
        var outcome = _workshop.Run("drive", sheet, "wren.json");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("no supercharger that the crank drives", outcome.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("belt.centres", "80 mm", "two pulleys of the belt overlap")]
    [InlineData("belt.idlerAcross", "110 mm", "the idler does not touch the slack span there")]
    public void WhatCannotBeIsSaidAndLeavesTheSheetUnfinished(string field, string text, string sentence)
    {
        _workshop.Unpack("heron");
        _workshop.Good("set", "heron.json", field, text, "--change", "blower");
        var outcome = _workshop.Run("drive", "belt", "heron.json");
        Assert.Equal(3, outcome.Code);
        Assert.Contains($"given {text}, {sentence}", outcome.Output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void InchReadersAreToldOneSystem(string sheet)
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("drive", sheet, "heron.json", "--imperial");
        var numbers = string.Join('\n', said.Split('\n').Where(l => l.StartsWith("  ", StringComparison.Ordinal) && !l.Contains("Caution", StringComparison.Ordinal)));
        Assert.DoesNotMatch(@"\d (mm|m/s|°C|kPa|MPa|N|N·m|kW|W|cm²|mm²|g/s|L/s|K)(\s|$)", numbers);
    }
}
