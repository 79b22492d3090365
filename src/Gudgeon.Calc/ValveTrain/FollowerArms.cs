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
        _shutDirection = Angle(pivotToCam, away, camArm) - Math.PI;
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

    /// <summary>Ratio of the speeds at valve and flat follower with the pad on a circle about the cam's axis: base circle, or the same with some lift.</summary>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="pivotToCam">From the pivot to the cam's axis, m.</param>
    /// <param name="camArm">From the pivot to the middle of the pad's arc, m.</param>
    /// <param name="padRadius">Radius of the pad, m.</param>
    /// <param name="valveArm">From the pivot to the valve tip, m.</param>
    /// <param name="lift">Lift of the lobe, m.</param>
    [Formula("finger or rocker ratio", "cos(γ) = (a^2 + (R + ρ + s)^2 - d^2) / (2 a (R + ρ + s)); q = b / (a sin(γ))", "triangle of cam axis, pivot and middle of the pad's arc; speed along the common normal", Provenance = Provenance.Definition, Validity = "contact on the line from the cam's axis: on the base circle and at the nose")]
    [return: Quantity("ratio", Dimension.Number, Symbol = "q")]
    public static double Ratio(
        [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "R", Above = 0)] double baseRadius,
        [Quantity("pivot to cam axis", Dimension.Length, "mm", Symbol = "d", Above = 0)] double pivotToCam,
        [Quantity("arm to the pad", Dimension.Length, "mm", Symbol = "a", Above = 0)] double camArm,
        [Quantity("pad radius", Dimension.Length, "mm", Symbol = "ρ", Above = 0)] double padRadius,
        [Quantity("arm to the valve", Dimension.Length, "mm", Symbol = "b", Above = 0)] double valveArm,
        [Quantity("lift of the lobe", Dimension.Length, "mm", Symbol = "s", Min = 0)] double lift = 0)
    {
        var away = baseRadius + padRadius + lift;
        FormulaDomainException.Unless(camArm < pivotToCam + away && pivotToCam < camArm + away && away < camArm + pivotToCam, "arm to the pad: with this pivot, pad and base circle the pad cannot rest on the cam");
        return valveArm / (camArm * Math.Sin(Angle(camArm, away, pivotToCam)));
    }

    /// <summary>Angle between two sides of a triangle, rad, from the three lengths.</summary>
    private static double Angle(double a, double b, double opposite) => Math.Acos(Math.Clamp(((a * a) + (b * b) - (opposite * opposite)) / (2 * a * b), -1, 1));

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
