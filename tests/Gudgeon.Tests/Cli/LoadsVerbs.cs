using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon bottom loads on the invented builds.</summary>
public sealed class LoadsVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void LoadsAreToldForEverySpeedAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("bottom", "loads", "heron.json", "--at", "6000rpm", "--svg", "loads.svg");
        Assert.Matches(@"crank speed +rod pull +rod push +gudgeon pin +side thrust +crank pin +main\.1 +main\.2 +main\.3", said);
        Assert.Matches(@"9700 rpm  23\.\d+ kN", said);
        Assert.Contains("At 6192 rpm:", said, StringComparison.Ordinal);
        Assert.Matches(@"greatest pull in the rod, cylinder 2 +9\.\d+ kN  at 359\S* after firing TDC", said);
        Assert.Contains("Main bearings, up along the first cylinder", XDocument.Parse(_workshop.Read("loads.svg")).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void JsonIsInSiUnits()
    {
        _workshop.Unpack("heron");
        var json = _workshop.Run("bottom", "loads", "heron.json", "--json").Json;
        var last = json.GetProperty("speeds")[13];
        Assert.Equal(9700 * Math.PI / 30, last.GetProperty("speed").GetDouble(), 1e-6);
        Assert.InRange(last.GetProperty("rodTension").GetDouble(), 22e3, 25e3);
        Assert.Equal(3, last.GetProperty("mains").GetArrayLength());
    }

    [Fact]
    public void WhatIsWantedIsSaidAndTheCodeIsThree()
    {
        _workshop.Unpack("heron");
        _workshop.Write("heron.json", _workshop.Read("heron.json").Replace("\"length\": \"128 mm\",", "", StringComparison.Ordinal));
        var outcome = _workshop.Run("bottom", "loads", "heron.json");
        Assert.Contains("rod[1].length", outcome.Output, StringComparison.Ordinal);
        Assert.Equal(3, outcome.Code);
    }

    [Fact]
    public void ASpeedInOtherUnitsIsRefused()
    {
        _workshop.Unpack("heron");
        var outcome = _workshop.Run("bottom", "loads", "heron.json", "--at", "30 mm");
        Assert.Equal(2, outcome.Code);
        Assert.Contains("--at", outcome.Error, StringComparison.Ordinal);
    }
}
