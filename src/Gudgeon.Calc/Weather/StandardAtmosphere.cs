using Gudgeon.Calc.Catalogue;
using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Weather;

/// <summary>State of the standard atmosphere.</summary>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa.</param>
/// <param name="Density">kg/m³.</param>
public readonly record struct AirState(
    [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T")] double Temperature,
    [Quantity("pressure", Dimension.Pressure, "hPa", Symbol = "p")] double Pressure,
    [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ")] double Density);

/// <summary>The International Standard Atmosphere up to 32 km, and the altitudes that are read off it.</summary>
public static class StandardAtmosphere
{
    /// <summary>Pressure at sea level, Pa.</summary>
    public const double SeaLevelPressure = 101325;

    /// <summary>Temperature at sea level, K.</summary>
    public const double SeaLevelTemperature = 288.15;

    private const double EarthRadius = 6356766;
    private const double Lapse = -0.0065;
    private const double TropopauseAltitude = 11000;
    private const double TropopausePressure = 22632.06;
    private const double PressureExponent = -StandardGravity / (DryAirGasConstant * Lapse);
    private const double DensityExponent = PressureExponent - 1;
    private const double SeaLevelDensity = SeaLevelPressure / (DryAirGasConstant * SeaLevelTemperature);
    private const string Source = "ISO 2533:1975, section 2 and tables 4-5";
    private const string Expression = "T = Tb + β (H - Hb); p = pb (1 + β (H - Hb) / Tb)^(-g / (β R)), β = 0: p = pb exp(-g (H - Hb) / (R T)); ρ = p / (R T)";

    /// <summary>Base altitude (m, geopotential) and lapse rate (K/m) of each layer.</summary>
    private static readonly (double Base, double Lapse)[] Layers = [(0, Lapse), (TropopauseAltitude, 0), (20000, 0.001), (32000, 0)];

    /// <summary>Standard atmosphere at a geopotential altitude.</summary>
    /// <param name="altitude">Geopotential altitude, m.</param>
    [Formula("standard atmosphere", Expression, Source)]
    public static AirState At([Quantity("geopotential altitude", Dimension.Length, "m", Symbol = "H", Min = -5000, Max = 32000)] double altitude)
    {
        var (t, p) = (SeaLevelTemperature, SeaLevelPressure);
        for (var i = 0; i < Layers.Length - 1; i++)
        {
            var rise = Math.Min(altitude, Layers[i + 1].Base) - Layers[i].Base;
            var next = t + (Layers[i].Lapse * rise);
            p *= Layers[i].Lapse == 0
                ? Math.Exp(-StandardGravity * rise / (DryAirGasConstant * t))
                : Math.Pow(next / t, -StandardGravity / (DryAirGasConstant * Layers[i].Lapse));
            t = next;
            if (altitude <= Layers[i + 1].Base)
            {
                break;
            }
        }

        return new(t, p, p / (DryAirGasConstant * t));
    }

    /// <summary>Standard atmosphere at a geometric altitude.</summary>
    /// <param name="altitude">Height above sea level, m.</param>
    [Formula("standard atmosphere by geometric altitude", "H = 6356766 Z / (6356766 + Z); " + Expression, Source)]
    public static AirState AtGeometric([Quantity("height above sea level", Dimension.Length, "m", Symbol = "Z", Min = -4990, Max = 32000)] double altitude) =>
        At(EarthRadius * altitude / (EarthRadius + altitude));

    /// <summary>Altitude at which the standard atmosphere has this pressure, m.</summary>
    /// <param name="pressure">Station pressure, Pa: not reduced to sea level.</param>
    [Formula("pressure altitude", "H = 44330.77 m (1 - (p / 1013.25 hPa)^(1 / 5.255880))", "ISO 2533:1975, eq. 12 solved for the altitude", Validity = "Up to 11 km.", Caution = "Use the station pressure, not the airport's pressure reduced to sea level.")]
    [return: Quantity("pressure altitude", Dimension.Length, "m", Symbol = "H")]
    public static double PressureAltitude([Quantity("station pressure", Dimension.Pressure, "hPa", Symbol = "p", Min = TropopausePressure, Max = 180e3)] double pressure) =>
        SeaLevelTemperature / Lapse * (Math.Pow(pressure / SeaLevelPressure, 1 / PressureExponent) - 1);

    /// <summary>Altitude at which the standard atmosphere has this density, m.</summary>
    /// <param name="density">Air density, kg/m³.</param>
    [Formula("density altitude from density", "H = 44330.77 m (1 - (ρ / 1.225 kg/m³)^(1 / 4.255880))", "ISO 2533:1975, eqs 12 and 14 solved for the altitude", Validity = "Up to 11 km.")]
    [return: Quantity("density altitude", Dimension.Length, "m", Symbol = "H")]
    public static double DensityAltitude([Quantity("air density", Dimension.Density, "kg/m³", Symbol = "ρ", Min = 0.3639, Max = 2)] double density) =>
        SeaLevelTemperature / Lapse * (Math.Pow(density / SeaLevelDensity, 1 / DensityExponent) - 1);
}
