using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>How a bolt is tightened.</summary>
public enum TighteningMethod
{
    /// <summary>Yield-controlled or angle-controlled.</summary>
    YieldOrAngle,

    /// <summary>Hydraulic tensioner.</summary>
    Hydraulic,

    /// <summary>Torque wrench, torque set by tests on the joint.</summary>
    TorqueTested,

    /// <summary>Torque wrench, friction estimated within class B.</summary>
    TorqueEstimatedB,

    /// <summary>Torque wrench, friction estimated.</summary>
    TorqueEstimated,

    /// <summary>Impact wrench.</summary>
    ImpactWrench,

    /// <summary>Stretch of the bolt measured with a micrometer or dial gauge.</summary>
    StretchMeasured,
}

/// <summary>Guide range of the tightening factor.</summary>
/// <param name="Least">Careful work.</param>
/// <param name="Greatest">Careless work.</param>
public readonly record struct FactorRange(
    [Quantity("least tightening factor", Dimension.Number, Symbol = "αAmin")] double Least,
    [Quantity("greatest tightening factor", Dimension.Number, Symbol = "αAmax")] double Greatest);

/// <summary>Statistics of measured preloads.</summary>
/// <param name="Mean">Mean, N.</param>
/// <param name="Deviation">Standard deviation of the sample, N.</param>
/// <param name="Variation">Standard deviation over mean.</param>
/// <param name="TighteningFactor">Mean + 2 s over mean - 2 s.</param>
public readonly record struct PreloadScatter(
    [Quantity("mean preload", Dimension.Force, "kN", Symbol = "m")] double Mean,
    [Quantity("standard deviation", Dimension.Force, "kN", Symbol = "s")] double Deviation,
    [Quantity("coefficient of variation", Dimension.Number, "%", Symbol = "v")] double Variation,
    [Quantity("tightening factor", Dimension.Number, Symbol = "αA")] double TighteningFactor);

/// <summary>How far the preload strays from what was meant.</summary>
public static class TighteningScatter
{
    /// <summary>Tightening factor from a symmetric scatter of the preload.</summary>
    /// <param name="scatter">Half width of the scatter over the mean.</param>
    [Formula("tightening factor from scatter", "αA = (1 + t) / (1 - t)", "VDI 2230-1:2003, αA = FMmax / FMmin", Provenance = Provenance.Definition)]
    [return: Quantity("tightening factor", Dimension.Number, Symbol = "αA")]
    public static double Factor(
        [Quantity("scatter", Dimension.Number, "%", Symbol = "t", Min = 0, Below = 1)] double scatter) =>
        (1 + scatter) / (1 - scatter);

    /// <summary>Symmetric scatter of the preload from a tightening factor.</summary>
    /// <param name="factor">Tightening factor.</param>
    [Formula("scatter from tightening factor", "t = (αA - 1) / (αA + 1)", "VDI 2230-1:2003, αA = FMmax / FMmin", Provenance = Provenance.Definition)]
    [return: Quantity("scatter", Dimension.Number, "%", Symbol = "t")]
    public static double Scatter(
        [Quantity("tightening factor", Dimension.Number, Symbol = "αA", Min = 1)] double factor) =>
        (factor - 1) / (factor + 1);

    /// <summary>Guide range of the tightening factor by method.</summary>
    /// <param name="method">How the bolt is tightened.</param>
    [Formula("tightening factor guide", "αAmin ≤ αA ≤ αAmax", "VDI 2230-1:2003, table A8", Provenance = Provenance.FromMemory, Caution = "A guide: a test of the joint goes first.")]
    public static FactorRange Guide(
        [Quantity("tightening method", Dimension.Number)] TighteningMethod method) => method switch
        {
            TighteningMethod.YieldOrAngle => new FactorRange(1.2, 1.4),
            TighteningMethod.Hydraulic => new FactorRange(1.2, 1.6),
            TighteningMethod.TorqueTested => new FactorRange(1.4, 1.6),
            TighteningMethod.TorqueEstimatedB => new FactorRange(1.6, 2.0),
            TighteningMethod.TorqueEstimated => new FactorRange(1.7, 2.5),
            TighteningMethod.StretchMeasured => new FactorRange(1.1, 1.5),
            _ => new FactorRange(2.5, 4),
        };

    /// <summary>Least preload that a tightening method leaves when the greatest must not pass a limit, N.</summary>
    /// <param name="greatest">Greatest preload, N.</param>
    /// <param name="tighteningFactor">Tightening factor.</param>
    [Formula("minimum preload", "FMmin = FMmax / αA", "VDI 2230-1:2003, αA = FMmax / FMmin", Provenance = Provenance.Definition)]
    [return: Quantity("least preload", Dimension.Force, "kN", Symbol = "FMmin")]
    public static double Least(
        [Quantity("greatest preload", Dimension.Force, "kN", Symbol = "FMmax", Min = 0)] double greatest,
        [Quantity("tightening factor", Dimension.Number, Symbol = "αA", Min = 1)] double tighteningFactor) =>
        greatest / tighteningFactor;

    /// <summary>Mean, spread and tightening factor of measured preloads.</summary>
    /// <param name="readings">Measured preloads, N; at least two.</param>
    [Formula("preload statistics", "s = sqrt(sum((F - m)^2) / (n - 1)); v = s / m; αA = (m + 2 s) / (m - 2 s)", "sample mean and standard deviation; αA of VDI 2230-1:2003 at two standard deviations", Provenance = Provenance.Definition)]
    public static PreloadScatter Statistics(
        [Quantity("measured preloads", Dimension.Force, "kN", Symbol = "F", Above = 0)] double[] readings)
    {
        FormulaDomainException.Unless(readings.Length > 1, "measured preloads: at least two readings are wanted");
        var mean = readings.Average();
        var deviation = Math.Sqrt(readings.Sum(f => (f - mean) * (f - mean)) / (readings.Length - 1));
        FormulaDomainException.Unless(mean > 2 * deviation, "measured preloads: the spread is greater than half of the mean");
        return new PreloadScatter(mean, deviation, deviation / mean, (mean + (2 * deviation)) / (mean - (2 * deviation)));
    }
}
