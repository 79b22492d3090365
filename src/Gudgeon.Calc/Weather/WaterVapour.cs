using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Weather;

/// <summary>Saturation pressure of water and ice.</summary>
public static class WaterVapour
{
    private static readonly double[] Region4 =
    [
        0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
        0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
    ];

    /// <summary>Saturation pressure of water, industrial formulation, Pa.</summary>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("saturation pressure of water", "θ = T + n9 / (T - n10); A = θ^2 + n1 θ + n2; B = n3 θ^2 + n4 θ + n5; C = n6 θ^2 + n7 θ + n8; p = 1 MPa (2 C / (-B + sqrt(B^2 - 4 A C)))^4", "IAPWS-IF97, eq. 30", Provenance = Provenance.FromMemory, Validity = "273.15 to 647.096 K.")]
    [return: Quantity("saturation pressure", Dimension.Pressure, "Pa", Symbol = "p")]
    public static double Saturation([Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 273.15, Max = 647.096)] double temperature)
    {
        var n = Region4;
        var theta = temperature + (n[8] / (temperature - n[9]));
        var a = (theta * (theta + n[0])) + n[1];
        var b = (((n[2] * theta) + n[3]) * theta) + n[4];
        var c = (((n[5] * theta) + n[6]) * theta) + n[7];
        var root = 2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c)));
        return 1e6 * root * root * root * root;
    }

    /// <summary>Saturation pressure over water, below the triple point over ice, Pa.</summary>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("saturation pressure over water or ice", "ln p = c1/T + c2 + c3 T + c4 T^2 + c5 T^3 + c6 T^4 + c7 ln T", "ASHRAE Fundamentals 2017, ch. 1, eqs 5-6 (Hyland and Wexler)", Provenance = Provenance.FromMemory, Validity = "173.15 to 473.15 K.")]
    [return: Quantity("saturation pressure", Dimension.Pressure, "Pa", Symbol = "p")]
    public static double SaturationOverWaterOrIce([Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 173.15, Max = 473.15)] double temperature)
    {
        var t = temperature;
        return Math.Exp(t < 273.16
            ? (-5.6745359e3 / t) + 6.3925247 + (t * (-9.677843e-3 + (t * (6.2215701e-7 + (t * (2.0747825e-9 + (t * -9.484024e-13))))))) + (4.1635019 * Math.Log(t))
            : (-5.8002206e3 / t) + 1.3914993 + (t * (-4.8640239e-2 + (t * (4.1764768e-5 + (t * -1.4452093e-8))))) + (6.5459673 * Math.Log(t)));
    }

    /// <summary>Dew point (frost point below the triple point) of a vapour pressure, K.</summary>
    /// <param name="vapourPressure">Partial pressure of water vapour, Pa.</param>
    [Formula("dew point from vapour pressure", "p(saturation at the dew point) = pv, over water or ice", "ASHRAE Fundamentals 2017, ch. 1, eqs 5-6, solved for the temperature", Provenance = Provenance.FromMemory)]
    [return: Quantity("dew point", Dimension.Temperature, "°C", Symbol = "Td")]
    public static double DewPoint([Quantity("vapour pressure", Dimension.Pressure, "Pa", Symbol = "pv", Min = 0.0015, Max = 1.5e6)] double vapourPressure)
    {
        var (low, high) = (173.15, 473.15);
        while (high - low > 1e-9)
        {
            var middle = 0.5 * (low + high);
            (low, high) = SaturationOverWaterOrIce(middle) < vapourPressure ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }
}
