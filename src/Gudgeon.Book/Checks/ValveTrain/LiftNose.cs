using MathNet.Numerics;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>How sharply a measured lift curve turns over its nose.</summary>
internal static class LiftNose
{
    /// <summary>Half the width of the nose that is fitted, crank rad; wide enough that a dial gauge's hundredth does not matter.</summary>
    private const double HalfWidth = 30 * Math.PI / 180;

    /// <summary>
    /// Second derivative of the lift by cam angle at the nose, m/rad², sign left off: a parabola through the readings around
    /// the highest, least squares. NaN when there are fewer than three.
    /// </summary>
    /// <param name="angles">Crank angles, rad, rising.</param>
    /// <param name="lifts">Lifts, m.</param>
    public static double Curvature(double[] angles, double[] lifts)
    {
        var top = angles[Array.IndexOf(lifts, lifts.Max())];
        var near = Enumerable.Range(0, angles.Length).Where(i => Math.Abs(angles[i] - top) <= HalfWidth + 1e-9).ToArray();
        if (near.Length < 3)
        {
            return double.NaN;
        }

        // A cam turns at half the speed of the crank.
        var fit = Fit.Polynomial([.. near.Select(i => (angles[i] - top) / 2)], [.. near.Select(i => lifts[i])], 2);
        return -2 * fit[2];
    }
}
