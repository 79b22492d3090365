using System.Globalization;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Book.Build;

/// <summary>The figures of a run that are kept: few, each column with its unit, to six digits.</summary>
/// <param name="Kind">What the run is of.</param>
/// <param name="Columns">"torque N·m".</param>
/// <param name="Rows">A number, a word, true or false, or null for each column.</param>
public sealed record RunFigures(RunKind Kind, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    private static readonly (string Name, Dimension Dimension, string Unit, Func<OperatingPoint, double> Of)[] EngineColumns =
    [
        ("speed", Dimension.RotationalSpeed, "rpm", p => p.Speed),
        .. new[] { EngineFigures.Torque, EngineFigures.Power, EngineFigures.Boost, EngineFigures.PeakPressure }
            .Select(f => (f.Name, f.Dimension, f.Unit, (Func<OperatingPoint, double>)(p => f.Of(p.Figures!)))),
    ];

    private static readonly (string Name, Dimension Dimension, string Unit, Func<SprintSplit, double> Of)[] SprintColumns =
    [
        ("distance", Dimension.Length, "m", s => s.Distance),
        ("time", Dimension.Time, "s", s => s.Time),
        ("speed", Dimension.Speed, "km/h", s => s.Speed),
        ("trap speed", Dimension.Speed, "km/h", s => s.TrapSpeed),
    ];

    /// <summary>Whether every point of the run settled; a standing start is only made from a run that did.</summary>
    public bool Converged => Kind != RunKind.Engine || Rows.All(r => r[^1] is true);

    /// <summary>What one asks first: "165.2 kW at 9500 rpm", "1/4 mile in 9.873 s".</summary>
    public string Headline => (Kind, Rows.Count) switch
    {
        (_, 0) => "no figures",
        (RunKind.Engine, _) when Rows.MaxBy(r => Number(r, "power")) is { } most => string.Create(CultureInfo.InvariantCulture, $"{Number(most, "power"):F1} kW at {Number(most, "speed"):F0} rpm"),
        _ when (Rows.FirstOrDefault(r => r[0] is "1/4 mile") ?? Rows[^1]) is { } split => string.Create(CultureInfo.InvariantCulture, $"{split[0]} in {Number(split, "time"):F3} s"),
        _ => "",
    };

    /// <summary>The figures of an engine run.</summary>
    /// <exception cref="BadInputException">A point did not settle, and has no figures.</exception>
    public static RunFigures Of(IReadOnlyList<OperatingPoint> points) => points.Where(p => !p.Converged).Select(p => Fields.Engine.RevLimit.Print(p.Speed)).ToList() is { Count: > 0 } moving
        ? throw new BadInputException($"the run did not settle at {string.Join(", ", moving)}, and only one that did everywhere is kept")
        : new RunFigures(
            RunKind.Engine,
            [.. EngineColumns.Select(c => $"{c.Name} {c.Unit}"), "converged"],
            [.. points.Select(p => (IReadOnlyList<object?>)[.. EngineColumns.Select(c => Shown(c.Of(p), c.Dimension, c.Unit)), p.Converged])]);

    /// <summary>The splits of a standing start.</summary>
    public static RunFigures Of(SprintResult result) => new(
        RunKind.Sprint,
        ["split", .. SprintColumns.Select(c => $"{c.Name} {c.Unit}")],
        [.. result.Splits.Select(s => (IReadOnlyList<object?>)[s.Name, .. SprintColumns.Select(c => Shown(c.Of(s), c.Dimension, c.Unit))])]);

    /// <summary>A number of a row by the name of its column without the unit; NaN when there is none.</summary>
    public double Number(IReadOnlyList<object?> row, string column)
    {
        var at = Columns.TakeWhile(c => c != column && !c.StartsWith(column + " ", StringComparison.Ordinal)).Count();
        return at < row.Count && row[at] is double number ? number : double.NaN;
    }

    private static object? Shown(double si, Dimension dimension, string unit) => double.IsFinite(si)
        ? double.Parse(Units.Declared(dimension, unit).FromSi(si).ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        : null;
}
