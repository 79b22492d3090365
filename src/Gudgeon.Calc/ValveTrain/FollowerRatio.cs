using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Ratio of a finger or a rocker from its arms.</summary>
public static class FollowerRatio
{
    /// <summary>Ratio of the speeds at valve and flat follower with the pad on a circle about the cam's axis: base circle, or the same with some lift.</summary>
    /// <param name="baseRadius">Base circle radius, m.</param>
    /// <param name="pivotToCam">From the pivot to the cam's axis, m.</param>
    /// <param name="camArm">From the pivot to the middle of the pad's arc, m.</param>
    /// <param name="padRadius">Radius of the pad, m.</param>
    /// <param name="valveArm">From the pivot to the valve tip, m.</param>
    /// <param name="lift">Lift of the lobe, m.</param>
    [Formula("finger or rocker ratio", "cos(γ) = (a^2 + (R + ρ + s)^2 - d^2) / (2 a (R + ρ + s)); q = b / (a sin(γ))", "triangle of cam axis, pivot and middle of the pad's arc; speed along the common normal", Provenance = Provenance.Definition, Validity = "contact on the line from the cam's axis: on the base circle and at the nose")]
    [return: Quantity("ratio", Dimension.Number, Symbol = "q")]
    public static double OfArms(
        [Quantity("base circle radius", Dimension.Length, "mm", Symbol = "R", Above = 0)] double baseRadius,
        [Quantity("pivot to cam axis", Dimension.Length, "mm", Symbol = "d", Above = 0)] double pivotToCam,
        [Quantity("arm to the pad", Dimension.Length, "mm", Symbol = "a", Above = 0)] double camArm,
        [Quantity("pad radius", Dimension.Length, "mm", Symbol = "ρ", Above = 0)] double padRadius,
        [Quantity("arm to the valve", Dimension.Length, "mm", Symbol = "b", Above = 0)] double valveArm,
        [Quantity("lift of the lobe", Dimension.Length, "mm", Symbol = "s", Min = 0)] double lift = 0)
    {
        var away = baseRadius + padRadius + lift;
        FormulaDomainException.Unless(camArm < pivotToCam + away && pivotToCam < camArm + away && away < camArm + pivotToCam, "arm to the pad: with this pivot, pad and base circle the pad cannot rest on the cam");
        return valveArm / (camArm * Math.Sin(Angle(camArm, away, pivotToCam)));
    }

    /// <summary>Angle between two sides of a triangle, rad, from the three lengths.</summary>
    internal static double Angle(double a, double b, double opposite) => Math.Acos(Math.Clamp(((a * a) + (b * b) - (opposite * opposite)) / (2 * a * b), -1, 1));
}
