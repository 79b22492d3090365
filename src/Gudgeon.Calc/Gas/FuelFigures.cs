using Gudgeon.Calc.Catalogue;
using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>What a fuel is worth.</summary>
/// <param name="HeatingValue">Lower heating value of the liquid, J/kg.</param>
/// <param name="LatentHeat">Latent heat at 298.15 K, J/kg.</param>
/// <param name="AirFuelRatio">Stoichiometric air/fuel ratio by mass.</param>
/// <param name="EnergyPerAir">Heat per mass of stoichiometric air, J/kg.</param>
/// <param name="ResearchOctane">Research octane number.</param>
/// <param name="MotorOctane">Motor octane number.</param>
/// <param name="Density">Density of the liquid, kg/m³.</param>
/// <param name="MolarMass">Mean molar mass, kg/mol.</param>
public readonly record struct FuelCard(
    [Quantity("lower heating value", Dimension.SpecificEnergy, "MJ/kg", Symbol = "Hu")] double HeatingValue,
    [Quantity("latent heat", Dimension.SpecificEnergy, "kJ/kg", Symbol = "hfg")] double LatentHeat,
    [Quantity("stoichiometric air/fuel ratio", Dimension.Number, Symbol = "AFR")] double AirFuelRatio,
    [Quantity("heat per mass of stoichiometric air", Dimension.SpecificEnergy, "MJ/kg")] double EnergyPerAir,
    [Quantity("research octane number", Dimension.Number, Symbol = "RON")] double ResearchOctane,
    [Quantity("motor octane number", Dimension.Number, Symbol = "MON")] double MotorOctane,
    [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")] double Density,
    [Quantity("molar mass", Dimension.MolarMass, "g/mol", Symbol = "W")] double MolarMass);

/// <summary>A blend of two fuels.</summary>
/// <param name="MassFraction">Mass share of the first.</param>
/// <param name="AirFuelRatio">Stoichiometric air/fuel ratio by mass.</param>
/// <param name="HeatingValue">Lower heating value, J/kg.</param>
/// <param name="Density">Density before any change of volume by mixing, kg/m³.</param>
public readonly record struct BlendCard(
    [Quantity("mass share of the first", Dimension.Number, Symbol = "w")] double MassFraction,
    [Quantity("stoichiometric air/fuel ratio", Dimension.Number, Symbol = "AFR")] double AirFuelRatio,
    [Quantity("lower heating value", Dimension.SpecificEnergy, "MJ/kg", Symbol = "Hu")] double HeatingValue,
    [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")] double Density);

/// <summary>Heating value, latent heat, air demand and blends of fuels.</summary>
public static class FuelFigures
{
    /// <summary>The figures of a fuel of the table.</summary>
    /// <param name="fuel">Fuel.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("fuel figures", "AFR = (C + H/4 - O/2) Wa / (xO2 W), xO2 and Wa of the air model; heat per mass of air = Hu / AFR", "heats of formation NASA/TP-2002-211556; octane of pure compounds Florian and Liming; petrol figures of a type, U.S. DOE AFDC and Heywood 1st ed. table D.4", Provenance = Provenance.FromMemory, Caution = "Petrols are types: use the supplier's data sheet for the fuel that is bought.")]
    public static FuelCard Card(
        [Quantity("fuel", Dimension.Number)] FuelChoice fuel,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry)
    {
        var f = Fuels.Of(fuel);
        var ratio = f.StoichiometricAirFuelRatio(air);
        return new(f.HeatingValue, f.LatentHeat, ratio, f.HeatingValue / ratio, f.ResearchOctane, f.MotorOctane, f.Density, f.MolarMass);
    }

    /// <summary>Stoichiometric air/fuel ratio by mass.</summary>
    /// <param name="carbon">Carbon atoms.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("stoichiometric air/fuel ratio", "AFR = (C + H/4 - O/2) Wa / (xO2 Wf)", "balance of C + O2 = CO2, 2 H2 + O2 = 2 H2O", Provenance = Provenance.Definition)]
    [return: Quantity("stoichiometric air/fuel ratio", Dimension.Number, Symbol = "AFR")]
    public static double StoichiometricAirFuelRatio(
        [Quantity("carbon atoms", Dimension.Number, Symbol = "C", Min = 0)] double carbon,
        [Quantity("hydrogen atoms", Dimension.Number, Symbol = "H", Min = 0)] double hydrogen,
        [Quantity("oxygen atoms", Dimension.Number, Symbol = "O", Min = 0)] double oxygen = 0,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry)
    {
        var fuel = new Elements(carbon, hydrogen, oxygen);
        FormulaDomainException.Unless(fuel.OxygenExcess < 0, "fuel: holds all the oxygen it needs, so it has no air/fuel ratio");
        return -fuel.OxygenExcess / fuel.Mass / Air.Of(air).Elements.OxygenExcess;
    }

    /// <summary>Lower heating value from the heat of formation, J/kg.</summary>
    /// <param name="carbon">Carbon atoms.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    /// <param name="heatOfFormation">Heat of formation of the fuel at 298.15 K, J/mol.</param>
    [Formula("lower heating value", "Hu = (hf + 393510 C + 241826 H/2) / W", "heats of formation NASA/TP-2002-211556", Validity = "At 298.15 K, water as vapour; liquid or vapour fuel according to the heat of formation given.")]
    [return: Quantity("lower heating value", Dimension.SpecificEnergy, "MJ/kg", Symbol = "Hu")]
    public static double LowerHeatingValue(
        [Quantity("carbon atoms", Dimension.Number, Symbol = "C", Min = 0)] double carbon,
        [Quantity("hydrogen atoms", Dimension.Number, Symbol = "H", Min = 0)] double hydrogen,
        [Quantity("heat of formation", Dimension.MolarEnergy, "kJ/mol", Symbol = "hf")] double heatOfFormation,
        [Quantity("oxygen atoms", Dimension.Number, Symbol = "O", Min = 0)] double oxygen = 0)
    {
        var molarMass = new Elements(carbon, hydrogen, oxygen).Mass;
        FormulaDomainException.Unless(molarMass > 0, "fuel: give carbon or hydrogen atoms");
        return (heatOfFormation + (393510 * carbon) + (241826 * 0.5 * hydrogen)) / molarMass;
    }

    /// <summary>Latent heat of evaporation at 298.15 K, J/kg.</summary>
    /// <param name="carbon">Carbon atoms.</param>
    /// <param name="hydrogen">Hydrogen atoms.</param>
    /// <param name="vapourFormation">Heat of formation of the vapour, J/mol.</param>
    /// <param name="liquidFormation">Heat of formation of the liquid, J/mol.</param>
    /// <param name="oxygen">Oxygen atoms.</param>
    [Formula("latent heat of a fuel", "hfg = (hv - hl) / W", "difference of the heats of formation", Provenance = Provenance.Definition)]
    [return: Quantity("latent heat", Dimension.SpecificEnergy, "kJ/kg", Symbol = "hfg")]
    public static double LatentHeat(
        [Quantity("carbon atoms", Dimension.Number, Symbol = "C", Min = 0)] double carbon,
        [Quantity("hydrogen atoms", Dimension.Number, Symbol = "H", Min = 0)] double hydrogen,
        [Quantity("heat of formation of the vapour", Dimension.MolarEnergy, "kJ/mol", Symbol = "hv")] double vapourFormation,
        [Quantity("heat of formation of the liquid", Dimension.MolarEnergy, "kJ/mol", Symbol = "hl")] double liquidFormation,
        [Quantity("oxygen atoms", Dimension.Number, Symbol = "O", Min = 0)] double oxygen = 0)
    {
        var molarMass = new Elements(carbon, hydrogen, oxygen).Mass;
        FormulaDomainException.Unless(molarMass > 0, "fuel: give carbon or hydrogen atoms");
        return (vapourFormation - liquidFormation) / molarMass;
    }

    /// <summary>Blend of two fuels by volume.</summary>
    /// <param name="volumeFraction">Volume share of the first before mixing.</param>
    /// <param name="firstDensity">Density of the first, kg/m³.</param>
    /// <param name="secondDensity">Density of the second, kg/m³.</param>
    /// <param name="firstRatio">Stoichiometric air/fuel ratio of the first.</param>
    /// <param name="secondRatio">Stoichiometric air/fuel ratio of the second.</param>
    /// <param name="firstHeatingValue">Lower heating value of the first, J/kg.</param>
    /// <param name="secondHeatingValue">Lower heating value of the second, J/kg.</param>
    [Formula("fuel blend by volume", "w = V ρ1 / (V ρ1 + (1 - V) ρ2); AFR = w A1 + (1 - w) A2; Hu = w H1 + (1 - w) H2", "mass-weighted means", Provenance = Provenance.Definition, Caution = "Octane does not blend by these rules.")]
    public static BlendCard Blend(
        [Quantity("volume share of the first", Dimension.Number, Symbol = "V", Min = 0, Max = 1)] double volumeFraction,
        [Quantity("density of the first", Dimension.Density, "kg/m³", Symbol = "ρ1", Above = 0)] double firstDensity,
        [Quantity("density of the second", Dimension.Density, "kg/m³", Symbol = "ρ2", Above = 0)] double secondDensity,
        [Quantity("air/fuel ratio of the first", Dimension.Number, Symbol = "A1", Above = 0)] double firstRatio,
        [Quantity("air/fuel ratio of the second", Dimension.Number, Symbol = "A2", Above = 0)] double secondRatio,
        [Quantity("heating value of the first", Dimension.SpecificEnergy, "MJ/kg", Symbol = "H1", Above = 0)] double firstHeatingValue,
        [Quantity("heating value of the second", Dimension.SpecificEnergy, "MJ/kg", Symbol = "H2", Above = 0)] double secondHeatingValue)
    {
        var density = (volumeFraction * firstDensity) + ((1 - volumeFraction) * secondDensity);
        var w = volumeFraction * firstDensity / density;
        return new(w, (w * firstRatio) + ((1 - w) * secondRatio), (w * firstHeatingValue) + ((1 - w) * secondHeatingValue), density);
    }

    /// <summary>Heat that one kilogram of air can release, J/kg.</summary>
    /// <param name="heatingValue">Lower heating value, J/kg.</param>
    /// <param name="airFuelRatio">Air/fuel ratio by mass; stoichiometric or leaner.</param>
    [Formula("heat per mass of air", "q = Hu / AFR", "definition", Provenance = Provenance.Definition)]
    [return: Quantity("heat per mass of air", Dimension.SpecificEnergy, "MJ/kg", Symbol = "q")]
    public static double HeatPerAir(
        [Quantity("lower heating value", Dimension.SpecificEnergy, "MJ/kg", Symbol = "Hu", Above = 0)] double heatingValue,
        [Quantity("air/fuel ratio by mass", Dimension.Number, Symbol = "AFR", Above = 0)] double airFuelRatio) => heatingValue / airFuelRatio;

    /// <summary>Drop of charge temperature when fuel evaporates in it without heat from the walls, K.</summary>
    /// <param name="latentHeat">Latent heat, J/kg.</param>
    /// <param name="airFuelRatio">Air/fuel ratio by mass.</param>
    /// <param name="evaporated">Share of the fuel that evaporates, 0 to 1.</param>
    /// <param name="airHeatCapacity">Heat capacity of air, J/(kg·K).</param>
    /// <param name="liquidHeatCapacity">Heat capacity of liquid fuel, J/(kg·K).</param>
    [Formula("charge cooling by fuel evaporation", "ΔT = x hfg / (AFR cp + cl)", "energy balance; Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 6.5", Provenance = Provenance.FromMemory, Caution = "In a running engine part of the heat comes from hot walls: the real drop is smaller.")]
    [return: Quantity("drop of temperature", Dimension.TemperatureDifference, "K", Symbol = "ΔT")]
    public static double EvaporationCooling(
        [Quantity("latent heat", Dimension.SpecificEnergy, "kJ/kg", Symbol = "hfg", Min = 0)] double latentHeat,
        [Quantity("air/fuel ratio by mass", Dimension.Number, Symbol = "AFR", Above = 0)] double airFuelRatio,
        [Quantity("share evaporated", Dimension.Number, Symbol = "x", Min = 0, Max = 1)] double evaporated = 1,
        [Quantity("heat capacity of air", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp", Above = 0)] double airHeatCapacity = 1005,
        [Quantity("heat capacity of liquid fuel", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cl", Above = 0)] double liquidHeatCapacity = 2200) =>
        evaporated * latentHeat / ((airFuelRatio * airHeatCapacity) + liquidHeatCapacity);

    /// <summary>Equivalence ratio φ = 1/λ.</summary>
    /// <param name="airFuelRatio">Air/fuel ratio by mass as run.</param>
    /// <param name="stoichiometricRatio">Stoichiometric air/fuel ratio by mass.</param>
    [Formula("equivalence ratio", "φ = S / AFR", "definition; λ = 1/φ", Provenance = Provenance.Definition)]
    [return: Quantity("equivalence ratio", Dimension.Number, Symbol = "φ")]
    public static double EquivalenceRatio(
        [Quantity("air/fuel ratio by mass", Dimension.Number, Symbol = "AFR", Above = 0)] double airFuelRatio,
        [Quantity("stoichiometric air/fuel ratio", Dimension.Number, Symbol = "S", Above = 0)] double stoichiometricRatio) => stoichiometricRatio / airFuelRatio;
}
