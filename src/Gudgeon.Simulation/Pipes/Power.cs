namespace Gudgeon.Simulation.Pipes;

/// <summary>Powers of numbers near one, which is what pressure ratios at a mouth mostly are.</summary>
internal static class Power
{
    /// <summary>A number above zero to a power; close to one by the binomial series, good to 1e-12 of it.</summary>
    public static double Of(double number, double exponent)
    {
        var x = number - 1;
        if (Math.Abs(x) > 0.02)
        {
            return Math.Pow(number, exponent);
        }

        var term = exponent * x;
        var sum = 1 + term;
        for (var n = 2; n <= 7; n++)
        {
            term *= (exponent - n + 1) * x / n;
            sum += term;
        }

        return sum;
    }
}
