using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Kind of torque tool by ISO 6789.</summary>
public enum WrenchKind
{
    /// <summary>Clicking wrench with a scale (type II, class A).</summary>
    Setting,

    /// <summary>Wrench with a dial or a display (type I, classes B and C).</summary>
    Indicating,

    /// <summary>Bending beam with a pointer (type I, class A).</summary>
    Beam,

    /// <summary>Clicking wrench without a scale (type II, class C).</summary>
    Preset,
}

/// <summary>What a wrench within its class leaves open.</summary>
/// <param name="Deviation">Greatest permitted deviation, share of the reading.</param>
/// <param name="Uncertainty">Expanded uncertainty (k = 2) of a torque set with it, share.</param>
public readonly record struct WrenchAccuracy(
    [Quantity("permitted deviation", Dimension.Number, "%", Symbol = "a")] double Deviation,
    [Quantity("expanded uncertainty", Dimension.Number, "%", Symbol = "U")] double Uncertainty);

/// <summary>Torque wrenches: how far the torque itself may be off.</summary>
public static class TorqueWrench
{
    /// <summary>Permitted deviation of a torque wrench and the uncertainty that follows from it.</summary>
    /// <param name="kind">Kind of tool.</param>
    /// <param name="capacity">Greatest torque of the tool, N·m.</param>
    [Formula("torque wrench accuracy", "a by kind and capacity T; U = 2 a / sqrt(3)", "ISO 6789:2003, 5.1.5 (type II class A read in a maker's instructions, the other kinds recalled); rectangular distribution: JCGM 100, 4.3.7", Provenance = Provenance.FromMemory, Validity = "tools within their calibration, from a fifth of their range up: 6 % to 10 N·m, 4 % above; beams and tools without a scale 6 % throughout", Caution = "Of the scatter of a preload the wrench is the smaller part: friction is the larger.")]
    public static WrenchAccuracy Accuracy(
        [Quantity("kind of wrench", Dimension.Number)] WrenchKind kind,
        [Quantity("greatest torque of the wrench", Dimension.Torque, "N·m", Symbol = "T", Above = 0)] double capacity)
    {
        var deviation = capacity > 10 && kind is (WrenchKind.Setting or WrenchKind.Indicating) ? 0.04 : 0.06;
        return new WrenchAccuracy(deviation, 2 * deviation / Math.Sqrt(3));
    }
}
