using Gudgeon.Calc.Catalogue;
using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>Fresh charge: air and fuel vapour in a given proportion, not yet burning. All properties per kilogram of charge.</summary>
public sealed class Charge
{
    /// <param name="fuel">The fuel.</param>
    /// <param name="equivalenceRatio">Fuel/air ratio over the stoichiometric one; 0 is air alone.</param>
    /// <param name="air">The air, dry or moist.</param>
    public Charge(Fuel fuel, double equivalenceRatio, GasMixture air)
    {
        FormulaDomainException.Unless(equivalenceRatio >= 0, "equivalence ratio: must not be negative");
        Fuel = fuel;
        Air = air;
        var fuelPerAir = -equivalenceRatio * air.Elements.OxygenExcess / fuel.ElementsPerKilogram.OxygenExcess;
        FuelFraction = fuelPerAir / (1 + fuelPerAir);
        Elements = (FuelFraction * fuel.ElementsPerKilogram) + ((1 - FuelFraction) * air.Elements);
        GasConstant = (FuelFraction * fuel.VapourGasConstant) + ((1 - FuelFraction) * air.GasConstant);
    }

    /// <param name="fuel">The fuel.</param>
    /// <param name="equivalenceRatio">Fuel/air ratio over the stoichiometric one.</param>
    /// <param name="air">Which dry air.</param>
    public Charge(Fuel fuel, double equivalenceRatio, AirModel air)
        : this(fuel, equivalenceRatio, Gas.Air.Of(air))
    {
    }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>The air.</summary>
    public GasMixture Air { get; }

    /// <summary>Mass of fuel in the mass of charge.</summary>
    public double FuelFraction { get; }

    /// <summary>Atoms, mol/kg: what the burned gas is made of too.</summary>
    public Elements Elements { get; }

    /// <summary>Gas constant with the fuel evaporated, J/(kg·K).</summary>
    public double GasConstant { get; }

    /// <summary>Molar mass with the fuel evaporated, kg/mol.</summary>
    public double MolarMass => MolarGasConstant / GasConstant;

    /// <summary>Heat capacity at constant pressure, J/(kg·K), at <paramref name="temperature"/>, K.</summary>
    public double HeatCapacity(double temperature) =>
        (FuelFraction * Fuel.VapourHeatCapacity(temperature)) + ((1 - FuelFraction) * Air.HeatCapacity(temperature));

    /// <summary>Ratio of specific heats at <paramref name="temperature"/>, K.</summary>
    public double HeatCapacityRatio(double temperature)
    {
        var cp = HeatCapacity(temperature);
        return cp / (cp - GasConstant);
    }

    /// <summary>Absolute enthalpy, J/kg, at <paramref name="temperature"/>, K, with the fuel in the given phase.</summary>
    public double Enthalpy(double temperature, FuelPhase phase = FuelPhase.Vapour) =>
        (FuelFraction * Fuel.Enthalpy(phase, temperature)) + ((1 - FuelFraction) * Air.Enthalpy(temperature));

    /// <summary>Absolute internal energy with the fuel evaporated, J/kg, at <paramref name="temperature"/>, K.</summary>
    public double Energy(double temperature) => Enthalpy(temperature) - (GasConstant * temperature);

    /// <summary>Burned without heat loss at constant pressure, Pa, from <paramref name="temperature"/>, K.</summary>
    public EquilibriumState BurnAtConstantPressure(double temperature, double pressure, FuelPhase phase = FuelPhase.Vapour) =>
        Equilibrium.AtEnthalpyPressure(Elements, Enthalpy(temperature, phase), pressure);

    /// <summary>Burned without heat loss in a closed vessel from <paramref name="temperature"/>, K, and <paramref name="pressure"/>, Pa.</summary>
    public EquilibriumState BurnAtConstantVolume(double temperature, double pressure) =>
        Equilibrium.AtEnergyVolume(Elements, Energy(temperature), GasConstant * temperature / pressure);
}
