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
    [InlineData(CamLaw.Parabolic)]
    [InlineData(CamLaw.ModifiedTrapezoid)]
    [InlineData(CamLaw.ModifiedSine)]
    public void A_law_rises_from_dwell_to_dwell_and_its_derivatives_are_its_own(CamLaw law)
    {
        Assert.Equal(0, CamLaws.At(law, 0).Lift, 1e-12);
        Assert.Equal(1, CamLaws.At(law, 1).Lift, 1e-12);
        Gen.Double[0.01, 0.99].Where(IsInsideOnePiece).Sample(u => Derivatives(x => CamLaws.At(law, x), u));
    }

    [Theory]
    [InlineData(CamLaw.Harmonic)]
    [InlineData(CamLaw.Cycloidal)]
    [InlineData(CamLaw.Polynomial345)]
    [InlineData(CamLaw.Polynomial4567)]
    [InlineData(CamLaw.Parabolic)]
    [InlineData(CamLaw.ModifiedTrapezoid)]
    [InlineData(CamLaw.ModifiedSine)]
    public void The_factors_are_the_peaks_of_the_law(CamLaw law)
    {
        var factors = CamLaws.Factors(law);
        var points = Enumerable.Range(0, 20001).Select(i => CamLaws.At(law, i / 20000.0)).ToList();
        Assert.Equal(points.Max(p => Math.Abs(p.Slope)), factors.Velocity, 1e-6);
        Assert.Equal(points.Max(p => Math.Abs(p.Curvature)), factors.Acceleration, 1e-6);
        Assert.Equal(points.Max(p => Math.Abs(p.Jerk)), factors.Jerk, 1e-5);
        Assert.Equal(factors.Acceleration, CamLaws.At(law, factors.AccelerationPosition).Curvature, 1e-9);
    }

    [Theory] // joints of the piecewise laws: lift and velocity never jump, acceleration only in the parabolic law
    [InlineData(CamLaw.Parabolic, false)]
    [InlineData(CamLaw.ModifiedTrapezoid, true)]
    [InlineData(CamLaw.ModifiedSine, true)]
    public void Pieces_of_a_law_meet(CamLaw law, bool accelerationToo)
    {
        for (var joint = 0.125; joint < 1; joint += 0.125)
        {
            var (before, after) = (CamLaws.At(law, joint - 1e-12), CamLaws.At(law, joint + 1e-12));
            Assert.Equal(before.Lift, after.Lift, 1e-9);
            Assert.Equal(before.Slope, after.Slope, 1e-9);
            Assert.True(!accelerationToo || Math.Abs(before.Curvature - after.Curvature) < 1e-8);
        }
    }

    [Theory] // factors as cam handbooks print them
    [InlineData(CamLaw.Parabolic, 2, 4, 0)]
    [InlineData(CamLaw.ModifiedTrapezoid, 2, 4.888, 61.43)]
    [InlineData(CamLaw.ModifiedSine, 1.760, 5.528, 69.47)]
    public void Piecewise_laws_have_the_printed_factors(CamLaw law, double velocity, double acceleration, double jerk)
    {
        var factors = CamLaws.Factors(law);
        Assert.Equal(velocity, factors.Velocity, 5e-4);
        Assert.Equal(acceleration, factors.Acceleration, 5e-4);
        Assert.Equal(jerk, factors.Jerk, 5e-3);
    }

    [Fact]
    public void A_parabolic_rise_has_the_constant_acceleration_of_the_book() // Sarkar, Theory of Machines, illustration 9.5 with its units put right
    {
        var speed = 1000 * Math.PI / 30;
        Assert.Equal(250.0, CamLaws.Peaks(CamLaw.Parabolic, 25e-3, 120 * Math.PI / 180, speed).Acceleration, 0.1);
        Assert.Equal(444.44, CamLaws.Peaks(CamLaw.Parabolic, 25e-3, 90 * Math.PI / 180, speed).Acceleration, 0.1);
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
    public void A_tangent_cam_is_smooth_where_flank_meets_nose() => Gen.Select(Gen.Double[12e-3, 20e-3], Gen.Double[4e-3, 9e-3], Gen.Double[2e-3, 8e-3], Gen.Double[6e-3, 15e-3]).Sample((radius, lift, nose, roller) =>
    {
        var cam = TangentCam.OnRoller(radius, lift, nose, roller, 1);
        var distance = radius + lift - nose;
        double OnNose(double fromTop) => (distance * Math.Cos(fromTop)) + Math.Sqrt(Math.Pow(nose + roller, 2) - Math.Pow(distance * Math.Sin(fromTop), 2)) - radius - roller;
        double OnFlank(double angle) => (radius + roller) * ((1 / Math.Cos(angle)) - 1);
        double Second(Func<double, double> f, double at) => (f(at + 1e-4) - (2 * f(at)) + f(at - 1e-4)) / 1e-8;

        var join = cam.HalfAngle - cam.FlankEnd;
        Assert.Equal(OnFlank(cam.FlankEnd), OnNose(join), 1e-12);
        Assert.Equal(cam.Velocity, (OnNose(join - Step) - OnNose(join + Step)) / (2 * Step), 1e-8);
        Assert.Equal(cam.FlankFinish, Second(OnFlank, cam.FlankEnd), 1e-5);
        Assert.Equal(cam.NoseStart, Second(OnNose, join), 1e-5);
        Assert.Equal(cam.NoseTop, Second(OnNose, 0), 1e-5);
        Assert.Equal(lift, OnNose(0), 1e-12);
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

    /// <summary>Laws made of pieces join them at eighths of the rise, where the highest derivative jumps.</summary>
    private static bool IsInsideOnePiece(double u) => Math.Abs((8 * u) - Math.Round(8 * u)) > 1e-3;

    private static void Derivatives(Func<double, LawPoint> law, double at)
    {
        var (low, here, high) = (law(at - Step), law(at), law(at + Step));
        Assert.Equal((high.Lift - low.Lift) / (2 * Step), here.Slope, 1e-6);
        Assert.Equal((high.Slope - low.Slope) / (2 * Step), here.Curvature, 1e-5);
        Assert.Equal((high.Curvature - low.Curvature) / (2 * Step), here.Jerk, 1e-4);
    }
}
