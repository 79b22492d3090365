using System.Globalization;
using System.Text;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>
/// A table that comes from a CSV file, or from one pasted: headings as in the columns of the field ("lift mm,flow L/s"),
/// rows of numbers, remarks behind #. Every refusal says file, field, line, what was given and what was wanted.
/// </summary>
public sealed class TableFile
{
    private static readonly string[] ShaftWords = [.. Enum.GetValues<Shaft>().Where(s => s != Shaft.None).Select(Word)];

    private TableFile(string name, FieldAddress address, Table table, IReadOnlyList<KeyValuePair<Field, string>> conditions) =>
        (Name, Address, Table, Conditions) = (name, address, table, conditions);

    /// <summary>Name of the file.</summary>
    public string Name { get; }

    /// <summary>What the table is for.</summary>
    public FieldAddress Address { get; }

    /// <summary>The table.</summary>
    public Table Table { get; }

    /// <summary>What the remarks say of the conditions on the bench: values of other fields of the same instance.</summary>
    public IReadOnlyList<KeyValuePair<Field, string>> Conditions { get; }

    /// <summary>Whether a text is CSV rather than rows such as "431 N at 34.5 mm; 720 N at 25 mm": it begins with a heading or a remark.</summary>
    public static bool Is(string text) => text.TrimStart('\uFEFF', ' ', '\t', '\r', '\n') is [var first, ..] && (first is '#' or '"' || char.IsLetter(first));

    /// <summary>Reads a file on the disk: UTF-8, or else the one-byte text of older programs.</summary>
    /// <exception cref="BadInputException">Not there, or not a table for this field.</exception>
    public static TableFile Open(string path, string file)
    {
        var bytes = AtomicFile.ReadBytes(file);
        try
        {
            return Read(path, new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes), Path.GetFileName(file));
        }
        catch (DecoderFallbackException)
        {
            return Read(path, Encoding.Latin1.GetString(bytes), Path.GetFileName(file));
        }
    }

    /// <summary>Reads a table.</summary>
    /// <param name="path">"valve[inlet].benchTable".</param>
    /// <param name="text">What the file holds.</param>
    /// <param name="name">Name of the file, for the sentences.</param>
    /// <exception cref="BadInputException">Not a table for this field.</exception>
    public static TableFile Read(string path, string text, string name)
    {
        var address = FieldCatalogue.Address(path);
        var field = address.Field;
        if (field.Kind != FieldKind.Table)
        {
            throw new BadInputException($"{address.Path}: takes one value, not the table of a file");
        }

        var sheet = CsvSheet.Read(text, $"{name}, {address.Path}");
        var bench = field == Valve.BenchTable ? BenchHead.Of(sheet) : null;
        var (plain, factors) = OneShaft(field, bench?.Sheet ?? sheet);
        var rows = plain.Rows.Select(r => Row(field, plain, r, factors)).ToList();
        var table = InOrder(field, plain, rows);
        TableRules.Verify(field, table, row => row is { } at ? plain.At(plain.Rows[at].Line) : plain.Name);
        return new TableFile(name, address, bench?.Brought(table) ?? table, bench?.Conditions ?? []);
    }

    /// <summary>Refuses bench readings without a test pressure, in the file or in the book.</summary>
    /// <param name="book">The book into which they are to come.</param>
    /// <param name="change">The change; null for the baseline or a reading.</param>
    /// <exception cref="BadInputException">Neither says it.</exception>
    internal void Verify(BuildBook book, string? change)
    {
        var on = change is null ? book.On : book.On.Append(change).ToHashSet(StringComparer.Ordinal);
        var pressure = Address with { Field = Valve.BenchPressure };
        if (Address.Field == Valve.BenchTable && !Conditions.Any(c => c.Key == Valve.BenchPressure) && new Snapshot(book, on).Find(pressure) is null)
        {
            throw new BadInputException($"{Name}, {Address.Path}: the test pressure of the bench is not said; wanted a line '# test pressure: 28 inH2O' above the headings, or the field {pressure.Path}");
        }
    }

    /// <summary>Headings as the field has them, and by what the numbers of each column are multiplied to be on the field's shaft.</summary>
    private static (CsvSheet Sheet, double[] Factors) OneShaft(Field field, CsvSheet sheet)
    {
        var shafts = sheet.Headings.Cells.Select(ShaftIn).ToList();
        if (shafts.Contains(Shaft.Cam) && shafts.Contains(Shaft.Crank))
        {
            throw sheet.Bad(sheet.Headings, "mixed cam and crank degrees: both stand in the headings; wanted one of them");
        }

        var own = field.Columns.FirstOrDefault(c => c.Of != Shaft.None);
        if (own is null)
        {
            return (sheet, [.. shafts.Select(_ => 1.0)]);
        }

        var given = shafts.Find(s => s != Shaft.None);
        Unmixed(sheet, given == Shaft.None ? own.Of : given);
        var headings = sheet.Headings.Cells.Select((h, at) => shafts[at] == Shaft.None ? h : Plain(own.Name, h));
        return (sheet with { Headings = sheet.Headings with { Cells = [.. headings] } }, [.. shafts.Select(s => s == own.Of || s == Shaft.None ? 1.0 : s == Shaft.Cam ? 2.0 : 0.5)]);
    }

    /// <summary>Refuses rows that are marked as degrees of the other shaft.</summary>
    private static void Unmixed(CsvSheet sheet, Shaft shaft)
    {
        foreach (var row in sheet.Rows)
        {
            if (row.Cells.FirstOrDefault(c => ShaftIn(c) is not Shaft.None and var marked && marked != shaft) is { } cell)
            {
                throw sheet.Bad(row, $"mixed cam and crank degrees: given '{cell}' in a table of {Word(shaft)} degrees; wanted one of them throughout");
            }
        }
    }

    private static Shaft ShaftIn(string words) => Enum.GetValues<Shaft>().FirstOrDefault(s => s != Shaft.None && words.Split(' ', '°').Contains(Word(s), StringComparer.OrdinalIgnoreCase));

    private static string Word(Shaft shaft) => EnumWords.Of(shaft.ToString());

    /// <summary>"angle °" for "cam °" or "angle cam °".</summary>
    private static string Plain(string name, string heading) => string.Join(' ', heading.Split(' ').Where(w => !ShaftWords.Contains(w, StringComparer.OrdinalIgnoreCase) && w != name).Prepend(name));

    private static double[] Row(Field field, CsvSheet sheet, CsvLine row, double[] factors) => row.Cells.Count == factors.Length
        ? [.. factors.Select((factor, at) => factor * sheet.Number(row, at))]
        : throw sheet.Bad(row, string.Create(CultureInfo.InvariantCulture, $"the row has {row.Cells.Count} {(row.Cells.Count == 1 ? "number" : "numbers")} of the {field.Label.ToLowerInvariant()}, wanted {factors.Length}"));

    /// <summary>The table with its columns in the order of the field's.</summary>
    private static Table InOrder(Field field, CsvSheet sheet, List<double[]> rows)
    {
        int Place(string heading) => field.Columns.Select((c, i) => (c, i)).FirstOrDefault(p => heading.StartsWith(p.c.Name, StringComparison.OrdinalIgnoreCase), (null!, int.MaxValue)).i;
        var headings = sheet.Headings.Cells;
        var order = Enumerable.Range(0, headings.Count).OrderBy(at => Place(headings[at])).ToList();
        try
        {
            return Table.Read(field, [.. order.Select(at => headings[at])], [.. rows.Select(r => (IReadOnlyList<double>)[.. order.Select(at => r[at])])]);
        }
        catch (BadInputException e)
        {
            throw sheet.Bad(sheet.Headings, e.Message);
        }
    }
}
