namespace Gudgeon.Calc.ValveTrain;

/// <summary>Least value of a smooth function on an interval: a scan finds the valley, golden section its floor.</summary>
internal static class Extremum
{
    private const double Golden = 0.6180339887498949;

    /// <summary>Where <paramref name="function"/> is least between <paramref name="low"/> and <paramref name="high"/>.</summary>
    internal static double Least(Func<double, double> function, double low, double high, int steps = 720)
    {
        var step = (high - low) / steps;
        var best = 0;
        var least = double.PositiveInfinity;
        for (var i = 0; i <= steps; i++)
        {
            var value = function(low + (i * step));
            if (value < least)
            {
                (best, least) = (i, value);
            }
        }

        return Floor(function, Math.Max(low, low + ((best - 1) * step)), Math.Min(high, low + ((best + 1) * step)));
    }

    private static double Floor(Func<double, double> function, double low, double high)
    {
        for (var i = 0; i < 80; i++)
        {
            var left = high - (Golden * (high - low));
            var right = low + (Golden * (high - low));
            (low, high) = function(left) <= function(right) ? (low, right) : (left, high);
        }

        // Where the least value sits on an end or beside a jump, only one of the two has it.
        return function(low) <= function(high) ? low : high;
    }
}
