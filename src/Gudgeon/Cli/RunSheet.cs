using System.Globalization;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Cli;

/// <summary>The points of an engine run as a table and the remarks below it, worded alike on the terminal and on the pages.</summary>
internal static class RunSheet
{
    /// <summary>Headings with their units.</summary>
    public static string[] Heads(bool imperial) => imperial
        ? ["rpm", "lbf·ft", "hp", "boost psi", "air lb/min", "fuel lb/min", "VE %", "IMEP psi", "FMEP psi", "g/kWh", "peak psi", "at °", "charge °F", "exhaust °F", "knock", "cycles"]
        : ["rpm", "N·m", "kW", "boost bar", "air g/s", "fuel g/s", "VE %", "IMEP bar", "FMEP bar", "g/kWh", "peak bar", "at °", "charge °C", "exhaust °C", "knock", "cycles"];

    /// <summary>A point that settled.</summary>
    public static string[] Cells(OperatingPoint p, PointFigures f, bool imperial)
    {
        string Shown(double si, Dimension d, string metric, string inch, int decimals) =>
            Units.Declared(d, imperial ? inch : metric).FromSi(si).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var worst = f.Cylinders.MaxBy(c => c.PeakPressure)!;
        return
        [
            Rpm(p),
            Shown(f.Torque, Dimension.Torque, "N·m", "lbf·ft", 1),
            Shown(f.Power, Dimension.Power, "kW", "hp", 1),
            Shown(f.Boost, Dimension.Pressure, "bar", "psi", imperial ? 1 : 2),
            Shown(f.AirFlow, Dimension.MassFlow, "g/s", "lb/min", 1),
            Shown(f.FuelFlow, Dimension.MassFlow, "g/s", "lb/min", 2),
            (f.VolumetricEfficiency * 100).ToString("F1", CultureInfo.InvariantCulture),
            Shown(f.NetImep, Dimension.Pressure, "bar", "psi", imperial ? 0 : 2),
            Shown(f.FrictionMep, Dimension.Pressure, "bar", "psi", imperial ? 0 : 2),
            f.Bsfc is { } b ? (b * 3.6e9).ToString("F0", CultureInfo.InvariantCulture) : "-",
            Shown(worst.PeakPressure, Dimension.Pressure, "bar", "psi", imperial ? 0 : 1),
            worst.PeakPressureAngle.ToString("F1", CultureInfo.InvariantCulture),
            Shown(f.ChargeTemperature, Dimension.Temperature, "°C", "°F", 0),
            Shown(f.ExhaustTemperature, Dimension.Temperature, "°C", "°F", 0),
            f.KnockIntegral.ToString("F2", CultureInfo.InvariantCulture),
            p.CyclesUsed.ToString(CultureInfo.InvariantCulture),
        ];
    }

    /// <summary>A point that did not settle: no figures, only that.</summary>
    public static string Unsettled(OperatingPoint p) =>
        string.Create(CultureInfo.InvariantCulture, $"{Rpm(p)} did not settle: {Figures.Number(p.Residual, 2)} still moving after {p.CyclesUsed} cycles");

    /// <summary>What must be known beside the figures.</summary>
    public static IEnumerable<string> Remarks(IReadOnlyList<OperatingPoint> points)
    {
        if (points.Any(p => p.Figures?.KnockValid == false))
        {
            yield return "the end gas passed 1050 K somewhere: the knock figure does not hold there";
        }

        foreach (var (words, what) in Blown)
        {
            var where = points.Where(p => p.Figures?.Blower is { } b && what(b)).Select(p => Rpm(p) + " rpm").ToList();
            if (where.Count > 0)
            {
                yield return $"{words} at: {string.Join(", ", where)}";
            }
        }
    }

    private static readonly (string Words, Func<BlowerFigures, bool> What)[] Blown =
    [
        ("the compressor surges", b => b.Surge),
        ("the compressor chokes", b => b.Choke),
        ("the compressor runs outside its map", b => b.Extrapolated),
    ];

    private static string Rpm(OperatingPoint p) => (p.Speed * 30 / Math.PI).ToString("F0", CultureInfo.InvariantCulture);
}
