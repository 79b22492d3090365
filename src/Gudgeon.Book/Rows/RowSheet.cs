using System.Globalization;
using CsvHelper;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Rows;

/// <summary>One known value to hold a formula to, as written in a row file.</summary>
/// <param name="Line">Line in the file.</param>
/// <param name="Id">The row's id.</param>
/// <param name="Formula">Trade name of the formula.</param>
/// <param name="Inputs">"name=amount;name=amount".</param>
/// <param name="Output">Key of the result; empty for the first.</param>
/// <param name="Expected">The known value with its unit.</param>
/// <param name="Tolerance">"0.1 %" of the expected value, or an amount.</param>
/// <param name="Source">Where the known value is published.</param>
/// <param name="Kind">published, independent code or identity; empty when the file does not say.</param>
public sealed record KnownRow(int Line, string Id, string Formula, string Inputs, string Output, string Expected, string Tolerance, string Source, string Kind);

/// <summary>A row and what the formula gave.</summary>
/// <param name="Row">The row.</param>
/// <param name="Computed">Computed value, in the unit of the expected one; NaN when it could not be computed.</param>
/// <param name="Expected">Expected value in its unit.</param>
/// <param name="Allowed">Greatest difference allowed, same unit.</param>
/// <param name="Unit">The unit of the three.</param>
/// <param name="Problem">Why it could not be computed; empty when it was.</param>
public sealed record RowResult(KnownRow Row, double Computed, double Expected, double Allowed, string Unit, string Problem)
{
    /// <summary>Computed less expected.</summary>
    public double Difference => Computed - Expected;

    /// <summary>Whether the computed value is inside the tolerance. NaN never is.</summary>
    public bool Inside => Problem.Length == 0 && Math.Abs(Difference) <= Allowed;
}

/// <summary>Row files: known values that formulas are held to.</summary>
public static class RowSheet
{
    private static readonly string[] Columns = ["id", "formula", "inputs", "output", "expected", "tolerance", "source"];

    /// <summary>Reads a row file.</summary>
    /// <exception cref="BadInputException">A column is missing, or the file is not CSV.</exception>
    public static IReadOnlyList<KnownRow> Read(TextReader file, string name)
    {
        var text = file.ReadToEnd();
        if (text.Trim().Length == 0)
        {
            throw new BadInputException($"{name}: the file is empty; wanted the columns {string.Join(", ", Columns)}");
        }

        try
        {
            return Rows(text, name);
        }
        catch (FormatException e)
        {
            throw new BadInputException($"{name}: {e.Message}");
        }
    }

    private static List<KnownRow> Rows(string text, string name)
    {
        using var csv = CsvReader.FromText(text, new CsvReaderOptions
        {
            HasHeader = true,
            TrimWhitespace = true,
            NormalizeHeaderName = h => h.Trim().ToUpperInvariant(),
            FieldCountMismatch = CsvFieldCountHandling.Throw,
            TrackLineNumbers = true,
        });
        csv.ReadHeader();
        var missing = Columns.Where(c => !csv.TryGetFieldIndex(c, out _)).ToList();
        if (missing.Count > 0)
        {
            throw new BadInputException($"{name}: missing the column {string.Join(", ", missing)}; wanted {string.Join(", ", Columns)}");
        }

        var rows = new List<KnownRow>();
        while (csv.Read())
        {
            string Cell(string column) => csv.TryGetFieldIndex(column, out var at) ? csv.GetString(at) : "";
            rows.Add(new KnownRow((int)csv.LineNumber, Cell("id"), Cell("formula"), Cell("inputs"), Cell("output"), Cell("expected"), Cell("tolerance"), Cell("source"), Cell("kind")));
        }

        return rows.Count > 0 ? rows : throw new BadInputException($"{name}: there is no row under the headings");
    }

    /// <summary>Computes a row. A row that cannot be computed says why and is outside.</summary>
    public static RowResult Check(KnownRow row)
    {
        try
        {
            var call = FormulaCall.Run(row.Formula, Inputs(row.Inputs));
            var at = call.OutputIndex(row.Output);
            var output = call.Formula.Outputs[at].Quantity;
            var expected = Amount.Parse($"{row.Id}, expected", row.Expected, output.Dimension, output.Unit);
            return new RowResult(row, expected.Unit.FromSi(call.Results[at]), expected.Unit.FromSi(expected.Si), Allowed(row, expected, output), expected.Unit.Symbol, "");
        }
        catch (BadInputException e)
        {
            return new RowResult(row, double.NaN, double.NaN, double.NaN, "", e.Message);
        }
    }

    /// <summary>Splits "name=amount;name=amount".</summary>
    /// <exception cref="BadInputException">A part has no '='.</exception>
    public static IEnumerable<KeyValuePair<string, string>> Inputs(string inputs) =>
        inputs.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Input);

    /// <summary>Splits "name=amount".</summary>
    /// <exception cref="BadInputException">There is no '='.</exception>
    public static KeyValuePair<string, string> Input(string part)
    {
        var at = part.IndexOf('=', StringComparison.Ordinal);
        return at > 0
            ? new(part[..at].Trim(), part[(at + 1)..].Trim())
            : throw new BadInputException($"given '{part}', wanted name=amount, such as wire=4.2mm");
    }

    private static double Allowed(KnownRow row, Amount expected, QuantityAttribute output)
    {
        var text = row.Tolerance;
        if (text.EndsWith('%') && expected.Unit.Symbol != "%")
        {
            return Math.Abs(expected.Unit.FromSi(expected.Si)) * Amount.Parse($"{row.Id}, tolerance", text[..^1], Dimension.Number, "").Si / 100;
        }

        // A bare tolerance is read in the unit of the expected value.
        var bare = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var amount);
        if (bare)
        {
            return Math.Abs(amount);
        }

        var dimension = output.Dimension == Dimension.Temperature ? Dimension.TemperatureDifference : output.Dimension;
        return Math.Abs(Amount.Parse($"{row.Id}, tolerance", text, dimension, output.Unit).Si / expected.Unit.Factor);
    }
}
