using System.IO.Compression;
using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon joints on the invented builds.</summary>
public sealed class JointVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public JointVerbs() => _workshop.Unpack("heron");

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void EveryJointHasALineAndOneADiagram()
    {
        var said = _workshop.Good("joints", "bolts", "heron.json", "--joint", "rod", "--svg", "rod.svg");
        Assert.Matches(@"joint +thread +preload +least +greatest +clamp left +in service", said);
        Assert.Matches(@"(?m)^mount +M10 × 1\.25 +1\d\.\d+ kN", said);
        Assert.Contains("Caution: A wrench that slips", said, StringComparison.Ordinal);
        Assert.Contains("Joint rod", XDocument.Parse(_workshop.Read("rod.svg")).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void TorqueOnOtherLubricants()
    {
        var said = _workshop.Good("joints", "torque", "heron.json", "--joint", "mount", "--imperial", "--svg", "torque.svg");
        Assert.Matches(@"(?m)^molybdenum paste +0\.08 to 0\.16 +0\.10 +\d+ lbf", said);
        Assert.Matches(@"nut factor K +0\.21", said);
        Assert.NotEmpty(_workshop.Read("torque.svg"));
    }

    [Fact]
    public void ThePlanIsData()
    {
        var said = _workshop.Good("joints", "plan", "heron.json", "--joint", "head", "--svg", "plan.svg");
        Assert.Matches(@"(?m)^ +1  to 15 N·m +3 6 5 4 7 2 8 1", said);
        var json = _workshop.Run("joints", "plan", "heron.json", "--joint", "head", "--json").Json;
        Assert.Equal(4, json.GetProperty("stages").GetArrayLength());
        Assert.Equal("torque", json.GetProperty("stages")[0].GetProperty("kind").GetString());
        Assert.Equal(8, json.GetProperty("places").GetArrayLength());

        // Turn and bolt stand both in the drawing, so that it cannot be read against the printed order.
        Assert.Contains("Bolt 1 is the first place of joint[head].layout", said, StringComparison.Ordinal);
        var drawn = XDocument.Parse(_workshop.Read("plan.svg")).Root!.Value;
        Assert.All(Enumerable.Range(1, 8), n => Assert.Contains($"bolt {n}", drawn, StringComparison.Ordinal));
        Assert.Contains("Large: turn; small: bolt", drawn, StringComparison.Ordinal);
    }

    [Fact]
    public void APlanWithoutPlacesSaysWhatItWants()
    {
        var outcome = _workshop.Run("joints", "plan", "heron.json", "--joint", "rod");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("joint[rod].layout", outcome.Output, StringComparison.Ordinal);
        Assert.Equal(2, _workshop.Run("joints", "plan", "heron.json", "--joint", "rod", "--svg", "rod.svg").Code);
    }

    [Fact]
    public void TheHeadOverTheLevels()
    {
        var said = _workshop.Good("joints", "head", "heron.json", "--svg", "head.svg");
        Assert.Matches(@"line load left on the seal +\S+ N/mm +wanted 28 N/mm, by its maker", said);
        Assert.Matches(@"line load, cold, least +\S+ N/mm +53\.779 N/mm seats the gasket by the table", said);
        Assert.Matches(@"of its cord +20\.8 %", said);
        Assert.Matches(@"gas load +clamp left +line load +ring +reserve", said);
        Assert.Single(said.Split('\n'), l => l.Contains(" now ", StringComparison.Ordinal));
        Assert.NotEmpty(_workshop.Read("head.svg"));
    }

    [Fact]
    public void OtherBoltsStandBesideThoseThatAreIn()
    {
        var said = _workshop.Good("joints", "swap", "heron.json", "--joint", "cover", "--material", "titanium", "--svg", "swap.svg");
        Assert.Matches(@"now +same torque +same preload +same share of yield", said);
        Assert.Contains("Caution: Titanium galls", said, StringComparison.Ordinal);
        Assert.Contains("thread diameter", _workshop.Good("joints", "swap", "heron.json", "--joint", "head", "--set", "thread=11mm; engagement=32mm").ToLowerInvariant(), StringComparison.Ordinal);
        var outcome = _workshop.Run("joints", "swap", "heron.json", "--joint", "cover");
        Assert.Equal(2, outcome.Code);
        Assert.Contains("--material", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void OtherBoltsThatFallShortSaySo()
    {
        var outcome = _workshop.Run("joints", "swap", "heron.json", "--joint", "mount", "--material", "aluminium 7075");
        Assert.Equal(3, outcome.Code);
        Assert.Matches(@"stress while tightening, greatest +\S+ MPa, holds", outcome.Output);
        Assert.Matches(@"reserve: greatest bolt preload while tightening +[\d.]+ holds", outcome.Output);
        Assert.Matches(@"(?m)^same \S.*: falls short by ", outcome.Output);
    }

    [Fact]
    public void LimitsStandInInchUnitsWhenAskedFor()
    {
        var said = _workshop.Good("joints", "bolts", "heron.json", "--joint", "mount", "--imperial");
        Assert.Matches(@"stress in service, greatest +\d+ psi +yield \d+ psi", said);
        Assert.DoesNotContain("MPa", said, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d mm", said);
    }

    [Fact]
    public void WhatCannotBeIsToldAndIsAFailure()
    {
        _workshop.Good("set", "heron.json", "joint[mount].holeDiameter", "17 mm");
        foreach (var verb in new[] { "bolts", "torque" })
        {
            var outcome = _workshop.Run("joints", verb, "heron.json", "--joint", "mount");
            Assert.Equal(3, outcome.Code);
            Assert.Contains("Joint mount: head friction diameter: bearing face diameter: given 16 mm, must be greater than the hole diameter.", outcome.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TheListIsWrittenForTheShop()
    {
        var said = _workshop.Good("joints", "list", "heron.json", "--csv", "bolts.csv", "--xlsx", "bolts.xlsx", "--svg", "bolts.svg");
        Assert.Matches(@"together \d+\.?\d* g, \d+\.?\d* g less than in steel", said);
        Assert.Equal(5, _workshop.Read("bolts.csv").Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
        using var zip = ZipFile.OpenRead(_workshop.At("bolts.xlsx"));
        Assert.Contains(zip.Entries, e => e.FullName == "xl/worksheets/sheet1.xml");
    }

    [Fact]
    public void AJointThatIsNotThereIsRefused()
    {
        var outcome = _workshop.Run("joints", "bolts", "heron.json", "--joint", "tail");
        Assert.Equal(2, outcome.Code);
        Assert.Contains("wanted one of cover, head, mount, rod", outcome.Error, StringComparison.Ordinal);
    }
}
