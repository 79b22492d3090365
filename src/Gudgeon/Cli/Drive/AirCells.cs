using Gudgeon.Book.Drive;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Drive;

/// <summary>The way of the air over the speeds as it is written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class AirCells(bool imperial)
{
    /// <summary>Headings of a row.</summary>
    public static IReadOnlyList<string> Headings(AirSheet sheet) =>
        ["crank speed", "impeller", "of its greatest", "air", "at map's air", "pressure ratio", "surge margin at its speed", "at its ratio", "choke margin", "filter takes", .. sheet.Ducts.Select(d => $"in {d}")];

    /// <summary>The row of an engine speed.</summary>
    public IReadOnlyList<string> Of(AirRow row) =>
    [
        Cell.Of(row.Speed, Dimension.RotationalSpeed, "rpm", 4, imperial),
        Cell.Of(row.Rotor, Dimension.RotationalSpeed, "rpm", 5, imperial),
        Cell.Of(row.SpeedShare, Dimension.Number, "%", 3, imperial),
        Cell.Of(row.Flow, Dimension.MassFlow, "g/s", 4, imperial),
        Cell.Of(row.Corrected, Dimension.MassFlow, "g/s", 4, imperial),
        Cell.Of(row.Ratio, Dimension.Number, "", 4, imperial),
        Cell.Of(row.SurgeMargin, Dimension.Number, "%", 3, imperial),
        Cell.Of(row.SurgeMarginAtRatio, Dimension.Number, "%", 3, imperial),
        Cell.Of(row.ChokeMargin, Dimension.Number, "%", 3, imperial),
        Cell.Of(row.FilterDrop, Dimension.Pressure, "kPa", 3, imperial),
        .. row.Ducts.Select(d => Cell.Of(d, Dimension.Speed, "m/s", 3, imperial)),
    ];
}
