using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>A tangent cam under a roller.</summary>
/// <param name="HalfAngle">Cam angle from the start of lift to full lift, rad.</param>
/// <param name="FlankEnd">Cam angle from the start of lift to the end of the flank, rad.</param>
/// <param name="Velocity">Greatest velocity, at the end of the flank, m/s.</param>
/// <param name="FlankStart">Acceleration at the start of the flank, m/s².</param>
/// <param name="FlankFinish">Acceleration at the end of the flank, m/s².</param>
/// <param name="NoseStart">Acceleration at the start of the nose, m/s².</param>
/// <param name="NoseTop">Acceleration at full lift, m/s².</param>
public readonly record struct TangentCamMotion(
    [Quantity("half angle of action", Dimension.Angle, "°", Symbol = "A")] double HalfAngle,
    [Quantity("angle at the end of the flank", Dimension.Angle, "°", Symbol = "θ")] double FlankEnd,
    [Quantity("greatest velocity", Dimension.Speed, "m/s", Symbol = "v")] double Velocity,
    [Quantity("acceleration at the start of the flank", Dimension.Acceleration, "m/s²", Symbol = "a1")] double FlankStart,
    [Quantity("acceleration at the end of the flank", Dimension.Acceleration, "m/s²", Symbol = "a2")] double FlankFinish,
    [Quantity("acceleration at the start of the nose", Dimension.Acceleration, "m/s²", Symbol = "a3")] double NoseStart,
    [Quantity("acceleration at full lift", Dimension.Acceleration, "m/s²", Symbol = "a4")] double NoseTop);

/// <summary>Cams with straight flanks under a roller follower.</summary>
public static class TangentCam
{
    /// <summary>Geometry and peak motion of a symmetric tangent cam under a roller whose axis moves through the cam's axis.</summary>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="noseRadius">Nose radius, m.</param>
    /// <param name="rollerRadius">Roller radius, m.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    [Formula("tangent cam", "cos(A) = (R - r) / Q; tan(θ) = Q sin(A) / (R + ro); v = (R + ro) w sin(θ) / cos(θ)^2; a1 = (R + ro) w^2; a2 = (R + ro) w^2 (2 - cos(θ)^2) / cos(θ)^3; a4 = -Q w^2 (1 + Q / (r + ro))", "Khurmi and Gupta, Theory of Machines, tangent cam with reciprocating roller follower", Provenance = Provenance.FromMemory, Validity = "Q = R + h - r is the distance of the nose's centre; on the nose the roller moves like a slider-crank of crank Q and rod r + ro, which gives a3")]
    public static TangentCamMotion OnRoller(
        [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "R", Above = 0)] double baseRadius,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("nose radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double noseRadius,
        [Quantity("roller radius", Dimension.Length, "mm", Symbol = "ro", Above = 0)] double rollerRadius,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        FormulaDomainException.Unless(noseRadius < baseRadius, "nose radius: must be less than the base circle radius");
        var nose = baseRadius + lift - noseRadius;
        var half = Math.Acos((baseRadius - noseRadius) / nose);
        var arm = baseRadius + rollerRadius;
        var end = Math.Atan(nose * Math.Sin(half) / arm);
        var (sine, cosine) = Math.SinCos(end);
        var w2 = speed * speed;
        return new TangentCamMotion(
            half,
            end,
            arm * speed * sine / (cosine * cosine),
            arm * w2,
            arm * w2 * (2 - (cosine * cosine)) / (cosine * cosine * cosine),
            w2 * NoseCurvature(nose, noseRadius + rollerRadius, half - end),
            w2 * NoseCurvature(nose, noseRadius + rollerRadius, 0));
    }

    /// <summary>Second derivative of the roller's travel by cam angle while it runs over the nose.</summary>
    private static double NoseCurvature(double nose, double rod, double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);
        var side = nose * sine;
        FormulaDomainException.Unless(Math.Abs(side) < rod, "nose radius: too small beside this lift, the roller cannot follow the nose");
        var height = Math.Sqrt((rod * rod) - (side * side));
        var lean = side * nose * cosine;
        return (-nose * cosine) - ((nose * nose * cosine * cosine) - (side * side)) / height - (lean * lean / (height * height * height));
    }
}
