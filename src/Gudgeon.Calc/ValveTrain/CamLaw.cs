using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Motion of a follower between two dwells.</summary>
public enum CamLaw
{
    /// <summary>Simple harmonic: jumps in acceleration at both ends.</summary>
    Harmonic,

    /// <summary>Cycloidal.</summary>
    Cycloidal,

    /// <summary>Polynomial 3-4-5.</summary>
    Polynomial345,

    /// <summary>Polynomial 4-5-6-7.</summary>
    Polynomial4567,

    /// <summary>Parabolic: constant acceleration, then constant deceleration; jumps three times.</summary>
    Parabolic,

    /// <summary>Modified trapezoid: least peak acceleration of the smooth laws.</summary>
    ModifiedTrapezoid,

    /// <summary>Modified sine: low peak velocity.</summary>
    ModifiedSine,
}

/// <summary>Normalised motion: lift and its derivatives by the share of the rise.</summary>
/// <param name="Lift">Share of the full lift.</param>
/// <param name="Slope">First derivative.</param>
/// <param name="Curvature">Second derivative.</param>
/// <param name="Jerk">Third derivative.</param>
public readonly record struct LawPoint(double Lift, double Slope, double Curvature, double Jerk);

/// <summary>Peak factors of a cam law.</summary>
/// <param name="Velocity">Cv: v = Cv h w / B.</param>
/// <param name="Acceleration">Ca: a = Ca h w² / B².</param>
/// <param name="Jerk">Cj: j = Cj h w³ / B³.</param>
/// <param name="AccelerationPosition">Share of the rise at which the acceleration first peaks.</param>
public readonly record struct LawFactors(
    [Quantity("velocity factor", Dimension.Number, Symbol = "Cv")] double Velocity,
    [Quantity("acceleration factor", Dimension.Number, Symbol = "Ca")] double Acceleration,
    [Quantity("jerk factor", Dimension.Number, Symbol = "Cj")] double Jerk,
    [Quantity("position of the acceleration peak", Dimension.Number, Symbol = "ua")] double AccelerationPosition);

/// <summary>Motion of a follower.</summary>
/// <param name="Lift">Lift, m.</param>
/// <param name="Velocity">Velocity, m/s.</param>
/// <param name="Acceleration">Acceleration, m/s².</param>
/// <param name="Jerk">Jerk, m/s³.</param>
public readonly record struct FollowerMotion(
    [Quantity("lift", Dimension.Length, "mm", Symbol = "s")] double Lift,
    [Quantity("velocity", Dimension.Speed, "m/s", Symbol = "v")] double Velocity,
    [Quantity("acceleration", Dimension.Acceleration, "m/s²", Symbol = "a")] double Acceleration,
    [Quantity("jerk", Dimension.Jerk, "m/s³", Symbol = "j")] double Jerk);

/// <summary>Greatest velocity, acceleration and jerk of a follower.</summary>
/// <param name="Velocity">Velocity, m/s.</param>
/// <param name="Acceleration">Acceleration, m/s².</param>
/// <param name="Jerk">Jerk inside the rise, m/s³.</param>
public readonly record struct FollowerPeaks(
    [Quantity("greatest velocity", Dimension.Speed, "m/s", Symbol = "v")] double Velocity,
    [Quantity("greatest acceleration", Dimension.Acceleration, "m/s²", Symbol = "a")] double Acceleration,
    [Quantity("greatest jerk", Dimension.Jerk, "m/s³", Symbol = "j")] double Jerk);

/// <summary>What a flat tappet needs of the cam.</summary>
/// <param name="Eccentricity">Greatest distance of the contact from the tappet's axis, m.</param>
/// <param name="LeastSum">Least of lift plus its second derivative, m.</param>
/// <param name="Position">Share of the rise at which it occurs.</param>
/// <param name="BaseRadius">Base circle radius that leaves the least radius of curvature, m.</param>
public readonly record struct FlatTappet(
    [Quantity("contact eccentricity", Dimension.Length, "mm", Symbol = "e")] double Eccentricity,
    [Quantity("least lift plus second derivative", Dimension.Length, "mm", Symbol = "q")] double LeastSum,
    [Quantity("position of the least", Dimension.Number, Symbol = "u")] double Position,
    [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "Rb")] double BaseRadius);

/// <summary>Standard laws of motion for cams with dwells.</summary>
public static class CamLaws
{
    /// <summary>Peak acceleration factor of the modified trapezoid.</summary>
    private const double TrapezoidAcceleration = 8 * Math.PI / (2 + Math.PI);

    private const string Source = "Norton, Cam Design and Manufacturing Handbook, double-dwell functions; derivatives checked symbolically";

    /// <summary>Lift and derivatives of a law at a share of the rise, 0 to 1.</summary>
    public static LawPoint At(CamLaw law, double u) => law switch
    {
        CamLaw.Harmonic => Harmonic(u),
        CamLaw.Cycloidal => Cycloidal(u),
        CamLaw.Polynomial345 => Polynomial345(u),
        CamLaw.Polynomial4567 => Polynomial4567(u),
        _ when u > 0.5 => Mirrored(At(law, 1 - u)),
        CamLaw.Parabolic => new LawPoint(2 * u * u, 4 * u, 4, 0),
        CamLaw.ModifiedTrapezoid => ModifiedTrapezoid(u),
        _ => ModifiedSine(u),
    };

    /// <summary>Peak factors of a law: unit lift over a unit angle at unit speed.</summary>
    /// <param name="law">Law of motion.</param>
    [Formula("cam law factors", "Cv, Ca, Cj, ua", Source, Validity = "jerk inside the rise; harmonic and parabolic motion also have infinite jerk at their ends")]
    public static LawFactors Factors(
        [Quantity("cam law", Dimension.Number)] CamLaw law) => law switch
        {
            CamLaw.Harmonic => new LawFactors(Math.PI / 2, Math.PI * Math.PI / 2, Math.Pow(Math.PI, 3) / 2, 0),
            CamLaw.Cycloidal => new LawFactors(2, 2 * Math.PI, 4 * Math.PI * Math.PI, 0.25),
            CamLaw.Polynomial345 => new LawFactors(1.875, 10 / Math.Sqrt(3), 60, (3 - Math.Sqrt(3)) / 6),
            CamLaw.Polynomial4567 => new LawFactors(2.1875, 84 * Math.Sqrt(5) / 25, 52.5, (5 - Math.Sqrt(5)) / 10),
            CamLaw.Parabolic => new LawFactors(2, 4, 0, 0),
            CamLaw.ModifiedTrapezoid => new LawFactors(2, TrapezoidAcceleration, 4 * Math.PI * TrapezoidAcceleration, 0.125),
            _ => new LawFactors(4 * Math.PI / (4 + Math.PI), 4 * Math.PI * Math.PI / (4 + Math.PI), 16 * Math.Pow(Math.PI, 3) / (4 + Math.PI), 0.125),
        };

    /// <summary>Greatest velocity, acceleration and jerk of a rise (or return).</summary>
    /// <param name="law">Law of motion.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="angle">Angle of the rise, cam rad.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    [Formula("cam law peaks", "v = Cv h w / B; a = Ca h w^2 / B^2; j = Cj h w^3 / B^3", Source, Validity = "Cv, Ca, Cj of the law")]
    public static FollowerPeaks Peaks(
        [Quantity("cam law", Dimension.Number)] CamLaw law,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("rise angle", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI)] double angle,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        var factors = Factors(law);
        var rate = speed / angle;
        return new FollowerPeaks(factors.Velocity * lift * rate, factors.Acceleration * lift * rate * rate, factors.Jerk * lift * rate * rate * rate);
    }

    /// <summary>Lift, velocity, acceleration and jerk at a point of the rise.</summary>
    /// <param name="law">Law of motion.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="angle">Angle of the rise, cam rad.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    /// <param name="position">Share of the rise, 0 to 1.</param>
    [Formula("cam law motion", "s = h f(u); v = h f'(u) w / B; a = h f''(u) w^2 / B^2; j = h f'''(u) w^3 / B^3", Source, Validity = "f is the normalised law")]
    public static FollowerMotion Motion(
        [Quantity("cam law", Dimension.Number)] CamLaw law,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("rise angle", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI)] double angle,
        [Quantity("cam speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("share of the rise", Dimension.Number, Symbol = "u", Min = 0, Max = 1)] double position)
    {
        var point = At(law, position);
        var rate = speed / angle;
        return new FollowerMotion(lift * point.Lift, lift * point.Slope * rate, lift * point.Curvature * rate * rate, lift * point.Jerk * rate * rate * rate);
    }

    /// <summary>Contact eccentricity and base circle of a cam on a flat tappet.</summary>
    /// <param name="law">Law of motion.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="angle">Angle of the rise, cam rad.</param>
    /// <param name="leastRadius">Least radius of curvature allowed on the cam, m.</param>
    [Formula("flat tappet cam", "e = Cv h / B; q = min(s + s''); Rb = ρ - q", "kinematics of the flat-faced follower: contact at ds/dφ, radius of curvature Rb + s + s''", Provenance = Provenance.Definition, Validity = "s'' by cam angle; the least is found by a scan of the rise")]
    public static FlatTappet OnFlatTappet(
        [Quantity("cam law", Dimension.Number)] CamLaw law,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("rise angle", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI)] double angle,
        [Quantity("least radius of curvature", Dimension.Length, "mm", Symbol = "ρ", Min = 0)] double leastRadius)
    {
        double Sum(double u)
        {
            var point = At(law, u);
            return lift * (point.Lift + (point.Curvature / (angle * angle)));
        }

        var position = Extremum.Least(Sum, 0, 1);
        var least = Sum(position);
        return new FlatTappet(Factors(law).Velocity * lift / angle, least, position, leastRadius - least);
    }

    private static LawPoint Harmonic(double u)
    {
        var (sine, cosine) = Math.SinCos(Math.PI * u);
        return new LawPoint((1 - cosine) / 2, Math.PI / 2 * sine, Math.PI * Math.PI / 2 * cosine, -Math.Pow(Math.PI, 3) / 2 * sine);
    }

    private static LawPoint Cycloidal(double u)
    {
        var (sine, cosine) = Math.SinCos(2 * Math.PI * u);
        return new LawPoint(u - (sine / (2 * Math.PI)), 1 - cosine, 2 * Math.PI * sine, 4 * Math.PI * Math.PI * cosine);
    }

    private static LawPoint Polynomial345(double u) => new(
        u * u * u * (10 + (u * (-15 + (6 * u)))),
        30 * u * u * (1 - u) * (1 - u),
        60 * u * (1 - u) * (1 - (2 * u)),
        60 * (1 + (6 * u * (u - 1))));

    private static LawPoint Polynomial4567(double u)
    {
        var v = u * (1 - u);
        return new LawPoint(
            u * u * u * u * (35 + (u * (-84 + (u * (70 - (20 * u)))))),
            140 * v * v * v,
            420 * v * v * (1 - (2 * u)),
            840 * v * (1 - (5 * v)));
    }

    /// <summary>A quarter sine up, constant acceleration, a quarter sine down to the middle of the rise.</summary>
    private static LawPoint ModifiedTrapezoid(double u)
    {
        const double Peak = TrapezoidAcceleration;
        const double Slope = Peak / (4 * Math.PI);
        const double First = Slope * (0.125 - (0.25 / Math.PI));
        if (u <= 0.125)
        {
            var (sine, cosine) = Math.SinCos(4 * Math.PI * u);
            return new LawPoint(Slope * (u - (sine / (4 * Math.PI))), Slope * (1 - cosine), Peak * sine, 4 * Math.PI * Peak * cosine);
        }

        if (u <= 0.375)
        {
            var x = u - 0.125;
            return new LawPoint(First + (Slope * x) + (Peak * x * x / 2), Slope + (Peak * x), Peak, 0);
        }

        var y = u - 0.375;
        var (sineY, cosineY) = Math.SinCos(4 * Math.PI * y);
        const double SlopeY = Slope + (Peak / 4);
        const double Second = First + (Slope / 4) + (Peak / 32);
        return new LawPoint(
            Second + (SlopeY * y) + (Slope / (4 * Math.PI) * (1 - cosineY)),
            SlopeY + (Slope * sineY),
            Peak * cosineY,
            -4 * Math.PI * Peak * sineY);
    }

    /// <summary>A quarter of a fast sine, then a slow one through the middle of the rise.</summary>
    private static LawPoint ModifiedSine(double u)
    {
        const double Scale = 1 / (4 + Math.PI);
        if (u <= 0.125)
        {
            var (sine, cosine) = Math.SinCos(4 * Math.PI * u);
            return new LawPoint(
                Scale * ((Math.PI * u) - (sine / 4)),
                Scale * Math.PI * (1 - cosine),
                Scale * 4 * Math.PI * Math.PI * sine,
                Scale * 16 * Math.Pow(Math.PI, 3) * cosine);
        }

        var (slow, slowCosine) = Math.SinCos(((4 * Math.PI * u) + Math.PI) / 3);
        return new LawPoint(
            Scale * (2 + (Math.PI * u) - (9.0 / 4 * slow)),
            Scale * Math.PI * (1 - (3 * slowCosine)),
            Scale * 4 * Math.PI * Math.PI * slow,
            Scale * 16 / 3 * Math.Pow(Math.PI, 3) * slowCosine);
    }

    /// <summary>The second half of a law that is symmetric about the middle of its rise.</summary>
    private static LawPoint Mirrored(LawPoint half) => new(1 - half.Lift, half.Slope, -half.Curvature, half.Jerk);
}
