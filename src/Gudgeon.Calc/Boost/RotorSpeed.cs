using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Boost;

/// <summary>Speed of a blower's rotor from the ratio of its drive.</summary>
public static class RotorSpeed
{
    /// <summary>Rotor or impeller speed, rad/s.</summary>
    /// <param name="crankSpeed">Crank speed, rad/s.</param>
    /// <param name="driveRatio">Driven pulley or sprocket speed over crank speed, without slip.</param>
    /// <param name="stepUp">Internal gear step-up from the driven shaft to the rotor; 1 when there is none.</param>
    /// <param name="slip">Share of speed lost to belt slip.</param>
    [Formula("blower rotor speed", "n2 = n1 i k (1 - s)", "kinematics", Provenance = Provenance.Definition)]
    [return: Quantity("rotor speed", Dimension.RotationalSpeed, "rpm", Symbol = "n2")]
    public static double FromRatio(
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "n1", Min = 0)] double crankSpeed,
        [Quantity("drive ratio", Dimension.Number, Symbol = "i", Above = 0, Max = 20)] double driveRatio,
        [Quantity("step-up", Dimension.Number, Symbol = "k", Above = 0, Max = 50)] double stepUp = 1,
        [Quantity("belt slip", Dimension.Number, "%", Symbol = "s", Min = 0, Below = 1)] double slip = 0) =>
        crankSpeed * driveRatio * stepUp * (1 - slip);
}
