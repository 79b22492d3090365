using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Spring wires of the strength table.</summary>
public enum WireGrade
{
    /// <summary>Music wire, ASTM A228.</summary>
    Music,

    /// <summary>Oil-tempered wire, ASTM A229.</summary>
    OilTempered,

    /// <summary>Hard-drawn wire, ASTM A227.</summary>
    HardDrawn,

    /// <summary>Chrome-vanadium wire, ASTM A232.</summary>
    ChromeVanadium,

    /// <summary>Chrome-silicon wire, ASTM A401: valve springs.</summary>
    ChromeSilicon,
}

/// <summary>Tensile strength of spring wire, which falls with the wire diameter.</summary>
public static class SpringWire
{
    /// <summary>Tensile strength from the intercept and slope of a wire's strength line, Pa.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="intercept">Strength of a wire 1 mm thick, Pa (A in MPa·mm^m).</param>
    /// <param name="slope">Exponent m.</param>
    [Formula("spring wire strength", "Rm = A / d^m", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-14", Validity = "d counted in mm; A is the strength at 1 mm")]
    [return: Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm")]
    public static double Strength(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("strength of 1 mm wire", Dimension.Pressure, "MPa", Symbol = "A", Above = 0)] double intercept,
        [Quantity("slope", Dimension.Number, Symbol = "m", Min = 0, Max = 1)] double slope) =>
        intercept / Math.Pow(wire / 1e-3, slope);

    /// <summary>Least tensile strength of a standard spring wire, Pa.</summary>
    /// <param name="grade">Kind of wire.</param>
    /// <param name="wire">Wire diameter, m; only within the table's range for the grade.</param>
    [Formula("spring wire strength by grade", "Rm = A / d^m", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., table 10-4", Provenance = Provenance.FromMemory, Validity = "A and m of the grade: music 2211, 0.145; oil-tempered 1855, 0.187; hard-drawn 1783, 0.190; chrome-vanadium 2005, 0.168; chrome-silicon 1974, 0.108", Caution = "Valve-spring wire of today is stronger: use the maker's certificate.")]
    [return: Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm")]
    public static double Strength(
        [Quantity("wire grade", Dimension.Number)] WireGrade grade,
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire)
    {
        var (intercept, slope, least, greatest) = grade switch
        {
            WireGrade.Music => (2211e6, 0.145, 0.10e-3, 6.5e-3),
            WireGrade.OilTempered => (1855e6, 0.187, 0.5e-3, 12.7e-3),
            WireGrade.HardDrawn => (1783e6, 0.190, 0.7e-3, 12.7e-3),
            WireGrade.ChromeVanadium => (2005e6, 0.168, 0.8e-3, 11.1e-3),
            _ => (1974e6, 0.108, 1.6e-3, 9.5e-3),
        };
        FormulaDomainException.Unless(wire >= least && wire <= greatest, "wire diameter: outside the strength table of this wire grade");
        return Strength(wire, intercept, slope);
    }
}
