namespace Gudgeon.Simulation.Engine;

/// <summary>
/// The lumped cycle simulation of one engine: volumes, valves and restrictions, marched over crank angle until the cycles
/// repeat. Making one checks the specification and tabulates the gases; it can then be run at any speeds, in parallel.
/// </summary>
public sealed class EngineModel
{
    private readonly MarchSetup _setup;

    /// <summary>Checks the specification and tabulates the gases.</summary>
    /// <param name="spec">The engine.</param>
    /// <param name="like">A model whose gas tables serve again when fuel, mixture and air are the same; null for none.</param>
    /// <exception cref="EngineSpecException">The engine cannot be simulated as described.</exception>
    public EngineModel(EngineSpec spec, EngineModel? like = null)
    {
        SpecCheck.Check(spec);
        _setup = new MarchSetup(spec, like?._setup);
    }

    /// <summary>The engine.</summary>
    public EngineSpec Spec => _setup.Spec;

    /// <summary>All points of a run, in the order of its speeds; the points are independent of each other.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public IReadOnlyList<OperatingPoint> Run(RunOptions options)
    {
        SpecCheck.Check(options);
        var points = new OperatingPoint[options.Speeds.Count];
        var done = 0;
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = options.DegreeOfParallelism, CancellationToken = options.Cancellation };
        Parallel.For(0, points.Length, parallel, i =>
        {
            points[i] = PointRun.Run(_setup, options.Speeds[i], options, previous: null);
            options.Progress?.Report((double)Interlocked.Increment(ref done) / points.Length);
        });
        return points;
    }

    /// <summary>One point, started from a neighbouring point's state when there is one; the speeds of the options are not looked at.</summary>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="options">Step, tolerance and the like.</param>
    /// <param name="previous">State of a converged neighbour, of this model or of one with the same parts.</param>
    public OperatingPoint RunPoint(double speed, RunOptions options, EngineState? previous = null)
    {
        SpecCheck.CheckSpeed(speed);
        return PointRun.Run(_setup, speed, options, previous);
    }
}
