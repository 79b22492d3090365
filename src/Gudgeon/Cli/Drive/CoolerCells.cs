using Gudgeon.Book.Drive;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Drive;

/// <summary>The charge cooler over the speeds as it is written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class CoolerCells(bool imperial)
{
    /// <summary>Headings of a row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["crank speed", "air", "from the blower", "effectiveness", "behind the cooler", "heat"];

    /// <summary>The row of an engine speed.</summary>
    public IReadOnlyList<string> Of(CoolerRow row) =>
    [
        Cell.Of(row.Speed, Dimension.RotationalSpeed, "rpm", 4, imperial),
        Cell.Of(row.Flow, Dimension.MassFlow, "g/s", 3, imperial),
        Cell.Of(row.Delivery, Dimension.Temperature, "°C", 3, imperial),
        Cell.Of(row.Effectiveness, Dimension.Number, "", 3, imperial),
        Cell.Of(row.Outlet, Dimension.Temperature, "°C", 3, imperial),
        Cell.Of(row.Heat, Dimension.Power, "kW", 3, imperial),
    ];
}
