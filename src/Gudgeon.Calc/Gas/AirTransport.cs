using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>Viscosity and heat conduction of air; burned gas is close to air of the same temperature.</summary>
public static class AirTransport
{
    /// <summary>Dynamic viscosity of air, Pa·s.</summary>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("viscosity of air", "μ = 1.458e-6 T^1.5 / (T + 110.4)", "ISO 2533:1975, Sutherland's formula", Provenance = Provenance.FromMemory, Validity = "About 100 to 1900 K.")]
    [return: Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ")]
    public static double Viscosity([Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature) =>
        1.458e-6 * temperature * Math.Sqrt(temperature) / (temperature + 110.4);

    /// <summary>Thermal conductivity of air, W/(m·K).</summary>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("conductivity of air", "k = 2.648151e-3 T^1.5 / (T + 245.4 10^(-12/T))", "ISO 2533:1975, eq. for thermal conductivity", Provenance = Provenance.FromMemory, Validity = "About 100 to 1900 K.")]
    [return: Quantity("thermal conductivity", Dimension.ThermalConductivity, "W/(m·K)", Symbol = "k")]
    public static double Conductivity([Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature) =>
        2.648151e-3 * temperature * Math.Sqrt(temperature) / (temperature + (245.4 * Math.Pow(10, -12 / temperature)));
}
