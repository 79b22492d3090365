using Gudgeon.Book.Checks.Drive;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Drive;

/// <summary>Hits as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class HitCells(bool imperial)
{
    /// <summary>Headings of a row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["hit\t", "crank speed by", "in", "stiff drive", "factor", "with the steady", "times steady"];

    /// <summary>The row of a hit.</summary>
    public IReadOnlyList<string> Of(DriveHit hit) =>
    [
        hit.Name,
        Cell.Of(hit.Change, Dimension.RotationalSpeed, "rpm", 4, imperial),
        Cell.Of(hit.Time, Dimension.Time, "ms", 3, imperial),
        Cell.Of(hit.Stiff, Dimension.Torque, "N·m", 3, imperial),
        Cell.Of(hit.Factor, Dimension.Number, "", 3, imperial),
        Cell.Of(hit.Torque, Dimension.Torque, "N·m", 3, imperial),
        Cell.Of(hit.Times, Dimension.Number, "", 3, imperial),
    ];
}
