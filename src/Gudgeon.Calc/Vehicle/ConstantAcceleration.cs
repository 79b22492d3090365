using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Standing start at constant acceleration: the first part of nearly every run.</summary>
public static class ConstantAcceleration
{
    private const string Source = "uniform acceleration from rest";

    /// <summary>Time and speed over a distance.</summary>
    /// <param name="acceleration">Acceleration, m/s².</param>
    /// <param name="distance">Distance from the start beam, m.</param>
    /// <param name="rollout">Travel before the clock starts, m.</param>
    /// <returns>Time since the clock started and speed at the distance.</returns>
    [Formula("constant-acceleration run", "v = (2 a (s + r))^0.5; t = (v - (2 a r)^0.5) / a", Source, Provenance = Provenance.Definition)]
    public static TimeAndSpeed Run(
        [Quantity("acceleration", Dimension.Acceleration, "m/s²", Symbol = "a", Above = 0)] double acceleration,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Above = 0)] double distance,
        [Quantity("roll-out", Dimension.Length, "mm", Symbol = "r", Min = 0)] double rollout = 0)
    {
        var speed = Math.Sqrt(2 * acceleration * (distance + rollout));
        return new TimeAndSpeed((speed - Math.Sqrt(2 * acceleration * rollout)) / acceleration, speed);
    }

    /// <summary>Mean acceleration from rest that gives a time over a distance, m/s².</summary>
    /// <param name="distance">Distance from rest, m; 60 ft judges a launch.</param>
    /// <param name="time">Time from rest, s.</param>
    /// <returns>Acceleration, m/s².</returns>
    [Formula("mean launch acceleration", "a = 2 s / t^2", Source, Provenance = Provenance.Definition)]
    [return: Quantity("mean acceleration", Dimension.Acceleration, "m/s²", Symbol = "a")]
    public static double MeanAcceleration(
        [Quantity("distance from rest", Dimension.Length, "m", Symbol = "s", Above = 0)] double distance,
        [Quantity("time from rest", Dimension.Time, "s", Symbol = "t", Above = 0)] double time) => 2 * distance / (time * time);

    /// <summary>What a gap in the drive costs: the machine rolls on at its speed and then pulls again.</summary>
    /// <param name="acceleration">Acceleration before and after, m/s².</param>
    /// <param name="start">Time from rest at which the drive is cut, s.</param>
    /// <param name="gap">Time without drive, s.</param>
    /// <param name="distance">Distance of the run from rest, m.</param>
    /// <returns>Time with the gap, time without, and the loss.</returns>
    [Formula("drive gap at constant acceleration", "t0 = (2 s / a)^0.5; t = tg + (2 (s - a ts tg) / a)^0.5; dt = t - t0", Source, Provenance = Provenance.Definition)]
    public static GapCost Gap(
        [Quantity("acceleration", Dimension.Acceleration, "m/s²", Symbol = "a", Above = 0)] double acceleration,
        [Quantity("start of the gap", Dimension.Time, "s", Symbol = "ts", Min = 0)] double start,
        [Quantity("time without drive", Dimension.Time, "s", Symbol = "tg", Min = 0)] double gap,
        [Quantity("distance", Dimension.Length, "m", Symbol = "s", Above = 0)] double distance)
    {
        var rolled = acceleration * start * gap;
        FormulaDomainException.Unless((0.5 * acceleration * start * start) + rolled <= distance, "distance: the gap must end before the run does");
        return GapCost.From(Math.Sqrt(2 * distance / acceleration), gap + Math.Sqrt(2 * (distance - rolled) / acceleration));
    }
}
