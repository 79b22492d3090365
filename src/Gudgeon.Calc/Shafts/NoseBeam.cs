using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Shafts;

/// <summary>A crank nose that an outboard bearing holds at its end. Forces against the pull of the belt count positive.</summary>
/// <param name="Outboard">Load on the outboard bearing, N.</param>
/// <param name="Near">Load on the near main bearing, N.</param>
/// <param name="Far">Load on the far main bearing, N.</param>
/// <param name="NearMoment">Bending moment at the near main bearing, N·m.</param>
/// <param name="Slope">Slope of the shaft in the outboard bearing, rad.</param>
public readonly record struct NoseSupport(
    [Quantity("outboard bearing load", Dimension.Force, "N", Symbol = "R")] double Outboard,
    [Quantity("near bearing load", Dimension.Force, "N", Symbol = "Rn")] double Near,
    [Quantity("far bearing load", Dimension.Force, "N", Symbol = "Rf")] double Far,
    [Quantity("bending moment at the near bearing", Dimension.Torque, "N·m", Symbol = "M")] double NearMoment,
    [Quantity("slope in the outboard bearing", Dimension.Angle, "°", Symbol = "φ")] double Slope);

/// <summary>The nose of a crank as a beam on the last two mains and a bearing in a cover.</summary>
public static class NoseBeam
{
    /// <summary>Loads, moment and slope with an outboard bearing whose bore lies off the line of the mains.</summary>
    /// <param name="load">Pull of the belt on the pulley, N.</param>
    /// <param name="overhang">Near main bearing to the middle of the belt, m.</param>
    /// <param name="distance">Near main bearing to the outboard bearing, m.</param>
    /// <param name="span">Near main bearing to the far one, m.</param>
    /// <param name="diameter">Diameter of the shaft, m.</param>
    /// <param name="stiffness">Stiffness of cover and bearing, N/m.</param>
    /// <param name="offset">Bore of the cover off the line of the mains, towards the pull, m.</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    [Formula(
        "crank nose on three supports",
        "I = π d^4 / 64; R = (F (a b L / 3 + a^2 (3 b - a) / 6) / (E I) - e) / ((b^2 L / 3 + b^3 / 3) / (E I) + 1 / k); M = F a - R b; Rf = -M / L; Rn = F - R - Rf; φ = (F (a L / 3 + a^2 / 2) - R (b L / 3 + b^2 / 2)) / (E I)",
        "Slender beam of one diameter on two rigid supports and a spring; superposition",
        Provenance = Provenance.Definition,
        Validity = "The mains give no way and turn freely; clearance of the bearings counts with the offset.")]
    public static NoseSupport Outboard(
        [Quantity("pull on the pulley", Dimension.Force, "N", Symbol = "F", Min = 0)] double load,
        [Quantity("overhang", Dimension.Length, "mm", Symbol = "a", Min = 0)] double overhang,
        [Quantity("distance of the outboard bearing", Dimension.Length, "mm", Symbol = "b", Above = 0)] double distance,
        [Quantity("span of the mains", Dimension.Length, "mm", Symbol = "L", Above = 0)] double span,
        [Quantity("shaft diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("stiffness of the cover", Dimension.ForcePerLength, "N/mm", Symbol = "k", Above = 0)] double stiffness,
        [Quantity("offset towards the pull", Dimension.Length, "mm", Symbol = "e")] double offset = 0,
        [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 205e9)
    {
        FormulaDomainException.Unless(distance >= overhang, "distance of the outboard bearing: must lie beyond the belt");
        var (a, b) = (overhang, distance);
        var rigidity = modulus * Math.PI * Math.Pow(diameter, 4) / 64;
        var sag = load * ((a * b * span / 3) + (a * a * ((3 * b) - a) / 6)) / rigidity;
        var give = (b * b * (span + b) / 3 / rigidity) + (1 / stiffness);
        var outboard = (sag - offset) / give;
        var moment = (load * a) - (outboard * b);
        var slope = ((load * ((a * span / 3) + (a * a / 2))) - (outboard * ((b * span / 3) + (b * b / 2)))) / rigidity;
        return new NoseSupport(outboard, load - outboard + (moment / span), -moment / span, moment, slope);
    }
}
