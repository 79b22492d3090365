using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Expansion coefficient from two lengths.</summary>
/// <param name="Coefficient">Expansion coefficient, 1/K.</param>
/// <param name="Uncertainty">Standard uncertainty, 1/K.</param>
public readonly record struct MeasuredExpansion(
    [Quantity("expansion coefficient", Dimension.ThermalExpansion, "1/K", Symbol = "α")] double Coefficient,
    [Quantity("standard uncertainty", Dimension.ThermalExpansion, "1/K", Symbol = "u")] double Uncertainty);

/// <summary>A length brought to 20 °C.</summary>
/// <param name="Corrected">Length at 20 °C, m.</param>
/// <param name="Error">How much too large it read, m.</param>
/// <param name="Uncertainty">Standard uncertainty that the temperatures leave, m.</param>
public readonly record struct CorrectedLength(
    [Quantity("length at 20 °C", Dimension.Length, "mm", Symbol = "L20")] double Corrected,
    [Quantity("reading too large by", Dimension.Length, "µm", Symbol = "e")] double Error,
    [Quantity("standard uncertainty from temperatures", Dimension.Length, "µm", Symbol = "u")] double Uncertainty);

/// <summary>Lengths away from 20 °C.</summary>
public static class ThermalLength
{
    /// <summary>Reference temperature for lengths (ISO 1), K.</summary>
    public const double Reference = 293.15;

    /// <summary>Standard uncertainty of an expansion coefficient that is known to 1e-6 1/K, plus or minus: common practice.</summary>
    public const double UsualExpansionUncertainty = 5.773502691896258e-7;

    /// <summary>Standard uncertainty of a temperature that is known to 1 K, plus or minus: common practice.</summary>
    public const double UsualTemperatureUncertainty = 0.5773502691896258;

    /// <summary>How much too large a part reads when part and gauge are away from 20 °C, m; subtract it.</summary>
    /// <param name="length">Nominal length, m.</param>
    /// <param name="partExpansion">Expansion coefficient of the part, 1/K.</param>
    /// <param name="partTemperature">Temperature of the part, K.</param>
    /// <param name="gaugeExpansion">Expansion coefficient of the gauge's frame or setting ring, 1/K.</param>
    /// <param name="gaugeTemperature">Temperature of the gauge, K.</param>
    [Formula(
        "temperature error of a length reading",
        "e = L (αp (Tp - 20 °C) - αg (Tg - 20 °C))",
        "ISO 1:2022, reference temperature 20 °C; linear expansion",
        Caution = "Let part and gauge lie on the same plate long enough; a hand-warm part has no one temperature.")]
    [return: Quantity("reading too large by", Dimension.Length, "µm", Symbol = "e")]
    public static double ReadingError(
        [Quantity("length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("expansion coefficient of the part", Dimension.ThermalExpansion, "1/K", Symbol = "αp", Min = 0, Max = 1e-4)] double partExpansion,
        [Quantity("temperature of the part", Dimension.Temperature, "°C", Symbol = "Tp", Above = 0)] double partTemperature,
        [Quantity("expansion coefficient of the gauge", Dimension.ThermalExpansion, "1/K", Symbol = "αg", Min = 0, Max = 1e-4)] double gaugeExpansion,
        [Quantity("temperature of the gauge", Dimension.Temperature, "°C", Symbol = "Tg", Above = 0)] double gaugeTemperature) =>
        length * ((partExpansion * (partTemperature - Reference)) - (gaugeExpansion * (gaugeTemperature - Reference)));

    /// <summary>A length read away from 20 °C, brought to it, with what the temperatures leave uncertain.</summary>
    /// <param name="length">Length as read, m.</param>
    /// <param name="partExpansion">Expansion coefficient of the part, 1/K.</param>
    /// <param name="partTemperature">Temperature of the part, K.</param>
    /// <param name="gaugeExpansion">Expansion coefficient of the gauge's frame or setting ring, 1/K.</param>
    /// <param name="gaugeTemperature">Temperature of the gauge, K.</param>
    /// <param name="expansionUncertainty">Standard uncertainty of either coefficient, 1/K; of a limit of 1e-6 when left out.</param>
    /// <param name="partUncertainty">Standard uncertainty of the part's temperature, K; of a limit of 1 K when left out.</param>
    /// <param name="gaugeUncertainty">Standard uncertainty of the gauge's temperature, K; of a limit of 1 K when left out.</param>
    [Formula(
        "length brought to reference temperature",
        "L20 = L (1 - αp θp + αg θg); u = L sqrt((θp uα)^2 + (θg uα)^2 + (αp up)^2 + (αg ug)^2)",
        "ISO 1:2022, reference temperature 20 °C; JCGM 100:2008 (GUM), 5.1.2, eq. 10",
        Validity = "θp and θg are the temperatures Tp and Tg of part and gauge above 20 °C. The limits of ±1e-6 1/K and ±1 K that stand for what is not said are common practice.",
        Caution = "Let part and gauge lie on the same plate long enough; a hand-warm part has no one temperature.")]
    public static CorrectedLength Corrected(
        [Quantity("length as read", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("expansion coefficient of the part", Dimension.ThermalExpansion, "1/K", Symbol = "αp", Min = 0, Max = 1e-4)] double partExpansion,
        [Quantity("temperature of the part", Dimension.Temperature, "°C", Symbol = "Tp", Above = 0)] double partTemperature,
        [Quantity("expansion coefficient of the gauge", Dimension.ThermalExpansion, "1/K", Symbol = "αg", Min = 0, Max = 1e-4)] double gaugeExpansion,
        [Quantity("temperature of the gauge", Dimension.Temperature, "°C", Symbol = "Tg", Above = 0)] double gaugeTemperature,
        [Quantity("standard uncertainty of a coefficient", Dimension.ThermalExpansion, "1/K", Symbol = "uα", Min = 0)] double expansionUncertainty = UsualExpansionUncertainty,
        [Quantity("standard uncertainty of the part's temperature", Dimension.TemperatureDifference, "K", Symbol = "up", Min = 0)] double partUncertainty = UsualTemperatureUncertainty,
        [Quantity("standard uncertainty of the gauge's temperature", Dimension.TemperatureDifference, "K", Symbol = "ug", Min = 0)] double gaugeUncertainty = UsualTemperatureUncertainty)
    {
        var error = ReadingError(length, partExpansion, partTemperature, gaugeExpansion, gaugeTemperature);
        var uncertainty = length * CombinedUncertainty.RootSumSquare(
        [
            (partTemperature - Reference) * expansionUncertainty,
            (gaugeTemperature - Reference) * expansionUncertainty,
            partExpansion * partUncertainty,
            gaugeExpansion * gaugeUncertainty,
        ]);
        return new CorrectedLength(length - error, error, uncertainty);
    }

    /// <summary>Length at another temperature, m.</summary>
    /// <param name="length">Length at 20 °C, m.</param>
    /// <param name="expansion">Expansion coefficient, 1/K.</param>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("length at temperature", "L = L20 (1 + α (T - 20 °C))", "Linear expansion from the reference temperature of ISO 1", Provenance = Provenance.Definition)]
    [return: Quantity("length at temperature", Dimension.Length, "mm", Symbol = "L")]
    public static double AtTemperature(
        [Quantity("length at 20 °C", Dimension.Length, "mm", Symbol = "L20", Above = 0)] double length,
        [Quantity("expansion coefficient", Dimension.ThermalExpansion, "1/K", Symbol = "α", Min = 0, Max = 1e-4)] double expansion,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature) =>
        length * (1 + (expansion * (temperature - Reference)));

    /// <summary>Expansion coefficient from a length at two temperatures, with its uncertainty.</summary>
    /// <param name="cold">Length at the lower temperature, m.</param>
    /// <param name="hot">Length at the upper temperature, m.</param>
    /// <param name="coldTemperature">Lower temperature, K.</param>
    /// <param name="hotTemperature">Upper temperature, K.</param>
    /// <param name="coldUncertainty">Standard uncertainty of the cold length, m.</param>
    /// <param name="hotUncertainty">Standard uncertainty of the hot length, m.</param>
    /// <param name="coldTemperatureUncertainty">Standard uncertainty of the lower temperature, K.</param>
    /// <param name="hotTemperatureUncertainty">Standard uncertainty of the upper temperature, K.</param>
    [Formula(
        "expansion coefficient from two lengths",
        "α = (L1 - L0) / (L0 (T1 - T0)); u² = Σ (dα/dx ux)²",
        "NIST TN 1900:2015, example E13")]
    public static MeasuredExpansion Coefficient(
        [Quantity("cold length", Dimension.Length, "mm", Symbol = "L0", Above = 0)] double cold,
        [Quantity("hot length", Dimension.Length, "mm", Symbol = "L1", Above = 0)] double hot,
        [Quantity("cold temperature", Dimension.Temperature, "K", Symbol = "T0", Above = 0)] double coldTemperature,
        [Quantity("hot temperature", Dimension.Temperature, "K", Symbol = "T1", Above = 0)] double hotTemperature,
        [Quantity("uncertainty of the cold length", Dimension.Length, "mm", Min = 0)] double coldUncertainty,
        [Quantity("uncertainty of the hot length", Dimension.Length, "mm", Min = 0)] double hotUncertainty,
        [Quantity("uncertainty of the cold temperature", Dimension.TemperatureDifference, "K", Min = 0)] double coldTemperatureUncertainty,
        [Quantity("uncertainty of the hot temperature", Dimension.TemperatureDifference, "K", Min = 0)] double hotTemperatureUncertainty)
    {
        var span = hotTemperature - coldTemperature;
        FormulaDomainException.Unless(span > 0, "hot temperature: must be above the cold temperature");
        var coefficient = (hot - cold) / (cold * span);
        return new MeasuredExpansion(coefficient, CombinedUncertainty.RootSumSquare(
        [
            hot / (cold * cold * span) * coldUncertainty,
            hotUncertainty / (cold * span),
            coefficient / span * coldTemperatureUncertainty,
            coefficient / span * hotTemperatureUncertainty,
        ]));
    }
}
