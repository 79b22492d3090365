using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Bottom;

/// <summary>The torsion sheet as it is written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class TorsionCells(bool imperial)
{
    /// <summary>Most critical speeds that are listed.</summary>
    public const int Most = 8;

    /// <summary>Headings of a rotor's row.</summary>
    public static readonly IReadOnlyList<string> RotorHeadings = ["rotor", "inertia", "joint stiffness", "loss factor"];

    /// <summary>Headings of a joint's row.</summary>
    public static readonly IReadOnlyList<string> JointHeadings = ["joint", "vibratory torque", "at", "most of it", "were it stiff", "stress", "allowed"];

    /// <summary>Headings of a critical speed's row.</summary>
    public static readonly IReadOnlyList<string> CriticalHeadings = ["critical speed", "order", "frequency", "joint", "torque of the order"];

    /// <summary>Headings of a natural frequency's row.</summary>
    public static IReadOnlyList<string> ShapeHeadings(TorsionSheet sheet) => ["mode", "now", .. sheet.OtherIs.Length > 0 ? [sheet.OtherIs] : Array.Empty<string>(), .. sheet.Build!.Line.Rotors.Select(r => r.Name)];

    public IEnumerable<IReadOnlyList<string>> Rotors(TorsionSheet sheet) => sheet.Build!.Line.Rotors.Select((r, i) => (IReadOnlyList<string>)
    [
        i == 0 ? r.Name : sheet.Build.Joints[i].Name, Cell.Of(r.Inertia, Dimension.MomentOfInertia, "kg·mm²", 4, imperial), Cell.Of(r.Stiffness, Dimension.RotationalStiffness, "kN·m/rad", 4, imperial), i == 0 ? Cell.Unknown : Figures.Number(r.Loss, 2),
    ]);

    public static IEnumerable<IReadOnlyList<string>> Shapes(TorsionSheet sheet) => sheet.Sweep!.Shapes.Select((s, i) => (IReadOnlyList<string>)
    [
        Figures.Number(i + 1, 2), Frequency(s.Frequency), .. sheet.OtherIs.Length > 0 ? [Frequency(i < sheet.Other.Count ? sheet.Other[i] : null)] : Array.Empty<string>(), .. s.Shape.Select(x => Figures.Number(Math.Round(x, 3) + 0.0, 3)),
    ]);

    public IReadOnlyList<string> Of(JointRow row) =>
    [
        row.Joint.Name, Torque(row.Torque), Speed(row.Speed), $"order {Figures.Number(row.Order, 3)}", Torque(row.Rigid),
        Cell.Of(row.Stress, Dimension.Pressure, "MPa", 3, imperial), row.Stress is null ? Cell.Unknown : Cell.Of(row.Joint.Limit, Dimension.Pressure, "MPa", 3, imperial),
    ];

    public IReadOnlyList<string> Of(CriticalRow row) => [Speed(row.Critical.Speed), Figures.Number(row.Critical.Order, 3), Frequency(row.Frequency), row.Joint, Torque(row.Torque)];

    /// <summary>What drives it, and over which speeds.</summary>
    public static string Range(TorsionSheet sheet) =>
        $"Running range {Speed(sheet.Range.From)} to {Speed(sheet.Range.To)}, {(sheet.WithGas ? "driven by the gas of the engine run and by inertia" : "driven by inertia alone: the engine cannot be run yet")}. Inertia and stiffness count at the crank's speed.";

    private static string Speed(double si) => Figures.Rpm(si);

    private static string Frequency(double? si) => Cell.Of(si, Dimension.Frequency, "Hz", 4, false);

    private string Torque(double si) => Cell.Of(si, Dimension.Torque, "N·m", 4, imperial);
}
