using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Limits;

/// <summary>What a ladder says, in words.</summary>
public static class LadderWords
{
    /// <summary>Boost too small to be worth a word, Pa.</summary>
    private const double NoBoost = 2000;

    /// <summary>"1.32 gives 165.9 kW at 1.28 bar (outside the map)".</summary>
    public static string Words(this Ladder ladder, Level level, bool imperial) => string.Concat(
        $"{ladder.Varied.Worded(level.Value, imperial)} gives {Power(level.Power, imperial)}",
        level.Boost > NoBoost ? $" at {(level.Boost / 1e5).ToString("F2", CultureInfo.InvariantCulture)} bar" : "",
        level.Extrapolated ? " (outside the map)" : "");

    /// <summary>"gives at 155.9 kW (blower pulley speed over crank speed 1.25)", "holds at every level (reserve 1.21 at the highest)".</summary>
    public static string Words(this Ladder ladder, Rung rung, bool imperial) => rung switch
    {
        { GivesBelow: true } => $"gives below {ladder.Scale(ladder.At(rung)!.Value, imperial)} (reserve {Figures.Number(rung.Reserves[0], 2)} there)",
        { Value: { } value } when !ladder.ByPower => $"gives at {ladder.Varied.Worded(value, imperial)} ({Power(rung.Power!.Value, imperial)})",
        { Power: { } power } => $"gives at {Power(power, imperial)} ({ladder.Varied.Label.ToLowerInvariant()} {ladder.Varied.Worded(rung.Value!.Value, imperial)}{(ladder.OutsideMap(rung) ? ", beyond the last level on the map" : "")})",
        _ => $"holds at every level (reserve {Figures.Number(rung.Reserves[^1], 3)} at the highest)",
    };

    /// <summary>"target 165 kW", "rev limit 9700 rpm"; empty when nothing is marked.</summary>
    public static string MarkWords(this Ladder ladder, bool imperial) => ladder.Mark is { } mark ? $"{(ladder.ByPower ? "target" : "rev limit")} {ladder.Scale(mark, imperial)}" : "";

    /// <summary>A place on the scale of the ladder: a power, or a rev limit.</summary>
    public static string Scale(this Ladder ladder, double si, bool imperial) => ladder.ByPower ? Power(si, imperial) : ladder.Varied.Worded(si, imperial);

    private static string Power(double si, bool imperial) => Figures.Print(si, Dimension.Power, "kW", 4, imperial);

    /// <summary>"1.32", "0.65 bar", "9700 rpm".</summary>
    private static string Worded(this Field varied, double si, bool imperial) => varied == Engine.RevLimit
        ? Figures.Rpm(si)
        : Figures.Print(si, varied.Dimension, varied.Unit, 3, imperial);
}
