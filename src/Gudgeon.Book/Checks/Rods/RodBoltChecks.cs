using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Checks.Rods;

/// <summary>The bolts of a rod's cap: joint[rod], or joint[rod.1] for that of cylinder 1.</summary>
/// <param name="view">The values.</param>
/// <param name="index">The joint.</param>
internal sealed class RodBolts(View view, string index)
{
    /// <summary>Joints of the build that hold rod caps.</summary>
    public static IEnumerable<string> Joints(View view) => Instances.Named(view, Joint.Torque.Subject).Where(Joins);

    /// <summary>Whether a joint of this name holds a rod's cap.</summary>
    public static bool Joins(string index) => index == "rod" || index.StartsWith("rod.", StringComparison.Ordinal);

    /// <summary>Pull on one bolt; null, and nothing missing, where the engine does not tell it.</summary>
    public static double? KnownPull(View view, string index) => view.Try<double?>(v => new RodBolts(v, index).Pull is var pull && double.IsFinite(pull) && !v.Trace.Missing.Any() ? pull : null);

    /// <summary>Pull on one bolt at overlap TDC at the rev limit, the hardest rod of those that it stands for, prying counted, N.</summary>
    public double Pull => Cylinders.Select(c => new RodDuty(view, c).CapPull).Aggregate(double.NegativeInfinity, Worse) / view.Count(Joint.BoltCount, index) * view.AmountOr(Joint.Eccentric, 1, index);

    /// <summary>Least preload, after scatter and embedding, N.</summary>
    public double LeastPreload => TightenedJoint.LeastSettled(view, index);

    /// <summary>How the pull is shared between bolt and cap.</summary>
    public LoadShare Share() => WorkingJoint.Share(view, index, Pull);

    /// <summary>Stress amplitude in the bolt that was tightened least: from no load at firing to what it gets of the pull, Pa; the pull must be known.</summary>
    public double Amplitude() => double.IsNaN(Pull) ? double.NaN : WorkingJoint.Amplitude(view, index);

    private IEnumerable<string> Cylinders => index.Contains('.', StringComparison.Ordinal) ? [index[(index.IndexOf('.', StringComparison.Ordinal) + 1)..]] : Instances.Cylinders(view);

    private static double Worse(double one, double other) => double.IsNaN(one) || double.IsNaN(other) ? double.NaN : Math.Max(one, other);
}

/// <summary>A check of the bolts of rod caps.</summary>
public abstract class RodBoltCheck : Check
{
    public override string Family => "rods";

    public override string Caution => "A rod bolt that lets go takes the engine with it: new bolts, oiled as their maker says, tightened by stretch where both ends can be reached.";

    public override IEnumerable<string> Instances(View view) => RodBolts.Joints(view);
}

/// <summary>Pull on a rod bolt against the load at which the cap lifts.</summary>
public sealed class RodBoltSeparationCheck : RodBoltCheck
{
    public override string Id => "rod-bolt-separation";

    public override string Title => "Rod cap at overlap, rev limit";

    public override string Source => "VDI 2230-1:2003 joint diagram, least preload after scatter and embedding; pull of piston and rod at TDC without gas, prying as given by joint.eccentric";

    public override Judgement Examine(View view, string index)
    {
        var bolts = new RodBolts(view, index);
        return Judgement.AtMost("pull on one bolt", bolts.Pull, bolts.LeastPreload / (1 - bolts.Share().LoadFactor), Dimension.Force, "kN", "pull at which the least-tightened bolt lets the cap lift");
    }
}

/// <summary>Stress amplitude in the thread of a rod bolt.</summary>
public sealed class RodBoltFatigueCheck : RodBoltCheck
{
    public override string Id => "rod-bolt-fatigue";

    public override string Title => "Rod bolt against fatigue";

    public override string Source => "VDI 2230-1:2003 R9: what the bolt tightened least gets of the pull at overlap, none at firing; thread rolled before heat treatment (from memory), or joint.fatigueStrength";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "stress amplitude",
        new RodBolts(view, index).Amplitude(),
        WorkingJoint.FatigueStrength(view, index),
        Dimension.Pressure,
        "MPa",
        "fatigue strength of the thread");
}

/// <summary>Preload by the stretch that was read against that by the torque.</summary>
public sealed class BoltStretchCheck : Check
{
    public override string Id => "bolt-stretch";

    public override string Title => "Bolt stretch against torque";

    public override string Family => "joints";

    public override string Source => "preload by resilience (VDI 2230-1:2003, section 5.1.1) over preload by torque and friction; within a quarter: common practice, no source";

    public override string Caution => "Less stretch than the torque should give is a dry thread or a bottomed bolt; more is a bolt that yields. Neither goes into a rod.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Joint.Torque.Subject).Where(i => view.Knows(Joint.Stretch, i) && view.Knows(Joint.Torque, i));

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "preload by stretch over preload by torque",
        TightenedJoint.Preload(view, index) / TightenedJoint.FromTorque(view, index),
        view.Limit("bolt-stretch.min", Dimension.Number, "", 0.75),
        view.Limit("bolt-stretch.max", Dimension.Number, "", 1.25),
        Dimension.Number,
        "",
        "common practice, no source");
}
