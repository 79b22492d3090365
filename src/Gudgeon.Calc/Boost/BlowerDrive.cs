using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Boost;

/// <summary>Blower speed from crank speed.</summary>
public static class BlowerDrive
{
    /// <summary>Speed of a belt-driven blower, rad/s.</summary>
    /// <param name="crankSpeed">Crank speed, rad/s.</param>
    /// <param name="crankPulley">Effective diameter of the crank pulley, m.</param>
    /// <param name="blowerPulley">Effective diameter of the blower pulley, m.</param>
    /// <param name="stepUp">Ratio of the blower's own gears.</param>
    /// <param name="slip">Belt slip, share of the speed lost.</param>
    [Formula("blower speed", "N = ω (Dc / Db) i (1 - s)", "kinematics", Provenance = Provenance.Definition)]
    [return: Quantity("blower speed", Dimension.RotationalSpeed, "rpm", Symbol = "N")]
    public static double Speed(
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double crankSpeed,
        [Quantity("crank pulley", Dimension.Length, "mm", Symbol = "Dc", Above = 0)] double crankPulley,
        [Quantity("blower pulley", Dimension.Length, "mm", Symbol = "Db", Above = 0)] double blowerPulley,
        [Quantity("step-up ratio", Dimension.Number, Symbol = "i", Above = 0)] double stepUp = 1,
        [Quantity("belt slip", Dimension.Number, "%", Symbol = "s", Min = 0, Below = 1)] double slip = 0) =>
        crankSpeed * crankPulley / blowerPulley * stepUp * (1 - slip);

    /// <summary>Blower pulley that gives a wanted blower speed, m.</summary>
    /// <param name="blowerSpeed">Wanted blower speed, rad/s.</param>
    /// <param name="crankSpeed">Crank speed, rad/s.</param>
    /// <param name="crankPulley">Effective diameter of the crank pulley, m.</param>
    /// <param name="stepUp">Ratio of the blower's own gears.</param>
    /// <param name="slip">Belt slip.</param>
    [Formula("blower pulley for a speed", "Db = Dc ω i (1 - s) / N", "kinematics", Provenance = Provenance.Definition)]
    [return: Quantity("blower pulley", Dimension.Length, "mm", Symbol = "Db")]
    public static double Pulley(
        [Quantity("blower speed", Dimension.RotationalSpeed, "rpm", Symbol = "N", Above = 0)] double blowerSpeed,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Above = 0)] double crankSpeed,
        [Quantity("crank pulley", Dimension.Length, "mm", Symbol = "Dc", Above = 0)] double crankPulley,
        [Quantity("step-up ratio", Dimension.Number, Symbol = "i", Above = 0)] double stepUp = 1,
        [Quantity("belt slip", Dimension.Number, "%", Symbol = "s", Min = 0, Below = 1)] double slip = 0) =>
        crankPulley * crankSpeed * stepUp * (1 - slip) / blowerSpeed;
}
