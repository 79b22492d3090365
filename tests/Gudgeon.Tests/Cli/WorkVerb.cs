using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Tests.Cli;

public sealed class WorkVerb : IDisposable
{
    private const string Heads = "id,formula,inputs,output,expected,tolerance,source,kind\n";

    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void ListsEveryFormulaWithItsSource()
    {
        var lines = _workshop.Good("work").Split('\n');
        Assert.All(Formulas.All, f => Assert.Contains("  " + f.Name, lines));
        Assert.Equal(Formulas.All.Count(), lines.Count(l => l.StartsWith("      source: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void ListsAsJson()
    {
        var rate = _workshop.Run("work", "--list", "--json").Json.EnumerateArray().Single(f => f.GetProperty("name").GetString() == "helical spring rate");
        Assert.Equal("Springs", rate.GetProperty("subject").GetString());
        var modulus = rate.GetProperty("inputs").EnumerateArray().Last();
        Assert.Equal("shearModulus", modulus.GetProperty("key").GetString());
        Assert.True(modulus.GetProperty("optional").GetBoolean());
        Assert.Equal("GPa", modulus.GetProperty("unit").GetString());
    }

    /// <summary>R = 79300 N/mm² × (4 mm)⁴ / (8 × (25 mm)³ × 6) = 27.0677 N/mm, by hand.</summary>
    [Fact]
    public void WorksOneFormulaAndShowsItsNumbers() => Assert.Equal(
        """
        helical spring rate
          R = G d^4 / (8 D^3 n)
          (27.07 N/mm) = (79.3 GPa) (4 mm)^4 / (8 (25 mm)^3 × 6)
          spring rate = 27.0677 N/mm
          source: EN 13906-1:2013; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-9

        """,
        _workshop.Good("work", "helical spring rate", "wire=4mm", "meanDiameter=25 mm", "activeCoils=6"));

    [Fact]
    public void WorksInInchUnitsAndJson()
    {
        string[] call = ["work", "Helical Spring Rate", "wire=0.157480315in", "mean coil diameter=25 mm", "activeCoils=6"];
        var result = _workshop.Run([.. call, "--json"]).Json.GetProperty("results")[0];
        Assert.Equal(27067.73, result.GetProperty("si").GetDouble(), 0.05);
        Assert.Equal(27.06773, result.GetProperty("value").GetDouble(), 0.00005);
        Assert.Equal("N/m", result.GetProperty("siUnit").GetString());
        Assert.Contains("spring rate = 154.561 lbf/in", _workshop.Good([.. call, "--imperial"]), StringComparison.Ordinal);
    }

    [Fact]
    public void RowsInsideEndWithZero()
    {
        _workshop.Write("rows.csv", Heads + "A,helical spring rate,wire=4 mm;meanDiameter=25 mm;activeCoils=6,result,27.0677 N/mm,0.01 %,by hand,identity\nB,spring index,wire=4 mm;meanDiameter=1 in,result,6.35,0.001,by hand,identity\n");
        Assert.Contains("2 of 2 rows inside", _workshop.Good("work", "--rows", "rows.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public void RowsOutsideAndRowsThatCannotBeToldEndWithOne()
    {
        _workshop.Write("rows.csv", Heads + "A,spring index,wire=4 mm;meanDiameter=25 mm,result,6.3,0.1 %,by hand,identity\nB,spring index,wire=4 N;meanDiameter=25 mm,result,6.25,0.1 %,by hand,identity\nC,spring index,wire=4 mm;meanDiameter=25 mm,result,6.25,0.1 %,by hand,identity\n");
        var outcome = _workshop.Run("work", "--rows", "rows.csv");
        Assert.Equal(1, outcome.Code);
        Assert.StartsWith("A                      OUTSIDE  6.25", outcome.Lines[0], StringComparison.Ordinal);
        Assert.Contains("cannot tell", outcome.Lines[1], StringComparison.Ordinal);
        Assert.Contains("which is a force; wanted a length", outcome.Lines[1], StringComparison.Ordinal);
        Assert.Equal("1 of 3 rows inside", outcome.Lines[^1]);
        Assert.Equal([false, false, true], _workshop.Run("work", "--rows", "rows.csv", "--json").Json.EnumerateArray().Select(r => r.GetProperty("inside").GetBoolean()));
    }

    [Theory]
    [InlineData("helical spring rat", "the nearest is 'helical spring rate'")]
    [InlineData("helical spring rate", "missing wire (wire diameter, mm), meanDiameter (mean coil diameter, mm), activeCoils (active coils)")]
    [InlineData("spring index|wire=4|meanDiameter=25mm", "without a unit, wanted a length")]
    [InlineData("spring index|wire=4 N·m|meanDiameter=25mm", "which is a torque; wanted a length")]
    [InlineData("spring index|wire=4mm|meanDiameter=25mm|pitch=3mm", "there is no input 'pitch'; it takes wire, meanDiameter")]
    [InlineData("spring index|wire=4mm|wire=4mm|meanDiameter=25mm", "'wire' is given twice")]
    [InlineData("spring index|wire=-4mm|meanDiameter=25mm", "given -4 mm, wanted more than 0 mm")]
    [InlineData("spring index|wire=NaN|meanDiameter=25mm", "wanted a length")]
    [InlineData("spring index|wire=1e400mm|meanDiameter=25mm", "wanted a finite number")]
    [InlineData("spring index|wire=30mm|meanDiameter=25mm", "must be greater than the wire diameter")]
    [InlineData("spring index|4mm|meanDiameter=25mm", "wanted name=amount")]
    [InlineData("--rows|nosuch.csv", "there is no such file")]
    [InlineData("--rows|.", "it is a folder")]
    [InlineData("--rows|empty.csv", "the file is empty; wanted the columns id, formula, inputs, output, expected, tolerance, source")]
    [InlineData("--rows|columns.csv", "missing the column inputs, tolerance")]
    public void RefusesInOneSentence(string words, string sentence)
    {
        _workshop.Write("empty.csv", "");
        _workshop.Write("columns.csv", "id,formula,output,expected,source\nA,spring index,result,6.25,by hand\n");
        Refusal.Holds(_workshop.Run(["work", .. words.Split('|')]), sentence);
    }
}
