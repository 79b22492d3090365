using System.Globalization;
using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Values;

/// <summary>Rows of amounts, SI, one column for each column of the field that the table gives.</summary>
public sealed class Table : IEquatable<Table>
{
    private readonly IReadOnlyList<Column> _columns;
    private readonly IReadOnlyList<Unit> _units;

    private Table(IReadOnlyList<Column> columns, IReadOnlyList<Unit> units, IReadOnlyList<IReadOnlyList<double>> rows)
    {
        _columns = columns;
        _units = units;
        Rows = rows;
    }

    /// <summary>Rows, SI, in the order of <see cref="Headings"/>.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Rows { get; }

    /// <summary>The columns that it gives, in order.</summary>
    public IReadOnlyList<Column> Columns => _columns;

    /// <summary>"angle °", "lift mm".</summary>
    public IEnumerable<string> Headings => _columns.Select((c, i) => $"{c.Name} {_units[i].Symbol}".Trim());

    /// <summary>Rows in the units of the headings.</summary>
    public IEnumerable<IEnumerable<double>> Shown => Rows.Select(r => r.Select((si, i) => Math.Round(_units[i].FromSi(si), 12)));

    /// <summary>The values of a column, SI; empty when the table leaves it out.</summary>
    public double[] this[string column]
    {
        get
        {
            var at = _columns.TakeWhile(c => c.Name != column).Count();
            return at == _columns.Count ? [] : [.. Rows.Select(r => r[at])];
        }
    }

    /// <summary>Reads headings such as "lift mm" and rows of numbers.</summary>
    /// <exception cref="BadInputException">A heading or a number that the field does not take.</exception>
    public static Table Read(Field field, IReadOnlyList<string> headings, IReadOnlyList<IReadOnlyList<double>> rows)
    {
        var columns = headings.Select(h => Heading(field, h)).ToList();
        if (columns.GroupBy(c => c.Column.Name).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new BadInputException($"{field.Label}: the column '{twice.Key}' is given twice");
        }

        var missing = field.Columns.Where(c => !c.Optional && columns.TrueForAll(k => k.Column != c)).Select(c => c.Name).ToList();
        if (missing.Count > 0)
        {
            throw new BadInputException($"{field.Label}: missing the column {string.Join(", ", missing)}; wanted {string.Join(", ", field.Columns.Select(c => $"'{c.Name} {c.Unit}'".Replace(" '", "'", StringComparison.Ordinal)))}");
        }

        if (rows.Count == 0)
        {
            throw new BadInputException($"{field.Label}: the table has no rows");
        }

        return new Table([.. columns.Select(c => c.Column)], [.. columns.Select(c => c.Unit)], [.. rows.Select((r, i) => Row(field, columns, r, i))]);
    }

    /// <summary>Every number that was read: its row from 1, its column, SI and as it was written. Places at which something was read are left out.</summary>
    public IEnumerable<(int Row, Column Column, double Si, string Text)> Readings =>
        from row in Enumerable.Range(0, Rows.Count)
        from column in Enumerable.Range(0, _columns.Count)
        where !_columns[column].Place
        select (row + 1, _columns[column], Rows[row][column], Text(Rows[row][column], column));

    /// <summary>The same rows with the units of a reader of one system.</summary>
    /// <param name="imperial">Whether in inch units.</param>
    public Table In(bool imperial) => new(_columns, [.. _units.Select((u, i) => Figures.UnitFor(u, _columns[i].Unit, imperial))], Rows);

    /// <summary>The same table with each number made anew.</summary>
    /// <param name="made">Of the row, the column and the number, SI, what stands there instead, SI.</param>
    internal Table With(Func<int, int, double, double> made) => new(_columns, _units, [.. Rows.Select((r, row) => (IReadOnlyList<double>)[.. r.Select((si, column) => made(row, column, si))])]);

    /// <summary>All rows as <see cref="Parse"/> reads them, one to a line: "431 N at 34.5 mm;".</summary>
    public string Written => string.Join(";\n", Rows.Select(r => string.Join(" at ", r.Select(Text))));

    /// <summary>
    /// Reads "431 N at 34.5 mm; 720 N at 25 mm", or single amounts between semicolons; columns that may be left out stand
    /// last, in all rows or in none.
    /// </summary>
    /// <exception cref="BadInputException">It cannot be read so.</exception>
    public static Table Parse(Field field, string text)
    {
        var required = field.Columns.Count(c => !c.Optional);
        var rows = text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(r => r.Split(" at ", StringSplitOptions.TrimEntries)).ToList();
        var columns = field.Columns.OrderBy(c => c.Optional).Take(rows.Count == 0 ? 0 : rows[0].Length).ToList();
        if (columns.Count < required || rows.Exists(r => r.Length != columns.Count))
        {
            var sample = string.Join(" at ", field.Columns.Where(c => !c.Optional).Select(c => $"12.3 {c.Unit}".Trim()));
            throw new BadInputException($"{field.Label}: given '{text}', wanted rows such as '{sample}; {sample}'");
        }

        var amounts = rows.ConvertAll(r => r.Select((cell, i) => Amount.Parse($"{field.Label}, {columns[i].Name}", cell, columns[i].Dimension, columns[i].Unit)).ToList());
        return new Table(columns, [.. amounts[0].Select(a => a.Unit)], [.. amounts.Select(r => (IReadOnlyList<double>)[.. r.Select(a => a.Si)])]);
    }

    /// <summary>"431 N at 34.5 mm; 720 N at 25 mm" for a short table, else how many rows it has.</summary>
    public override string ToString() => Rows.Count > 4
        ? $"{Rows.Count} rows of {string.Join(", ", _columns.Select(c => c.Name))}"
        : string.Join("; ", Rows.Select(r => string.Join(" at ", r.Select((si, i) => $"{Figures.Number(_units[i].FromSi(si))} {_units[i].Symbol}".Trim()))));

    public bool Equals(Table? other) => other is not null && Headings.SequenceEqual(other.Headings) && Rows.Count == other.Rows.Count && Rows.Zip(other.Rows).All(p => p.First.SequenceEqual(p.Second));

    public override bool Equals(object? obj) => Equals(obj as Table);

    public override int GetHashCode() => HashCode.Combine(Rows.Count, Rows.Count > 0 ? Rows[^1][^1] : 0);

    /// <summary>A number as it was written, with the unit of its column.</summary>
    private string Text(double si, int column) => $"{Math.Round(_units[column].FromSi(si), 12).ToString("0.############", CultureInfo.InvariantCulture)} {_units[column].Symbol}".Trim();

    private static (Column Column, Unit Unit) Heading(Field field, string heading)
    {
        var space = heading.Trim().IndexOf(' ', StringComparison.Ordinal);
        var name = space < 0 ? heading.Trim() : heading.Trim()[..space];
        var column = field.Columns.FirstOrDefault(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? throw new BadInputException($"{field.Label}: there is no column '{name}'; wanted {string.Join(", ", field.Columns.Select(c => c.Name))}");
        var symbol = space < 0 ? column.Unit : heading.Trim()[(space + 1)..].Trim();
        return (column, Amount.Parse($"{field.Label}, column {name}", "1 " + symbol, column.Dimension, column.Unit).Unit with { Symbol = symbol });
    }

    private static double[] Row(Field field, List<(Column Column, Unit Unit)> columns, IReadOnlyList<double> cells, int at)
    {
        if (cells.Count != columns.Count)
        {
            throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"{field.Label}: row {at + 1} has {cells.Count} numbers, wanted {columns.Count}"));
        }

        return [.. cells.Select((c, i) => double.IsFinite(c) ? columns[i].Unit.ToSi(c) : throw new BadInputException($"{field.Label}: row {at + 1} holds {c}, wanted finite numbers"))];
    }
}
