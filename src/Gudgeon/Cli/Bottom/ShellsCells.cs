using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Bottom;

/// <summary>The table of shells as it is written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class ShellsCells(bool imperial)
{
    /// <summary>Headings; those over words end in a tab.</summary>
    public static readonly IReadOnlyList<string> Headings = ["bearing\t", "housing", "journal", "allowed\t", "in housing\t", "in cap\t", "clearance", "grades leave\t", "why\t"];

    /// <summary>The row of a bearing, under the headings.</summary>
    public IReadOnlyList<string> Of(ShellRow row) =>
    [
        row.Bearing, Length(row.Housing, 5), Length(row.Journal, 5), Range(row.Least, row.Greatest), Grade(row.Upper), Grade(row.Lower), Length(row.Clearance, 3), Range(row.Tightest, row.Loosest), row.Why,
    ];

    /// <summary>"2 halves of grade 4 for the mains".</summary>
    public static string ToBuy(ShellsSheet sheet) => string.Join(", ", sheet.Bought.Select(o => $"{Figures.Number(o.Halves)} {(o.Halves == 1 ? "half" : "halves")} of grade {Figures.Number(o.Grade)} for the {o.For}"));

    private static string Grade(double? number) => number is { } n ? $"grade {Figures.Number(n)}" : Cell.Unknown;

    private string Range(double? from, double? to) => from is null || to is null ? Cell.Unknown : $"{Length(from, 3)} to {Length(to, 3)}";

    private string Length(double? m, int digits) => Cell.Of(m is { } si ? Math.Round(si, 7) : null, Dimension.Length, "mm", digits, imperial);
}
