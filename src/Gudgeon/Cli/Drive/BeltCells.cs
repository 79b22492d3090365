using Gudgeon.Book.Drive;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Drive;

/// <summary>The belt over the speeds as it is written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class BeltCells(bool imperial)
{
    /// <summary>Headings of a row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["crank speed", "rotor", "power", "torque at the crank", "pull", "belt carries", "load on the pulley"];

    /// <summary>The row of an engine speed.</summary>
    public IReadOnlyList<string> Of(BeltRow row) =>
    [
        Cell.Of(row.Speed, Dimension.RotationalSpeed, "rpm", 4, imperial),
        Cell.Of(row.Rotor, Dimension.RotationalSpeed, "rpm", 5, imperial),
        Cell.Of(row.Power, Dimension.Power, "kW", 3, imperial),
        Cell.Of(row.Torque, Dimension.Torque, "N·m", 3, imperial),
        Cell.Of(row.Pull, Dimension.Force, "N", 3, imperial),
        Cell.Of(row.Carries, Dimension.Force, "N", 3, imperial),
        Cell.Of(row.HubLoad, Dimension.Force, "N", 3, imperial),
    ];
}
