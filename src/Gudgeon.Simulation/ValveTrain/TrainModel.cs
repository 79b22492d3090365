using System.Globalization;

namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// Valve-train dynamics: cam, follower, valve and springs as lumped masses, marched over turns of the cam until the motion
/// repeats. Making one checks the specification; it can then be run at any speeds, in parallel.
/// </summary>
public sealed class TrainModel
{
    private readonly TrainLayout _layout;

    /// <param name="spec">The train.</param>
    /// <exception cref="TrainSpecException">The train cannot be marched as described.</exception>
    public TrainModel(TrainSpec spec)
    {
        TrainChecks.Check(spec);
        _layout = new TrainLayout(spec);
    }

    /// <summary>The train.</summary>
    public TrainSpec Spec => _layout.Spec;

    /// <summary>The motion at one cam speed, rad/s, started with the valve shut and at rest.</summary>
    /// <exception cref="TrainSpecException">Speed or options are out of range.</exception>
    /// <exception cref="OperationCanceledException">The march was stopped.</exception>
    public TrainPoint At(double speed, TrainOptions options)
    {
        TrainChecks.CheckSpeed(speed);
        TrainChecks.Check(options);
        return Settle(speed, options);
    }

    /// <summary>The motion at several cam speeds, rad/s, in their order; they are independent of each other.</summary>
    /// <exception cref="TrainSpecException">Speeds or options are out of range.</exception>
    /// <exception cref="OperationCanceledException">The march was stopped.</exception>
    public IReadOnlyList<TrainPoint> At(IReadOnlyList<double> speeds, TrainOptions options)
    {
        TrainChecks.Check(options);
        foreach (var speed in speeds)
        {
            TrainChecks.CheckSpeed(speed);
        }

        var points = new TrainPoint[speeds.Count];
        var done = 0;
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = options.DegreeOfParallelism, CancellationToken = options.Cancellation };
        Parallel.For(0, points.Length, parallel, i =>
        {
            points[i] = Settle(speeds[i], options);
            options.Progress?.Report((double)Interlocked.Increment(ref done) / points.Length);
        });
        return points;
    }

    private TrainPoint Settle(double speed, TrainOptions options)
    {
        var march = new TrainMarch(_layout, speed, options);
        var change = double.PositiveInfinity;
        for (var turns = 1; turns <= options.MaxRevolutions; turns++)
        {
            options.Cancellation.ThrowIfCancellationRequested();
            var watch = change <= options.Repeat ? new RevolutionWatch(_layout, speed, options.TracePoints) : null;
            if (!march.Revolve(watch))
            {
                return new TrainPoint(speed, turns, change, null, "The steps of the march became too short to go on.");
            }

            change = march.Change();
            if (watch is not null && change <= options.Repeat)
            {
                return new TrainPoint(speed, turns, change, watch.Motion(), null);
            }
        }

        var why = string.Create(
            CultureInfo.InvariantCulture,
            $"The motion did not repeat within {options.MaxRevolutions} turns of the cam: it still changes by {change:0.#####} of the lift from turn to turn, wanted {options.Repeat:0.#####}.");
        return new TrainPoint(speed, options.MaxRevolutions, change, null, why);
    }
}
