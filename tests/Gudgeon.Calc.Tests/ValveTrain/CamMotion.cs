using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

public class CamMotion
{
    private const double Step = 1e-5;

    [Theory]
    [InlineData(CamLaw.Harmonic)]
    [InlineData(CamLaw.Cycloidal)]
    [InlineData(CamLaw.Polynomial345)]
    [InlineData(CamLaw.Polynomial4567)]
    public void A_law_rises_from_dwell_to_dwell_and_its_derivatives_are_its_own(CamLaw law)
    {
        Assert.Equal(0, CamLaws.At(law, 0).Lift, 1e-12);
        Assert.Equal(1, CamLaws.At(law, 1).Lift, 1e-12);
        Gen.Double[0.01, 0.99].Sample(u => Derivatives(x => CamLaws.At(law, x), u));
    }

    [Theory]
    [InlineData(CamLaw.Harmonic)]
    [InlineData(CamLaw.Cycloidal)]
    [InlineData(CamLaw.Polynomial345)]
    [InlineData(CamLaw.Polynomial4567)]
    public void The_factors_are_the_peaks_of_the_law(CamLaw law)
    {
        var factors = CamLaws.Factors(law);
        var points = Enumerable.Range(0, 20001).Select(i => CamLaws.At(law, i / 20000.0)).ToList();
        Assert.Equal(points.Max(p => Math.Abs(p.Slope)), factors.Velocity, 1e-6);
        Assert.Equal(points.Max(p => Math.Abs(p.Curvature)), factors.Acceleration, 1e-6);
        Assert.Equal(points.Max(p => Math.Abs(p.Jerk)), factors.Jerk, 1e-5);
        Assert.Equal(factors.Acceleration, CamLaws.At(law, factors.AccelerationPosition).Curvature, 1e-9);
    }

    [Fact]
    public void The_lobe_is_smooth_and_shut_outside_its_duration()
    {
        Gen.Double[-0.49, 0.49].Sample(z => Derivatives(PolynomialLobe.At, z));
        Assert.Equal(0, PolynomialLobe.At(0.5).Lift);
        Assert.Equal(0, PolynomialLobe.Motion(0.0085, 2.6, 1.4, 300).Acceleration);
        Assert.Equal(1, PolynomialLobe.At(0).Lift);
    }

    [Fact]
    public void A_circular_arc_cam_is_smooth_where_flank_meets_nose() => Gen.Select(Gen.Double[12e-3, 20e-3], Gen.Double[4e-3, 9e-3], Gen.Double[2e-3, 6e-3], Gen.Double[0.95, 1.3]).Sample((radius, lift, nose, half) =>
    {
        var distance = radius + lift - nose;
        if (radius - nose <= distance * Math.Cos(half))
        {
            Assert.Throws<FormulaDomainException>(() => CircularArcCam.OnFlatFollower(radius, lift, nose, half, 1));
            return;
        }

        var cam = CircularArcCam.OnFlatFollower(radius, lift, nose, half, 1);
        var onFlank = cam.FlankCentre * (1 - Math.Cos(cam.FlankEnd));
        var onNose = (distance * Math.Cos(half - cam.FlankEnd)) + nose - radius;
        Assert.Equal(onFlank, onNose, 1e-9);
        Assert.Equal(cam.Velocity, distance * Math.Sin(half - cam.FlankEnd), 1e-9);
    });

    [Fact]
    public void The_base_circle_leaves_the_least_radius_of_curvature() => Gen.Select(Gen.Enum<CamLaw>(), Gen.Double[5e-3, 12e-3], Gen.Double[0.9, 1.6]).Sample((law, lift, angle) =>
    {
        var cam = CamLaws.OnFlatTappet(law, lift, angle, 2e-3);
        for (var i = 0; i <= 200; i++)
        {
            var point = CamLaws.At(law, i / 200.0);
            Assert.True(cam.BaseRadius + (lift * (point.Lift + (point.Curvature / (angle * angle)))) >= 2e-3 - 1e-12);
        }
    });

    private static void Derivatives(Func<double, LawPoint> law, double at)
    {
        var (low, here, high) = (law(at - Step), law(at), law(at + Step));
        Assert.Equal((high.Lift - low.Lift) / (2 * Step), here.Slope, 1e-6);
        Assert.Equal((high.Slope - low.Slope) / (2 * Step), here.Curvature, 1e-5);
        Assert.Equal((high.Curvature - low.Curvature) / (2 * Step), here.Jerk, 1e-4);
    }
}
