using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>What the head of a bolt, its nut or its washer rests on.</summary>
public enum BearingMaterial
{
    /// <summary>Steel S235.</summary>
    MildSteel,

    /// <summary>Steel S355.</summary>
    StructuralSteel,

    /// <summary>34CrNiMo6, quenched and tempered.</summary>
    AlloySteel,

    /// <summary>Grey iron GJL-250.</summary>
    GreyIron,

    /// <summary>Ductile iron GJS-500-7.</summary>
    DuctileIron,

    /// <summary>6082-T6, Rm 290 MPa.</summary>
    WroughtAluminium,

    /// <summary>7075-T6.</summary>
    HighStrengthAluminium,

    /// <summary>AlSi7Mg, cast and aged, like A356-T6.</summary>
    CastAluminium,

    /// <summary>AlSi9Cu3, die cast.</summary>
    DieCastAluminium,

    /// <summary>Magnesium AZ91.</summary>
    CastMagnesium,

    /// <summary>Titanium Ti-6Al-4V.</summary>
    Titanium,
}

/// <summary>Pressure on the face under a bolt head.</summary>
public static class HeadPressure
{
    /// <summary>Mean pressure under the head, Pa.</summary>
    /// <param name="force">Greatest bolt force, N.</param>
    /// <param name="bearingDiameter">Outer diameter of the bearing face, m.</param>
    /// <param name="hole">Hole diameter, chamfer included, m.</param>
    [Formula("pressure under a bolt head", "p = F / (π / 4 (dw^2 - dh^2))", "VDI 2230-1:2003, R10", Provenance = Provenance.FromMemory, Validity = "face flat and square to the bolt")]
    [return: Quantity("pressure under the head", Dimension.Pressure, "MPa", Symbol = "p")]
    public static double Under(
        [Quantity("greatest bolt force", Dimension.Force, "kN", Symbol = "F", Min = 0)] double force,
        [Quantity("bearing face diameter", Dimension.Length, "mm", Symbol = "dw", Above = 0)] double bearingDiameter,
        [Quantity("hole diameter", Dimension.Length, "mm", Symbol = "dh", Above = 0)] double hole)
    {
        FormulaDomainException.Unless(bearingDiameter > hole, "bearing face diameter: must be greater than the hole diameter");
        return force / (MetricThread.Circle(bearingDiameter) - MetricThread.Circle(hole));
    }

    /// <summary>Force that the face under the head must bear when the bolt is tightened to yield, N.</summary>
    /// <param name="preload">Preload at 90 % of the yield strength, torsion counted, N.</param>
    [Formula("head force of a bolt tightened to yield", "F = 1.4 FM", "VDI 2230-1:2003, R10: yield strength above its minimum, hardening and the share of the torsion that goes", Provenance = Provenance.FromMemory, Validity = "bolts tightened to yield or by an angle")]
    [return: Quantity("greatest force under the head", Dimension.Force, "kN", Symbol = "F")]
    public static double ForceAtYield(
        [Quantity("preload at 90 % of yield", Dimension.Force, "kN", Symbol = "FM", Min = 0)] double preload) =>
        1.4 * preload;

    /// <summary>Pressure that a face bears without creeping, Pa.</summary>
    /// <param name="material">What the head rests on.</param>
    [Formula("head pressure limit", "pG", "guide values of VDI 2230-1:2003, table A9, as reprinted in a fastener catalogue", Validity = "holes without chamfer, parts wide enough, room temperature", Caution = "Aluminium softens: at 150 °C expect a quarter less (common practice, no source).")]
    [return: Quantity("pressure limit", Dimension.Pressure, "MPa", Symbol = "pG")]
    public static double Limit(
        [Quantity("bearing material", Dimension.Number)] BearingMaterial material) => 1e6 * material switch
        {
            BearingMaterial.MildSteel => 490,
            BearingMaterial.StructuralSteel => 760,
            BearingMaterial.AlloySteel => 1080,
            BearingMaterial.GreyIron => 900,
            BearingMaterial.DuctileIron => 900,
            BearingMaterial.WroughtAluminium => 260,
            BearingMaterial.HighStrengthAluminium => 410,
            BearingMaterial.CastAluminium => 380,
            BearingMaterial.DieCastAluminium => 290,
            BearingMaterial.CastMagnesium => 280,
            _ => 890,
        };
}
