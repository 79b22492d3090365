using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Shafts;

/// <summary>Stresses of a round shaft.</summary>
/// <param name="Bending">Bending stress, Pa.</param>
/// <param name="Torsion">Shear stress, Pa.</param>
/// <param name="Combined">Von Mises stress, Pa.</param>
public readonly record struct RoundShaftStress(
    [Quantity("bending stress", Dimension.Pressure, "MPa", Symbol = "σ")] double Bending,
    [Quantity("torsional stress", Dimension.Pressure, "MPa", Symbol = "τ")] double Torsion,
    [Quantity("von Mises stress", Dimension.Pressure, "MPa", Symbol = "σv")] double Combined);

/// <summary>A pulley hung on the end of a shaft.</summary>
/// <param name="HubLoad">Load on the pulley, N.</param>
/// <param name="Moment">Bending moment at the near bearing, N·m.</param>
/// <param name="Torque">Torque, N·m.</param>
/// <param name="NearBearing">Load on the near bearing, N.</param>
/// <param name="FarBearing">Load on the far bearing, the other way, N.</param>
/// <param name="Bending">Bending stress at the near bearing, Pa.</param>
/// <param name="Torsion">Shear stress, Pa.</param>
/// <param name="Combined">Von Mises stress, Pa.</param>
public readonly record struct OverhungPulley(
    [Quantity("pulley load", Dimension.Force, "N", Symbol = "F")] double HubLoad,
    [Quantity("bending moment", Dimension.Torque, "N·m", Symbol = "M")] double Moment,
    [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T")] double Torque,
    [Quantity("near bearing load", Dimension.Force, "N", Symbol = "Rn")] double NearBearing,
    [Quantity("far bearing load", Dimension.Force, "N", Symbol = "Rf")] double FarBearing,
    [Quantity("bending stress", Dimension.Pressure, "MPa", Symbol = "σ")] double Bending,
    [Quantity("torsional stress", Dimension.Pressure, "MPa", Symbol = "τ")] double Torsion,
    [Quantity("von Mises stress", Dimension.Pressure, "MPa", Symbol = "σv")] double Combined);

/// <summary>Static stresses of round shafts.</summary>
public static class ShaftStress
{
    /// <summary>Stresses of a solid round shaft under bending and torque.</summary>
    /// <param name="diameter">Diameter, m.</param>
    /// <param name="moment">Bending moment, N·m.</param>
    /// <param name="torque">Torque, N·m.</param>
    [Formula("shaft stress", "σ = 32 M / (π d^3); τ = 16 T / (π d^3); σv = sqrt(σ^2 + 3 τ^2)", "Bending and torsion of round bars", Provenance = Provenance.Definition)]
    public static RoundShaftStress Of(
        [Quantity("diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("bending moment", Dimension.Torque, "N·m", Symbol = "M", Min = 0)] double moment,
        [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T", Min = 0)] double torque)
    {
        var section = Math.PI * diameter * diameter * diameter / 32;
        var (bending, torsion) = (moment / section, torque / (2 * section));
        return new RoundShaftStress(bending, torsion, Math.Sqrt((bending * bending) + (3 * torsion * torsion)));
    }

    /// <summary>Loads and stresses of a crank nose or shaft end that carries a belt pulley outside its bearings.</summary>
    /// <param name="tight">Tension of the tight side, N.</param>
    /// <param name="slack">Tension of the slack side, N.</param>
    /// <param name="wrap">Angle of wrap, rad.</param>
    /// <param name="pulleyRadius">Radius of the pulley, m.</param>
    /// <param name="overhang">Middle of the belt to the near bearing, m.</param>
    /// <param name="span">Distance of the bearings, m.</param>
    /// <param name="diameter">Shaft diameter at the near bearing, m.</param>
    [Formula(
        "overhung pulley",
        "F = sqrt(T1^2 + T2^2 - 2 T1 T2 cos(θ)); M = F a; T = (T1 - T2) r; Rn = F (1 + a / L); Rf = F a / L",
        "Statics of an overhung shaft",
        Provenance = Provenance.Definition,
        Validity = "Nominal stress, no notch; engine torque through the same section comes on top.")]
    public static OverhungPulley Pulley(
        [Quantity("tight side tension", Dimension.Force, "N", Symbol = "T1", Min = 0)] double tight,
        [Quantity("slack side tension", Dimension.Force, "N", Symbol = "T2", Min = 0)] double slack,
        [Quantity("angle of wrap", Dimension.Angle, "°", Symbol = "θ", Min = 0)] double wrap,
        [Quantity("pulley radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double pulleyRadius,
        [Quantity("overhang", Dimension.Length, "mm", Symbol = "a", Min = 0)] double overhang,
        [Quantity("bearing span", Dimension.Length, "mm", Symbol = "L", Above = 0)] double span,
        [Quantity("shaft diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter)
    {
        FormulaDomainException.Unless(tight >= slack, "tight side tension: must not be below the slack side");
        var load = Belts.BeltDrive.HubLoad(tight, slack, wrap);
        var (moment, torque) = (load * overhang, (tight - slack) * pulleyRadius);
        var stress = Of(diameter, moment, torque);
        return new OverhungPulley(load, moment, torque, load * (1 + (overhang / span)), load * overhang / span, stress.Bending, stress.Torsion, stress.Combined);
    }

    /// <summary>Torque at which a shaft yields at its notch, N·m.</summary>
    /// <param name="diameter">Outside diameter, m.</param>
    /// <param name="bore">Bore, m; 0 when solid.</param>
    /// <param name="yield">Yield strength, Pa.</param>
    /// <param name="notch">Stress concentration in torsion; 1 without a notch.</param>
    [Formula(
        "torque at which a shaft yields",
        "T = π (D^4 - d^4) Sy / (16 sqrt(3) K D)",
        "Torsion of a round tube, shear yield by von Mises",
        Provenance = Provenance.Definition,
        Validity = "With K the first grain at the notch yields, which hits that come back make a crack of; the section as a whole bears about K times as much once.")]
    [return: Quantity("torque", Dimension.Torque, "N·m", Symbol = "T")]
    public static double YieldTorque(
        [Quantity("diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bore", Dimension.Length, "mm", Symbol = "d", Min = 0)] double bore,
        [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Sy", Above = 0)] double yield,
        [Quantity("stress concentration in torsion", Dimension.Number, Symbol = "K", Min = 1)] double notch = 1)
    {
        FormulaDomainException.Unless(bore < diameter, "bore: must be less than the diameter");
        var section = Math.PI * (Math.Pow(diameter, 4) - Math.Pow(bore, 4)) / (16 * diameter);
        return section * yield / (Math.Sqrt(3) * notch);
    }

    /// <summary>Shear stress allowed in a shaft with a keyway, Pa.</summary>
    /// <param name="allowable">Shear stress allowed without keyway, Pa.</param>
    [Formula("shear stress allowed with a keyway", "τk = 0.75 τ", "ASME transmission shafting code as given in Sadhu Singh, Machine Design, Ex. 6.1")]
    [return: Quantity("allowed shear stress with keyway", Dimension.Pressure, "MPa", Symbol = "τk")]
    public static double WithKeyway([Quantity("allowed shear stress", Dimension.Pressure, "MPa", Symbol = "τ", Above = 0)] double allowable) => 0.75 * allowable;

    /// <summary>Strength of a shaft with a keyway over that of a plain one.</summary>
    /// <param name="diameter">Shaft diameter, m.</param>
    /// <param name="width">Keyway width, m.</param>
    /// <param name="depth">Keyway depth in the shaft, m.</param>
    [Formula("keyway strength factor", "e = 1 - 0.2 w / d - 1.1 h / d", "H. F. Moore, quoted in Khurmi & Gupta, A Textbook of Machine Design", Provenance = Provenance.FromMemory)]
    [return: Quantity("strength factor", Dimension.Number, Symbol = "e")]
    public static double KeywayFactor(
        [Quantity("shaft diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("keyway width", Dimension.Length, "mm", Symbol = "w", Min = 0)] double width,
        [Quantity("keyway depth", Dimension.Length, "mm", Symbol = "h", Min = 0)] double depth)
    {
        FormulaDomainException.Unless(width < diameter && depth < diameter / 2, "keyway width: too large for the shaft");
        return 1 - (0.2 * width / diameter) - (1.1 * depth / diameter);
    }
}
