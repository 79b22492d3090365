using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Calc.Tests.Crank;

/// <summary>The exact slider-crank against its own derivatives, limits and symmetries.</summary>
public class SliderCrankTests
{
    private static readonly Gen<(double Radius, double Rod, double Offset, double Angle)> Cranks =
        Gen.Select(Gen.Double[0.02, 0.06], Gen.Double[1.6, 2.6], Gen.Double[-0.3, 0.3], Gen.Double[0, Math.Tau])
            .Select(t => (t.Item1, 2 * t.Item1 * t.Item2 / 1.2, t.Item1 * t.Item3, t.Item4));

    [Fact]
    public void VelocityAndAccelerationAreTheSlopesOfTravel() => Cranks.Sample(c =>
    {
        const double speed = 900, step = 1e-4;
        var at = At(c.Angle);
        var (before, after) = (At(c.Angle - step), At(c.Angle + step));
        Assert.Equal((after.Travel - before.Travel) / (2 * step) * speed, at.Velocity, 1e-6 * speed * c.Radius);
        Assert.Equal((after.Velocity - before.Velocity) / (2 * step) * speed, at.Acceleration, 1e-6 * speed * speed * c.Radius);

        PistonMotion At(double angle) => SliderCrank.Motion(c.Radius, c.Rod, angle, speed, c.Offset);
    });

    [Fact]
    public void TravelRunsFromNothingToTheStroke() => Cranks.Sample(c =>
    {
        var ends = DeadCentres.Find(c.Radius, c.Rod, c.Offset);
        var travel = SliderCrank.Motion(c.Radius, c.Rod, c.Angle, 0, c.Offset).Travel;
        Assert.InRange(travel, -1e-12, ends.Stroke + 1e-12);
        Assert.Equal(0, SliderCrank.Motion(c.Radius, c.Rod, ends.Top, 0, c.Offset).Travel, 1e-12);
        Assert.Equal(ends.Stroke, SliderCrank.Motion(c.Radius, c.Rod, ends.Bottom, 0, c.Offset).Travel, 1e-12);
    });

    [Fact]
    public void TheOtherOffsetIsTheOtherDirection() => Cranks.Sample(c =>
    {
        var forward = SliderCrank.Motion(c.Radius, c.Rod, c.Angle, 500, c.Offset);
        var mirrored = SliderCrank.Motion(c.Radius, c.Rod, -c.Angle, 500, -c.Offset);
        Assert.Equal(forward.Travel, mirrored.Travel, 1e-12);
        Assert.Equal(forward.Velocity, -mirrored.Velocity, 1e-9);
        Assert.Equal(forward.Acceleration, mirrored.Acceleration, 1e-6);
    });

    [Fact]
    public void TwoTermsApproachTheExactLawWithTheThirdPowerOfTheRodRatio() => Gen.Double[0, Math.Tau].Sample(angle =>
    {
        // The first harmonic left out is of third order in the rod ratio: a rod twice as long leaves an eighth.
        Assert.InRange(Miss(8, angle), 0, 0.6 / (8 * 8 * 8));
        Assert.InRange(Miss(16, angle), 0, 0.6 / (16 * 16 * 16));

        static double Miss(double rods, double angle) =>
            Math.Abs(SliderCrank.Motion(1, rods, angle, 1).Acceleration - TwoTermCrank.Motion(1, rods, angle, 1).Acceleration);
    });

    [Fact]
    public void MeanSpeedIsTwoStrokesATurn()
    {
        var greatest = PistonSpeed.Greatest(0.0275, 0.104, 1256.637);
        var mean = PistonSpeed.Mean(0.055, 1256.637);
        Assert.Equal(1.62501, greatest.Speed / mean, 1e-5);
        Assert.Equal(1256.637, PistonSpeed.CrankSpeedFor(0.055, mean), 1e-9);
    }

    [Theory]
    [InlineData(0.2637, true)]
    [InlineData(0.2639, false)]
    public void TheLeastAccelerationLeavesBottomDeadCentreAtItsThreshold(double ratio, bool atBottom)
    {
        // Threshold (√21 - 3)/6 = 0.263763, from 3 L³ - 4 L + 1 = 0.
        var extreme = PistonSpeed.GreatestUpward(ratio, 1, 1);
        Assert.Equal(atBottom, Math.Abs(extreme.Angle - Math.PI) < 1e-3);
        Assert.True(extreme.Acceleration >= DeadCentres.Accelerations(ratio, 1, 1).Bottom - 1e-12);
    }

    [Fact]
    public void HarmonicsFollowTheirSeries() => Gen.Double[0.05, 0.35].Sample(ratio =>
    {
        var (l3, l5) = (Math.Pow(ratio, 3), Math.Pow(ratio, 5));
        var harmonics = AccelerationHarmonics.Of(ratio);
        Assert.Equal(ratio + (l3 / 4) + (15 * l5 / 128), harmonics.Second, 0.1 * Math.Pow(ratio, 7));
        Assert.Equal(-(l3 / 4) - (3 * l5 / 16), harmonics.Fourth, 0.2 * Math.Pow(ratio, 7));
    });

    [Fact]
    public void CylinderVolumeKeepsTheCompressionRatio() => Cranks.Sample(c =>
    {
        var ends = DeadCentres.Find(c.Radius, c.Rod, c.Offset);
        var top = SliderCrank.Volume(0.08, c.Radius, c.Rod, 11.5, ends.Top, c.Offset);
        var bottom = SliderCrank.Volume(0.08, c.Radius, c.Rod, 11.5, ends.Bottom, c.Offset);
        Assert.Equal(11.5, bottom / top, 1e-9);
    });

    [Fact]
    public void ARodShorterThanTheThrowIsRefused() =>
        Assert.Contains("rod length", Assert.Throws<FormulaDomainException>(() => SliderCrank.Motion(0.05, 0.04, 1, 1)).Message, StringComparison.Ordinal);
}
