using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Calc.Chamber;

/// <summary>Compression from where the inlet valve closes.</summary>
/// <param name="Travel">Piston's distance from top dead centre when the inlet valve closes, m.</param>
/// <param name="Ratio">Effective compression ratio.</param>
public readonly record struct EffectiveRatio(
    [Quantity("piston from TDC when the inlet closes", Dimension.Length, "mm", Symbol = "x")] double Travel,
    [Quantity("effective compression ratio", Dimension.Number, Symbol = "CRe")] double Ratio);

/// <summary>What a late inlet closing leaves of the compression ratio.</summary>
public static class EffectiveCompression
{
    /// <summary>Effective compression ratio: volume when the inlet valve closes over the clearance volume.</summary>
    /// <param name="ratio">Geometric compression ratio.</param>
    /// <param name="stroke">Stroke, m.</param>
    /// <param name="rod">Rod length between centres, m.</param>
    /// <param name="closes">Inlet closing after bottom dead centre, crank rad.</param>
    [Formula("effective compression ratio", "x = r (1 - cos(π + IC)) + l - sqrt(l^2 - (r sin(IC))^2); CRe = 1 + (CR - 1) x / (2 r)", "geometry of the slider-crank; the stroke that is left counts as the swept volume", Provenance = Provenance.Definition, Validity = "r is half the stroke; where the valve counts as closed must be said: at 1 mm of lift the flow is as good as over")]
    public static EffectiveRatio AtClosing(
        [Quantity("compression ratio", Dimension.Number, Symbol = "CR", Above = 1)] double ratio,
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0)] double stroke,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0)] double rod,
        [Quantity("inlet closes after BDC", Dimension.Angle, "°", Symbol = "IC", Min = -Math.PI, Max = Math.PI)] double closes)
    {
        FormulaDomainException.Unless(rod > stroke / 2, "rod length: must be greater than the crank radius");
        var travel = SliderCrank.Motion(stroke / 2, rod, Math.PI + closes, 0).Travel;
        return new EffectiveRatio(travel, 1 + ((ratio - 1) * travel / stroke));
    }
}
