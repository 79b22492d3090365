using Gudgeon.Book.Bottom;
using Gudgeon.Simulation.Crank;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>What the pictures of torsional vibration share, on paper and on the page.</summary>
internal static class TorsionCurves
{
    private const int Marked = 6;

    private static readonly double[] Usual = [0.5, 1, 1.5, 2, 3, 4, 6, 8, 10, 12];

    /// <summary>Orders whose lines are drawn: the usual ones and those of the strongest critical speeds.</summary>
    public static IReadOnlyList<double> Orders(TorsionSheet sheet) => [.. Usual.Union(sheet.Criticals.Take(Marked).Select(c => c.Critical.Order)).Order()];

    /// <summary>Crank speed, rpm.</summary>
    public static double Rpm(double speed) => speed * 30 / Math.PI;

    /// <summary>Greatest frequency worth drawing, Hz: that of the highest order at the highest speed, or the highest natural frequency below it.</summary>
    public static double TopFrequency(TorsionalSweep sweep)
    {
        var reach = Usual[^1] * Rpm(sweep.Points[^1].Speed) / 60;
        return 1.1 * sweep.Shapes.Select(s => s.Frequency).Where(f => f <= reach).DefaultIfEmpty(reach).Max();
    }

    /// <summary>The strongest critical speeds, rpm and Hz.</summary>
    public static IReadOnlyList<(double Rpm, double Hertz)> Strong(TorsionSheet sheet) => [.. sheet.Criticals.Take(Marked).Select(c => (Rpm(c.Critical.Speed), c.Frequency))];

    /// <summary>The ends of the running range.</summary>
    public static void Edges(Plot plot, TorsionSheet sheet)
    {
        plot.Add.VerticalLine(Rpm(sheet.Range.From), 1.5f, Colors.Black, LinePattern.Dotted).LegendText = "running range from";
        plot.Add.VerticalLine(Rpm(sheet.Range.To), 1.5f, Colors.Black, LinePattern.Solid).LegendText = "rev limit";
    }
}
