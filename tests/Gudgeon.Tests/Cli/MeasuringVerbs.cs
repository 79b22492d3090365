namespace Gudgeon.Tests.Cli;

/// <summary>Verbs of measuring: instruments, readings with them, sheets of readings, measuring plans.</summary>
public sealed class MeasuringVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public MeasuringVerbs()
    {
        _workshop.Good("new", "tern.json", "--name", "Tern");
        foreach (var (field, value) in new[] { ("engine.cylinders", "1"), ("instrument[bore-100].kind", "bore gauge"), ("instrument[bore-100].error", "0.003 mm"), ("instrument[bore-100].to", "100 mm"), ("instrument[bore-100].due", "2026-06-30") })
        {
            _workshop.Good("set", field, value);
        }
    }

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void InstrumentsSayHowWellTheyMeasureAndWhetherTheyAreDue()
    {
        Assert.Contains("bore gauge, to 100 mm; ± 0.0035 mm (k = 2) at the end of its range", _workshop.Good("instruments"), StringComparison.Ordinal);
        var one = _workshop.Run("instruments", "--json").Json[0];
        Assert.Equal(("bore-100", "2026-06-30"), (one.GetProperty("name").GetString(), one.GetProperty("due").GetString()));
        Assert.Equal(3.4641e-6, one.GetProperty("expandedUncertainty").GetDouble(), 1e-10);
        Refusal.Holds(_workshop.Run("set", "instrument[bore-100].error", "3 N·m"), "instrument[bore-100].error: given '3 N·m', which is a torque; wanted a length");
    }

    [Fact]
    public void AReadingHasTheSpreadOfItsInstrumentAndIsBroughtTo20Degrees()
    {
        Assert.Equal("cylinder[1].bore is 90.012 mm ± 0.0035 mm (measured with bore-100 by Ada on 2026-05-01)\n", _workshop.Good("measure", "cylinder[1].bore", "90.012 mm", "--with", "bore-100", "--by", "Ada", "--on", "2026-05-01"));
        Assert.Contains("! instrument[bore-100] is overdue: its calibration ran until 2026-06-30", _workshop.Good("measure", "cylinder[1].bore", "90.012 mm", "--with", "bore-100", "--by", "Ada", "--on", "2026-07-01"), StringComparison.Ordinal);
        Assert.Contains("cylinder[1].bore is 90.0037 mm ± 0.0046 mm", _workshop.Good("measure", "cylinder[1].bore", "90.012 mm", "--with", "bore-100", "--by", "Ada", "--on", "2026-05-01", "--part-at", "28°C", "--tool-at", "28°C", "--made-of", "23µm/(m·K)"), StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run("measure", "cylinder[1].bore", "90.012 mm", "--with", "bore-100", "--by", "Ada", "--part-at", "28°C"), "wanted that of the part and that of the tool");
        Refusal.Holds(_workshop.Run("measure", "cylinder[1].bore", "120 mm", "--with", "bore-100", "--by", "Ada"), "which reads to 100 mm");
    }

    [Fact]
    public void ASheetOfReadingsIsTakenWholeOrNotAtAll()
    {
        _workshop.Write("good.csv", "field,value,note\ncylinder[1].bore,90.012 mm,top\ncylinder[1].gasketBore,91.5 mm,\n");
        Assert.EndsWith("2 of 2 readings taken\n", _workshop.Good("measure", "--csv", "good.csv", "--with", "bore-100", "--by", "Ada", "--on", "2026-05-01"), StringComparison.Ordinal);
        Assert.Contains("cylinder[1].bore                   90.012 mm ± 0.0035 mm", _workshop.Good("show", "cylinder"), StringComparison.Ordinal);
        var before = _workshop.Read("tern.json");
        _workshop.Write("bad.csv", "field,value\ncylinder[1].bore,90.013 mm\ncylinder[1].bore,90.014\n");
        Refusal.Holds(_workshop.Run("measure", "--csv", "bad.csv", "--with", "bore-100", "--by", "Ada"), "bad.csv, line 3: Bore: given '90.014' without a unit");
        Assert.Equal(before, _workshop.Read("tern.json"));
    }

    [Fact]
    public void APlanSaysWhereToReadAndThenWhatItCameTo()
    {
        Assert.Contains(" 12. round 2: bottom, 20 mm in, across it", _workshop.Good("measuring-plan", "--rounds", "2"), StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run("measuring-plan", "--part", "piston"), "--part: given 'piston', wanted one of cylinder[1].bore");
        Refusal.Holds(_workshop.Run("measuring-plan", "--keep", "--by", "Ada"), "--keep: no part asked for has readings at stations yet");
        _workshop.Write("bore.csv", "station mm,first mm,second mm\n10,80.002,80.006\n20,80.001,80.003\n10,80.004,80.008\n20,80.001,80.005\n");
        _workshop.Good("measure", "cylinder[1].boreTable", "--from", "bore.csv", "--with", "bore-100", "--by", "Ada", "--on", "2026-05-01");
        var said = _workshop.Good("measuring-plan", "--keep", "--by", "Ada", "--part-at", "28°C", "--tool-at", "28°C", "--made-of", "23µm/(m·K)");
        Assert.Contains("mean of 8 readings 79.99639 mm at 20 °C", said, StringComparison.Ordinal);
        Assert.Contains("out of round 4 µm, taper 3 µm", said, StringComparison.Ordinal);
        Assert.Contains("type A) 0.433 µm: scatter 1.22 µm of one reading, 4 degrees of freedom", said, StringComparison.Ordinal);
        Assert.Contains("k = 1.96 for 95 %: ± 4.33 µm", said, StringComparison.Ordinal);
        Assert.Contains("kept: cylinder[1].bore is 79.9964 mm ± 0.0044 mm", said, StringComparison.Ordinal);
        Assert.Equal(4.33e-6, _workshop.Run("measuring-plan", "--part-at", "28°C", "--tool-at", "28°C", "--made-of", "23µm/(m·K)", "--json").Json[0].GetProperty("result").GetProperty("expanded").GetDouble(), 5e-9);
        Refusal.Holds(_workshop.Run("measure", "cylinder[1].boreTable", "--from", "bore.csv", "--with", "x", "--by", "Ada", "--part-at", "28°C", "--tool-at", "28°C"), "a table is kept as it was read");
    }

    [Fact]
    public void WhatCannotBeIsRefusedInOneSentence()
    {
        string[] reading = ["measure", "cylinder[1].bore", "90.012 mm", "--with", "bore-100", "--by", "Ada"];
        Refusal.Holds(_workshop.Run([.. reading, "--on", "next week"]), "--on: given 'next week', wanted a day such as 2026-11-29 or a time such as 2026-11-29 08:30");
        Refusal.Holds(_workshop.Run([.. reading, "--part-at", "2600°C", "--tool-at", "22°C", "--made-of", "23µm/(m·K)"]), "cylinder[1].bore, temperature of the part: given '2600°C', wanted -60 °C to 400 °C");
        Refusal.Holds(_workshop.Run("set", "instrument[bore-100].error", "-4 %"), "instrument[bore-100].error: given '-4 %', wanted zero or more");
        _workshop.Write("far.csv", "station mm,first mm,second mm\n10,80.002,120.006\n");
        Refusal.Holds(_workshop.Run("measure", "cylinder[1].boreTable", "--from", "far.csv", "--with", "bore-100", "--by", "Ada"), "cylinder[1].boreTable, row 1, second: given '120.006 mm' with instrument[bore-100], which reads to 100 mm");
        _workshop.Write("wide.csv", "field,value\ncylinder[1].bore,90.013 mm,2\n");
        Refusal.Holds(_workshop.Run("measure", "--csv", "wide.csv", "--with", "bore-100", "--by", "Ada"), "wide.csv, line 2: the line has 3 cells under 2 headings");
    }

    [Fact]
    public void WhatIsStrangeIsTakenWithAQuestionOrAWarning()
    {
        _workshop.Write("bore.csv", "station mm,first mm,second mm\n10,89.502,89.506\n20,895.1,89.503\n");
        var said = _workshop.Good("measure", "cylinder[1].boreTable", "--from", "bore.csv", "--with", "bore-10", "--by", "Ada", "--on", "2026-05-01 08:30");
        Assert.Contains("? Bore readings, row 2, first: 895.1 mm is outside what is usual (30 mm to 130 mm): is it right?", said, StringComparison.Ordinal);
        Assert.Contains("! bore-10 is none of the book's instruments, so no ± is known; the nearest is bore-100", said, StringComparison.Ordinal);
        _workshop.Write("one.csv", "station mm,first mm,second mm\n10,89.502,89.506\n");
        _workshop.Good("measure", "cylinder[1].boreTable", "--from", "one.csv", "--with", "bore-100", "--by", "Ada");
        Assert.Contains("taper not known yet: a second station is wanted", _workshop.Good("measuring-plan"), StringComparison.Ordinal);
        Assert.Equal(System.Text.Json.JsonValueKind.Null, _workshop.Run("measuring-plan", "--json").Json[0].GetProperty("result").GetProperty("taper").ValueKind);
        Assert.Contains("wanted: a second station in cylinder[1].boreTable", _workshop.Run("check", "--explain", "bore-taper[1]").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoReadingsHaveTheLargerFactorThatFewRepeatsAskFor()
    {
        _workshop.Good("set", "instrument[bore-100].error", "0.0020625 mm");
        _workshop.Good("measure", "cylinder[1].bore", "89.421 mm", "--with", "bore-100", "--by", "Ada", "--on", "2026-05-01");
        Assert.Contains("what holds now is 89.4220 mm ± 0.004 mm", _workshop.Good("measure", "cylinder[1].bore", "89.423 mm", "--with", "bore-100", "--by", "Ada", "--on", "2026-05-01"), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsTooCloseToTellSaysWhatWouldDecideIt()
    {
        _workshop.Good("set", "instrument[dial].kind", "dial gauge");
        _workshop.Good("set", "instrument[dial].error", "0.01 mm");
        _workshop.Good("set", "cylinder.gasketThickness", "0.9 mm");
        _workshop.Good("set", "cylinder.deckHeight", "0.12 mm ± 0.04 mm");
        Assert.Contains("to decide it: read cylinder.deckHeight with instrument[dial] (± 0.012 mm)", _workshop.Run("check", "--explain", "squish[1]").Output, StringComparison.Ordinal);
        var finding = _workshop.Run("check", "--explain", "squish[1]", "--json").Json[0];
        Assert.Equal("dial", finding.GetProperty("toDecideIt")[0].GetProperty("instrument").GetString());
        Assert.Equal(0.841, finding.GetProperty("probabilityOfConformity").GetDouble(), 5e-4);
        _workshop.Good("set", "workshop.decisionRule", "simple acceptance");
        Assert.Contains("Decided by simple acceptance", _workshop.Good("check", "--explain", "squish[1]"), StringComparison.Ordinal);
    }
}
