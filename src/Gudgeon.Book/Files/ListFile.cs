using System.Globalization;
using Gudgeon.Book.Values;
using MiniExcelLibs;

namespace Gudgeon.Book.Files;

/// <summary>A list to order from as a file: CSV, or a spreadsheet with one sheet.</summary>
/// <param name="Title">Name of the sheet.</param>
/// <param name="Headings">Headings, with their units.</param>
/// <param name="Rows">Cells: text and numbers, as many in each row as there are headings.</param>
internal sealed record ListFile(string Title, IReadOnlyList<string> Headings, IReadOnlyList<object?[]> Rows)
{
    /// <summary>The list as CSV, numbers with decimal points.</summary>
    public string Csv() => string.Concat(Rows.Prepend([.. Headings]).Select(row => string.Join(',', row.Select(Text).Select(Quoted)) + "\r\n"));

    /// <summary>The list as a spreadsheet's bytes.</summary>
    public byte[] Xlsx()
    {
        using var stream = new MemoryStream();
        stream.SaveAs(Rows.Select(r => (IDictionary<string, object?>)Headings.Zip(r).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal)), sheetName: Title);
        return stream.ToArray();
    }

    /// <summary>Writes it as CSV.</summary>
    /// <exception cref="BadInputException">The file cannot be written.</exception>
    public void WriteCsv(string file) => Guarded(file, () => File.WriteAllText(file, Csv()));

    /// <summary>Writes it as a spreadsheet.</summary>
    /// <exception cref="BadInputException">The file cannot be written.</exception>
    public void WriteXlsx(string file) => Guarded(file, () => File.WriteAllBytes(file, Xlsx()));

    /// <summary>A number for a cell; empty when it is not known.</summary>
    public static double? Rounded(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;

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
