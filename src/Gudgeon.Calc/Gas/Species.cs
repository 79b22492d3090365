namespace Gudgeon.Calc.Gas;

/// <summary>Substances with thermodynamic data. The first twelve are the products of combustion, in the order of <see cref="ProductAmounts"/>.</summary>
public enum Species
{
    CO2,
    CO,
    H2O,
    H2,
    H,
    O,
    OH,
    O2,
    NO,
    N2,
    N,

    /// <summary>Argon.</summary>
    Ar,

    /// <summary>Iso-octane (2,2,4-trimethylpentane) vapour.</summary>
    IsoOctane,

    /// <summary>Ethanol vapour.</summary>
    Ethanol,

    /// <summary>Methanol vapour.</summary>
    Methanol,

    /// <summary>Liquid iso-octane.</summary>
    IsoOctaneLiquid,

    /// <summary>Liquid ethanol.</summary>
    EthanolLiquid,

    /// <summary>Liquid methanol.</summary>
    MethanolLiquid,

    /// <summary>Liquid water.</summary>
    H2OLiquid,
}

/// <summary>What a species is made of.</summary>
public static class SpeciesFacts
{
    /// <summary>Atoms per molecule.</summary>
    public static Elements Atoms(this Species species) => SpeciesTable.Of(species).Atoms;

    /// <summary>Molar mass, kg/mol.</summary>
    public static double MolarMass(this Species species) => SpeciesTable.Of(species).Atoms.Mass;
}
