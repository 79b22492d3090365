namespace Gudgeon.Simulation.Engine;

/// <summary>
/// Places the burn of a point for best torque within the limits of knock and pressure. Torque over the angle of 50 % burned is
/// nearly a parabola, and both limits give way as the burn moves back, so a handful of runs do, each from the state of the one before.
/// </summary>
internal static class PhasingSearch
{
    private const double Step = 3, Closely = 0.1;
    private const int Turns = 12;

    /// <param name="search">Limits.</param>
    /// <param name="burn">The burn of the engine; where it stands is the first try.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="previous">State to start from; null to start cold.</param>
    /// <param name="run">Runs the point with a burn from a state.</param>
    /// <returns>The best point found; one that did not converge when a run did not.</returns>
    public static OperatingPoint Run(BurnSearch search, CombustionSpec burn, double speed, EngineState? previous, Func<CombustionSpec, EngineState?, OperatingPoint> run)
    {
        var cycles = 0;
        var state = previous;
        OperatingPoint At(double angle)
        {
            var point = run(burn with { Burned50 = angle, Burned50Slope = 0, Search = null }, state);
            cycles += point.CyclesUsed;
            state = point.State ?? state;
            return point with { CyclesUsed = cycles };
        }

        var first = Math.Clamp(burn.Burned50 + (burn.Burned50Slope * (speed - burn.ReferenceSpeed)), search.Earliest, search.Latest);
        var best = At(first);
        if (!best.Converged)
        {
            return best;
        }

        return Excess(search, best) > 0 ? Held(search, best, first, At) : Best(search, best, first, At);
    }

    /// <summary>How far a point is over its limits, as a logarithm: zero at the limit.</summary>
    private static double Excess(BurnSearch search, OperatingPoint point) =>
        Math.Log(Math.Max(point.Figures!.KnockIntegral / search.KnockLimit, point.Figures.PeakPressure / search.PressureLimit));

    /// <summary>Back from beyond the limits to the first angle within them, by secants.</summary>
    private static OperatingPoint Held(BurnSearch search, OperatingPoint over, double angle, Func<double, OperatingPoint> at)
    {
        var (low, lowExcess) = (angle, Excess(search, over));
        var (high, point) = (angle, over);
        do
        {
            if (high >= search.Latest)
            {
                return point;
            }

            high = Math.Min(search.Latest, high + (2 * Step));
            point = at(high);
            if (!point.Converged)
            {
                return point;
            }

            (low, lowExcess) = Excess(search, point) > 0 ? (high, Excess(search, point)) : (low, lowExcess);
        }
        while (Excess(search, point) > 0);

        var (within, highExcess) = (point, Excess(search, point));
        for (var turn = 0; turn < Turns && high - low > Closely && highExcess < -0.005; turn++)
        {
            var next = low + ((high - low) * Math.Clamp(lowExcess / (lowExcess - highExcess), 0.1, 0.95));
            point = at(next);
            if (!point.Converged)
            {
                return point;
            }

            var excess = Excess(search, point);
            (low, lowExcess) = excess > 0 ? (next, excess) : (low, lowExcess);
            (high, highExcess, within) = excess > 0 ? (high, highExcess, within) : (next, excess, point);
        }

        return within;
    }

    /// <summary>From within the limits to the top of the parabola, or to the limit when that comes first.</summary>
    private static OperatingPoint Best(BurnSearch search, OperatingPoint start, double angle, Func<double, OperatingPoint> at)
    {
        var tries = new List<(double Angle, OperatingPoint Point)> { (angle, start) };
        OperatingPoint? Try(double where)
        {
            where = Math.Clamp(where, search.Earliest, search.Latest);
            if (tries.Exists(t => Math.Abs(t.Angle - where) < Closely))
            {
                return null;
            }

            var point = at(where);
            if (point.Converged)
            {
                tries.Add((where, point));
            }

            return point;
        }

        foreach (var where in (ReadOnlySpan<double>)[angle - Step, angle + Step])
        {
            if (Try(where) is { Converged: false } failed)
            {
                return failed;
            }
        }

        for (var turn = 0; turn < 4; turn++)
        {
            if (Try(Top(tries)) is not { } point)
            {
                break;
            }

            if (!point.Converged)
            {
                return point;
            }
        }

        var top = tries.MaxBy(t => t.Point.Figures!.Torque);
        return Excess(search, top.Point) > 0 ? Held(search, top.Point, top.Angle, at) : top.Point with { CyclesUsed = tries.Max(t => t.Point.CyclesUsed) };
    }

    /// <summary>Top of the parabola through the best try and its neighbours; a step beyond the best where they have none.</summary>
    private static double Top(List<(double Angle, OperatingPoint Point)> tries)
    {
        var sorted = tries.OrderBy(t => t.Angle).ToList();
        var i = sorted.IndexOf(sorted.MaxBy(t => t.Point.Figures!.Torque));
        if (i == 0 || i == sorted.Count - 1)
        {
            return sorted[i].Angle + (i == 0 ? -Step : Step);
        }

        var ((a, fa), (b, fb), (c, fc)) = (At(i - 1), At(i), At(i + 1));
        var (left, right) = ((b - a) * (fb - fc), (b - c) * (fb - fa));
        return b - (0.5 * (((b - a) * left) - ((b - c) * right)) / (left - right));
        (double Angle, double Torque) At(int k) => (sorted[k].Angle, sorted[k].Point.Figures!.Torque);
    }
}
