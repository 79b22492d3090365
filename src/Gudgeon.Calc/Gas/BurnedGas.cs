using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>Burned gas in equilibrium: state, mole fractions and properties, SI.</summary>
public readonly record struct BurnedGas(
    [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T")] double Temperature,
    [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p")] double Pressure,
    [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")] double Density,
    [Quantity("molar mass", Dimension.MolarMass, "g/mol", Symbol = "W")] double MolarMass,
    [Quantity("equilibrium heat capacity", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp")] double HeatCapacity,
    [Quantity("frozen heat capacity", Dimension.SpecificHeat, "J/(kg·K)")] double FrozenHeatCapacity,
    [Quantity("isentropic exponent", Dimension.Number, Symbol = "γs")] double IsentropicExponent,
    [Quantity("frozen ratio of specific heats", Dimension.Number)] double FrozenHeatCapacityRatio,
    [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a")] double SoundSpeed,
    [Quantity("enthalpy", Dimension.SpecificEnergy, "kJ/kg", Symbol = "h")] double Enthalpy,
    [Quantity("internal energy", Dimension.SpecificEnergy, "kJ/kg", Symbol = "u")] double Energy,
    [Quantity("entropy", Dimension.SpecificHeat, "kJ/(kg·K)", Symbol = "s")] double Entropy,
    [Quantity("mole fraction of carbon dioxide", Dimension.Number)] double CarbonDioxide,
    [Quantity("mole fraction of carbon monoxide", Dimension.Number)] double CarbonMonoxide,
    [Quantity("mole fraction of water", Dimension.Number)] double Water,
    [Quantity("mole fraction of hydrogen", Dimension.Number)] double Hydrogen,
    [Quantity("mole fraction of oxygen", Dimension.Number)] double Oxygen,
    [Quantity("mole fraction of hydroxyl", Dimension.Number)] double Hydroxyl,
    [Quantity("mole fraction of nitric oxide", Dimension.Number)] double NitricOxide,
    [Quantity("mole fraction of nitrogen", Dimension.Number)] double Nitrogen,
    [Quantity("mole fraction of atomic hydrogen", Dimension.Number)] double AtomicHydrogen,
    [Quantity("mole fraction of atomic oxygen", Dimension.Number)] double AtomicOxygen)
{
    internal static BurnedGas Of(EquilibriumState s) => new(
        s.Temperature,
        s.Pressure,
        s.Density,
        s.MolarMass,
        s.HeatCapacity,
        s.FrozenHeatCapacity,
        s.IsentropicExponent,
        s.FrozenHeatCapacityRatio,
        s.SoundSpeed,
        s.Enthalpy,
        s.Energy,
        s.Entropy,
        s.MoleFraction(Species.CO2),
        s.MoleFraction(Species.CO),
        s.MoleFraction(Species.H2O),
        s.MoleFraction(Species.H2),
        s.MoleFraction(Species.O2),
        s.MoleFraction(Species.OH),
        s.MoleFraction(Species.NO),
        s.MoleFraction(Species.N2),
        s.MoleFraction(Species.H),
        s.MoleFraction(Species.O));
}
