using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Whose constants: fits to many cars' runs.</summary>
public enum QuarterMileFit
{
    /// <summary>5.825 and 234.</summary>
    Hale,

    /// <summary>6.269 and 230.</summary>
    Fox,

    /// <summary>6.290 and 224.</summary>
    Huntington,
}

/// <summary>
/// Quarter-mile rules fitted to cars: first guesses from weight and power alone, and the power that a time or a speed
/// stands for. The constants belong to pounds, horsepower and miles per hour; amounts here are SI all the same.
/// </summary>
public static class QuarterMileRule
{
    private const string Source = "Huntington, Rod & Custom, Dec. 1958; Fox, Am. J. Phys. 41 (1973); Hale; constants as reprinted in secondary pages";
    private const string Caution = "A fit to cars with good starts: a motorcycle held by wheelie or grip is slower.";
    private const double Pound = 0.45359237;
    private const double Horsepower = 745.699872;
    private const double MilePerHour = 0.44704;

    /// <summary>Quarter-mile time from all-up mass and power, s.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="power">Peak power, W.</param>
    /// <param name="fit">Whose constants: K = 5.825 (Hale), 6.269 (Fox), 6.290 (Huntington) for lb and hp.</param>
    /// <returns>Elapsed time, s.</returns>
    [Formula("quarter-mile time by rule", "t = K (2.204623 m / (1.341022 P))^(1/3)", Source, Provenance = Provenance.CommonPractice, Caution = Caution)]
    [return: Quantity("quarter-mile time", Dimension.Time, "s", Symbol = "t")]
    public static double Time(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("peak power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("fit", Dimension.Number, Symbol = "K")] QuarterMileFit fit = QuarterMileFit.Hale) =>
        Constants(fit).Time * Math.Cbrt(mass / Pound / (power / Horsepower));

    /// <summary>Quarter-mile trap speed from all-up mass and power, m/s.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="power">Peak power, W.</param>
    /// <param name="fit">Whose constants: K = 234 (Hale), 230 (Fox), 224 (Huntington) for lb, hp and mph.</param>
    /// <returns>Trap speed, m/s.</returns>
    [Formula("quarter-mile speed by rule", "v = 1.609344 K (1.341022 P / (2.204623 m))^(1/3)", Source, Provenance = Provenance.CommonPractice, Caution = Caution)]
    [return: Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double Speed(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("peak power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("fit", Dimension.Number, Symbol = "K")] QuarterMileFit fit = QuarterMileFit.Hale) =>
        Constants(fit).Speed * MilePerHour * Math.Cbrt(power / Horsepower / (mass / Pound));

    /// <summary>Power that a quarter-mile time stands for, W.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="time">Quarter-mile time, s.</param>
    /// <param name="fit">Whose constants.</param>
    /// <returns>Power, W.</returns>
    [Formula("power from quarter-mile time by rule", "P = 1.643985 m (K / t)^3", Source, Provenance = Provenance.CommonPractice, Caution = Caution)]
    [return: Quantity("power", Dimension.Power, "kW", Symbol = "P")]
    public static double PowerFromTime(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("quarter-mile time", Dimension.Time, "s", Symbol = "t", Above = 0)] double time,
        [Quantity("fit", Dimension.Number, Symbol = "K")] QuarterMileFit fit = QuarterMileFit.Hale) =>
        mass / Pound * Horsepower * Math.Pow(Constants(fit).Time / time, 3);

    /// <summary>Power that a quarter-mile trap speed stands for, W.</summary>
    /// <param name="mass">All-up mass with rider, kg.</param>
    /// <param name="speed">Trap speed, m/s.</param>
    /// <param name="fit">Whose constants.</param>
    /// <returns>Power, W; less easily spoilt by a poor start than the figure from time.</returns>
    [Formula("power from quarter-mile speed by rule", "P = 1.643985 m (v / (1.609344 K))^3", Source, Provenance = Provenance.CommonPractice, Caution = Caution)]
    [return: Quantity("power", Dimension.Power, "kW", Symbol = "P")]
    public static double PowerFromSpeed(
        [Quantity("all-up mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v", Above = 0)] double speed,
        [Quantity("fit", Dimension.Number, Symbol = "K")] QuarterMileFit fit = QuarterMileFit.Hale) =>
        mass / Pound * Horsepower * Math.Pow(speed / MilePerHour / Constants(fit).Speed, 3);

    private static (double Time, double Speed) Constants(QuarterMileFit fit) => fit switch
    {
        QuarterMileFit.Hale => (5.825, 234),
        QuarterMileFit.Fox => (6.269, 230),
        QuarterMileFit.Huntington => (6.290, 224),
        _ => throw new ArgumentOutOfRangeException(nameof(fit), fit, null),
    };
}
