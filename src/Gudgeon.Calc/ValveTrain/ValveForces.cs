using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Gas force that tries to open a shut valve.</summary>
/// <param name="Force">Opening force, N; negative pushes the valve shut.</param>
/// <param name="Margin">Seat load left, N; negative when the valve is blown open.</param>
/// <param name="HeldPressure">Pressure difference that the seat load holds, Pa.</param>
public readonly record struct ValveGasForce(
    [Quantity("opening gas force", Dimension.Force, "N", Symbol = "F")] double Force,
    [Quantity("seat load left", Dimension.Force, "N", Symbol = "M")] double Margin,
    [Quantity("pressure difference held", Dimension.Pressure, "bar", Symbol = "ph")] double HeldPressure);

/// <summary>Gas forces on valves and moving masses of the train.</summary>
public static class ValveForces
{
    /// <summary>Gas force on a shut valve against its seat load: boost behind an inlet valve, back pressure behind an exhaust valve.</summary>
    /// <param name="headDiameter">Diameter on which the pressure acts, m.</param>
    /// <param name="pressureDifference">Port pressure less cylinder pressure, Pa.</param>
    /// <param name="seatLoad">Spring load at the seat, N.</param>
    [Formula("gas force on a valve", "F = π / 4 D^2 Δp; M = F0 - F; ph = F0 / (π / 4 D^2)", "pressure times area", Provenance = Provenance.Definition)]
    public static ValveGasForce GasForce(
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter,
        [Quantity("port pressure less cylinder pressure", Dimension.Pressure, "bar", Symbol = "Δp")] double pressureDifference,
        [Quantity("seat load", Dimension.Force, "N", Symbol = "F0", Min = 0)] double seatLoad)
    {
        var area = Math.PI / 4 * headDiameter * headDiameter;
        return new ValveGasForce(area * pressureDifference, seatLoad - (area * pressureDifference), seatLoad / area);
    }

    /// <summary>Effective mass of a direct-acting train at the valve, kg.</summary>
    /// <param name="valve">Valve, kg.</param>
    /// <param name="retainer">Retainer and keepers, kg.</param>
    /// <param name="spring">Spring, or both springs, kg.</param>
    /// <param name="follower">Bucket or finger's share and shim, kg.</param>
    [Formula("effective valve mass", "m = mv + mr + ms / 3 + mf", "kinetic energy of a spring held at one end is that of a third of its mass at the other (Rayleigh)", Provenance = Provenance.Definition)]
    [return: Quantity("effective mass", Dimension.Mass, "g", Symbol = "m")]
    public static double EffectiveMass(
        [Quantity("valve mass", Dimension.Mass, "g", Symbol = "mv", Above = 0)] double valve,
        [Quantity("retainer and keepers mass", Dimension.Mass, "g", Symbol = "mr", Min = 0)] double retainer,
        [Quantity("spring mass", Dimension.Mass, "g", Symbol = "ms", Min = 0)] double spring,
        [Quantity("follower mass", Dimension.Mass, "g", Symbol = "mf", Min = 0)] double follower = 0) =>
        valve + retainer + (spring / 3) + follower;

    /// <summary>Effective mass at the valve of a train with a rocker, kg.</summary>
    /// <param name="valveSide">Valve, retainer, keepers and a third of the spring, kg.</param>
    /// <param name="rockerInertia">Moment of inertia of the rocker about its pivot, kg·m².</param>
    /// <param name="valveArm">Arm of the rocker to the valve, m.</param>
    /// <param name="camSide">Tappet and pushrod, kg.</param>
    /// <param name="ratio">Rocker ratio: valve lift over cam lift.</param>
    [Formula("effective valve mass with rocker", "m = mv + J / lv^2 + mc / q^2", "equal kinetic energy", Provenance = Provenance.Definition)]
    [return: Quantity("effective mass", Dimension.Mass, "g", Symbol = "m")]
    public static double EffectiveMassWithRocker(
        [Quantity("mass on the valve side", Dimension.Mass, "g", Symbol = "mv", Above = 0)] double valveSide,
        [Quantity("rocker inertia", Dimension.MomentOfInertia, "kg·mm²", Symbol = "J", Min = 0)] double rockerInertia,
        [Quantity("rocker arm to the valve", Dimension.Length, "mm", Symbol = "lv", Above = 0)] double valveArm,
        [Quantity("mass on the cam side", Dimension.Mass, "g", Symbol = "mc", Min = 0)] double camSide = 0,
        [Quantity("rocker ratio", Dimension.Number, Symbol = "q", Above = 0)] double ratio = 1) =>
        valveSide + (rockerInertia / (valveArm * valveArm)) + (camSide / (ratio * ratio));

    /// <summary>Valve lift from cam lift, rocker ratio and lash, m; zero until the lash is taken up.</summary>
    /// <param name="camLift">Cam lift, m.</param>
    /// <param name="ratio">Rocker ratio.</param>
    /// <param name="lash">Lash at the valve, m.</param>
    [Formula("valve lift from cam lift", "h = q hc - c", "kinematics", Provenance = Provenance.Definition, Validity = "zero until the lash is taken up")]
    [return: Quantity("valve lift", Dimension.Length, "mm", Symbol = "h")]
    public static double Lift(
        [Quantity("cam lift", Dimension.Length, "mm", Symbol = "hc", Min = 0)] double camLift,
        [Quantity("rocker ratio", Dimension.Number, Symbol = "q", Above = 0)] double ratio = 1,
        [Quantity("lash", Dimension.Length, "mm", Symbol = "c", Min = 0)] double lash = 0) =>
        Math.Max(0, (ratio * camLift) - lash);
}
