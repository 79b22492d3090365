using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Calc.Tests.Joints;

public class Threads
{
    [Theory] // ISO 965-2 limits of 6g bolt threads, mm
    [InlineData(3, 0.5, 2.980, 2.874, 2.655, 2.580)]
    [InlineData(5, 0.8, 4.976, 4.826, 4.456, 4.361)]
    [InlineData(8, 1.25, 7.972, 7.760, 7.160, 7.042)]
    [InlineData(10, 1.5, 9.968, 9.732, 8.994, 8.862)]
    [InlineData(12, 1.75, 11.966, 11.701, 10.829, 10.679)]
    [InlineData(16, 2, 15.962, 15.682, 14.663, 14.503)]
    [InlineData(20, 2.5, 19.958, 19.623, 18.334, 18.164)]
    public void Bolt_limits_are_those_of_the_standard(double d, double pitch, double majorMax, double majorMin, double pitchMax, double pitchMin)
    {
        var limits = ThreadLimits.Bolt(d * 1e-3, pitch * 1e-3);
        Same(majorMax, limits.MajorMax);
        Same(majorMin, limits.MajorMin);
        Same(pitchMax, limits.PitchMax);
        Same(pitchMin, limits.PitchMin);
    }

    [Theory] // ISO 965-2 limits of 6H nut threads, mm
    [InlineData(3, 0.5, 2.675, 2.775, 2.459, 2.599)]
    [InlineData(8, 1.25, 7.188, 7.348, 6.647, 6.912)]
    [InlineData(10, 1.5, 9.026, 9.206, 8.376, 8.676)]
    [InlineData(12, 1.75, 10.863, 11.063, 10.106, 10.441)]
    [InlineData(20, 2.5, 18.376, 18.600, 17.294, 17.744)]
    public void Nut_limits_are_those_of_the_standard(double d, double pitch, double pitchMin, double pitchMax, double minorMin, double minorMax)
    {
        var limits = ThreadLimits.Nut(d * 1e-3, pitch * 1e-3);
        Same(pitchMin, limits.PitchMin);
        Same(pitchMax, limits.PitchMax);
        Same(minorMin, limits.MinorMin);
        Same(minorMax, limits.MinorMax);
    }

    [Fact]
    public void A_pitch_that_is_not_metric_is_refused() =>
        Assert.Throws<FormulaDomainException>(() => ThreadLimits.Bolt(10e-3, 1.27e-3));

    [Fact]
    public void The_pitch_must_leave_a_core() =>
        Assert.Throws<FormulaDomainException>(() => MetricThread.Sizes(3e-3, 1.5e-3));

    [Fact]
    public void Diameters_of_a_thread_keep_their_order() => Gen.Select(Gen.Double[3e-3, 60e-3], Gen.Double[0.05, 0.2]).Sample((diameter, ratio) =>
    {
        var sizes = MetricThread.Sizes(diameter, ratio * diameter);
        Assert.True(sizes.CoreDiameter < sizes.MinorDiameter && sizes.MinorDiameter < sizes.PitchDiameter && sizes.PitchDiameter < diameter);
        Assert.True(sizes.CoreArea < sizes.StressArea);
    });

    [Theory] // stress areas of ISO 898-1, mm²
    [InlineData(3, 0.5, 5.03)]
    [InlineData(14, 2, 115)]
    [InlineData(16, 2, 157)]
    [InlineData(20, 2.5, 245)]
    [InlineData(24, 3, 353)]
    public void Nominal_stress_areas_are_those_of_the_standard(double d, double pitch, double area) =>
        Assert.Equal(area * 1e-6, PropertyClasses.Loads(PropertyClass.Class8_8, d * 1e-3, pitch * 1e-3).StressArea, 1e-10);

    [Fact]
    public void At_the_computed_engagement_bolt_and_thread_let_go_together() => Gen.Select(Gen.Double[700e6, 1300e6], Gen.Double[80e6, 400e6]).Sample((bolt, shear) =>
    {
        var area = MetricThread.Sizes(10e-3, 1.5e-3).StressArea;
        var perLength = ThreadStripping.ShearAreas(10e-3, 1.5e-3).Internal;
        var engagement = ThreadStripping.SoftNut(area, bolt, perLength, shear);
        Assert.Equal(area * bolt, ThreadStripping.StrippingForce(perLength, engagement, shear), 1e-3);
    });

    private static void Same(double millimetres, double metres) => Assert.Equal(millimetres, metres * 1e3, 1e-7);
}
