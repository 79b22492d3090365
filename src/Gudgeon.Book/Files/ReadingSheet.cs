using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>One reading of a sheet.</summary>
/// <param name="At">"readings.csv, line 4", for the sentences.</param>
/// <param name="Address">What was read.</param>
/// <param name="Text">The reading as written.</param>
/// <param name="With">The instrument.</param>
/// <param name="By">Who read it.</param>
/// <param name="On">When.</param>
/// <param name="Note">Anything else worth knowing.</param>
/// <param name="Id">A GUID made where it was read; empty for none.</param>
/// <param name="Degrees">At which temperatures it was read; null when not said.</param>
public sealed record SheetReading(string At, FieldAddress Address, string Text, string With, string By, string On, string Note, string Id, ReadAt? Degrees);

/// <summary>
/// Readings of several fields that come from a CSV file, or pasted from a spreadsheet: one to a line, under the headings field,
/// value, unit, with, by, on, note, id, part at, tool at, made of. Field and value must be there; what a line leaves out of the
/// story is as whoever brings the sheet says.
/// </summary>
public static class ReadingSheet
{
    private static readonly (string Name, string[] Also)[] Headings =
    [
        ("field", ["path"]), ("value", ["reading"]), ("unit", []), ("with", ["instrument"]), ("by", ["read by"]), ("on", ["date"]), ("note", []), ("id", []), ("part at", []), ("tool at", []), ("made of", []),
    ];

    /// <summary>Reads a file on the disk.</summary>
    /// <exception cref="BadInputException">Not there, or not such a sheet.</exception>
    public static IReadOnlyList<SheetReading> Open(string file, string with, string by, string on) => Read(AtomicFile.Read(file), Path.GetFileName(file), with, by, on);

    /// <summary>Reads a sheet.</summary>
    /// <param name="text">What it holds.</param>
    /// <param name="name">Its name, for the sentences.</param>
    /// <param name="with">The instrument where a line names none.</param>
    /// <param name="by">The person where a line names none.</param>
    /// <param name="on">The time where a line says none.</param>
    /// <exception cref="BadInputException">Not such a sheet: the sentence names the line.</exception>
    public static IReadOnlyList<SheetReading> Read(string text, string name, string with, string by, string on)
    {
        var sheet = CsvSheet.Read(text, name);
        var places = Places(sheet);
        return [.. sheet.Rows.Select(row => Row(sheet, row, places, with, by, on))];
    }

    private static Dictionary<string, int> Places(CsvSheet sheet)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (heading, at) in sheet.Headings.Cells.Select((h, i) => (h, i)))
        {
            var known = Array.Find(Headings, h => h.Also.Prepend(h.Name).Contains(heading, StringComparer.OrdinalIgnoreCase)).Name
                ?? throw sheet.Bad(sheet.Headings, $"there is no column '{heading}'; wanted {string.Join(", ", Headings.Select(h => h.Name))}");
            if (!places.TryAdd(known, at))
            {
                throw sheet.Bad(sheet.Headings, $"the column '{known}' is given twice");
            }
        }

        return places.ContainsKey("field") && places.ContainsKey("value") ? places : throw sheet.Bad(sheet.Headings, "wanted at least the columns field and value");
    }

    private static SheetReading Row(CsvSheet sheet, CsvLine row, Dictionary<string, int> places, string with, string by, string on)
    {
        string Cell(string heading, string otherwise = "") => places.TryGetValue(heading, out var at) && at < row.Cells.Count && row.Cells[at].Length > 0 ? row.Cells[at] : otherwise;
        string Wanted(string heading, string otherwise, string what) => Cell(heading, otherwise) is { Length: > 0 } found ? found : throw sheet.Bad(row, $"given no {heading}, wanted {what}");
        if (row.Cells.Count > sheet.Headings.Cells.Count)
        {
            throw sheet.Bad(row, string.Create(CultureInfo.InvariantCulture, $"the line has {row.Cells.Count} cells under {sheet.Headings.Cells.Count} headings; wanted one cell for each heading, and quotes about words with a comma"));
        }

        try
        {
            var address = FieldCatalogue.Address(Wanted("field", "", "the path of a field such as cylinder[1].bore"));
            var text = $"{Wanted("value", "", $"what {address.Path} reads")} {Cell("unit")}".Trim();
            text = sheet.DecimalComma ? text.Replace(',', '.') : text;
            KnownValue.Read(address.Field, text);
            return new SheetReading(
                sheet.At(row.Line),
                address,
                text,
                Wanted("with", with, "the instrument"),
                Wanted("by", by, "the person"),
                Cell("on", on) is { Length: > 0 } when ? Days.Said($"{address.Path}, on", when) : "",
                Cell("note"),
                Cell("id") is { Length: > 0 } id ? Measurement.ReadId(id) : "",
                ReadAt.Said(address.Path, Cell("part at"), Cell("tool at"), Cell("made of")));
        }
        catch (BadInputException e) when (!e.Message.StartsWith(sheet.Name, StringComparison.Ordinal))
        {
            throw sheet.Bad(row, e.Message);
        }
    }
}
