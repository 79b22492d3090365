using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Weather;

/// <summary>Which rule carries measured power to reference weather.</summary>
public enum CorrectionRule
{
    /// <summary>SAE J1349 (June 1990 form, friction not measured): 25 °C, 990 hPa dry.</summary>
    SaeJ1349,

    /// <summary>ISO 1585, also UN R85 and EU 134/2014, spark ignition: 25 °C, 990 hPa dry.</summary>
    Iso1585,

    /// <summary>DIN 70020: 20 °C, 1013 hPa total.</summary>
    Din70020,
}

/// <summary>Corrected power and the factor used.</summary>
/// <param name="Factor">Corrected over observed.</param>
/// <param name="Power">Corrected power, W.</param>
public readonly record struct CorrectedOutput(
    [Quantity("correction factor", Dimension.Number, Symbol = "k")] double Factor,
    [Quantity("corrected power", Dimension.Power, "kW", Symbol = "Pc")] double Power);

/// <summary>Correction of dynamometer figures for weather. The rules are printed with 273, not 273.15, and so computed.</summary>
public static class PowerCorrection
{
    private const string Limits = "For naturally aspirated engines; factors from 0.93 to 1.07, test bed 10 to 45 °C.";
    private const string Expression = "SAE: k = 1.18 (990 hPa / pd) sqrt((t + 273) / 298) - 0.18; ISO: k = (990 hPa / pd)^1.2 ((t + 273) / 298)^0.6; DIN: k = (1013 hPa / p) sqrt((t + 273) / 293); pd = p - pv";
    private const string Source = "SAE J1349 (1990); ISO 1585 and Regulation (EU) 134/2014, app. 2.2; DIN 70020";
    private const string Warning = "A supercharged engine is not corrected by any of these; state the rule with the figure, a DIN figure is about 3.8 % above an SAE one.";

    /// <summary>Factor from observed to reference weather.</summary>
    /// <param name="rule">Which rule.</param>
    /// <param name="temperature">Air temperature at the intake, K.</param>
    /// <param name="pressure">Total air pressure, Pa.</param>
    /// <param name="vapourPressure">Partial pressure of water vapour, Pa; DIN does not use it.</param>
    [Formula("power correction factor", Expression, Source, Provenance = Provenance.FromMemory, Validity = Limits, Caution = Warning)]
    [return: Quantity("correction factor", Dimension.Number, Symbol = "k")]
    public static double Factor(
        [Quantity("rule", Dimension.Number)] CorrectionRule rule,
        [Quantity("air temperature", Dimension.Temperature, "°C", Symbol = "t", Min = 233.15, Max = 343.15)] double temperature,
        [Quantity("air pressure", Dimension.Pressure, "hPa", Symbol = "p", Min = 30e3, Max = 150e3)] double pressure,
        [Quantity("vapour pressure", Dimension.Pressure, "hPa", Symbol = "pv", Min = 0, Max = 30e3)] double vapourPressure = 0)
    {
        FormulaDomainException.Unless(vapourPressure < pressure, "vapour pressure: must be below the air pressure");
        var t = temperature - 273.15 + 273;
        var dry = 99000 / (pressure - vapourPressure);
        return rule switch
        {
            CorrectionRule.SaeJ1349 => (1.18 * dry * Math.Sqrt(t / 298)) - 0.18,
            CorrectionRule.Iso1585 => Math.Pow(dry, 1.2) * Math.Pow(t / 298, 0.6),
            _ => 101300 / pressure * Math.Sqrt(t / 293),
        };
    }

    /// <summary>Observed power carried to reference weather.</summary>
    /// <param name="power">Observed power, W.</param>
    /// <param name="rule">Which rule.</param>
    /// <param name="temperature">Air temperature at the intake, K.</param>
    /// <param name="pressure">Total air pressure, Pa.</param>
    /// <param name="vapourPressure">Partial pressure of water vapour, Pa.</param>
    [Formula("corrected power", "Pc = k P; " + Expression, Source, Provenance = Provenance.FromMemory, Validity = Limits, Caution = Warning)]
    public static CorrectedOutput Corrected(
        [Quantity("observed power", Dimension.Power, "kW", Symbol = "P", Min = 0)] double power,
        [Quantity("rule", Dimension.Number)] CorrectionRule rule,
        [Quantity("air temperature", Dimension.Temperature, "°C", Symbol = "t", Min = 233.15, Max = 343.15)] double temperature,
        [Quantity("air pressure", Dimension.Pressure, "hPa", Symbol = "p", Min = 30e3, Max = 150e3)] double pressure,
        [Quantity("vapour pressure", Dimension.Pressure, "hPa", Symbol = "pv", Min = 0, Max = 30e3)] double vapourPressure = 0)
    {
        var factor = Factor(rule, temperature, pressure, vapourPressure);
        return new(factor, factor * power);
    }
}
