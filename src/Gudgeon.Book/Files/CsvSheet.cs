using System.Globalization;
using CsvHelper;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Files;

/// <summary>One line of a CSV file taken apart.</summary>
/// <param name="Line">Its line in the file, from 1.</param>
/// <param name="Cells">Its cells, trimmed.</param>
internal sealed record CsvLine(int Line, IReadOnlyList<string> Cells);

/// <summary>
/// A CSV file taken apart: headings, rows and remarks, each with its line. Cells stand between commas, semicolons or tabs;
/// between semicolons a number may have a decimal comma.
/// </summary>
/// <param name="Name">Name of the file and what it is for, for the sentences.</param>
/// <param name="Headings">The first line that is no remark.</param>
/// <param name="Rows">The lines below it.</param>
/// <param name="Remarks">Lines that begin with #, without it.</param>
/// <param name="DecimalComma">Whether a number may have a decimal comma.</param>
internal sealed record CsvSheet(string Name, CsvLine Headings, IReadOnlyList<CsvLine> Rows, IReadOnlyList<(int Line, string Words)> Remarks, bool DecimalComma)
{
    /// <summary>Takes a file apart.</summary>
    /// <param name="text">What the file holds.</param>
    /// <param name="name">Name of the file and what it is for, for the sentences.</param>
    /// <exception cref="BadInputException">Nothing is in it, or it is not CSV.</exception>
    public static CsvSheet Read(string text, string name)
    {
        var lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        var remarks = lines.Select((words, i) => (Line: i + 1, Words: words.Trim())).Where(l => l.Words.StartsWith('#')).Select(l => (l.Line, l.Words.TrimStart('#').Trim())).ToList();
        var headings = Array.Find(lines, l => l.Trim() is { Length: > 0 } words && words[0] != '#')
            ?? throw new BadInputException($"{name}: the file is empty; wanted headings and rows of numbers");
        var separator = headings.Contains('\t', StringComparison.Ordinal) ? '\t' : headings.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        var records = Records(string.Join('\n', lines.Select(l => l.TrimStart(' ').StartsWith('#') ? "#" : l)), separator, name);
        return records.Count > 1
            ? new CsvSheet(name, records[0] with { Cells = [.. records[0].Cells.Select(Unbracketed)] }, records[1..], remarks, separator == ';')
            : throw new BadInputException($"{name}: there is no row under the headings");
    }

    /// <summary>The same sheet without one of its columns.</summary>
    public CsvSheet Without(int column)
    {
        CsvLine Less(CsvLine line) => line with { Cells = [.. line.Cells.Where((_, at) => at != column)] };
        return this with { Headings = Less(Headings), Rows = [.. Rows.Select(Less)] };
    }

    /// <summary>Reads a cell as a number.</summary>
    /// <exception cref="BadInputException">It is none, or not finite.</exception>
    public double Number(CsvLine row, int column)
    {
        var cell = row.Cells[column];
        var digits = (DecimalComma ? cell.Replace(',', '.') : cell).Replace('−', '-');
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : throw Bad(row, $"given {(cell.Length == 0 ? "nothing" : $"'{cell}'")} under '{Headings.Cells[column]}', wanted a finite number");
    }

    /// <summary>Error at a line.</summary>
    public BadInputException Bad(CsvLine line, string reason) => Bad(line.Line, reason);

    /// <inheritdoc cref="Bad(CsvLine, string)"/>
    public BadInputException Bad(int line, string reason) => new($"{At(line)}: {reason}");

    /// <summary>"bench.csv, valve[inlet].benchTable, line 4".</summary>
    public string At(int line) => string.Create(CultureInfo.InvariantCulture, $"{Name}, line {line}");

    /// <summary>"lift mm" for "lift (mm)" or "lift [mm]", as spreadsheets head their columns.</summary>
    private static string Unbracketed(string heading) => heading.TrimEnd(')', ']').Replace(" (", " ", StringComparison.Ordinal).Replace(" [", " ", StringComparison.Ordinal);

    /// <summary>Every line that is neither empty nor a remark; empty cells at the end of all of them are left out.</summary>
    private static List<CsvLine> Records(string text, char separator, string name)
    {
        var records = new List<CsvLine>();
        try
        {
            using var csv = CsvReader.FromText(text, new CsvReaderOptions { Separator = separator, HasHeader = false, CommentPrefix = '#', TrimWhitespace = true, TrackLineNumbers = true });
            while (csv.Read())
            {
                var cells = Enumerable.Range(0, csv.FieldCount).Select(csv.GetString).ToList();
                if (cells.Exists(c => c.Length > 0))
                {
                    records.Add(new CsvLine((int)csv.LineNumber, cells));
                }
            }
        }
        catch (FormatException e)
        {
            throw new BadInputException($"{name}: {e.Message}");
        }

        var width = records.Count == 0 ? 0 : records[0].Cells.Count - records[0].Cells.Reverse().TakeWhile(c => c.Length == 0).Count();
        return records.ConvertAll(r => r with { Cells = [.. r.Cells.Where((c, at) => at < width || c.Length > 0)] });
    }
}
