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
        var settled = _workshop.Run([.. Points, "--json"]).Json.EnumerateArray().ToList();
        Assert.All(settled, p => Assert.True(p.GetProperty("converged").GetBoolean()));
        var watts = settled[^1].GetProperty("figures").GetProperty("power").GetDouble();
        var table = _workshop.Good(Points).Split('\n');
        Assert.Contains("3 of 3 points settled", table[4], StringComparison.Ordinal);
        Assert.Equal((watts / 1000).ToString("F1", CultureInfo.InvariantCulture), table[3].Split(' ', StringSplitOptions.RemoveEmptyEntries)[2]);
        var inch = _workshop.Good([.. Points, "--imperial"]).Split('\n');
        Assert.Equal((watts / 745.69987).ToString("F1", CultureInfo.InvariantCulture), inch[3].Split(' ', StringSplitOptions.RemoveEmptyEntries)[2]);
    }

    [Fact]
    public void AHotThinDayMakesASlowerRun()
    {
        double Quarter(params string[] weather) => _workshop.Run(["sprint", "wren.json", "--json", .. weather]).Json.GetProperty("splits").EnumerateArray().Single(s => s.GetProperty("name").GetString() == "1/4 mile").GetProperty("time").GetDouble();
        var text = _workshop.Good("sprint", "wren.json", "--svg", "sprint.svg");
        Assert.Contains("1/4 mile", text, StringComparison.Ordinal);
        Assert.Contains("held back by power for", text, StringComparison.Ordinal);
        IsPicture("sprint.svg", "distance from the stage, m");
        Assert.True(Quarter("--weather", "temperature=38°C;pressure=930hPa") > Quarter() + 0.1);
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
    public void ChangesSaysWhatAChangeDoes()
    {
        var all = _workshop.Run("change", "list", "wren.json", "--json").Json.EnumerateArray().Select(c => c.GetProperty("id").GetString()!).ToList();
        var text = _workshop.Good("changes", "wren.json", "--change", all[0]);
        Assert.StartsWith(all[0] + ": ", text, StringComparison.Ordinal);
        Assert.Contains("findings did not move", text, StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run("changes", "wren.json", "--change", "nosuch"), "there is no change 'nosuch'");
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

    [Theory]
    [InlineData("run|--step|0rpm", "--step: given 0 rpm, wanted more than zero")]
    [InlineData("run|--step|-500rpm", "wanted more than zero")]
    [InlineData("run|--from|7000rpm|--to|5000rpm", "given 7000 rpm to 5000 rpm, wanted rising speeds above zero")]
    [InlineData("run|--from|0rpm", "wanted rising speeds above zero")]
    [InlineData("run|--from|5000", "given '5000' without a unit")]
    [InlineData("run|--to|100kW", "which is a power; wanted a rotational speed")]
    [InlineData("run|--from|7000rpm|--svg|nosuch/run.svg", "nosuch/run.svg' cannot be written")]
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
