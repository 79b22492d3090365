using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Checks.Rods;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;
using Gudgeon.Calc.Joints;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>One connecting rod. SI; null where it is not known.</summary>
/// <param name="Cylinder">Whose.</param>
/// <param name="Facts">Its numbers.</param>
/// <param name="Hardest">Its cylinder at the hardest speeds of the run.</param>
/// <param name="Pull">Pull at overlap at the rev limit, throttle shut, N.</param>
/// <param name="Buckles">Load at which it buckles, N.</param>
/// <param name="MeanStress">Mean stress in the shank, tension positive, Pa.</param>
/// <param name="StressSwing">Amplitude of that stress, Pa.</param>
/// <param name="FatigueStrength">Amplitude that it bears at no mean stress, Pa.</param>
/// <param name="TensileStrength">Pa.</param>
public sealed record RodFigures(string Cylinder, IReadOnlyList<Fact> Facts, IReadOnlyList<(double Speed, ThrowLoads Loads)> Hardest, double? Pull, double? Buckles, double? MeanStress, double? StressSwing, double? FatigueStrength, double? TensileStrength);

/// <summary>The bolts of the rods' caps.</summary>
/// <param name="Joint">"rod".</param>
/// <param name="Facts">Their numbers.</param>
public sealed record RodBoltFigures(string Joint, IReadOnlyList<Fact> Facts);

/// <summary>Rods, their bolts and the strength of the crank.</summary>
/// <param name="Rods">One for each cylinder.</param>
/// <param name="Bolts">One for each joint of a cap.</param>
/// <param name="Throws">One for each cylinder.</param>
/// <param name="Missing">What is wanted for the rest, in one sentence; empty when nothing is.</param>
public sealed record RodSheet(IReadOnlyList<RodFigures> Rods, IReadOnlyList<RodBoltFigures> Bolts, IReadOnlyList<ThrowFigures> Throws, string Missing)
{
    /// <summary>What the numbers are and are not.</summary>
    public const string Remark = "Least section of the shank, rod counted as two masses; eyes, fillets and bolt seats are not looked at. Push from the engine run at full load, pull at the rev limit with the throttle shut. The crank's fillets are a screening.";

    /// <summary>What can hurt.</summary>
    public static readonly string Caution = new RodTensionCheck().Caution;

    /// <summary>What stands beside the step.</summary>
    public static readonly IReadOnlyList<string> Remarks =
    [
        "Read the stretch of every rod bolt, free length first, and write it down: a bolt that does not come back to its free length is done (common practice, no source).",
        "Caps go back on their own rods the same way round: they were bored together.",
        "Side clearance with a feeler gauge on both sides of the rod, rod pushed over; end float of the crank with the case shut and tightened.",
    ];

    /// <summary>All its numbers, each group with its title.</summary>
    public IEnumerable<(string Title, IReadOnlyList<Fact> Facts)> Groups =>
    [
        .. Rods.Select(r => (Named("rod", r.Cylinder), r.Facts)),
        .. Bolts.Select(b => ($"bolts of joint {b.Joint}", b.Facts)),
        .. Throws.Select(t => (Named("crank throw", t.Cylinder), t.Facts)),
    ];

    /// <summary>The sheet of the values that hold.</summary>
    /// <param name="view">With a desk: pushes take an engine run.</param>
    public static RodSheet Of(View view)
    {
        var cylinders = Sketch.Keys(Instances.Cylinders(view));
        var rods = cylinders.Select(c => RodOf(view, c)).ToList();
        var bolts = RodBolts.Joints(view).Select(j => BoltsOf(view, j)).ToList();
        var throws = cylinders.Select(c => ThrowFigures.Of(view, c)).ToList();
        return new RodSheet(rods, bolts, throws, view.Trace.Missing.Any() ? $"Not known yet; wanted: {Wanted.Words(view.Trace.Missing)}." : "");
    }

    private static RodFigures RodOf(View view, string cylinder)
    {
        var (shank, duty) = (new RodShank(view, cylinder), new RodDuty(view, cylinder));
        var (push, swing) = (duty.Push, RodFatigueCheck.Swing(view, cylinder));
        var buckles = Sketch.Known(shank.Buckles);
        var pull = Sketch.Known(() => duty.Pull);
        return new RodFigures(
            cylinder,
            [
                Force("pull at overlap, throttle shut", pull),
                Stress("stress of it", Sketch.Known(() => duty.Pull / shank.Area)),
                Force("greatest push", Sketch.Known(() => push.Load)) with { Remark = At(push.Speed) },
                Force("buckles in the swing plane at", Sketch.Known(() => shank.Swing().Load)),
                Force("buckles along the crank at", Sketch.Known(() => shank.Across().Load)),
                Stress("whip at the rev limit", Sketch.Known(() => shank.Whip().Stress)),
                Stress("mean stress", Sketch.Known(() => swing.Mean)) with { Remark = "tension positive" },
                Stress("stress amplitude", Sketch.Known(() => swing.Amplitude)) with { Remark = "push, pull and whip" },
                new Fact("safety against fatigue", Sketch.Known(() => swing.Safety), Dimension.Number, ""),
                Length("side clearance", Sketch.Known(() => RodSideClearanceCheck.Clearance(view, cylinder))),
            ],
            duty.Hardest,
            pull,
            buckles,
            Sketch.Known(() => swing.Mean),
            Sketch.Known(() => swing.Amplitude),
            view.AmountIf(Rod.FatigueStrength, cylinder),
            view.AmountIf(Rod.TensileStrength, cylinder));
    }

    private static RodBoltFigures BoltsOf(View view, string joint)
    {
        var bolts = new RodBolts(view, joint);
        var read = view.AmountIf(Joint.Stretch, joint);
        return new RodBoltFigures(
            joint,
            [
                Length("stretch, read", read),
                Length("stretch that the torque should give", Sketch.Known(() => view.Work(JointDiagram.Stretch, TightenedJoint.FromTorque(view, joint), TightenedJoint.GaugedResilience(view, joint)))),
                Force("preload", Sketch.Known(() => TightenedJoint.Preload(view, joint))) with { Remark = read is null ? "by the torque" : "by the stretch" },
                Force("least preload", Sketch.Known(() => bolts.LeastPreload)) with { Remark = "after scatter and embedding" },
                Force("pull on one bolt at overlap", Sketch.Known(() => bolts.Pull)) with { Remark = "prying counted" },
                Force("cap lifts at", Sketch.Known(() => bolts.LeastPreload / (1 - bolts.Share().LoadFactor))),
                Force("bolt gets of it", Sketch.Known(() => bolts.Share().AdditionalForce)),
                Stress("stress amplitude in the thread", Sketch.Known(bolts.Amplitude)),
                Stress("thread bears", Sketch.Known(() => WorkingJoint.FatigueStrength(view, joint))),
            ]);
    }

    internal static string Named(string part, string cylinder) => cylinder.Length > 0 ? $"{part} {cylinder}" : part;

    internal static string At(double speed) => double.IsNaN(speed) ? "" : $"at {Figures.Rpm(speed)}";

    internal static Fact Force(string name, double? si) => new(name, si, Dimension.Force, "kN");

    internal static Fact Stress(string name, double? si) => new(name, si, Dimension.Pressure, "MPa");

    /// <summary>To a tenth of a thousandth of a millimetre: no gauge reads more.</summary>
    internal static Fact Length(string name, double? si) => new(name, si is { } m ? Math.Round(m, 7) : null, Dimension.Length, "mm");
}
