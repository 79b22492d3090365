namespace Gudgeon.Simulation.Engine;

/// <summary>Water vapour in the ambient air.</summary>
internal static class Humidity
{
    /// <summary>Mass of water vapour to mass of dry air; saturation pressure by Magnus (Alduchov and Eskridge 1996, from memory), 0.4 % between −40 and 50 °C.</summary>
    public static double Ratio(double temperature, double pressure, double relativeHumidity)
    {
        var celsius = temperature - 273.15;
        var vapour = relativeHumidity * 610.94 * Math.Exp(17.625 * celsius / (celsius + 243.04));
        return 0.62198 * vapour / (pressure - vapour);
    }
}
