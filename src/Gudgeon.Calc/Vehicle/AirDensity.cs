using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Density altitude with what it is made from.</summary>
/// <param name="VapourPressure">Pa.</param>
/// <param name="VirtualTemperature">K.</param>
/// <param name="Altitude">m.</param>
public readonly record struct DensityAltitudeState(
    [Quantity("vapour pressure", Dimension.Pressure, "kPa", Symbol = "e")] double VapourPressure,
    [Quantity("virtual temperature", Dimension.Temperature, "°C", Symbol = "Tv")] double VirtualTemperature,
    [Quantity("density altitude", Dimension.Length, "m", Symbol = "h")] double Altitude);

/// <summary>What thinner air does to a run.</summary>
/// <param name="DensityRatio">Density over standard sea-level density.</param>
/// <param name="TimeFactor">Elapsed time over that at sea level.</param>
/// <param name="SpeedFactor">Speed over that at sea level.</param>
public readonly record struct DensityScaling(
    [Quantity("density ratio", Dimension.Number, Symbol = "sigma")] double DensityRatio,
    [Quantity("time factor", Dimension.Number, Symbol = "kt")] double TimeFactor,
    [Quantity("speed factor", Dimension.Number, Symbol = "kv")] double SpeedFactor);

/// <summary>An elapsed time carried from sea level to an altitude.</summary>
/// <param name="Factor">Time at altitude over time at sea level.</param>
/// <param name="Time">s.</param>
public readonly record struct AltitudeTime(
    [Quantity("time factor", Dimension.Number, Symbol = "k")] double Factor,
    [Quantity("time at altitude", Dimension.Time, "s", Symbol = "t")] double Time);

/// <summary>Density of the day's air, said as an altitude, and what it does to a naturally aspirated run.</summary>
public static class AirDensity
{
    private const double Foot = 0.3048;
    private const double Celsius = 273.15;

    /// <summary>Density altitude from temperature, dew point and station pressure.</summary>
    /// <param name="temperature">Air temperature, K.</param>
    /// <param name="dewPoint">Dew point, K; not above the air temperature.</param>
    /// <param name="pressure">Station pressure (not reduced to sea level), Pa.</param>
    /// <returns>Vapour pressure, virtual temperature and density altitude; within 25 ft of a moist ideal gas in the standard atmosphere.</returns>
    [Formula(
        "density altitude, weather-service form",
        "e = 0.611 10^(7.5 td / (237.7 + td)); Tv = (T + 273.15) / (1 - 0.378 e / p) - 273.15; h = 44307.6 (1 - (17.326 (p / 3.38639) / (1.8 Tv + 491.69))^0.235)",
        "US National Weather Service density-altitude formulas, constants as printed (145366 ft, 17.326, 0.235, 459.69 °R at 0 °F)")]
    public static DensityAltitudeState DensityAltitude(
        [Quantity("air temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 223.15, Max = 333.15)] double temperature,
        [Quantity("dew point", Dimension.Temperature, "°C", Symbol = "td", Min = 223.15, Max = 333.15)] double dewPoint,
        [Quantity("station pressure", Dimension.Pressure, "kPa", Symbol = "p", Above = 30e3, Max = 110e3)] double pressure)
    {
        FormulaDomainException.Unless(dewPoint <= temperature, "dew point: cannot be above the air temperature");
        var dew = dewPoint - Celsius;
        var vapour = 611 * Math.Pow(10, 7.5 * dew / (237.7 + dew));
        var virtualTemperature = temperature / (1 - (0.378 * vapour / pressure));
        var inchesOfMercury = pressure / 3386.39;
        var rankine = (1.8 * (virtualTemperature - Celsius)) + 32 + 459.69;
        var feet = 145366 * (1 - Math.Pow(17.326 * inchesOfMercury / rankine, 0.235));
        return new DensityAltitudeState(vapour, virtualTemperature, feet * Foot);
    }

    /// <summary>Density altitude by the rule of thumb of 120 ft per °C, m.</summary>
    /// <param name="pressureAltitude">Altitude that an altimeter set to standard pressure shows, m.</param>
    /// <param name="temperature">Air temperature, K.</param>
    /// <param name="elevation">Elevation of the place, m.</param>
    /// <returns>Density altitude, m; humidity is left out.</returns>
    [Formula("density altitude, rule of thumb", "h = hp + 36.576 (T - (15 - 6.56168 z / 1000))", "METEd weather-observing lesson, Computing Density Altitude: 120 ft per °C above 15 °C less 2 °C per 1000 ft")]
    [return: Quantity("density altitude", Dimension.Length, "m", Symbol = "h")]
    public static double DensityAltitudeRule(
        [Quantity("pressure altitude", Dimension.Length, "m", Symbol = "hp", Min = -1000, Max = 6000)] double pressureAltitude,
        [Quantity("air temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 223.15, Max = 333.15)] double temperature,
        [Quantity("elevation", Dimension.Length, "m", Symbol = "z", Min = -500, Max = 6000)] double elevation)
    {
        var standard = 15 - (2 * elevation / (1000 * Foot));
        return pressureAltitude + (120 * Foot * (temperature - Celsius - standard));
    }

    /// <summary>Density ratio at an altitude of the standard atmosphere and the scaling of a naturally aspirated run.</summary>
    /// <param name="altitude">Geopotential altitude or density altitude, m.</param>
    /// <returns>Density ratio, and factors on time and speed.</returns>
    [Formula(
        "run scaling at altitude",
        "sigma = ((288.15 - 0.0065 h) / 288.15)^4.25588; kt = sigma^(-1/3); kv = sigma^(1/3)",
        "US Standard Atmosphere 1976, troposphere; cube-root law of a constant-power run",
        Provenance = Provenance.FromMemory,
        Validity = "Power in proportion to density (not for an engine whose boost is held), drag left out.")]
    public static DensityScaling AtAltitude(
        [Quantity("altitude", Dimension.Length, "m", Symbol = "h", Min = -2000, Max = 11000)] double altitude) =>
        Scaling(Math.Pow(1 - (0.0065 * altitude / 288.15), 5.25588 - 1));

    /// <summary>Scaling of a naturally aspirated run with the density of the day.</summary>
    /// <param name="density">Air density, kg/m³.</param>
    /// <param name="reference">Air density that the run is scaled from, kg/m³; 1.225 at standard sea level.</param>
    /// <returns>Density ratio, and factors on time and speed.</returns>
    [Formula(
        "run scaling with air density",
        "sigma = rho / rho0; kt = sigma^(-1/3); kv = sigma^(1/3)",
        "cube-root law of a constant-power run",
        Provenance = Provenance.Definition,
        Validity = "Power in proportion to density (not for an engine whose boost is held), drag left out.")]
    public static DensityScaling AtDensity(
        [Quantity("air density", Dimension.Density, "kg/m³", Symbol = "rho", Above = 0)] double density,
        [Quantity("reference density", Dimension.Density, "kg/m³", Symbol = "rho0", Above = 0)] double reference = 1.225) =>
        Scaling(density / reference);

    /// <summary>Elapsed time at an altitude from that at sea level, by a curve through factors that a sanctioning body publishes.</summary>
    /// <param name="altitude">Altitude of the strip, m.</param>
    /// <param name="time">Elapsed time at sea level, s.</param>
    /// <returns>The factor and the time at the altitude; divide a measured time by the factor to come down to sea level.</returns>
    [Formula("elapsed time at altitude, racing rule", "k = 1 + (3.28084 h)^1.241 / 737200; t = k t0", "curve through altitude factors quoted from a sanctioning body's rule book in a racing forum; rule book not seen", Provenance = Provenance.CommonPractice)]
    public static AltitudeTime TimeAtAltitude(
        [Quantity("altitude", Dimension.Length, "m", Symbol = "h", Min = 0, Max = 3000)] double altitude,
        [Quantity("time at sea level", Dimension.Time, "s", Symbol = "t0", Above = 0)] double time)
    {
        var factor = 1 + (Math.Pow(altitude / Foot, 1.241) / 737200);
        return new AltitudeTime(factor, factor * time);
    }

    private static DensityScaling Scaling(double ratio) => new(ratio, 1 / Math.Cbrt(ratio), Math.Cbrt(ratio));
}
