using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>
/// A finger or a rocker as it swings on its cam: the pad's arc stays in touch with the lobe, the pivot stays where it is, and
/// what the beam turns lifts the valve. Exact for any lobe that is convex, which is given by the lift of a flat follower; the
/// valve's arm is square to the stem at half of full lift.
/// </summary>
public sealed class FollowerArms
{
    private readonly Func<double, LawPoint> _lobe;
    private readonly double _shut;
    private readonly double _shutDirection;
    private readonly double _mostTurn;

    /// <param name="lobe">Lift of a flat follower, m, and its derivatives, at a cam angle from the nose, rad.</param>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="pivotToCam">From the pivot to the cam's axis, m.</param>
    /// <param name="camArm">From the pivot to the middle of the pad's arc, m.</param>
    /// <param name="padRadius">Radius of the pad, m.</param>
    /// <param name="valveArm">From the pivot to the valve tip, m.</param>
    public FollowerArms(Func<double, LawPoint> lobe, double baseRadius, double pivotToCam, double camArm, double padRadius, double valveArm)
    {
        (_lobe, BaseRadius, PivotToCam, CamArm, PadRadius, ValveArm) = (lobe, baseRadius, pivotToCam, camArm, padRadius, valveArm);
        var away = baseRadius + padRadius;
        FormulaDomainException.Unless(camArm < pivotToCam + away && pivotToCam < camArm + away && away < camArm + pivotToCam, "arm to the pad: with this pivot, pad and base circle the pad cannot rest on the cam");
        _shutDirection = FollowerRatio.Angle(pivotToCam, away, camArm) - Math.PI;
        _shut = Turned(_shutDirection, default);
        Nose = Extremum.Least(angle => -Turn(angle), -0.8, 0.8);
        _mostTurn = Turn(Nose);
    }

    private double BaseRadius { get; }

    private double PivotToCam { get; }

    private double CamArm { get; }

    private double PadRadius { get; }

    private double ValveArm { get; }

    /// <summary>Cam angle by which full lift at the valve stands away from where the nose points at the shut pad's contact, rad.</summary>
    public double Nose { get; }

    /// <summary>Lift at the valve, m, at a cam angle from full lift, rad; negative while opening.</summary>
    /// <param name="angle">Cam angle, rad.</param>
    /// <param name="towards">Whether the lobe wipes the pad towards the pivot; else away from it.</param>
    public double Lift(double angle, bool towards = false) =>
        ValveArm * (Math.Sin(Turn(Nose + (towards ? -angle : angle)) - (_mostTurn / 2)) + Math.Sin(_mostTurn / 2));

    /// <summary>How far the beam has turned from shut, rad, when the nose points this far past the shut pad's contact.</summary>
    private double Turn(double cam)
    {
        // The cam's axis is the origin, the pivot lies at (-d, 0), the pad below; turning the cam forwards wipes the pad away from the pivot.
        var nose = _shutDirection + cam;
        double Miss(double direction) => Distance(direction, _lobe(nose - direction)) - CamArm;
        var contact = Brent.TryFindRoot(Miss, Math.Max(_shutDirection - Bracket, Dead - Math.PI), Math.Min(_shutDirection + Bracket, -Dead), 1e-12, 200, out var root) ? root
            : throw new FormulaDomainException("arm to the pad: the pad leaves the lobe, or the lobe is hollow");
        return _shut - Turned(contact, _lobe(nose - contact));
    }

    /// <summary>The contact wanders over the pad by less than this, rad.</summary>
    private const double Bracket = 1.1;

    /// <summary>So near to the line of pivot and cam the beam has no arm left, rad.</summary>
    private const double Dead = 0.01;

    /// <summary>The middle of the pad's arc when it touches where the lobe's normal has this direction.</summary>
    private (double X, double Y) Pad(double direction, LawPoint lobe)
    {
        var (sine, cosine) = Math.SinCos(direction);
        var (along, across) = (BaseRadius + PadRadius + lobe.Lift, -lobe.Slope);
        return ((along * cosine) - (across * sine), (along * sine) + (across * cosine));
    }

    private double Distance(double direction, LawPoint lobe)
    {
        var (x, y) = Pad(direction, lobe);
        return Math.Sqrt(((x + PivotToCam) * (x + PivotToCam)) + (y * y));
    }

    /// <summary>Direction of the beam, rad.</summary>
    private double Turned(double direction, LawPoint lobe)
    {
        var (x, y) = Pad(direction, lobe);
        return Math.Atan2(y, x + PivotToCam);
    }
}
