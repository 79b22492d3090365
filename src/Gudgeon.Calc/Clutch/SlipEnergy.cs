using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Clutch;

/// <summary>What happens while a clutch slips until both sides turn together.</summary>
/// <param name="CommonSpeed">Speed of both sides when slip ends, rad/s.</param>
/// <param name="SlipTime">Time until slip ends, s.</param>
/// <param name="Loss">Energy turned into heat, J.</param>
public readonly record struct ClutchSlip(
    [Quantity("common speed", Dimension.RotationalSpeed, "rpm", Symbol = "wc")] double CommonSpeed,
    [Quantity("slip time", Dimension.Time, "s", Symbol = "t")] double SlipTime,
    [Quantity("energy lost in the clutch", Dimension.Energy, "kJ", Symbol = "E")] double Loss);

/// <summary>Heat of one launch.</summary>
/// <param name="Loss">Energy turned into heat, J.</param>
/// <param name="TemperatureRise">Rise of the plates when no heat leaves them, K.</param>
public readonly record struct LaunchHeat(
    [Quantity("energy lost in the clutch", Dimension.Energy, "kJ", Symbol = "E")] double Loss,
    [Quantity("temperature rise of the plates", Dimension.TemperatureDifference, "K", Symbol = "ΔT")] double TemperatureRise);

/// <summary>Energy lost while a clutch slips.</summary>
public static class SlipEnergy
{
    /// <summary>Two inertias brought together by a clutch of constant torque.</summary>
    /// <param name="driving">Moment of inertia of the driving side, kg·m².</param>
    /// <param name="driven">Moment of inertia of the driven side, kg·m².</param>
    /// <param name="speed">Speed of the driving side at the start, rad/s.</param>
    /// <param name="torque">Friction torque of the clutch, N·m.</param>
    /// <param name="drivenSpeed">Speed of the driven side at the start, rad/s.</param>
    /// <param name="engineTorque">Torque on the driving side from outside, N·m; negative when it resists.</param>
    /// <param name="loadTorque">Torque that resists the driven side, N·m.</param>
    [Formula(
        "clutch slip of two inertias",
        "t = (w1 - w2) / ((T - Te) / I1 + (T - Tl) / I2); wc = w1 - (T - Te) t / I1; E = T (w1 - w2) t / 2",
        "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 10; without outside torque E = I1 I2 (w1 - w2)² / (2 (I1 + I2))")]
    public static ClutchSlip TwoInertias(
        [Quantity("inertia of the driving side", Dimension.MomentOfInertia, "kg·m²", Symbol = "I1", Above = 0)] double driving,
        [Quantity("inertia of the driven side", Dimension.MomentOfInertia, "kg·m²", Symbol = "I2", Above = 0)] double driven,
        [Quantity("speed of the driving side", Dimension.RotationalSpeed, "rpm", Symbol = "w1")] double speed,
        [Quantity("clutch torque", Dimension.Torque, "N·m", Symbol = "T", Above = 0)] double torque,
        [Quantity("speed of the driven side", Dimension.RotationalSpeed, "rpm", Symbol = "w2")] double drivenSpeed = 0,
        [Quantity("outside torque on the driving side", Dimension.Torque, "N·m", Symbol = "Te")] double engineTorque = 0,
        [Quantity("load torque on the driven side", Dimension.Torque, "N·m", Symbol = "Tl")] double loadTorque = 0)
    {
        var slip = speed - drivenSpeed;
        FormulaDomainException.Unless(slip >= 0, "speed of the driving side: must not be below the speed of the driven side");
        var closing = ((torque - engineTorque) / driving) + ((torque - loadTorque) / driven);
        FormulaDomainException.Unless(closing > 0, "clutch torque: too small to bring both sides together against the outside torques");
        var time = slip / closing;
        return new ClutchSlip(speed - ((torque - engineTorque) * time / driving), time, torque * slip * time / 2);
    }

    /// <summary>Energy lost when the driving side is held at its speed while it brings an inertia up from rest, J.</summary>
    /// <param name="inertia">Moment of inertia of the driven side, kg·m².</param>
    /// <param name="speed">Speed of the driving side, rad/s.</param>
    [Formula(
        "clutch slip energy at constant driver speed",
        "E = I w^2 / 2",
        "Jindal, Machine Design, 1st ed., ch. 22: as much is lost as the driven side gains")]
    [return: Quantity("energy lost in the clutch", Dimension.Energy, "kJ", Symbol = "E")]
    public static double ConstantDriver(
        [Quantity("inertia of the driven side", Dimension.MomentOfInertia, "kg·m²", Symbol = "I", Above = 0)] double inertia,
        [Quantity("driver speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed) =>
        inertia * speed * speed / 2;

    /// <summary>Heat of a launch with the engine held at constant speed until slip ends.</summary>
    /// <param name="mass">Mass of machine and rider with the share of the rotating parts, kg.</param>
    /// <param name="speed">Road speed at which slip ends, m/s.</param>
    /// <param name="plates">Mass of the plates that take the heat, kg.</param>
    /// <param name="specificHeat">Specific heat of the plates, J/(kg·K).</param>
    [Formula(
        "launch heat of a clutch",
        "E = m v^2 / 2; ΔT = E / (mp c)",
        "Energy balance: at constant driver speed as much is lost as the machine gains, whatever the slip time",
        Provenance = Provenance.Definition,
        Validity = "No road load; all heat stays in the plates.")]
    public static LaunchHeat Launch(
        [Quantity("mass of machine and rider", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("speed at the end of slip", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double speed,
        [Quantity("mass of the plates", Dimension.Mass, "kg", Symbol = "mp", Above = 0)] double plates,
        [Quantity("specific heat of the plates", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "c", Above = 0)] double specificHeat = 480)
    {
        var energy = mass * speed * speed / 2;
        return new LaunchHeat(energy, energy / (plates * specificHeat));
    }
}
