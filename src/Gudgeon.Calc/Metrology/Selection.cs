namespace Gudgeon.Calc.Metrology;

/// <summary>Finds values by their rank without sorting all the others.</summary>
public static class Selection
{
    private const int Small = 600;

    /// <summary>The value below which a share of the values lies: that of rank ⌊share · n⌋, counted from nought.</summary>
    /// <param name="values">The values, put partly into order.</param>
    /// <param name="share">Share, 0 to 1.</param>
    public static double Quantile(Span<double> values, double share) => Of(values, Math.Clamp((int)(share * values.Length), 0, values.Length - 1));

    /// <summary>The value of a rank, by the algorithm of Floyd and Rivest (Comm. ACM 18, 1975, algorithm 489; from memory).</summary>
    /// <param name="values">The values; afterwards none before the rank is greater, none after it less.</param>
    /// <param name="rank">Rank, from nought.</param>
    public static double Of(Span<double> values, int rank)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rank);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(rank, values.Length);
        Select(values, 0, values.Length - 1, rank);
        return values[rank];
    }

    private static void Select(Span<double> values, int left, int right, int rank)
    {
        while (right > left)
        {
            if (right - left > Small)
            {
                // A sample around the wanted rank tells where it is nearly, so that one pass leaves little.
                double n = right - left + 1, i = rank - left + 1;
                var z = Math.Log(n);
                var s = 0.5 * Math.Exp(2 * z / 3);
                var width = 0.5 * Math.Sqrt(z * s * (n - s) / n) * Math.Sign(i - (n / 2));
                Select(values, Math.Max(left, (int)(rank - (i * s / n) + width)), Math.Min(right, (int)(rank + ((n - i) * s / n) + width)), rank);
            }

            var (from, to) = Part(values, left, right, values[rank]);
            if (to < rank)
            {
                left = from;
            }

            if (rank < from)
            {
                right = to;
            }
        }
    }

    /// <summary>Puts what is less before what is greater; from there on the ranks left and right of the middle remain.</summary>
    private static (int From, int To) Part(Span<double> values, int left, int right, double middle)
    {
        var (i, j) = (left, right);
        while (i <= j)
        {
            while (values[i] < middle)
            {
                i++;
            }

            while (values[j] > middle)
            {
                j--;
            }

            if (i <= j)
            {
                (values[i], values[j]) = (values[j], values[i]);
                i++;
                j--;
            }
        }

        return (i, j);
    }
}
