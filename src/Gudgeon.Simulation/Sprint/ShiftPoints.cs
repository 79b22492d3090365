namespace Gudgeon.Simulation.Sprint;

/// <summary>Where each gear is left.</summary>
internal static class ShiftPoints
{
    private const int Samples = 400;

    /// <summary>Road speed at which each gear is left, m/s; for the top gear, that of the rev limit.</summary>
    public static double[] For(SprintSpec spec, SprintModel model)
    {
        var speeds = new double[model.TopGear + 1];
        for (var gear = 0; gear <= model.TopGear; gear++)
        {
            speeds[gear] = gear == model.TopGear ? model.RoadSpeed(gear, spec.Engine.RevLimit)
                : spec.Driveline.ShiftSpeeds is { } chosen ? model.RoadSpeed(gear, chosen[gear])
                : Best(spec, model, gear);
        }

        return speeds;
    }

    /// <summary>
    /// The speed above which the next gear pulls harder all the way to the rev limit; the rev limit when this gear pulls
    /// harder to its end. A dip in the curve lower down does not tempt to an early shift.
    /// </summary>
    private static double Best(SprintSpec spec, SprintModel model, int gear)
    {
        var high = model.RoadSpeed(gear, spec.Engine.RevLimit);
        var low = model.RoadSpeed(gear + 1, model.LowestSpeed);
        if (!double.IsFinite(high) || low >= high || Gain(high) <= 0)
        {
            return high;
        }

        for (var i = Samples - 1; i >= 0; i--)
        {
            var speed = low + ((high - low) * i / Samples);
            if (Gain(speed) <= 0)
            {
                return Crossing(speed, low + ((high - low) * (i + 1) / Samples));
            }
        }

        return low;

        double Gain(double speed) => model.Locked(gear + 1, speed).Acceleration - model.Locked(gear, speed).Acceleration;

        double Crossing(double below, double above)
        {
            while (above - below > 1e-9)
            {
                var middle = 0.5 * (below + above);
                (below, above) = Gain(middle) <= 0 ? (middle, above) : (below, middle);
            }

            return above;
        }
    }
}
