using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>One settled speed of an engine with all that happens over its cycle.</summary>
/// <param name="Spec">The engine.</param>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Figures">Its figures.</param>
/// <param name="Trace">Its traces.</param>
public sealed record TracedCycle(EngineSpec Spec, double Speed, PointFigures Figures, CycleTrace Trace)
{
    private const double Cycle = 720;

    /// <summary>The depth that it came from.</summary>
    public Depth Depth => Depths.Of(Spec);

    /// <summary>A settled point that was traced; null for any other.</summary>
    /// <param name="spec">The engine.</param>
    /// <param name="point">The point.</param>
    public static TracedCycle? Of(EngineSpec spec, OperatingPoint point) =>
        point is { Figures: { } figures, Trace: { } trace } ? new(spec, point.Speed, figures, trace) : null;

    /// <summary>When the valves of a cylinder open and close, crank degrees after its firing top dead centre, 0 to 720, in this order.</summary>
    /// <param name="cylinder">Its place.</param>
    public IReadOnlyList<(double Angle, string Words)> Events(int cylinder)
    {
        var (inlet, exhaust) = (Spec.Cylinders[cylinder].Inlet.Lift, Spec.Cylinders[cylinder].Exhaust.Lift);
        return [.. new[] { (exhaust.Opens, "exhaust opens"), (inlet.Opens, "inlet opens"), (exhaust.Closes, "exhaust closes"), (inlet.Closes, "inlet closes") }.Select(e => (Round(e.Item1), e.Item2)).OrderBy(e => e.Item1)];
    }

    /// <summary>Crank angles of the trace after a cylinder's firing top dead centre, degrees, 0 to 720, rising, each with its place in the trace.</summary>
    /// <param name="cylinder">Its place.</param>
    public IEnumerable<(double Angle, int At)> After(int cylinder)
    {
        var angles = Trace.CrankAngle;
        return Enumerable.Range(0, angles.Length).Select(i => (Angle: Round(angles[i] - Trace.Cylinders[cylinder].FiringAngle), i)).OrderBy(a => a.Angle);
    }

    /// <summary>An angle brought into 0 to 720.</summary>
    internal static double Round(double angle) => angle - (Cycle * Math.Floor(angle / Cycle));
}
