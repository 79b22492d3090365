using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>A run that is first held by grip or wheelie and then by power.</summary>
/// <param name="SwitchSpeed">Speed at which power takes over, m/s.</param>
/// <param name="SwitchDistance">Travel from rest until then, m.</param>
/// <param name="SwitchTime">Time from rest until then, s.</param>
/// <param name="Time">Time at the distance since the clock started, s.</param>
/// <param name="Speed">Speed at the distance, m/s.</param>
public readonly record struct TractionRun(
    [Quantity("speed where power takes over", Dimension.Speed, "m/s", Symbol = "v1")] double SwitchSpeed,
    [Quantity("travel until then", Dimension.Length, "m", Symbol = "s1")] double SwitchDistance,
    [Quantity("time from rest until then", Dimension.Time, "s", Symbol = "t1")] double SwitchTime,
    [Quantity("time", Dimension.Time, "s", Symbol = "t")] double Time,
    [Quantity("speed", Dimension.Speed, "km/h", Symbol = "v")] double Speed);

/// <summary>Standing start at constant acceleration until the power is reached, then at constant power; no drag.</summary>
public static class TractionThenPower
{
    private const string Source = "uniform acceleration joined to constant power; idea of Fox, On the physics of drag racing, Am. J. Phys. 41 (1973)";

    /// <summary>Time and speed over a distance, and where power takes over.</summary>
    /// <param name="mass">Accelerated mass, kg; count rotating parts in.</param>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="acceleration">Acceleration that grip or wheelie allows, m/s².</param>
    /// <param name="distance">Distance from the start beam, m.</param>
    /// <param name="rollout">Travel before the clock starts, m.</param>
    /// <returns>The change-over, and time and speed at the distance.</returns>
    [Formula(
        "traction-then-power run",
        "v1 = P / (m a); s1 = v1^2 / (2 a); t1 = v1 / a; v = (v1^3 + 3 P (s + r - s1) / m)^(1/3); t = t1 + m (v^2 - v1^2) / (2 P), less the time at r",
        Source,
        Provenance = Provenance.FromMemory,
        Validity = "Before the change-over v = (2 a (s + r))^0.5 and t = v / a.")]
    public static TractionRun Run(
        [Quantity("accelerated mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("acceleration at the limit", Dimension.Acceleration, "m/s²", Symbol = "a", Above = 0)] double acceleration,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Above = 0)] double distance,
        [Quantity("roll-out", Dimension.Length, "mm", Symbol = "r", Min = 0)] double rollout = 0)
    {
        var speed = power / (mass * acceleration);
        var end = FromRest(mass, power, acceleration, distance + rollout);
        return new TractionRun(
            speed,
            speed * speed / (2 * acceleration),
            speed / acceleration,
            end.Time - FromRest(mass, power, acceleration, rollout).Time,
            end.Speed);
    }

    /// <summary>Mean speed over the last 66 ft of a distance, m/s.</summary>
    /// <param name="mass">Accelerated mass, kg.</param>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="acceleration">Acceleration that grip or wheelie allows, m/s².</param>
    /// <param name="distance">Distance from the start beam, m; at least 66 ft.</param>
    /// <returns>Trap speed, m/s.</returns>
    [Formula("trap speed, traction then power", "v = 20.1168 / (t(s) - t(s - 20.1168))", Source, Provenance = Provenance.FromMemory)]
    [return: Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double TrapSpeed(
        [Quantity("accelerated mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("acceleration at the limit", Dimension.Acceleration, "m/s²", Symbol = "a", Above = 0)] double acceleration,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Min = Strip.TrapLength)] double distance)
    {
        var entry = FromRest(mass, power, acceleration, distance - Strip.TrapLength).Time;
        return Strip.TrapLength / (FromRest(mass, power, acceleration, distance).Time - entry);
    }

    private static TimeAndSpeed FromRest(double mass, double power, double acceleration, double travel)
    {
        var change = power / (mass * acceleration);
        var before = change * change / (2 * acceleration);
        if (travel <= before)
        {
            return new TimeAndSpeed(Math.Sqrt(2 * travel / acceleration), Math.Sqrt(2 * acceleration * travel));
        }

        var speed = Math.Cbrt(Math.Pow(change, 3) + (3 * power * (travel - before) / mass));
        return new TimeAndSpeed((change / acceleration) + (mass * ((speed * speed) - (change * change)) / (2 * power)), speed);
    }
}
