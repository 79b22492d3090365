using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>What is taken off or added at the counterweights for another bob weight.</summary>
public static class CounterweightChange
{
    /// <summary>Mass to add at the counterweights of one crank pin, kg; negative to take off.</summary>
    /// <param name="wanted">Bob weight that the crank is to balance with, kg.</param>
    /// <param name="now">Bob weight that it balances with now, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="weightRadius">Radius at which the mass is added or drilled out, opposite the pin, m.</param>
    [Formula("counterweight change", "m = (W2 - W1) r / b", "Equal moments about the crank axis", Provenance = Provenance.Definition)]
    [return: Quantity("mass to add at the counterweights", Dimension.Mass, "g", Symbol = "m")]
    public static double Mass(
        [Quantity("bob weight wanted", Dimension.Mass, "g", Symbol = "W2", Min = 0)] double wanted,
        [Quantity("bob weight now", Dimension.Mass, "g", Symbol = "W1", Min = 0)] double now,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("radius of the change", Dimension.Length, "mm", Symbol = "b", Above = 0, Max = 4)] double weightRadius) =>
        (wanted - now) * radius / weightRadius;

    /// <summary>Depth of a round hole that changes the mass by so much, m.</summary>
    /// <param name="mass">Change of mass, kg.</param>
    /// <param name="diameter">Diameter of the hole or slug, m.</param>
    /// <param name="density">Density of what comes out, or that of a slug less that of what it takes the place of, kg/m³.</param>
    [Formula("depth of a balance hole", "h = 4 m / (π d^2 ρ)", "Volume of a cylinder", Provenance = Provenance.Definition, Validity = "A flat bottom; the point of a drill takes a little more.")]
    [return: Quantity("depth of the hole", Dimension.Length, "mm", Symbol = "h")]
    public static double HoleDepth(
        [Quantity("change of mass", Dimension.Mass, "g", Symbol = "m", Min = 0)] double mass,
        [Quantity("diameter of the hole", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("density taken out or gained", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850) =>
        4 * mass / (Math.PI * diameter * diameter * density);
}
