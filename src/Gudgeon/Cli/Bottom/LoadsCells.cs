using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Bottom;

/// <summary>The loads of the bottom end as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class LoadsCells(bool imperial)
{
    /// <summary>Headings of a speed's row.</summary>
    public static IReadOnlyList<string> Headings(LoadsSheet sheet) => ["crank speed", "rod pull", "rod push", "gudgeon pin", "side thrust", "crank pin", .. sheet.MainNames, "mean torque", "peak torque"];

    /// <summary>The row of a speed.</summary>
    public IReadOnlyList<string> Of(LoadsRow row) =>
    [
        Figures.Rpm(row.Speed),
        Force(row.RodTension), Force(row.RodCompression), Force(row.GudgeonPin), Force(row.SideThrust), Force(row.BigEnd),
        .. row.Mains.Select(Force),
        Cell.Of(row.Torque, Dimension.Torque, "N·m", 4, imperial), Cell.Of(row.PeakTorque, Dimension.Torque, "N·m", 4, imperial),
    ];

    private string Force(double newtons) => Cell.Of(newtons, Dimension.Force, "kN", 4, imperial);
}
