using System.Globalization;
using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon head motion on the invented single.</summary>
public sealed class MotionVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public MotionVerbs() => _workshop.Unpack("wren");

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void MotionSaysWhereTheTrainComesApartAndDrawsIt()
    {
        var said = _workshop.Good("head", "motion", "wren.json", "--points", "9", "--svg", "map.svg", "--trace-svg", "trace.svg");
        Assert.StartsWith("inlet: lift curve read at the valve, gas of the engine run on it", said, StringComparison.Ordinal);
        Assert.Matches(@"comes apart at +\d+ rpm  \d+ % above the rev limit", said);
        Assert.Matches(@"a rigid train would come apart at +10016 rpm", said);
        Assert.Contains("within some 5 to 10 %", said, StringComparison.Ordinal);
        foreach (var (file, words) in new[] { ("map.svg", "crank speed, rpm"), ("trace.svg", "cam angle from the nose, °") })
        {
            Assert.Contains(words, XDocument.Parse(_workshop.Read(file)).Root!.Value, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void CsvAndJsonAgree()
    {
        string[] asked = ["head", "motion", "wren.json", "--from", "6000rpm", "--to", "8000rpm", "--points", "3", "--valve", "exhaust"];
        var rows = _workshop.Good([.. asked, "--csv"]).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(r => r.Split(',')).ToList();
        Assert.Equal(["6000", "7000", "8000"], rows.Select(r => double.Parse(r[1], CultureInfo.InvariantCulture).ToString("F0", CultureInfo.InvariantCulture)));
        var valve = Assert.Single(_workshop.Run([.. asked, "--json"]).Json.GetProperty("valves").EnumerateArray());
        Assert.Equal(valve.GetProperty("points")[2].GetProperty("seatingVelocity").GetDouble(), double.Parse(rows[2][5], CultureInfo.InvariantCulture), 1e-9);
    }

    [Theory]
    [InlineData("--points: given 1, wanted 2 to 200", "--points", "1")]
    [InlineData("there is no valve 'inlet.9'", "--valve", "inlet.9")]
    [InlineData("wanted them to rise", "--from", "9000rpm", "--to", "8000rpm")]
    [InlineData("which is a length", "--from", "9 mm")]
    public void WhatCannotBeIsOneSentence(string sentence, params string[] options)
    {
        var outcome = _workshop.Run(["head", "motion", "wren.json", .. options]);
        Assert.Equal(2, outcome.Code);
        Assert.Contains(sentence, outcome.Error, StringComparison.Ordinal);
        Assert.Single(outcome.Error.Trim().Split('\n'));
    }
}
