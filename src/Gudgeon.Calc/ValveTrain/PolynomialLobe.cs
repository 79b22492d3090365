using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Greatest velocity and accelerations of a lobe.</summary>
/// <param name="Velocity">Greatest velocity, m/s.</param>
/// <param name="Opening">Greatest acceleration away from the seat, m/s².</param>
/// <param name="Nose">Acceleration at full lift, m/s²; negative.</param>
public readonly record struct LobePeaks(
    [Quantity("greatest velocity", Dimension.Speed, "m/s", Symbol = "v")] double Velocity,
    [Quantity("greatest opening acceleration", Dimension.Acceleration, "m/s²", Symbol = "a")] double Opening,
    [Quantity("acceleration at the nose", Dimension.Acceleration, "m/s²", Symbol = "an")] double Nose);

/// <summary>A smooth symmetric lobe for estimates: s = h (1 - 4 z²)³, z = angle from the nose over the duration.</summary>
public static class PolynomialLobe
{
    private const string Source = "polynomial lobe with continuous velocity and acceleration; exact derivatives";

    /// <summary>Lift and derivatives at z, the angle from the nose over the duration; zero outside ±0.5.</summary>
    public static LawPoint At(double z)
    {
        if (Math.Abs(z) >= 0.5)
        {
            return default;
        }

        var q = 1 - (4 * z * z);
        return new LawPoint(q * q * q, -24 * z * q * q, -24 * q * (1 - (20 * z * z)), 384 * z * (3 - (20 * z * z)));
    }

    /// <summary>Lift, velocity, acceleration and jerk of the lobe at an angle from its nose.</summary>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="duration">Duration, cam rad.</param>
    /// <param name="angle">Cam angle from the nose, rad; negative while opening.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    [Formula("lobe motion", "s = h (1 - 4 (φ / B)^2)^3; v = s' w; a = s'' w^2; j = s''' w^3", Source, Provenance = Provenance.Definition, Validity = "derivatives by cam angle; zero outside the duration")]
    public static FollowerMotion Motion(
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI, Help = "cam degrees")] double duration,
        [Quantity("angle from the nose", Dimension.Angle, "°", Symbol = "φ", Help = "cam degrees, negative while opening")] double angle,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        var point = At(angle / duration);
        var rate = speed / duration;
        return new FollowerMotion(lift * point.Lift, lift * point.Slope * rate, lift * point.Curvature * rate * rate, lift * point.Jerk * rate * rate * rate);
    }

    /// <summary>Greatest velocity and accelerations of the lobe.</summary>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="duration">Duration, cam rad.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    [Formula("lobe peaks", "v = 3.4346 h w / B; a = 19.2 h w^2 / B^2; an = -24 h w^2 / B^2", Source, Provenance = Provenance.Definition, Validity = "velocity peaks at ±0.2236 of the duration from the nose, opening acceleration at ±0.3873")]
    public static LobePeaks Peaks(
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI, Help = "cam degrees")] double duration,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        var rate = speed / duration;
        return new LobePeaks(
            -At(Math.Sqrt(0.05)).Slope * lift * rate,
            At(Math.Sqrt(0.15)).Curvature * lift * rate * rate,
            At(0).Curvature * lift * rate * rate);
    }
}
