using System.Numerics;

namespace Gudgeon.Simulation.Crank;

/// <summary>How a balance shaft stands, and what a tooth either way would do.</summary>
/// <param name="Shaft">The shaft as marked.</param>
/// <param name="Best">Angle of its weight, at top dead centre of cylinder 1, that leaves least of its own order; null when nothing of that order is there for it to balance.</param>
public sealed record ShaftTiming(Spinner Shaft, double? Best)
{
    private const double Nothing = 1e-9;

    /// <summary>How far it stands ahead of its best place in its own direction, rad; within half a turn.</summary>
    public double? Early => Best is { } best ? Math.Sign(Shaft.Ratio) * Math.IEEERemainder(Shaft.Phase - best, 2 * Math.PI) : null;

    /// <summary>
    /// The best place with the other shafts where they are. Its order's force F and couple C are left least, counted as
    /// F² + (C / length)²; what a shaft does at other orders does not hang on its timing.
    /// </summary>
    /// <param name="line">The crank.</param>
    /// <param name="shafts">All shafts.</param>
    /// <param name="place">The shaft's place among them.</param>
    /// <param name="length">Length that turns a couple into a force, m: that between the mounts or the end bearings.</param>
    public static ShaftTiming Of(CrankLine line, IReadOnlyList<Spinner> shafts, int place, double length)
    {
        var shaft = shafts[place];
        var rest = Shaking.Of(line, [.. shafts.Where((_, i) => i != place)], 1);
        var order = Math.Abs(shaft.Ratio);
        var (force, couple) = (rest.ForceAt(order), rest.CoupleAt(order));
        Complex Own(Turning t) => shaft.Ratio > 0 ? t.With : t.Against;
        var lever = (shaft.Position - rest.About) / (length * length);
        var against = Own(force) + (lever * Own(couple));
        var size = shaft.Unbalance * order * order;
        return new ShaftTiming(shaft, against.Magnitude > Nothing + (1e-6 * size) ? Opposite(against.Phase) : null);
    }

    /// <summary>The angle across, from just above −180° to 180°.</summary>
    private static double Opposite(double angle) => angle <= 1e-9 ? angle + Math.PI : angle - Math.PI;
}
