using Gudgeon.Book.Joints;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>A bolt list as a file to order from: CSV or a spreadsheet.</summary>
public static class BoltListFile
{
    private static readonly string[] Headings = ["joint", "head", "thread", "length mm", "quantity", "strength", "mass of one g", "mass of all g", "saved g", "price of one", "cost", "remark"];

    /// <summary>The list as CSV, numbers with decimal points.</summary>
    public static string Csv(BoltList list) => Of(list).Csv();

    /// <summary>The list as a spreadsheet's bytes.</summary>
    public static byte[] Xlsx(BoltList list) => Of(list).Xlsx();

    /// <summary>Writes the list as CSV.</summary>
    /// <exception cref="BadInputException">The file cannot be written.</exception>
    public static void WriteCsv(BoltList list, string file) => Of(list).WriteCsv(file);

    /// <summary>Writes the list as a spreadsheet.</summary>
    /// <exception cref="BadInputException">The file cannot be written.</exception>
    public static void WriteSheet(BoltList list, string file) => Of(list).WriteXlsx(file);

    private static ListFile Of(BoltList list) => new("bolts", Headings, [.. list.Lines.Select(Cells)]);

    private static object?[] Cells(BoltLine l) =>
    [
        l.Key, l.Head, l.Thread, ListFile.Rounded(l.Length * 1e3, 2), l.Quantity, l.Strength,
        ListFile.Rounded(l.Mass * 1e3, 1), ListFile.Rounded(l.MassAll * 1e3, 1), ListFile.Rounded(l.MassSaved * 1e3, 1), l.Price, l.Cost, l.Remark,
    ];
}
