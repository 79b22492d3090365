using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Joints;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Rods, bolts, hot clearances and squish at speed without an engine run, each against a value worked by hand.</summary>
public class RodCheckTests
{
    private const double Speed = 9000 * Math.PI / 30, Radius = 36e-3, Length = 130e-3;

    private static readonly BuildBook Twin = Books.Of(
        ("engine.cylinders", "2"),
        ("engine.revLimit", "9000 rpm"),
        ("crank.stroke", "72 mm"),
        ("crank.pinLength", "22.1 mm"),
        ("crank.endFloat", "0.2 mm"),
        ("crank.endFloatMin", "0.07 mm"),
        ("crank.endFloatMax", "0.25 mm"),
        ("rod.length", "130 mm"),
        ("rod.mass", "400 g"),
        ("rod.smallEndMass", "120 g"),
        ("rod.capMass", "100 g"),
        ("rod.depth", "23 mm"),
        ("rod.width", "15.5 mm"),
        ("rod.web", "3.6 mm"),
        ("rod.flange", "3.6 mm"),
        ("rod.yieldStrength", "800 MPa"),
        ("rod.bigEndWidth", "21.8 mm"),
        ("rod.sideClearanceMin", "0.15 mm"),
        ("rod.sideClearanceMax", "0.4 mm"),
        ("piston.mass", "380 g"),
        ("piston[2].mass", "390 g"),
        ("piston.diameter", "89.4 mm"),
        ("piston.expansion", "22 µm/(m·K)"),
        ("piston.skirtTemperature", "140 °C"),
        ("piston.topRingGap", "0.5 mm"),
        ("piston.ringExpansion", "11.5 µm/(m·K)"),
        ("piston.ringTemperature", "220 °C"),
        ("piston.topGroove", "1.24 mm"),
        ("piston.topRingHeight", "1.2 mm"),
        ("piston.topGrooveRoot", "81.9 mm"),
        ("piston.topRingThickness", "3.5 mm"),
        ("cylinder.bore", "89.5 mm"),
        ("cylinder.expansion", "11 µm/(m·K)"),
        ("cylinder.temperature", "110 °C"),
        ("cylinder.topTemperature", "150 °C"),
        ("cylinder.deckHeight", "0.3 mm"),
        ("cylinder.gasketThickness", "0.8 mm"),
        ("joint[rod].bolts", "2"),
        ("joint[rod].cylinders", "0"),
        ("joint[rod].thread", "8 mm"),
        ("joint[rod].pitch", "1 mm"),
        ("joint[rod].shankDiameter", "7 mm"),
        ("joint[rod].yieldStrength", "1100 MPa"),
        ("joint[rod].modulus", "205 GPa"),
        ("joint[rod].grip", "36 mm"),
        ("joint[rod].bearingDiameter", "12 mm"),
        ("joint[rod].holeDiameter", "8.2 mm"),
        ("joint[rod].outerDiameter", "16 mm"),
        ("joint[rod].clampedModulus", "205 GPa"),
        ("joint[rod].torque", "32 N·m"),
        ("joint[rod].method", "torque estimated b"),
        ("joint[rod].threadFriction", "0.1"),
        ("joint[rod].headFriction", "0.1"),
        ("joint[rod].embedding", "7 µm"),
        ("joint[rod].eccentric", "1.2"));

    private static readonly double Top = Radius * Speed * Speed * (1 + (Radius / Length));
    private static readonly double Area = ((2 * 15.5 * 3.6) + (15.8 * 3.6)) * 1e-6;
    private static readonly double Bolt = BoltResilience.OfBolt(8e-3, 1e-3, 36e-3, 7e-3, 0, 205e9, 205e9).Total;

    // What a gauge over both ends sees: without the 0.33 d of the tapped rod.
    private static readonly double Gauged = Bolt - (0.33 * 8e-3 / (205e9 * Math.PI / 4 * 64e-6));
    private static readonly double Parts = ClampedParts.Resilience(12e-3, 8.2e-3, 16e-3, 36e-3, 205e9).Resilience;

    // The heavier piston's rod: (390 + 120) g on a section of 168.48 mm².
    [Fact]
    public void Tension_at_overlap()
    {
        var stress = 0.51 * Top / Area;
        Appraisal.Of(Twin, "rod-tension", "2").Is(stress, 800e6 / 1.5 / stress, Verdict.Holds);
        Appraisal.Of(Twin.Set(("rod.shankArea", "35 mm²")), "rod-tension", "2").Is(0.51 * Top / 35e-6, 800e6 / 1.5 / (0.51 * Top / 35e-6), Verdict.FallsShort);
        Assert.Equal(["rod[1].yieldStrength"], Appraisal.Of(Twin.Without("rod.yieldStrength"), "rod-tension", "1").Missing);
    }

    // (390 + 120) g at the top's acceleration and (280 - 100) g at the pin's, on two bolts, prying 1.2.
    [Fact]
    public void The_cap_at_overlap()
    {
        var pull = ((0.51 * Top) + (0.18 * Radius * Speed * Speed)) / 2 * 1.2;
        var torque = 32 / ((1e-3 / (2 * Math.PI)) + ((8e-3 - (0.75 * Math.Sqrt(3) / 2 * 1e-3)) * 0.1 / Math.Sqrt(3)) + (10.1e-3 * 0.1 / 2));
        var (factor, settles) = (0.5 * Parts / (Bolt + Parts), 7e-6 / (Bolt + Parts));
        var lifts = ((torque * 2 / 3) - settles) / (1 - factor);
        Appraisal.Of(Twin, "rod-bolt-separation", "rod").Is(pull, lifts / pull, Verdict.Holds);
        var amplitude = factor * pull / (2 * MetricThread.Sizes(8e-3, 1e-3).StressArea);
        Appraisal.Of(Twin, "rod-bolt-fatigue", "rod").Is(amplitude, 0.85e6 * ((150 / 8.0) + 45) / amplitude, Verdict.Holds);
        Assert.Equal(["rod"], CheckCatalogue.Find("rod-bolt-separation").Instances(new(Twin.Set(("joint[mount].torque", "36 N·m")).Now())));
        Assert.Empty(CheckCatalogue.Find("head-separation").Instances(new(Twin.Now())));
    }

    // Where the stretch was read the preload comes from it. Without a ± the guide for a measured stretch holds: a factor of
    // 1.5 is a scatter of (1.5 − 1) / (1.5 + 1) = a fifth. With one its ± is the scatter: 0.004 over 0.16 mm.
    [Theory]
    [InlineData("0.16 mm", 0.2)]
    [InlineData("0.16 mm ± 0.004 mm", 0.025)]
    public void A_stretch_that_was_read_goes_before_the_torque(string given, double scatter)
    {
        var read = Twin.Set(("joint[rod].stretch", given));
        var preload = 0.16e-3 / Gauged;
        var lifts = ((preload * (1 - scatter)) - (7e-6 / (Bolt + Parts))) / (1 - (0.5 * Parts / (Bolt + Parts)));
        Assert.Equal(lifts, Appraisal.Of(read, "rod-bolt-separation", "rod").Judgement!.Upper!.Value, lifts * 1e-9);
        Assert.Equal(preload * (1 + scatter), Appraisal.Of(read, "bolt-preload", "rod").Judgement!.Value, preload * 1e-9);
        Assert.Equal(Verdict.Holds, Appraisal.Of(read, "bolt-stretch", "rod").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(read.Set(("joint[rod].stretch", "0.1 mm")), "bolt-stretch", "rod").Verdict);
        Assert.Equal(Verdict.FallsShort, Appraisal.Of(read.Set(("joint[rod].stretch", "0.25 mm")), "bolt-stretch", "rod").Verdict);
        Assert.Empty(CheckCatalogue.Find("bolt-stretch").Instances(new(Twin.Now())));
    }

    // The sheet of joints, its checks and those of the rods take one force: the engine's pull with its prying.
    [Fact]
    public void The_pull_of_the_rod_goes_before_a_force_that_was_written()
    {
        var written = Twin.Set(("joint[rod].axialForce", "12 kN"), ("joint[rod].clampWanted", "2 kN"));
        var pull = ((0.51 * Top) + (0.18 * Radius * Speed * Speed)) / 2 * 1.2;
        var joint = JointFigures.Of(new(written.Now()), "rod");
        Assert.Equal(pull, joint.Force, pull * 1e-9);
        Assert.Contains("prying counted", joint.Facts.Single(f => f.Name == "working force on one bolt").Remark, StringComparison.Ordinal);
        var (joints, rods) = (Appraisal.Of(written, "bolt-fatigue", "rod"), Appraisal.Of(written, "rod-bolt-fatigue", "rod"));
        Assert.Equal(rods.Judgement!.Value, joints.Judgement!.Value);
        Assert.Contains("pull of the rod", joints.Judgement.Remark, StringComparison.Ordinal);
        Assert.Equal(joint.ClampLeft, Appraisal.Of(written, "joint-clamp-left", "rod").Judgement!.Value);

        var unknown = written.Without("engine.revLimit");
        var without = JointFigures.Of(new(unknown.Now()), "rod");
        Assert.Equal(12e3 * 1.2, without.Force, 1e-6);
        Assert.Contains("joint[rod].axialForce", without.Facts.Single(f => f.Name == "working force on one bolt").Remark, StringComparison.Ordinal);
        Assert.Equal(["engine.revLimit"], Appraisal.Of(unknown, "rod-bolt-separation", "rod").Missing);
    }

    [Fact]
    public void Side_clearance_and_end_float()
    {
        Appraisal.Of(Twin, "rod-side-clearance", "1").Is(0.3e-3, 0.4 / 0.3, Verdict.Holds);
        Appraisal.Of(Twin.Set(("rod[1].sideClearance", "0.5 mm")), "rod-side-clearance", "1").Is(0.5e-3, 0.8, Verdict.FallsShort);
        Appraisal.Of(Twin, "crank-end-float", "").Is(0.2e-3, 1.25, Verdict.Holds);
        Appraisal.Of(Twin.Set(("crank.endFloat", "0.3 mm")), "crank-end-float", "").Is(0.3e-3, 0.25 / 0.3, Verdict.FallsShort);
    }

    // Two rods on one pin share what the pin leaves: 43.9 - 2 × 21.8 mm.
    [Fact]
    public void Rods_of_a_V_share_their_side_clearance()
    {
        var vee = Twin.Set(("cylinder.pin", "1"), ("crank.pinLength", "43.9 mm"));
        Assert.Equal(0.3e-3, Appraisal.Of(vee, "rod-side-clearance", "2").Judgement!.Value, 1e-9);
    }

    // 0.1 mm cold; 89.5 (22 × 120 - 11 × 90) 10⁻⁶ mm lost.
    [Fact]
    public void Hot_clearances()
    {
        var lost = 89.5e-3 * ((22e-6 * 120) - (11e-6 * 90));
        Appraisal.Of(Twin, "piston-clearance-hot", "1").Is(0.1e-3 - lost, (0.1e-3 - lost) / 0.01e-3, Verdict.FallsShort);
        var alike = 0.1e-3 - (89.5e-3 * ((22e-6 * 120) - (21.5e-6 * 90)));
        Appraisal.Of(Twin.Set(("cylinder.expansion", "21.5 µm/(m·K)")), "piston-clearance-hot", "1").Is(alike, alike / 0.01e-3, Verdict.Holds);
        var closes = Math.PI * 89.5e-3 * ((11.5e-6 * 200) - (11e-6 * 130));
        Appraisal.Of(Twin, "ring-gap-hot", "1").Is(0.5e-3 - closes, (0.5e-3 - closes) / 0.1e-3, Verdict.Holds);
        Appraisal.Of(Twin, "ring-side-top", "1").Is(0.04e-3, 2, Verdict.Holds);
        Appraisal.Of(Twin, "ring-back", "1").Is(0.3e-3, 2, Verdict.Holds);
        Appraisal.Of(Twin.Set(("piston.topRingHeight", "1.23 mm")), "ring-side-top", "1").Is(0.01e-3, 0.5, Verdict.FallsShort);
    }

    // 1.1 mm less stretch, rock, both bearings and heat, each only where it is known.
    [Fact]
    public void Squish_at_the_rev_limit_counts_what_is_known()
    {
        var stretch = 0.5 * Top * Length / (205e9 * Area);
        Assert.Equal(1.1e-3 - stretch, Appraisal.Of(Twin, "squish-running", "1").Judgement!.Value, 1e-9);
        var more = Twin.Set(("piston.rock", "0.07 mm"), ("pin.clearance", "0.015 mm"), ("bearing[bigEnd].clearanceMax", "0.06 mm"));
        Assert.Equal(1.1e-3 - stretch - 0.145e-3, Appraisal.Of(more, "squish-running", "1").Judgement!.Value, 1e-9);
        var measured = more.Set(("bearing[bigEnd.1].journal", "42 mm"), ("bearing[bigEnd.1].housing", "45.04 mm"), ("bearing[bigEnd.1].shellThickness", "1.5 mm"));
        Assert.Equal(1.1e-3 - stretch - 0.125e-3, Appraisal.Of(measured, "squish-running", "1").Judgement!.Value, 1e-9);
        var hot = measured.Set(("piston.crownHeight", "30 mm"), ("piston.crownTemperature", "200 °C"), ("rod.expansion", "11.5 µm/(m·K)"), ("rod.temperature", "110 °C"));
        var growth = Squish.Growth(Radius, Length, 30e-3, 11.5e-6, 90, 22e-6, 180, 11e-6, 90);
        Assert.Equal(1.1e-3 - stretch - 0.125e-3 - growth, Appraisal.Of(hot, "squish-running", "1").Judgement!.Value, 1e-9);
    }
}
