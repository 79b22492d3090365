using Gudgeon.Book.Duty;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Sweeps;

/// <summary>The mean of a figure over engine speed: the area under its curve by the trapezoidal rule, over the width of the range.</summary>
public static class SpeedMean
{
    /// <summary>The mean, SI; the figure itself at a single speed; NaN when there is no point or one did not settle.</summary>
    /// <param name="points">Points in rising speed.</param>
    /// <param name="figure">The figure.</param>
    public static double Of(IReadOnlyList<OperatingPoint> points, EngineFigure figure)
    {
        if (points.Count == 0 || points.Any(p => !p.Converged))
        {
            return double.NaN;
        }

        var values = points.Select(p => figure.Of(p.Figures!)).ToList();
        var width = points[^1].Speed - points[0].Speed;
        return width <= 0 ? values[0] : Enumerable.Range(1, points.Count - 1).Sum(i => (points[i].Speed - points[i - 1].Speed) * (values[i] + values[i - 1]) / 2) / width;
    }
}
