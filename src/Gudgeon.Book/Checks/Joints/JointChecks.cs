using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>The greatest preload that the tightening may give, against what the bolt takes with the torsion of tightening.</summary>
public sealed class BoltPreloadCheck : Check
{
    public override string Id => "bolt-preload";

    public override string Title => "Greatest bolt preload while tightening";

    public override string Family => "joints";

    public override string Source => "VDI 2230-1:2003 R7/R8 (90 % of yield with torsion, in the weaker of thread and shank), scatter by tightening method, table A8 (from memory)";

    public override string Caution => "A wrench that slips or a bolt that lets go throws the hand into the fins: pull, do not push, and replace bolts that the maker calls single-use.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject);

    public override Judgement Examine(View view, string index)
    {
        var turned = TightenedJoint.Turned(view, index);
        var allowed = TightenedJoint.AtYield(view, index, turned ? 1 : 0.9);
        return Judgement.AtMost("greatest preload", TightenedJoint.Greatest(view, index), allowed.Preload, Dimension.Force, "kN", turned ? "yield, torsion counted: a bolt turned by an angle" : "90 % of yield, torsion counted");
    }
}

/// <summary>The cylinder pressure at which the head lifts, against the peak pressure of the run.</summary>
public sealed class HeadSeparationCheck : Check
{
    public override string Id => "head-separation";

    public override string Title => "Head joint at peak cylinder pressure";

    public override string Family => "joints";

    public override string Source => "VDI 2230-1:2003 joint diagram, least preload after scatter and embedding; the pressure acts on the diameter that the gasket seals";

    public override string Caution => "A head that lifts blows flame past the gasket: stop at the first trace of pressure in the coolant or soot between the fins.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => i.Length == 0 || view.CountOr(Joint.Cylinders, 0, i) > 0);

    public override Judgement Examine(View view, string index)
    {
        var (peak, speed) = WorkingJoint.Peak(view);
        return Judgement.AtMost("peak cylinder pressure above ambient", peak, WorkingJoint.Head(view, index).SeparationPressure, Dimension.Pressure, "bar", "pressure at which the least-tightened stud lets the head lift") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }
}
