using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Clutch;

/// <summary>Clutches that take their clamp force from rotation.</summary>
public static class CentrifugalClutch
{
    /// <summary>Torque of a centrifugal shoe clutch, N·m; zero below the engaging speed.</summary>
    /// <param name="shoes">Number of shoes.</param>
    /// <param name="mass">Mass of one shoe, kg.</param>
    /// <param name="radius">Radius of the centre of mass of a shoe, m.</param>
    /// <param name="speed">Speed, rad/s.</param>
    /// <param name="springForce">Force holding one shoe back, N.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="drum">Inner diameter of the drum, m.</param>
    [Formula(
        "centrifugal clutch torque",
        "T = n μ (m r w^2 - S) D / 2",
        "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 10")]
    [return: Quantity("slip torque", Dimension.Torque, "N·m", Symbol = "T")]
    public static double ShoeTorque(
        [Quantity("shoes", Dimension.Number, Symbol = "n", Min = 1)] int shoes,
        [Quantity("mass of one shoe", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("radius of the shoe's centre of mass", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("spring force on one shoe", Dimension.Force, "N", Symbol = "S", Min = 0)] double springForce,
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Above = 0, Max = 1.5)] double friction,
        [Quantity("drum diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double drum) =>
        shoes * friction * Math.Max(0, (mass * radius * speed * speed) - springForce) * drum / 2;

    /// <summary>Speed at which a centrifugal shoe begins to touch, rad/s.</summary>
    /// <param name="mass">Mass of one shoe, kg.</param>
    /// <param name="radius">Radius of the centre of mass of a shoe, m.</param>
    /// <param name="springForce">Force holding one shoe back, N.</param>
    [Formula("centrifugal clutch engaging speed", "w = sqrt(S / (m r))", "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 10")]
    [return: Quantity("engaging speed", Dimension.RotationalSpeed, "rpm", Symbol = "w")]
    public static double EngagingSpeed(
        [Quantity("mass of one shoe", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("radius of the shoe's centre of mass", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("spring force on one shoe", Dimension.Force, "N", Symbol = "S", Min = 0)] double springForce) =>
        Math.Sqrt(springForce / (mass * radius));

    /// <summary>Extra clamp force of lock-up arms that swing out with speed, N.</summary>
    /// <param name="arms">Number of arms.</param>
    /// <param name="mass">Weight mass on one arm, kg.</param>
    /// <param name="radius">Radius of the weight from the shaft axis, m.</param>
    /// <param name="speed">Clutch speed, rad/s.</param>
    /// <param name="lever">Distance from the arm's pivot to the weight along the shaft over pivot to pressure point across it.</param>
    [Formula(
        "lock-up clutch clamp force",
        "W = n m r w^2 i",
        "Centrifugal force through a lever",
        Provenance = Provenance.Definition,
        Caution = "Grows with the square of the speed: check the pressure plate and the burst strength of the arms at the highest speed the clutch can see.")]
    [return: Quantity("clamp force from the arms", Dimension.Force, "N", Symbol = "W")]
    public static double LockUpForce(
        [Quantity("arms", Dimension.Number, Symbol = "n", Min = 1)] int arms,
        [Quantity("weight on one arm", Dimension.Mass, "g", Symbol = "m", Min = 0)] double mass,
        [Quantity("radius of the weight", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius,
        [Quantity("clutch speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("lever ratio", Dimension.Number, Symbol = "i", Above = 0, Max = 10)] double lever) =>
        arms * mass * radius * speed * speed * lever;
}
