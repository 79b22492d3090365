using CsCheck;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Tests.Files;

public sealed class TableFileTests : IDisposable
{
    private const string Bench = "valve[inlet].benchTable";
    private const string Lift = "valve[inlet].liftTable";
    private const double InchOfWater = 249.08891;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("lift mm,flow L/s\n1,10.5\n2,21\n")]
    [InlineData("lift mm;flow L/s\r\n1;10,5\r\n2;21\r\n")]
    [InlineData("lift mm;flow L/s\n1;10.5\n2;21")]
    [InlineData("lift mm\tflow L/s\n1\t10.5\n2\t21\n")]
    [InlineData("\uFEFF# of the inlet\nlift,flow\n\n1,10.5\n# choked from here\n2,21\n,\n")]
    [InlineData("flow (L/s), lift [mm],\n10.5, 1,\n21, 2,\n")]
    [InlineData("\"lift mm\",\"flow L/s\"\n\"1\",\"10.5\"\n\"2\",\"21\"")]
    [InlineData("lift in,flow m³/h\n0.03937007874,37.8\n0.07874015748,75.6\n")]
    public void ReadsWhatSpreadsheetsWrite(string text)
    {
        var table = TableFile.Read(Bench, text, "bench.csv").Table;
        Assert.Equal([0.001, 0.002], table["lift"], (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal([0.0105, 0.021], table["flow"], (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal(["lift", "flow"], table.Columns.Select(c => c.Name));
    }

    [Fact]
    public void TakesEveryTableField()
    {
        foreach (var field in FieldCatalogue.All.Where(f => f.Kind == FieldKind.Table))
        {
            var rows = Enumerable.Range(0, 4).Select(row => string.Join(',', field.Columns.Select((_, column) => field == Blower.Map ? MapCell(row, column) : field.Columns.Any(c => c.Of != Shaft.None) && column == 1 && row is 0 or 3 ? "0" : $"{(row == 0 && column == 0 ? 0 : 10 + row)}")));
            var text = string.Join('\n', rows.Prepend(string.Join(',', field.Columns.Select(c => $"{c.Name} {c.Unit}".Trim()))));
            var table = TableFile.Read(field.Path, text, "table.csv").Table;
            Assert.Equal(field.Columns.Select(c => c.Name), table.Columns.Select(c => c.Name));
            Assert.Equal(4, table.Rows.Count);
        }
    }

    private static string MapCell(int row, int column) => column switch
    {
        0 => row < 2 ? "50000" : "80000",
        1 => $"0.{row + 1}",
        2 => row switch { 0 => "1.3", 1 => "1.2", 2 => "1.9", _ => "1.6" },
        _ => "0.7",
    };

    [Theory]
    [InlineData(Lift, "crank °", 310, 600)]
    [InlineData(Lift, "cam °", 155, 300)]
    [InlineData(Lift, "cam deg", 155, 300)]
    [InlineData(Lift, "angle cam °", 155, 300)]
    [InlineData(Lift, "angle (cam °)", 155, 300)]
    [InlineData(Lift, "angle", 310, 600)]
    public void CamDegreesOfAValvesCurveBecomeCrankDegrees(string path, string heading, double from, double to)
    {
        var text = FormattableString.Invariant($"{heading},lift mm\n{from},0\n{(from + to) / 2},9\n{to},0\n");
        Assert.Equal([310, 455, 600], Degrees(path, text), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Theory]
    [InlineData("cam °", 70)]
    [InlineData("crank °", 140)]
    [InlineData("angle °", 70)]
    public void CrankDegreesOfALobeBecomeCamDegrees(string heading, double half) =>
        Assert.Equal([-70, 0, 70], Degrees("cam[inlet].liftTable", FormattableString.Invariant($"{heading},lift mm\n{-half},0\n0,9\n{half},0\n")), (a, b) => Math.Abs(a - b) < 1e-9);

    private static double[] Degrees(string path, string text) => [.. TableFile.Read(path, text, "cam.csv").Table["angle"].Select(a => a * 180 / Math.PI)];

    [Theory]
    [InlineData(Lift, "angle,lift mm\n310,0\n450,9\n600,1\n", "line 4: the lift curve does not close: it begins at 0 mm and ends at 1 mm; wanted zero at both ends")]
    [InlineData(Lift, "angle,lift mm\n310,0\n450,-9\n600,0\n", "line 3: the table holds the negative lift -9 mm; wanted zero or more")]
    [InlineData(Lift, "# cam 4\nangle,lift mm\n310,0\n450,9\n440,8\n600,0\n", "line 5: the angle does not rise from row 2 to row 3: 440 ° after 450 °")]
    [InlineData(Lift, "cam °,crank °,lift mm\n155,310,0\n", "line 1: mixed cam and crank degrees: both stand in the headings; wanted one of them")]
    [InlineData(Lift, "cam °,lift mm\n155,0\n450 crank,9\n300,0\n", "line 3: mixed cam and crank degrees: given '450 crank' in a table of cam degrees; wanted one of them throughout")]
    [InlineData(Lift, "angle,lift mm\n310,0\n225 cam,9\n600,0\n", "line 3: mixed cam and crank degrees: given '225 cam' in a table of crank degrees")]
    [InlineData(Lift, "cam °,angle °,lift mm\n155,310,0\n", "line 1: Lift curve: the column 'angle' is given twice")]
    [InlineData(Lift, "lift mm\n0\n9\n0\n", "line 1: Lift curve: missing the column angle; wanted 'angle °', 'lift mm'")]
    [InlineData(Bench, "lift mm,flow L/s\n1,ten\n", "line 2: given 'ten' under 'flow L/s', wanted a finite number")]
    [InlineData(Bench, "lift mm,flow L/s\n1,10\n2,NaN\n", "line 3: given 'NaN' under 'flow L/s', wanted a finite number")]
    [InlineData(Bench, "lift mm,flow L/s\n1,Infinity\n", "line 2: given 'Infinity' under 'flow L/s', wanted a finite number")]
    [InlineData(Bench, "lift mm,flow L/s\n1,1e999\n", "line 2: given '1e999' under 'flow L/s', wanted a finite number")]
    [InlineData(Bench, "lift mm,flow L/s\n1,\n", "line 2: given nothing under 'flow L/s', wanted a finite number")]
    [InlineData(Bench, "lift mm,flow L/s\n1,10\n2\n", "line 3: the row has 1 number of the flow bench readings, wanted 2")]
    [InlineData(Bench, "lift mm,flow L/s\n1,10,5\n", "line 2: the row has 3 numbers of the flow bench readings, wanted 2")]
    [InlineData(Bench, "lift mm;flow L/s\n1;1.000,5\n", "line 2: given '1.000,5' under 'flow L/s', wanted a finite number")]
    [InlineData(Bench, "lift mm,flow N\n1,10\n", "line 1: Flow bench readings, column flow: given '1 N', which is a force")]
    [InlineData(Bench, "lift mm,flow cfmm\n1,10\n", "line 1: Flow bench readings, column flow: given '1 cfmm', and 'cfmm' is not a unit known here")]
    [InlineData(Bench, "lift mm,flux L/s\n1,10\n", "line 1: Flow bench readings: there is no column 'flux'; wanted lift, flow, reverse")]
    [InlineData(Bench, "", "the file is empty; wanted headings and rows of numbers")]
    [InlineData(Bench, "# nothing\n\n", "the file is empty; wanted headings and rows of numbers")]
    [InlineData(Bench, "lift mm,flow L/s\n", "there is no row under the headings")]
    [InlineData(Bench, "lift mm,flow L/s\n2,10\n1,5\n", "line 3: the lift does not rise from row 1 to row 2: 1 mm after 2 mm")]
    [InlineData(Bench, "# test pressure: 28\nlift mm,flow L/s\n1,10\n", "line 1: Test pressure of the flow bench: given '28' without a unit")]
    [InlineData(Bench, "# test pressure: -28 inH2O\nlift mm,flow L/s\n1,10\n", "line 1: Test pressure of the flow bench: given '-28 inH2O', which cannot be")]
    [InlineData(Bench, "# standard: 20 °C\nlift mm,flow L/s\n1,10\n", "line 1: given the standard '20 °C', wanted a temperature and a pressure such as '20 °C, 1013 hPa'")]
    [InlineData(Bench, "lift mm,flow L/s,depression kPa\n1,10,7\n", "line 1: the rows have test pressures of their own; wanted the one to bring them to above the headings")]
    [InlineData(Bench, "# test pressure: 7 kPa\nlift mm,flow L/s,depression kPa\n1,10,0\n", "line 3: Test pressure of the flow bench: given '0 kPa', which cannot be")]
    [InlineData(Bench, "# test pressure: 7 kPa\nlift mm,flow L/s,depression kPa\n1,10\n", "line 3: the row has no test pressure, wanted one in every row")]
    [InlineData(Bench, "# test pressure: 7 kPa\nlift mm,flow L/s,depression\n1,10,7\n", "line 3: Test pressure of the flow bench: given '7' without a unit")]
    [InlineData("cylinder[1].bore", "lift mm,flow L/s\n1,10\n", "cylinder[1].bore: takes one value, not the table of a file")]
    public void RefusesInOneSentenceThatNamesFileFieldAndLine(string path, string text, string sentence)
    {
        var refusal = Assert.Throws<BadInputException>(() => TableFile.Read(path, text, "bench.csv")).Message;
        Assert.Contains(sentence, refusal, StringComparison.Ordinal);
        Assert.StartsWith(path == "cylinder[1].bore" ? path : $"bench.csv, {path}", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void TheRemarksOfABenchSetItsConditions()
    {
        var file = TableFile.Read(Bench, "# bench of the shop\n# test pressure: 28 inH2O\n# standard: 20 °C, 1013 hPa\nlift mm,flow L/s\n1,10\n", "bench.csv");
        Assert.Equal(
            [(Valve.BenchPressure, "28 inH2O"), (Valve.BenchTemperature, "20 °C"), (Valve.BenchAirPressure, "1013 hPa")],
            file.Conditions.Select(c => (c.Key, c.Value)));
    }

    /// <summary>Rows read at pressures of their own come to the common one as the compressible nozzle law says.</summary>
    [Fact]
    public void RowsWithPressuresOfTheirOwnAreBroughtToOne()
    {
        var table = TableFile.Read(Bench, "# test pressure: 28 inH2O\nlift mm,depression inH2O,flow L/s,reverse L/s\n1,10,6,5\n2,28,20,18\n", "bench.csv").Table;
        Assert.Equal(FlowBench.AtTestPressure(0.006, 10 * InchOfWater, 28 * InchOfWater), table["flow"][0], 1e-12);
        Assert.Equal(FlowBench.AtTestPressure(0.005, 10 * InchOfWater, 28 * InchOfWater), table["reverse"][0], 1e-12);
        Assert.Equal(0.020, table["flow"][1], 1e-12);
        Assert.Equal([0.001, 0.002], table["lift"], (a, b) => Math.Abs(a - b) < 1e-15);
    }

    [Fact]
    public void WhatABookWritesReadsAsItWas() => Gen.Select(Gen.Double[0.1, 3].Array[1, 12], Gen.Double[0, 200].Array[12]).Sample((steps, flows) =>
    {
        var lifts = steps.Select((_, i) => steps[..(i + 1)].Sum()).ToArray();
        var text = string.Join('\n', lifts.Select((l, i) => FormattableString.Invariant($"{l:R};{flows[i]:R}")).Prepend("lift mm;flow L/s"));
        var table = TableFile.Read(Bench, text, "bench.csv").Table;
        return table["lift"].Zip(lifts).All(p => Math.Abs(p.First - (p.Second / 1000)) < 1e-15) && table["flow"].Zip(flows).All(p => Math.Abs(p.First - (p.Second / 1000)) < 1e-12);
    });

    [Theory]
    [InlineData("heron.json")]
    [InlineData("heron.gudgeon")]
    public void AFileComesIntoABookWithItsConditionsOrNotAtAll(string name)
    {
        var book = BookFile.Create(_folder.PathOf(name), "Heron");
        var bare = TableFile.Read(Bench, "lift mm,flow L/s\n1,10\n2,20\n", "bench.csv");
        Assert.Contains("the test pressure of the bench is not said", Assert.Throws<BadInputException>(() => book.Set(bare, [])).Message, StringComparison.Ordinal);
        Assert.Contains("the test pressure of the bench is not said", Assert.Throws<BadInputException>(() => book.Measure(bare, "bench", "Ada", "", "")).Message, StringComparison.Ordinal);
        Assert.Empty(BookFile.Open(_folder.PathOf(name)).Book.Baseline);

        var said = TableFile.Read(Bench, "# test pressure: 25 inH2O\nlift mm,flow L/s\n1,10\n2,20\n", "bench.csv");
        book.Set(said, [new("how", "measured")]);
        var set = BookFile.Open(_folder.PathOf(name)).Book;
        Assert.Equal("25 inH2O", set.Baseline["valve[inlet].benchPressure"].Content.ToString());
        Assert.Equal(said.Table, set.Baseline[Bench].Content);
        Assert.Equal((How.Measured, How.Measured), (set.Baseline[Bench].How, set.Baseline["valve[inlet].benchPressure"].How));

        const string Id = "4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f";
        book.Measure(said, "bench", "Ada", "", "", Id);
        Assert.True(book.Measure(said, "bench", "Ada", "", "", Id).Repeated);
        var read = BookFile.Open(_folder.PathOf(name)).Book;
        Assert.Equal([Bench, "valve[inlet].benchPressure"], read.Measurements.Select(m => m.Address.Path));
        Assert.Equal(said.Table, read.Measurements[0].Value.Content);
    }

    [Fact]
    public void TheTextOfOlderProgramsIsRead()
    {
        File.WriteAllBytes(_folder.PathOf("cam.csv"), System.Text.Encoding.Latin1.GetBytes("crank °,lift mm\n310,0\n450,9\n600,0\n"));
        Assert.Equal(3, TableFile.Open(Lift, _folder.PathOf("cam.csv")).Table.Rows.Count);
        Assert.Contains("there is no such file", Assert.Throws<BadInputException>(() => TableFile.Open(Lift, _folder.PathOf("nosuch.csv"))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lift mm,flow L/s\n1,10", true)]
    [InlineData("# remark\nlift mm", true)]
    [InlineData("1 mm at 10 L/s; 2 mm at 20 L/s", false)]
    [InlineData("-70° at 0 mm", false)]
    [InlineData("", false)]
    public void CsvIsToldFromRows(string text, bool csv) => Assert.Equal(csv, TableFile.Is(text));
}
