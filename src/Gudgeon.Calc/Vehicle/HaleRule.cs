using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>
/// Quarter-mile rules fitted to cars: first guesses from weight and power alone, and the power that a time or a speed
/// stands for. The constants belong to pounds, horsepower and miles per hour; amounts here are SI all the same.
/// </summary>
public static class HaleRule
{
    private const double TimeConstant = 5.825;
    private const double SpeedConstant = 234;
    private const double Pound = 0.45359237;
    private const double Horsepower = 745.699872;
    private const double MilePerHour = 0.44704;

    /// <summary>Quarter-mile time from all-up mass and power, s.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="power">Peak power, W.</param>
    /// <returns>Elapsed time, s.</returns>
    [Formula("quarter-mile time, Hale rule", "t = 5.825 (2.204623 m / (1.341022 P))^(1/3)", "Hale; constant 5.825 for lb and hp as reprinted (primary print not seen)", Provenance = Provenance.CommonPractice, Caution = "A fit to cars with good starts: a motorcycle held by wheelie or grip is slower.")]
    [return: Quantity("quarter-mile time", Dimension.Time, "s", Symbol = "t")]
    public static double Time(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("peak power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power) =>
        TimeConstant * Math.Cbrt(mass / Pound / (power / Horsepower));

    /// <summary>Quarter-mile trap speed from all-up mass and power, m/s.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="power">Peak power, W.</param>
    /// <returns>Trap speed, m/s.</returns>
    [Formula("quarter-mile speed, Hale rule", "v = 376.587 (1.341022 P / (2.204623 m))^(1/3)", "Hale; constant 234 for lb, hp and mph (376.587 for km/h) as reprinted (primary print not seen)", Provenance = Provenance.CommonPractice)]
    [return: Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double Speed(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("peak power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power) =>
        SpeedConstant * MilePerHour * Math.Cbrt(power / Horsepower / (mass / Pound));

    /// <summary>Power that a quarter-mile time stands for, W.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="time">Quarter-mile time, s.</param>
    /// <returns>Power, W.</returns>
    [Formula("power from quarter-mile time, Hale rule", "P = 1.643985 m (5.825 / t)^3", "Hale; constant 5.825 for lb and hp as reprinted (primary print not seen)", Provenance = Provenance.CommonPractice)]
    [return: Quantity("power", Dimension.Power, "kW", Symbol = "P")]
    public static double PowerFromTime(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("quarter-mile time", Dimension.Time, "s", Symbol = "t", Above = 0)] double time) =>
        mass / Pound * Horsepower * Math.Pow(TimeConstant / time, 3);

    /// <summary>Power that a quarter-mile trap speed stands for, W.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="speed">Trap speed, m/s.</param>
    /// <returns>Power, W.</returns>
    [Formula("power from quarter-mile speed, Hale rule", "P = 1.643985 m (v / 376.587)^3", "Hale; constant 234 for lb, hp and mph (376.587 for km/h) as reprinted (primary print not seen)", Provenance = Provenance.CommonPractice)]
    [return: Quantity("power", Dimension.Power, "kW", Symbol = "P")]
    public static double PowerFromSpeed(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v", Above = 0)] double speed) =>
        mass / Pound * Horsepower * Math.Pow(speed / MilePerHour / SpeedConstant, 3);
}
