using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Speed at which the follower leaves the cam.</summary>
/// <param name="CamSpeed">Cam speed, rad/s.</param>
/// <param name="CrankSpeed">Crank speed, rad/s.</param>
/// <param name="Angle">Cam angle from the nose at which it leaves, rad.</param>
public readonly record struct FloatSpeed(
    [Quantity("cam speed at float", Dimension.RotationalSpeed, "rpm", Symbol = "w")] double CamSpeed,
    [Quantity("crank speed at float", Dimension.RotationalSpeed, "rpm", Symbol = "n")] double CrankSpeed,
    [Quantity("angle from the nose", Dimension.Angle, "°", Symbol = "φ")] double Angle);

/// <summary>Force in hand against float at one speed.</summary>
/// <param name="NoseAcceleration">Acceleration at the nose, m/s².</param>
/// <param name="SpringForce">Spring force at full lift, N.</param>
/// <param name="InertiaForce">Inertia force at the nose, N.</param>
/// <param name="NoseMargin">Spring less inertia at the nose, N.</param>
/// <param name="LeastMargin">Least of spring less inertia over the lobe, N.</param>
public readonly record struct FloatMargin(
    [Quantity("acceleration at the nose", Dimension.Acceleration, "m/s²", Symbol = "a")] double NoseAcceleration,
    [Quantity("spring force at full lift", Dimension.Force, "N", Symbol = "Fs")] double SpringForce,
    [Quantity("inertia force at the nose", Dimension.Force, "N", Symbol = "Fi")] double InertiaForce,
    [Quantity("margin at the nose", Dimension.Force, "N", Symbol = "M")] double NoseMargin,
    [Quantity("least margin over the lobe", Dimension.Force, "N", Symbol = "Mmin")] double LeastMargin);

/// <summary>Valve float with a rigid train: the spring can no longer hold the follower on the cam.</summary>
public static class ValveFloat
{
    private const string Source = "equilibrium of spring and inertia force of a rigid train, F0 + k s + m s'' w^2 = 0";
    private const string Rigid = "rigid train on the polynomial lobe s = h (1 - 4 z^2)^3; a real, springy train floats some 5 to 15 % earlier";

    /// <summary>Where the lobe's curvature changes sign: only within it does the cam fall away from the follower.</summary>
    private static readonly double Inflection = Math.Sqrt(0.05);

    /// <summary>Speed at which the follower leaves the polynomial lobe.</summary>
    /// <param name="mass">Effective mass at the valve, kg.</param>
    /// <param name="seatLoad">Spring load at the seat, N.</param>
    /// <param name="rate">Spring rate, N/m.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="duration">Duration of the lobe, cam rad.</param>
    [Formula("valve float speed", "w = min(sqrt((F0 + k s) / (-m s''))); n = 2 w", Source, Provenance = Provenance.Definition, Validity = Rigid)]
    public static FloatSpeed Speed(
        [Quantity("effective mass", Dimension.Mass, "g", Symbol = "m", Above = 0)] double mass,
        [Quantity("seat load", Dimension.Force, "N", Symbol = "F0", Above = 0)] double seatLoad,
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "k", Min = 0)] double rate,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI, Help = "cam degrees")] double duration)
    {
        double SpeedSquared(double z)
        {
            var point = PolynomialLobe.At(z);
            return point.Curvature < 0 ? (seatLoad + (rate * lift * point.Lift)) / (-mass * lift * point.Curvature) : double.PositiveInfinity;
        }

        var z = Extremum.Least(SpeedSquared, 0, Inflection);
        var speed = duration * Math.Sqrt(SpeedSquared(z));
        return new FloatSpeed(speed, 2 * speed, z * duration);
    }

    /// <summary>Force in hand against float at a crank speed.</summary>
    /// <param name="mass">Effective mass at the valve, kg.</param>
    /// <param name="seatLoad">Spring load at the seat, N.</param>
    /// <param name="rate">Spring rate, N/m.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="duration">Duration of the lobe, cam rad.</param>
    /// <param name="crankSpeed">Crank speed, rad/s.</param>
    [Formula("valve float margin", "a = -24 h (n / 2)^2 / B^2; Fs = F0 + k h; Fi = -m a; M = Fs - Fi; Mmin = min(F0 + k s + m s'' (n / 2)^2)", Source, Provenance = Provenance.Definition, Validity = Rigid)]
    public static FloatMargin Margin(
        [Quantity("effective mass", Dimension.Mass, "g", Symbol = "m", Above = 0)] double mass,
        [Quantity("seat load", Dimension.Force, "N", Symbol = "F0", Above = 0)] double seatLoad,
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "k", Min = 0)] double rate,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI, Help = "cam degrees")] double duration,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Min = 0)] double crankSpeed)
    {
        var turning = crankSpeed / 2 / duration;
        double Force(double z)
        {
            var point = PolynomialLobe.At(z);
            return seatLoad + (lift * ((rate * point.Lift) + (mass * point.Curvature * turning * turning)));
        }

        var nose = PolynomialLobe.At(0).Curvature * lift * turning * turning;
        var spring = seatLoad + (rate * lift);
        return new FloatMargin(nose, spring, -mass * nose, spring + (mass * nose), Force(Extremum.Least(Force, 0, 0.5)));
    }

    /// <summary>Spring rate that holds the follower on the polynomial lobe up to a crank speed, N/m.</summary>
    /// <param name="mass">Effective mass at the valve, kg.</param>
    /// <param name="seatLoad">Spring load at the seat, N.</param>
    /// <param name="lift">Full lift, m.</param>
    /// <param name="duration">Duration of the lobe, cam rad.</param>
    /// <param name="crankSpeed">Crank speed, rad/s.</param>
    [Formula("spring rate against float", "k = max((-m s'' (n / 2)^2 - F0) / s)", Source, Provenance = Provenance.Definition, Validity = Rigid)]
    [return: Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "k")]
    public static double RateFor(
        [Quantity("effective mass", Dimension.Mass, "g", Symbol = "m", Above = 0)] double mass,
        [Quantity("seat load", Dimension.Force, "N", Symbol = "F0", Min = 0)] double seatLoad,
        [Quantity("full lift", Dimension.Length, "mm", Symbol = "h", Above = 0)] double lift,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "B", Above = 0, Max = 2 * Math.PI, Help = "cam degrees")] double duration,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "n", Min = 0)] double crankSpeed)
    {
        var turning = crankSpeed / 2 / duration;
        double Excess(double z)
        {
            var point = PolynomialLobe.At(z);
            return (seatLoad + (mass * lift * point.Curvature * turning * turning)) / (lift * point.Lift);
        }

        return Math.Max(0, -Excess(Extremum.Least(Excess, 0, Inflection)));
    }

    /// <summary>Crank speed at which the follower leaves any cam at its nose, rad/s.</summary>
    /// <param name="springForce">Spring force at full lift, N.</param>
    /// <param name="mass">Effective mass at the valve, kg.</param>
    /// <param name="noseAcceleration">Second derivative of the lift by cam angle at the nose, m/rad²; positive.</param>
    [Formula("float speed from nose acceleration", "n = 2 sqrt(F / (m s2))", Source, Provenance = Provenance.Definition, Validity = "rigid train; s2 = lift curvature in mm per radian of cam, squared, its sign left off")]
    [return: Quantity("crank speed at float", Dimension.RotationalSpeed, "rpm", Symbol = "n")]
    public static double SpeedFromNose(
        [Quantity("spring force at full lift", Dimension.Force, "N", Symbol = "F", Above = 0)] double springForce,
        [Quantity("effective mass", Dimension.Mass, "g", Symbol = "m", Above = 0)] double mass,
        [Quantity("nose acceleration per cam radian squared", Dimension.Length, "mm", Symbol = "s2", Above = 0)] double noseAcceleration) =>
        2 * Math.Sqrt(springForce / (mass * noseAcceleration));
}
