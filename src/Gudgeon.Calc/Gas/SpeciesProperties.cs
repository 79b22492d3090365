using Gudgeon.Calc.Catalogue;
using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>Molar properties at 1 bar.</summary>
/// <param name="HeatCapacity">Heat capacity at constant pressure, J/(mol·K).</param>
/// <param name="Enthalpy">Absolute enthalpy, J/mol: heat of formation at 298.15 K included.</param>
/// <param name="Entropy">Entropy at 1 bar, J/(mol·K).</param>
public readonly record struct MolarProperties(
    [Quantity("heat capacity", Dimension.MolarHeat, "J/(mol·K)", Symbol = "cp")] double HeatCapacity,
    [Quantity("absolute enthalpy", Dimension.MolarEnergy, "kJ/mol", Symbol = "h")] double Enthalpy,
    [Quantity("entropy at 1 bar", Dimension.MolarHeat, "J/(mol·K)", Symbol = "s")] double Entropy);

/// <summary>Heat capacity, enthalpy and entropy of pure substances.</summary>
public static class SpeciesProperties
{
    private const string Forms = "cp/R = a1/T^2 + a2/T + a3 + a4 T + a5 T^2 + a6 T^3 + a7 T^4; h/(R T) = -a1/T^2 + a2 ln(T)/T + a3 + a4 T/2 + a5 T^2/3 + a6 T^3/4 + a7 T^4/5 + b1/T; s/R = -a1/(2 T^2) - a2/T + a3 ln(T) + a4 T + a5 T^2/2 + a6 T^3/3 + a7 T^4/4 + b2";

    /// <summary>Molar properties of a substance from the NASA Glenn nine-coefficient data.</summary>
    /// <param name="species">Substance.</param>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("species properties", Forms, "McBride, Zehe, Gordon, NASA/TP-2002-211556, 2002, eqs 1-3 and data", Validity = "Gases 200-6000 K, liquids over their liquid range; outside, the heat capacity is held at its value at the limit.")]
    public static MolarProperties Of(
        [Quantity("substance", Dimension.Number)] Species species,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature) => new(
        NasaPolynomial.HeatCapacity(species, temperature),
        NasaPolynomial.Enthalpy(species, temperature),
        NasaPolynomial.Entropy(species, temperature));

    /// <summary>Molar properties from nine coefficients of one's own.</summary>
    /// <param name="coefficients">a1 to a7, b1, b2.</param>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("nine-coefficient polynomial", Forms, "McBride, Zehe, Gordon, NASA/TP-2002-211556, 2002, eqs 1-3")]
    public static MolarProperties FromNine(
        [Quantity("coefficients a1-a7, b1, b2", Dimension.Number)] double[] coefficients,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature)
    {
        FormulaDomainException.Unless(coefficients.Length == 9, "coefficients: nine are needed, a1 to a7, b1 and b2");
        var log = Math.Log(temperature);
        return new(
            MolarGasConstant * NasaPolynomial.CpOverR(coefficients, temperature),
            MolarGasConstant * temperature * NasaPolynomial.HOverRT(coefficients, temperature, log),
            MolarGasConstant * NasaPolynomial.SOverR(coefficients, temperature, log));
    }

    /// <summary>Molar properties from seven coefficients of one's own, the older NASA form.</summary>
    /// <param name="coefficients">a1 to a7.</param>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("seven-coefficient polynomial", "cp/R = a1 + a2 T + a3 T^2 + a4 T^3 + a5 T^4; h/(R T) = a1 + a2 T/2 + a3 T^2/3 + a4 T^3/4 + a5 T^4/5 + a6/T; s/R = a1 ln(T) + a2 T + a3 T^2/2 + a4 T^3/3 + a5 T^4/4 + a7", "McBride, Gordon, Reno, NASA TM-4513, 1993", Caution = "Entropies of some published sets refer to 1 atm, not 1 bar.")]
    public static MolarProperties FromSeven(
        [Quantity("coefficients a1-a7", Dimension.Number)] double[] coefficients,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature)
    {
        FormulaDomainException.Unless(coefficients.Length == 7, "coefficients: seven are needed, a1 to a7");
        var (a, t) = (coefficients, temperature);
        var heat = a[0] + (t * (a[1] + (t * (a[2] + (t * (a[3] + (t * a[4])))))));
        var enthalpy = (t * (a[0] + (t * ((a[1] / 2) + (t * ((a[2] / 3) + (t * ((a[3] / 4) + (t * a[4] / 5))))))))) + a[5];
        var entropy = (a[0] * Math.Log(t)) + a[6] + (t * (a[1] + (t * ((a[2] / 2) + (t * ((a[3] / 3) + (t * a[4] / 4)))))));
        return new(MolarGasConstant * heat, MolarGasConstant * enthalpy, MolarGasConstant * entropy);
    }
}
