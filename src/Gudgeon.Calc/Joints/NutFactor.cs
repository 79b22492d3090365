using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Surface of a bolt as it goes in.</summary>
public enum BoltFinish
{
    /// <summary>Black, dry.</summary>
    Black,

    /// <summary>Zinc-plated.</summary>
    Zinc,

    /// <summary>Lubricated.</summary>
    Lubricated,

    /// <summary>Cadmium-plated.</summary>
    Cadmium,

    /// <summary>With anti-seize compound.</summary>
    AntiSeize,
}

/// <summary>The one-number way from torque to preload: K, the nut factor.</summary>
public static class NutFactor
{
    /// <summary>Nut factor by finish.</summary>
    /// <param name="finish">Surface of the bolt.</param>
    [Formula("nut factor guide", "K", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., table 8-15", Caution = "A guide for want of a test of the bolts and the lubricant in hand.")]
    [return: Quantity("nut factor", Dimension.Number, Symbol = "K")]
    public static double Guide(
        [Quantity("finish", Dimension.Number)] BoltFinish finish) => finish switch
        {
            BoltFinish.Black => 0.30,
            BoltFinish.Zinc => 0.20,
            BoltFinish.Lubricated => 0.18,
            BoltFinish.Cadmium => 0.16,
            _ => 0.12,
        };

    /// <summary>Torque from a preload and a nut factor, N·m.</summary>
    /// <param name="preload">Bolt force, N.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="nutFactor">Nut factor.</param>
    [Formula("torque from nut factor", "T = K F d", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 8-27")]
    [return: Quantity("tightening torque", Dimension.Torque, "N·m", Symbol = "T")]
    public static double Torque(
        [Quantity("preload", Dimension.Force, "kN", Symbol = "F", Min = 0)] double preload,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("nut factor", Dimension.Number, Symbol = "K", Above = 0)] double nutFactor = 0.2) =>
        nutFactor * preload * diameter;

    /// <summary>Preload from a torque and a nut factor, N.</summary>
    /// <param name="torque">Tightening torque, N·m.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="nutFactor">Nut factor.</param>
    [Formula("preload from nut factor", "F = T / (K d)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 8-27")]
    [return: Quantity("preload", Dimension.Force, "kN", Symbol = "F")]
    public static double Preload(
        [Quantity("tightening torque", Dimension.Torque, "N·m", Symbol = "T", Min = 0)] double torque,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("nut factor", Dimension.Number, Symbol = "K", Above = 0)] double nutFactor = 0.2) =>
        torque / (nutFactor * diameter);

    /// <summary>Torque that keeps the preload when the lubricant changes, N·m.</summary>
    /// <param name="torque">Torque given for the old lubricant, N·m.</param>
    /// <param name="oldFactor">Nut factor of the old lubricant.</param>
    /// <param name="newFactor">Nut factor of the new lubricant.</param>
    [Formula("torque for another lubricant", "T2 = T1 K2 / K1", "same preload from eq. 8-27 of Shigley's Mechanical Engineering Design, 9th ed.", Provenance = Provenance.Definition, Caution = "The dry torque on a slippery thread breaks the bolt.")]
    [return: Quantity("tightening torque", Dimension.Torque, "N·m", Symbol = "T2")]
    public static double ForLubricant(
        [Quantity("torque with the old lubricant", Dimension.Torque, "N·m", Symbol = "T1", Min = 0)] double torque,
        [Quantity("old nut factor", Dimension.Number, Symbol = "K1", Above = 0)] double oldFactor,
        [Quantity("new nut factor", Dimension.Number, Symbol = "K2", Above = 0)] double newFactor) =>
        torque * newFactor / oldFactor;
}
