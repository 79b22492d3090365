using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Where the tightening torque goes.</summary>
/// <param name="PitchTorque">Part that stretches the bolt, N·m.</param>
/// <param name="ThreadTorque">Part lost to thread friction, N·m.</param>
/// <param name="HeadTorque">Part lost under the head, N·m.</param>
/// <param name="Torque">All of it, N·m.</param>
/// <param name="NutFactor">K = T / (F d).</param>
public readonly record struct TorqueSplit(
    [Quantity("torque from the pitch", Dimension.Torque, "N·m", Symbol = "Tp")] double PitchTorque,
    [Quantity("torque from thread friction", Dimension.Torque, "N·m", Symbol = "Tt")] double ThreadTorque,
    [Quantity("torque from head friction", Dimension.Torque, "N·m", Symbol = "Th")] double HeadTorque,
    [Quantity("tightening torque", Dimension.Torque, "N·m", Symbol = "T")] double Torque,
    [Quantity("nut factor", Dimension.Number, Symbol = "K")] double NutFactor);

/// <summary>Torque and preload of metric bolts, friction in thread and under the head told apart.</summary>
public static class Tightening
{
    private const string Source = "VDI 2230-1:2003, section 5.4; ISO 16047:2005";

    /// <summary>Mean diameter on which head friction acts, m.</summary>
    /// <param name="outer">Outer diameter of the bearing face, m.</param>
    /// <param name="hole">Hole diameter, m.</param>
    [Formula("head friction diameter", "Dk = (dw + dh) / 2", "VDI 2230-1:2003; ISO 16047:2005", Provenance = Provenance.FromMemory)]
    [return: Quantity("head friction diameter", Dimension.Length, "mm", Symbol = "Dk")]
    public static double HeadDiameter(
        [Quantity("bearing face diameter", Dimension.Length, "mm", Symbol = "dw", Above = 0)] double outer,
        [Quantity("hole diameter", Dimension.Length, "mm", Symbol = "dh", Above = 0)] double hole)
    {
        FormulaDomainException.Unless(outer > hole, "bearing face diameter: must be greater than the hole diameter");
        return (outer + hole) / 2;
    }

    /// <summary>Torque that gives a preload, split into stretch, thread friction and head friction.</summary>
    /// <param name="preload">Bolt force, N.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="threadFriction">Friction in the thread.</param>
    /// <param name="headFriction">Friction under the head or nut that is turned.</param>
    /// <param name="headDiameter">Mean diameter of the head friction, m.</param>
    [Formula("tightening torque", "Tp = F P / (2 π); Tt = F (d - 0.649519 P) µG / (2 cos(30°)); Th = F Dk µK / 2; T = Tp + Tt + Th; K = T / (F d)", Source, Provenance = Provenance.FromMemory, Validity = "metric threads, small lead angle: 0.3 to 0.4 % under the exact helix")]
    public static TorqueSplit Torque(
        [Quantity("preload", Dimension.Force, "kN", Symbol = "F", Above = 0)] double preload,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("thread friction", Dimension.Number, Symbol = "µG", Min = 0, Max = 1)] double threadFriction,
        [Quantity("head friction", Dimension.Number, Symbol = "µK", Min = 0, Max = 1)] double headFriction,
        [Quantity("head friction diameter", Dimension.Length, "mm", Symbol = "Dk", Above = 0)] double headDiameter)
    {
        var pitchDiameter = MetricThread.Sizes(diameter, pitch).PitchDiameter;
        var stretch = preload * pitch / (2 * Math.PI);
        var thread = preload * pitchDiameter * threadFriction / (2 * MetricThread.CosFlank);
        var head = preload * headDiameter * headFriction / 2;
        var total = stretch + thread + head;
        return new TorqueSplit(stretch, thread, head, total, total / (preload * diameter));
    }

    /// <summary>The same split with the exact helix: thread torque F d2/2 tan(φ + ρ').</summary>
    /// <param name="preload">Bolt force, N.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="threadFriction">Friction in the thread.</param>
    /// <param name="headFriction">Friction under the head or nut that is turned.</param>
    /// <param name="headDiameter">Mean diameter of the head friction, m.</param>
    [Formula("tightening torque, exact helix", "Tp = F P / (2 π); Tp + Tt = F (d - 0.649519 P) / 2 tan(φ + ρ); Th = F Dk µK / 2; T = Tp + Tt + Th; K = T / (F d)", Source, Provenance = Provenance.FromMemory, Validity = "φ lead angle, tan(ρ) = µG / cos(30°), friction small enough that φ + ρ stays under 90°")]
    public static TorqueSplit ExactTorque(
        [Quantity("preload", Dimension.Force, "kN", Symbol = "F", Above = 0)] double preload,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("thread friction", Dimension.Number, Symbol = "µG", Min = 0, Max = 1)] double threadFriction,
        [Quantity("head friction", Dimension.Number, Symbol = "µK", Min = 0, Max = 1)] double headFriction,
        [Quantity("head friction diameter", Dimension.Length, "mm", Symbol = "Dk", Above = 0)] double headDiameter)
    {
        var sizes = MetricThread.Sizes(diameter, pitch);
        var angle = sizes.LeadAngle + Math.Atan(threadFriction / MetricThread.CosFlank);
        FormulaDomainException.Unless(angle < Math.PI / 2, "thread friction: too great for this lead angle, the thread locks");
        var stretch = preload * pitch / (2 * Math.PI);
        var thread = (preload * sizes.PitchDiameter / 2 * Math.Tan(angle)) - stretch;
        var head = preload * headDiameter * headFriction / 2;
        var total = stretch + thread + head;
        return new TorqueSplit(stretch, thread, head, total, total / (preload * diameter));
    }

    /// <summary>Preload that a torque gives, N.</summary>
    /// <param name="torque">Tightening torque, N·m.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="threadFriction">Friction in the thread.</param>
    /// <param name="headFriction">Friction under the head or nut that is turned.</param>
    /// <param name="headDiameter">Mean diameter of the head friction, m.</param>
    [Formula("preload from torque", "F = T / (P / (2 π) + (d - 0.649519 P) µG / (2 cos(30°)) + Dk µK / 2)", Source, Provenance = Provenance.FromMemory, Caution = "Friction is the unknown: a torque wrench leaves the preload uncertain by a quarter and more.")]
    [return: Quantity("preload", Dimension.Force, "kN", Symbol = "F")]
    public static double Preload(
        [Quantity("tightening torque", Dimension.Torque, "N·m", Symbol = "T", Min = 0)] double torque,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("thread friction", Dimension.Number, Symbol = "µG", Min = 0, Max = 1)] double threadFriction,
        [Quantity("head friction", Dimension.Number, Symbol = "µK", Min = 0, Max = 1)] double headFriction,
        [Quantity("head friction diameter", Dimension.Length, "mm", Symbol = "Dk", Above = 0)] double headDiameter) =>
        torque / Torque(1, diameter, pitch, threadFriction, headFriction, headDiameter).Torque;

    /// <summary>Friction, taken equal in thread and under the head, that a torque-tension test shows.</summary>
    /// <param name="torque">Measured torque, N·m.</param>
    /// <param name="preload">Measured bolt force, N.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="headDiameter">Mean diameter of the head friction, m.</param>
    [Formula("total friction from a torque test", "µ = (T / F - P / (2 π)) / ((d - 0.649519 P) / (2 cos(30°)) + Dk / 2)", "ISO 16047:2005, coefficient of total friction", Provenance = Provenance.FromMemory)]
    [return: Quantity("total friction", Dimension.Number, Symbol = "µ")]
    public static double TotalFriction(
        [Quantity("tightening torque", Dimension.Torque, "N·m", Symbol = "T", Above = 0)] double torque,
        [Quantity("preload", Dimension.Force, "kN", Symbol = "F", Above = 0)] double preload,
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("head friction diameter", Dimension.Length, "mm", Symbol = "Dk", Above = 0)] double headDiameter)
    {
        var frictionless = preload * pitch / (2 * Math.PI);
        FormulaDomainException.Unless(torque >= frictionless, "tightening torque: less than a thread without friction would need for this preload");
        var pitchDiameter = MetricThread.Sizes(diameter, pitch).PitchDiameter;
        return (torque - frictionless) / preload / ((pitchDiameter / (2 * MetricThread.CosFlank)) + (headDiameter / 2));
    }
}
