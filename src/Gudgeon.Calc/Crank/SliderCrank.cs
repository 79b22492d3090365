using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Motion of the piston at one crank angle.</summary>
/// <param name="Travel">Travel from top dead centre, m.</param>
/// <param name="Velocity">Velocity towards the crank, m/s.</param>
/// <param name="Acceleration">Acceleration towards the crank, m/s².</param>
/// <param name="RodAngle">Rod angle from the cylinder axis, rad; positive when the crank pin is on the side it moves to at top dead centre.</param>
public readonly record struct PistonMotion(
    [Quantity("piston travel from top dead centre", Dimension.Length, "mm", Symbol = "x")] double Travel,
    [Quantity("piston velocity", Dimension.Speed, "m/s", Symbol = "v")] double Velocity,
    [Quantity("piston acceleration", Dimension.Acceleration, "m/s²", Symbol = "a")] double Acceleration,
    [Quantity("rod angle", Dimension.Angle, "°", Symbol = "φ")] double RodAngle);

/// <summary>Travel of the piston and how fast it moves with the crank.</summary>
/// <param name="Travel">Travel from top dead centre, m.</param>
/// <param name="PerDegree">Travel for one more degree of crank, m.</param>
public readonly record struct PistonTravel(
    [Quantity("piston travel from top dead centre", Dimension.Length, "mm", Symbol = "x")] double Travel,
    [Quantity("travel per degree of crank", Dimension.Length, "mm", Symbol = "k")] double PerDegree);

/// <summary>
/// Exact motion of a piston driven by crank and connecting rod. Crank angle counts in the direction of rotation from the
/// throw pointing along the cylinder axis away from the crankcase. A positive offset moves the cylinder axis (or the pin
/// in the piston) to the side the crank pin moves to after top dead centre.
/// </summary>
public static class SliderCrank
{
    private const string Source = "Closed geometry of the slider-crank; e.g. Norton, Design of Machinery; Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 2";

    /// <summary>Exact piston motion with or without pin offset.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="angle">Crank angle after top dead centre, rad.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="offset">Offset of the cylinder axis from the crank axis, m.</param>
    [Formula(
        "piston motion",
        "x = sqrt((l + r)^2 - e^2) - r cos(θ) - R; q = r sin(θ) - e; R = sqrt(l^2 - q^2); v = w (r sin(θ) + q r cos(θ) / R); a = w^2 (r cos(θ) + ((r cos(θ))^2 - q r sin(θ)) / R + (q r cos(θ))^2 / R^3); sin(φ) = q / l",
        Source,
        Provenance = Provenance.Definition)]
    public static PistonMotion Motion(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ")] double angle,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("pin offset", Dimension.Length, "mm", Symbol = "e")] double offset = 0)
    {
        RequireRunning(radius, rod, offset);
        var (sin, cos) = Math.SinCos(angle);
        var along = radius * cos;
        var across = (radius * sin) - offset;
        var height = Math.Sqrt((rod * rod) - (across * across));
        var travel = TopHeight(radius, rod, offset) - along - height;
        var slope = (radius * sin) + (across * along / height);
        var curvature = along + (((along * along) - (across * radius * sin)) / height) + (across * across * along * along / (height * height * height));
        return new PistonMotion(travel, speed * slope, speed * speed * curvature, Math.Asin(across / rod));
    }

    /// <summary>Exact piston travel, and the travel per degree for degree wheel and dial gauge.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="angle">Crank angle after top dead centre, rad.</param>
    /// <param name="offset">Offset of the cylinder axis from the crank axis, m.</param>
    [Formula(
        "piston travel",
        "x = sqrt((l + r)^2 - e^2) - r cos(θ) - sqrt(l^2 - (r sin(θ) - e)^2); k = dx/dθ π/180",
        Source,
        Provenance = Provenance.Definition)]
    public static PistonTravel Travel(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ")] double angle,
        [Quantity("pin offset", Dimension.Length, "mm", Symbol = "e")] double offset = 0)
    {
        var motion = Motion(radius, rod, angle, Math.PI / 180, offset);
        return new PistonTravel(motion.Travel, motion.Velocity);
    }

    /// <summary>Cylinder volume at a crank angle, m³.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="ratio">Geometric compression ratio.</param>
    /// <param name="angle">Crank angle after top dead centre, rad.</param>
    /// <param name="offset">Offset of the cylinder axis from the crank axis, m.</param>
    [Formula(
        "cylinder volume",
        "V = π B^2 / 4 (s / (CR - 1) + x)",
        "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eqs 2.4 to 2.6",
        Provenance = Provenance.FromMemory)]
    [return: Quantity("cylinder volume", Dimension.Volume, "cm³", Symbol = "V")]
    public static double Volume(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("compression ratio", Dimension.Number, Symbol = "CR", Above = 1)] double ratio,
        [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ")] double angle,
        [Quantity("pin offset", Dimension.Length, "mm", Symbol = "e")] double offset = 0)
    {
        var stroke = DeadCentres.Find(radius, rod, offset).Stroke;
        return Math.PI * bore * bore / 4 * ((stroke / (ratio - 1)) + Motion(radius, rod, angle, 0, offset).Travel);
    }

    /// <summary>Height of the pin over the crank axis at top dead centre, m.</summary>
    internal static double TopHeight(double radius, double rod, double offset) => Math.Sqrt(((rod + radius) * (rod + radius)) - (offset * offset));

    /// <summary>Refuses a crank that cannot turn right round.</summary>
    /// <exception cref="FormulaDomainException">Radius plus offset reaches the rod length.</exception>
    internal static void RequireRunning(double radius, double rod, double offset) =>
        FormulaDomainException.Unless(radius + Math.Abs(offset) < rod, "rod length: must be greater than crank radius plus pin offset");
}
