namespace Gudgeon.Calc.ValveTrain;

/// <summary>
/// Takes the reading noise out of a lift curve: of all curves near the readings the one with the least third differences,
/// weighed so that no lift moves further than a bound: y = min(sum((y - s)²) + λ sum((Δ³y)²)), λ the greatest that keeps the
/// bound. Whittaker (1923), On a new method of graduation, Proc. Edinburgh Math. Soc. 41; Eilers (2003), A perfect smoother,
/// Anal. Chem. 75 (both from memory).
/// </summary>
public static class LiftSmoothing
{
    /// <summary>Half the width of the band of the equations.</summary>
    private const int Reach = 3;

    private const int Halvings = 48;

    /// <summary>Logarithm of a weight that leaves hardly more than a parabola; more would drown in round-off.</summary>
    private const double MostWeight = 8;

    /// <summary>How much more a shut end weighs than a reading and its smoothing.</summary>
    private const double Held = 1e5;

    /// <summary>A smoother curve, none of whose lifts is further than the bound from the reading.</summary>
    /// <param name="lifts">Lifts at even steps of angle, m.</param>
    /// <param name="bound">The furthest that a lift may move, m.</param>
    /// <param name="shut">How many lifts at each end stay as they are: the valve is shut there.</param>
    /// <returns>Smoothed lifts, m.</returns>
    public static double[] Within(double[] lifts, double bound, int shut = 0)
    {
        if (lifts.Length <= 2 * Reach || bound <= 0)
        {
            return [.. lifts];
        }

        // The move grows with the weight, so halving of its logarithm finds the bound.
        var (low, high) = (-12.0, MostWeight);
        var best = lifts;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (low + high);
            var tried = Smoothed(lifts, Math.Pow(10, middle), shut);
            if (Furthest(lifts, tried) <= bound)
            {
                (low, best) = (middle, tried);
            }
            else
            {
                high = middle;
            }
        }

        return [.. best];
    }

    private static double Furthest(double[] a, double[] b)
    {
        var most = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            most = Math.Max(most, Math.Abs(a[i] - b[i]));
        }

        return most;
    }

    /// <summary>Solves (W + λ D'D) y = W s, D the third differences and W one but for the shut ends, by the banded Cholesky factors.</summary>
    private static double[] Smoothed(double[] lifts, double weight, int shut)
    {
        ReadOnlySpan<double> difference = [-1, 3, -3, 1];
        var n = lifts.Length;
        var band = new double[n, Reach + 1];
        var right = new double[n];
        for (var i = 0; i < n; i++)
        {
            band[i, 0] = i < shut || i >= n - shut ? Held * Math.Max(1, weight) : 1;
            right[i] = band[i, 0] * lifts[i];
        }

        for (var row = 0; row + Reach < n; row++)
        {
            for (var i = 0; i <= Reach; i++)
            {
                for (var j = 0; j <= i; j++)
                {
                    band[row + i, i - j] += weight * difference[i] * difference[j];
                }
            }
        }

        Factor(band, n);
        return Solve(band, right);
    }

    private static void Factor(double[,] band, int n)
    {
        for (var i = 0; i < n; i++)
        {
            for (var j = Math.Max(0, i - Reach); j <= i; j++)
            {
                var sum = band[i, i - j];
                for (var k = Math.Max(0, i - Reach); k < j; k++)
                {
                    sum -= band[i, i - k] * (j - k <= Reach ? band[j, j - k] : 0);
                }

                band[i, i - j] = i == j ? Math.Sqrt(sum) : sum / band[j, 0];
            }
        }
    }

    private static double[] Solve(double[,] band, double[] right)
    {
        var n = right.Length;
        double[] y = [.. right];
        for (var i = 0; i < n; i++)
        {
            for (var k = Math.Max(0, i - Reach); k < i; k++)
            {
                y[i] -= band[i, i - k] * y[k];
            }

            y[i] /= band[i, 0];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k <= Math.Min(n - 1, i + Reach); k++)
            {
                y[i] -= band[k, k - i] * y[k];
            }

            y[i] /= band[i, 0];
        }

        return y;
    }
}
