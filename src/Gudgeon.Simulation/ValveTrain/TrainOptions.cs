namespace Gudgeon.Simulation.ValveTrain;

/// <summary>How a valve train is marched.</summary>
public enum TrainMethod
{
    /// <summary>Explicit, and implicit from the turn on in which that takes fewer evaluations.</summary>
    Automatic,

    /// <summary>Explicit Runge-Kutta, order 5(4).</summary>
    Explicit,

    /// <summary>L-stable Rosenbrock, order 4(3), for trains with very stiff contacts.</summary>
    Implicit,
}

/// <summary>How finely to march and for how long.</summary>
public sealed record TrainOptions
{
    /// <summary>Estimated error of one step, over full lift for travel and over the cam's greatest lifting speed for velocity.</summary>
    public double Tolerance { get; init; } = 1e-6;

    /// <summary>Longest step, cam rad. Without such a limit a march that starts at rest can step over the whole lobe.</summary>
    public double LongestStep { get; init; } = Math.PI / 120;

    /// <summary>Largest change of the state from turn to turn, in the measures of <see cref="Tolerance"/>, at which the motion counts as settled.</summary>
    public double Repeat { get; init; } = 1e-3;

    /// <summary>Turns of the cam after which a speed is given up.</summary>
    public int MaxRevolutions { get; init; } = 60;

    /// <summary>How the march is stepped.</summary>
    public TrainMethod Method { get; init; }

    /// <summary>Points of the traces over one turn of the cam; 0 for no traces.</summary>
    public int TracePoints { get; init; }

    /// <summary>Speeds marched at the same time; −1 uses every core.</summary>
    public int DegreeOfParallelism { get; init; } = -1;

    /// <summary>Stops the march between turns of the cam.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <summary>Told the share of speeds done, 0 to 1.</summary>
    public IProgress<double>? Progress { get; init; }
}
