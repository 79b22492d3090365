using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon bottom balance and gudgeon bottom torsion on the invented builds.</summary>
public sealed class BalanceVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void BalanceIsToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("bottom", "balance", "heron.json", "--svg", "balance.svg");
        Assert.Matches(@"crank pin +turning +to and fro +factor now +before +wanted +bob weight for it +add at counterweights", said);
        Assert.Matches(@"1 +293\.7 g +509\.9 g +46\.9 % +48\.8 % +50 % +548\.7 g +9\.64 g", said);
        Assert.Contains("At 9700 rpm: greatest force", said, StringComparison.Ordinal);
        Assert.Matches(@"front +8760 g·mm +1, against +180 ° +180 ° +in time +10 °", said);
        Assert.Matches(@"rear a tooth late +\d+ N", said);
        Assert.Matches(@"mount +order 1 +order 2 +order 4 +greatest", said);
        Assert.Contains("Caution: A slug that leaves", said, StringComparison.Ordinal);
        var drawn = XDocument.Parse(_workshop.Read("balance.svg")).Root!.Value;
        Assert.Contains("Shaft front at 9700 rpm", drawn, StringComparison.Ordinal);
        Assert.Contains("a tooth late", drawn, StringComparison.Ordinal);
    }

    // Forces go with the square of the speed, and a couple about another place by the force times the way.
    [Fact]
    public void BalanceInJsonIsSi()
    {
        _workshop.Unpack("heron");
        var fast = _workshop.Run("bottom", "balance", "heron.json", "--json").Json;
        var slow = _workshop.Run("bottom", "balance", "heron.json", "--json", "--at", "4850rpm", "--about", "154mm").Json;
        double Of(System.Text.Json.JsonElement json, string what) => json.GetProperty("orders")[1].GetProperty(what).GetProperty("greatest").GetDouble();
        Assert.Equal(Of(fast, "force") / 4, Of(slow, "force"), 1e-6 * Of(fast, "force"));
        Assert.Equal(0.1 * Of(slow, "force"), Of(slow, "couple"), 0.01 * Of(slow, "couple"));
        Assert.Equal(4, fast.GetProperty("mounts").GetArrayLength());
    }

    [Fact]
    public void TorsionIsToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("bottom", "torsion", "heron.json", "--without", "nose", "--svg", "torsion.svg");
        Assert.Contains("Running range 4000 rpm to 9700 rpm, driven by the gas of the engine run and by inertia", said, StringComparison.Ordinal);
        Assert.Matches(@"mode +now +without nose +throw1 +alternator", said);
        Assert.Matches(@"throw2 on throw1 +\S+ N·m +\d+ rpm +order \S+ +\S+ N·m +\S+ MPa +62 MPa", said);
        Assert.Matches(@"\d+ rpm +7\.5 +\d+ Hz", said);
        Assert.Contains("strongest critical speeds", XDocument.Parse(_workshop.Read("torsion.svg")).Root!.Value, StringComparison.Ordinal);
        Assert.Equal(9, _workshop.Run("bottom", "torsion", "heron.json", "--json").Json.GetProperty("joints").GetArrayLength());
    }

    [Fact]
    public void WhatIsWantedIsSaidAndTheCodeIsThree()
    {
        _workshop.Unpack("wren");
        var torsion = _workshop.Run("bottom", "torsion", "wren.json");
        Assert.Equal(3, torsion.Code);
        Assert.Contains("two rotors or more", torsion.Output, StringComparison.Ordinal);
        _workshop.Write("wren.json", _workshop.Read("wren.json").Replace("\"length\": \"145 mm\",", "", StringComparison.Ordinal));
        var balance = _workshop.Run("bottom", "balance", "wren.json");
        Assert.Equal(3, balance.Code);
        Assert.Contains("rod[1].length", balance.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--at: given 0 rpm, wanted a speed above zero", "balance", "--at", "0 rpm")]
    [InlineData("--about", "balance", "--about", "30 N")]
    [InlineData("without: given 'flywheel', wanted one of", "torsion", "--without", "flywheel")]
    public void WhatCannotBeIsOneSentence(string sentence, string verb, params string[] options)
    {
        _workshop.Unpack("heron");
        var outcome = _workshop.Run(["bottom", verb, "heron.json", .. options]);
        Assert.Equal(2, outcome.Code);
        Assert.Contains(sentence, outcome.Error, StringComparison.Ordinal);
        Assert.Single(outcome.Error.Trim().Split('\n'));
    }
}
