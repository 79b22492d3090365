using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>Runs an engine over speeds, two or more at a time, each from the nearest point of an earlier run when there is one.</summary>
public static class EngineRun
{
    /// <summary>One point for each speed.</summary>
    /// <param name="spec">The engine.</param>
    /// <param name="speeds">Crank speeds, rad/s.</param>
    /// <param name="near">A run of nearly the same engine to start from; null to start cold.</param>
    /// <param name="progress">Told the share of points done, 0 to 1.</param>
    /// <param name="cancellation">Stops the run between cycles.</param>
    public static IReadOnlyList<OperatingPoint> Run(EngineSpec spec, IReadOnlyList<double> speeds, EngineDuty? near = null, IProgress<double>? progress = null, CancellationToken cancellation = default) =>
        Run(new EngineModel(spec), speeds, near, progress, cancellation: cancellation);

    /// <summary>One point for each speed.</summary>
    /// <param name="model">The engine.</param>
    /// <param name="speeds">Crank speeds, rad/s.</param>
    /// <param name="near">A run of nearly the same engine to start from; null to start cold.</param>
    /// <param name="progress">Told the share of points done, 0 to 1.</param>
    /// <param name="tolerance">Relative change from cycle to cycle under which a point has settled.</param>
    /// <param name="cancellation">Stops the run between cycles.</param>
    public static IReadOnlyList<OperatingPoint> Run(EngineModel model, IReadOnlyList<double> speeds, EngineDuty? near = null, IProgress<double>? progress = null, double tolerance = 1e-6, CancellationToken cancellation = default)
    {
        var options = new RunOptions { Speeds = speeds, Cancellation = cancellation, Progress = progress, Tolerance = tolerance };
        if (near is null)
        {
            return model.Run(options);
        }

        var points = new OperatingPoint[speeds.Count];
        var done = 0;
        Parallel.For(0, points.Length, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            var start = near.Points.MinBy(p => Math.Abs(p.Speed - speeds[i]))?.State;
            var point = model.RunPoint(speeds[i], options, start);

            // A start from far away may lead astray where one from nothing does not.
            points[i] = point.Converged || start is null ? point : model.RunPoint(speeds[i], options);
            progress?.Report((double)Interlocked.Increment(ref done) / points.Length);
        });
        return points;
    }

    /// <summary>One speed of a run once more, with its traces over the crank angle.</summary>
    /// <param name="duty">The run.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="cancellation">Stops it between cycles.</param>
    /// <returns>The cycle; null when the point did not settle.</returns>
    public static TracedCycle? Traced(EngineDuty duty, double speed, CancellationToken cancellation = default)
    {
        var near = duty.Points.MinBy(p => Math.Abs(p.Speed - speed))?.State;
        return TracedCycle.Of(duty.Spec, Traced(duty.Spec, speed, near, cancellation));
    }

    /// <summary>One speed of an engine with its traces over the crank angle.</summary>
    /// <param name="spec">The engine.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="near">A state to start from; null to start cold.</param>
    /// <param name="cancellation">Stops it between cycles.</param>
    public static OperatingPoint Traced(EngineSpec spec, double speed, EngineState? near = null, CancellationToken cancellation = default) =>
        new EngineModel(spec).RunPoint(speed, new RunOptions { Speeds = [speed], WithTraces = true, Cancellation = cancellation }, near);
}
