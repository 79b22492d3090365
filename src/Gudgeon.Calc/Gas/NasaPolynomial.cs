using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>
/// Molar heat capacity, absolute enthalpy and entropy of a species at 1 bar from the NASA Glenn polynomials
/// (NASA/TP-2002-211556). Outside a species' temperature limits (gases 200 to 6000 K) the heat capacity is held at its value
/// at the limit, so enthalpy goes on in a straight line and entropy with ln T. Nothing here allocates.
/// </summary>
public static class NasaPolynomial
{
    /// <summary>Least temperature of the product species' data, K.</summary>
    public const double LowestTemperature = 200;

    /// <summary>Greatest temperature of the product species' data, K.</summary>
    public const double HighestTemperature = 6000;

    /// <summary>Heat capacity at constant pressure, J/(mol·K).</summary>
    /// <param name="species">Substance.</param>
    /// <param name="temperature">Temperature, K.</param>
    public static double HeatCapacity(Species species, double temperature)
    {
        var row = SpeciesTable.Of(species);
        var t = Math.Clamp(temperature, row.Low, row.High);
        return MolarGasConstant * CpOverR(row.Coefficients(t), t);
    }

    /// <summary>Absolute enthalpy, J/mol: heat of formation at 298.15 K included.</summary>
    /// <param name="species">Substance.</param>
    /// <param name="temperature">Temperature, K.</param>
    public static double Enthalpy(Species species, double temperature)
    {
        var row = SpeciesTable.Of(species);
        var t = Math.Clamp(temperature, row.Low, row.High);
        var a = row.Coefficients(t);
        return MolarGasConstant * ((t * HOverRT(a, t, Math.Log(t))) + (CpOverR(a, t) * (temperature - t)));
    }

    /// <summary>Entropy at 1 bar, J/(mol·K).</summary>
    /// <param name="species">Substance.</param>
    /// <param name="temperature">Temperature, K.</param>
    public static double Entropy(Species species, double temperature)
    {
        var row = SpeciesTable.Of(species);
        var t = Math.Clamp(temperature, row.Low, row.High);
        var a = row.Coefficients(t);
        return MolarGasConstant * (SOverR(a, t, Math.Log(t)) + (CpOverR(a, t) * Math.Log(temperature / t)));
    }

    /// <summary>cp/R = a1/T² + a2/T + a3 + a4 T + a5 T² + a6 T³ + a7 T⁴.</summary>
    internal static double CpOverR(ReadOnlySpan<double> a, double t) =>
        (((a[0] / t) + a[1]) / t) + a[2] + (t * (a[3] + (t * (a[4] + (t * (a[5] + (t * a[6])))))));

    /// <summary>H/(R T) = -a1/T² + a2 ln T/T + a3 + a4 T/2 + a5 T²/3 + a6 T³/4 + a7 T⁴/5 + b1/T.</summary>
    internal static double HOverRT(ReadOnlySpan<double> a, double t, double logT) =>
        ((a[7] + (a[1] * logT) - (a[0] / t)) / t)
        + a[2] + (t * ((a[3] / 2) + (t * ((a[4] / 3) + (t * ((a[5] / 4) + (t * a[6] / 5)))))));

    /// <summary>S/R = -a1/(2 T²) - a2/T + a3 ln T + a4 T + a5 T²/2 + a6 T³/3 + a7 T⁴/4 + b2.</summary>
    internal static double SOverR(ReadOnlySpan<double> a, double t, double logT) =>
        (-((a[0] / (2 * t)) + a[1]) / t)
        + (a[2] * logT) + a[8] + (t * (a[3] + (t * ((a[4] / 2) + (t * ((a[5] / 3) + (t * a[6] / 4)))))));
}
