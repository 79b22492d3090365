using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Weather;

/// <summary>Density of moist air by CIPM-2007 and its steps.</summary>
/// <param name="Density">kg/m³.</param>
/// <param name="SaturationPressure">Saturation vapour pressure, Pa.</param>
/// <param name="Enhancement">Enhancement factor f.</param>
/// <param name="VapourFraction">Mole fraction of water vapour.</param>
/// <param name="Compressibility">Compressibility factor Z.</param>
public readonly record struct AirDensity(
    [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")] double Density,
    [Quantity("saturation vapour pressure", Dimension.Pressure, "Pa", Symbol = "psv")] double SaturationPressure,
    [Quantity("enhancement factor", Dimension.Number, Symbol = "f")] double Enhancement,
    [Quantity("mole fraction of water vapour", Dimension.Number, Symbol = "xv")] double VapourFraction,
    [Quantity("compressibility factor", Dimension.Number, Symbol = "Z")] double Compressibility);

/// <summary>Water in the air.</summary>
/// <param name="VapourPressure">Partial pressure of water vapour, Pa.</param>
/// <param name="HumidityRatio">Mass of water vapour to mass of dry air.</param>
/// <param name="DewPoint">Dew point, K.</param>
/// <param name="DryPressure">Pressure of the dry air alone, Pa.</param>
/// <param name="Density">Density as an ideal gas, kg/m³.</param>
public readonly record struct Humidity(
    [Quantity("vapour pressure", Dimension.Pressure, "Pa", Symbol = "pv")] double VapourPressure,
    [Quantity("humidity ratio", Dimension.Number, Symbol = "W")] double HumidityRatio,
    [Quantity("dew point", Dimension.Temperature, "°C", Symbol = "Td")] double DewPoint,
    [Quantity("pressure of the dry air", Dimension.Pressure, "hPa", Symbol = "pd")] double DryPressure,
    [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")] double Density);

/// <summary>Density and humidity of the air the engine breathes.</summary>
public static class MoistAir
{
    private const double VapourMolarMass = 18.01528e-3;
    private const double MolarGasConstant2006 = 8.314472;
    private const string TooWet = "relative humidity: the vapour pressure reaches the air pressure";

    /// <summary>Density of moist air by the metrologists' formula.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="relativeHumidity">0 to 1.</param>
    /// <param name="carbonDioxide">Mole fraction of CO2.</param>
    [Formula("moist air density", "psv = exp(1.2378847e-5 T^2 - 1.9121316e-2 T + 33.93711047 - 6343.1645 / T); f = 1.00062 + 3.14e-8 p + 5.6e-7 t^2; xv = φ f psv / p; ρ = p Ma / (Z 8.314472 T) (1 - xv (1 - 0.01801528 / Ma))", "CIPM-2007: Picard, Davis, Gläser, Fujii, Metrologia 45 (2008) 149, eq. 1 and annex A", Provenance = Provenance.FromMemory, Validity = "Stated for 15 to 27 °C and 600 to 1100 hPa; smooth but unproven outside.")]
    public static AirDensity Density(
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 233.15, Max = 343.15)] double temperature,
        [Quantity("pressure", Dimension.Pressure, "hPa", Symbol = "p", Min = 20e3, Max = 120e3)] double pressure,
        [Quantity("relative humidity", Dimension.Number, Symbol = "φ", Min = 0, Max = 1)] double relativeHumidity = 0,
        [Quantity("mole fraction of carbon dioxide", Dimension.Number, Min = 0, Max = 0.01)] double carbonDioxide = 400e-6)
    {
        var t = temperature - 273.15;
        var saturation = Math.Exp((temperature * ((1.2378847e-5 * temperature) - 1.9121316e-2)) + 33.93711047 - (6.3431645e3 / temperature));
        var enhancement = 1.00062 + (3.14e-8 * pressure) + (5.6e-7 * t * t);
        var x = relativeHumidity * enhancement * saturation / pressure;
        FormulaDomainException.Unless(x < 1, TooWet);
        var reduced = pressure / temperature;
        var z = 1
            - (reduced * (1.58123e-6 + (t * (-2.9331e-8 + (1.1043e-10 * t))) + ((5.707e-6 - (2.051e-8 * t)) * x) + ((1.9898e-4 - (2.376e-6 * t)) * x * x)))
            + (reduced * reduced * (1.83e-11 - (0.765e-8 * x * x)));
        var dryMass = (28.96546 + (12.011 * (carbonDioxide - 0.0004))) * 1e-3;
        var density = pressure * dryMass / (z * MolarGasConstant2006 * temperature) * (1 - (x * (1 - (VapourMolarMass / dryMass))));
        return new(density, saturation, enhancement, x, z);
    }

    /// <summary>Vapour pressure, humidity ratio, dew point and ideal-gas density of moist air.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="relativeHumidity">0 to 1, over water; below the triple point over ice.</param>
    [Formula("humidity of air", "pv = φ psat(T); W = 0.621945 pv / (p - pv); Td: psat(Td) = pv; pd = p - pv; ρ = pd / (287.05287 T) + pv / (461.52 T)", "ASHRAE Fundamentals 2017, ch. 1, eqs 5-6, 20-24", Provenance = Provenance.FromMemory)]
    public static Humidity Humidity(
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 213.15, Max = 373.15)] double temperature,
        [Quantity("pressure", Dimension.Pressure, "hPa", Symbol = "p", Above = 0)] double pressure,
        [Quantity("relative humidity", Dimension.Number, Symbol = "φ", Min = 0.001, Max = 1)] double relativeHumidity)
    {
        var vapour = relativeHumidity * WaterVapour.SaturationOverWaterOrIce(temperature);
        FormulaDomainException.Unless(vapour < pressure, TooWet);
        return new(
            vapour,
            HumidityRatio(pressure, vapour),
            WaterVapour.DewPoint(vapour),
            pressure - vapour,
            IdealDensity(temperature, pressure, vapour));
    }

    /// <summary>Mass of water vapour to mass of dry air.</summary>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="vapourPressure">Partial pressure of water vapour, Pa.</param>
    [Formula("humidity ratio", "W = 0.621945 pv / (p - pv)", "ASHRAE Fundamentals 2017, ch. 1, eq. 20", Provenance = Provenance.FromMemory)]
    [return: Quantity("humidity ratio", Dimension.Number, Symbol = "W")]
    public static double HumidityRatio(
        [Quantity("pressure", Dimension.Pressure, "hPa", Symbol = "p", Above = 0)] double pressure,
        [Quantity("vapour pressure", Dimension.Pressure, "Pa", Symbol = "pv", Min = 0)] double vapourPressure)
    {
        FormulaDomainException.Unless(vapourPressure < pressure, "vapour pressure: must be below the air pressure");
        return 0.621945 * vapourPressure / (pressure - vapourPressure);
    }

    /// <summary>Density of moist air as a mixture of ideal gases, kg/m³.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="vapourPressure">Partial pressure of water vapour, Pa.</param>
    [Formula("moist air density, ideal gas", "ρ = (p - pv) / (287.05287 T) + pv / (461.52 T)", "ideal mixture; gas constant of dry air ISO 2533:1975", Provenance = Provenance.Definition)]
    [return: Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")]
    public static double IdealDensity(
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("pressure", Dimension.Pressure, "hPa", Symbol = "p", Above = 0)] double pressure,
        [Quantity("vapour pressure", Dimension.Pressure, "Pa", Symbol = "pv", Min = 0)] double vapourPressure = 0)
    {
        FormulaDomainException.Unless(vapourPressure < pressure, "vapour pressure: must be below the air pressure");
        const double VapourGasConstant = PhysicalConstants.MolarGasConstant / VapourMolarMass;
        return (((pressure - vapourPressure) / PhysicalConstants.DryAirGasConstant) + (vapourPressure / VapourGasConstant)) / temperature;
    }

    /// <summary>Altitude at which the standard atmosphere is as thin as today's air, m.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Station pressure, Pa.</param>
    /// <param name="relativeHumidity">0 to 1.</param>
    [Formula("density altitude", "H = 44330.77 m (1 - (ρ / 1.225 kg/m³)^(1 / 4.255880)), ρ of the moist air by CIPM-2007", "ISO 2533:1975; Picard et al., Metrologia 45 (2008) 149", Caution = "Use the station pressure, not the airport's pressure reduced to sea level.")]
    [return: Quantity("density altitude", Dimension.Length, "m", Symbol = "H")]
    public static double DensityAltitude(
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 233.15, Max = 343.15)] double temperature,
        [Quantity("station pressure", Dimension.Pressure, "hPa", Symbol = "p", Min = 50e3, Max = 120e3)] double pressure,
        [Quantity("relative humidity", Dimension.Number, Symbol = "φ", Min = 0, Max = 1)] double relativeHumidity = 0) =>
        StandardAtmosphere.DensityAltitude(Density(temperature, pressure, relativeHumidity).Density);
}
