using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Materials;

/// <summary>Properties of a material at room temperature.</summary>
/// <param name="Modulus">Young's modulus, Pa.</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="Expansion">Linear expansion, 1/K.</param>
/// <param name="Density">Density, kg/m³.</param>
/// <param name="Yield">Yield strength Rp0.2, Pa.</param>
/// <param name="Tensile">Tensile strength, Pa.</param>
public readonly record struct MaterialProperties(
    [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E")] double Modulus,
    [Quantity("Poisson's ratio", Dimension.Number, Symbol = "ν")] double Poisson,
    [Quantity("thermal expansion", Dimension.ThermalExpansion, "1/K", Symbol = "α")] double Expansion,
    [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")] double Density,
    [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Rp")] double Yield,
    [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm")] double Tensile);

/// <summary>Engineering materials of engines at room temperature; each row says where its strength is from.</summary>
public static class MaterialTable
{
    private const double AnySection = double.PositiveInfinity;
    private const double MPa = 1e6;

    private static readonly Dictionary<MaterialGrade, Material> ByGrade = Rows().ToDictionary(m => m.Grade);

    /// <summary>All rows.</summary>
    public static IReadOnlyCollection<Material> All => ByGrade.Values;

    /// <summary>The row of a material.</summary>
    public static Material Of(MaterialGrade grade) => ByGrade[grade];

    /// <summary>Properties of a material at room temperature.</summary>
    /// <param name="material">Material and condition.</param>
    /// <param name="section">Ruling section, m; heat-treated steels are weaker when thick.</param>
    [Formula("material properties", "E, ν, α, ρ, Rp, Rm", "each row of the table names its own source: ASM data sheets, EN 10083-3, BS 970, EN 755-2, EN 1561, EN 1563", Validity = "room temperature; expansion between 20 and 100 °C; Rp of grey iron is Rp0.1", Caution = "Typical or least values for comparing; the certificate of the bar in hand goes first.")]
    public static MaterialProperties Properties(
        [Quantity("material", Dimension.Number)] MaterialGrade material,
        [Quantity("section", Dimension.Length, "mm", Above = 0)] double section = 16e-3)
    {
        var row = Of(material);
        var strength = row.At(section);
        return new MaterialProperties(row.Modulus, row.Poisson, row.Expansion, row.Density, strength.Yield, strength.Tensile);
    }

    private static IEnumerable<Material> Rows()
    {
        const string Asm = "ASM material data sheet";
        const string Bs970 = "BS 970:1955; elastic data recalled";
        const string En10083 = "EN 10083-3:2006; elastic data recalled";
        const string Handbook = "metals handbook figures, recalled";

        yield return Row(MaterialGrade.Steel4340Normalised, 205, 0.29, 12.3, 7850, Asm, Provenance.Published, (100, 710, 1110));
        yield return Row(MaterialGrade.Steel4340Tempered650, 205, 0.29, 12.3, 7850, Asm, Provenance.Published, (50, 834, 931));
        yield return Row(MaterialGrade.SteelEn24T, 205, 0.29, 12, 7850, Bs970, Provenance.Published, (152, 680, 850));
        yield return Row(MaterialGrade.SteelEn24U, 205, 0.29, 12, 7850, Bs970, Provenance.Published, (101, 741, 926));
        yield return Row(MaterialGrade.SteelEn24V, 205, 0.29, 12, 7850, Bs970, Provenance.Published, (63.5, 803, 1004));
        yield return Row(MaterialGrade.Steel34CrNiMo6, 210, 0.30, 11.5, 7850, En10083, Provenance.FromMemory, (16, 1000, 1200), (40, 900, 1100), (100, 800, 1000), (160, 700, 900));
        yield return Row(MaterialGrade.Steel30CrNiMo8, 210, 0.30, 11.5, 7850, En10083, Provenance.FromMemory, (40, 1050, 1250), (100, 900, 1100), (160, 800, 1000));
        yield return Row(MaterialGrade.Steel42CrMo4, 210, 0.30, 11.5, 7850, En10083, Provenance.Published, (16, 900, 1100), (40, 750, 1000), (100, 650, 900), (160, 550, 800), (250, 500, 750));
        yield return Row(MaterialGrade.Steel300M, 205, 0.29, 11.3, 7830, Handbook, Provenance.FromMemory, (AnySection, 1586, 1930));
        yield return Row(MaterialGrade.Steel174PhH900, 197, 0.27, 10.8, 7800, Handbook, Provenance.FromMemory, (AnySection, 1170, 1310));
        yield return Row(MaterialGrade.Aluminium2618T61, 74, 0.33, 22, 2760, "maker's data sheet, typical", Provenance.Published, (AnySection, 372, 441));
        yield return Row(MaterialGrade.Aluminium4032T6, 79, 0.33, 19.4, 2680, Handbook, Provenance.FromMemory, (AnySection, 315, 380));
        yield return Row(MaterialGrade.Aluminium6061T6, 68.9, 0.33, 23.6, 2700, Handbook, Provenance.FromMemory, (AnySection, 276, 310));
        yield return Row(MaterialGrade.Aluminium6082T6, 70, 0.33, 23.4, 2700, "EN 755-2; Poisson's ratio recalled", Provenance.Published, (5, 250, 290), (25, 260, 310));
        yield return Row(MaterialGrade.Aluminium7075T6, 71.7, 0.33, 23.6, 2810, Handbook, Provenance.FromMemory, (AnySection, 503, 572));
        yield return Row(MaterialGrade.Aluminium2024T351, 73.1, 0.33, 23.2, 2780, Handbook, Provenance.FromMemory, (AnySection, 324, 469));
        yield return Row(MaterialGrade.AluminiumA356T6, 71, 0.33, 21.2, 2670, "typical, casting-dependent; density recalled", Provenance.Published, (AnySection, 200, 270));
        yield return Row(MaterialGrade.TitaniumTi6Al4V, 114, 0.33, 8.6, 4430, Asm, Provenance.Published, (AnySection, 830, 900));
        yield return Row(MaterialGrade.IronGjl250, 110, 0.26, 11.7, 7200, "EN 1561; elastic data and Rp0.1 recalled", Provenance.FromMemory, (AnySection, 165, 250));
        yield return Row(MaterialGrade.IronGjs5007, 169, 0.275, 12.5, 7100, "EN 1563:1997; Poisson's ratio and expansion recalled", Provenance.Published, (AnySection, 320, 500));
        yield return Row(MaterialGrade.Nickel718, 200, 0.29, 13.0, 8190, Handbook, Provenance.FromMemory, (AnySection, 1034, 1275));
        yield return Row(MaterialGrade.MagnesiumAz91D, 45, 0.35, 26, 1810, Handbook, Provenance.FromMemory, (AnySection, 150, 230));
        yield return Row(MaterialGrade.CopperBerylliumC17200, 128, 0.30, 16.7, 8250, Handbook, Provenance.FromMemory, (AnySection, 1000, 1200));
    }

    /// <summary>A row written as the tables print it: GPa, 10⁻⁶/K, kg/m³; sections in mm, strengths in MPa.</summary>
    private static Material Row(MaterialGrade grade, double gigapascals, double poisson, double expansion, double density, string source, Provenance provenance, params (double UpTo, double Yield, double Tensile)[] strengths) => new(
        grade,
        gigapascals * 1e9,
        poisson,
        expansion * 1e-6,
        density,
        [.. strengths.Select(s => new SectionStrength(s.UpTo * 1e-3, s.Yield * MPa, s.Tensile * MPa))],
        source,
        provenance);
}
