using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>
/// Standing start with all of a constant power at the road, without drag: no machine can be quicker. A bound to hold
/// every rule and every simulation against.
/// </summary>
public static class ConstantPower
{
    private const string Source = "energy and motion at constant power: v = (3 P s / m)^(1/3), t = (9 m s² / 8 P)^(1/3), as in mechanics texts";

    /// <summary>Time and speed over a distance.</summary>
    /// <param name="mass">Accelerated mass, kg; count rotating parts in.</param>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="distance">Distance from the start beam, m.</param>
    /// <param name="rollout">Travel before the clock starts, m.</param>
    /// <returns>Time since the clock started and speed at the distance.</returns>
    [Formula("constant-power run", "v = (3 P (s + r) / m)^(1/3); t = (9 m / (8 P))^(1/3) ((s + r)^(2/3) - r^(2/3))", Source)]
    public static TimeAndSpeed Run(
        [Quantity("accelerated mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Above = 0)] double distance,
        [Quantity("roll-out", Dimension.Length, "mm", Symbol = "r", Min = 0)] double rollout = 0)
    {
        var travel = distance + rollout;
        return new TimeAndSpeed(Time(mass, power, travel) - Time(mass, power, rollout), Math.Cbrt(3 * power * travel / mass));
    }

    /// <summary>Mean speed over the last 66 ft of a distance, m/s.</summary>
    /// <param name="mass">Accelerated mass, kg.</param>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="distance">Distance from the start beam, m; at least 66 ft.</param>
    /// <returns>Trap speed, m/s.</returns>
    [Formula("trap speed at constant power", "v = 20.1168 / ((9 m / (8 P))^(1/3) (s^(2/3) - (s - 20.1168)^(2/3)))", Source)]
    [return: Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double TrapSpeed(
        [Quantity("accelerated mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Min = Strip.TrapLength)] double distance) =>
        Strip.TrapLength / (Time(mass, power, distance) - Time(mass, power, distance - Strip.TrapLength));

    /// <summary>What a gap in the drive costs at constant power: the machine rolls on at its speed and then pulls again.</summary>
    /// <param name="mass">Accelerated mass, kg.</param>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="speed">Speed at which the drive is cut, m/s.</param>
    /// <param name="gap">Time without drive, s.</param>
    /// <param name="distance">Distance of the run from rest, m.</param>
    /// <returns>Time with the gap, time without, and the loss.</returns>
    [Formula("drive gap at constant power", "s1 = m v^3 / (3 P); t0 = (9 m s^2 / (8 P))^(1/3); t = m v^2 / (2 P) + tg + (9 m / (8 P))^(1/3) ((s - v tg)^(2/3) - s1^(2/3)); dt = t - t0", Source)]
    public static GapCost Gap(
        [Quantity("accelerated mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("speed at the gap", Dimension.Speed, "m/s", Symbol = "v", Above = 0)] double speed,
        [Quantity("time without drive", Dimension.Time, "s", Symbol = "tg", Min = 0)] double gap,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Above = 0)] double distance)
    {
        var rolled = speed * gap;
        var before = mass * Math.Pow(speed, 3) / (3 * power);
        FormulaDomainException.Unless(before + rolled <= distance, "distance: the gap must end before the run does");
        return GapCost.From(Time(mass, power, distance), gap + Time(mass, power, distance - rolled));
    }

    internal static double Time(double mass, double power, double travel) => Math.Cbrt(9 * mass * travel * travel / (8 * power));
}

/// <summary>What a gap in the drive costs.</summary>
/// <param name="With">Time with the gap, s.</param>
/// <param name="Without">Time without it, s.</param>
/// <param name="Loss">The difference, s; always less than the gap itself.</param>
public readonly record struct GapCost(
    [Quantity("time with the gap", Dimension.Time, "s", Symbol = "t")] double With,
    [Quantity("time without the gap", Dimension.Time, "s", Symbol = "t0")] double Without,
    [Quantity("loss", Dimension.Time, "s", Symbol = "dt")] double Loss)
{
    internal static GapCost From(double without, double with) => new(with, without, with - without);
}
