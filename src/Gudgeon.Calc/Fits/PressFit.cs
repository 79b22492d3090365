using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Pressure in a press fit and the stresses that it makes.</summary>
/// <param name="Pressure">Pressure in the joint, Pa.</param>
/// <param name="HubHoop">Hoop stress at the hub's bore, Pa.</param>
/// <param name="HubRadial">Radial stress at the hub's bore, Pa.</param>
/// <param name="HubMises">Equivalent stress at the hub's bore, von Mises, Pa.</param>
/// <param name="HubTresca">Equivalent stress at the hub's bore, Tresca, Pa.</param>
/// <param name="ShaftHoop">Hoop stress at the shaft's bore, or in a solid shaft, Pa.</param>
public readonly record struct PressFitStress(
    [Quantity("joint pressure", Dimension.Pressure, "MPa", Symbol = "p")] double Pressure,
    [Quantity("hub hoop stress", Dimension.Pressure, "MPa", Symbol = "σt")] double HubHoop,
    [Quantity("hub radial stress", Dimension.Pressure, "MPa", Symbol = "σr")] double HubRadial,
    [Quantity("hub von Mises stress", Dimension.Pressure, "MPa", Symbol = "σv")] double HubMises,
    [Quantity("hub Tresca stress", Dimension.Pressure, "MPa", Symbol = "σT")] double HubTresca,
    [Quantity("shaft hoop stress", Dimension.Pressure, "MPa", Symbol = "σi")] double ShaftHoop);

/// <summary>What a press fit holds by friction.</summary>
/// <param name="AxialForce">Push-out force, N.</param>
/// <param name="Torque">Slip torque, N·m.</param>
public readonly record struct PressFitGrip(
    [Quantity("axial grip", Dimension.Force, "kN", Symbol = "F")] double AxialForce,
    [Quantity("slip torque", Dimension.Torque, "N·m", Symbol = "T")] double Torque);

/// <summary>Cylindrical press and shrink fits: Lamé's thick rings, plane stress, ends free, elastic.</summary>
public static class PressFit
{
    /// <summary>Joint pressure and stresses of a press fit.</summary>
    /// <param name="interference">Diametral interference, m.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="hubDiameter">Outer diameter of the hub, m.</param>
    /// <param name="hubModulus">Young's modulus of the hub, Pa.</param>
    /// <param name="shaftModulus">Young's modulus of the shaft, Pa.</param>
    /// <param name="shaftBore">Bore of a hollow shaft, m; 0 when solid.</param>
    /// <param name="hubPoisson">Poisson's ratio of the hub.</param>
    /// <param name="shaftPoisson">Poisson's ratio of the shaft.</param>
    [Formula("press fit", "p = U / (d (((do^2 + d^2) / (do^2 - d^2) + νo) / Eo + ((d^2 + di^2) / (d^2 - di^2) - νi) / Ei)); σt = p (do^2 + d^2) / (do^2 - d^2); σr = -p; σv = sqrt(σt^2 + p^2 + σt p); σT = σt + p; σi = -2 p d^2 / (d^2 - di^2)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 3-49 to 3-56 (Lamé)", Validity = "elastic, both parts of full length; in a solid shaft the hoop stress is -p", Caution = "Hot and cold parts burn: gloves, visor, and no second try once the parts have touched.")]
    public static PressFitStress Stress(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0, Help = "on the diameter")] double interference,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("hub outer diameter", Dimension.Length, "mm", Symbol = "do", Above = 0)] double hubDiameter,
        [Quantity("elastic modulus of the hub", Dimension.Pressure, "GPa", Symbol = "Eo", Above = 0)] double hubModulus,
        [Quantity("elastic modulus of the shaft", Dimension.Pressure, "GPa", Symbol = "Ei", Above = 0)] double shaftModulus,
        [Quantity("shaft bore", Dimension.Length, "mm", Symbol = "di", Min = 0)] double shaftBore = 0,
        [Quantity("Poisson's ratio of the hub", Dimension.Number, Symbol = "νo", Min = 0, Max = 0.5)] double hubPoisson = 0.3,
        [Quantity("Poisson's ratio of the shaft", Dimension.Number, Symbol = "νi", Min = 0, Max = 0.5)] double shaftPoisson = 0.3)
    {
        FormulaDomainException.Unless(hubDiameter > diameter, "hub outer diameter: must be greater than the joint diameter");
        FormulaDomainException.Unless(shaftBore < diameter, "shaft bore: must be less than the joint diameter");
        var joint = diameter * diameter;
        var outer = hubDiameter * hubDiameter;
        var inner = shaftBore * shaftBore;
        var hubRatio = (outer + joint) / (outer - joint);
        var give = ((hubRatio + hubPoisson) / hubModulus) + ((((joint + inner) / (joint - inner)) - shaftPoisson) / shaftModulus);
        var pressure = interference / (diameter * give);
        var hoop = pressure * hubRatio;
        return new PressFitStress(
            pressure,
            hoop,
            -pressure,
            Math.Sqrt((hoop * hoop) + (pressure * pressure) + (hoop * pressure)),
            hoop + pressure,
            shaftBore > 0 ? -2 * pressure * joint / (joint - inner) : -pressure);
    }

    /// <summary>Push-out force and slip torque of a press fit.</summary>
    /// <param name="pressure">Joint pressure, Pa.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="length">Length of the joint, m.</param>
    /// <param name="friction">Friction in the joint.</param>
    [Formula("press fit grip", "F = µ p π d L; T = F d / 2", "DIN 7190-1; friction on a cylinder", Provenance = Provenance.FromMemory)]
    public static PressFitGrip Grip(
        [Quantity("joint pressure", Dimension.Pressure, "MPa", Symbol = "p", Min = 0)] double pressure,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("joint length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("friction", Dimension.Number, Symbol = "µ", Min = 0, Max = 1)] double friction = 0.12)
    {
        var force = friction * pressure * Math.PI * diameter * length;
        return new PressFitGrip(force, force * diameter / 2);
    }

    /// <summary>Torque left in a press fit that also carries an axial force, N·m.</summary>
    /// <param name="grip">Axial grip, N.</param>
    /// <param name="axialForce">Axial force carried, N.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    [Formula("press fit torque under axial load", "T = sqrt(F^2 - Fa^2) d / 2", "vector sum of friction in the joint", Provenance = Provenance.Definition)]
    [return: Quantity("slip torque", Dimension.Torque, "N·m", Symbol = "T")]
    public static double TorqueUnderAxial(
        [Quantity("axial grip", Dimension.Force, "kN", Symbol = "F", Min = 0)] double grip,
        [Quantity("axial force", Dimension.Force, "kN", Symbol = "Fa", Min = 0)] double axialForce,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter)
    {
        FormulaDomainException.Unless(axialForce <= grip, "axial force: greater than the axial grip, the joint slips");
        return Math.Sqrt((grip - axialForce) * (grip + axialForce)) * diameter / 2;
    }

    /// <summary>Interference left after the peaks of the rough faces are flattened, m.</summary>
    /// <param name="interference">Measured interference, m.</param>
    /// <param name="hubRoughness">Rz of the hub's bore, m.</param>
    /// <param name="shaftRoughness">Rz of the shaft, m.</param>
    [Formula("interference after smoothing", "Uw = U - 0.8 (RA + RI)", "DIN 7190-1, effective interference", Provenance = Provenance.FromMemory, Validity = "pressed fits; RA and RI are Rz of bore and shaft; older editions differ")]
    [return: Quantity("effective interference", Dimension.Length, "mm", Symbol = "Uw")]
    public static double Smoothed(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0)] double interference,
        [Quantity("Rz of the bore", Dimension.Length, "µm", Symbol = "RA", Min = 0)] double hubRoughness,
        [Quantity("Rz of the shaft", Dimension.Length, "µm", Symbol = "RI", Min = 0)] double shaftRoughness) =>
        interference - (0.8 * (hubRoughness + shaftRoughness));
}
