using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Bolt in service: greatest force and combined stress in its weakest section.</summary>
/// <param name="Tensile">Tensile stress, Pa.</param>
/// <param name="Shear">Torsional stress left from tightening, elastic, Pa.</param>
/// <param name="Combined">Combined stress, Pa.</param>
public readonly record struct ServiceStress(
    [Quantity("tensile stress", Dimension.Pressure, "MPa", Symbol = "σz")] double Tensile,
    [Quantity("torsional stress left", Dimension.Pressure, "MPa", Symbol = "τ")] double Shear,
    [Quantity("combined stress in service", Dimension.Pressure, "MPa", Symbol = "σs")] double Combined);

/// <summary>What a tightened bolt bears in service, also one with a reduced shank.</summary>
public static class BoltService
{
    /// <summary>Diameter of the section that is stressed most: the thread's or the shank's, m.</summary>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="shankDiameter">Least diameter of the shank, m.</param>
    [Formula("weakest bolt section", "d0 = min(d - 0.938194 P, d1)", "VDI 2230-1:2003, section 5.5.1: stress cross-section, or the shank of a waisted bolt", Provenance = Provenance.FromMemory)]
    [return: Quantity("diameter of the weakest section", Dimension.Length, "mm", Symbol = "d0")]
    public static double WeakestSection(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("shank diameter", Dimension.Length, "mm", Symbol = "d1", Above = 0)] double shankDiameter) =>
        Math.Min(MetricThread.Sizes(diameter, pitch).StressDiameter, shankDiameter);

    /// <summary>Stress of a bolt under its greatest force in service.</summary>
    /// <param name="greatest">Greatest bolt force in service, N.</param>
    /// <param name="preload">Preload that it was tightened to, N.</param>
    /// <param name="section">Diameter of the weakest section, m.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="threadFriction">Friction in the thread.</param>
    /// <param name="torsionLeft">Share of the torsion that stays in service.</param>
    [Formula("bolt stress in service", "σz = 4 F / (π d0^2); τ = kτ 16 FM d2 / 2 (P / (π d2) + 1.155 µG) / (π d0^3); σs = sqrt(σz^2 + 3 τ^2)", "VDI 2230-1:2003, R8", Provenance = Provenance.FromMemory, Validity = "d2 = d - 0.649519 P; half of the torsion is left in service, all of it while tightening")]
    public static ServiceStress Stress(
        [Quantity("greatest bolt force", Dimension.Force, "kN", Symbol = "F", Min = 0)] double greatest,
        [Quantity("assembly preload", Dimension.Force, "kN", Symbol = "FM", Min = 0)] double preload,
        [Quantity("diameter of the weakest section", Dimension.Length, "mm", Symbol = "d0", Above = 0)] double section,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("thread friction", Dimension.Number, Symbol = "µG", Min = 0, Max = 1)] double threadFriction,
        [Quantity("torsion left in service", Dimension.Number, Symbol = "kτ", Min = 0, Max = 1)] double torsionLeft = 0.5)
    {
        var torque = AssemblyPreload.Stress(preload, diameter, pitch, threadFriction).ThreadTorque;
        var tension = greatest / MetricThread.Circle(section);
        var shear = torsionLeft * 16 * torque / (Math.PI * section * section * section);
        return new ServiceStress(tension, shear, Math.Sqrt((tension * tension) + (3 * shear * shear)));
    }

    /// <summary>Greatest bolt force in service, N.</summary>
    /// <param name="preload">Greatest preload, N.</param>
    /// <param name="loadFactor">Load factor Φn.</param>
    /// <param name="axialForce">Greatest working force per bolt, N.</param>
    /// <param name="thermal">Preload gained by warming up, N; negative for a loss.</param>
    [Formula("greatest bolt force in service", "FS = FM + Φ FA + ΔF", "VDI 2230-1:2003, R8/1; embedding is left out, on the safe side", Provenance = Provenance.FromMemory, Validity = "until the joint opens; past it take the bolt force at work")]
    [return: Quantity("greatest bolt force", Dimension.Force, "kN", Symbol = "FS")]
    public static double GreatestForce(
        [Quantity("greatest preload", Dimension.Force, "kN", Symbol = "FM", Min = 0)] double preload,
        [Quantity("load factor", Dimension.Number, Symbol = "Φ", Min = 0, Max = 1)] double loadFactor,
        [Quantity("axial force per bolt", Dimension.Force, "kN", Symbol = "FA")] double axialForce,
        [Quantity("preload gained by warming up", Dimension.Force, "N", Symbol = "ΔF")] double thermal = 0) =>
        preload + (loadFactor * axialForce) + thermal;

    /// <summary>Force of a bolt under a working force, N: its share of it while the joint is shut, all of it once the joint has opened.</summary>
    /// <param name="preload">Preload that is left without the working force, N; nought when it is lost.</param>
    /// <param name="loadFactor">Load factor Φn.</param>
    /// <param name="axialForce">Working force per bolt, N; negative where it presses the joint together.</param>
    [Formula("bolt force at work", "FS = max(FV + Φ FA, FA, 0)", "joint diagram: the clamp FV - (1 - Φ) FA cannot be less than nought, nor can the bolt push; VDI 2230-1:2003, R3", Provenance = Provenance.Definition, Validity = "one concentric bolt; a joint that opens on one side first is not counted")]
    [return: Quantity("bolt force", Dimension.Force, "kN", Symbol = "FS")]
    public static double ForceAtWork(
        [Quantity("preload left", Dimension.Force, "kN", Symbol = "FV", Min = 0)] double preload,
        [Quantity("load factor", Dimension.Number, Symbol = "Φ", Min = 0, Max = 1)] double loadFactor,
        [Quantity("axial force per bolt", Dimension.Force, "kN", Symbol = "FA")] double axialForce) =>
        Math.Max(0, Math.Max(preload + (loadFactor * axialForce), axialForce));

    /// <summary>Clamp left in the parting plane, N; negative when the joint has opened.</summary>
    /// <param name="least">Least preload after scatter, N.</param>
    /// <param name="embeddingLoss">Preload lost by embedding, N.</param>
    /// <param name="loadFactor">Load factor Φn.</param>
    /// <param name="axialForce">Greatest working force per bolt, N.</param>
    /// <param name="thermalLoss">Preload lost by temperature, N.</param>
    [Formula("clamp left in a joint", "FKR = FM - FZ - FT - (1 - Φ) FA", "VDI 2230-1:2003, R5 turned round", Provenance = Provenance.FromMemory)]
    [return: Quantity("clamp left", Dimension.Force, "kN", Symbol = "FKR")]
    public static double ClampLeft(
        [Quantity("least preload", Dimension.Force, "kN", Symbol = "FM", Min = 0)] double least,
        [Quantity("embedding loss", Dimension.Force, "N", Symbol = "FZ", Min = 0)] double embeddingLoss,
        [Quantity("load factor", Dimension.Number, Symbol = "Φ", Min = 0, Max = 1)] double loadFactor,
        [Quantity("axial force per bolt", Dimension.Force, "kN", Symbol = "FA")] double axialForce,
        [Quantity("thermal loss", Dimension.Force, "N", Symbol = "FT", Min = 0)] double thermalLoss = 0) =>
        least - embeddingLoss - thermalLoss - ((1 - loadFactor) * axialForce);

    /// <summary>Bolt force at which the weakest section yields in tension alone, N.</summary>
    /// <param name="section">Diameter of the weakest section, m.</param>
    /// <param name="yieldStrength">Yield strength, Pa.</param>
    [Formula("bolt yield load", "Fy = π / 4 d0^2 Rp", "strength times area", Provenance = Provenance.Definition)]
    [return: Quantity("yield load", Dimension.Force, "kN", Symbol = "Fy")]
    public static double YieldLoad(
        [Quantity("diameter of the weakest section", Dimension.Length, "mm", Symbol = "d0", Above = 0)] double section,
        [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Rp", Above = 0)] double yieldStrength) =>
        MetricThread.Circle(section) * yieldStrength;
}
