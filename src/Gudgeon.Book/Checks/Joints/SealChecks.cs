using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>The line load left on the gasket at peak pressure, against what it wants.</summary>
public sealed class GasketLineLoadCheck : Check
{
    public override string Id => "gasket-line-load";

    public override string Title => "Line load left on the gasket at peak pressure";

    public override string Family => "joints";

    public override string Source => "clamp left by the bolts tightened least, all of it on the seal's circle; wanted by the gasket's maker, else m p over the ring's width (ASME BPVC VIII-1 appendix 2, made for vessel flanges)";

    public override string Caution => new HeadSeparationCheck().Caution;

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => WorkingJoint.Holds(view, i));

    public override Judgement Examine(View view, string index)
    {
        var left = SealedJoint.LineLoad(view, index, WorkingJoint.Head(view, index).Clamp);
        var by = SealedJoint.ByTable(view, index) ? "by the table of gaskets, made for vessel flanges" : "by the maker of the gasket";
        return Judgement.AtLeast("line load left", left, SealedJoint.LineLoadWanted(view, index), Dimension.ForcePerLength, "N/mm", by) with { Remark = Motion.PeakPressureCheck.At(WorkingJoint.Peak(view).Speed) };
    }
}

/// <summary>The pressure on the fire ring when the bolts are tightened most, against what crushes it.</summary>
public sealed class GasketCrushCheck : Check
{
    public override string Id => "gasket-crush";

    public override string Title => "Pressure on the fire ring when tightened";

    public override string Family => "joints";

    public override string Source => "greatest preload of all bolts around a cylinder over the area of the ring; allowed by the gasket's maker";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => WorkingJoint.Holds(view, i) && view.Knows(Joint.RingStressMost, i));

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "pressure on the ring", SealedJoint.RingStress(view, index, SealedJoint.GreatestClamp(view, index)), view.Amount(Joint.RingStressMost, index), Dimension.Pressure, "MPa", "by the maker of the gasket; the rest of the gasket takes its share off the ring");
}

/// <summary>The squeeze of an O-ring, or what a wire stands out of its groove.</summary>
public sealed class ORingSqueezeCheck : Check
{
    public override string Id => "o-ring-squeeze";

    public override string Title => "Squeeze of the O-ring";

    public override string Family => "joints";

    public override string Source => "15 to 30 % of the cord for a seal that stands still, and as much of a wire out of its groove: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Cord.Subject).Where(i => view.Knows(Joint.Cord, i));

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "squeeze over cord",
        SealedJoint.Squeeze(view, index).Ratio,
        view.Limit("o-ring-squeeze.min", Dimension.Number, "%", 0.15),
        view.Limit("o-ring-squeeze.max", Dimension.Number, "%", 0.30),
        Dimension.Number,
        "%",
        "common practice, no source; the ring's maker goes first");
}

/// <summary>The share of its groove that a rubber ring fills: what is left is its room to swell.</summary>
public sealed class ORingFillCheck : Check
{
    public override string Id => "o-ring-fill";

    public override string Title => "Room for the O-ring to swell";

    public override string Family => "joints";

    public override string Source => "85 % of the groove at the most: common practice, no source";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Cord.Subject).Where(i => view.Knows(Joint.GrooveWidth, i));

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "groove filled", SealedJoint.Fill(view, index), view.Limit("o-ring-fill.max", Dimension.Number, "%", 0.85), Dimension.Number, "%", "common practice, no source; rubber swells in fuel and with heat");
}
