using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Points of a drag strip, as travel from the start beam.</summary>
public enum StripMark
{
    /// <summary>60 ft</summary>
    SixtyFeet,

    /// <summary>330 ft</summary>
    ThreeHundredThirtyFeet,

    /// <summary>594 ft, 66 ft before the eighth mile.</summary>
    EighthMileTrapStart,

    /// <summary>660 ft</summary>
    EighthMile,

    /// <summary>1000 ft</summary>
    ThousandFeet,

    /// <summary>1254 ft, 66 ft before the quarter mile.</summary>
    QuarterMileTrapStart,

    /// <summary>1320 ft</summary>
    QuarterMile,

    /// <summary>1000 m</summary>
    Kilometre,

    /// <summary>5280 ft</summary>
    Mile,
}

/// <summary>Where a strip takes the time.</summary>
public static class Strip
{
    /// <summary>Travel between the two beams of a speed trap, m: 66 ft.</summary>
    public const double TrapLength = 66 * Foot;

    /// <summary>Usual roll-out, m: one foot.</summary>
    public const double UsualRollout = Foot;

    private const double Foot = 0.3048;

    /// <summary>Travel from the start beam to a mark of the strip, m.</summary>
    /// <param name="mark">The mark.</param>
    /// <returns>Distance, m, exact: 0.3048 m per foot.</returns>
    [Formula("strip distance", "s = 0.3048 ft", "beam positions as drag strips publish them; 1 ft = 0.3048 m exactly")]
    [return: Quantity("distance from the start beam", Dimension.Length, "m", Symbol = "s")]
    public static double Distance([Quantity("mark", Dimension.Number)] StripMark mark) => mark switch
    {
        StripMark.SixtyFeet => 60 * Foot,
        StripMark.ThreeHundredThirtyFeet => 330 * Foot,
        StripMark.EighthMileTrapStart => 594 * Foot,
        StripMark.EighthMile => 660 * Foot,
        StripMark.ThousandFeet => 1000 * Foot,
        StripMark.QuarterMileTrapStart => 1254 * Foot,
        StripMark.QuarterMile => 1320 * Foot,
        StripMark.Kilometre => 1000,
        StripMark.Mile => 5280 * Foot,
        _ => throw new ArgumentOutOfRangeException(nameof(mark), mark, null),
    };

    /// <summary>Mean speed between two timing beams, m/s: what a speed trap shows.</summary>
    /// <param name="entry">Elapsed time at the first beam, s.</param>
    /// <param name="exit">Elapsed time at the second beam, s.</param>
    /// <param name="length">Distance between the beams, m; 66 ft is usual.</param>
    /// <returns>Mean speed, m/s; less than the speed at the second beam while the machine still accelerates.</returns>
    [Formula("trap speed", "v = s / (t2 - t1)", "mean speed over the trap, by definition", Provenance = Provenance.Definition)]
    [return: Quantity("trap speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double TrapSpeed(
        [Quantity("time at the first beam", Dimension.Time, "s", Symbol = "t1", Min = 0)] double entry,
        [Quantity("time at the second beam", Dimension.Time, "s", Symbol = "t2", Above = 0)] double exit,
        [Quantity("length of the trap", Dimension.Length, "m", Symbol = "s", Above = 0)] double length = TrapLength)
    {
        FormulaDomainException.Unless(exit > entry, "time at the second beam: must be later than at the first");
        return length / (exit - entry);
    }

    /// <summary>Free time of the roll-out: the front wheel holds the start beam until it has moved this far.</summary>
    /// <param name="acceleration">Acceleration off the line, m/s².</param>
    /// <param name="rollout">Travel until the beam is free, m; 1 ft is usual, 11 to 16 in occurs.</param>
    /// <returns>Time before the clock starts and speed at the beam.</returns>
    [Formula("roll-out", "t = (2 r / a)^0.5; v = (2 a r)^0.5", "uniform acceleration from rest", Provenance = Provenance.Definition)]
    public static TimeAndSpeed Rollout(
        [Quantity("acceleration off the line", Dimension.Acceleration, "m/s²", Symbol = "a", Above = 0)] double acceleration,
        [Quantity("roll-out", Dimension.Length, "mm", Symbol = "r", Above = 0)] double rollout = UsualRollout) =>
        new(Math.Sqrt(2 * rollout / acceleration), Math.Sqrt(2 * acceleration * rollout));
}
