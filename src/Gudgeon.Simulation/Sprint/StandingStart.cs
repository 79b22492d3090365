namespace Gudgeon.Simulation.Sprint;

/// <summary>The standing-start run: from rest at the stage to the end of the strip.</summary>
public static class StandingStart
{
    private const double LargestScale = 64;

    /// <summary>Runs the strip.</summary>
    /// <exception cref="SprintSpecException">The spec makes no machine that can be run; the sentence names the quantity.</exception>
    public static SprintResult Run(SprintSpec spec)
    {
        SprintChecks.Check(spec);
        return new SprintRun(spec).Run();
    }

    /// <summary>
    /// What multiple of the torque curve gives this quarter-mile time, everything else kept. When grip, wheelie, clutch
    /// or rev limit make it impossible the answer says which, and the best time.
    /// </summary>
    /// <param name="spec">The machine and the strip; its length of run is not used.</param>
    /// <param name="time">Elapsed time over the quarter mile from the start beam, s.</param>
    /// <exception cref="SprintSpecException">The spec makes no machine that can be run, or the time is no time.</exception>
    public static SprintTorqueScale TorqueScaleFor(SprintSpec spec, double time)
    {
        SprintSpecException.Unless(double.IsFinite(time) && time > 0, "quarter-mile time: must be above zero");
        SprintChecks.Check(spec);
        var quarter = spec with { Strip = spec.Strip with { Finish = StripLength.QuarterMile } };
        var best = Scaled(quarter, LargestScale);
        var bestTime = TimeOf(best);
        if (bestTime > time)
        {
            return new SprintTorqueScale(double.NaN, bestTime, Chief(best), best);
        }

        var scale = Search(quarter, time);
        var result = Scaled(quarter, scale);
        return new SprintTorqueScale(scale, bestTime, Chief(result), result);
    }

    // Time falls as torque rises; halving the interval of ratios needs no more than that.
    private static double Search(SprintSpec quarter, double time)
    {
        var (slow, quick) = (1 / LargestScale, LargestScale);
        while (quick / slow > 1 + 1e-9)
        {
            var middle = Math.Sqrt(slow * quick);
            (slow, quick) = TimeOf(Scaled(quarter, middle)) > time ? (middle, quick) : (slow, middle);
        }

        return quick;
    }

    private static SprintResult Scaled(SprintSpec quarter, double scale)
    {
        var torques = quarter.Engine.Torques.Select(torque => torque * scale).ToArray();
        return new SprintRun(quarter with { Engine = quarter.Engine with { Torques = torques } }).Run();
    }

    private static double TimeOf(SprintResult result) => result.At(StripLength.QuarterMile)?.Time ?? double.PositiveInfinity;

    private static SprintLimit Chief(SprintResult result) => result.LimitTimes.MaxBy(limit => limit.Value).Key;
}
