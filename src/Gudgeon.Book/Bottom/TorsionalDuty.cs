using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>What the running range does to the joints of a torsional line.</summary>
internal static class TorsionalDuty
{
    /// <summary>Lowest and highest speed of the engine, rad/s; a third of the rev limit below when the book does not say; null, and noted as missing, without a rev limit.</summary>
    public static (double From, double To)? Range(View view)
    {
        var limit = view.Amount(Engine.RevLimit);
        return double.IsNaN(limit) ? null : (view.AmountOr(Engine.RunFrom, limit / 3), limit);
    }

    /// <summary>Speeds evenly spaced.</summary>
    public static IReadOnlyList<double> Speeds(double from, double to, int points) => [.. Enumerable.Range(0, points).Select(i => from + ((to - from) * i / (points - 1)))];

    /// <summary>Each joint where it has it hardest within a range.</summary>
    public static IReadOnlyList<JointRow> Joints(TorsionalBuild build, TorsionalSweep sweep, (double From, double To) range)
    {
        var inside = sweep.Points.Where(p => p.Speed >= range.From * (1 - 1e-9) && p.Speed <= range.To * (1 + 1e-9)).ToList();
        return [.. Enumerable.Range(1, build.Joints.Count - 1).Select(j => Row(build.Joints[j], sweep, inside.MaxBy(p => p.Joints[j])!, j))];
    }

    private static JointRow Row(TorsionalJoint joint, TorsionalSweep sweep, TorsionalPoint at, int j) => new(
        joint,
        at.Joints[j],
        at.Speed,
        sweep.Rigid(j, at.Speed),
        TorqueOrders.Order(Enumerable.Range(0, at.Orders.Length).MaxBy(k => at.Orders[k][j])),
        joint.Stress(at.Joints[j]));
}
