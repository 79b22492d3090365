using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gears;

/// <summary>Contact of two balls, or of a ball and a flat.</summary>
/// <param name="Radius">Radius of the contact circle, m.</param>
/// <param name="Peak">Greatest pressure, Pa.</param>
/// <param name="Mean">Mean pressure, Pa.</param>
/// <param name="Approach">Approach of the two bodies, m.</param>
/// <param name="Modulus">Reduced modulus E', Pa.</param>
public readonly record struct PointContact(
    [Quantity("contact radius", Dimension.Length, "µm", Symbol = "a")] double Radius,
    [Quantity("greatest contact pressure", Dimension.Pressure, "MPa", Symbol = "pmax")] double Peak,
    [Quantity("mean contact pressure", Dimension.Pressure, "MPa", Symbol = "pm")] double Mean,
    [Quantity("approach", Dimension.Length, "µm", Symbol = "δ")] double Approach,
    [Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er")] double Modulus);

/// <summary>Contact of two parallel cylinders.</summary>
/// <param name="HalfWidth">Half width of the contact, m.</param>
/// <param name="Peak">Greatest pressure, Pa.</param>
public readonly record struct LineContact(
    [Quantity("half width of the contact", Dimension.Length, "µm", Symbol = "b")] double HalfWidth,
    [Quantity("greatest contact pressure", Dimension.Pressure, "MPa", Symbol = "pmax")] double Peak);

/// <summary>Dry elastic contact of smooth bodies.</summary>
public static class HertzContact
{
    private const string Source = "Hertz; Stachowiak & Batchelor, Engineering Tribology, 2nd ed., ch. 7";

    /// <summary>Reduced modulus as the film formulas define it, Pa: twice the contact modulus.</summary>
    /// <param name="first">Young's modulus of one body, Pa.</param>
    /// <param name="second">Young's modulus of the other, Pa.</param>
    /// <param name="firstPoisson">Poisson's ratio of one body.</param>
    /// <param name="secondPoisson">Poisson's ratio of the other.</param>
    [Formula("reduced modulus of a contact", "2 / Er = (1 - ν1^2) / E1 + (1 - ν2^2) / E2", Source)]
    [return: Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er")]
    public static double ReducedModulus(
        [Quantity("Young's modulus of one body", Dimension.Pressure, "GPa", Symbol = "E1", Above = 0)] double first = 210e9,
        [Quantity("Young's modulus of the other", Dimension.Pressure, "GPa", Symbol = "E2", Above = 0)] double second = 210e9,
        [Quantity("Poisson's ratio of one body", Dimension.Number, Symbol = "ν1", Min = 0, Max = 0.5)] double firstPoisson = 0.3,
        [Quantity("Poisson's ratio of the other", Dimension.Number, Symbol = "ν2", Min = 0, Max = 0.5)] double secondPoisson = 0.3) =>
        2 / (((1 - (firstPoisson * firstPoisson)) / first) + ((1 - (secondPoisson * secondPoisson)) / second));

    /// <summary>Contact of two balls of the same material; a very large radius is a flat.</summary>
    /// <param name="load">Load, N.</param>
    /// <param name="firstRadius">Radius of one ball, m.</param>
    /// <param name="secondRadius">Radius of the other, m.</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    /// <param name="poisson">Poisson's ratio.</param>
    [Formula(
        "Hertz point contact",
        "Er = E / (1 - ν^2); 1 / R = 1 / R1 + 1 / R2; a = (3 W R / (2 Er))^(1/3); pmax = 3 W / (2 π a^2); pm = W / (π a^2); δ = a^2 / R",
        Source)]
    public static PointContact Point(
        [Quantity("load", Dimension.Force, "N", Symbol = "W", Above = 0)] double load,
        [Quantity("radius of one ball", Dimension.Length, "mm", Symbol = "R1", Above = 0)] double firstRadius,
        [Quantity("radius of the other", Dimension.Length, "mm", Symbol = "R2", Above = 0)] double secondRadius,
        [Quantity("Young's modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 210e9,
        [Quantity("Poisson's ratio", Dimension.Number, Symbol = "ν", Min = 0, Max = 0.5)] double poisson = 0.3)
    {
        var reduced = ReducedModulus(modulus, modulus, poisson, poisson);
        var radius = 1 / ((1 / firstRadius) + (1 / secondRadius));
        var a = Math.Cbrt(3 * load * radius / (2 * reduced));
        var mean = load / (Math.PI * a * a);
        return new PointContact(a, 1.5 * mean, mean, a * a / radius, reduced);
    }

    /// <summary>Contact of two parallel cylinders.</summary>
    /// <param name="lineLoad">Load for its length, N/m.</param>
    /// <param name="radius">Reduced radius, m: product over sum of the two radii.</param>
    /// <param name="reduced">Reduced modulus E', Pa.</param>
    [Formula("Hertz line contact", "pmax = sqrt(w Er / (2 π R)); b = sqrt(8 w R / (π Er))", Source)]
    public static LineContact Line(
        [Quantity("line load", Dimension.ForcePerLength, "N/mm", Symbol = "w", Above = 0)] double lineLoad,
        [Quantity("reduced radius", Dimension.Length, "mm", Symbol = "R", Above = 0)] double radius,
        [Quantity("reduced modulus", Dimension.Pressure, "GPa", Symbol = "Er", Above = 0)] double reduced = 230.77e9) =>
        new(Math.Sqrt(8 * lineLoad * radius / (Math.PI * reduced)), Math.Sqrt(lineLoad * reduced / (2 * Math.PI * radius)));
}
