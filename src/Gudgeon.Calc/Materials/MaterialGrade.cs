using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Materials;

/// <summary>Materials of the table, each in one condition.</summary>
public enum MaterialGrade
{
    /// <summary>4340 steel, normalised, 100 mm bar.</summary>
    [TradeName("steel 4340 normalised")]
    Steel4340Normalised,

    /// <summary>4340 steel, oil quenched and tempered at 650 °C, 50 mm bar.</summary>
    [TradeName("steel 4340 tempered at 650 °C")]
    Steel4340Tempered650,

    /// <summary>EN24 (817M40), condition T.</summary>
    [TradeName("steel EN24T")]
    SteelEn24T,

    /// <summary>EN24 (817M40), condition U.</summary>
    [TradeName("steel EN24U")]
    SteelEn24U,

    /// <summary>EN24 (817M40), condition V.</summary>
    [TradeName("steel EN24V")]
    SteelEn24V,

    /// <summary>34CrNiMo6, quenched and tempered.</summary>
    [TradeName("steel 34CrNiMo6")]
    Steel34CrNiMo6,

    /// <summary>30CrNiMo8, quenched and tempered.</summary>
    [TradeName("steel 30CrNiMo8")]
    Steel30CrNiMo8,

    /// <summary>42CrMo4, quenched and tempered.</summary>
    [TradeName("steel 42CrMo4")]
    Steel42CrMo4,

    /// <summary>300M steel, quenched and tempered at 300 °C.</summary>
    [TradeName("steel 300M")]
    Steel300M,

    /// <summary>17-4 PH stainless, condition H900.</summary>
    [TradeName("steel 17-4 PH H900")]
    Steel174PhH900,

    /// <summary>Aluminium 2618A-T61 forging.</summary>
    [TradeName("aluminium 2618A-T61")]
    Aluminium2618T61,

    /// <summary>Aluminium 4032-T6 forging.</summary>
    [TradeName("aluminium 4032-T6")]
    Aluminium4032T6,

    /// <summary>Aluminium 6061-T6.</summary>
    [TradeName("aluminium 6061-T6")]
    Aluminium6061T6,

    /// <summary>Aluminium 6082-T6 extrusion.</summary>
    [TradeName("aluminium 6082-T6")]
    Aluminium6082T6,

    /// <summary>Aluminium 7075-T6.</summary>
    [TradeName("aluminium 7075-T6")]
    Aluminium7075T6,

    /// <summary>Aluminium 2024-T351 plate.</summary>
    [TradeName("aluminium 2024-T351")]
    Aluminium2024T351,

    /// <summary>Cast aluminium A356.0-T6.</summary>
    [TradeName("aluminium A356-T6 cast")]
    AluminiumA356T6,

    /// <summary>Titanium Ti-6Al-4V, annealed bar.</summary>
    [TradeName("titanium Ti-6Al-4V")]
    TitaniumTi6Al4V,

    /// <summary>Grey iron EN-GJL-250.</summary>
    [TradeName("grey iron GJL-250")]
    IronGjl250,

    /// <summary>Ductile iron EN-GJS-500-7.</summary>
    [TradeName("ductile iron GJS-500-7")]
    IronGjs5007,

    /// <summary>Nickel alloy 718, solution treated and aged.</summary>
    [TradeName("nickel alloy 718")]
    Nickel718,

    /// <summary>Magnesium AZ91D, die cast.</summary>
    [TradeName("magnesium AZ91D")]
    MagnesiumAz91D,

    /// <summary>Copper-beryllium C17200, solution treated and aged.</summary>
    [TradeName("copper beryllium C17200")]
    CopperBerylliumC17200,
}
