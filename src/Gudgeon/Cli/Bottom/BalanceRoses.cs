using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Cli.Bottom;

/// <summary>
/// What a balance shaft leaves of its own order, against the crank angle: distance from the middle is the force left, the
/// angle is that of the crank, top dead centre of cylinder 1 above, clockwise.
/// </summary>
internal static class BalanceRoses
{
    private const int Points = 180;

    /// <summary>Which way the roses are read.</summary>
    public const string Remark = "Distance from the middle: force left at the shaft's own order. Round: crank angle, top dead centre of cylinder 1 above, clockwise.";

    /// <summary>One rose for each shaft: as marked, a tooth early, a tooth late.</summary>
    public static IReadOnlyList<(string Name, IReadOnlyList<PolarCurve> Curves)> Of(BalanceSheet sheet, Unit force) => [.. sheet.Shafts.Select(s => ($"Shaft {s.Timing.Shaft.Name}", Curves(s, force)))];

    /// <summary>The whole force of all orders along cylinder 1 and across it, over a turn, degrees.</summary>
    public static IReadOnlyList<(string Name, double[] X, double[] Y)> Over(Shaking shaking, Unit force)
    {
        var turn = shaking.Angles.TakeWhile(a => a < 2 * Math.PI).Count();
        double[] degrees = [.. shaking.Angles.Take(turn).Select(a => a * 180 / Math.PI)];
        return
        [
            ("along cylinder 1", degrees, [.. shaking.Force.Take(turn).Select(f => force.FromSi(f.Real))]),
            ("across it", degrees, [.. shaking.Force.Take(turn).Select(f => force.FromSi(f.Imaginary))]),
        ];
    }

    private static IReadOnlyList<PolarCurve> Curves(ShaftRow row, Unit force)
    {
        (string Name, OrderRow? Row)[] all = [("as marked", row.AsMarked), ("a tooth early", row.Early), ("a tooth late", row.Late)];
        return [.. all.Where(c => c.Row is not null).Select(c => Rose(c.Name, c.Row!.Force, force))];
    }

    private static PolarCurve Rose(string name, Turning turning, Unit force)
    {
        var (x, y) = (new double[Points], new double[Points]);
        for (var i = 0; i < Points; i++)
        {
            var angle = 2 * Math.PI * i / Points;
            var size = force.FromSi(turning.SizeAt(angle));
            var (sin, cos) = Math.SinCos(angle);
            (x[i], y[i]) = (size * sin, size * cos);
        }

        return new PolarCurve(name, x, y);
    }
}
