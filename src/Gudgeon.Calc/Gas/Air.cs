namespace Gudgeon.Calc.Gas;

/// <summary>Which dry air is meant: stoichiometric ratio and flame temperature depend on it.</summary>
public enum AirModel
{
    /// <summary>O2 + 3.76 N2, the air of textbooks.</summary>
    OxygenNitrogen,

    /// <summary>N2 78.084 %, O2 20.9476 %, Ar 0.9365 % by volume.</summary>
    WithArgon,

    /// <summary>As <see cref="WithArgon"/> with CO2 0.0319 %: molar mass 28.965 g/mol.</summary>
    StandardDry,
}

/// <summary>Composition of air.</summary>
public static class Air
{
    /// <summary>Air, dry or moist.</summary>
    /// <param name="model">Which dry air. Volume shares: U.S. Standard Atmosphere 1976, table 3 (from memory), as in NASA RP-1311.</param>
    /// <param name="humidityRatio">Mass of water vapour to mass of dry air.</param>
    public static GasMixture Of(AirModel model, double humidityRatio = 0)
    {
        var air = new ProductAmounts();
        var simple = model == AirModel.OxygenNitrogen;
        air[(int)Species.O2] = simple ? 1 : 20.9476;
        air[(int)Species.N2] = simple ? 3.76 : 78.084;
        air[(int)Species.Ar] = simple ? 0 : 0.9365;
        air[(int)Species.CO2] = model == AirModel.StandardDry ? 0.0319 : 0;
        air[(int)Species.H2O] = humidityRatio * new GasMixture(air).Elements.Mass / Species.H2O.MolarMass();
        return GasMixture.FromProportions(air);
    }

    /// <summary>Molar mass of dry air, kg/mol.</summary>
    public static double MolarMass(AirModel model) => Of(model).MolarMass;

    /// <summary>Mole fraction of oxygen in dry air.</summary>
    public static double OxygenFraction(AirModel model) => Of(model).MoleFraction(Species.O2);
}
