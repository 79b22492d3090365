using System.Globalization;

namespace Gudgeon.Simulation.Sprint;

/// <summary>Refuses a spec that makes no machine that can be run.</summary>
internal static class SprintChecks
{
    /// <exception cref="SprintSpecException">One sentence that names the quantity.</exception>
    public static void Check(SprintSpec spec)
    {
        Check(spec.Engine);
        Check(spec.Driveline, spec.Engine);
        Check(spec.Machine, spec.Rider, spec.Wheels.Wheelbase);
        Check(spec.Wheels);
        Check(spec.Air);
        SprintSpecException.Unless(spec.Strip.Friction >= 0.05, "friction of the strip: must be at least 0.05");
        Within("roll-out", spec.Strip.Rollout, 0, 2, "m");
        Within("length of the run", spec.Strip.Finish, 1, 5000, "m");
    }

    private static void Check(SprintEngine engine)
    {
        var (speeds, torques) = (engine.Speeds, engine.Torques);
        SprintSpecException.Unless(speeds.Count >= 2 && speeds.Count == torques.Count, $"torque curve: {speeds.Count} speeds and {torques.Count} torques given, wanted at least two of each and as many of one as of the other");
        for (var i = 0; i < speeds.Count; i++)
        {
            SprintSpecException.Unless(double.IsFinite(speeds[i]) && speeds[i] > (i == 0 ? 0 : speeds[i - 1]), $"torque curve: speeds must rise from above zero, but point {i + 1} is at {Rpm(speeds[i])}");
            SprintSpecException.Unless(double.IsFinite(torques[i]) && torques[i] >= 0, $"torque curve: torque at {Rpm(speeds[i])} must not be negative");
        }

        OnCurve("launch speed", engine.LaunchSpeed, engine);
        OnCurve("rev limit", engine.RevLimit, engine);
        SprintSpecException.Unless(engine.LaunchSpeed <= engine.RevLimit, $"launch speed: {Rpm(engine.LaunchSpeed)} is above the rev limit of {Rpm(engine.RevLimit)}");
        Within("engine inertia", engine.Inertia, 0, 10, "kg·m²");
    }

    private static void Check(SprintDriveline driveline, SprintEngine engine)
    {
        var gears = driveline.GearRatios;
        Above("primary ratio", driveline.PrimaryRatio);
        Above("final ratio", driveline.FinalRatio);
        SprintSpecException.Unless(gears.Count > 0, "gear ratios: none given");
        for (var i = 0; i < gears.Count; i++)
        {
            Above($"ratio of gear {i + 1}", gears[i]);
            SprintSpecException.Unless(i == 0 || gears[i] < gears[i - 1], $"gear ratios: gear {i + 1} must have a smaller ratio than gear {i}");
        }

        SprintSpecException.Unless(driveline.Efficiency is > 0 and <= 1, "driveline efficiency: must be above 0 and at most 1");
        Within("shift time", driveline.ShiftTime, 0, 5, "s");
        SprintSpecException.Unless(driveline.ClutchCapacity > 0, "clutch capacity: must be above zero");
        if (driveline.ShiftSpeeds is { } shifts)
        {
            SprintSpecException.Unless(shifts.Count == gears.Count - 1, $"shift speeds: {shifts.Count} given, wanted {gears.Count - 1}, one for each gear but the top");
            foreach (var shift in shifts)
            {
                OnCurve("shift speed", shift, engine);
                SprintSpecException.Unless(shift <= engine.RevLimit, $"shift speed: {Rpm(shift)} is above the rev limit of {Rpm(engine.RevLimit)}");
            }
        }
    }

    private static void Check(SprintBody machine, SprintBody rider, double wheelbase)
    {
        Within("wheelbase", wheelbase, 0.5, 10, "m");
        Within("mass of the machine", machine.Mass, 1, 5000, "kg");
        Within("mass of the rider", rider.Mass, 0, 500, "kg");
        foreach (var (name, body) in new[] { ("machine", machine), ("rider", rider) })
        {
            Within($"height of the {name}'s centre of gravity", body.Height, 0, 3, "m");
            Within($"distance of the {name}'s centre of gravity ahead of the rear contact", body.Ahead, -3, 10, "m");
        }

        var ahead = ((machine.Mass * machine.Ahead) + (rider.Mass * rider.Ahead)) / (machine.Mass + rider.Mass);
        SprintSpecException.Unless(ahead > 0 && ahead < wheelbase, "centre of gravity: machine and rider together must balance between the wheels");
    }

    private static void Check(SprintWheels wheels)
    {
        Within("circumference of the rear tyre", wheels.RearCircumference, 0.1, 10, "m");
        Within("growth of the rear tyre", wheels.RearGrowth, 0, 2e-5, "s²/m²");
        Within("inertia of the rear wheel", wheels.RearInertia, 0, 20, "kg·m²");
        Within("inertia of the front wheel", wheels.FrontInertia, 0, 20, "kg·m²");
        Within("radius of the front wheel", wheels.FrontRadius, 0.05, 1, "m");
        Within("rolling resistance", wheels.RollingResistance, 0, 0.5);
        Within("reach of the wheelie bar", wheels.WheelieBar, 0, 10, "m");
    }

    private static void Check(SprintAir air)
    {
        Within("air density", air.Density, 0, 5, "kg/m³");
        Within("drag area", air.DragArea, 0, 10, "m²");
        Within("height of the centre of drag", air.DragHeight, 0, 3, "m");
        Within("head wind", air.HeadWind, -50, 50, "m/s");
    }

    private static void OnCurve(string name, double speed, SprintEngine engine) => SprintSpecException.Unless(
        speed >= engine.Speeds[0] && speed <= engine.Speeds[^1],
        $"{name}: {Rpm(speed)} is outside the torque curve, which goes from {Rpm(engine.Speeds[0])} to {Rpm(engine.Speeds[^1])}");

    private static void Above(string name, double value) =>
        SprintSpecException.Unless(double.IsFinite(value) && value > 0, $"{name}: must be above zero");

    private static void Within(string name, double value, double min, double max, string unit = "") => SprintSpecException.Unless(
        value >= min && value <= max,
        string.Create(CultureInfo.InvariantCulture, $"{name}: given {value:g6} {unit}, wanted {min:g6} to {max:g6} {unit}").Replace(" ,", ",", StringComparison.Ordinal).TrimEnd());

    internal static string Rpm(double radPerSecond) => string.Create(CultureInfo.InvariantCulture, $"{radPerSecond * 30 / Math.PI:0} rpm");
}
