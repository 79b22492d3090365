using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Crank;

/// <summary>Greatest piston speed and where it occurs.</summary>
/// <param name="Speed">Greatest speed on the downstroke, m/s.</param>
/// <param name="Angle">Crank angle at which it occurs and the acceleration is zero, rad.</param>
public readonly record struct PeakPistonSpeed(
    [Quantity("greatest piston speed", Dimension.Speed, "m/s", Symbol = "v")] double Speed,
    [Quantity("crank angle of the greatest piston speed", Dimension.Angle, "°", Symbol = "θ")] double Angle);

/// <summary>An extreme of the piston's acceleration near bottom dead centre.</summary>
/// <param name="Acceleration">Greatest acceleration towards the head, m/s².</param>
/// <param name="Angle">Crank angle at which it occurs, rad; π is bottom dead centre.</param>
public readonly record struct UpwardAcceleration(
    [Quantity("greatest acceleration towards the head", Dimension.Acceleration, "m/s²", Symbol = "a")] double Acceleration,
    [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ")] double Angle);

/// <summary>Mean and greatest piston speed.</summary>
public static class PistonSpeed
{
    /// <summary>Mean piston speed, m/s.</summary>
    /// <param name="stroke">Piston stroke, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    [Formula("mean piston speed", "cm = s w / π", "Definition: two strokes a turn", Provenance = Provenance.Definition)]
    [return: Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "cm")]
    public static double Mean(
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0, Max = 4)] double stroke,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed) =>
        stroke * speed / Math.PI;

    /// <summary>Crank speed at which a mean piston speed is reached, rad/s.</summary>
    /// <param name="stroke">Piston stroke, m.</param>
    /// <param name="meanSpeed">Mean piston speed, m/s.</param>
    [Formula("crank speed for a mean piston speed", "w = π cm / s", "Definition: two strokes a turn", Provenance = Provenance.Definition)]
    [return: Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w")]
    public static double CrankSpeedFor(
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0, Max = 4)] double stroke,
        [Quantity("mean piston speed", Dimension.Speed, "m/s", Symbol = "cm", Min = 0)] double meanSpeed) =>
        Math.PI * meanSpeed / stroke;

    /// <summary>Greatest piston speed of the downstroke and its crank angle, exact.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="offset">Offset of the cylinder axis from the crank axis, m.</param>
    [Formula(
        "greatest piston speed",
        "a(θ) = 0; v = v(θ)",
        "Exact slider-crank; root of the acceleration on the downstroke",
        Provenance = Provenance.Definition)]
    public static PeakPistonSpeed Greatest(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("pin offset", Dimension.Length, "mm", Symbol = "e")] double offset = 0)
    {
        var ends = DeadCentres.Find(radius, rod, offset);
        var angle = Brent.FindRoot(t => SliderCrank.Motion(radius, rod, t, 1, offset).Acceleration, ends.Top, ends.Bottom, radius * 1e-13, 200);
        return new PeakPistonSpeed(SliderCrank.Motion(radius, rod, angle, speed, offset).Velocity, angle);
    }

    /// <summary>Greatest acceleration towards the head and its crank angle, exact, no offset.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    [Formula(
        "greatest piston acceleration towards the head",
        "a = max(-a(θ)), 90° ≤ θ ≤ 180°",
        "Exact slider-crank; leaves bottom dead centre when 3 (r/l)³ - 4 r/l + 1 < 0, above r/l = (√21 - 3)/6",
        Provenance = Provenance.Definition)]
    public static UpwardAcceleration GreatestUpward(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        SliderCrank.RequireRunning(radius, rod, 0);
        var angle = GoldenSection(t => SliderCrank.Motion(radius, rod, t, 1).Acceleration, Math.PI / 2, Math.PI);
        return new UpwardAcceleration(-SliderCrank.Motion(radius, rod, angle, speed).Acceleration, angle);
    }

    /// <summary>Where a function with one minimum on the interval is least.</summary>
    private static double GoldenSection(Func<double, double> function, double low, double high)
    {
        const double Golden = 0.6180339887498949;
        for (var i = 0; i < 80; i++)
        {
            var left = high - (Golden * (high - low));
            var right = low + (Golden * (high - low));
            (low, high) = function(left) < function(right) ? (low, right) : (left, high);
        }

        return (low + high) / 2;
    }
}
