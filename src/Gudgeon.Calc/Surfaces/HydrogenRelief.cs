using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Surfaces;

/// <summary>Driving hydrogen out of hard steel after acid or plating.</summary>
public static class HydrogenRelief
{
    /// <summary>Least bake at 190 °C to 220 °C, s.</summary>
    /// <param name="strength">Tensile strength of the steel, Pa.</param>
    [Formula(
        "hydrogen relief bake",
        "t = 8 h + 2 h for each started 100 MPa above 1100 MPa",
        "ASTM B850-98 (2009) table; ISO 9588 alike",
        Validity = "1001 MPa to 1800 MPa, at 190 °C to 220 °C.",
        Caution = "Start within 4 h of plating, 1 h for the hardest. No bake rescues a cracked part, and no bake guarantees freedom. Do not plate springs or class 12.9 bolts in house.")]
    [return: Quantity("bake time", Dimension.Time, "h", Symbol = "t")]
    public static double BakeTime(
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm", Above = 1000e6, Max = 1800e6)] double strength)
    {
        const double RoundOff = 1e-9;
        var band = Math.Ceiling((strength / 100e6) - RoundOff) - 11;
        return (8 + (2 * band)) * 3600;
    }
}
