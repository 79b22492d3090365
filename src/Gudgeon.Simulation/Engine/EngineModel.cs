namespace Gudgeon.Simulation.Engine;

/// <summary>
/// The lumped cycle simulation of one engine: volumes, valves and restrictions, marched over crank angle until the cycles
/// repeat. Making one checks the specification and tabulates the gases; it can then be run at any speeds, in parallel.
/// </summary>
public sealed class EngineModel
{
    /// <summary>Checks the specification and tabulates the gases.</summary>
    /// <exception cref="EngineSpecException">The engine cannot be simulated as described.</exception>
    public EngineModel(EngineSpec spec) => Spec = spec;

    /// <summary>The engine.</summary>
    public EngineSpec Spec { get; }

    /// <summary>All points of a run, in the order of its speeds; the points are independent of each other.</summary>
    public IReadOnlyList<OperatingPoint> Run(RunOptions options) => throw new NotSupportedException();

    /// <summary>One point, started from a neighbouring point's state when there is one.</summary>
    public OperatingPoint RunPoint(double speed, RunOptions options, EngineState? previous = null) => throw new NotSupportedException();
}
