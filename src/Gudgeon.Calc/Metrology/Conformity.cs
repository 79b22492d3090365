using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Gudgeon.Calc.Metrology;

/// <summary>On which side of the limit the part must be.</summary>
public enum LimitSide
{
    /// <summary>The value must not exceed the limit.</summary>
    Upper,

    /// <summary>The value must not fall below the limit.</summary>
    Lower,
}

/// <summary>Limits to accept to, inside the tolerance.</summary>
/// <param name="Guard">Width of the guard band, m.</param>
/// <param name="Lower">Lower acceptance limit, m.</param>
/// <param name="Upper">Upper acceptance limit, m.</param>
public readonly record struct AcceptanceZone(
    [Quantity("guard band", Dimension.Length, "µm", Symbol = "w")] double Guard,
    [Quantity("lower acceptance limit", Dimension.Length, "mm", Symbol = "AL")] double Lower,
    [Quantity("upper acceptance limit", Dimension.Length, "mm", Symbol = "AU")] double Upper);

/// <summary>Risks of a measuring process over many parts.</summary>
/// <param name="FalseAccept">Share of all parts that are accepted although bad.</param>
/// <param name="FalseReject">Share of all parts that are rejected although good.</param>
/// <param name="BadAmongAccepted">Share of the accepted parts that are bad.</param>
public readonly record struct GlobalRisk(
    [Quantity("false acceptance", Dimension.Number, "%", Symbol = "PFA")] double FalseAccept,
    [Quantity("false rejection", Dimension.Number, "%", Symbol = "PFR")] double FalseReject,
    [Quantity("bad parts among those accepted", Dimension.Number, "%")] double BadAmongAccepted);

/// <summary>Capability of a process and the share outside its limits.</summary>
/// <param name="Capability">Capability index Cpk.</param>
/// <param name="Risk">Share outside the limits.</param>
public readonly record struct ProcessRisk(
    [Quantity("capability index Cpk", Dimension.Number, Symbol = "Cpk")] double Capability,
    [Quantity("share outside the limits", Dimension.Number, "%", Symbol = "p")] double Risk);

/// <summary>Whether a measured part conforms, and how sure that is. Normal distributions throughout.</summary>
public static class Conformity
{
    private const string Source = "JCGM 106:2012, clause 7";

    /// <summary>Probability that a measured value conforms to one limit.</summary>
    /// <param name="value">Measured value.</param>
    /// <param name="uncertainty">Standard uncertainty.</param>
    /// <param name="limit">Limit.</param>
    /// <param name="side">Which side is good.</param>
    [Formula("conformance probability, one limit", "p = Φ((T - y) / u)", Source)]
    [return: Quantity("conformance probability", Dimension.Number, "%", Symbol = "p")]
    public static double OneLimit(
        [Quantity("measured value", Dimension.Number, Symbol = "y", Help = "all in one unit")] double value,
        [Quantity("standard uncertainty", Dimension.Number, Symbol = "u", Above = 0)] double uncertainty,
        [Quantity("limit", Dimension.Number, Symbol = "T")] double limit,
        [Quantity("limit side", Dimension.Number)] LimitSide side = LimitSide.Upper)
    {
        var room = (limit - value) / uncertainty;
        return Phi(side == LimitSide.Upper ? room : -room);
    }

    /// <summary>Probability that a measured value conforms to two limits.</summary>
    /// <param name="value">Measured value.</param>
    /// <param name="uncertainty">Standard uncertainty.</param>
    /// <param name="lower">Lower limit.</param>
    /// <param name="upper">Upper limit.</param>
    [Formula("conformance probability, two limits", "p = Φ((TU - y) / u) - Φ((TL - y) / u)", Source)]
    [return: Quantity("conformance probability", Dimension.Number, "%", Symbol = "p")]
    public static double TwoLimits(
        [Quantity("measured value", Dimension.Number, Symbol = "y", Help = "all in one unit")] double value,
        [Quantity("standard uncertainty", Dimension.Number, Symbol = "u", Above = 0)] double uncertainty,
        [Quantity("lower limit", Dimension.Number, Symbol = "TL")] double lower,
        [Quantity("upper limit", Dimension.Number, Symbol = "TU")] double upper)
    {
        FormulaDomainException.Unless(upper > lower, "upper limit: must be above the lower limit");
        return Phi((upper - value) / uncertainty) - Phi((lower - value) / uncertainty);
    }

    /// <summary>Guard factor for a wanted conformance probability at the acceptance limit.</summary>
    /// <param name="probability">Wanted conformance probability.</param>
    [Formula("guard band factor", "g = Φ⁻¹(p); w = g u", "ISO 14253-1:2017, default 95 %")]
    [return: Quantity("guard band over standard uncertainty", Dimension.Number, Symbol = "g")]
    public static double GuardFactor([Quantity("conformance probability", Dimension.Number, "%", Symbol = "p", Min = 0.5, Below = 1)] double probability = 0.95) =>
        Normal.InvCDF(0, 1, probability);

    /// <summary>Chance that a part measured right at its acceptance limit is bad.</summary>
    /// <param name="factor">Guard band over standard uncertainty; 0 is simple acceptance.</param>
    [Formula("false acceptance at the acceptance limit", "p = 1 - Φ(g)", "ILAC-G8:09/2019")]
    [return: Quantity("false acceptance", Dimension.Number, "%", Symbol = "p")]
    public static double FalseAcceptanceAt([Quantity("guard band over standard uncertainty", Dimension.Number, Symbol = "g", Min = 0)] double factor) => Phi(-factor);

    /// <summary>Acceptance limits for a toleranced length.</summary>
    /// <param name="lower">Lower limit of the tolerance, m.</param>
    /// <param name="upper">Upper limit of the tolerance, m.</param>
    /// <param name="uncertainty">Standard uncertainty of the measurement, m.</param>
    /// <param name="probability">Wanted conformance probability.</param>
    [Formula("acceptance limits", "w = Φ⁻¹(p) u; AL = TL + w; AU = TU - w", "ISO 14253-1:2017")]
    public static AcceptanceZone Acceptance(
        [Quantity("lower limit", Dimension.Length, "mm", Symbol = "TL")] double lower,
        [Quantity("upper limit", Dimension.Length, "mm", Symbol = "TU")] double upper,
        [Quantity("standard uncertainty", Dimension.Length, "µm", Symbol = "u", Min = 0)] double uncertainty,
        [Quantity("conformance probability", Dimension.Number, "%", Symbol = "p", Min = 0.5, Below = 1)] double probability = 0.95)
    {
        var guard = GuardFactor(probability) * uncertainty;
        FormulaDomainException.Unless(upper - lower > 2 * guard, "standard uncertainty: the guard bands leave nothing of the tolerance; a better instrument is wanted");
        return new AcceptanceZone(guard, lower + guard, upper - guard);
    }

    /// <summary>Risk that a measuring process accepts bad parts or rejects good ones, over many parts.</summary>
    /// <param name="inTolerance">Share of parts in tolerance.</param>
    /// <param name="ratio">Standard deviation of the parts over standard uncertainty of the measurement.</param>
    /// <param name="acceptance">Acceptance limits over tolerance limits, from the middle; 1 is simple acceptance, less is guarded.</param>
    [Formula(
        "global risk of a measuring process",
        "PFA = ∫ outside φ(x) (Φ((A - x) / u) - Φ((-A - x) / u)) dx",
        "JCGM 106:2012, clause 9; parts centred between two limits")]
    public static GlobalRisk Global(
        [Quantity("share of parts in tolerance", Dimension.Number, "%", Symbol = "p", Above = 0, Below = 1)] double inTolerance,
        [Quantity("test ratio", Dimension.Number, Symbol = "r", Above = 0)] double ratio,
        [Quantity("acceptance limits over tolerance limits", Dimension.Number, Symbol = "A", Above = 0, Max = 2)] double acceptance = 1)
    {
        var parts = 1 / Normal.InvCDF(0, 1, (1 + inTolerance) / 2);
        var test = parts / ratio;
        double Accepted(double x) => Phi((acceptance - x) / test) - Phi((-acceptance - x) / test);
        double Density(double x) => Normal.PDF(0, parts, x);
        const double Tiny = 1e-10;
        var far = 1 + (12 * Math.Max(parts, test));
        var falseAccept = 2 * DoubleExponentialTransformation.Integrate(x => Density(x) * Accepted(x), 1, far, Tiny);
        var falseReject = 2 * DoubleExponentialTransformation.Integrate(x => Density(x) * (1 - Accepted(x)), 0, 1, Tiny);
        return new GlobalRisk(falseAccept, falseReject, falseAccept / (inTolerance - falseReject + falseAccept));
    }

    /// <summary>Capability of a process and the share of parts outside its limits.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="deviation">Standard deviation.</param>
    /// <param name="lower">Lower limit.</param>
    /// <param name="upper">Upper limit.</param>
    [Formula("process capability", "Cpk = min(TU - m, m - TL) / (3 s); p = 1 - Φ((TU - m) / s) + Φ((TL - m) / s)", "Definition; normal distribution", Provenance = Provenance.Definition)]
    public static ProcessRisk Capability(
        [Quantity("mean", Dimension.Number, Symbol = "m", Help = "all in one unit")] double mean,
        [Quantity("standard deviation", Dimension.Number, Symbol = "s", Above = 0)] double deviation,
        [Quantity("lower limit", Dimension.Number, Symbol = "TL")] double lower,
        [Quantity("upper limit", Dimension.Number, Symbol = "TU")] double upper)
    {
        FormulaDomainException.Unless(upper > lower, "upper limit: must be above the lower limit");
        return new ProcessRisk(
            Math.Min(upper - mean, mean - lower) / (3 * deviation),
            Phi((mean - upper) / deviation) + Phi((lower - mean) / deviation));
    }

    private static double Phi(double z) => Normal.CDF(0, 1, z);
}
