namespace Gudgeon.Book.Sweeps;

/// <summary>
/// The top of one quadratic model between bounds where another is not negative: the multiplier of Lagrange at which the two
/// sides of the edge meet is bracketed and halved, and the answer lies between the last points on either side. With a weight given, the top
/// between the bounds is climbed to along one axis after the other, on which a quadratic has its top in closed form.
/// </summary>
/// <param name="value">What is to be as great as it can be.</param>
/// <param name="margin">What must not be negative; null when nothing must hold.</param>
/// <param name="low">Lower bounds.</param>
/// <param name="high">Upper bounds.</param>
internal sealed class ModelTop(QuadraticModel value, QuadraticModel? margin, double[] low, double[] high)
{
    private const int Rounds = 60, Halvings = 24;

    /// <summary>The place of the top; where nothing between the bounds holds, the place of the greatest margin.</summary>
    /// <param name="start">Where to begin.</param>
    public double[] Find(double[] start)
    {
        var top = Climb(start, value.At);
        if (margin is null || margin.At(top) >= 0)
        {
            return top;
        }

        var inside = Climb(start, margin.At);
        return margin.At(inside) < 0 ? inside : Between(start, top, inside);
    }

    private double[] Between(double[] start, double[] outside, double[] inside)
    {
        // Weights from one that leaves the margin out to one that knows little else, halved as powers.
        var (light, heavy) = (-6.0, 6.0);
        var scale = Math.Max(Math.Abs(value.At(outside) - value.At(inside)), 1e-12) / Math.Max(margin!.At(inside) - margin.At(outside), 1e-12);
        for (var i = 0; i < Halvings; i++)
        {
            var weight = (light + heavy) / 2;
            var at = Climb(start, x => value.At(x) + (scale * Math.Pow(10, weight) * margin.At(x)));
            (light, heavy, outside, inside) = margin.At(at) >= 0 ? (light, weight, outside, at) : (weight, heavy, at, inside);
        }

        var (holds, edge) = (0.0, 1.0);
        double[] Along(double t) => [.. inside.Zip(outside, (a, b) => a + (t * (b - a)))];
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (holds + edge) / 2;
            (holds, edge) = margin.At(Along(middle)) >= 0 ? (middle, edge) : (holds, middle);
        }

        return Along(holds);
    }

    private double[] Climb(double[] start, Func<double[], double> model)
    {
        double[] at = [.. start];
        for (var round = 0; round < Rounds; round++)
        {
            var moved = 0.0;
            for (var i = 0; i < at.Length; i++)
            {
                var before = at[i];
                at[i] = TopAlong(at, i, model);
                moved = Math.Max(moved, Math.Abs(at[i] - before));
            }

            if (moved < 1e-7)
            {
                break;
            }
        }

        return at;
    }

    private double TopAlong(double[] at, int i, Func<double[], double> model)
    {
        double Value(double x) => model([.. at.Select((y, j) => j == i ? x : y)]);
        var (a, b) = (low[i], high[i]);
        var (left, middle, right) = (Value(a), Value((a + b) / 2), Value(b));
        var curvature = left - (2 * middle) + right;
        var end = left > right ? a : b;
        return curvature < 0 ? Math.Clamp(((a + b) / 2) + ((b - a) / 4 * (left - right) / curvature), a, b) : end;
    }
}
