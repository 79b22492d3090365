using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>The two-term (first and second harmonic) approximation of piston motion used for balancing and in textbooks.</summary>
public static class TwoTermCrank
{
    private const string Source = "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 15; Norton, Design of Machinery, ch. 14";

    /// <summary>Piston motion in two terms, no offset.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="angle">Crank angle after top dead centre, rad.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    [Formula(
        "piston motion, two-term",
        "x = r ((1 - cos(θ)) + r / (4 l) (1 - cos(2 θ))); v = r w (sin(θ) + r / (2 l) sin(2 θ)); a = r w^2 (cos(θ) + r / l cos(2 θ)); sin(φ) = r sin(θ) / l",
        Source,
        Validity = "Acceleration within about 4 % of r w² of the exact law at r/l = 0.27; better with longer rods.")]
    public static PistonMotion Motion(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ")] double angle,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        SliderCrank.RequireRunning(radius, rod, 0);
        var ratio = radius / rod;
        var (sin, cos) = Math.SinCos(angle);
        var (sin2, cos2) = Math.SinCos(2 * angle);
        return new PistonMotion(
            radius * (1 - cos + (ratio / 4 * (1 - cos2))),
            radius * speed * (sin + (ratio / 2 * sin2)),
            radius * speed * speed * (cos + (ratio * cos2)),
            Math.Asin(ratio * sin));
    }

    /// <summary>Greatest piston speed and the angle of zero acceleration, two-term.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    [Formula(
        "greatest piston speed, two-term",
        "cos(θ) = (sqrt(n^2 + 8) - n) / 4; n = l / r; v = r w (sin(θ) + sin(2 θ) / (2 n))",
        Source)]
    public static PeakPistonSpeed GreatestSpeed(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed)
    {
        SliderCrank.RequireRunning(radius, rod, 0);
        var n = rod / radius;
        var angle = Math.Acos((Math.Sqrt((n * n) + 8) - n) / 4);
        return new PeakPistonSpeed(Motion(radius, rod, angle, speed).Velocity, angle);
    }
}
