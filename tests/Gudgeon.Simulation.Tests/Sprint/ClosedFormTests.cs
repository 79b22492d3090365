using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

/// <summary>
/// The full simulator on machines with a closed form. Expected numbers were computed from the closed forms and by
/// quadrature outside this project (constant power: t = (9 m s²/8P)^(1/3); with drag v = vt (1 - exp(-3ks/m))^(1/3)).
/// </summary>
public class ClosedFormTests
{
    private const double Relative = 1e-6;

    [Theory]
    [InlineData(18.288, 1.041203, 26.34645)]
    [InlineData(100.584, 3.244222, 46.50607)]
    [InlineData(201.168, 5.149881, 58.59398)]
    [InlineData(304.8, 6.793620, 67.29844)]
    [InlineData(402.336, 8.174926, 73.82378)]
    public void ConstantPowerWithoutDrag(double distance, double time, double speed) =>
        Same(ClosedForms.ConstantPower(), distance, time, speed);

    [Theory]
    [InlineData(18.288, 1.043924, 26.17542)]
    [InlineData(100.584, 3.290849, 44.89339)]
    [InlineData(201.168, 5.297827, 54.67110)]
    [InlineData(304.8, 7.089036, 60.71213)]
    [InlineData(402.336, 8.643562, 64.59898)]
    public void ConstantPowerWithDrag(double distance, double time, double speed) =>
        Same(ClosedForms.ConstantPower(dragArea: 0.35), distance, time, speed);

    [Theory]
    [InlineData(18.288, 2.015937, 18.14343)]
    [InlineData(100.584, 4.729582, 42.20560)]
    [InlineData(201.168, 6.764280, 56.01587)]
    [InlineData(304.8, 8.468323, 65.37436)]
    [InlineData(402.336, 9.884715, 72.23620)]
    public void ConstantAccelerationThenConstantPower(double distance, double time, double speed) =>
        Same(ClosedForms.HeldThenConstantPower(), distance, time, speed);

    [Fact]
    public void TrapSpeedIsTheMeanOverTheLast66Feet()
    {
        Assert.Equal(73.19982, TrapSpeed(ClosedForms.ConstantPower()), 73.2 * Relative);
        Assert.Equal(64.25179, TrapSpeed(ClosedForms.ConstantPower(dragArea: 0.35)), 64.3 * Relative);
        Assert.Equal(71.58387, TrapSpeed(ClosedForms.HeldThenConstantPower()), 71.6 * Relative);

        static double TrapSpeed(SprintSpec spec) => Quarter(spec).TrapSpeed;
    }

    [Fact]
    public void OneFootOfRolloutIsFree()
    {
        var spec = ClosedForms.HeldThenConstantPower();
        var run = StandingStart.Run(spec with { Strip = spec.Strip with { Rollout = 0.3048 } });
        Assert.Equal(0.260256, run.RolloutTime, 1e-6);
        Assert.Equal(1.772410, run.At(18.288)!.Time, 1e-6);
        Assert.Equal(9.628678, run.At(ClosedForms.QuarterMile)!.Time, 1e-6);
        Assert.Equal(2.34231, run.Trace.First(p => p.Time >= 0).Speed, 1e-5);
    }

    [Fact]
    public void RolloutAtSixMetresPerSecondSquared()
    {
        var spec = ClosedForms.HeldThenConstantPower(held: 6);
        Assert.Equal(0.318748, StandingStart.Run(spec with { Strip = spec.Strip with { Rollout = 0.3048 } }).RolloutTime, 1e-6);
    }

    [Fact]
    public void GapInConstantAccelerationCostsLessThanItsLength()
    {
        // Power enough to hold 6 m/s² to the end of the run.
        var spec = ClosedForms.HeldThenConstantPower(held: 6, power: 1e6);
        Assert.Equal(11.580674, Quarter(spec).Time, 1e-6);
        Assert.Equal(11.691750, Quarter(spec.WithGap(atSpeed: 18, gap: 0.15)).Time, 1e-6);
    }

    [Fact]
    public void GapAtConstantPowerCostsLessThanItsLength() =>
        Assert.Equal(8.243448, Quarter(ClosedForms.ConstantPower().WithGap(atSpeed: 40, gap: 0.15)).Time, 2e-6);

    private static void Same(SprintSpec spec, double distance, double time, double speed)
    {
        var split = StandingStart.Run(spec).At(distance)!;
        Assert.Equal(time, split.Time, time * Relative);
        Assert.Equal(speed, split.Speed, speed * Relative);
    }

    private static SprintSplit Quarter(SprintSpec spec) => StandingStart.Run(spec).At(ClosedForms.QuarterMile)!;
}
