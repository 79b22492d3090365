using Gudgeon.Book.Bottom;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>What the engine does to its parts at each speed of a full-load run. Every point has converged.</summary>
/// <param name="Points">Points in rising speed.</param>
/// <param name="Ambient">The air that the engine stood in.</param>
/// <param name="Spec">The engine that was run.</param>
public sealed record EngineDuty(IReadOnlyList<OperatingPoint> Points, AmbientSpec Ambient, EngineSpec Spec)
{
    private readonly Lazy<TracedCycle?>[] _cycles = [.. Points.Select(p => new Lazy<TracedCycle?>(() => TracedCycle.Of(Spec, EngineRun.Traced(Spec, p.Speed, p.State))))];

    /// <summary>What checks ask the most of.</summary>
    private static readonly Func<PointFigures, double>[] Asked =
    [
        f => f.Power,
        f => f.Torque,
        f => f.PeakPressure,
        f => f.FuelFlow,
        f => f.KnockIntegral,
        f => f.Boost,
        f => f.ExhaustBackPressure - f.Boost,
        f => -(f.Blower?.SurgeMargin ?? 0),
        f => -(f.Blower?.ChokeMargin ?? 0),

        // The speed of a crank-driven blower needs no run; the power stands in for it, which is asked for anyway.
        f => f.Blower is { Turbine: not null } turbo ? turbo.Speed : f.Power,
    ];

    /// <summary>The cycle at the highest speed with its traces, run when it is first asked for; null when it does not settle once more.</summary>
    public TracedCycle? TopCycle => Points.Count == 0 ? null : Cycle(Points.Count - 1);

    /// <summary>The cycle at a point of the run with its traces, run when it is first asked for; null when it does not settle once more.</summary>
    /// <param name="point">Place of the point, from 0.</param>
    public TracedCycle? Cycle(int point) => _cycles[point].Value;

    /// <summary>Runs every cycle that was not asked for yet, two or more at a time.</summary>
    internal void TraceAll() => Parallel.For(0, _cycles.Length, i => Cycle(i));

    /// <summary>Where the loads that it puts on the bottom end are kept.</summary>
    internal LoadShelf Loads { get; } = new();

    /// <summary>The depth that it came from.</summary>
    public Depth Depth => Depths.Of(Spec);

    /// <summary>
    /// Speeds at which something that checks ask for is at its most. A run with a slightly nudged value is made at these
    /// alone: its greatest figures stand at the same speeds.
    /// </summary>
    public IReadOnlyList<double> TellingSpeeds => [.. Asked.Select(figure => Most(figure).Speed).Distinct().Order()];

    /// <summary>Figures in the order of the speeds.</summary>
    public IEnumerable<(double Speed, PointFigures Figures)> Figures => Points.Select(p => (p.Speed, p.Figures!));

    /// <summary>Greatest of a figure over the run, and the speed at which it stands.</summary>
    public (double Value, double Speed) Most(Func<PointFigures, double> figure) => Figures.Select(p => (Value: figure(p.Figures), p.Speed)).MaxBy(p => p.Value);

    /// <summary>Greatest brake power, W, and its speed, rad/s.</summary>
    public (double Value, double Speed) Power => Most(f => f.Power);

    /// <summary>Greatest brake torque, N·m, and its speed, rad/s.</summary>
    public (double Value, double Speed) Torque => Most(f => f.Torque);

    /// <summary>Greatest cylinder pressure, Pa absolute, and its speed, rad/s.</summary>
    public (double Value, double Speed) PeakPressure => Most(f => f.PeakPressure);

    /// <summary>The same above the air outside, Pa.</summary>
    public (double Value, double Speed) PeakGauge => (PeakPressure.Value - Ambient.Pressure, PeakPressure.Speed);
}
