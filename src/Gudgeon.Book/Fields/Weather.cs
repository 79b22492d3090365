using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The air of the day.</summary>
public static class Weather
{
    private static readonly Subject Subject = new("weather", "Weather");

    public static readonly Field Temperature = Subject.Amount("temperature", "Air temperature", Dimension.Temperature, "°C", (-10, 45), "thermometer in the shade");
    public static readonly Field Pressure = Subject.Amount("pressure", "Station pressure", Dimension.Pressure, "hPa", (700, 1060), "barometer on the spot, not reduced to sea level");
    public static readonly Field Humidity = Subject.Amount("humidity", "Relative humidity", Dimension.Number, "%", (0, 100), "hygrometer", zero: true, most: 1);
    public static readonly Field HeadWind = Subject.Amount("headWind", "Head wind", Dimension.Speed, "m/s", (-10, 10), "vane on the strip", "Negative for a tail wind.", signed: true);
}
