using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Preload and torque at a chosen share of the yield strength.</summary>
/// <param name="Preload">Bolt force, N.</param>
/// <param name="Torque">Torque that gives it, N·m.</param>
/// <param name="TensileStress">Tensile stress on the stress area, Pa.</param>
/// <param name="ShearStress">Torsional stress, the section taken as plastic, Pa.</param>
public readonly record struct YieldPreload(
    [Quantity("assembly preload", Dimension.Force, "kN", Symbol = "FM")] double Preload,
    [Quantity("tightening torque", Dimension.Torque, "N·m", Symbol = "MA")] double Torque,
    [Quantity("tensile stress", Dimension.Pressure, "MPa", Symbol = "σ")] double TensileStress,
    [Quantity("torsional stress", Dimension.Pressure, "MPa", Symbol = "τ")] double ShearStress);

/// <summary>Stresses in a bolt while it is tightened and after.</summary>
/// <param name="ThreadTorque">Torque in the shank, N·m.</param>
/// <param name="TensileStress">Tensile stress on the stress area, Pa.</param>
/// <param name="ShearStress">Torsional stress at the edge, elastic, Pa.</param>
/// <param name="Combined">Combined stress while tightening, Pa.</param>
/// <param name="Service">Combined stress after the torsion has partly gone, Pa.</param>
public readonly record struct TighteningStress(
    [Quantity("thread torque", Dimension.Torque, "N·m", Symbol = "MG")] double ThreadTorque,
    [Quantity("tensile stress", Dimension.Pressure, "MPa", Symbol = "σ")] double TensileStress,
    [Quantity("torsional stress", Dimension.Pressure, "MPa", Symbol = "τ")] double ShearStress,
    [Quantity("combined stress while tightening", Dimension.Pressure, "MPa", Symbol = "σv")] double Combined,
    [Quantity("combined stress in service", Dimension.Pressure, "MPa", Symbol = "σs")] double Service);

/// <summary>The preload that a bolt itself can take, torsion included.</summary>
public static class AssemblyPreload
{
    /// <summary>Preload and torque that use a share of the yield strength, tension and torsion together.</summary>
    /// <param name="yieldStrength">Yield strength of the bolt, Pa.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="threadFriction">Friction in the thread.</param>
    /// <param name="headFriction">Friction under the head or nut that is turned.</param>
    /// <param name="headDiameter">Mean diameter of the head friction, m.</param>
    /// <param name="utilisation">Share of the yield strength; 0.9 for torque tightening, 1 for yield tightening.</param>
    [Formula("assembly preload", "FM = As ν Rp / sqrt(1 + 3 (1.5 d2 / d0 (P / (π d2) + 1.155 µG))^2); MA = FM (P / (2 π) + 0.577 d2 µG + Dk µK / 2)", "VDI 2230-1:2003, section 5.4 and table A1", Provenance = Provenance.FromMemory, Validity = "shank at least as thick as the stress diameter d0; torsion on the plastic section π d0^3 / 12; As, d2, d0 of the thread")]
    public static YieldPreload FromYield(
        [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Rp", Above = 0)] double yieldStrength,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("thread friction", Dimension.Number, Symbol = "µG", Min = 0, Max = 1)] double threadFriction,
        [Quantity("head friction", Dimension.Number, Symbol = "µK", Min = 0, Max = 1)] double headFriction,
        [Quantity("head friction diameter", Dimension.Length, "mm", Symbol = "Dk", Above = 0)] double headDiameter,
        [Quantity("share of yield", Dimension.Number, Symbol = "ν", Above = 0, Max = 1)] double utilisation = 0.9) =>
        FromYield(yieldStrength, diameter, pitch, threadFriction, headFriction, headDiameter, utilisation, MetricThread.Sizes(diameter, pitch).StressDiameter);

    /// <summary>Preload and torque that use a share of the yield strength in the weakest section: that of the thread, or of a thinner shank.</summary>
    /// <param name="yieldStrength">Yield strength of the bolt, Pa.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="threadFriction">Friction in the thread.</param>
    /// <param name="headFriction">Friction under the head or nut that is turned.</param>
    /// <param name="headDiameter">Mean diameter of the head friction, m.</param>
    /// <param name="utilisation">Share of the yield strength; 0.9 for torque tightening, 1 for yield tightening.</param>
    /// <param name="section">Diameter of the weakest section, m: tension on its area, torsion on its modulus.</param>
    [Formula("assembly preload of the weakest section", "FM = π / 4 d0^2 ν Rp / sqrt(1 + 3 (1.5 d2 / d0 (P / (π d2) + 1.155 µG))^2); MA = FM (P / (2 π) + 0.577 d2 µG + Dk µK / 2)", "VDI 2230-1:2003, section 5.4, R8: A0 and d0 of the smallest section that counts", Provenance = Provenance.FromMemory, Validity = "d2 = d - 0.649519 P; torsion on the plastic section π d0^3 / 12, the same torque in thread and shank")]
    public static YieldPreload FromYield(
        [Quantity("yield strength", Dimension.Pressure, "MPa", Symbol = "Rp", Above = 0)] double yieldStrength,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("thread friction", Dimension.Number, Symbol = "µG", Min = 0, Max = 1)] double threadFriction,
        [Quantity("head friction", Dimension.Number, Symbol = "µK", Min = 0, Max = 1)] double headFriction,
        [Quantity("head friction diameter", Dimension.Length, "mm", Symbol = "Dk", Above = 0)] double headDiameter,
        [Quantity("share of yield", Dimension.Number, Symbol = "ν", Above = 0, Max = 1)] double utilisation,
        [Quantity("diameter of the weakest section", Dimension.Length, "mm", Symbol = "d0", Above = 0)] double section)
    {
        var pitchDiameter = MetricThread.Sizes(diameter, pitch).PitchDiameter;
        var slope = (pitch / (Math.PI * pitchDiameter)) + (threadFriction / MetricThread.CosFlank);
        var shearRatio = 1.5 * pitchDiameter / section * slope;
        var stress = utilisation * yieldStrength / Math.Sqrt(1 + (3 * shearRatio * shearRatio));
        var preload = stress * MetricThread.Circle(section);
        var torque = Tightening.Torque(preload, diameter, pitch, threadFriction, headFriction, headDiameter).Torque;
        return new YieldPreload(preload, torque, stress, stress * shearRatio);
    }

    /// <summary>Tension, torsion and combined stress of a bolt during tightening and in service.</summary>
    /// <param name="preload">Bolt force, N.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="threadFriction">Friction in the thread.</param>
    /// <param name="torsionLeft">Share of the torsion that stays in service.</param>
    [Formula("bolt stress while tightening", "MG = F d2 / 2 (P / (π d2) + 1.155 µG); σ = F / As; τ = 16 MG / (π d0^3); σv = sqrt(σ^2 + 3 τ^2); σs = sqrt(σ^2 + 3 (kτ τ)^2)", "VDI 2230-1:2003, R7 and R8", Provenance = Provenance.FromMemory, Validity = "elastic section π d0^3 / 16; As, d2, d0 of the thread")]
    public static TighteningStress Stress(
        [Quantity("preload", Dimension.Force, "kN", Symbol = "F", Min = 0)] double preload,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("thread friction", Dimension.Number, Symbol = "µG", Min = 0, Max = 1)] double threadFriction,
        [Quantity("torsion left in service", Dimension.Number, Symbol = "kτ", Min = 0, Max = 1)] double torsionLeft = 0.5)
    {
        var sizes = MetricThread.Sizes(diameter, pitch);
        var torque = preload * ((pitch / (2 * Math.PI)) + (sizes.PitchDiameter * threadFriction / (2 * MetricThread.CosFlank)));
        var tension = preload / sizes.StressArea;
        var shear = 16 * torque / (Math.PI * sizes.StressDiameter * sizes.StressDiameter * sizes.StressDiameter);
        return new TighteningStress(torque, tension, shear, Mises(tension, shear), Mises(tension, torsionLeft * shear));
    }

    private static double Mises(double tension, double shear) => Math.Sqrt((tension * tension) + (3 * shear * shear));
}
