using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Boost;

/// <summary>Mean flow through ducts and filters; the air counts as dense as at rest, which is 1 % off at Mach 0.14 and 5 % at Mach 0.3.</summary>
public static class DuctFlow
{
    private const string Slow = "Mach number up to about 0.3.";

    /// <summary>Mean velocity of a flow through an area, m/s.</summary>
    /// <param name="massFlow">Air, kg/s.</param>
    /// <param name="density">Its density, kg/m³.</param>
    /// <param name="area">Area of the duct or of the filter medium, m².</param>
    [Formula("duct velocity", "u = m / (ρ A)", "continuity", Provenance = Provenance.Definition, Validity = Slow)]
    [return: Quantity("velocity", Dimension.Speed, "m/s", Symbol = "u")]
    public static double Velocity(
        [Quantity("mass flow", Dimension.MassFlow, "g/s", Symbol = "m", Min = 0)] double massFlow,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("area", Dimension.Area, "cm²", Symbol = "A", Above = 0)] double area) => massFlow / (density * area);

    /// <summary>Area that a flow wants at a velocity, m².</summary>
    /// <param name="massFlow">Air, kg/s.</param>
    /// <param name="density">Its density, kg/m³.</param>
    /// <param name="velocity">Velocity that is allowed, m/s.</param>
    [Formula("duct or filter area for a velocity", "A = m / (ρ u)", "continuity", Provenance = Provenance.Definition, Validity = Slow)]
    [return: Quantity("area", Dimension.Area, "cm²", Symbol = "A")]
    public static double Area(
        [Quantity("mass flow", Dimension.MassFlow, "g/s", Symbol = "m", Min = 0)] double massFlow,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("velocity", Dimension.Speed, "m/s", Symbol = "u", Above = 0)] double velocity) => massFlow / (density * velocity);

    /// <summary>Mach number of a flow of air.</summary>
    /// <param name="velocity">Mean velocity, m/s.</param>
    /// <param name="temperature">Temperature of the air, K.</param>
    [Formula("duct Mach number", "M = u / sqrt(γ R T), γ = 1.4", "definition; speed of sound by ISO 2533:1975", Provenance = Provenance.Definition)]
    [return: Quantity("Mach number", Dimension.Number, Symbol = "M")]
    public static double Mach(
        [Quantity("velocity", Dimension.Speed, "m/s", Symbol = "u", Min = 0)] double velocity,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature) => velocity / Acoustics.SoundSpeed(temperature);

    /// <summary>Pressure that bends, steps and ends of a duct take, Pa; the dynamic pressure itself at a coefficient of 1.</summary>
    /// <param name="density">Density of the air, kg/m³.</param>
    /// <param name="velocity">Mean velocity, m/s.</param>
    /// <param name="coefficient">Sum of the loss coefficients, in dynamic pressures.</param>
    [Formula("duct loss", "Δp = K ρ u^2 / 2", "definition of the loss coefficient; e.g. Idelchik, Handbook of Hydraulic Resistance, ch. 1", Provenance = Provenance.Definition, Validity = Slow)]
    [return: Quantity("pressure loss", Dimension.Pressure, "kPa", Symbol = "Δp")]
    public static double Loss(
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("velocity", Dimension.Speed, "m/s", Symbol = "u", Min = 0)] double velocity,
        [Quantity("loss coefficient", Dimension.Number, Symbol = "K", Min = 0)] double coefficient = 1) => coefficient * density * velocity * velocity / 2;
}
