using Gudgeon.Book.Checks;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>M10 × 1.5 at 44 N·m with friction 0.12 in thread and under the head: bearing face 17 mm, hole 10.6 mm.</summary>
public class JointCheckTests
{
    private static readonly double PitchDiameter = 10e-3 - (0.75 * Math.Sqrt(3) / 2 * 1.5e-3);
    private static readonly double CoreDiameter = 10e-3 - (17.0 / 12 * Math.Sqrt(3) / 2 * 1.5e-3);

    // F = T / (P / 2π + d2 µ / (2 cos 30°) + (17 + 10.6) / 2 · µ / 2); the method scatters by (2 − 1) / (2 + 1) = 1/3.
    private static readonly double Preload = 44 / ((1.5e-3 / (2 * Math.PI)) + (PitchDiameter * 0.12 / Math.Sqrt(3)) + (13.8e-3 * 0.12 / 2));

    [Fact]
    public void Greatest_preload()
    {
        var stressDiameter = (PitchDiameter + CoreDiameter) / 2;
        var ratio = 1.5 * PitchDiameter / stressDiameter * ((1.5e-3 / (Math.PI * PitchDiameter)) + (0.12 * 2 / Math.Sqrt(3)));
        var allowed = Math.PI / 4 * stressDiameter * stressDiameter * 0.9 * 940e6 / Math.Sqrt(1 + (3 * ratio * ratio));
        Assert.InRange(Preload, 24e3, 28e3);
        Appraisal.Of(Engines.Bare, "bolt-preload", "head").Is(Preload * 4 / 3, allowed / (Preload * 4 / 3), Verdict.Holds);
        Appraisal.Of(Engines.Bare.Set(("joint[head].yieldStrength", "640 MPa")), "bolt-preload", "head").Is(Preload * 4 / 3, allowed * 640 / 940 / (Preload * 4 / 3), Verdict.FallsShort);
    }

    // pS = N F / ((1 − Φ) π/4 · 94²), F the least preload less what embedding takes, Φ half the concentric load factor.
    [Fact]
    public void Head_separation()
    {
        var bolt = BoltResilience.OfBolt(10e-3, 1.5e-3, 128e-3, 10e-3, 0, 205e9, 72e9).Total;
        var parts = ClampedParts.Resilience(17e-3, 10.6e-3, 26e-3, 128e-3, 72e9).Resilience;
        var least = (Preload * 2 / 3) - (13e-6 / (bolt + parts));
        var separation = 4 * least / ((1 - (0.5 * parts / (bolt + parts))) * Math.PI / 4 * 94e-3 * 94e-3);
        var peak = Engines.BareDuty.PeakPressure.Value - 101325;
        var finding = Engines.OnBare("head-separation", "head");
        Assert.Equal(peak, finding.Judgement!.Value, 1);
        Assert.Equal(separation, finding.Judgement.Upper!.Value, separation * 1e-9);
        Assert.Equal(separation / peak, finding.Reserve, 1e-6);
    }

    [Fact]
    public void A_joint_that_sees_no_gas_load_has_no_separation()
    {
        var book = Engines.Bare.Set(("joint[mount].torque", "36 N·m"), ("joint[mount].cylinders", "0"));
        Assert.Equal(["head"], CheckCatalogue.Find("head-separation").Instances(new(book.Now())));
        Assert.Equal(["head", "mount"], CheckCatalogue.Find("bolt-preload").Instances(new(book.Now())));
    }
}
