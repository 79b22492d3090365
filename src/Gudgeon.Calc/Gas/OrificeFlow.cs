using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>Flow at the sonic limit.</summary>
/// <param name="MassFlux">Mass flow per area, kg/(m²·s).</param>
/// <param name="CriticalPressureRatio">Throat over stagnation pressure at which the flow turns sonic.</param>
public readonly record struct ChokedFlow(
    [Quantity("choked mass flux", Dimension.MassFlux, "kg/(m²·s)", Symbol = "G")] double MassFlux,
    [Quantity("critical pressure ratio", Dimension.Number)] double CriticalPressureRatio);

/// <summary>Quasi-steady flow of a perfect gas through valves, ports, throttles and restrictors.</summary>
public static class OrificeFlow
{
    /// <summary>Greatest mass flux of a gas from rest, and the pressure ratio where it begins.</summary>
    /// <param name="pressure">Stagnation pressure, Pa.</param>
    /// <param name="temperature">Stagnation temperature, K.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("choked mass flux", "G = p0 sqrt(γ / (R T0)) (2/(γ+1))^((γ+1)/(2(γ-1))); critical ratio = (2/(γ+1))^(γ/(γ-1))", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., app. C; exact for a perfect gas", Provenance = Provenance.Definition)]
    public static ChokedFlow Choked(
        [Quantity("stagnation pressure", Dimension.Pressure, "kPa", Symbol = "p0", Above = 0)] double pressure,
        [Quantity("stagnation temperature", Dimension.Temperature, "°C", Symbol = "T0", Above = 0)] double temperature,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = PhysicalConstants.DryAirGasConstant) =>
        new(ChokedFlux(pressure, temperature, gamma, gasConstant), CriticalRatio(gamma));

    /// <summary>
    /// Mass flow through an opening, kg/s, positive from side 1 to side 2; it turns sonic by itself and reverses when
    /// the second pressure is the greater. The gas at rest upstream decides.
    /// </summary>
    /// <param name="area">Reference area, m².</param>
    /// <param name="firstPressure">Stagnation pressure of side 1, Pa.</param>
    /// <param name="secondPressure">Pressure of side 2, Pa.</param>
    /// <param name="firstTemperature">Stagnation temperature of side 1, K.</param>
    /// <param name="secondTemperature">Stagnation temperature of side 2, K; it counts only when the flow is reversed.</param>
    /// <param name="discharge">Discharge coefficient on the reference area.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("orifice mass flow", "m = Cd A p1 / sqrt(R T1) P^(1/γ) sqrt(2 γ/(γ-1) (1 - P^((γ-1)/γ))); P = p2 / p1, not below (2/(γ+1))^(γ/(γ-1)); reversed when p2 is the greater", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eqs C.8-C.9", Provenance = Provenance.FromMemory)]
    [return: Quantity("mass flow", Dimension.MassFlow, "g/s", Symbol = "m")]
    public static double MassFlow(
        [Quantity("reference area", Dimension.Area, "mm²", Symbol = "A", Min = 0)] double area,
        [Quantity("pressure of side 1", Dimension.Pressure, "kPa", Symbol = "p1", Above = 0)] double firstPressure,
        [Quantity("pressure of side 2", Dimension.Pressure, "kPa", Symbol = "p2", Min = 0)] double secondPressure,
        [Quantity("temperature of side 1", Dimension.Temperature, "°C", Symbol = "T1", Above = 0)] double firstTemperature,
        [Quantity("temperature of side 2", Dimension.Temperature, "°C", Symbol = "T2", Above = 0)] double secondTemperature = 300,
        [Quantity("discharge coefficient", Dimension.Number, Symbol = "Cd", Min = 0, Max = 1.2)] double discharge = 1,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = PhysicalConstants.DryAirGasConstant) =>
        firstPressure >= secondPressure
            ? discharge * area * MassFlux(firstPressure, firstTemperature, secondPressure / firstPressure, gamma, gasConstant)
            : -discharge * area * MassFlux(secondPressure, secondTemperature, firstPressure / secondPressure, gamma, gasConstant);

    /// <summary>Mass flux of a gas from rest to a lower pressure, kg/(m²·s); no allocation, for inner loops.</summary>
    /// <param name="pressure">Upstream stagnation pressure, Pa.</param>
    /// <param name="temperature">Upstream stagnation temperature, K.</param>
    /// <param name="pressureRatio">Downstream over upstream pressure, 0 to 1.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    public static double MassFlux(double pressure, double temperature, double pressureRatio, double gamma, double gasConstant)
    {
        if (pressureRatio <= CriticalRatio(gamma))
        {
            return ChokedFlux(pressure, temperature, gamma, gasConstant);
        }

        var temperatureRatio = Math.Pow(pressureRatio, (gamma - 1) / gamma);
        return pressure / Math.Sqrt(gasConstant * temperature) * (pressureRatio / temperatureRatio)
            * Math.Sqrt(2 * gamma / (gamma - 1) * Math.Max(0, 1 - temperatureRatio));
    }

    /// <summary>Throat over stagnation pressure at which the flow turns sonic.</summary>
    public static double CriticalRatio(double gamma) => Math.Pow(2 / (gamma + 1), gamma / (gamma - 1));

    private static double ChokedFlux(double pressure, double temperature, double gamma, double gasConstant) =>
        pressure * Math.Sqrt(gamma / (gasConstant * temperature)) * Math.Pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
}
