using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>The combined stress of the bolt in service, against its yield strength.</summary>
public sealed class BoltWorkingStressCheck : Check
{
    public override string Id => "bolt-working-stress";

    public override string Title => "Bolt stress in service";

    public override string Family => "joints";

    public override string Source => "VDI 2230-1:2003 R8: greatest preload, share of the working force, gain by heat, half of the torsion left (from memory)";

    public override string Caution => "A bolt that yields in service loses its clamp without a sound: after a run that was too hot or too fast, measure it before it is trusted again.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject);

    public override Judgement Examine(View view, string index)
    {
        var stress = WorkingJoint.Stress(view, index).Combined;
        return Judgement.AtMost("combined stress in service", stress, view.Amount(Joint.YieldStrength, index), Dimension.Pressure, "MPa", "yield strength") with { Remark = WorkingForce.On(view, index).From };
    }
}

/// <summary>The swing of the stress in the bolt, against what its thread bears for good.</summary>
public sealed class BoltFatigueCheck : Check
{
    public override string Id => "bolt-fatigue";

    public override string Title => "Bolt fatigue";

    public override string Family => "joints";

    public override string Source => "VDI 2230-1:2003 R9, thread rolled before heat treatment (from memory); the bolt tightened least, which carries all of the force where the joint opens; other metals by their own figure";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject);

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "stress amplitude",
        WorkingJoint.Amplitude(view, index),
        WorkingJoint.FatigueStrength(view, index),
        Dimension.Pressure,
        "MPa",
        view.Knows(Joint.FatigueStrength, index) ? "as the book has it" : "0.85 (150 / d + 45) MPa") with { Remark = Remark(view, index) };

    private static string Remark(View view, string index) =>
        string.Join("; ", new[] { WorkingForce.On(view, index).From, WorkingJoint.ClampLeft(view, index) < 0 ? "the joint opens" : "" }.Where(words => words.Length > 0));
}

/// <summary>The pressure under the head, against what the face bears without creeping.</summary>
public sealed class BoltHeadPressureCheck : Check
{
    public override string Id => "bolt-head-pressure";

    public override string Title => "Pressure under the bolt head";

    public override string Family => "joints";

    public override string Source => "VDI 2230-1:2003 R10 (1.4 times the preload at 90 % of yield for a bolt turned by an angle, from memory) and table A9 (limits read in a reprint)";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject);

    public override Judgement Examine(View view, string index)
    {
        var usual = view.Choice<BearingMaterial>(Joint.FaceMaterial, index) is { } face ? view.Work(HeadPressure.Limit, face) : double.NaN;
        return Judgement.AtMost("pressure under the head", WorkingJoint.HeadPressure(view, index), view.Limit("headPressure.max", Dimension.Pressure, "MPa", usual), Dimension.Pressure, "MPa", "guide value of the face's material; a hard washer spreads it");
    }
}

/// <summary>The thread engagement, against that at which the bolt breaks before a thread strips.</summary>
public sealed class ThreadStrippingCheck : Check
{
    public override string Id => "thread-stripping";

    public override string Title => "Thread engagement against stripping";

    public override string Family => "joints";

    public override string Source => "FED-STD-H28/2B shear areas at 6g/6H limits; the bolt must break first, also at 1.2 times its tensile strength: VDI 2230-1:2003 R11 (from memory)";

    public override string Caution => "A thread that strips lets go at once and the wrench with it: pull, do not push. Stripped threads in a case are repaired with inserts, not with a longer bolt alone.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => TightenedJoint.Mating(view, i) == MatingThread.TappedHole);

    public override Judgement Examine(View view, string index) => Judgement.AtLeast("thread engagement", view.Amount(Joint.Engagement, index), WorkingJoint.EngagementWanted(view, index), Dimension.Length, "mm", "the bolt breaks before a thread strips");
}

/// <summary>The clamp left at the bolt that was tightened least, against what the joint wants.</summary>
public sealed class JointClampLeftCheck : Check
{
    public override string Id => "joint-clamp-left";

    public override string Title => "Clamp left in the joint";

    public override string Family => "joints";

    public override string Source => "VDI 2230-1:2003 R5: least preload after scatter, embedding, heat and relief (from memory)";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => i.Length > 0 && !WorkingJoint.Holds(view, i));

    public override Judgement Examine(View view, string index) => Judgement.AtLeast("clamp left at one bolt", WorkingJoint.ClampLeft(view, index), view.Amount(Joint.ClampWanted, index), Dimension.Force, "kN", "what the joint must keep") with { Remark = WorkingForce.On(view, index).From };
}

/// <summary>The preload of a mean bolt at working temperature, between what the joint wants and the bolt's yield.</summary>
public sealed class JointThermalCheck : Check
{
    public override string Id => "joint-thermal";

    public override string Title => "Preload at working temperature";

    public override string Family => "joints";

    public override string Source => "VDI 2230-1:2003 section 5.4.2.3, moduli held constant (from memory)";

    public override string Caution => "Retighten cold, never hot: a hot aluminium joint reads tight and is loose when it has cooled.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => view.Knows(Joint.PartTemperature, i) || view.TableIf(Joint.Layers, i)?["temperature"].Length > 0);

    public override Judgement Examine(View view, string index)
    {
        var warm = TightenedJoint.Preload(view, index) - TightenedJoint.EmbeddingLoss(view, index) + TightenedJoint.ThermalChange(view, index);
        var force = WorkingForce.On(view, index).Greatest;
        var share = WorkingJoint.Share(view, index, force);
        var wanted = view.Work(JointDiagram.Required, WorkingJoint.Holds(view, index) ? 0.0 : view.Amount(Joint.ClampWanted, index), Math.Max(0, force), share.LoadFactor, 0.0, 1.0, 0.0);
        return Judgement.Between("preload when warm", warm, wanted.Least, view.Work(BoltService.YieldLoad, TightenedJoint.Section(view, index), view.Amount(Joint.YieldStrength, index)), Dimension.Force, "kN", "what the joint wants, and the bolt's yield load");
    }
}

/// <summary>The lengthening that has stayed in a bolt, against what it may be used with again.</summary>
public sealed class BoltSetCheck : Check
{
    public override string Id => "bolt-set";

    public override string Title => "Bolt used again: lengthening that has stayed";

    public override string Family => "joints";

    public override string Source => "0.025 mm (a thousandth of an inch) for bolts that are not turned past yield: common practice, no source; the maker's greatest length goes first";

    public override string Caution => "A bolt that has stretched and looks sound breaks at the next tightening or on the strip: when in doubt, a new one.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => view.Knows(Joint.FreeLength, i));

    public override Judgement Examine(View view, string index) => view.AmountIf(Joint.LengthMost, index) is { } most
        ? Judgement.AtMost("free length", view.Amount(Joint.FreeLength, index), most, Dimension.Length, "mm", "by the maker")
        : Judgement.AtMost("lengthening that has stayed", view.Amount(Joint.FreeLength, index) - view.Amount(Joint.UnusedLength, index), view.Limit("boltSet.max", Dimension.Length, "mm", 0.025e-3), Dimension.Length, "mm", "common practice, no source");
}
