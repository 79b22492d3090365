using System.Globalization;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Values;
using MiniExcelLibs;

namespace Gudgeon.Book.Files;

/// <summary>A bolt list as a file to order from: CSV or a spreadsheet.</summary>
public static class BoltListFile
{
    private static readonly string[] Headings = ["joint", "head", "thread", "length mm", "quantity", "strength", "mass of one g", "mass of all g", "saved g", "price of one", "cost", "remark"];

    /// <summary>The list as CSV, numbers with decimal points.</summary>
    public static string Csv(BoltList list) => string.Concat(new[] { Headings }.Concat(list.Lines.Select(l => Cells(l).Select(Text).ToArray())).Select(row => string.Join(',', row.Select(Quoted)) + "\r\n"));

    /// <summary>Writes the list as CSV.</summary>
    /// <exception cref="BadInputException">The file cannot be written.</exception>
    public static void WriteCsv(BoltList list, string file) => Guarded(file, () => File.WriteAllText(file, Csv(list)));

    /// <summary>Writes the list as a spreadsheet.</summary>
    /// <exception cref="BadInputException">The file cannot be written.</exception>
    public static void WriteSheet(BoltList list, string file) => Guarded(file, () => MiniExcel.SaveAs(file, Sheet(list), sheetName: "bolts", excelType: ExcelType.XLSX, overwriteFile: true));

    /// <summary>The list as a spreadsheet's bytes.</summary>
    public static byte[] Xlsx(BoltList list)
    {
        using var stream = new MemoryStream();
        stream.SaveAs(Sheet(list), sheetName: "bolts");
        return stream.ToArray();
    }

    private static IEnumerable<IDictionary<string, object?>> Sheet(BoltList list) => list.Lines.Select(l => (IDictionary<string, object?>)Headings.Zip(Cells(l)).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal));

    private static object?[] Cells(BoltLine l) => [l.Key, l.Head, l.Thread, Rounded(l.Length * 1e3, 2), l.Quantity, l.Strength, Rounded(l.Mass * 1e3, 1), Rounded(l.MassAll * 1e3, 1), Rounded(l.MassSaved * 1e3, 1), l.Price, l.Cost, l.Remark];

    private static double? Rounded(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;

    private static string Text(object? cell) => Convert.ToString(cell, CultureInfo.InvariantCulture) ?? "";

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\n") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static void Guarded(string file, Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"the list '{file}' cannot be written: {e.Message}");
        }
    }
}
