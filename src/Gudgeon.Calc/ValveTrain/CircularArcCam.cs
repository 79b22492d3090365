using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>A circular-arc cam under a flat follower.</summary>
/// <param name="FlankCentre">Distance of the flank's centre from the cam's axis, m.</param>
/// <param name="FlankRadius">Radius of the flank, m.</param>
/// <param name="FlankEnd">Cam angle from the start of lift to the end of the flank, rad.</param>
/// <param name="Velocity">Greatest velocity, at the end of the flank, m/s.</param>
/// <param name="FlankStart">Acceleration at the start of the flank, m/s².</param>
/// <param name="FlankFinish">Acceleration at the end of the flank, m/s².</param>
/// <param name="NoseStart">Acceleration at the start of the nose, m/s².</param>
/// <param name="NoseTop">Acceleration at full lift, m/s².</param>
public readonly record struct ArcCamMotion(
    [Quantity("flank centre distance", Dimension.Length, "mm", Symbol = "P")] double FlankCentre,
    [Quantity("flank radius", Dimension.Length, "mm", Symbol = "Rf")] double FlankRadius,
    [Quantity("angle at the end of the flank", Dimension.Angle, "°", Symbol = "θ")] double FlankEnd,
    [Quantity("greatest velocity", Dimension.Speed, "m/s", Symbol = "v")] double Velocity,
    [Quantity("acceleration at the start of the flank", Dimension.Acceleration, "m/s²", Symbol = "a1")] double FlankStart,
    [Quantity("acceleration at the end of the flank", Dimension.Acceleration, "m/s²", Symbol = "a2")] double FlankFinish,
    [Quantity("acceleration at the start of the nose", Dimension.Acceleration, "m/s²", Symbol = "a3")] double NoseStart,
    [Quantity("acceleration at full lift", Dimension.Acceleration, "m/s²", Symbol = "a4")] double NoseTop);

/// <summary>Cams made of three circular arcs, as ground before the computer.</summary>
public static class CircularArcCam
{
    /// <summary>Geometry and peak motion of a symmetric circular-arc cam under a flat follower.</summary>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="noseRadius">Nose radius, m.</param>
    /// <param name="halfAngle">Cam angle from the start of lift to full lift, rad.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    [Formula("circular-arc cam", "P = (Q^2 - (R - r)^2) / (2 ((R - r) - Q cos(A))); Rf = R + P; sin(θ) = Q sin(A) / (Rf - r); v = P w sin(θ); a1 = P w^2; a2 = P w^2 cos(θ); a3 = -Q w^2 cos(A - θ); a4 = -Q w^2", "Bevan, The Theory of Machines, 3rd ed., chapter 9", Validity = "flat follower; Q = R + h - r is the distance of the nose's centre; convex flanks")]
    public static ArcCamMotion OnFlatFollower(
        [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "R", Above = 0)] double baseRadius,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("nose radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double noseRadius,
        [Quantity("half angle of action", Dimension.Angle, "°", Symbol = "A", Above = 0, Below = Math.PI)] double halfAngle,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        FormulaDomainException.Unless(noseRadius < baseRadius, "nose radius: must be less than the base circle radius");
        var nose = baseRadius + lift - noseRadius;
        var difference = baseRadius - noseRadius;
        FormulaDomainException.Unless(difference > nose * Math.Cos(halfAngle), "half angle of action: too small for this lift, the flank would be hollow");
        var flank = ((nose * nose) - (difference * difference)) / (2 * (difference - (nose * Math.Cos(halfAngle))));
        var sine = nose * Math.Sin(halfAngle) / (flank + difference);
        var end = Math.Asin(sine);
        var w2 = speed * speed;
        return new ArcCamMotion(
            flank,
            baseRadius + flank,
            end,
            flank * speed * sine,
            flank * w2,
            flank * w2 * Math.Cos(end),
            -nose * w2 * Math.Cos(halfAngle - end),
            -nose * w2);
    }
}
