namespace Gudgeon.Simulation.ValveTrain;

/// <summary>Cam speeds to look at, evenly spaced.</summary>
/// <param name="From">Lowest, rad/s.</param>
/// <param name="To">Highest, rad/s.</param>
/// <param name="Points">How many, 2 or more.</param>
public sealed record SpeedRange(double From, double To, int Points)
{
    /// <summary>The speeds, rad/s.</summary>
    public IReadOnlyList<double> Speeds => [.. Enumerable.Range(0, Points).Select(i => From + ((To - From) * i / (Points - 1)))];
}

/// <summary>From where on a motion counts as lift-off or bounce. Common practice, no source: makers keep their own limits.</summary>
/// <param name="Gap">Largest gap between cam, follower and valve that is let pass, m.</param>
/// <param name="Bounce">Greatest height to which the valve may leave its seat again, m.</param>
public sealed record TrainThresholds(double Gap = 0.05e-3, double Bounce = 0.1e-3);

/// <summary>How a speed limit was found.</summary>
public enum LimitKind
{
    /// <summary>Between a settled motion below the threshold and a settled one above it.</summary>
    Found,

    /// <summary>Up to this speed the motion settles and stays below the threshold; just above it does not settle at all.</summary>
    Unsettled,

    /// <summary>Not reached at the highest speed looked at, which is given.</summary>
    NotReached,

    /// <summary>Passed, or not settled, already at the lowest speed looked at, which is given.</summary>
    Passed,
}

/// <summary>A speed limit.</summary>
/// <param name="Kind">How it was found.</param>
/// <param name="Speed">Cam speed, rad/s.</param>
public sealed record TrainLimit(LimitKind Kind, double Speed);

/// <summary>A valve train over a range of speeds.</summary>
/// <param name="Points">The speeds in order.</param>
/// <param name="LiftOff">First speed at which the train comes apart by more than the threshold.</param>
/// <param name="Bounce">First speed at which the valve bounces higher than the threshold.</param>
public sealed record TrainSweep(IReadOnlyList<TrainPoint> Points, TrainLimit LiftOff, TrainLimit Bounce)
{
    private const int Halvings = 8;

    /// <summary>
    /// Marches a range of speeds and finds the limits between them by halving: to a two-hundred-and-fiftieth of the spacing.
    /// A motion that comes and goes between two neighbouring speeds is not seen: space them closely where springs surge.
    /// </summary>
    /// <param name="model">The train.</param>
    /// <param name="range">Speeds.</param>
    /// <param name="options">How to march.</param>
    /// <param name="thresholds">From where on a motion counts; the usual ones when left out.</param>
    /// <exception cref="TrainSpecException">Speeds or options are out of range.</exception>
    /// <exception cref="OperationCanceledException">The march was stopped.</exception>
    public static TrainSweep Over(TrainModel model, SpeedRange range, TrainOptions options, TrainThresholds? thresholds = null)
    {
        TrainSpecException.Unless(range.Points is >= 2 and <= 2000, $"speeds: {range.Points} given, wanted 2 to 2000");
        TrainSpecException.Unless(range.To > range.From, $"speeds: the range goes from {range.From} to {range.To} rad/s, wanted it to rise");
        var limits = thresholds ?? new TrainThresholds();
        var points = model.At(range.Speeds, options);
        var single = options with { TracePoints = 0 };
        var (liftOff, bounce) = (default(TrainLimit), default(TrainLimit));
        Parallel.Invoke(
            new ParallelOptions { MaxDegreeOfParallelism = options.DegreeOfParallelism, CancellationToken = options.Cancellation },
            () => liftOff = Find(model, points, single, m => m.Lost?.Gap > limits.Gap),
            () => bounce = Find(model, points, single, m => m.SeatingVelocity is null || m.BounceHeight > limits.Bounce));
        return new TrainSweep(points, liftOff!, bounce!);
    }

    private static TrainLimit Find(TrainModel model, IReadOnlyList<TrainPoint> points, TrainOptions options, Func<TrainMotion, bool> passes)
    {
        bool Beyond(TrainPoint point) => point.Motion is not { } motion || passes(motion);
        var first = points.TakeWhile(p => !Beyond(p)).Count();
        if (first == points.Count)
        {
            return new TrainLimit(LimitKind.NotReached, points[^1].Speed);
        }

        if (first == 0)
        {
            return new TrainLimit(LimitKind.Passed, points[0].Speed);
        }

        var (low, high) = (points[first - 1], points[first]);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = model.At(0.5 * (low.Speed + high.Speed), options);
            (low, high) = Beyond(middle) ? (low, middle) : (middle, high);
        }

        return high.Settled ? new TrainLimit(LimitKind.Found, high.Speed) : new TrainLimit(LimitKind.Unsettled, low.Speed);
    }
}
