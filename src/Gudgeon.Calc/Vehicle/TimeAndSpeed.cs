using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>When a point is passed and how fast.</summary>
/// <param name="Time">s.</param>
/// <param name="Speed">m/s.</param>
public readonly record struct TimeAndSpeed(
    [Quantity("time", Dimension.Time, "s", Symbol = "t")] double Time,
    [Quantity("speed", Dimension.Speed, "km/h", Symbol = "v")] double Speed);
