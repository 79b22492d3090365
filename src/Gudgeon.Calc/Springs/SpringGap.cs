using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Whether a spring is loaded steadily or works.</summary>
public enum SpringDuty
{
    /// <summary>Working load changes: valve springs.</summary>
    Dynamic,

    /// <summary>Load set once.</summary>
    Static,
}

/// <summary>The gap that the standard wants between the coils at full travel.</summary>
public static class SpringGap
{
    /// <summary>Least sum of gaps between the active coils at the shortest working length, m.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m.</param>
    /// <param name="activeCoils">Active coils.</param>
    /// <param name="duty">Steady or working load; working asks half as much again.</param>
    [Formula("least total coil gap", "Sa = n (0.0015 D^2 / d + 0.1 d)", "EN 13906-1:2013, minimum sum of gaps of cold-coiled springs; 1.5 times as much for dynamic duty", Provenance = Provenance.FromMemory, Validity = "static duty as written; dynamic duty multiplies by 1.5", Caution = "Racing valve springs run below this gap on purpose and pay with life.")]
    [return: Quantity("least total gap", Dimension.Length, "mm", Symbol = "Sa")]
    public static double Least(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("active coils", Dimension.Number, Symbol = "n", Above = 0)] double activeCoils,
        [Quantity("duty", Dimension.Number)] SpringDuty duty = SpringDuty.Dynamic)
    {
        _ = HelicalSpring.Index(wire, meanDiameter);
        var still = activeCoils * ((0.0015 * meanDiameter * meanDiameter / wire) + (0.1 * wire));
        return duty == SpringDuty.Dynamic ? 1.5 * still : still;
    }
}
