using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>How much the coil's curvature raises the shear stress at the inside of the coil.</summary>
public enum CurvatureFactor
{
    /// <summary>Wahl: curvature and direct shear, (4C-1)/(4C-4) + 0.615/C.</summary>
    Wahl,

    /// <summary>Bergsträsser, (4C+2)/(4C-3); identical to the factor k of EN 13906-1.</summary>
    Bergstrasser,

    /// <summary>No correction: nominal torsion of a straight bar.</summary>
    None,
}

/// <summary>Round-wire helical compression springs: rate, curvature, stress.</summary>
public static class HelicalSpring
{
    /// <summary>Rate of a round-wire helical compression spring, N/m.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m; must exceed the wire.</param>
    /// <param name="activeCoils">Number of active coils.</param>
    /// <param name="shearModulus">Shear modulus of the wire, Pa; 79.3 GPa is usual for valve-spring wire.</param>
    /// <returns>Load per deflection, N/m.</returns>
    [Formula("helical spring rate", "R = G d^4 / (8 D^3 n)", "EN 13906-1:2013; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-9")]
    [return: Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R")]
    public static double Rate(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 0.05)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double meanDiameter,
        [Quantity("active coils", Dimension.Number, Symbol = "n", Above = 0, Max = 100)] double activeCoils,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        _ = Index(wire, meanDiameter);
        var d2 = wire * wire;
        return shearModulus * d2 * d2 / (8 * meanDiameter * meanDiameter * meanDiameter * activeCoils);
    }

    /// <summary>Spring index: mean coil diameter over wire diameter.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m; must exceed the wire.</param>
    [Formula("spring index", "C = D / d", "definition", Provenance = Provenance.Definition, Caution = "Below 4 a spring is hard to coil, above 12 it tangles and buckles.")]
    [return: Quantity("spring index", Dimension.Number, Symbol = "C")]
    public static double Index(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter)
    {
        FormulaDomainException.Unless(meanDiameter > wire, "mean coil diameter: must be greater than the wire diameter");
        return meanDiameter / wire;
    }

    /// <summary>Wahl's correction of the shear stress for curvature and direct shear.</summary>
    /// <param name="index">Spring index, mean diameter over wire diameter.</param>
    [Formula("Wahl factor", "K = (4 C - 1) / (4 C - 4) + 0.615 / C", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-4")]
    [return: Quantity("Wahl factor", Dimension.Number, Symbol = "K")]
    public static double Wahl(
        [Quantity("spring index", Dimension.Number, Symbol = "C", Above = 1)] double index) =>
        ((4 * index - 1) / (4 * index - 4)) + (0.615 / index);

    /// <summary>Bergsträsser's correction of the shear stress; the stress correction factor k of EN 13906-1 is the same.</summary>
    /// <param name="index">Spring index, mean diameter over wire diameter.</param>
    [Formula("Bergsträsser factor", "K = (4 C + 2) / (4 C - 3)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-5; EN 13906-1:2013, k = (w + 0.5) / (w - 0.75)")]
    [return: Quantity("Bergsträsser factor", Dimension.Number, Symbol = "K")]
    public static double Bergstrasser(
        [Quantity("spring index", Dimension.Number, Symbol = "C", Above = 1)] double index) =>
        (4 * index + 2) / (4 * index - 3);

    /// <summary>The chosen correction at a spring index.</summary>
    public static double Factor(CurvatureFactor curvature, double index) => curvature switch
    {
        CurvatureFactor.Wahl => Wahl(index),
        CurvatureFactor.Bergstrasser => Bergstrasser(index),
        _ => 1,
    };

    /// <summary>Greatest shear stress in the wire at a load, Pa.</summary>
    /// <param name="load">Axial load, N.</param>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m; must exceed the wire.</param>
    /// <param name="curvature">Correction for curvature; Wahl is usual for fatigue, none for setting.</param>
    [Formula("helical spring shear stress", "τ = K 8 F D / (π d^3)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-7; EN 13906-1:2013", Validity = "K is the chosen curvature factor at the index D / d")]
    [return: Quantity("shear stress", Dimension.Pressure, "MPa", Symbol = "τ")]
    public static double ShearStress(
        [Quantity("load", Dimension.Force, "N", Symbol = "F", Min = 0)] double load,
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("curvature factor", Dimension.Number, Symbol = "K")] CurvatureFactor curvature = CurvatureFactor.Wahl) =>
        Factor(curvature, Index(wire, meanDiameter)) * 8 * load * meanDiameter / (Math.PI * wire * wire * wire);

    /// <summary>Load at which the wire reaches a shear stress, N.</summary>
    /// <param name="stress">Shear stress, Pa.</param>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m; must exceed the wire.</param>
    /// <param name="curvature">Correction for curvature.</param>
    [Formula("helical spring load at a stress", "F = π d^3 τ / (8 K D)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-7 solved for the load", Validity = "K is the chosen curvature factor at the index D / d")]
    [return: Quantity("load", Dimension.Force, "N", Symbol = "F")]
    public static double LoadAtStress(
        [Quantity("shear stress", Dimension.Pressure, "MPa", Symbol = "τ", Min = 0)] double stress,
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("curvature factor", Dimension.Number, Symbol = "K")] CurvatureFactor curvature = CurvatureFactor.Wahl) =>
        Math.PI * wire * wire * wire * stress / (8 * Factor(curvature, Index(wire, meanDiameter)) * meanDiameter);
}
