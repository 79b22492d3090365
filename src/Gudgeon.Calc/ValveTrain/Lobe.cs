using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.LinearAlgebra;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>
/// A symmetric lobe made from duration, lift and a law, with a ramp of even speed on both sides. The law is a sum of even
/// functions of z, the angle from the nose over half the duration, whose shares are found from what must hold: full lift at
/// the nose; height and speed of the ramp, and no acceleration, where the ramp takes over.
/// </summary>
public sealed class Lobe
{
    /// <summary>Share of the ramp over which it gathers its speed.</summary>
    private const double LeadIn = 0.25;

    private readonly LobeLaw _law;
    private readonly double _half;
    private readonly double _rampHeight;
    private readonly double _rampAngle;
    private readonly double _rampSlope;
    private readonly double[] _shares;

    /// <param name="law">Law of the lobe.</param>
    /// <param name="lift">Lift at the nose, ramp counted, m.</param>
    /// <param name="duration">Between the tops of the ramps, cam rad.</param>
    /// <param name="rampHeight">Height of the ramp, m; 0 for none.</param>
    /// <param name="rampAngle">Length of the ramp, cam rad.</param>
    public Lobe(LobeLaw law, double lift, double duration, double rampHeight = 0, double rampAngle = 0)
    {
        FormulaDomainException.Unless(rampHeight < lift, "ramp height: must be less than the lift of the lobe");
        FormulaDomainException.Unless(rampHeight == 0 || rampAngle > 0, "ramp length: a ramp of some height must have a length");
        FormulaDomainException.Unless(duration + (2 * rampAngle) <= 2 * Math.PI, "duration: with its ramps the lobe must fit on the cam");
        (_law, _half, _rampHeight, _rampAngle) = (law, duration / 2, rampHeight, rampHeight == 0 ? 0 : rampAngle);
        _rampSlope = rampHeight == 0 ? 0 : rampHeight / (rampAngle * (1 - (LeadIn / 2)));
        _shares = Shares(law, lift, rampHeight, -_rampSlope * _half);
    }

    /// <summary>Half the angle over which it lifts, ramp counted, cam rad.</summary>
    public double Reach => _half + _rampAngle;

    /// <summary>Speed of the ramp, m per cam rad.</summary>
    public double RampSlope => _rampSlope;

    /// <summary>Lift, m, and its derivatives by cam angle, m/rad to m/rad³, at an angle from the nose, rad.</summary>
    public LawPoint At(double angle)
    {
        var away = Math.Abs(angle);
        var point = away < _half ? Main(away / _half) : away < Reach ? Ramp(Reach - away) : default;
        return angle < 0 ? point with { Slope = -point.Slope, Jerk = -point.Jerk } : point;
    }

    private LawPoint Main(double z)
    {
        var sum = default(LawPoint);
        for (var i = 0; i < _shares.Length; i++)
        {
            var term = Term(_law, i, z);
            var share = _shares[i];
            sum = new LawPoint(sum.Lift + (share * term.Lift), sum.Slope + (share * term.Slope), sum.Curvature + (share * term.Curvature), sum.Jerk + (share * term.Jerk));
        }

        return new LawPoint(sum.Lift, sum.Slope / _half, sum.Curvature / (_half * _half), sum.Jerk / (_half * _half * _half));
    }

    /// <summary>The ramp: speed gathered along a raised cosine, then even. Seen from the nose it falls, so the odd derivatives are negative.</summary>
    private LawPoint Ramp(double from)
    {
        var lead = LeadIn * _rampAngle;
        if (from >= lead)
        {
            return new LawPoint(_rampSlope * (from - (lead / 2)), -_rampSlope, 0, 0);
        }

        var (sine, cosine) = Math.SinCos(Math.PI * from / lead);
        var rate = Math.PI / lead;
        return new LawPoint(
            _rampSlope / 2 * (from - (sine / rate)),
            -_rampSlope / 2 * (1 - cosine),
            _rampSlope / 2 * rate * sine,
            -_rampSlope / 2 * rate * rate * cosine);
    }

    private static double[] Shares(LobeLaw law, double lift, double end, double slope)
    {
        var count = law == LobeLaw.Cubed ? 4 : law == LobeLaw.Harmonic ? 5 : 6;
        var conditions = Matrix<double>.Build.Dense(count, count, (row, column) => row == 0 ? Term(law, column, 0).Lift : Derivative(law, column, row - 1));
        var wanted = Vector<double>.Build.Dense(count);
        (wanted[0], wanted[1], wanted[2]) = (lift, end, slope);
        return [.. conditions.Solve(wanted)];
    }

    /// <summary>Derivative of a term at the end of the main lift, z = 1.</summary>
    private static double Derivative(LobeLaw law, int term, int order)
    {
        var point = Term(law, term, 1);
        return order switch
        {
            0 => point.Lift,
            1 => point.Slope,
            2 => point.Curvature,
            3 => point.Jerk,
            _ => Falling(Power(law, term), order),
        };
    }

    private static LawPoint Term(LobeLaw law, int term, double z)
    {
        if (law == LobeLaw.Harmonic)
        {
            var rate = term * Math.PI / 2;
            var (sine, cosine) = Math.SinCos(rate * z);
            return new LawPoint(cosine, -rate * sine, -rate * rate * cosine, rate * rate * rate * sine);
        }

        var power = Power(law, term);
        double Of(int order) => Falling(power, order) is var factor && factor == 0 ? 0 : factor * Math.Pow(z, power - order);
        return new LawPoint(Of(0), Of(1), Of(2), Of(3));
    }

    private static int Power(LobeLaw law, int term) => law == LobeLaw.Cubed ? 2 * term : term switch { 0 => 0, 1 => 2, _ => (6 * term) - 4 };

    /// <summary>n (n − 1) … of as many factors as the order.</summary>
    private static double Falling(int n, int order) => Enumerable.Range(0, order).Aggregate(1.0, (product, i) => product * (n - i));
}

/// <summary>Motion that a lobe made from duration and lift gives.</summary>
public static class LobeDesign
{
    private const string Source = "even polynomial and cosine lift curves fitted to their end conditions; e.g. Norton, Cam Design and Manufacturing Handbook, polynomial functions; shares by linear equations";

    private const string Validity = "symmetric lobe; Powers has the powers 2, 8, 14, 20, 26; Harmonic is four cosines; velocity and acceleration are continuous at the ramps";

    /// <summary>Lift, velocity, acceleration and jerk of a lobe at an angle from its nose.</summary>
    /// <param name="law">Law of the lobe.</param>
    /// <param name="lift">Lift at the nose, ramp counted, m.</param>
    /// <param name="duration">Between the tops of the ramps, cam rad.</param>
    /// <param name="angle">Cam angle from the nose, rad; negative while opening.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    /// <param name="rampHeight">Height of the ramp, m.</param>
    /// <param name="rampAngle">Length of the ramp, cam rad.</param>
    [Formula("lobe from duration and lift", "s = sum(ci fi(z)); z = 2 φ / B; v = s' w; a = s'' w^2; j = s''' w^3", Source, Provenance = Provenance.FromMemory, Validity = Validity)]
    public static FollowerMotion Motion(
        [Quantity("law of the lobe", Dimension.Number)] LobeLaw law,
        [Quantity("lift of the lobe", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI, Help = "cam degrees, between the tops of the ramps")] double duration,
        [Quantity("angle from the nose", Dimension.Angle, "°", Symbol = "φ", Help = "cam degrees, negative while opening")] double angle,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("ramp height", Dimension.Length, "mm", Symbol = "hr", Min = 0)] double rampHeight = 0,
        [Quantity("ramp length", Dimension.Angle, "°", Symbol = "Br", Min = 0, Max = Math.PI, Help = "cam degrees")] double rampAngle = 0)
    {
        var point = new Lobe(law, lift, duration, rampHeight, rampAngle).At(angle);
        return new FollowerMotion(point.Lift, point.Slope * speed, point.Curvature * speed * speed, point.Jerk * speed * speed * speed);
    }

    /// <summary>Greatest velocity and accelerations of a lobe.</summary>
    /// <param name="law">Law of the lobe.</param>
    /// <param name="lift">Lift at the nose, ramp counted, m.</param>
    /// <param name="duration">Between the tops of the ramps, cam rad.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    /// <param name="rampHeight">Height of the ramp, m.</param>
    /// <param name="rampAngle">Length of the ramp, cam rad.</param>
    [Formula("peaks of a lobe from duration and lift", "v = max(s') w; a = max(s'') w^2; an = s''(0) w^2", Source, Provenance = Provenance.FromMemory, Validity = Validity)]
    public static LobePeaks Peaks(
        [Quantity("law of the lobe", Dimension.Number)] LobeLaw law,
        [Quantity("lift of the lobe", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI, Help = "cam degrees, between the tops of the ramps")] double duration,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("ramp height", Dimension.Length, "mm", Symbol = "hr", Min = 0)] double rampHeight = 0,
        [Quantity("ramp length", Dimension.Angle, "°", Symbol = "Br", Min = 0, Max = Math.PI, Help = "cam degrees")] double rampAngle = 0)
    {
        var lobe = new Lobe(law, lift, duration, rampHeight, rampAngle);
        double Most(Func<LawPoint, double> of) => of(lobe.At(Extremum.Least(a => -of(lobe.At(a)), 0, lobe.Reach)));
        return new LobePeaks(Most(p => -p.Slope) * speed, Most(p => p.Curvature) * speed * speed, lobe.At(0).Curvature * speed * speed);
    }
}
