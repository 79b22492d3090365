using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Files;

/// <summary>
/// What a flow bench's file says beside its readings: "# test pressure: 28 inH2O", "# standard: 20 °C, 1013 hPa", and a
/// column "depression kPa" when the rows were read at pressures of their own.
/// </summary>
internal sealed class BenchHead
{
    private const string Depression = "depression";
    private readonly double[] _depressions;
    private readonly double _pressure;
    private readonly double _air;

    private BenchHead(CsvSheet sheet, Dictionary<Field, Amount> said, double[] depressions)
    {
        Sheet = sheet;
        Conditions = [.. said.Select(s => KeyValuePair.Create(s.Key, s.Value.ToString()))];
        _depressions = depressions;
        _pressure = said.TryGetValue(Valve.BenchPressure, out var pressure) ? pressure.Si : double.NaN;
        _air = said.TryGetValue(Valve.BenchAirPressure, out var air) ? air.Si : FlowBench.StandardPressure;
    }

    /// <summary>The sheet without the column of test pressures.</summary>
    public CsvSheet Sheet { get; }

    /// <summary>What was said, by the field that it is a value of.</summary>
    public IReadOnlyList<KeyValuePair<Field, string>> Conditions { get; }

    /// <summary>Reads remarks and test pressures.</summary>
    /// <exception cref="BadInputException">Something in them cannot be read.</exception>
    public static BenchHead Of(CsvSheet sheet)
    {
        var said = new Dictionary<Field, Amount>();
        foreach (var (line, words) in sheet.Remarks)
        {
            foreach (var (field, text) in Parts(sheet, line, words))
            {
                said[field] = Read(sheet, line, field, text);
            }
        }

        var column = sheet.Headings.Cells.ToList().FindIndex(h => h.StartsWith(Depression, StringComparison.OrdinalIgnoreCase));
        if (column < 0)
        {
            return new BenchHead(sheet, said, []);
        }

        return said.ContainsKey(Valve.BenchPressure)
            ? new BenchHead(sheet.Without(column), said, Depressions(sheet, column))
            : throw sheet.Bad(sheet.Headings, "the rows have test pressures of their own; wanted the one to bring them to above the headings, such as '# test pressure: 28 inH2O'");
    }

    /// <summary>The readings brought to the common test pressure.</summary>
    public Table Brought(Table readings)
    {
        if (_depressions.Length == 0)
        {
            return readings;
        }

        var flows = readings.Columns.Select(c => c.Dimension == Dimension.VolumeFlow).ToList();
        return readings.With((row, column, si) => flows[column] ? FlowBench.AtTestPressure(si, _depressions[row], _pressure, _air) : si);
    }

    private static IEnumerable<(Field Field, string Text)> Parts(CsvSheet sheet, int line, string words)
    {
        var halves = words.Split(':', 2, StringSplitOptions.TrimEntries);
        return (halves[0].ToUpperInvariant(), halves.Length) switch
        {
            ("TEST PRESSURE", 2) => [(Valve.BenchPressure, halves[1])],
            ("STANDARD", 2) => halves[1].Split([',', ';'], StringSplitOptions.TrimEntries) is [var temperature, var pressure]
                ? [(Valve.BenchTemperature, temperature), (Valve.BenchAirPressure, pressure)]
                : throw sheet.Bad(line, $"given the standard '{halves[1]}', wanted a temperature and a pressure such as '20 °C, 1013 hPa'"),
            _ => [],
        };
    }

    private static Amount Read(CsvSheet sheet, int line, Field field, string text)
    {
        try
        {
            return (Amount)KnownValue.Read(field, text).Content;
        }
        catch (BadInputException e)
        {
            throw sheet.Bad(line, e.Message);
        }
    }

    private static double[] Depressions(CsvSheet sheet, int column)
    {
        var unit = sheet.Headings.Cells[column][Depression.Length..].Trim();
        double Pressure(CsvLine row)
        {
            var number = sheet.Number(row, column);
            return Read(sheet, row.Line, Valve.BenchPressure, FormattableString.Invariant($"{number} {unit}").Trim()).Si;
        }

        return [.. sheet.Rows.Select(r => column < r.Cells.Count ? Pressure(r) : throw sheet.Bad(r, "the row has no test pressure, wanted one in every row"))];
    }
}
