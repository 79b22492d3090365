using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Cli.Head;

/// <summary>The figures of the seats' sheet as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class SeatCells(bool imperial)
{
    /// <summary>Headings of a valve's row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["seat width", "mean dia", "contact", "seat pressure", "stem", "guide", "cold", "hot", "stem tension"];

    /// <summary>The row of a valve.</summary>
    public IReadOnlyList<string> Of(SeatRow row) =>
    [
        Length(row.Width, 3), Length(row.MeanDiameter, 4), Print(row.Area, Dimension.Area, "mm²", 3), Print(row.SeatPressure, Dimension.Pressure, "MPa", 3),
        Length(row.Stem, 5), Length(row.Bore, 5), Thin(row.Cold), Thin(row.Hot), Print(row.StemTension, Dimension.Pressure, "MPa", 3),
    ];

    /// <summary>At which cylinder pressure the seat pressure is counted.</summary>
    public static string Pressure(SeatSheet sheet, bool imperial) => sheet.GreatestPressure is { } pressure
        ? $"Seat pressure at the greatest cylinder pressure of the run, {Figures.Print(pressure, Dimension.Pressure, "bar", 3, imperial)} above the air outside."
        : "Seat pressure is not known: it takes an engine run.";

    private string Length(double? si, int digits) => Print(si, Dimension.Length, "mm", digits);

    private string Thin(double? si) => Print(si is { } m ? Math.Round(m, 7) : null, Dimension.Length, "mm", 3);

    private string Print(double? si, Dimension dimension, string unit, int digits) => si is { } value ? Figures.Print(value, dimension, unit, digits, imperial) : SpringCells.Unknown;
}
