using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Chamber;

/// <summary>Ways of expressing boost as if it were compression ratio. Both are comparisons, not physics of knock.</summary>
public static class BoostedCompression
{
    /// <summary>Trade rule for compression ratio under boost.</summary>
    /// <param name="ratio">Geometric compression ratio.</param>
    /// <param name="boost">Boost above ambient, Pa.</param>
    /// <param name="ambient">Ambient pressure, Pa.</param>
    [Formula(
        "boost-adjusted compression ratio, trade rule",
        "Cb = CR (1 + pb / pa)",
        "Supercharger makers' charts",
        Provenance = Provenance.CommonPractice,
        Caution = "Overstates: it multiplies the ratio by the pressure ratio as if density and pressure rose together. Use it only to compare with the same chart.")]
    [return: Quantity("boost-adjusted compression ratio", Dimension.Number, Symbol = "Cb")]
    public static double TradeRule(
        [Quantity("compression ratio", Dimension.Number, Symbol = "CR", Above = 1, Max = 30)] double ratio,
        [Quantity("boost", Dimension.Pressure, "kPa", Symbol = "pb", Min = 0)] double boost,
        [Quantity("ambient pressure", Dimension.Pressure, "kPa", Symbol = "pa", Above = 0)] double ambient = 101_325) =>
        ratio * (1 + (boost / ambient));

    /// <summary>Compression ratio that would bring ambient charge to the same end pressure by isentropic compression.</summary>
    /// <param name="ratio">Geometric compression ratio.</param>
    /// <param name="pressureRatio">Absolute boost pressure over ambient.</param>
    /// <param name="gamma">Ratio of specific heats of the charge.</param>
    [Formula(
        "isentropic equivalent compression ratio",
        "Ce = CR PR^(1/g)",
        "Isentropic relation of an ideal gas",
        Provenance = Provenance.Definition,
        Validity = "Charge cooled back to ambient temperature before it enters.")]
    [return: Quantity("equivalent compression ratio", Dimension.Number, Symbol = "Ce")]
    public static double Isentropic(
        [Quantity("compression ratio", Dimension.Number, Symbol = "CR", Above = 1, Max = 30)] double ratio,
        [Quantity("pressure ratio", Dimension.Number, Symbol = "PR", Above = 0)] double pressureRatio,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "g", Above = 1, Below = 1.7)] double gamma = 1.4) =>
        ratio * Math.Pow(pressureRatio, 1 / gamma);
}
