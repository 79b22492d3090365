using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Stresses in a ring that spins.</summary>
/// <param name="BoreHoop">Hoop stress at the bore, Pa.</param>
/// <param name="RadialMax">Greatest radial stress, Pa.</param>
/// <param name="RadialMaxRadius">Radius at which it acts, m.</param>
/// <param name="RimHoop">Hoop stress at the rim, Pa.</param>
/// <param name="BoreGrowth">Radial growth of the bore, m.</param>
public readonly record struct RingStress(
    [Quantity("hoop stress at the bore", Dimension.Pressure, "MPa", Symbol = "σb")] double BoreHoop,
    [Quantity("greatest radial stress", Dimension.Pressure, "MPa", Symbol = "σr")] double RadialMax,
    [Quantity("radius of the greatest radial stress", Dimension.Length, "mm", Symbol = "r")] double RadialMaxRadius,
    [Quantity("hoop stress at the rim", Dimension.Pressure, "MPa", Symbol = "σo")] double RimHoop,
    [Quantity("radial growth of the bore", Dimension.Length, "µm", Symbol = "u")] double BoreGrowth);

/// <summary>Rings and discs of constant thickness under their own rotation, plane stress.</summary>
public static class RotatingRing
{
    private const string Burst = "A part that bursts is shrapnel: containment, and nobody in its plane.";

    /// <summary>Stresses in a spinning ring of constant thickness.</summary>
    /// <param name="innerRadius">Radius of the bore, m.</param>
    /// <param name="outerRadius">Radius of the rim, m.</param>
    /// <param name="speed">Rotational speed, rad/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="poisson">Poisson's ratio.</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    [Formula("rotating ring", "σb = (3 + ν) / 4 ρ w^2 (ro^2 + ri^2 (1 - ν) / (3 + ν)); σr = (3 + ν) / 8 ρ w^2 (ro - ri)^2; r = sqrt(ri ro); σo = (3 + ν) / 4 ρ w^2 (ri^2 + ro^2 (1 - ν) / (3 + ν)); u = ri σb / E", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 3-55", Provenance = Provenance.FromMemory, Validity = "constant thickness well under the outer radius", Caution = Burst)]
    public static RingStress Stress(
        [Quantity("inner radius", Dimension.Length, "mm", Symbol = "ri", Above = 0)] double innerRadius,
        [Quantity("outer radius", Dimension.Length, "mm", Symbol = "ro", Above = 0)] double outerRadius,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850,
        [Quantity("Poisson's ratio", Dimension.Number, Symbol = "ν", Min = 0, Max = 0.5)] double poisson = 0.3,
        [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 205e9)
    {
        FormulaDomainException.Unless(outerRadius > innerRadius, "outer radius: must be greater than the inner radius");
        var inertia = (3 + poisson) / 4 * density * speed * speed;
        var share = (1 - poisson) / (3 + poisson);
        var inner = innerRadius * innerRadius;
        var outer = outerRadius * outerRadius;
        var bore = inertia * (outer + (inner * share));
        var width = outerRadius - innerRadius;
        return new RingStress(bore, inertia / 2 * width * width, Math.Sqrt(innerRadius * outerRadius), inertia * (inner + (outer * share)), innerRadius * bore / modulus);
    }

    /// <summary>Stress at the centre of a spinning solid disc, Pa; radial and hoop are equal there.</summary>
    /// <param name="radius">Radius of the rim, m.</param>
    /// <param name="speed">Rotational speed, rad/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="poisson">Poisson's ratio.</param>
    [Formula("rotating solid disc", "σ = (3 + ν) / 8 ρ (w r)^2", "Mechanical Engineer's Data Handbook, rotating discs", Validity = "constant thickness, no hole at all", Caution = Burst)]
    [return: Quantity("stress at the centre", Dimension.Pressure, "MPa", Symbol = "σ")]
    public static double SolidDisc(
        [Quantity("radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850,
        [Quantity("Poisson's ratio", Dimension.Number, Symbol = "ν", Min = 0, Max = 0.5)] double poisson = 0.3) =>
        (3 + poisson) / 8 * density * speed * speed * radius * radius;

    /// <summary>Hoop stress in a thin spinning ring, Pa.</summary>
    /// <param name="radius">Mean radius, m.</param>
    /// <param name="speed">Rotational speed, rad/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    [Formula("rotating thin ring", "σ = ρ (w r)^2", "Mechanical Engineer's Data Handbook, rotating rings", Validity = "ring thin against its radius", Caution = Burst)]
    [return: Quantity("hoop stress", Dimension.Pressure, "MPa", Symbol = "σ")]
    public static double ThinRing(
        [Quantity("mean radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850) =>
        density * speed * speed * radius * radius;
}
