using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>How two concentric springs share one load.</summary>
/// <param name="OuterLoad">Load on the longer spring, N.</param>
/// <param name="InnerLoad">Load on the shorter spring, N.</param>
/// <param name="OuterDeflection">Deflection of the longer spring, m.</param>
/// <param name="InnerDeflection">Deflection of the shorter spring, m.</param>
public readonly record struct NestedLoads(
    [Quantity("load on the outer spring", Dimension.Force, "N", Symbol = "F1")] double OuterLoad,
    [Quantity("load on the inner spring", Dimension.Force, "N", Symbol = "F2")] double InnerLoad,
    [Quantity("deflection of the outer spring", Dimension.Length, "mm", Symbol = "s1")] double OuterDeflection,
    [Quantity("deflection of the inner spring", Dimension.Length, "mm", Symbol = "s2")] double InnerDeflection);

/// <summary>Two concentric springs of unequal free length.</summary>
public static class NestedSprings
{
    /// <summary>Load and deflection of each spring of a nested pair; below the gap only the longer one works.</summary>
    /// <param name="load">Load on the pair, N.</param>
    /// <param name="outerRate">Rate of the longer spring, N/m.</param>
    /// <param name="innerRate">Rate of the shorter spring, N/m.</param>
    /// <param name="gap">How much shorter the inner spring is, m.</param>
    [Formula("nested spring pair", "s1 = (F + R2 g) / (R1 + R2); s2 = s1 - g; F1 = R1 s1; F2 = R2 s2", "equilibrium of parallel springs; Bhandari, Design of Machine Elements, example 10.19", Validity = "when the load closes the gap, F > R1 g; below that the outer spring carries all of it")]
    public static NestedLoads Share(
        [Quantity("load on the pair", Dimension.Force, "N", Symbol = "F", Min = 0)] double load,
        [Quantity("outer spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R1", Above = 0)] double outerRate,
        [Quantity("inner spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R2", Above = 0)] double innerRate,
        [Quantity("inner spring shorter by", Dimension.Length, "mm", Symbol = "g", Min = 0)] double gap = 0)
    {
        if (load <= outerRate * gap)
        {
            return new NestedLoads(load, 0, load / outerRate, 0);
        }

        var outer = (load + (innerRate * gap)) / (outerRate + innerRate);
        return new NestedLoads(outerRate * outer, innerRate * (outer - gap), outer, outer - gap);
    }
}
