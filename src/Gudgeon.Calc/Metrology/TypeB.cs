using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Two rectangular errors of different size added together.</summary>
/// <param name="Uncertainty">Standard uncertainty.</param>
/// <param name="Shape">Edge ratio β of the trapezoid.</param>
/// <param name="Coverage">Coverage factor k.</param>
/// <param name="Expanded">Expanded uncertainty.</param>
public readonly record struct TrapezoidUncertainty(
    [Quantity("standard uncertainty", Dimension.Length, "µm", Symbol = "u")] double Uncertainty,
    [Quantity("edge ratio", Dimension.Number, Symbol = "β")] double Shape,
    [Quantity("coverage factor", Dimension.Number, Symbol = "k")] double Coverage,
    [Quantity("expanded uncertainty", Dimension.Length, "µm", Symbol = "U")] double Expanded);

/// <summary>Type B evaluation: uncertainty from limits.</summary>
public static class TypeB
{
    /// <summary>Standard uncertainty of a limit of error with nothing else known, m.</summary>
    /// <param name="limit">Limit of error, plus or minus, m.</param>
    [Formula("standard uncertainty of a limit of error", "u = a / sqrt(3)", "JCGM 100:2008 (GUM), 4.3.7, eq. 7")]
    [return: Quantity("standard uncertainty", Dimension.Length, "µm", Symbol = "u")]
    public static double Rectangular([Quantity("limit of error, plus or minus", Dimension.Length, "µm", Symbol = "a", Min = 0)] double limit) =>
        limit / Math.Sqrt(3);

    /// <summary>Standard uncertainty of a digital step or scale division, m.</summary>
    /// <param name="step">Resolution, m.</param>
    [Formula("standard uncertainty of resolution", "u = δ / sqrt(12)", "JCGM 100:2008 (GUM), F.2.2.1")]
    [return: Quantity("standard uncertainty", Dimension.Length, "µm", Symbol = "u")]
    public static double Resolution([Quantity("resolution", Dimension.Length, "mm", Symbol = "δ", Min = 0)] double step) =>
        step / Math.Sqrt(12);

    /// <summary>Expanded uncertainty when two rectangular errors dominate.</summary>
    /// <param name="first">Limit of one error, plus or minus, m.</param>
    /// <param name="second">Limit of the other, m.</param>
    /// <param name="others">Standard uncertainty of everything else, m.</param>
    /// <param name="probability">Coverage probability.</param>
    [Formula(
        "expanded uncertainty of two limits of error",
        "u = sqrt((a1^2 + a2^2) / 3 + uo^2); β = |a1 - a2| / (a1 + a2); k = (1 - sqrt((1 - p) (1 - β^2))) / sqrt((1 + β^2) / 6); U = k u",
        "EA-4/02 M:2013, example S10",
        Provenance = Provenance.FromMemory)]
    public static TrapezoidUncertainty Trapezoid(
        [Quantity("limit of one error", Dimension.Length, "µm", Symbol = "a1", Above = 0)] double first,
        [Quantity("limit of the other error", Dimension.Length, "µm", Symbol = "a2", Above = 0)] double second,
        [Quantity("standard uncertainty of everything else", Dimension.Length, "µm", Symbol = "uo", Min = 0)] double others = 0,
        [Quantity("coverage probability", Dimension.Number, "%", Symbol = "p", Min = 0.9, Below = 1)] double probability = 0.95)
    {
        var u = Math.Sqrt((((first * first) + (second * second)) / 3) + (others * others));
        var shape = Math.Abs(first - second) / (first + second);
        var square = shape * shape;
        var k = (1 - Math.Sqrt((1 - probability) * (1 - square))) / Math.Sqrt((1 + square) / 6);
        return new TrapezoidUncertainty(u, shape, k, k * u);
    }
}
