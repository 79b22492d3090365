using System.Globalization;
using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>Verbs that run the engine, on the invented single, which needs the least time.</summary>
public sealed class EngineVerbs : IDisposable
{
    private static readonly string[] Points = ["run", "wren.json", "--from", "5000rpm", "--to", "7000rpm", "--step", "1000rpm"];

    private readonly Workshop _workshop = new();

    public EngineVerbs() => _workshop.Unpack("wren");

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void RunPrintsOneLineForEachSpeedAndPowerIsTorqueTimesSpeed()
    {
        var rows = _workshop.Good([.. Points, "--csv", "--svg", "run.svg"]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("speed rpm,converged,", rows[0], StringComparison.Ordinal);
        var points = rows.Skip(1).Select(r => r.Split(',')).ToList();
        Assert.Equal(["5000", "6000", "7000"], points.Select(p => Number(p[0]).ToString("F0", CultureInfo.InvariantCulture)));
        Assert.All(points, p => Assert.Equal(1, Number(p[4]) * Number(p[0]) * Math.PI / 30 / Number(p[5]), 1e-9));
        IsPicture("run.svg", "engine speed, rpm");
    }

    [Fact]
    public void RunAgreesWithItselfInTableJsonAndInchUnits()
    {
        string[] point = ["run", "wren.json", "--from", "7000rpm", "--to", "7000rpm"];
        var settled = Assert.Single(_workshop.Run([.. point, "--json"]).Json.EnumerateArray());
        Assert.True(settled.GetProperty("converged").GetBoolean());
        var watts = settled.GetProperty("figures").GetProperty("power").GetDouble();
        var table = _workshop.Good(point).Split('\n');
        Assert.Contains("1 of 1 points settled", table[2], StringComparison.Ordinal);
        Assert.Equal((watts / 1000).ToString("F1", CultureInfo.InvariantCulture), table[1].Split(' ', StringSplitOptions.RemoveEmptyEntries)[2]);
        var inch = _workshop.Good([.. point, "--imperial"]).Split('\n');
        Assert.Equal((watts / 745.69987).ToString("F1", CultureInfo.InvariantCulture), inch[1].Split(' ', StringSplitOptions.RemoveEmptyEntries)[2]);
    }

    [Fact]
    public void EveryFormOfARunSaysWhichDepthItCameFrom()
    {
        string[] point = ["run", "wren.json", "--from", "6000rpm", "--to", "6000rpm"];
        Assert.EndsWith("; from the lumped model", _workshop.Good(point).Split('\n')[2], StringComparison.Ordinal);
        Assert.EndsWith("; from the wave model", _workshop.Good([.. point, "--depth", "wave"]).Split('\n')[2], StringComparison.Ordinal);
        var rows = _workshop.Good([.. point, "--csv", "--depth", "wave"]).Split('\n');
        Assert.EndsWith(",depth", rows[0], StringComparison.Ordinal);
        Assert.EndsWith(",wave", rows[1], StringComparison.Ordinal);
        Assert.Equal("lumped", Assert.Single(_workshop.Run([.. point, "--json"]).Json.EnumerateArray()).GetProperty("depth").GetString());

        _workshop.Good([.. point, "--depth", "wave", "--keep", "with its pipes"]);
        var kept = Assert.Single(_workshop.Run("runs", "wren.json", "--json").Json.EnumerateArray());
        Assert.Equal(("wave", "wave"), (kept.GetProperty("depth").GetString(), kept.GetProperty("given").GetProperty("engine.depth").GetString()));
        Assert.Contains("from the wave model", _workshop.Good("runs", "wren.json"), StringComparison.Ordinal);

        _workshop.Good("set", "wren.json", "engine.depth", "wave");
        Assert.EndsWith("; from the wave model", _workshop.Good(point).Split('\n')[2], StringComparison.Ordinal);
        Assert.EndsWith("; from the lumped model", _workshop.Good([.. point, "--depth", "lumped"]).Split('\n')[2], StringComparison.Ordinal);
    }

    [Fact]
    public void AHotThinDayMakesASlowerRun()
    {
        var usual = _workshop.Good("sprint", "wren.json", "--svg", "sprint.svg").Split('\n');
        Assert.Contains(usual, l => l.StartsWith("held back by power for ", StringComparison.Ordinal));
        IsPicture("sprint.svg", "distance from the stage, m");
        var hot = _workshop.Run("sprint", "wren.json", "--json", "--weather", "temperature=38°C;pressure=930hPa").Json.GetProperty("splits").EnumerateArray();
        var quarter = usual.Single(l => l.StartsWith("1/4 mile ", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[2];
        Assert.True(hot.Single(s => s.GetProperty("name").GetString() == "1/4 mile").GetProperty("time").GetDouble() > Number(quarter) + 0.1);
    }

    [Fact]
    public void NeedGivesWhatAPowerAsksFor()
    {
        var outcome = _workshop.Run("need", "wren.json", "--power", "35kW", "--json");
        Assert.Contains(outcome.Code, new[] { 0, 3 });
        Assert.Equal(35000, outcome.Json.GetProperty("power").GetDouble(), 1e-6);
        Assert.NotEmpty(outcome.Json.GetProperty("lines").EnumerateArray());
    }

    [Fact]
    public void GivesRanksThePartsFromTheFirstThatGives()
    {
        var ladder = _workshop.Run("gives", "wren.json", "--json", "--svg", "gives.svg").Json;
        var powers = ladder.GetProperty("rungs").EnumerateArray().Select(r => r.GetProperty("power")).Where(p => p.ValueKind == System.Text.Json.JsonValueKind.Number).Select(p => p.GetDouble()).ToList();
        Assert.NotEmpty(powers);
        Assert.Equal(powers.Order(), powers);
        IsPicture("gives.svg", "What gives first");
    }

    [Fact]
    public void DemoCopiesABuildWorksEverythingAndWritesOnePage()
    {
        var page = _workshop.Good("demo", "wall", "--build", "wren");
        string[] parts = ["an invented build, not a real machine", "WHAT GIVES FIRST", "MEASURE AGAIN AFTER THE CHANGES", "THE GOAL NEEDS", "Advice to a competent person"];
        Assert.All(parts, p => Assert.Contains(p, page, StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
        Assert.Equal(page.Split('\n')[..4], _workshop.Read("wall/page.txt").Split('\n')[..4]);
        Assert.Equal(_workshop.Read("wren.json"), _workshop.Read("wall/wren.json"));
        Assert.All(new[] { "run.csv", "sprint.txt", "findings.json", "changes.txt", "schema.json" }, f => Assert.NotEmpty(_workshop.Read("wall/" + f)));
        IsPicture("wall/run.svg", "engine speed, rpm");
        Refusal.Holds(_workshop.Run("demo", "wall", "--build", "wren"), "exists; the demo does not write over it");
        Refusal.Holds(_workshop.Run("demo", "--build", "rook"), "given 'rook', wanted heron or wren");
    }

    [Theory]
    [InlineData("run|--step|0rpm", "--step: given 0 rpm, wanted more than zero")]
    [InlineData("run|--step|-500rpm", "wanted more than zero")]
    [InlineData("run|--from|7000rpm|--to|5000rpm", "given 7000 rpm to 5000 rpm, wanted rising speeds above zero")]
    [InlineData("run|--from|0rpm", "wanted rising speeds above zero")]
    [InlineData("run|--from|5000", "given '5000' without a unit")]
    [InlineData("run|--to|100kW", "which is a power; wanted a rotational speed")]
    [InlineData("run|--from|7000rpm|--svg|nosuch/run.svg", "nosuch/run.svg' cannot be written")]
    [InlineData("run|--depth|shallow", "Depth of the engine model: given 'shallow', wanted one of 'lumped', 'wave'")]
    [InlineData("sprint|--weather|temperature", "given 'temperature', wanted name=value")]
    [InlineData("sprint|--weather|temperature=30", "without a unit, wanted a temperature")]
    [InlineData("sprint|--weather|temprature=30°C", "the nearest is 'weather.temperature'")]
    [InlineData("need|--power|35kW|--quarter|12s", "give one of the two")]
    [InlineData("need|--power|35N", "which is a force; wanted a power")]
    [InlineData("need|--quarter|-12s", "which cannot be")]
    public void RefusesInOneSentence(string words, string sentence)
    {
        var before = _workshop.Read("wren.json");
        var verb = words.Split('|');
        Refusal.Holds(_workshop.Run([verb[0], "wren.json", .. verb[1..]]), sentence);
        Assert.Equal(before, _workshop.Read("wren.json"));
    }

    [Theory]
    [InlineData("run")]
    [InlineData("sprint")]
    [InlineData("need|--power|35kW")]
    [InlineData("gives")]
    public void SaysWhatIsWantedWhenTheEngineCannotBeRunYet(string words)
    {
        _workshop.Write("tern.json", Books.Tern);
        var verb = words.Split('|');
        Refusal.Holds(_workshop.Run([verb[0], "tern.json", .. verb[1..]]), "wanted: ");
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private void IsPicture(string file, string words)
    {
        var picture = XDocument.Parse(_workshop.Read(file));
        Assert.Equal("svg", picture.Root!.Name.LocalName);
        Assert.Contains(words, picture.Root.Value, StringComparison.Ordinal);
    }
}
