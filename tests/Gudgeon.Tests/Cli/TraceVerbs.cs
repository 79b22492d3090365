using System.Globalization;
using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon run --trace: one speed over its cycle.</summary>
public sealed class TraceVerbs : IDisposable
{
    private static readonly string[] Heron = ["run", "heron.json", "--depth", "wave", "--trace", "9000rpm"];

    private readonly Workshop _workshop = new();

    public TraceVerbs()
    {
        _workshop.Unpack("heron");
        _workshop.Unpack("wren");
    }

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void TheFlowsOfTheCurvesAddUpToWhatTheRunSays()
    {
        var table = Csv([.. Heron, "--place", "primary 1:0.3m"]);
        var air = _workshop.Run("run", "heron.json", "--depth", "wave", "--from", "9000rpm", "--to", "9000rpm", "--json").Json[0].GetProperty("figures");
        var (drawn, burned) = (air.GetProperty("airFlow").GetDouble(), air.GetProperty("fuelFlow").GetDouble());
        var inlet = table["inlet flow cylinder 1 kg/s"].Average() + table["inlet flow cylinder 2 kg/s"].Average();
        var exhaust = table["exhaust flow cylinder 1 kg/s"].Average() + table["exhaust flow cylinder 2 kg/s"].Average();
        Assert.Equal(1, inlet / (drawn + burned), 0.03);

        // Only what blows past the rings does not come out again.
        Assert.Equal(1, (exhaust + air.GetProperty("blowBy").GetDouble()) / inlet, 0.01);
        var angles = table["crank angle °"];
        Assert.Equal(0, angles[0]);
        Assert.InRange(angles[^1], 715, 720);
        Assert.Equal(angles.Order(), angles);
    }

    [Fact]
    public void TheValveShutsTheFlowAndItsOpeningSendsAPulseDownThePipe()
    {
        var table = Csv(["run", "wren.json", "--depth", "wave", "--trace", "7000rpm", "--place", "primary 1:0.05m", "--place", "primary 1:0.65m"]);
        Assert.All(table.Where(c => c.Key.EndsWith(" Pa", StringComparison.Ordinal)).SelectMany(c => c.Value), p => Assert.InRange(p, 1e4, 2e7));
        var (lift, flow) = (table["exhaust valve lift m"], table["exhaust flow kg/s"]);
        Assert.InRange(lift.Max(), 5e-3, 20e-3);
        Assert.All(Enumerable.Range(1, lift.Length - 1), i => Assert.True(lift[i] > 0 || lift[i - 1] > 0 || Math.Abs(flow[i - 1]) < 1e-9, $"{flow[i - 1]} kg/s through a shut valve"));

        // Blow-down: the pressure rises as the valve opens, and 0.6 m further down when sound of hot gas has come there.
        var angles = table["crank angle °"];
        var opens = Enumerable.Range(0, lift.Length).First(i => lift[i] > 0 && angles[i] > 45);
        var near = table["pressure in primary 1 at 0.05 m Pa"];
        var far = table["pressure in primary 1 at 0.65 m Pa"];
        Assert.True(near.Skip(opens).Take(200).Max() > near[opens] + 1e5);
        var time = (angles[Risen(far, opens)] - angles[Risen(near, opens)]) / (7000 * 6.0);
        Assert.InRange(0.6 / time, 400, 900);
        Assert.Equal(near[opens], table["pressure at the exhaust valve Pa"][opens], 0.1e5);
    }

    [Fact]
    public void ASummaryNamesWhatCountsAndTheLumpedDepthHasNoPipes()
    {
        var wave = _workshop.Good(Heron).Split('\n');
        Assert.Equal("9000 rpm, full load, from the wave model", wave[0]);
        Assert.Contains(wave, l => l.StartsWith("reverse flow through the inlet valves ", StringComparison.Ordinal));
        Assert.Contains(wave, l => l.Contains("primary 2", StringComparison.Ordinal) && l.TrimEnd().EndsWith("tail", StringComparison.Ordinal));
        var lumped = _workshop.Run("run", "wren.json", "--trace", "7000rpm", "--json").Json;
        Assert.Equal("lumped", lumped.GetProperty("depth").GetString());
        Assert.Empty(lumped.GetProperty("pipes").EnumerateArray());
        var facts = Assert.Single(lumped.GetProperty("cylinders").EnumerateArray()).EnumerateArray().ToDictionary(f => f.GetProperty("name").GetString()!, f => f.GetProperty("value").GetDouble());
        Assert.InRange(facts["residual gas in it"], 0.001, 0.3);
        Assert.True(facts["greatest pressure at the inlet valve"] > facts["least pressure at the inlet valve"]);
        Assert.Contains("psi", _workshop.Good("run", "wren.json", "--trace", "7000rpm", "--imperial"), StringComparison.Ordinal);
    }

    [Fact]
    public void PicturesHaveTheirParts()
    {
        _workshop.Good([.. Heron, "--svg", "ports.svg", "--wave-svg", "way.svg"]);
        var ports = Words("ports.svg");
        Assert.Contains("Port pressures and valve flows at 9000 rpm, from the wave model", ports);
        Assert.Contains("below it: flows back", ports);
        Assert.Superset(new HashSet<string> { "inlet closes 618°", "exhaust opens 91°", "inlet 1", "exhaust 2", "plenum" }, ports.ToHashSet());

        var way = Words("way.svg");
        Assert.Superset(new HashSet<string> { "runner 1", "primary 1", "tail", "valve open", "exhaust opens", "inlet closes", "bar absolute", "hatched: the gas runs back, faster than 5 m/s" }, way.ToHashSet());
        var parts = XDocument.Load(_workshop.At("way.svg")).Descendants().ToList();
        Assert.Equal(3, parts.Count(p => Is(p, "wave-back") && p.Attribute("d") is not null));
        Assert.NotEmpty(parts.First(p => Is(p, "wave-back")).Attribute("d")!.Value);
        Assert.True(parts.Count(p => Is(p, "wave-level")) >= 8);

        _workshop.Good("run", "wren.json", "--depth", "wave", "--trace", "7000rpm", "--wave-svg", "one.svg", "--pipe", "Primary 1");
        Assert.Contains("Pressure in primary 1 at 7000 rpm, from the wave model", Words("one.svg"));
    }

    [Theory]
    [InlineData("--pipe|primary 3|--wave-svg|x.svg", "there is no pipe 'primary 3'; there are runner 1, primary 1, cylinder 1")]
    [InlineData("--place|stem:0.1m", "there is no pipe 'stem'; there are runner 1, primary 1")]
    [InlineData("--place|primary 1:9m", "primary 1: given a place at 9 m, wanted 0 to 1.38 m, which is its length")]
    [InlineData("--place|primary 1", "--place: given 'primary 1', wanted a pipe and the distance")]
    [InlineData("--pipe|primary 1", "--pipe says what --wave-svg draws")]
    [InlineData("--keep|so", "--trace shows one speed, so it does not go with --keep")]
    public void WhatCannotBeShownIsRefusedInOneSentence(string words, string sentence) =>
        Refusal.Holds(_workshop.Run(["run", "wren.json", "--depth", "wave", "--trace", "7000rpm", .. words.Split('|')]), sentence);

    [Fact]
    public void ATraceIsAskedForByItsSpeedAndPipesByTheirDepth()
    {
        Refusal.Holds(_workshop.Run("run", "wren.json", "--place", "primary 1:0.1m"), "--place belongs to one speed over its cycle; give the speed with --trace SPEED");
        Refusal.Holds(_workshop.Run("run", "wren.json", "--trace", "0rpm"), "--trace: given '0rpm', wanted a speed above zero");
        Refusal.Holds(_workshop.Run("run", "wren.json", "--trace", "7000rpm", "--depth", "lumped", "--wave-svg", "x.svg"), "the lumped model has none; ask for --depth wave");
        Assert.False(File.Exists(_workshop.At("x.svg")));
    }

    private Dictionary<string, double[]> Csv(string[] words)
    {
        var rows = _workshop.Good([.. words, "--csv"]).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split(',')).ToList();
        Assert.All(rows, r => Assert.Equal(rows[0].Length, r.Length));
        return rows[0].Select((head, i) => (head, rows.Skip(1).Select(r => double.Parse(r[i], CultureInfo.InvariantCulture)).ToArray())).ToDictionary(c => c.head, c => c.Item2, StringComparer.Ordinal);
    }

    /// <summary>First place after another at which a curve stands 0.2 bar higher.</summary>
    private static int Risen(double[] curve, int from) => Enumerable.Range(from, curve.Length - from).First(i => curve[i] > curve[from] + 0.2e5);

    private List<string> Words(string file) => [.. XDocument.Load(_workshop.At(file)).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value.Trim())];

    private static bool Is(XElement part, string mark) => part.Attribute("class")?.Value.Split(' ').Contains(mark) == true;
}
