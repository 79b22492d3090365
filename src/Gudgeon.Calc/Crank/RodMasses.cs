using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>A rod as two masses at its centres.</summary>
/// <param name="SmallEnd">Mass that goes with the piston, kg.</param>
/// <param name="BigEnd">Mass that goes with the crank pin, kg.</param>
public readonly record struct RodSplit(
    [Quantity("small-end mass", Dimension.Mass, "g", Symbol = "ms")] double SmallEnd,
    [Quantity("big-end mass", Dimension.Mass, "g", Symbol = "mb")] double BigEnd);

/// <summary>A rod as a dynamically equivalent pair of masses.</summary>
/// <param name="SecondDistance">Distance of the second mass from the centre of mass, m.</param>
/// <param name="PinMass">Mass at the gudgeon pin, kg.</param>
/// <param name="SecondMass">Second mass, kg.</param>
/// <param name="CorrectionCouple">Couple to add when the second mass is put at the big end instead, N·m.</param>
public readonly record struct EquivalentRod(
    [Quantity("distance of the second mass from the centre of mass", Dimension.Length, "mm", Symbol = "l2")] double SecondDistance,
    [Quantity("mass at the gudgeon pin", Dimension.Mass, "kg", Symbol = "m1")] double PinMass,
    [Quantity("second mass", Dimension.Mass, "kg", Symbol = "m2")] double SecondMass,
    [Quantity("correction couple", Dimension.Torque, "N·m", Symbol = "T")] double CorrectionCouple);

/// <summary>Masses that stand for the connecting rod.</summary>
public static class RodMasses
{
    /// <summary>Static split of a rod by its centre of mass.</summary>
    /// <param name="mass">Mass of the rod with bolts and shells, kg.</param>
    /// <param name="rod">Length between centres, m.</param>
    /// <param name="fromBigEnd">Centre of mass from the big-end centre, m.</param>
    [Formula("rod mass split", "ms = m b / l; mb = m - ms", "Statics of a beam on two supports", Provenance = Provenance.Definition)]
    public static RodSplit Split(
        [Quantity("rod mass", Dimension.Mass, "g", Symbol = "m", Above = 0)] double mass,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0)] double rod,
        [Quantity("centre of mass from the big end", Dimension.Length, "mm", Symbol = "b", Min = 0)] double fromBigEnd)
    {
        FormulaDomainException.Unless(fromBigEnd <= rod, "centre of mass from the big end: must lie between the centres");
        var small = mass * fromBigEnd / rod;
        return new RodSplit(small, mass - small);
    }

    /// <summary>Two masses with the mass, centre of mass and moment of inertia of the rod, one of them at the gudgeon pin.</summary>
    /// <param name="mass">Mass of the rod, kg.</param>
    /// <param name="rod">Length between centres, m.</param>
    /// <param name="fromSmallEnd">Centre of mass from the gudgeon pin, m.</param>
    /// <param name="gyration">Radius of gyration about the centre of mass, m.</param>
    /// <param name="acceleration">Angular acceleration of the rod, rad/s².</param>
    [Formula(
        "dynamically equivalent rod",
        "l2 = k^2 / l1; m1 = m l2 / (l1 + l2); m2 = m - m1; T = m (l1 (l - l1) - k^2) α",
        "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 15, Ex. 15.18")]
    public static EquivalentRod Equivalent(
        [Quantity("rod mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0)] double rod,
        [Quantity("centre of mass from the gudgeon pin", Dimension.Length, "mm", Symbol = "l1", Above = 0)] double fromSmallEnd,
        [Quantity("radius of gyration", Dimension.Length, "mm", Symbol = "k", Above = 0)] double gyration,
        [Quantity("angular acceleration of the rod", Dimension.RotationalAcceleration, "rad/s²", Symbol = "α")] double acceleration = 0)
    {
        FormulaDomainException.Unless(fromSmallEnd < rod, "centre of mass from the gudgeon pin: must lie between the centres");
        var second = gyration * gyration / fromSmallEnd;
        var pin = mass * second / (fromSmallEnd + second);
        return new EquivalentRod(second, pin, mass - pin, mass * ((fromSmallEnd * (rod - fromSmallEnd)) - (gyration * gyration)) * acceleration);
    }

    /// <summary>Radius of gyration of a rod about its centre of mass from swinging it as a pendulum on the small end, m.</summary>
    /// <param name="period">Time of one full swing, s.</param>
    /// <param name="fromPivot">Centre of mass from the pivot edge, m.</param>
    /// <param name="gravity">Gravity, m/s².</param>
    [Formula(
        "radius of gyration by swinging",
        "k = sqrt(g a (t / (2 π))^2 - a^2)",
        "Compound pendulum; Khurmi & Gupta, Theory of Machines, 14th ed., ch. 4")]
    [return: Quantity("radius of gyration", Dimension.Length, "mm", Symbol = "k")]
    public static double GyrationBySwinging(
        [Quantity("period of a full swing", Dimension.Time, "s", Symbol = "t", Above = 0)] double period,
        [Quantity("centre of mass from the pivot", Dimension.Length, "mm", Symbol = "a", Above = 0)] double fromPivot,
        [Quantity("gravity", Dimension.Acceleration, "m/s²", Symbol = "g", Above = 0)] double gravity = 9.80665)
    {
        var turn = period / Math.Tau;
        var square = (gravity * fromPivot * turn * turn) - (fromPivot * fromPivot);
        FormulaDomainException.Unless(square >= 0, "period of a full swing: shorter than a point mass at that distance would swing");
        return Math.Sqrt(square);
    }
}
