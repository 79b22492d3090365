using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks;

/// <summary>One side of what is allowed.</summary>
public enum Limit
{
    /// <summary>The least allowed.</summary>
    Lower,

    /// <summary>The greatest allowed.</summary>
    Upper,
}

/// <summary>
/// What a check found for one instance: a value held to one or two limits. The reserve is capacity over demand: limit over
/// value where the value must stay below, value over limit where it must stay above, the lesser of the two in between.
/// </summary>
/// <param name="Quantity">What the value is: "squish clearance".</param>
/// <param name="Value">Value, SI.</param>
/// <param name="Lower">Least allowed, SI; null when there is none.</param>
/// <param name="Upper">Greatest allowed, SI; null when there is none.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Display unit.</param>
/// <param name="LimitSource">Where the limit comes from.</param>
public sealed record Judgement(string Quantity, double Value, double? Lower, double? Upper, Dimension Dimension, string Unit, string LimitSource)
{
    /// <summary>A remark on the value that the reader should see, such as the speed at which it stands.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Capacity over demand; 1 is the edge.</summary>
    public double Reserve => Math.Min(ReserveAt(Limit.Lower), ReserveAt(Limit.Upper));

    /// <summary>The limit that is nearer to being passed.</summary>
    public Limit Decisive => ReserveAt(Limit.Upper) <= ReserveAt(Limit.Lower) ? Limit.Upper : Limit.Lower;

    /// <summary>Capacity over demand at one limit; without end where there is no limit or no demand.</summary>
    public double ReserveAt(Limit limit) => limit switch
    {
        Limit.Lower => Lower is { } low ? Value / low : double.PositiveInfinity,
        _ => Upper is { } high ? (Value <= 0 ? double.PositiveInfinity : high / Value) : double.PositiveInfinity,
    };

    /// <summary>How far the value lies inside one limit, SI; negative outside it, without end where there is none.</summary>
    public double Margin(Limit limit) => limit switch
    {
        Limit.Lower => Lower is { } low ? Value - low : double.PositiveInfinity,
        _ => Upper is { } high ? high - Value : double.PositiveInfinity,
    };

    /// <summary>The limit in words: "at least 1 mm", "12 to 12.6".</summary>
    public string LimitText => LimitIn(imperial: false);

    /// <summary>The limit in words, in inch units when asked for.</summary>
    public string LimitIn(bool imperial) => (Lower, Upper) switch
    {
        ({ } low, { } high) => $"{Print(low, imperial)} to {Print(high, imperial)}",
        ({ } low, null) => $"at least {Print(low, imperial)}",
        (null, { } high) => $"at most {Print(high, imperial)}",
        _ => "none",
    };

    /// <summary>A value that must stay at or below a limit.</summary>
    public static Judgement AtMost(string quantity, double value, double limit, Dimension dimension, string unit, string limitSource) => new(quantity, value, null, limit, dimension, unit, limitSource);

    /// <summary>A value that must stay at or above a limit.</summary>
    public static Judgement AtLeast(string quantity, double value, double limit, Dimension dimension, string unit, string limitSource) => new(quantity, value, limit, null, dimension, unit, limitSource);

    /// <summary>A value that must stay between two limits.</summary>
    public static Judgement Between(string quantity, double value, double low, double high, Dimension dimension, string unit, string limitSource) => new(quantity, value, low, high, dimension, unit, limitSource);

    /// <summary>An SI value in the display unit.</summary>
    public string Print(double si, bool imperial = false) => Figures.Print(si, Dimension, Unit, 4, imperial);
}
