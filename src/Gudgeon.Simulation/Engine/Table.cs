namespace Gudgeon.Simulation.Engine;

/// <summary>Reading of tables, straight between the points.</summary>
internal static class Table
{
    /// <summary>Value at <paramref name="x"/>, held beyond the ends. <paramref name="xs"/> rise.</summary>
    public static double Read(IReadOnlyList<double> xs, IReadOnlyList<double> ys, double x)
    {
        if (x <= xs[0])
        {
            return ys[0];
        }

        var (low, high) = (0, xs.Count - 1);
        if (x >= xs[high])
        {
            return ys[high];
        }

        while (high - low > 1)
        {
            var middle = (low + high) >> 1;
            (low, high) = xs[middle] <= x ? (middle, high) : (low, middle);
        }

        return ys[low] + ((x - xs[low]) / (xs[high] - xs[low]) * (ys[high] - ys[low]));
    }

    /// <summary>Value of a trace that repeats every 720°.</summary>
    public static double ReadPeriodic(IReadOnlyList<double> angles, IReadOnlyList<double> ys, double angle)
    {
        var local = angles[0] + ValveArea.Wrap(angle - angles[0]);
        return local <= angles[^1]
            ? Read(angles, ys, local)
            : ys[^1] + ((local - angles[^1]) / (angles[0] + 720 - angles[^1]) * (ys[0] - ys[^1]));
    }
}
