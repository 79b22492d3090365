using CsCheck;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Simulation.Tests.ValveTrain;

public class LiftProfileTests
{
    private const double Duration = 150 * Trains.Degree;

    [Fact]
    public void PolynomialLobeIsReadBackWithItsDerivatives() => Gen.Double[-1.4, 1.4].Sample(angle =>
    {
        var point = LiftProfile.Polynomial(8.5e-3, Duration).At(angle);
        var law = PolynomialLobe.At(angle / Duration);
        Assert.Equal(8.5e-3 * law.Lift, point.Lift, 1e-12);
        Assert.Equal(8.5e-3 * law.Slope / Duration, point.Slope, 1e-9);
        Assert.Equal(8.5e-3 * law.Curvature / (Duration * Duration), point.Curvature, 1e-6);
    });

    [Fact]
    public void UnevenPointsGiveTheSameLobe() => Gen.Double[-1.3, 1.3].Sample(angle =>
    {
        var angles = Enumerable.Range(0, 41).Select(i => Duration / 2 * Math.Sin((i - 20) * Math.PI / 40)).ToArray();
        var profile = LiftProfile.FromPoints(angles, [.. angles.Select(At)]);
        Assert.Equal(At(angle).Lift, profile.At(angle).Lift, 1e-8);
        Assert.Equal(At(angle).Curvature, profile.At(angle).Curvature, 2e-4);
        Assert.Equal(8.5e-3, profile.FullLift, 1e-8);
    });

    [Fact]
    public void ReadingsEveryTwoDegreesGiveTheLobeBack() => Gen.Double[-1.2, 1.2].Sample(angle =>
    {
        var angles = Enumerable.Range(0, 76).Select(i => (-75 + (2 * i)) * Trains.Degree).ToArray();
        var profile = LiftProfile.FromReadings(angles, [.. angles.Select(a => At(a).Lift)]);
        Assert.Equal(At(angle).Lift, profile.At(angle).Lift, 1e-7);
        Assert.Equal(At(angle).Slope, profile.At(angle).Slope, 2e-5);
        Assert.Equal(At(angle).Curvature, profile.At(angle).Curvature, 0.6e-3);
    });

    /// <summary>No steps in lift, slope and curvature anywhere, its ends included.</summary>
    [Fact]
    public void LiftSlopeAndCurvatureHaveNoSteps()
    {
        double[] angles = [-1.2, -0.9, -0.5, -0.2, 0.15, 0.5, 0.8, 1.25];
        var profile = LiftProfile.FromReadings(angles, [0, 1e-3, 5e-3, 8e-3, 8.2e-3, 5e-3, 1.5e-3, 0]);
        var (slope, curvature) = (0.0, 0.0);
        const double Step = 1e-4;
        for (var angle = -1.3; angle < 1.3; angle += Step)
        {
            var (left, right) = (profile.At(angle), profile.At(angle + Step));
            slope = Math.Max(slope, Math.Abs(right.Slope - left.Slope));
            curvature = Math.Max(curvature, Math.Abs(right.Curvature - left.Curvature));
            Assert.Equal((right.Lift - left.Lift) / Step, (left.Slope + right.Slope) / 2, 1e-6);
        }

        Assert.True(slope < 2e-5 && curvature < 2e-4, $"{slope}, {curvature}");
    }

    [Fact]
    public void LiftAloneIsTheSameLift() => Gen.Double[-1.5, 1.5].Sample(angle =>
    {
        var profile = LiftProfile.Polynomial(8.5e-3, Duration);
        Assert.Equal(profile.At(angle).Lift, profile.LiftAt(angle, out var slope));
        Assert.Equal(profile.At(angle).Slope, slope);
    });

    [Fact]
    public void GasForceIsReadStraightAndRepeats()
    {
        var gas = new GasForce([-1, 0, 1], [0, 100, -50]);
        Assert.Equal(50, gas.At(-0.5), 1);
        Assert.Equal(100, gas.At(0), 1);
        Assert.Equal(gas.At(0.3), gas.At(0.3 + (2 * Math.PI)), 1e-6);
        Assert.Equal(-25, gas.At(Math.PI), 1);
    }

    private static LiftPoint At(double angle)
    {
        var law = PolynomialLobe.At(angle / Duration);
        return new LiftPoint(8.5e-3 * law.Lift, 8.5e-3 * law.Slope / Duration, 8.5e-3 * law.Curvature / (Duration * Duration));
    }
}
