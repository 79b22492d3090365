using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Simulation.ValveTrain;

/// <summary>Lift and its derivatives at one cam angle.</summary>
/// <param name="Lift">m.</param>
/// <param name="Slope">m per cam rad.</param>
/// <param name="Curvature">m per cam rad, squared.</param>
public readonly record struct LiftPoint(double Lift, double Slope, double Curvature);

/// <summary>
/// What one lobe asks of the valve: kinematic lift at the valve, the ratio of a rocker or finger in it and the lash not yet
/// taken off, against cam angle from the nose. A quintic in each of many equal intervals, so that lift, slope and
/// curvature have no steps; zero outside.
/// </summary>
public sealed class LiftProfile
{
    private const int Terms = 6;
    private const double FinestGrid = Math.PI / 360;

    private readonly double[] _terms;
    private readonly double _perRadian;
    private readonly int _intervals;

    private LiftProfile(double start, double end, LiftPoint[] points)
    {
        (Start, End, _intervals) = (start, end, points.Length - 1);
        var width = (end - start) / _intervals;
        _perRadian = 1 / width;
        _terms = new double[Terms * _intervals];
        for (var i = 0; i < _intervals; i++)
        {
            Quintic.Fit(points[i], points[i + 1], width, _terms.AsSpan(Terms * i, Terms));
        }

        for (var i = 0; i <= 8 * _intervals; i++)
        {
            var point = At(start + ((end - start) * i / (8.0 * _intervals)));
            FullLift = Math.Max(FullLift, point.Lift);
            GreatestSlope = Math.Max(GreatestSlope, Math.Abs(point.Slope));
        }
    }

    /// <summary>Cam angle from the nose at which the lift begins, rad; negative.</summary>
    public double Start { get; }

    /// <summary>Cam angle from the nose at which the lift ends, rad.</summary>
    public double End { get; }

    /// <summary>Greatest lift, m.</summary>
    public double FullLift { get; }

    /// <summary>Greatest slope, m per cam rad.</summary>
    public double GreatestSlope { get; }

    /// <summary>A lobe known with its derivatives, as from a cam law or a cam maker's table.</summary>
    /// <param name="angles">Cam angles from the nose, rad, rising, from below 0 to above it, over one turn at most.</param>
    /// <param name="points">Lift and derivatives at each; lift and slope are nought at both ends.</param>
    /// <exception cref="TrainSpecException">The points make no lobe.</exception>
    public static LiftProfile FromPoints(IReadOnlyList<double> angles, IReadOnlyList<LiftPoint> points)
    {
        LobeChecks.Check(angles, points);
        var (start, end) = (angles[0], angles[^1]);
        return new LiftProfile(start, end, IsEven(angles) ? [.. points] : Even(angles, points));
    }

    /// <summary>
    /// A lobe measured with a degree wheel and a dial gauge: a cubic spline through the readings gives slopes and
    /// curvatures, level at both ends. Reading errors come out in the curvature: a hundredth of a millimetre at
    /// readings 2° apart is some 8 mm/rad², so read seldom and carefully rather than often.
    /// </summary>
    /// <param name="angles">Cam angles from the nose, rad, rising, from below 0 to above it, over one turn at most.</param>
    /// <param name="lifts">Lift at each, m; nought at both ends.</param>
    /// <exception cref="TrainSpecException">The readings make no lobe.</exception>
    public static LiftProfile FromReadings(IReadOnlyList<double> angles, IReadOnlyList<double> lifts)
    {
        TrainSpecException.Unless(
            angles.Count == lifts.Count && angles.Count >= 5,
            $"lift readings: {angles.Count} angles and {lifts.Count} lifts given, wanted at least five of each and as many of one as of the other");
        LobeChecks.CheckAngles(angles);
        return FromPoints(angles, LevelSpline.Through(angles, lifts));
    }

    /// <summary>The smooth symmetric lobe of <see cref="PolynomialLobe"/>, for estimates.</summary>
    /// <param name="fullLift">Full lift at the valve, lash not taken off, m; above 0.</param>
    /// <param name="duration">Duration, cam rad; above 0, at most 2π.</param>
    /// <exception cref="TrainSpecException">The figures make no lobe.</exception>
    public static LiftProfile Polynomial(double fullLift, double duration)
    {
        TrainSpecException.Unless(duration is > 0 and <= 2 * Math.PI, $"duration of the lobe: {duration} cam rad given, wanted above 0 and at most one turn");
        var angles = new double[361];
        var points = new LiftPoint[angles.Length];
        for (var i = 0; i < angles.Length; i++)
        {
            var z = (i / 360.0) - 0.5;
            var law = PolynomialLobe.At(z);
            angles[i] = z * duration;
            points[i] = new LiftPoint(fullLift * law.Lift, fullLift * law.Slope / duration, fullLift * law.Curvature / (duration * duration));
        }

        return FromPoints(angles, points);
    }

    /// <summary>Lift, slope and curvature at a cam angle from the nose, rad.</summary>
    public LiftPoint At(double angle) => At(angle, out _);

    /// <summary>The same with the third derivative, m per cam rad, cubed, which may jump from interval to interval.</summary>
    internal LiftPoint At(double angle, out double third)
    {
        var place = (angle - Start) * _perRadian;
        if (!(place >= 0 && place <= _intervals))
        {
            third = 0;
            return default;
        }

        var i = Math.Min((int)place, _intervals - 1);
        var u = place - i;
        var c = _terms.AsSpan(Terms * i, Terms);
        third = _perRadian * _perRadian * _perRadian * ((6 * c[3]) + (u * ((24 * c[4]) + (u * 60 * c[5]))));
        return Quintic.At(c, u, _perRadian);
    }

    /// <summary>Lift alone with its slope, m and m per cam rad: what every evaluation of the forces asks for.</summary>
    internal double LiftAt(double angle, out double slope)
    {
        var place = (angle - Start) * _perRadian;
        if (!(place > 0 && place < _intervals))
        {
            slope = 0;
            return 0;
        }

        var i = (int)place;
        var u = place - i;
        var c = _terms.AsSpan(Terms * i, Terms);
        slope = _perRadian * (c[1] + (u * ((2 * c[2]) + (u * ((3 * c[3]) + (u * ((4 * c[4]) + (u * 5 * c[5]))))))));
        return c[0] + (u * (c[1] + (u * (c[2] + (u * (c[3] + (u * (c[4] + (u * c[5])))))))));
    }

    private static bool IsEven(IReadOnlyList<double> angles)
    {
        var width = (angles[^1] - angles[0]) / (angles.Count - 1);
        return !angles.Where((angle, i) => Math.Abs(angle - angles[0] - (i * width)) > 1e-9 * width).Any();
    }

    /// <summary>The same lobe read at equal intervals of half a degree or a little less.</summary>
    private static LiftPoint[] Even(IReadOnlyList<double> angles, IReadOnlyList<LiftPoint> points)
    {
        var (start, end) = (angles[0], angles[^1]);
        var even = new LiftPoint[2 + (int)((end - start) / FinestGrid)];
        var terms = new double[Terms];
        var interval = -1;
        for (var i = 0; i < even.Length; i++)
        {
            var angle = start + ((end - start) * i / (even.Length - 1));
            while (interval < 0 || (angle > angles[interval + 1] && interval + 2 < angles.Count))
            {
                interval++;
                Quintic.Fit(points[interval], points[interval + 1], angles[interval + 1] - angles[interval], terms);
            }

            var width = angles[interval + 1] - angles[interval];
            even[i] = Quintic.At(terms, (angle - angles[interval]) / width, 1 / width);
        }

        return even;
    }
}
