namespace Gudgeon.Calc.Materials;

/// <summary>Materials of the table, each in one condition.</summary>
public enum MaterialGrade
{
    /// <summary>4340 steel, normalised, 100 mm bar.</summary>
    Steel4340Normalised,

    /// <summary>4340 steel, oil quenched and tempered at 650 °C, 50 mm bar.</summary>
    Steel4340Tempered650,

    /// <summary>EN24 (817M40), condition T.</summary>
    SteelEn24T,

    /// <summary>EN24 (817M40), condition U.</summary>
    SteelEn24U,

    /// <summary>EN24 (817M40), condition V.</summary>
    SteelEn24V,

    /// <summary>34CrNiMo6, quenched and tempered.</summary>
    Steel34CrNiMo6,

    /// <summary>30CrNiMo8, quenched and tempered.</summary>
    Steel30CrNiMo8,

    /// <summary>42CrMo4, quenched and tempered.</summary>
    Steel42CrMo4,

    /// <summary>300M steel, quenched and tempered at 300 °C.</summary>
    Steel300M,

    /// <summary>17-4 PH stainless, condition H900.</summary>
    Steel174PhH900,

    /// <summary>Aluminium 2618A-T61 forging.</summary>
    Aluminium2618T61,

    /// <summary>Aluminium 4032-T6 forging.</summary>
    Aluminium4032T6,

    /// <summary>Aluminium 6061-T6.</summary>
    Aluminium6061T6,

    /// <summary>Aluminium 6082-T6 extrusion.</summary>
    Aluminium6082T6,

    /// <summary>Aluminium 7075-T6.</summary>
    Aluminium7075T6,

    /// <summary>Aluminium 2024-T351 plate.</summary>
    Aluminium2024T351,

    /// <summary>Cast aluminium A356.0-T6.</summary>
    AluminiumA356T6,

    /// <summary>Titanium Ti-6Al-4V, annealed bar.</summary>
    TitaniumTi6Al4V,

    /// <summary>Grey iron EN-GJL-250.</summary>
    IronGjl250,

    /// <summary>Ductile iron EN-GJS-500-7.</summary>
    IronGjs5007,

    /// <summary>Nickel alloy 718, solution treated and aged.</summary>
    Nickel718,

    /// <summary>Magnesium AZ91D, die cast.</summary>
    MagnesiumAz91D,

    /// <summary>Copper-beryllium C17200, solution treated and aged.</summary>
    CopperBerylliumC17200,
}
