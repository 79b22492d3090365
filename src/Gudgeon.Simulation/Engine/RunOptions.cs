namespace Gudgeon.Simulation.Engine;

/// <summary>What to run and how finely.</summary>
public sealed record RunOptions
{
    /// <summary>Crank speeds, rad/s.</summary>
    public required IReadOnlyList<double> Speeds { get; init; }

    /// <summary>Largest crank step, degrees; 0.25 to 1. It is divided further where the gas moves quickly compared with it.</summary>
    public double CrankStep { get; init; } = 1;

    /// <summary>Cycles after which a point is given up.</summary>
    public int MaxCycles { get; init; } = 80;

    /// <summary>Largest relative change of mean effective pressure, trapped mass and node states from cycle to cycle.</summary>
    public double Tolerance { get; init; } = 1e-6;

    /// <summary>Points computed at the same time; −1 uses every core.</summary>
    public int DegreeOfParallelism { get; init; } = -1;

    /// <summary>Whether every point carries its traces over the crank angle.</summary>
    public bool WithTraces { get; init; }

    /// <summary>Stops the run between cycles.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <summary>Told the share of points done, 0 to 1.</summary>
    public IProgress<double>? Progress { get; init; }
}
