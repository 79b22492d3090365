using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Boost;

/// <summary>Ideal Roots blower against a lossless compressor.</summary>
/// <param name="Efficiency">Isentropic over blower work.</param>
/// <param name="OutletTemperature">K.</param>
/// <param name="IsentropicTemperature">K.</param>
public readonly record struct RootsCompression(
    [Quantity("ideal efficiency", Dimension.Number, Symbol = "η")] double Efficiency,
    [Quantity("outlet temperature", Dimension.Temperature, "°C", Symbol = "T2")] double OutletTemperature,
    [Quantity("isentropic outlet temperature", Dimension.Temperature, "°C", Symbol = "T2s")] double IsentropicTemperature);

/// <summary>Positive-displacement blowers without internal compression.</summary>
public static class RootsBlower
{
    /// <summary>Best efficiency and outlet temperature of a blower that compresses only by backflow.</summary>
    /// <param name="pressureRatio">Outlet over inlet pressure.</param>
    /// <param name="inletTemperature">Inlet temperature, K.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Roots blower", "η = γ/(γ - 1) (Π^((γ - 1)/γ) - 1) / (Π - 1); T2 = T1 (1 + (γ - 1)/γ (Π - 1)); T2s = T1 Π^((γ - 1)/γ)", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., section 6.8; work = V (p2 - p1)", Provenance = Provenance.Definition, Caution = "No leakage and no friction: a real blower runs hotter.")]
    public static RootsCompression Ideal(
        [Quantity("pressure ratio", Dimension.Number, Symbol = "Π", Above = 1, Max = 10)] double pressureRatio,
        [Quantity("inlet temperature", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double inletTemperature = 293.15,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var exponent = (gamma - 1) / gamma;
        var isentropicRise = Math.Pow(pressureRatio, exponent) - 1;
        var rise = exponent * (pressureRatio - 1);
        return new(isentropicRise / rise, inletTemperature * (1 + rise), inletTemperature * (1 + isentropicRise));
    }

    /// <summary>Air flow of a positive-displacement blower, kg/s.</summary>
    /// <param name="displacement">Volume per turn of its input, m³.</param>
    /// <param name="speed">Its speed, rad/s.</param>
    /// <param name="density">Inlet density, kg/m³.</param>
    /// <param name="volumetricEfficiency">Share left after leakage.</param>
    [Formula("displacement blower flow", "m = ηv ρ V ω / (2 π)", "definition of the volumetric efficiency", Provenance = Provenance.Definition)]
    [return: Quantity("air flow", Dimension.MassFlow, "kg/s", Symbol = "m")]
    public static double Flow(
        [Quantity("displacement per turn", Dimension.Volume, "cm³", Symbol = "V", Above = 0)] double displacement,
        [Quantity("blower speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double speed,
        [Quantity("inlet density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("volumetric efficiency", Dimension.Number, Symbol = "ηv", Above = 0, Max = 1)] double volumetricEfficiency = 0.85) =>
        volumetricEfficiency * density * displacement * speed / (2 * Math.PI);
}
