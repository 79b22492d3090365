using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>How the bolt holds the parts.</summary>
public enum JointForm
{
    /// <summary>Screwed into the last part (one compression cone).</summary>
    Tapped,

    /// <summary>Through bolt with nut (two cones).</summary>
    Through,
}

/// <summary>Compression body of the clamped parts.</summary>
/// <param name="ConeTangent">Tangent of the cone's half angle.</param>
/// <param name="LimitDiameter">Diameter from which the cone is no longer cut short, m.</param>
/// <param name="Resilience">Resilience of the parts, m/N.</param>
public readonly record struct ClampedBody(
    [Quantity("tangent of the cone angle", Dimension.Number, Symbol = "tanφ")] double ConeTangent,
    [Quantity("limit diameter", Dimension.Length, "mm", Symbol = "DG")] double LimitDiameter,
    [Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP")] double Resilience);

/// <summary>How much the clamped parts give per newton: a pressure cone, cut off by a sleeve where the part ends.</summary>
public static class ClampedParts
{
    /// <summary>Resilience of parts of one material around a concentric bolt.</summary>
    /// <param name="bearingDiameter">Outer diameter of the face under the head, m.</param>
    /// <param name="hole">Hole diameter, m.</param>
    /// <param name="outerDiameter">Diameter of the parts around the bolt, m.</param>
    /// <param name="grip">Clamped length, m.</param>
    /// <param name="modulus">Young's modulus of the parts, Pa.</param>
    /// <param name="form">Tapped or through joint.</param>
    [Formula("clamped part resilience", "tanφ = 0.348 + 0.013 ln(lK / dw) + 0.193 ln(DA / dw); DG = dw + w lK tanφ; δP = (2 / (w dh tanφ) ln((dw + dh) (DA - dh) / ((dw - dh) (DA + dh))) + 4 / (DA^2 - dh^2) (lK - (DA - dw) / (w tanφ))) / (π E)", "VDI 2230-1:2003, section 5.1.2", Provenance = Provenance.FromMemory, Validity = "w = 2 tapped joint (as written), 1 through joint with tanφ = 0.362 + 0.032 ln(lK / (2 dw)) + 0.153 ln(DA / dw); a body wider than DG is the cone alone, one narrower than dw a sleeve", Caution = "The cone angle is fitted to concentric joints; eccentric ones are softer.")]
    public static ClampedBody Resilience(
        [Quantity("bearing face diameter", Dimension.Length, "mm", Symbol = "dw", Above = 0)] double bearingDiameter,
        [Quantity("hole diameter", Dimension.Length, "mm", Symbol = "dh", Above = 0)] double hole,
        [Quantity("diameter of the parts", Dimension.Length, "mm", Symbol = "DA", Above = 0)] double outerDiameter,
        [Quantity("grip", Dimension.Length, "mm", Symbol = "lK", Above = 0)] double grip,
        [Quantity("elastic modulus of the parts", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus,
        [Quantity("joint form", Dimension.Number)] JointForm form = JointForm.Tapped)
    {
        FormulaDomainException.Unless(bearingDiameter > hole, "bearing face diameter: must be greater than the hole diameter");
        FormulaDomainException.Unless(outerDiameter > hole, "diameter of the parts: must be greater than the hole diameter");
        var cones = form == JointForm.Tapped ? 2 : 1;
        var tangent = ConeTangent(bearingDiameter, outerDiameter, grip, form);
        FormulaDomainException.Unless(tangent > 0, "grip: too short for the cone fit of the standard");
        var limit = bearingDiameter + (cones * grip * tangent);

        // The cone widens to the parts' edge or to the far face, whichever comes first; below dw there is no cone.
        var widest = Math.Clamp(outerDiameter, bearingDiameter, limit);
        var coneLength = (widest - bearingDiameter) / (cones * tangent);
        var cone = 2 / (cones * hole * tangent) * Math.Log((bearingDiameter + hole) * (widest - hole) / ((bearingDiameter - hole) * (widest + hole)));
        var sleeveDiameter = Math.Min(outerDiameter, widest);
        var sleeve = 4 * (grip - coneLength) / ((sleeveDiameter * sleeveDiameter) - (hole * hole));
        return new ClampedBody(tangent, limit, (cone + sleeve) / (Math.PI * modulus));
    }

    /// <summary>Tangent of the cone's half angle.</summary>
    internal static double ConeTangent(double bearing, double outer, double grip, JointForm form)
    {
        var slenderness = grip / bearing;
        var width = Math.Max(outer, bearing) / bearing;
        return form == JointForm.Tapped
            ? 0.348 + (0.013 * Math.Log(slenderness)) + (0.193 * Math.Log(width))
            : 0.362 + (0.032 * Math.Log(slenderness / 2)) + (0.153 * Math.Log(width));
    }
}
