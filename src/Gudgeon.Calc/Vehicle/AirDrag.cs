using Gudgeon.Calc.Gas;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Drag and what it takes.</summary>
/// <param name="Force">N.</param>
/// <param name="Power">W.</param>
public readonly record struct DragLoad(
    [Quantity("drag force", Dimension.Force, "N", Symbol = "D")] double Force,
    [Quantity("drag power", Dimension.Power, "kW", Symbol = "P")] double Power);

/// <summary>Air drag of machine and rider.</summary>
public static class AirDrag
{
    private const string Source = "definition of the drag coefficient; Katz, Automotive Aerodynamics, p. 302, gives 0.30 to 0.50 m² for motorcycles";

    /// <summary>Drag force and power at a speed.</summary>
    /// <param name="dragArea">Drag coefficient times frontal area, m².</param>
    /// <param name="speed">Road speed, m/s.</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <param name="headWind">Wind against the run, m/s; negative for a tail wind.</param>
    /// <returns>Force (negative when a tail wind pushes) and the power that the road wheel spends on it.</returns>
    [Formula("air drag", "D = rho A (v + w)^2 / 2; P = D v", Source)]
    public static DragLoad Load(
        [Quantity("drag area", Dimension.Area, "m²", Symbol = "A", Min = 0)] double dragArea,
        [Quantity("road speed", Dimension.Speed, "km/h", Symbol = "v", Min = 0)] double speed,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Min = 0)] double density = 1.225,
        [Quantity("head wind", Dimension.Speed, "km/h", Symbol = "w")] double headWind = 0)
    {
        var air = speed + headWind;
        var force = Math.Sign(air) * Force(dragArea, air, density);
        return new DragLoad(force, force * speed);
    }

    /// <summary>Speed at which drag alone takes all of the power, m/s.</summary>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="dragArea">Drag coefficient times frontal area, m².</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <returns>Top speed in still air, m/s, if the gearing lets the engine give this power there.</returns>
    [Formula("top speed against drag", "v = (2 P / (rho A))^(1/3)", Source)]
    [return: Quantity("top speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double TopSpeed(
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("drag area", Dimension.Area, "m²", Symbol = "A", Above = 0)] double dragArea,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Above = 0)] double density = 1.225) =>
        Math.Cbrt(2 * power / (density * dragArea));

    /// <summary>Speed at which drag and rolling resistance take all of the power, m/s.</summary>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="dragArea">Drag coefficient times frontal area, m².</param>
    /// <param name="mass">Machine and rider, kg.</param>
    /// <param name="rolling">Rolling resistance over weight.</param>
    /// <param name="density">Air density, kg/m³.</param>
    /// <returns>Top speed in still air, m/s.</returns>
    [Formula("top speed against drag and rolling resistance", "P = (rho A v^2 / 2 + f m g) v, g = 9.80665", "balance of power at the road; the one real root of the cubic", Provenance = Provenance.Definition)]
    [return: Quantity("top speed", Dimension.Speed, "km/h", Symbol = "v")]
    public static double TopSpeedRolling(
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("drag area", Dimension.Area, "m²", Symbol = "A", Above = 0)] double dragArea,
        [Quantity("mass of machine and rider", Dimension.Mass, "kg", Symbol = "m", Min = 0)] double mass,
        [Quantity("rolling resistance over weight", Dimension.Number, Symbol = "f", Min = 0)] double rolling = 0.015,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Above = 0)] double density = 1.225)
    {
        // v³ + 3 p v = 2 q has the one real root 2 sqrt(p) sinh(asinh(q / p^1.5) / 3).
        var p = 2 * rolling * mass * PhysicalConstants.StandardGravity / (3 * density * dragArea);
        var q = power / (density * dragArea);
        var ratio = q / (p * Math.Sqrt(p));
        return double.IsFinite(ratio) ? 2 * Math.Sqrt(p) * Math.Sinh(Math.Asinh(ratio) / 3) : Math.Cbrt(2 * q);
    }

    /// <summary>Drag area from the top speed that a known power gave, m².</summary>
    /// <param name="power">Power at the road, W.</param>
    /// <param name="speed">Top speed in still air, m/s.</param>
    /// <param name="density">Air density on the day, kg/m³.</param>
    /// <returns>Drag coefficient times frontal area, m²; rolling resistance is counted in with it.</returns>
    [Formula("drag area from top speed", "A = 2 P / (rho v^3)", Source)]
    [return: Quantity("drag area", Dimension.Area, "m²", Symbol = "A")]
    public static double Area(
        [Quantity("power at the road", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("top speed", Dimension.Speed, "km/h", Symbol = "v", Above = 0)] double speed,
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Above = 0)] double density = 1.225) =>
        2 * power / (density * speed * speed * speed);

    /// <summary>Drag force without its sign, N.</summary>
    internal static double Force(double dragArea, double airSpeed, double density) => 0.5 * density * dragArea * airSpeed * airSpeed;
}
