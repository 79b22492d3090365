using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Length of an end gauge compared with a standard.</summary>
/// <param name="Length">Length at 20 °C, m.</param>
/// <param name="Uncertainty">Combined standard uncertainty, m.</param>
/// <param name="FromExpansion">Component from the difference of expansion coefficients, m.</param>
/// <param name="FromTemperature">Component from the difference of temperatures, m.</param>
/// <param name="Freedom">Effective degrees of freedom.</param>
/// <param name="Factor">Student factor for 99 % with the whole degrees of freedom.</param>
/// <param name="Expanded">Expanded uncertainty for 99 %, m.</param>
public readonly record struct EndGaugeResult(
    [Quantity("length at 20 °C", Dimension.Length, "mm", Symbol = "l")] double Length,
    [Quantity("combined standard uncertainty", Dimension.Length, "nm", Symbol = "uc")] double Uncertainty,
    [Quantity("component from expansion coefficients", Dimension.Length, "nm", Symbol = "ua")] double FromExpansion,
    [Quantity("component from temperature difference", Dimension.Length, "nm", Symbol = "ut")] double FromTemperature,
    [Quantity("effective degrees of freedom", Dimension.Number, Symbol = "νeff")] double Freedom,
    [Quantity("Student factor for 99 %", Dimension.Number, Symbol = "t")] double Factor,
    [Quantity("expanded uncertainty for 99 %", Dimension.Length, "nm", Symbol = "U")] double Expanded);

/// <summary>Comparison of an end gauge with a standard: the worked example every length measurement resembles.</summary>
public static class EndGauge
{
    /// <summary>Length and uncertainty of an end gauge compared with a standard of the same nominal length.</summary>
    /// <param name="standard">Length of the standard at 20 °C, m.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, m.</param>
    /// <param name="standardFreedom">Its degrees of freedom.</param>
    /// <param name="difference">Measured difference, m.</param>
    /// <param name="differenceUncertainty">Standard uncertainty of the difference, m.</param>
    /// <param name="differenceFreedom">Its degrees of freedom.</param>
    /// <param name="expansion">Expansion coefficient of the standard, 1/K.</param>
    /// <param name="deviation">Mean temperature of the gauges less 20 °C, K.</param>
    /// <param name="expansionLimit">Limit of the difference of expansion coefficients, plus or minus, 1/K.</param>
    /// <param name="expansionFreedom">Its degrees of freedom.</param>
    /// <param name="temperatureLimit">Limit of the difference of temperatures, plus or minus, K.</param>
    /// <param name="temperatureFreedom">Its degrees of freedom.</param>
    [Formula(
        "end gauge comparison",
        "l = ls + d; ua = ls |θ| aα / sqrt(3); ut = ls αs aθ / sqrt(3); uc = sqrt(us^2 + ud^2 + ua^2 + ut^2); U = t uc",
        "JCGM 100:2008 (GUM), H.1, Table H.1",
        Validity = "Differences of expansion coefficient and temperature expected to be zero, so αs and θ themselves drop out in first order.")]
    public static EndGaugeResult Compare(
        [Quantity("length of the standard", Dimension.Length, "mm", Symbol = "ls", Above = 0)] double standard,
        [Quantity("standard uncertainty of the standard", Dimension.Length, "nm", Symbol = "us", Min = 0)] double standardUncertainty,
        [Quantity("degrees of freedom of the standard", Dimension.Number, Symbol = "νs", Above = 0)] double standardFreedom,
        [Quantity("measured difference", Dimension.Length, "nm", Symbol = "d")] double difference,
        [Quantity("standard uncertainty of the difference", Dimension.Length, "nm", Symbol = "ud", Above = 0)] double differenceUncertainty,
        [Quantity("degrees of freedom of the difference", Dimension.Number, Symbol = "νd", Above = 0)] double differenceFreedom,
        [Quantity("expansion coefficient of the standard", Dimension.ThermalExpansion, "1/K", Symbol = "αs", Above = 0)] double expansion,
        [Quantity("temperature above 20 °C", Dimension.TemperatureDifference, "K", Symbol = "θ")] double deviation,
        [Quantity("limit of the difference of expansion", Dimension.ThermalExpansion, "1/K", Symbol = "aα", Min = 0)] double expansionLimit,
        [Quantity("degrees of freedom of the expansion", Dimension.Number, Above = 0)] double expansionFreedom,
        [Quantity("limit of the temperature difference", Dimension.TemperatureDifference, "K", Symbol = "aθ", Min = 0)] double temperatureLimit,
        [Quantity("degrees of freedom of the temperature", Dimension.Number, Above = 0)] double temperatureFreedom)
    {
        var fromExpansion = standard * Math.Abs(deviation) * expansionLimit / Math.Sqrt(3);
        var fromTemperature = standard * expansion * temperatureLimit / Math.Sqrt(3);
        var combined = CombinedUncertainty.WelchSatterthwaite(
            [standardUncertainty, differenceUncertainty, fromExpansion, fromTemperature],
            [standardFreedom, differenceFreedom, expansionFreedom, temperatureFreedom]);
        var factor = CombinedUncertainty.Student(Math.Max(1, combined.Truncated), 0.99);
        return new EndGaugeResult(
            standard + difference, combined.Combined, fromExpansion, fromTemperature, combined.Freedom, factor, factor * combined.Combined);
    }
}
