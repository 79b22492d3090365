using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>What a bolt bears at its limits, on joints of the invented twin; expected figures by a separate computation from the formulas of VDI 2230-1 (in Python).</summary>
public class BoltLimitTests
{
    private static readonly BuildBook Heron = DemoBooks.Heron.Book;

    // M10 × 1.25, 830 MPa, friction 0.16: 43.23 kN at yield by the thread, 25.21 kN by a shank of 7 mm, torsion counted.
    private static readonly BuildBook Turned = Heron.Set(("joint[mount].method", "yield or angle"), ("joint[mount].snugTorque", "20 N·m"), ("joint[mount].angle", "90°"));

    [Theory]
    [InlineData("10 mm", 38910)]
    [InlineData("9 mm", 38910)]
    [InlineData("7 mm", 22693)]
    public void A_waisted_bolt_is_held_to_its_waist(string shank, double allowed)
    {
        var finding = Appraisal.Of(Heron.Set(("joint[mount].shankDiameter", shank)), "bolt-preload", "mount");
        Assert.Equal(allowed, finding.Judgement!.Upper!.Value, 1.0);
    }

    // Rods: M8 × 1, 1100 MPa, friction 0.10; 38.06 N·m by the shank of 7 mm that they have.
    [Theory]
    [InlineData("8 mm", 38.784)]
    [InlineData("7 mm", 38.056)]
    [InlineData("6 mm", 27.195)]
    public void The_torque_at_yield_goes_with_the_waist(string shank, double torque)
    {
        var sheet = TorqueSheet.Of(new(Heron.Set(("joint[rod].shankDiameter", shank)).Now()), "rod");
        Assert.Equal(torque, sheet.Facts.Single(f => f.Name == "torque at 90 % of yield").Value!.Value, 0.001);
    }

    [Fact]
    public void The_share_of_yield_on_other_lubricants_goes_with_the_waist()
    {
        double Share(string shank) => TorqueSheet.Of(new(Heron.Set(("joint[mount].shankDiameter", shank)).Now()), "mount").Rows.Single(r => r.Lubricant == "titanium paste").YieldShare;

        // At the least friction of the class, 0.10: yield by AssemblyPreload's published rows, scaled by a section of 7 for one of 8.827 mm.
        var full = AssemblyPreload.FromYield(830e6, 10e-3, 1.25e-3, 0.1, 0.1, 13.25e-3, 1).Preload;
        Assert.Equal(full / AssemblyPreload.FromYield(830e6, 10e-3, 1.25e-3, 0.1, 0.1, 13.25e-3, 1, 7e-3).Preload, Share("7 mm") / Share("10 mm"), 1e-9);
        Assert.InRange(Share("7 mm") / Share("10 mm"), 1.59, 1.70);
    }

    [Fact]
    public void A_waisted_bolt_that_is_turned_yields_at_its_waist()
    {
        var joint = JointFigures.Of(new(Turned.Set(("joint[mount].shankDiameter", "7 mm")).Now()), "mount");
        Assert.Equal(25214, joint.Preload, 1.0);
        Assert.Equal(1, joint.YieldShare, 1e-9);
        Assert.True(joint.Set > 0.1e-3);
        Assert.Equal(43234, JointFigures.Of(new(Turned.Now()), "mount").Preload, 1.0);
    }

    // 1.4 · 38.91 kN over π/4 (16² − 10.5²) mm².
    [Fact]
    public void The_face_under_a_bolt_that_is_turned_bears_what_its_yield_may_come_to() =>
        Assert.Equal(475.9e6, Appraisal.Of(Turned, "bolt-head-pressure", "mount").Judgement!.Value, 0.1e6);

    // Least tightened 9.906 kN, load factor 0.08496: shut at -3 kN, open at 25 kN, where the bolt carries all.
    [Fact]
    public void A_joint_that_opens_leaves_all_of_the_force_to_the_bolt()
    {
        var opened = Heron.Set(("joint[mount].axialForce", "25 kN"));
        var finding = Appraisal.Of(opened, "bolt-fatigue", "mount");
        Assert.Equal(125.4e6, finding.Judgement!.Value, 0.1e6);
        Assert.Equal(Verdict.FallsShort, finding.Verdict);
        Assert.Contains("the joint opens", finding.Judgement.Remark, StringComparison.Ordinal);
        Assert.Equal(25000, JointFigures.Of(new(opened.Now()), "mount").BoltForce, 1e-6);

        // Shut it swings by its share alone: 0.08496 · 6 kN over 2 · 61.2 mm².
        Assert.Equal(4.165e6, Appraisal.Of(Heron, "bolt-fatigue", "mount").Judgement!.Value, 0.001e6);
        Assert.Equal(Verdict.Holds, Appraisal.Of(Heron, "bolt-fatigue", "mount").Verdict);
    }

    // Just before the least bolt lifts, 9.906 / (1 − 0.08496) = 10.825 kN, and just after: the swing does not jump.
    [Fact]
    public void The_swing_grows_from_where_the_joint_opens_without_a_jump()
    {
        double Swing(string force) => Appraisal.Of(Heron.Set(("joint[mount].axialForce", force), ("joint[mount].axialForceLeast", "0 kN")), "bolt-fatigue", "mount").Judgement!.Value;
        Assert.Equal(0.08496, (Swing("10.82 kN") - Swing("10.72 kN")) * 2 * 61.2e-6 / 100, 1e-3);
        Assert.Equal(1, (Swing("10.94 kN") - Swing("10.84 kN")) * 2 * 61.2e-6 / 100, 1e-3);
        Assert.InRange(Swing("10.84 kN") - Swing("10.82 kN"), 0, 20 / (2 * 61.2e-6));
    }

    // M6 into 240 MPa: 9.171 mm at the least strength of the bolt, a fifth more at the greatest.
    [Fact]
    public void A_bolt_stronger_than_it_must_be_still_breaks_first() =>
        Assert.Equal(11.005e-3, Appraisal.Of(Heron, "thread-stripping", "cover").Judgement!.Lower!.Value, 0.002e-3);

    // A gauge over both ends of a rod bolt: 0.165 mm over 5.493 µm/kN, ± 0.005 mm of it.
    [Fact]
    public void The_stretch_scatters_by_its_reading()
    {
        var joint = JointFigures.Of(new(Heron.Now()), "rod");
        Assert.Equal(30039, joint.Preload, 5.0);
        Assert.Equal(0.005 / 0.165, joint.Scatter, 1e-9);
        Assert.Equal(0.165e-3, joint.Stretch, 1e-12);
    }
}
