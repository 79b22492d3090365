using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Cli.Bottom;

/// <summary>The balance sheet as it is written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class BalanceCells(bool imperial)
{
    /// <summary>Headings of a cylinder's row.</summary>
    public static readonly IReadOnlyList<string> RodHeadings = ["cylinder", "rod", "small end", "big end", "readings less rod", "gyration", "piston"];

    /// <summary>Headings of a crank pin's row.</summary>
    public static readonly IReadOnlyList<string> PinHeadings = ["crank pin", "turning", "to and fro", "factor now", "before", "wanted", "bob weight for it", "add at counterweights", "holes together"];

    /// <summary>Headings of an order's row.</summary>
    public static readonly IReadOnlyList<string> OrderHeadings = ["order", "turns with", "turns against", "greatest force", "least", "rocking couple", "roll"];

    /// <summary>Headings of a balance shaft's row.</summary>
    public static readonly IReadOnlyList<string> ShaftHeadings = ["shaft", "unbalance", "speed", "weight at TDC", "leaves least at", "out of time", "one tooth"];

    /// <summary>Headings of what is left with a shaft as it stands, or a tooth out.</summary>
    public static readonly IReadOnlyList<string> LeftHeadings = ["left at the shaft's order", "greatest force", "least", "rocking couple", "roll"];

    /// <summary>Headings of a mount's row.</summary>
    public static readonly IReadOnlyList<string> MountHeadings = ["mount", .. BalanceSheet.Told.Select(o => $"order {Figures.Number(o, 2)}"), "greatest"];

    public IReadOnlyList<string> Of(RodRow row) =>
    [
        row.Cylinder, Mass(row.Rod), Mass(row.SmallEnd), Mass(row.BigEnd), Mass(Rounded(row.Left)), Cell.Of(row.Gyration, Dimension.Length, "mm", 4, imperial), Mass(row.Piston),
    ];

    public IReadOnlyList<string> Of(PinRow row) =>
    [
        Figures.Number(row.Mass.Pin, 2), Mass(row.Mass.Rotating), Mass(row.Mass.Reciprocating), Share(row.Factor), Share(row.Before), Share(row.Wanted),
        Mass(row.BobWeight), Cell.Of(row.Change, Dimension.Mass, "g", 3, imperial), Cell.Of(row.HoleDepth, Dimension.Length, "mm", 3, imperial),
    ];

    public IReadOnlyList<string> Of(OrderRow row) =>
    [
        Figures.Number(row.Force.Order, 2), Force(row.Force.With.Magnitude), Force(row.Force.Against.Magnitude), Force(row.Force.Greatest), Force(row.Force.Least), Torque(row.Couple.Greatest), Torque(row.Roll),
    ];

    public IReadOnlyList<string> Of(ShaftRow row) =>
    [
        row.Timing.Shaft.Name, Cell.Of(row.Timing.Shaft.Unbalance, Dimension.Unbalance, "g·mm", 5, imperial), $"{Figures.Number(Math.Abs(row.Timing.Shaft.Ratio), 3)}, {(row.Timing.Shaft.Ratio > 0 ? "with" : "against")}",
        Angle(row.Timing.Shaft.Phase), Angle(row.Timing.Best), Words(row.Timing.Early), Angle(row.Tooth),
    ];

    /// <summary>What every shaft leaves as marked, a tooth early and a tooth late.</summary>
    public IEnumerable<IReadOnlyList<string>> Left(BalanceSheet sheet) =>
        from shaft in sheet.Shafts
        from stands in new[] { ("as marked", shaft.AsMarked), ("a tooth early", shaft.Early), ("a tooth late", shaft.Late) }
        where stands.Item2 is not null
        let row = stands.Item2
        select (IReadOnlyList<string>)[$"{shaft.Timing.Shaft.Name} {stands.Item1}", Force(row.Force.Greatest), Force(row.Force.Least), Torque(row.Couple.Greatest), Torque(row.Roll)];

    public IReadOnlyList<string> Of(MountLoad row) => [row.Name, .. row.Orders.Select(f => Force(f)), Force(row.Greatest)];

    /// <summary>The line over the figures of a speed.</summary>
    public string Speed(Shaking shaking) =>
        $"At {Figures.Rpm(shaking.Speed)}: greatest force {Force(shaking.GreatestForce)}, greatest rocking couple {Torque(shaking.GreatestCouple)}, couples about {Cylinder.Position.Print(shaking.About, imperial)} along the crank.";

    private static double? Rounded(double? kilograms) => kilograms is { } m ? Math.Round(m, 7) : null;

    private static string Words(double? early) => early is { } angle ? Math.Abs(angle) < 5e-4 ? "in time" : $"{Figures.Number(Math.Abs(angle) * 180 / Math.PI, 3)}° {(angle > 0 ? "early" : "late")}" : Cell.Unknown;

    private string Mass(double? si) => Cell.Of(si, Dimension.Mass, "g", 4, imperial);

    private string Force(double? si) => Cell.Of(Whole(si), Dimension.Force, "N", 4, imperial);

    private string Torque(double? si) => Cell.Of(Whole(si), Dimension.Torque, "N·m", 4, imperial);

    /// <summary>What rounding leaves of nothing is nothing.</summary>
    private static double? Whole(double? si) => si is { } value && Math.Abs(value) < 1e-3 ? 0 : si;

    private static string Share(double? si) => Cell.Of(si, Dimension.Number, "%", 3, false);

    private static string Angle(double? si) => Cell.Of(si is { } a ? Math.Round(a * 180 / Math.PI, 2) * Math.PI / 180 : null, Dimension.Angle, "°", 4, false);
}
