using System.Globalization;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Cli;

/// <summary>The points of an engine run as a table and the remarks below it, worded alike on the terminal and on the pages.</summary>
internal static class RunSheet
{
    /// <summary>Headings with their units.</summary>
    public static string[] Heads(EngineSpec spec, bool imperial) => ["rpm", .. EngineFigures.For(spec).Select(f => f.Head(imperial)), "cycles"];

    /// <summary>A point that settled.</summary>
    public static string[] Cells(EngineSpec spec, OperatingPoint p, PointFigures f, bool imperial) =>
        [Rpm(p), .. EngineFigures.For(spec).Select(e => e.Cell(e.Of(f), imperial)), p.CyclesUsed.ToString(CultureInfo.InvariantCulture)];

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
