using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>Tables from files, and what the ports pass: gudgeon set --from, gudgeon measure --from, gudgeon head flow.</summary>
public sealed class FlowVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public FlowVerbs() => _workshop.Unpack("heron");

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void ALobeInCamDegreesComesInAsCrankDegrees()
    {
        _workshop.Write("cam.csv", "# second cam\ncam °;lift mm\n155;0\n227,5;9,5\n300;0\n");
        Assert.StartsWith("valve[inlet].liftTable is 310 ° at 0 mm; 455 ° at 9.5 mm; 600 ° at 0 mm in the baseline (measured)", _workshop.Good("set", "heron.json", "valve[inlet].liftTable", "--from", "cam.csv", "--how", "measured"), StringComparison.Ordinal);
        Assert.Contains("\"rows\": [[310, 0], [455, 9.5], [600, 0]]", _workshop.Read("heron.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void ABenchFileBringsItsConditionsIntoAChange()
    {
        _workshop.Write("bench.csv", "# test pressure: 10 inH2O\n# standard: 15 °C, 1000 hPa\nlift mm,flow L/s\n2,18\n6,50\n10,70\n");
        var said = _workshop.Good("set", "heron.json", "valve[inlet].benchTable", "--from", "bench.csv", "--change", "ported-head");
        Assert.Contains("valve[inlet].benchPressure is 10 inH2O", said, StringComparison.Ordinal);
        Assert.Contains("valve[inlet].benchTemperature is 15 °C", said, StringComparison.Ordinal);
        Assert.Contains("valve[inlet].benchAirPressure is 1000 hPa", said, StringComparison.Ordinal);
        Assert.Equal(3, _workshop.Run("head", "flow", "heron.json", "--json").Json.GetProperty("sides")[0].GetProperty("now").GetProperty("rows").GetArrayLength());
    }

    [Fact]
    public void ABenchFileIsAReadingToo()
    {
        _workshop.Write("bench.csv", "# test pressure: 25 inH2O\nlift mm,flow L/s\n2,29\n6,82\n10,114\n");
        var said = _workshop.Good("measure", "heron.json", "valve[inlet].benchTable", "--from", "bench.csv", "--with", "flow bench", "--by", "Ada", "--on", "2026-10-02");
        Assert.Equal(
            """
            valve[inlet].benchTable is 2 mm at 29 L/s; 6 mm at 82 L/s; 10 mm at 114 L/s (measured with flow bench by Ada on 2026-10-02)
            valve[inlet].benchPressure is 25 inH2O (measured with flow bench by Ada on 2026-10-02)

            """,
            said);
    }

    [Theory]
    [InlineData("set|heron.json|valve[inlet].benchTable|--from|nosuch.csv", "the file 'nosuch.csv' cannot be read: there is no such file")]
    [InlineData("set|heron.json|valve[inlet].liftTable|--from|open.csv", "open.csv, valve[inlet].liftTable, line 3: the lift curve does not close")]
    [InlineData("set|heron.json|cylinder.bore|--from|open.csv", "cylinder.bore: takes one value, not the table of a file")]
    [InlineData("set|heron.json|valve[inlet].liftTable|1 mm|--from|open.csv", "wanted: gudgeon set [BOOK] PATH --from FILE")]
    [InlineData("set|heron.json|valve[inlet].liftTable|--from", "--from: missing its file")]
    [InlineData("measure|heron.json|valve[inlet].liftTable|--from|open.csv", "a reading needs the instrument and the person")]
    [InlineData("measure|heron.json|valve[inlet].benchTable|--from|open.csv|--with|bench|--by|Ada", "open.csv, valve[inlet].benchTable, line 1: Flow bench readings: there is no column 'angle'")]
    [InlineData("head|flow|heron.json|--at|28 N", "Test pressure of the flow bench: given '28 N', which is a force")]
    [InlineData("head|flow|heron.json|--at|60 kPa", "which cannot be; wanted at most")]
    [InlineData("head|flow|heron.json|--svg|nosuch/flow.svg", "the picture 'nosuch/flow.svg' cannot be written")]
    public void RefusesInOneSentenceAndLeavesTheBookAlone(string words, string sentence)
    {
        var before = _workshop.Read("heron.json");
        _workshop.Write("open.csv", "angle,lift mm\n310,0\n450,9\n");
        Refusal.Holds(_workshop.Run(words.Split('|')), sentence);
        Assert.Equal(before, _workshop.Read("heron.json"));
    }

    [Fact]
    public void TheSheetSaysWhatPortingDid()
    {
        var sheet = _workshop.Good("head", "flow", "heron.json", "--svg", "flow.svg");
        Assert.StartsWith("Flows at 28 inH2O in air of 20 °C and 1013.25 hPa\n\ninlet\n", sheet, StringComparison.Ordinal);
        Assert.Matches(@"\n +11 +0\.306 +131\.4 +113\.4 +\+15\.9 % ", sheet);
        Assert.Contains("\n  exhaust over inlet at full lift: 0.769, before 0.783\n", sheet, StringComparison.Ordinal);
        Assert.Contains("  volume of the port by its areas: 135.9 cm³, measured 136 cm³: -0.1 %\n", sheet, StringComparison.Ordinal);
        var picture = XDocument.Parse(_workshop.Read("flow.svg"));
        var words = string.Concat(picture.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));
        Assert.Contains("inlet, before", words, StringComparison.Ordinal);
        Assert.Contains("flow at 28 inH2O, L/s", words, StringComparison.Ordinal);
        Assert.Contains("cfm", _workshop.Good("head", "flow", "heron.json", "--imperial"), StringComparison.Ordinal);
    }

    [Fact]
    public void AtAnotherPressureAllFlowsGoWithItAndTheAreasStay()
    {
        var (usual, other) = (_workshop.Run("head", "flow", "heron.json", "--json").Json, _workshop.Run("head", "flow", "heron.json", "--json", "--at", "10 inH2O").Json);
        double Of(System.Text.Json.JsonElement sheet, string name) => sheet.GetProperty("sides")[0].GetProperty("now").GetProperty("rows")[10].GetProperty(name).GetDouble();
        Assert.Equal(1.63208, Of(usual, "flow") / Of(other, "flow"), 1e-5);
        Assert.Equal(Of(usual, "area"), Of(other, "area"), 1e-15);
    }
}
