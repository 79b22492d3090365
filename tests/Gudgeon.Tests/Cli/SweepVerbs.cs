using System.Globalization;
using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>Sweeps and the search for the best values, on the invented single, which needs the least time.</summary>
public sealed class SweepVerbs : IDisposable
{
    private static readonly string[] Range = ["--from", "5000rpm", "--to", "7000rpm", "--step", "1000rpm"];

    private readonly Workshop _workshop = new();

    public SweepVerbs() => _workshop.Unpack("wren");

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void AColumnOfASweepIsTheRunWithThatValueSet()
    {
        var table = _workshop.Good(["run", "wren.json", "--vary", "combustion.burned50=6..14°/3", .. Range, "--figure", "power", "--svg", "sweep.svg"]).Split('\n');
        Assert.Equal("power, kW, over 5000 rpm to 7000 rpm", table[0]);
        Assert.Equal("across: combustion.burned50, °", table[1]);
        Assert.Equal("rpm 6 10 14 greatest at", Squeezed(table[2]));
        Assert.StartsWith("mean ", Squeezed(table[6]), StringComparison.Ordinal);
        Assert.StartsWith("greatest power: ", table[7], StringComparison.Ordinal);
        Assert.Contains("with combustion.burned50 ", table[8], StringComparison.Ordinal);
        Assert.Equal("9 of 9 points settled", table[9]);
        IsPicture("sweep.svg", "combustion.burned50 14 °", "engine speed, rpm");

        _workshop.Good("change", "add", "wren.json", "late", "--title", "Later spark");
        _workshop.Good("set", "wren.json", "combustion.burned50", "14°", "--change", "late");
        var run = _workshop.Good(["run", "wren.json", .. Range]).Split('\n').Skip(1).Take(3).Select(l => Squeezed(l).Split(' ')[2]);
        Assert.Equal(run, table.Skip(3).Take(3).Select(l => Squeezed(l).Split(' ')[3]));
    }

    [Fact]
    public void PipesAreVariedByTheWaveModelAndNotLookedAtByTheLumpedOne()
    {
        string[] verb = ["run", "wren.json", "--vary", "intake.runner.length=150..300mm/2", "--at", "6000rpm"];
        var lines = _workshop.Good([.. verb, "--depth", "wave"]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("Engine figures from the wave model.", lines[^1]);
        Assert.Contains("2 of 2 points settled", lines);
        var json = _workshop.Run([.. verb, "--depth", "wave", "--json"]).Json;
        Assert.Equal("wave", json.GetProperty("depth").GetString());
        var torques = json.GetProperty("cells").EnumerateArray().Select(c => c.GetProperty("figures")[0].GetDouble()).ToList();
        Assert.True(Math.Abs((torques[1] / torques[0]) - 1) > 1e-3, $"{torques[0]} and {torques[1]} N·m");
        Refusal.Holds(_workshop.Run(verb), "intake.runner.length: the run does not read it");
    }

    [Fact]
    public void JsonAndCsvCarryTheSameFigures()
    {
        string[] verb = ["run", "wren.json", "--vary", "fuel.lambda=0.8..0.9/2", .. Range];
        var json = _workshop.Run([.. verb, "--json"]).Json;
        var rows = _workshop.Good([.. verb, "--csv"]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("fuel.lambda,speed rpm,converged,torque N·m,power W,", rows[0], StringComparison.Ordinal);
        Assert.Equal(7, rows.Length);
        var cells = json.GetProperty("cells").EnumerateArray().ToList();
        Assert.Equal([0.8, 0.9], cells.Select(c => c.GetProperty("values")[0].GetDouble()));
        var torques = cells.SelectMany(c => c.GetProperty("figures").EnumerateArray()).Select(f => f.GetDouble()).ToList();
        Assert.Equal(torques, rows.Skip(1).Select(r => Number(r.Split(',')[3])));
        Assert.Equal((torques[0] / 4) + (torques[1] / 2) + (torques[2] / 4), cells[0].GetProperty("mean").GetDouble(), 1e-9);
        Assert.All(rows.Skip(1).Select(r => r.Split(',')), r => Assert.Equal(1, Number(r[3]) * Number(r[1]) * Math.PI / 30 / Number(r[4]), 1e-9));
    }

    [Fact]
    public void TwoFieldsGiveATableAContourAndTheBestOfThem()
    {
        var table = _workshop.Good("run", "wren.json", "--vary", "fuel.lambda=0.75..0.95/3", "--vary", "combustion.burned50=4..24°/5", "--at", "6000rpm", "--svg", "two.svg").Split('\n');
        Assert.Equal("torque, N·m, at 6000 rpm", table[0]);
        Assert.Equal("across: fuel.lambda; down: combustion.burned50, °", table[1]);
        Assert.Equal("0.75 0.85 0.95", Squeezed(table[2]));
        var rows = table.Skip(3).Take(5).Select(l => Squeezed(l).Split(' ')).ToList();
        Assert.Equal(["4", "9", "14", "19", "24"], rows.Select(r => r[0]));
        var most = rows.SelectMany(r => r.Skip(1)).Max(Number);
        Assert.StartsWith(string.Create(CultureInfo.InvariantCulture, $"greatest torque: {most:F1} N·m with fuel.lambda "), table[8], StringComparison.Ordinal);
        IsPicture("two.svg", "combustion.burned50, °", "fuel.lambda", "best: ");
    }

    [Fact]
    public void WithoutASpeedTwoFieldsAreRunWherePowerIsGreatestAndItSaysSo()
    {
        string[] verb = ["run", "wren.json", "--vary", "fuel.lambda=0.8..0.9/2", "--vary", "combustion.burned50=8..10°/2", .. Range];
        Assert.StartsWith("torque, N·m, at 7000 rpm, where the book as it stands gives its greatest power\n", _workshop.Good(verb), StringComparison.Ordinal);
        var mean = _workshop.Good([.. verb, "--over"]);
        Assert.StartsWith("mean torque, N·m, over 5000 rpm to 7000 rpm\n", mean, StringComparison.Ordinal);
        Assert.Contains("greatest mean torque: ", mean, StringComparison.Ordinal);
        Assert.Contains("12 of 12 points settled", mean, StringComparison.Ordinal);
    }

    [Fact]
    public void ManyValuesMakeAContourOverSpeed()
    {
        _workshop.Good(["run", "wren.json", "--vary", "exhaust.outletArea=300..900mm²/5", .. Range, "--imperial", "--svg", "many.svg"]);
        IsPicture("many.svg", "exhaust.outletArea, in²", "engine speed, rpm", "torque, lbf·ft");
    }

    [Fact]
    public void APointThatDidNotSettleIsNoNumberAndAValueThatCannotBeRunSaysWhy()
    {
        _workshop.Unpack("heron");
        var moving = _workshop.Run("run", "heron.json", "--vary", "intake.throttleArea=10..500mm²/2", "--at", "9000rpm");
        Assert.Equal(3, moving.Code);
        Assert.StartsWith("9000 did not settle 1", Squeezed(moving.Lines[3]), StringComparison.Ordinal);
        Assert.Contains("1 of 2 points settled", moving.Output, StringComparison.Ordinal);
        var refused = _workshop.Run("run", "wren.json", "--vary", "fuel.lambda=0.9..2.1/3", "--at", "6000rpm");
        Assert.Equal(3, refused.Code);
        Assert.EndsWith("cannot be run 0.9", Squeezed(refused.Lines[3]), StringComparison.Ordinal);
        Assert.Contains("cannot be run: lambda 2.1", refused.Output, StringComparison.Ordinal);
        Assert.Contains("? Mixture (lambda) of 2.1 is outside what is usual", refused.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void BestNamesTheValuesAndTheChangeThatLaysThemIn()
    {
        var before = _workshop.Read("wren.json");
        string[] verb = ["best", "wren.json", "--let", "combustion.burned50=4..24°", "--at", "6000rpm", "--holding", "piston-speed,peak-pressure"];
        var page = _workshop.Good(verb);
        Assert.Equal(before, _workshop.Read("wren.json"));
        var answer = _workshop.Run([.. verb, "--json"]).Json;
        Assert.True(answer.GetProperty("holds").GetBoolean());
        Assert.Contains("piston-speed", answer.GetProperty("held").EnumerateArray().Select(h => h.GetProperty("id").GetString()));
        Assert.True(answer.GetProperty("after").GetDouble() >= answer.GetProperty("before").GetDouble());
        var best = answer.GetProperty("fields")[0].GetProperty("best").GetString();
        Assert.Contains($"  gudgeon set wren.json \"combustion.burned50\" \"{best}\" --change best-power\n", page, StringComparison.Ordinal);

        // What it says to type is typed, and gives what it said.
        _workshop.Good("change", "add", "wren.json", "best-power", "--title", "Best power", "--reason", "found by gudgeon best");
        _workshop.Good("set", "wren.json", "combustion.burned50", best!, "--change", "best-power");
        var point = Assert.Single(_workshop.Run("run", "wren.json", "--from", "6000rpm", "--to", "6000rpm", "--json").Json.EnumerateArray());
        Assert.Equal(1, point.GetProperty("figures").GetProperty("power").GetDouble() / answer.GetProperty("after").GetDouble(), 1e-5);
    }

    [Fact]
    public void BestSaysWhenNothingHolds()
    {
        _workshop.Good("change", "add", "wren.json", "soft", "--title", "A soft piston");
        _workshop.Good("set", "wren.json", "piston.peakPressureLimit", "20 bar", "--change", "soft");
        var outcome = _workshop.Run("best", "wren.json", "--let", "combustion.burned50=6..10°", "--at", "6000rpm", "--holding", "peak-pressure");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("no combination between these bounds was found with which all that must hold does", outcome.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("gudgeon set", outcome.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run|--vary|intake.runnerAra=1..2mm²/3", "the nearest is 'intake.runnerArea'")]
    [InlineData("run|--vary|intake.runnerArea=1000..2200mm/3", "which is a length; wanted an area")]
    [InlineData("run|--vary|intake.runnerArea=2200..1000mm²/3", "wanted a range that rises")]
    [InlineData("run|--vary|intake.runnerArea=1000..2200mm²/1", "wanted 2 to 101")]
    [InlineData("run|--vary|intake.runnerArea=1000..2200mm²/102", "wanted 2 to 101")]
    [InlineData("run|--vary|clutch.friction=0.1..0.2/3", "clutch.friction: the run does not read it")]
    [InlineData("run|--vary|fuel.lambda=0.8..1/2|--vary|crank.stroke=70..80mm/2|--vary|rod.length=140..150mm/2", "given 3 fields, wanted one or two")]
    [InlineData("run|--vary|fuel.lambda=0.8..1/2|--figure|sound", "there is no figure 'sound' of a run; there are torque, power, boost")]
    [InlineData("run|--vary|fuel.lambda=0.8..1/2|--over", "--over belongs to two --vary")]
    [InlineData("run|--vary|fuel.lambda=0.8..1/2|--at|0rpm", "wanted a speed above zero")]
    [InlineData("run|--vary|fuel.lambda=0.8..1/2|--keep|x", "--keep keeps one run")]
    [InlineData("run|--figure|power", "--figure belongs to a sweep")]
    [InlineData("run|--vary", "--vary: missing its range")]
    [InlineData("best", "--let: given no field")]
    [InlineData("best|--let|fuel.lambda=0.8", "wanted FIELD=FROM..TO")]
    [InlineData("best|--let|fuel.lambda=0.8..1|--for|noise", "--for: given 'noise', wanted power, torque or mean-torque")]
    [InlineData("best|--let|fuel.lambda=0.8..1|--holding|sqish", "the nearest is 'squish'")]
    [InlineData("best|--let|fuel.lambda=0.8..1|--at|6000rpm|--for|mean-torque", "a mean is taken over a range")]
    [InlineData("best|--let|fuel.lambda=0.8..1|--at|6000rpm|--to|7000rpm", "give a speed or a range")]
    [InlineData("best|--let|clutch.friction=0.1..0.2", "clutch.friction: the run does not read it")]
    public void RefusesInOneSentence(string words, string sentence)
    {
        var verb = words.Split('|');
        Refusal.Holds(_workshop.Run([verb[0], "wren.json", .. verb[1..]]), sentence);
    }

    private static string Squeezed(string line) => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private void IsPicture(string file, params string[] words)
    {
        var picture = XDocument.Parse(_workshop.Read(file));
        Assert.Equal("svg", picture.Root!.Name.LocalName);
        Assert.All(words, w => Assert.Contains(w, picture.Root.Value, StringComparison.Ordinal));
    }
}
