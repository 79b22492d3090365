using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>A bolt turned by an angle from snug.</summary>
/// <param name="Preload">Bolt force, N.</param>
/// <param name="YieldAngle">Angle at which the bolt begins to yield, rad.</param>
/// <param name="Set">Lengthening that stays, m.</param>
/// <param name="Stretch">All of the lengthening under load, m.</param>
public readonly record struct AngleTightening(
    [Quantity("preload", Dimension.Force, "kN", Symbol = "F")] double Preload,
    [Quantity("angle to yield", Dimension.Angle, "°", Symbol = "θy")] double YieldAngle,
    [Quantity("permanent set", Dimension.Length, "mm", Symbol = "s")] double Set,
    [Quantity("stretch under load", Dimension.Length, "mm", Symbol = "f")] double Stretch);

/// <summary>Bolts that are turned by an angle, up to yield and beyond.</summary>
public static class StretchBolt
{
    /// <summary>Preload, permanent set and stretch of a bolt turned by an angle from snug.</summary>
    /// <param name="snug">Preload at snug torque, N.</param>
    /// <param name="angle">Angle from snug, rad.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    /// <param name="partResilience">Resilience of the clamped parts, m/N.</param>
    /// <param name="yieldPreload">Preload at which the bolt yields with the torsion of tightening, N.</param>
    [Formula("angle tightening", "θy = 2 π (Fy - F0) (δS + δP) / P; F = min(F0 + θ P / (2 π (δS + δP)), Fy); s = P max(θ - θy, 0) / (2 π); f = F δS + s", "joint diagram and one pitch per turn, the bolt ideally plastic past yield: VDI 2230-1:2003, section 5.4.3", Provenance = Provenance.FromMemory, Validity = "no hardening: a real bolt gains some force past yield and gives back less when loosened", Caution = "Bolts turned past yield are used once unless their maker gives a length up to which they may be used again.")]
    public static AngleTightening ByAngle(
        [Quantity("snug preload", Dimension.Force, "kN", Symbol = "F0", Min = 0)] double snug,
        [Quantity("tightening angle", Dimension.Angle, "°", Symbol = "θ", Min = 0)] double angle,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience,
        [Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP", Min = 0)] double partResilience,
        [Quantity("preload at yield", Dimension.Force, "kN", Symbol = "Fy", Above = 0)] double yieldPreload)
    {
        FormulaDomainException.Unless(snug <= yieldPreload, "snug preload: must not be greater than the preload at yield");
        var yieldAngle = JointDiagram.Angle(snug, yieldPreload, pitch, boltResilience, partResilience);
        var preload = Math.Min(snug + (angle * pitch / (2 * Math.PI * (boltResilience + partResilience))), yieldPreload);
        var set = pitch * Math.Max(angle - yieldAngle, 0) / (2 * Math.PI);
        return new AngleTightening(preload, yieldAngle, set, (preload * boltResilience) + set);
    }
}
