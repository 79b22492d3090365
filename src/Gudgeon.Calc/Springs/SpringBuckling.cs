using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Sideways buckling of compression springs. The seating coefficient is 0.5 for parallel ground seats.</summary>
public static class SpringBuckling
{
    private const string SeatHelp = "0.5 parallel ground seats; 0.707 one seat hinged; 1 both hinged; 2 one end free";

    /// <summary>Free length below which a spring cannot buckle at any deflection, m.</summary>
    /// <param name="meanDiameter">Mean coil diameter, m.</param>
    /// <param name="seating">Seating coefficient ν.</param>
    /// <param name="elasticModulus">Young's modulus, Pa.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    [Formula("spring buckling length", "Lc = π D / ν sqrt(2 (E - G) / (2 G + E))", "EN 13906-1:2013, 9.14; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-12", Provenance = Provenance.FromMemory)]
    [return: Quantity("longest stable free length", Dimension.Length, "mm", Symbol = "Lc")]
    public static double StableLength(
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("seating coefficient", Dimension.Number, Symbol = "ν", Above = 0, Help = SeatHelp)] double seating = 0.5,
        [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double elasticModulus = 206e9,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        FormulaDomainException.Unless(shearModulus < elasticModulus, "shear modulus: must be less than the elastic modulus");
        return Math.PI * meanDiameter / seating * Math.Sqrt(2 * (elasticModulus - shearModulus) / ((2 * shearModulus) + elasticModulus));
    }

    /// <summary>Free length below which a steel spring cannot buckle, textbook rounding, m.</summary>
    /// <param name="meanDiameter">Mean coil diameter, m.</param>
    /// <param name="seating">End-condition constant.</param>
    [Formula("steel spring buckling length", "Lc = 2.63 D / ν", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-13", Validity = "steels; 2.63 is a rounded figure for G / E of spring steel")]
    [return: Quantity("longest stable free length", Dimension.Length, "mm", Symbol = "Lc")]
    public static double SteelStableLength(
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("seating coefficient", Dimension.Number, Symbol = "ν", Above = 0, Help = SeatHelp)] double seating = 0.5) =>
        2.63 * meanDiameter / seating;

    /// <summary>Deflection at which a free-standing spring buckles, m. Refuses a spring too short to buckle.</summary>
    /// <param name="meanDiameter">Mean coil diameter, m.</param>
    /// <param name="freeLength">Free length, m.</param>
    /// <param name="seating">Seating coefficient ν.</param>
    /// <param name="elasticModulus">Young's modulus, Pa.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    [Formula("spring buckling deflection", "sK = L0 0.5 / (1 - G/E) (1 - sqrt(1 - (1 - G/E) / (0.5 + G/E) (π D / (ν L0))^2))", "EN 13906-1:2013, 9.14; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-10", Provenance = Provenance.FromMemory, Validity = "free lengths above the spring buckling length; a shorter spring is stable")]
    [return: Quantity("buckling deflection", Dimension.Length, "mm", Symbol = "sK")]
    public static double Deflection(
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("free length", Dimension.Length, "mm", Symbol = "L0", Above = 0)] double freeLength,
        [Quantity("seating coefficient", Dimension.Number, Symbol = "ν", Above = 0, Help = SeatHelp)] double seating = 0.5,
        [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double elasticModulus = 206e9,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        var stable = StableLength(meanDiameter, seating, elasticModulus, shearModulus);
        FormulaDomainException.Unless(freeLength >= stable, "free length: the spring is too short to buckle at any deflection");
        var slenderness = stable / freeLength;
        return freeLength * 0.5 / (1 - (shearModulus / elasticModulus)) * (1 - Math.Sqrt(1 - (slenderness * slenderness)));
    }
}
