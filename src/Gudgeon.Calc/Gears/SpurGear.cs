using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gears;

/// <summary>Path of contact of a pair of spur gears.</summary>
/// <param name="Approach">Path of approach, m.</param>
/// <param name="Recess">Path of recess, m.</param>
/// <param name="Path">Path of contact, m.</param>
/// <param name="Arc">Arc of contact on the pitch circle, m.</param>
/// <param name="Ratio">Contact ratio.</param>
/// <param name="PinionTurn">Angle the pinion turns while one pair is in mesh, rad.</param>
public readonly record struct GearContact(
    [Quantity("path of approach", Dimension.Length, "mm", Symbol = "ga")] double Approach,
    [Quantity("path of recess", Dimension.Length, "mm", Symbol = "gr")] double Recess,
    [Quantity("path of contact", Dimension.Length, "mm", Symbol = "g")] double Path,
    [Quantity("arc of contact", Dimension.Length, "mm", Symbol = "arc")] double Arc,
    [Quantity("contact ratio", Dimension.Number, Symbol = "ε")] double Ratio,
    [Quantity("pinion turn in mesh", Dimension.Angle, "°", Symbol = "δ")] double PinionTurn);

/// <summary>Sliding of gear teeth at the ends of contact.</summary>
/// <param name="Start">Where contact starts, m/s.</param>
/// <param name="End">Where it ends, m/s.</param>
public readonly record struct GearSliding(
    [Quantity("sliding speed at the start of contact", Dimension.Speed, "m/s", Symbol = "vs")] double Start,
    [Quantity("sliding speed at the end of contact", Dimension.Speed, "m/s", Symbol = "ve")] double End);

/// <summary>Least teeth that mesh without interference.</summary>
/// <param name="Exact">Before rounding.</param>
/// <param name="Teeth">Rounded up.</param>
public readonly record struct LeastTeeth(
    [Quantity("least teeth, exact", Dimension.Number)] double Exact,
    [Quantity("least teeth", Dimension.Number, Symbol = "z")] double Teeth);

/// <summary>Kinematics of involute spur gears on standard centres.</summary>
public static class SpurGear
{
    private const string Source = "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 12; Bevan, The Theory of Machines, 3rd ed., ch. 10";

    /// <summary>Path, arc and ratio of contact.</summary>
    /// <param name="pinion">Teeth of the driving pinion.</param>
    /// <param name="wheel">Teeth of the wheel.</param>
    /// <param name="module">Module, m.</param>
    /// <param name="addendum">Addendum of both gears, m; 0 for one module.</param>
    /// <param name="pressureAngle">Pressure angle, rad.</param>
    [Formula(
        "gear contact ratio",
        "ga = sqrt(Ra2^2 - R2^2 cos(α)^2) - R2 sin(α); gr = sqrt(Ra1^2 - R1^2 cos(α)^2) - R1 sin(α); g = ga + gr; arc = g / cos(α); ε = g / (π m cos(α)); δ = arc / R1",
        Source)]
    public static GearContact Contact(
        [Quantity("pinion teeth", Dimension.Number, Symbol = "z1", Min = 5)] int pinion,
        [Quantity("wheel teeth", Dimension.Number, Symbol = "z2", Min = 5)] int wheel,
        [Quantity("module", Dimension.Length, "mm", Symbol = "m", Above = 0)] double module,
        [Quantity("addendum, 0 for one module", Dimension.Length, "mm", Symbol = "h", Min = 0)] double addendum = 0,
        [Quantity("pressure angle", Dimension.Angle, "°", Symbol = "α", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180)
    {
        var tip = addendum > 0 ? addendum : module;
        var approach = PathBeyondPitchPoint(wheel * module / 2, tip, pressureAngle);
        var recess = PathBeyondPitchPoint(pinion * module / 2, tip, pressureAngle);
        var path = approach + recess;
        FormulaDomainException.Unless(
            approach <= pinion * module / 2 * Math.Sin(pressureAngle) && recess <= wheel * module / 2 * Math.Sin(pressureAngle),
            "addendum: the tip reaches past the base tangent point of the mating gear and interferes");
        var arc = path / Math.Cos(pressureAngle);
        return new GearContact(approach, recess, path, arc, arc / (Math.PI * module), 2 * arc / (pinion * module));
    }

    /// <summary>Sliding speed at the ends of contact.</summary>
    /// <param name="pinion">Teeth of the driving pinion.</param>
    /// <param name="wheel">Teeth of the wheel.</param>
    /// <param name="module">Module, m.</param>
    /// <param name="speed">Pinion speed, rad/s.</param>
    /// <param name="addendum">Addendum of both gears, m; 0 for one module.</param>
    /// <param name="pressureAngle">Pressure angle, rad.</param>
    [Formula("gear sliding speed", "vs = w1 (1 + z1 / z2) ga; ve = w1 (1 + z1 / z2) gr", Source)]
    public static GearSliding Sliding(
        [Quantity("pinion teeth", Dimension.Number, Symbol = "z1", Min = 5)] int pinion,
        [Quantity("wheel teeth", Dimension.Number, Symbol = "z2", Min = 5)] int wheel,
        [Quantity("module", Dimension.Length, "mm", Symbol = "m", Above = 0)] double module,
        [Quantity("pinion speed", Dimension.RotationalSpeed, "rpm", Symbol = "w1", Min = 0)] double speed,
        [Quantity("addendum, 0 for one module", Dimension.Length, "mm", Symbol = "h", Min = 0)] double addendum = 0,
        [Quantity("pressure angle", Dimension.Angle, "°", Symbol = "α", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180)
    {
        var contact = Contact(pinion, wheel, module, addendum, pressureAngle);
        var relative = speed * (1 + ((double)pinion / wheel));
        return new GearSliding(relative * contact.Approach, relative * contact.Recess);
    }

    /// <summary>Least pinion teeth that mesh with a rack without interference.</summary>
    /// <param name="pressureAngle">Pressure angle, rad.</param>
    /// <param name="addendum">Addendum over module.</param>
    [Formula("least teeth with a rack", "z = 2 k / sin(α)^2", Source)]
    public static LeastTeeth LeastWithRack(
        [Quantity("pressure angle", Dimension.Angle, "°", Symbol = "α", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180,
        [Quantity("addendum over module", Dimension.Number, Symbol = "k", Above = 0, Max = 2)] double addendum = 1)
    {
        var sin = Math.Sin(pressureAngle);
        return Rounded(2 * addendum / (sin * sin));
    }

    /// <summary>Least pinion teeth that mesh with a wheel without interference.</summary>
    /// <param name="ratio">Wheel teeth over pinion teeth.</param>
    /// <param name="pressureAngle">Pressure angle, rad.</param>
    /// <param name="addendum">Addendum over module.</param>
    [Formula(
        "least teeth without interference",
        "z = 2 k (u + sqrt(u^2 + (1 + 2 u) sin(α)^2)) / ((1 + 2 u) sin(α)^2)",
        Source)]
    public static LeastTeeth Least(
        [Quantity("gear ratio", Dimension.Number, Symbol = "u", Min = 1)] double ratio,
        [Quantity("pressure angle", Dimension.Angle, "°", Symbol = "α", Above = 0.1, Below = 0.8)] double pressureAngle = 20 * Math.PI / 180,
        [Quantity("addendum over module", Dimension.Number, Symbol = "k", Above = 0, Max = 2)] double addendum = 1)
    {
        var sin = Math.Sin(pressureAngle);
        var share = (1 + (2 * ratio)) * sin * sin;
        return Rounded(2 * addendum * (ratio + Math.Sqrt((ratio * ratio) + share)) / share);
    }

    private static LeastTeeth Rounded(double exact) => new(exact, Math.Ceiling(exact));

    private static double PathBeyondPitchPoint(double pitchRadius, double addendum, double pressureAngle)
    {
        var (sin, cos) = Math.SinCos(pressureAngle);
        var (outer, basic) = (pitchRadius + addendum, pitchRadius * cos);
        return Math.Sqrt((outer * outer) - (basic * basic)) - (pitchRadius * sin);
    }
}
