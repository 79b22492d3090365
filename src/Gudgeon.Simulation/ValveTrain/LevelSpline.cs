namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// The cubic spline through readings that is level at both ends: C. de Boor, A Practical Guide to Splines (1978), ch. IV,
/// complete spline. Its slopes and curvatures feed a quintic, in which the curvature at the ends is nought too.
/// </summary>
internal static class LevelSpline
{
    /// <summary>Lift, slope and curvature at each reading.</summary>
    public static LiftPoint[] Through(IReadOnlyList<double> xs, IReadOnlyList<double> ys)
    {
        var slopes = Slopes(xs, ys);
        var points = new LiftPoint[xs.Count];
        for (var i = 1; i < xs.Count - 1; i++)
        {
            var width = xs[i + 1] - xs[i];
            var chord = (ys[i + 1] - ys[i]) / width;
            points[i] = new LiftPoint(ys[i], slopes[i], ((6 * chord) - (4 * slopes[i]) - (2 * slopes[i + 1])) / width);
        }

        (points[0], points[^1]) = (new LiftPoint(ys[0], 0, 0), new LiftPoint(ys[^1], 0, 0));
        return points;
    }

    /// <summary>Slopes for which the curvature has no steps: a tridiagonal set, solved in one sweep down and one up.</summary>
    private static double[] Slopes(IReadOnlyList<double> xs, IReadOnlyList<double> ys)
    {
        var slopes = new double[xs.Count];
        var above = new double[xs.Count];
        for (var i = 1; i < xs.Count - 1; i++)
        {
            var (left, right) = (1 / (xs[i] - xs[i - 1]), 1 / (xs[i + 1] - xs[i]));
            var pull = 3 * ((left * left * (ys[i] - ys[i - 1])) + (right * right * (ys[i + 1] - ys[i])));
            var pivot = (2 * (left + right)) - (left * above[i - 1]);
            above[i] = right / pivot;
            slopes[i] = (pull - (left * slopes[i - 1])) / pivot;
        }

        for (var i = xs.Count - 2; i > 0; i--)
        {
            slopes[i] -= above[i] * slopes[i + 1];
        }

        return slopes;
    }
}
