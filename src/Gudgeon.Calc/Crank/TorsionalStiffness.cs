using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Torsional stiffness of shafts and crank throws.</summary>
public static class TorsionalStiffness
{
    private const string Recalled = "as usually quoted in handbooks; form recalled, no page read";
    private const string Caution = "An empirical form: two published forms differ by about a quarter on the same throw. Use it as a band, and measure when it matters.";

    /// <summary>Torsional stiffness of a plain round shaft, N·m/rad.</summary>
    /// <param name="diameter">Outer diameter, m.</param>
    /// <param name="length">Length, m.</param>
    /// <param name="bore">Bore through it, m.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    [Formula("torsional stiffness of a shaft", "k = π G (d^4 - di^4) / (32 L)", "Torsion of round bars; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., ch. 3", Provenance = Provenance.Definition)]
    [return: Quantity("torsional stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "k")]
    public static double Shaft(
        [Quantity("diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("bore", Dimension.Length, "mm", Symbol = "di", Min = 0)] double bore = 0,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        FormulaDomainException.Unless(bore < diameter, "bore: must be smaller than the diameter");
        return shearModulus * Math.PI * (Fourth(diameter) - Fourth(bore)) / (32 * length);
    }

    /// <summary>Torsional stiffness of a stepped shaft, N·m/rad.</summary>
    /// <param name="diameters">Diameters of the steps, m.</param>
    /// <param name="lengths">Lengths of the steps, m.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    [Formula("torsional stiffness of a stepped shaft", "1 / k = Σ 32 L / (π G d^4)", "Steps in series; Bevan, The Theory of Machines, 3rd ed., ch. 15")]
    [return: Quantity("torsional stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "k")]
    public static double Stepped(
        [Quantity("diameters", Dimension.Length, "mm", Symbol = "d", Above = 0)] double[] diameters,
        [Quantity("lengths", Dimension.Length, "mm", Symbol = "L", Above = 0)] double[] lengths,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        FormulaDomainException.Unless(diameters.Length == lengths.Length, "lengths: one for each diameter is wanted");
        var compliance = 0.0;
        for (var i = 0; i < lengths.Length; i++)
        {
            compliance += 1 / Shaft(diameters[i], lengths[i], 0, shearModulus);
        }

        return 1 / compliance;
    }

    /// <summary>Length of plain shaft of a reference diameter with the stiffness of a stepped shaft, m.</summary>
    /// <param name="diameters">Diameters of the steps, m.</param>
    /// <param name="lengths">Lengths of the steps, m.</param>
    /// <param name="reference">Reference diameter, m.</param>
    [Formula("equivalent shaft length", "Le = Σ L (D / d)^4", "Bevan, The Theory of Machines, 3rd ed., ch. 15")]
    [return: Quantity("equivalent length", Dimension.Length, "mm", Symbol = "Le")]
    public static double EquivalentLength(
        [Quantity("diameters", Dimension.Length, "mm", Symbol = "d", Above = 0)] double[] diameters,
        [Quantity("lengths", Dimension.Length, "mm", Symbol = "L", Above = 0)] double[] lengths,
        [Quantity("reference diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double reference)
    {
        FormulaDomainException.Unless(diameters.Length == lengths.Length, "lengths: one for each diameter is wanted");
        var sum = 0.0;
        for (var i = 0; i < lengths.Length; i++)
        {
            sum += lengths[i] * Fourth(reference / diameters[i]);
        }

        return sum;
    }

    /// <summary>Torsional stiffness of one solid crank throw by Ker Wilson's form, N·m/rad.</summary>
    /// <param name="journal">Main journal diameter, m.</param>
    /// <param name="journalLength">Main journal length, m.</param>
    /// <param name="pin">Crank pin diameter, m.</param>
    /// <param name="pinLength">Crank pin length, m.</param>
    /// <param name="radius">Throw, m.</param>
    /// <param name="webThickness">Web thickness along the crank, m.</param>
    /// <param name="webWidth">Web width, m.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    [Formula(
        "torsional stiffness of a crank throw, Ker Wilson",
        "Le = (Lj + 0.4 Dj) / Dj^4 + (Lc + 0.4 Dc) / Dc^4 + (r - 0.2 (Dj + Dc)) / (t W^3); k = π G / (32 Le)",
        "Ker Wilson, Practical Solution of Torsional Vibration Problems, " + Recalled,
        Provenance = Provenance.FromMemory,
        Caution = Caution)]
    [return: Quantity("torsional stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "k")]
    public static double KerWilson(
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "Dj", Above = 0)] double journal,
        [Quantity("journal length", Dimension.Length, "mm", Symbol = "Lj", Above = 0)] double journalLength,
        [Quantity("crank pin diameter", Dimension.Length, "mm", Symbol = "Dc", Above = 0)] double pin,
        [Quantity("crank pin length", Dimension.Length, "mm", Symbol = "Lc", Above = 0)] double pinLength,
        [Quantity("throw", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("web thickness", Dimension.Length, "mm", Symbol = "t", Above = 0)] double webThickness,
        [Quantity("web width", Dimension.Length, "mm", Symbol = "W", Above = 0)] double webWidth,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        var sum = ((journalLength + (0.4 * journal)) / Fourth(journal))
            + ((pinLength + (0.4 * pin)) / Fourth(pin))
            + ((radius - (0.2 * (journal + pin))) / (webThickness * webWidth * webWidth * webWidth));
        return Math.PI * shearModulus / (32 * sum);
    }

    /// <summary>Torsional stiffness of one solid crank throw by Carter's form, N·m/rad.</summary>
    /// <param name="journal">Main journal diameter, m.</param>
    /// <param name="journalLength">Main journal length, m.</param>
    /// <param name="pin">Crank pin diameter, m.</param>
    /// <param name="pinLength">Crank pin length, m.</param>
    /// <param name="radius">Throw, m.</param>
    /// <param name="webThickness">Web thickness along the crank, m.</param>
    /// <param name="webWidth">Web width, m.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    [Formula(
        "torsional stiffness of a crank throw, Carter",
        "Le = (Lj + 0.8 t) / Dj^4 + 0.75 Lc / Dc^4 + 1.5 r / (t W^3); k = π G / (32 Le)",
        "Carter, Engineering (1928), " + Recalled,
        Provenance = Provenance.FromMemory,
        Caution = Caution)]
    [return: Quantity("torsional stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "k")]
    public static double Carter(
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "Dj", Above = 0)] double journal,
        [Quantity("journal length", Dimension.Length, "mm", Symbol = "Lj", Above = 0)] double journalLength,
        [Quantity("crank pin diameter", Dimension.Length, "mm", Symbol = "Dc", Above = 0)] double pin,
        [Quantity("crank pin length", Dimension.Length, "mm", Symbol = "Lc", Above = 0)] double pinLength,
        [Quantity("throw", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("web thickness", Dimension.Length, "mm", Symbol = "t", Above = 0)] double webThickness,
        [Quantity("web width", Dimension.Length, "mm", Symbol = "W", Above = 0)] double webWidth,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        var sum = ((journalLength + (0.8 * webThickness)) / Fourth(journal))
            + (0.75 * pinLength / Fourth(pin))
            + (1.5 * radius / (webThickness * webWidth * webWidth * webWidth));
        return Math.PI * shearModulus / (32 * sum);
    }

    private static double Fourth(double x) => x * x * x * x;
}
