namespace Gudgeon.Simulation.ValveTrain;

/// <summary>Refuses points that make no lobe.</summary>
internal static class LobeChecks
{
    /// <summary>What is left of a lobe's end must be less than this share of its full lift.</summary>
    private const double Nought = 1e-6;

    public static void Check(IReadOnlyList<double> angles, IReadOnlyList<LiftPoint> points)
    {
        TrainSpecException.Unless(
            angles.Count == points.Count && angles.Count >= 3,
            $"lift profile: {angles.Count} angles and {points.Count} points given, wanted at least three of each and as many of one as of the other");
        CheckAngles(angles);
        foreach (var (angle, point) in angles.Zip(points))
        {
            TrainSpecException.Unless(
                double.IsFinite(point.Lift + point.Slope + point.Curvature),
                $"lift profile: at {Degrees(angle):0.##}° a lift, slope or curvature is not a number");
            TrainSpecException.Unless(point.Lift >= 0, $"lift profile: the lift at {Degrees(angle):0.##}° is {point.Lift * 1e3:0.###} mm, wanted 0 or more");
        }

        var full = points.Max(p => p.Lift);
        TrainSpecException.Unless(full > 0, $"lift profile: the greatest lift is nought, wanted above 0");
        foreach (var (angle, end) in new[] { (angles[0], points[0]), (angles[^1], points[^1]) })
        {
            TrainSpecException.Unless(
                end.Lift <= Nought * full && Math.Abs(end.Slope) <= Nought * full,
                $"lift profile: at its end, {Degrees(angle):0.##}°, the lift is {end.Lift * 1e3:0.####} mm and the slope {end.Slope * 1e3:0.####} mm/rad, wanted nought");
        }
    }

    public static void CheckAngles(IReadOnlyList<double> angles)
    {
        for (var i = 0; i < angles.Count; i++)
        {
            TrainSpecException.Unless(
                double.IsFinite(angles[i]) && (i == 0 || angles[i] > angles[i - 1]),
                $"lift profile: cam angles must rise, but point {i + 1} is at {Degrees(angles[i]):0.##}°");
        }

        TrainSpecException.Unless(
            angles[0] < 0 && angles[^1] > 0 && angles[^1] - angles[0] <= (2 * Math.PI) + 1e-12,
            $"lift profile: it goes from {Degrees(angles[0]):0.##}° to {Degrees(angles[^1]):0.##}° of cam, wanted from below 0 (the nose) to above it, one turn at most");
    }

    private static double Degrees(double angle) => angle * 180 / Math.PI;
}
