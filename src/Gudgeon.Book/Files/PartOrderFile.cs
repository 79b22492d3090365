using Gudgeon.Book.Parts;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>The parts to be ordered as a file: CSV or a spreadsheet.</summary>
public static class PartOrderFile
{
    private static readonly string[] Headings = ["supplier", "part", "order number", "quantity", "price of one", "cost", "lead time d", "order by", "wanted on", "late d", "key"];

    /// <summary>The list as CSV, numbers with decimal points.</summary>
    public static string Csv(PartSheet sheet) => Of(sheet).Csv();

    /// <summary>The list as a spreadsheet's bytes.</summary>
    public static byte[] Xlsx(PartSheet sheet) => Of(sheet).Xlsx();

    /// <summary>Writes the list in the form that the file's name asks for.</summary>
    /// <exception cref="BadInputException">Another ending than .csv or .xlsx, or the file cannot be written.</exception>
    public static void Write(PartSheet sheet, string file)
    {
        Action<string> write = Path.GetExtension(file).ToUpperInvariant() switch
        {
            ".CSV" => Of(sheet).WriteCsv,
            ".XLSX" => Of(sheet).WriteXlsx,
            _ => throw new BadInputException($"order list: given the file '{file}', wanted a name that ends in .csv or .xlsx"),
        };
        write(file);
    }

    private static ListFile Of(PartSheet sheet) => new("orders", Headings, [.. sheet.Orders.SelectMany(s => s.Orders).Select(Cells)]);

    private static object?[] Cells(PartOrder o) =>
    [
        o.Part.Supplier, o.Part.Name, o.Part.OrderNumber, o.Part.Quantity, ListFile.Rounded(o.Part.Price, 2), ListFile.Rounded(o.Part.Cost, 2), ListFile.Rounded(o.Part.LeadTime / 86400, 1),
        Day(o.By), Day(o.WantedOn), o.LateDays, o.Part.Key,
    ];

    private static string Day(DateOnly? day) => day is { } known ? Days.Written(known) : "";
}
