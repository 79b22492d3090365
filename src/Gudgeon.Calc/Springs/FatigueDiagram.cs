using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>What a spring's wire bears by a diagram of upper over lower stress, and what it is asked to.</summary>
/// <param name="Lower">Corrected stress at the least load, Pa.</param>
/// <param name="Range">Corrected stress range between the loads, Pa.</param>
/// <param name="Allowed">Range that the diagram allows above the lower stress, Pa.</param>
/// <param name="Safety">Range allowed over range.</param>
public readonly record struct StressRangeResult(
    [Quantity("lower stress", Dimension.Pressure, "MPa", Symbol = "τk1")] double Lower,
    [Quantity("stress range", Dimension.Pressure, "MPa", Symbol = "τkh")] double Range,
    [Quantity("stress range allowed", Dimension.Pressure, "MPa", Symbol = "τkH")] double Allowed,
    [Quantity("allowed over asked", Dimension.Number, Symbol = "s")] double Safety);

/// <summary>The fatigue diagram of EN 13906-1: upper stress allowed over lower stress, for a wire and its diameter.</summary>
public static class FatigueDiagram
{
    /// <summary>
    /// Stress range against the range that the diagram allows. The diagram's upper line is taken as straight from the range
    /// borne from nothing to the static limit, where no range is left.
    /// </summary>
    /// <param name="leastLoad">Least load, N: the seat load.</param>
    /// <param name="greatestLoad">Greatest load, N: the open load.</param>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m.</param>
    /// <param name="rangeFromNothing">Range borne at no lower stress, Pa, by the maker of the wire.</param>
    /// <param name="tensileStrength">Tensile strength of the wire, Pa.</param>
    [Formula("spring stress range allowed", "τk = K 8 F D / (π d^3); τkH = τ0 (1 - τk1 / (0.56 Rm)); s = τkH / (τk2 - τk1)", "EN 13906-1:2013, fatigue diagrams; K by Bergsträsser as in the standard; upper line drawn straight to 0.56 Rm", Provenance = Provenance.FromMemory, Validity = "the diagrams hold for 10^7 turns, shot-peened wire where they say so, room temperature")]
    public static StressRangeResult Safety(
        [Quantity("least load", Dimension.Force, "N", Symbol = "F1", Min = 0)] double leastLoad,
        [Quantity("greatest load", Dimension.Force, "N", Symbol = "F2", Above = 0)] double greatestLoad,
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("range borne from nothing", Dimension.Pressure, "MPa", Symbol = "τ0", Above = 0)] double rangeFromNothing,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm", Above = 0)] double tensileStrength)
    {
        FormulaDomainException.Unless(greatestLoad > leastLoad, "greatest load: must be greater than the least load");
        var lower = HelicalSpring.ShearStress(leastLoad, wire, meanDiameter, CurvatureFactor.Bergstrasser);
        var range = HelicalSpring.ShearStress(greatestLoad, wire, meanDiameter, CurvatureFactor.Bergstrasser) - lower;
        var allowed = Math.Max(0, rangeFromNothing * (1 - (lower / (0.56 * tensileStrength))));
        return new StressRangeResult(lower, range, allowed, allowed / range);
    }
}
