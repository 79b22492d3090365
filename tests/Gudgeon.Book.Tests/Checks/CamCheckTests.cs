using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Checks of lobe centres and of lobes on their followers, each against a value worked by hand.</summary>
public class CamCheckTests
{
    private const double Degree = Math.PI / 180;

    /// <summary>Equal lift at 20° and at 190°: a centre of 105°.</summary>
    private static readonly BuildBook Wheel = Books.Of(("cam[inlet].wheelTable", "1 mm at 20° at 190°"), ("cam[inlet].centreWanted", "104°"));

    /// <summary>The lobe of the reference case VT-12, 9.2 mm over 144 cam degrees, on a bucket.</summary>
    private static readonly BuildBook Bucket = Books.Of(
        ("cam[inlet].law", "cubed"),
        ("cam[inlet].lift", "9.2 mm"),
        ("cam[inlet].duration", "288°"),
        ("cam[inlet].centre", "102°"),
        ("cam[inlet].baseRadius", "28 mm"),
        ("follower[inlet].kind", "bucket"),
        ("follower[inlet].faceDiameter", "29 mm"));

    private static readonly BuildBook Ramp = Books.Of(("cam[inlet].rampHeight", "0.2 mm"), ("valve[inlet].lash", "0.15 mm"));

    private static List<string> InstancesOf(BuildBook book, string check) => [.. CheckCatalogue.Find(check).Instances(new(book.Now()))];

    [Fact]
    public void The_lobe_centre_is_held_to_what_is_wanted()
    {
        Appraisal.Of(Wheel, "lobe-centre", "inlet").Is(105 * Degree, 106.0 / 105, Verdict.Holds);
        Appraisal.Of(Wheel.Set(("cam[inlet].centreWanted", "102.5°")), "lobe-centre", "inlet").Is(105 * Degree, 104.5 / 105, Verdict.FallsShort);
        Appraisal.Of(Wheel.Set(("cam[inlet].centreWanted", "102.5°"), ("cam[inlet].centreTolerance", "3°")), "lobe-centre", "inlet").Is(105 * Degree, 105.5 / 105, Verdict.Holds);
        var exhaust = Books.Of(("cam[exhaust].wheelTable", "1 mm at -145.5° at -60°"), ("cam[exhaust].centreWanted", "106°"));
        Appraisal.Of(exhaust, "lobe-centre", "exhaust").Is(102.75 * Degree, 102.75 / 104, Verdict.FallsShort);
    }

    /// <summary>0° ± 0.8° of the wheel is a standard uncertainty of 0.4°, a guard band of 0.66°: 0.5° inside is too close, 0.8° is not.</summary>
    [Theory]
    [InlineData("103.5°", Verdict.TooCloseToTell)]
    [InlineData("102.8°", Verdict.TooCloseToTell)]
    [InlineData("103.8°", Verdict.Holds)]
    [InlineData("102.2°", Verdict.FallsShort)]
    public void How_well_TDC_was_found_goes_into_the_verdict(string wanted, Verdict verdict)
    {
        var finding = Appraisal.Of(Wheel.Set(("cam[inlet].wheelZero", "0° ± 0.8°"), ("cam[inlet].centreWanted", wanted)), "lobe-centre", "inlet");
        Assert.Equal(0.4 * Degree, finding.ValueUncertainty, 1e-6);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("cam[inlet].wheelZero", finding.Contributions.Single().Found.Source);
    }

    [Fact]
    public void A_lobe_centre_wants_its_maker()
    {
        Assert.Equal(["cam[inlet].centreWanted"], Appraisal.Of(Wheel.Without("cam[inlet].centreWanted"), "lobe-centre", "inlet").Missing);
        Assert.Equal(["inlet"], InstancesOf(Wheel, "lobe-centre"));
        Assert.Empty(InstancesOf(Bucket, "lobe-centre"));
        var twin = Wheel.Set(("engine.cylinders", "2"), ("cam[inlet.2].wheelTable", "1 mm at 22° at 192°"));
        Assert.Equal(["inlet.1.1", "inlet.2.1"], InstancesOf(twin, "lobe-centre"));
        Appraisal.Of(twin, "lobe-centre", "inlet.2.1").Is(107 * Degree, 106.0 / 107, Verdict.FallsShort);
    }

    // s + s'' is least at the nose: h (1 − 24 / B²), with B = 144° of the cam.
    [Fact]
    public void The_least_radius_of_the_lobe_is_at_its_nose()
    {
        var nose = 9.2e-3 * (1 - (24 / (144 * Degree * 144 * Degree)));
        Assert.Equal(-25.756e-3, nose, 1e-6);
        Appraisal.Of(Bucket, "lobe-radius", "inlet").Is(28e-3 + nose, (28e-3 + nose) / 2e-3, Verdict.Holds);
        Appraisal.Of(Bucket.Set(("cam[inlet].baseRadius", "27 mm")), "lobe-radius", "inlet").Is(27e-3 + nose, (27e-3 + nose) / 2e-3, Verdict.FallsShort);
        Assert.Equal("cam radius on a flat follower", Appraisal.Of(Bucket, "lobe-radius", "inlet").Trace.Steps[^1].Formula.Name);
    }

    // The contact stands max(s') = 3.43460 h / B off the middle (VT-08) and reaches half the lobe's width to either side.
    [Fact]
    public void The_contact_stays_on_the_bucket()
    {
        var off = 3.43460 * 9.2e-3 / (144 * Degree);
        var middle = Appraisal.Of(Bucket, "bucket-face", "inlet");
        Assert.Equal(2 * off, middle.Judgement!.Value, 2e-6);
        Assert.Equal(28e-3, middle.Judgement.Upper!.Value, 1e-12);
        Assert.Contains("cam.width is not known", middle.Judgement.Remark, StringComparison.Ordinal);
        var line = Appraisal.Of(Bucket.Set(("cam[inlet].width", "13 mm")), "bucket-face", "inlet");
        Assert.Equal(2 * Math.Sqrt((off * off) + 42.25e-6), line.Judgement!.Value, 2e-6);
        Assert.Equal((Verdict.Holds, Verdict.FallsShort), (middle.Verdict, line.Verdict));
        Assert.Equal("", line.Judgement.Remark);
        Assert.Equal("bucket face for a cam", line.Trace.Steps[^1].Formula.Name);
    }

    [Fact]
    public void A_lobe_on_a_bucket_is_judged_where_both_are_known()
    {
        Assert.Equal(["inlet"], InstancesOf(Bucket, "lobe-radius"));
        Assert.Equal(["inlet"], InstancesOf(Bucket, "bucket-face"));
        Assert.Empty(InstancesOf(Bucket.Set(("follower[inlet].kind", "finger")), "lobe-radius"));
        Assert.Empty(InstancesOf(Bucket.Without("cam[inlet].baseRadius"), "bucket-face"));
        Assert.Empty(InstancesOf(Bucket.Without("follower[inlet].faceDiameter"), "bucket-face"));
        foreach (var check in new[] { "lobe-radius", "bucket-face" })
        {
            var finding = Appraisal.Of(Bucket.Without("cam[inlet].lift"), check, "inlet");
            Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
            Assert.Contains("cam[inlet].lift", finding.Missing);
            Assert.Contains("a lift curve or lobe of inlet", Appraisal.Of(Bucket.Without("cam[inlet].law"), check, "inlet").Missing);
        }
    }

    // At the valve the ramp is as much higher as the ratio says: 0.2 · 1.5 = 0.3 mm.
    [Fact]
    public void The_lash_is_taken_up_on_the_ramp()
    {
        Appraisal.Of(Ramp, "ramp", "inlet").Is(0.15e-3, 0.2 / 0.15, Verdict.Holds);
        Appraisal.Of(Ramp.Set(("valve[inlet].lash", "0.25 mm")), "ramp", "inlet").Is(0.25e-3, 0.8, Verdict.FallsShort);
        Appraisal.Of(Ramp.Set(("valve[inlet].lash", "0.25 mm"), ("follower[inlet].ratio", "1.5")), "ramp", "inlet").Is(0.25e-3, 1.2, Verdict.Holds);
        Assert.Equal(["valve[inlet].lash"], Appraisal.Of(Ramp.Without("valve[inlet].lash"), "ramp", "inlet").Missing);
        Assert.Equal(["inlet"], InstancesOf(Ramp, "ramp"));
        Assert.Empty(InstancesOf(Bucket, "ramp"));
    }

    // cos(γ) = (26² + 33² − 36²) / (2 · 26 · 33) = 469 / 1716; q = 42 / (26 sin(γ)) = 1.6793.
    [Fact]
    public void The_arms_of_a_finger_say_the_ramp_better_than_its_ratio()
    {
        var armed = Ramp.Set(("follower[inlet].ratio", "1.5"), ("cam[inlet].baseRadius", "15 mm"), ("follower[inlet].pivotToCam", "36 mm"), ("follower[inlet].camArm", "26 mm"), ("follower[inlet].padRadius", "18 mm"), ("follower[inlet].valveArm", "42 mm"));
        var ratio = 42 / (26 * Math.Sqrt(1 - (469.0 / 1716 * 469 / 1716)));
        Assert.Equal(1.6793, ratio, 1e-4);
        Appraisal.Of(armed, "ramp", "inlet").Is(0.15e-3, 0.2 * ratio / 0.15, Verdict.Holds);
        Assert.Equal(["follower[inlet].valveArm"], Appraisal.Of(armed.Without("follower[inlet].valveArm"), "ramp", "inlet").Missing);
    }
}
