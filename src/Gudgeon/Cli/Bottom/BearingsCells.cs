using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Bottom;

/// <summary>The bearings as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class BearingsCells(bool imperial)
{
    /// <summary>Headings of a bearing as it is built; those over words end in a tab.</summary>
    public static readonly IReadOnlyList<string> FitHeadings = ["bearing\t", "housing", "shell", "journal", "clearance", "least station", "greatest station", "running"];

    /// <summary>Headings of a bearing as it runs.</summary>
    public static readonly IReadOnlyList<string> RunHeadings = ["bearing\t", "greatest load", "thinnest film", "at", "film pressure", "at", "oil leaves at", "oil flow", "power"];

    /// <summary>Headings of the speeds.</summary>
    public static IReadOnlyList<string> SpeedHeadings(BearingsSheet sheet) => ["crank speed", .. sheet.Courses.Select(c => $"{c.Bearing} film"), "through bearings", "elsewhere", "pump gives", "films take"];

    /// <summary>The row of a bearing as it is built.</summary>
    public IReadOnlyList<string> Fit(BearingRow row) => [row.Bearing, Length(row.Housing, 5), Length(row.Shell, 4), Length(row.Journal, 5), Clearance(row.Clearance), Clearance(row.Tightest), Clearance(row.Loosest), Clearance(row.Hot)];

    /// <summary>The row of a bearing as it runs.</summary>
    public IReadOnlyList<string> Run(BearingRow row) =>
    [
        row.Bearing,
        Cell.Of(row.Load, Dimension.Force, "kN", 3, imperial),
        Film(row.Film),
        Degrees(row.FilmAt),
        Cell.Of(row.Pressure, Dimension.Pressure, "MPa", 3, imperial),
        Degrees(row.PressureAt),
        Cell.Of(row.Temperature, Dimension.Temperature, "°C", 4, imperial),
        Flow(row.Flow),
        Cell.Of(row.Loss, Dimension.Power, "kW", 3, imperial),
    ];

    /// <summary>The row of a speed.</summary>
    public IReadOnlyList<string> At(BearingsSheet sheet, int i) =>
    [
        Figures.Rpm(sheet.Speeds[i].Speed),
        .. sheet.Speeds[i].Film.Select(f => f > 0 ? Film(f) : "none left"),
        Flow(sheet.Demands[i].Bearings), Flow(sheet.Demands[i].Other), Flow(sheet.Demands[i].Pump), Cell.Of(sheet.Demands[i].Loss, Dimension.Power, "kW", 3, imperial),
    ];

    private string Clearance(double? m) => Cell.Of(m is { } si ? Math.Round(si, 7) : null, Dimension.Length, "mm", 3, imperial);

    private string Length(double? m, int digits) => Cell.Of(m is { } si ? Math.Round(si, 7) : null, Dimension.Length, "mm", digits, imperial);

    private string Film(double? m) => Cell.Of(m, Dimension.Length, "µm", 3, imperial);

    private string Flow(double? flow) => Cell.Of(flow, Dimension.VolumeFlow, "L/min", 3, imperial);

    private static string Degrees(double? degrees) => degrees is { } d ? Figures.Number(d, 3) + "°" : Cell.Unknown;
}
