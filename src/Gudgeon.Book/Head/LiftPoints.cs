using Gudgeon.Calc.ValveTrain;
using MathNet.Numerics.Interpolation;

namespace Gudgeon.Book.Head;

/// <summary>A lift curve with its derivatives at even steps of the cam's angle.</summary>
/// <param name="First">First angle from the nose, cam rad.</param>
/// <param name="Step">Step, cam rad.</param>
/// <param name="Lift">Lifts, m.</param>
/// <param name="Slope">First derivatives, m/rad.</param>
/// <param name="Curvature">Second derivatives, m/rad².</param>
/// <param name="Jerk">Third derivatives, m/rad³.</param>
public sealed record LiftPoints(double First, double Step, double[] Lift, double[] Slope, double[] Curvature, double[] Jerk)
{
    /// <summary>Half a degree of the cam, a degree of the crank: no step is longer.</summary>
    private const double Fine = 0.5 * Math.PI / 180;

    /// <summary>Shut points set before and after a measured curve while it is smoothed, so that it leaves the seat and comes back without a kink.</summary>
    private const int Shut = 6;

    private const int FewestForAkima = 5;

    /// <summary>Times that the acceleration of a sound curve may change its sense: to the nose and from it, and once more on each flank.</summary>
    private const int SoundPasses = 4;

    /// <summary>Whether the acceleration swings to and fro as no ground lobe's does: readings that scatter.</summary>
    public bool IsRough
    {
        get
        {
            var large = Curvature.Max(Math.Abs) / 10;
            var signs = Curvature.Where(c => Math.Abs(c) > large).Select(Math.Sign).ToList();
            return signs.Zip(signs.Skip(1), (a, b) => a != b).Count(passed => passed) > SoundPasses;
        }
    }

    /// <summary>Angles from the nose, cam rad.</summary>
    public double[] Angles => [.. Enumerable.Range(0, Lift.Length).Select(i => First + (i * Step))];

    /// <summary>Lift and derivatives at any angle from the nose, cam rad; nothing beyond the ends.</summary>
    public LawPoint At(double angle)
    {
        var place = (angle - First) / Step;
        if (!(place >= 0 && place <= Lift.Length - 1))
        {
            return default;
        }

        var i = Math.Min((int)place, Lift.Length - 2);
        var t = place - i;
        var (a, b) = (1 - t, t);
        return new LawPoint(
            (Lift[i] * a * a * (1 + (2 * b))) + (Slope[i] * Step * b * a * a) + (Lift[i + 1] * b * b * (1 + (2 * a))) - (Slope[i + 1] * Step * a * b * b),
            (Slope[i] * a * a * (1 + (2 * b))) + (Curvature[i] * Step * b * a * a) + (Slope[i + 1] * b * b * (1 + (2 * a))) - (Curvature[i + 1] * Step * a * b * b),
            (Curvature[i] * a) + (Curvature[i + 1] * b),
            (Jerk[i] * a) + (Jerk[i + 1] * b));
    }

    /// <summary>From a law that knows its derivatives.</summary>
    /// <param name="reach">Angle on each side of the nose beyond which there is no lift, cam rad.</param>
    /// <param name="at">Lift and derivatives at an angle from the nose.</param>
    internal static LiftPoints Of(double reach, Func<double, LawPoint> at)
    {
        var half = (int)Math.Ceiling(reach / Fine);
        var points = Enumerable.Range(-half, (2 * half) + 1).Select(i => at(i * Fine)).ToArray();
        return new LiftPoints(-half * Fine, Fine, [.. points.Select(p => p.Lift)], [.. points.Select(p => p.Slope)], [.. points.Select(p => p.Curvature)], [.. points.Select(p => p.Jerk)]);
    }

    /// <summary>From readings: brought to even steps, smoothed within a bound, a cubic spline laid through.</summary>
    /// <param name="angles">Angles from the nose, cam rad, rising.</param>
    /// <param name="lifts">Lifts, m; none at both ends.</param>
    /// <param name="bound">The furthest that a lift may move, m.</param>
    internal static LiftPoints Of(double[] angles, double[] lifts, double bound)
    {
        var (first, step, even) = Evenly(angles, lifts);
        var shut = new double[Shut];
        var smooth = LiftSmoothing.Within([.. shut, .. even, .. shut], bound, Shut + 1)[Shut..^Shut];
        (smooth[0], smooth[^1]) = (0, 0);
        var places = Enumerable.Range(0, smooth.Length).Select(i => first + (i * step)).ToArray();
        return Sampled(CubicSpline.InterpolateBoundariesSorted(places, smooth, SplineBoundaryCondition.FirstDerivative, 0, SplineBoundaryCondition.FirstDerivative, 0), places[0], places[^1]);
    }

    /// <summary>From a lift that can be had at any angle but knows no derivatives.</summary>
    internal static LiftPoints Of(double reach, Func<double, double> lift)
    {
        var half = (int)Math.Ceiling(reach / Fine);
        var angles = Enumerable.Range(-half, (2 * half) + 1).Select(i => i * Fine).ToArray();
        return Sampled(CubicSpline.InterpolateNatural(angles, angles.Select(lift)), angles[0], angles[^1]);
    }

    private static LiftPoints Sampled(CubicSpline spline, double from, double to)
    {
        var count = (int)Math.Ceiling((to - from) / Fine);
        var step = (to - from) / count;
        var angles = Enumerable.Range(0, count + 1).Select(i => from + (i * step)).ToArray();
        var curvature = angles.Select(spline.Differentiate2).ToArray();
        return new LiftPoints(from, step, [.. angles.Select(spline.Interpolate)], [.. angles.Select(spline.Differentiate)], curvature, [.. angles.Select((_, i) => Difference(curvature, i, step))]);
    }

    /// <summary>A cubic spline's own third derivative jumps at every reading; the second's difference over two steps says the same without.</summary>
    private static double Difference(double[] values, int i, double step)
    {
        var (before, after) = (Math.Max(0, i - 1), Math.Min(values.Length - 1, i + 1));
        return (values[after] - values[before]) / ((after - before) * step);
    }

    private static (double First, double Step, double[] Lifts) Evenly(double[] angles, double[] lifts)
    {
        var steps = angles.Zip(angles.Skip(1), (a, b) => b - a).ToList();
        var step = Math.Max(steps.Min(), Fine);
        if (steps.TrueForAll(s => Math.Abs(s - step) < 1e-6))
        {
            return (angles[0], step, lifts);
        }

        var count = (int)Math.Floor((angles[^1] - angles[0]) / step) + 1;
        var spline = angles.Length < FewestForAkima ? CubicSpline.InterpolatePchip(angles, lifts) : CubicSpline.InterpolateAkima(angles, lifts);
        return (angles[0], step, [.. Enumerable.Range(0, count + 1).Select(i => i == count ? 0 : Math.Max(0, spline.Interpolate(angles[0] + (i * step))))]);
    }
}
