using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Workshop instruments for length.</summary>
public enum LengthInstrument
{
    /// <summary>External micrometer.</summary>
    Micrometer,

    /// <summary>Vernier or dial calliper reading 0.05 mm.</summary>
    Calliper,

    /// <summary>Digital calliper reading 0.01 mm.</summary>
    DigitalCalliper,

    /// <summary>Dial indicator reading 0.01 mm, 10 mm range, used over the whole range.</summary>
    DialIndicator,
}

/// <summary>How a calliper is used.</summary>
public enum CalliperUse
{
    /// <summary>Outside jaws.</summary>
    Outside,

    /// <summary>Inside jaws or depth rod.</summary>
    InsideOrDepth,
}

/// <summary>Limit of error of an instrument and what to book for it.</summary>
/// <param name="Limit">Limit of error, plus or minus, m.</param>
/// <param name="Uncertainty">Standard uncertainty, m.</param>
public readonly record struct LengthLimit(
    [Quantity("limit of error, plus or minus", Dimension.Length, "µm", Symbol = "a")] double Limit,
    [Quantity("standard uncertainty", Dimension.Length, "µm", Symbol = "u")] double Uncertainty);

/// <summary>Relative limit of error of a torque wrench and what to book for it.</summary>
/// <param name="Limit">Limit of error, plus or minus, as a share of the reading.</param>
/// <param name="Uncertainty">Standard uncertainty as a share of the reading.</param>
public readonly record struct TorqueLimit(
    [Quantity("limit of error, plus or minus", Dimension.Number, "%", Symbol = "a")] double Limit,
    [Quantity("standard uncertainty", Dimension.Number, "%", Symbol = "u")] double Uncertainty);

/// <summary>A spring rate from two readings of a tester.</summary>
/// <param name="Rate">Rate, N/m.</param>
/// <param name="Uncertainty">Standard uncertainty, N/m.</param>
public readonly record struct TestedRate(
    [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R")] double Rate,
    [Quantity("standard uncertainty", Dimension.ForcePerLength, "N/mm", Symbol = "u")] double Uncertainty);

/// <summary>What an instrument without a certificate may be trusted with.</summary>
public static class InstrumentLimit
{
    /// <summary>Share of its range from which a torque wrench is held to its limit (ISO 6789).</summary>
    public const double LeastShareOfRange = 0.2;

    /// <summary>Limit of error of a testing machine of class 1 as a share of the load (ISO 7500-1, recalled).</summary>
    public const double LoadOfClassOne = 0.01;

    /// <summary>Limit of error of a length instrument by the tables.</summary>
    /// <param name="instrument">Kind of instrument.</param>
    /// <param name="length">Measured length, m.</param>
    /// <param name="use">How a calliper is used.</param>
    [Formula(
        "limit of error of a length instrument",
        "u = a / sqrt(3); a from table",
        "DIN 863-1 (micrometer), DIN 862 (calliper), DIN 878 (dial indicator, recalled) as reported by makers",
        Caution = "For an instrument in order and checked. ISO 3611:2010 and ISO 13385-1 leave the limit to maker or user: a certificate comes first. Anvil wear, cosine and feel come on top.")]
    public static LengthLimit ForLength(
        [Quantity("instrument", Dimension.Number)] LengthInstrument instrument,
        [Quantity("measured length", Dimension.Length, "mm", Symbol = "L", Min = 0)] double length,
        [Quantity("calliper use", Dimension.Number)] CalliperUse use = CalliperUse.Outside)
    {
        var micrometres = instrument switch
        {
            LengthInstrument.Micrometer => Micrometer(length),
            LengthInstrument.Calliper => Calliper(length, use),
            LengthInstrument.DigitalCalliper => DigitalCalliper(length, use),
            _ => Dial(length),
        };
        return new LengthLimit(micrometres * 1e-6, TypeB.Rectangular(micrometres * 1e-6));
    }

    /// <summary>Limit of error of a setting torque wrench with scale.</summary>
    /// <param name="torque">Torque set, N·m.</param>
    /// <param name="range">Upper end of the wrench's range, N·m.</param>
    [Formula(
        "limit of error of a torque wrench",
        "a = 6 % up to 10 N·m, 4 % above; u = a / sqrt(3)",
        "ISO 6789:2003, type II class A; kept in ISO 6789-1:2017 (recalled)",
        Validity = "From 20 % to 100 % of the wrench's range.")]
    public static TorqueLimit ForTorque(
        [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T", Above = 0)] double torque,
        [Quantity("upper end of the range", Dimension.Torque, "N·m", Above = 0)] double range)
    {
        FormulaDomainException.Unless(torque >= LeastShareOfRange * range && torque <= range, "torque: must lie between 20 % and 100 % of the wrench's range");
        var limit = torque <= 10 ? 0.06 : 0.04;
        return new TorqueLimit(limit, limit / Math.Sqrt(3));
    }

    /// <summary>Spring rate from two loads on a spring tester, with its uncertainty.</summary>
    /// <param name="firstLoad">Lower load, N.</param>
    /// <param name="secondLoad">Upper load, N.</param>
    /// <param name="distance">Travel in between, m.</param>
    /// <param name="loadLimit">Limit of error of a load, plus or minus, as a share of it; 1 % for a class 1 machine.</param>
    /// <param name="readingLimit">Limit of error of one height reading, plus or minus, m.</param>
    [Formula(
        "spring rate on a tester",
        "R = (F2 - F1) / s; u² = ((qF1)² + (qF2)²) / (3 s²) + R² 2 e² / (3 s²)",
        "JCGM 100:2008 (GUM), eq. 10; load limit of ISO 7500-1 class 1 (recalled)")]
    public static TestedRate SpringRate(
        [Quantity("lower load", Dimension.Force, "N", Symbol = "F1", Min = 0)] double firstLoad,
        [Quantity("upper load", Dimension.Force, "N", Symbol = "F2", Above = 0)] double secondLoad,
        [Quantity("travel in between", Dimension.Length, "mm", Symbol = "s", Above = 0)] double distance,
        [Quantity("limit of error of a load", Dimension.Number, "%", Symbol = "q", Min = 0, Max = 1)] double loadLimit = LoadOfClassOne,
        [Quantity("limit of error of one height reading", Dimension.Length, "mm", Symbol = "e", Min = 0)] double readingLimit = 2e-5)
    {
        FormulaDomainException.Unless(secondLoad > firstLoad, "upper load: must be above the lower load");
        var rate = (secondLoad - firstLoad) / distance;
        var load = loadLimit / Math.Sqrt(3);
        var reading = readingLimit / Math.Sqrt(3);
        return new TestedRate(rate, CombinedUncertainty.RootSumSquare([load * firstLoad, load * secondLoad, rate * reading, rate * reading]) / distance);
    }

    private static double Micrometer(double length)
    {
        FormulaDomainException.Unless(length <= 0.2, "measured length: the micrometer table ends at 200 mm");
        return length switch { <= 0.05 => 4, <= 0.1 => 5, <= 0.15 => 6, _ => 7 };
    }

    private static double Calliper(double length, CalliperUse use)
    {
        FormulaDomainException.Unless(length <= 0.4, "measured length: the calliper table ends at 400 mm");
        return (length <= 0.3 ? 50 : 60) + Extra(use);
    }

    private static double DigitalCalliper(double length, CalliperUse use)
    {
        FormulaDomainException.Unless(length <= 0.3, "measured length: the digital calliper table ends at 300 mm");
        return (length <= 0.1 ? 20 : 30) + Extra(use);
    }

    private static double Dial(double length)
    {
        FormulaDomainException.Unless(length <= 0.01, "measured length: a dial indicator of 10 mm range cannot travel that far");
        return 17;
    }

    private static double Extra(CalliperUse use) => use == CalliperUse.InsideOrDepth ? 20 : 0;
}
