using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>One operating point: cycles until they repeat, then the figures.</summary>
internal static class PointRun
{
    /// <summary>
    /// What repeats from cycle to cycle no closer: limiters switch on and off with the last digits of a wave. Torque is then
    /// known to about this much.
    /// </summary>
    private const double WaveTolerance = 1e-4;

    public static OperatingPoint Run(MarchSetup setup, double speed, RunOptions options, EngineState? previous) =>
        setup.Spec.Combustion is { Search: { } search } burn
            ? PhasingSearch.Run(search, burn, speed, previous, (placed, from) => Run(setup, speed, placed, options, from))
            : Run(setup, speed, setup.Spec.Combustion, options, previous);

    private static OperatingPoint Run(MarchSetup setup, double speed, CombustionSpec? combustion, RunOptions options, EngineState? previous)
    {
        var net = setup.Network;
        var march = new March(setup, speed, setup.Steps(speed, options.CrankStep), combustion);
        if (previous?.Fits(net) == true)
        {
            previous.Restore(march, net);
        }
        else
        {
            march.FillFresh();
        }

        var repeat = new Repetition(setup, march);
        for (var cycle = 1; cycle <= options.MaxCycles; cycle++)
        {
            options.Cancellation.ThrowIfCancellationRequested();
            repeat.Begin();
            march.Cycle();
            var change = repeat.End();
            if (!double.IsFinite(change))
            {
                return new OperatingPoint(speed, cycle, double.PositiveInfinity, null, null, null);
            }

            if (change < (net.Piped ? Math.Max(options.Tolerance, WaveTolerance) : options.Tolerance))
            {
                return Finish(setup, march, repeat, speed, cycle, options.WithTraces);
            }

            repeat.Accelerate();
        }

        return new OperatingPoint(speed, options.MaxCycles, repeat.Change, null, null, null);
    }

    private static OperatingPoint Finish(MarchSetup setup, March march, Repetition repeat, double speed, int cycles, bool withTraces)
    {
        if (withTraces)
        {
            march.Record.Detail = new CycleDetail([.. setup.Spec.Cylinders.Select(c => c.FiringAngle)], [.. setup.Network.WholePipes.Select(w => setup.Network.Pipes[w])], march.Steps);
            repeat.Begin();
            march.Cycle();
            repeat.End();
        }

        var figures = new Reckoning(setup, march, speed, repeat.Balance).Figures();
        var state = EngineState.Capture(march, setup.Network);
        return new OperatingPoint(speed, cycles, repeat.Change, figures, state, march.Record.Detail?.ToTrace());
    }
}
