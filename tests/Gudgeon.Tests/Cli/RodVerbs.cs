using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon bottom rods and pistons on the invented builds.</summary>
public sealed class RodVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void RodsAreToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("bottom", "rods", "heron.json", "--svg", "rods.svg");
        Assert.Matches(@"pull at overlap, throttle shut +24\.\d+ kN", said);
        Assert.Matches(@"stretch, read +0\.165 mm", said);
        Assert.Matches(@"journal fillet bears +\d+\.?\d* MPa", said);
        Assert.Contains("Caution: A rod that lets go", said, StringComparison.Ordinal);
        Assert.Contains("Fatigue of the shank", XDocument.Parse(_workshop.Read("rods.svg")).Root!.Value, StringComparison.Ordinal);
        Assert.Equal(0.165e-3, _workshop.Run("bottom", "rods", "heron.json", "--json").Json.GetProperty("bolts")[0].GetProperty("facts")[0].GetProperty("value").GetDouble(), 1e-12);
        Assert.Matches(@"stretch, read +0\.0065 in", _workshop.Good("bottom", "rods", "heron.json", "--imperial"));
    }

    [Fact]
    public void PistonsAreToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("bottom", "pistons", "heron.json", "--svg", "pistons.svg");
        Assert.Matches(@"goes oval by +0\.0\d+ mm", said);
        Assert.Matches(@"clearance at the rev limit +0\.\d+ mm", said);
        Assert.Contains("Circlips fly", said, StringComparison.Ordinal);
        Assert.Contains("what is left at the rev limit", XDocument.Parse(_workshop.Read("pistons.svg")).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotKnownIsSaid()
    {
        _workshop.Unpack("wren");
        Assert.Contains("wanted: rod[1].depth", _workshop.Good("bottom", "rods", "wren.json", "--svg", "rods.svg"), StringComparison.Ordinal);
        Assert.Contains("pin[1].diameter", _workshop.Good("bottom", "pistons", "wren.json", "--svg", "pistons.svg"), StringComparison.Ordinal);
    }
}
