using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Section of a rod's shank.</summary>
/// <param name="Area">Area, m².</param>
/// <param name="SwingGyration">Radius of gyration for bending in the plane that the rod swings in, m.</param>
/// <param name="AcrossGyration">Radius of gyration for bending along the crank, m.</param>
/// <param name="SwingModulus">Section modulus for bending in the plane that the rod swings in, m³.</param>
public readonly record struct ShankSection(
    [Quantity("section of the shank", Dimension.Area, "mm²", Symbol = "A")] double Area,
    [Quantity("radius of gyration in the swing plane", Dimension.Length, "mm", Symbol = "kx")] double SwingGyration,
    [Quantity("radius of gyration across it", Dimension.Length, "mm", Symbol = "ky")] double AcrossGyration,
    [Quantity("section modulus in the swing plane", Dimension.Volume, "mm³", Symbol = "Z")] double SwingModulus);

/// <summary>Load under which a rod gives way as a strut.</summary>
/// <param name="Load">Critical load, N.</param>
/// <param name="Slenderness">Length over radius of gyration.</param>
/// <param name="Transition">Slenderness above which Euler's formula holds, below which Johnson's does.</param>
public readonly record struct StrutLoad(
    [Quantity("critical load", Dimension.Force, "kN", Symbol = "P")] double Load,
    [Quantity("slenderness", Dimension.Number, Symbol = "λ")] double Slenderness,
    [Quantity("slenderness of transition", Dimension.Number, Symbol = "λ1")] double Transition);

/// <summary>Bending of a rod by its own inertia as it swings.</summary>
/// <param name="Moment">Greatest bending moment, N·m; about 0.58 of the length from the small end.</param>
/// <param name="Stress">Stress at the edge there, Pa.</param>
public readonly record struct RodWhip(
    [Quantity("bending moment", Dimension.Torque, "N·m", Symbol = "M")] double Moment,
    [Quantity("whip stress", Dimension.Pressure, "MPa", Symbol = "σ")] double Stress);

/// <summary>The shank of a connecting rod: section, buckling, whip.</summary>
public static class RodSection
{
    private const string Khurmi = "Khurmi & Gupta, A Textbook of Machine Design, ch. 32, Design of Connecting Rod";

    /// <summary>Where along the rod from the small end, in lengths, the textbook load bends it most.</summary>
    public const double WhipAt = 0.57735026918962576;

    /// <summary>Area, radii of gyration and section modulus of an I-section.</summary>
    /// <param name="depth">Depth in the plane that the rod swings in, m.</param>
    /// <param name="width">Width along the crank, m.</param>
    /// <param name="web">Thickness of the web, m.</param>
    /// <param name="flange">Thickness of each flange, m.</param>
    [Formula(
        "I-section of a rod",
        "A = 2 B tf + (H - 2 tf) t; kx^2 = (B H^3 - (B - t) (H - 2 tf)^3) / (12 A); ky^2 = (2 tf B^3 + (H - 2 tf) t^3) / (12 A); Z = 2 A kx^2 / H",
        "Second moments of area of rectangles",
        Provenance = Provenance.Definition,
        Validity = "Sharp corners: fillets of a forging add a little, its draft takes a little.")]
    public static ShankSection OfI(
        [Quantity("depth in the swing plane", Dimension.Length, "mm", Symbol = "H", Above = 0, Max = 1)] double depth,
        [Quantity("width along the crank", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 1)] double width,
        [Quantity("web thickness", Dimension.Length, "mm", Symbol = "t", Above = 0, Max = 1)] double web,
        [Quantity("flange thickness", Dimension.Length, "mm", Symbol = "tf", Above = 0, Max = 0.5)] double flange)
    {
        FormulaDomainException.Unless(web <= width, "web thickness: must not be greater than the width");
        FormulaDomainException.Unless(2 * flange <= depth, "flange thickness: two of them must not be more than the depth");
        var inner = depth - (2 * flange);
        var area = (2 * width * flange) + (inner * web);
        var swing = ((width * depth * depth * depth) - ((width - web) * inner * inner * inner)) / 12;
        var across = ((2 * flange * width * width * width) + (inner * web * web * web)) / 12;
        return new ShankSection(area, Math.Sqrt(swing / area), Math.Sqrt(across / area), 2 * swing / depth);
    }

    /// <summary>Critical load of a strut by Euler above the slenderness of transition, by J. B. Johnson below.</summary>
    /// <param name="area">Section, m².</param>
    /// <param name="gyration">Radius of gyration in the plane of buckling, m.</param>
    /// <param name="length">Length between centres, m.</param>
    /// <param name="ends">End condition: 1 pinned at both ends, 4 fixed at both.</param>
    /// <param name="yield">Compressive yield strength, Pa.</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    [Formula(
        "strut load by Euler and Johnson",
        "λ = l / k; λ1 = sqrt(2 π^2 C E / Sy); P = A (Sy - (Sy λ / (2 π))^2 / (C E)) up to λ1, A C π^2 E / λ^2 above",
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eqs 4-43 and 4-48 (from memory)",
        Provenance = Provenance.FromMemory,
        Validity = "Straight, centrally loaded. A rod counts as pinned (C = 1) in the plane that it swings in and as fixed (C = 4) across it.")]
    public static StrutLoad Johnson(
        [Quantity("section", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double area,
        [Quantity("radius of gyration", Dimension.Length, "mm", Symbol = "k", Above = 0)] double gyration,
        [Quantity("length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double length,
        [Quantity("end condition", Dimension.Number, Symbol = "C", Min = 0.25, Max = 4)] double ends,
        [Quantity("compressive yield strength", Dimension.Pressure, "MPa", Symbol = "Sy", Above = 0)] double yield,
        [Quantity("Young's modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 205e9)
    {
        var slenderness = length / gyration;
        var transition = Math.Sqrt(2 * Math.PI * Math.PI * ends * modulus / yield);
        var half = yield * slenderness / (2 * Math.PI);
        var stress = slenderness <= transition ? yield - (half * half / (ends * modulus)) : ends * Math.PI * Math.PI * modulus / (slenderness * slenderness);
        return new StrutLoad(area * stress, slenderness, transition);
    }

    /// <summary>Critical load of a strut by Rankine's formula, N.</summary>
    /// <param name="area">Section, m².</param>
    /// <param name="gyration">Radius of gyration in the plane of buckling, m.</param>
    /// <param name="length">Equivalent length: the whole of it when pinned at both ends, half of it when fixed, m.</param>
    /// <param name="yield">Compressive yield strength, Pa.</param>
    /// <param name="constant">Rankine's constant; 1/7500 for steel.</param>
    [Formula("strut load by Rankine", "P = Sy A / (1 + a (L / k)^2)", Khurmi)]
    [return: Quantity("critical load", Dimension.Force, "kN", Symbol = "P")]
    public static double Rankine(
        [Quantity("section", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double area,
        [Quantity("radius of gyration", Dimension.Length, "mm", Symbol = "k", Above = 0)] double gyration,
        [Quantity("equivalent length", Dimension.Length, "mm", Symbol = "L", Above = 0, Max = 10)] double length,
        [Quantity("compressive yield strength", Dimension.Pressure, "MPa", Symbol = "Sy", Above = 0)] double yield,
        [Quantity("Rankine's constant", Dimension.Number, Symbol = "a", Above = 0, Max = 1)] double constant = 1.0 / 7500) =>
        yield * area / (1 + (constant * length * length / (gyration * gyration)));

    /// <summary>Greatest bending of a uniform rod by its own inertia, crank and rod at right angles.</summary>
    /// <param name="area">Section of the shank, m².</param>
    /// <param name="modulus">Section modulus in the plane that the rod swings in, m³.</param>
    /// <param name="rod">Rod length between centres, m.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="density">Density of the rod, kg/m³.</param>
    [Formula(
        "rod whip",
        "M = ρ A l^2 r w^2 / (9 sqrt(3)); σ = M / Z",
        Khurmi + ", whipping stress",
        Validity = "Load that rises evenly from none at the small end; a uniform bar hinged at both ends.")]
    public static RodWhip Whip(
        [Quantity("section of the shank", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double area,
        [Quantity("section modulus", Dimension.Volume, "mm³", Symbol = "Z", Above = 0)] double modulus,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850)
    {
        var moment = density * area * rod * rod * radius * speed * speed / (9 * Math.Sqrt(3));
        return new RodWhip(moment, moment / modulus);
    }

    /// <summary>Bending moment in a uniform hinged bar whose points are accelerated sideways, N·m.</summary>
    /// <param name="massPerLength">kg/m.</param>
    /// <param name="length">Length, m.</param>
    /// <param name="first">Sideways acceleration of the first end, m/s².</param>
    /// <param name="last">Sideways acceleration of the last end, m/s²; between them it changes evenly.</param>
    /// <param name="at">Place from the first end over the length.</param>
    public static double Moment(double massPerLength, double length, double first, double last, double at) =>
        massPerLength * length * length * at * (1 - at) * ((first * (2 - at)) + (last * (1 + at))) / 6;
}
