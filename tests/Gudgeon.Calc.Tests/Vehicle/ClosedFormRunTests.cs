using CsCheck;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Vehicle;

namespace Gudgeon.Calc.Tests.Vehicle;

/// <summary>The closed-form runs against each other and against the motion they integrate.</summary>
public class ClosedFormRunTests
{
    private const double QuarterMile = 402.336;

    private static readonly Gen<(double Mass, double Power, double Distance)> Run =
        Gen.Select(Gen.Double[150, 500], Gen.Double[20e3, 500e3], Gen.Double[30, 1600]);

    [Fact]
    public void SpeedIsTheSlopeOfDistanceOverTime() => Run.Sample(r =>
    {
        const double step = 1e-3;
        var (before, at, after) = (Drag(r.Distance - step), Drag(r.Distance), Drag(r.Distance + step));
        Assert.Equal(at.Speed, 2 * step / (after.Time - before.Time), 1e-5 * at.Speed);

        DragRun Drag(double distance) => ConstantPowerWithDrag.Run(r.Mass, r.Power, 0.35, distance);
    });

    [Fact]
    public void PowerFeedsInertiaAndDrag() => Run.Sample(r =>
    {
        const double step = 1e-3;
        var speed = At(r.Distance);
        var acceleration = speed * (At(r.Distance + step) - At(r.Distance - step)) / (2 * step);
        Assert.Equal(r.Power, ((r.Mass * acceleration) + AirDrag.Load(0.35, speed).Force) * speed, 1e-5 * r.Power);

        double At(double distance) => ConstantPowerWithDrag.Run(r.Mass, r.Power, 0.35, distance).Speed;
    });

    [Fact]
    public void DragVanishesIntoTheClosedFormWithoutIt() => Run.Sample(r =>
    {
        var without = ConstantPower.Run(r.Mass, r.Power, r.Distance);
        var with = ConstantPowerWithDrag.Run(r.Mass, r.Power, 1e-7, r.Distance);
        Assert.Equal(without.Time, with.Time, 1e-6 * without.Time);
        Assert.Equal(without.Speed, with.Speed, 1e-6 * without.Speed);
    });

    /// <summary>The series near rest and the closed form must meet where one hands over to the other.</summary>
    [Fact]
    public void TimeDoesNotJumpNearRest()
    {
        // v / vt = 0.02 lies at s = -m ln(1 - z³) / (1.5 rho A), nearly 8e-6 m / (1.5 rho A).
        var handOver = 300 * 8e-6 / (1.5 * 1.225 * 0.35);
        var below = ConstantPowerWithDrag.Run(300, 100e3, 0.35, handOver * 0.999).Time;
        var above = ConstantPowerWithDrag.Run(300, 100e3, 0.35, handOver * 1.001).Time;
        Assert.Equal(2.0 / 3 * 0.002, (above - below) / above, 1e-5);
    }

    [Fact]
    public void MuchGripIsConstantPowerAndLittleIsConstantAcceleration() => Run.Sample(r =>
    {
        var grip = TractionThenPower.Run(r.Mass, r.Power, 1e7, r.Distance);
        Assert.Equal(ConstantPower.Run(r.Mass, r.Power, r.Distance).Time, grip.Time, 1e-4);
        var slippery = TractionThenPower.Run(r.Mass, r.Power, 0.1, r.Distance);
        var uniform = ConstantAcceleration.Run(0.1, r.Distance);
        Assert.Equal(uniform.Time, slippery.Time, 1e-9 * uniform.Time);
        Assert.Equal(uniform.Speed, slippery.Speed, 1e-9 * uniform.Speed);
    });

    [Fact]
    public void RolloutTakesTheTimeToTheBeamOff() => Run.Sample(r =>
    {
        var (whole, foot) = (ConstantPower.Run(r.Mass, r.Power, r.Distance + 0.3048).Time, ConstantPower.Run(r.Mass, r.Power, 0.3048).Time);
        Assert.Equal(whole - foot, ConstantPower.Run(r.Mass, r.Power, r.Distance, 0.3048).Time, 1e-9);
        var drag = ConstantPowerWithDrag.Run(r.Mass, r.Power, 0.35, r.Distance, rollout: 0.3048).Time;
        Assert.Equal(ConstantPowerWithDrag.Run(r.Mass, r.Power, 0.35, r.Distance + 0.3048).Time - ConstantPowerWithDrag.Run(r.Mass, r.Power, 0.35, 0.3048).Time, drag, 1e-9);
    });

    [Fact]
    public void NoRuleBeatsTheLosslessBound() => Run.Sample(r =>
    {
        var bound = ConstantPower.Run(r.Mass, r.Power, QuarterMile);
        Assert.True(QuarterMileRule.Time(r.Mass, r.Power, QuarterMileFit.Hale) > bound.Time);
        Assert.True(QuarterMileRule.Speed(r.Mass, r.Power) < bound.Speed);
    });

    /// <summary>At lossless constant power, quarter-mile time times speed is 1.5 distances whatever the machine: 1350 mph s.</summary>
    [Fact]
    public void LosslessProductIsOneAndAHalfDistances() => Run.Sample(r =>
    {
        var bound = ConstantPower.Run(r.Mass, r.Power, QuarterMile);
        Assert.Equal(1350, bound.Time * bound.Speed / 0.44704, 1e-9);
    });

    [Fact]
    public void QuarterMileRulesGoBothWays() => Run.Sample(r =>
    {
        Assert.Equal(r.Power, QuarterMileRule.PowerFromTime(r.Mass, QuarterMileRule.Time(r.Mass, r.Power)), 1e-9 * r.Power);
        Assert.Equal(r.Power, QuarterMileRule.PowerFromSpeed(r.Mass, QuarterMileRule.Speed(r.Mass, r.Power)), 1e-9 * r.Power);
    });

    [Fact]
    public void GapCostsLessThanItself() => Gen.Select(Gen.Double[1, 12], Gen.Double[0, 3], Gen.Double[0.01, 0.5]).Sample((a, start, gap) =>
        Assert.InRange(ConstantAcceleration.Gap(a, start, gap, QuarterMile).Loss, 0, gap + 1e-12));

    [Fact]
    public void GapBeyondTheEndIsRefused()
    {
        Assert.Throws<FormulaDomainException>(() => ConstantAcceleration.Gap(6, 20, 0.1, QuarterMile));
        Assert.Throws<FormulaDomainException>(() => ConstantPower.Gap(300, 100e3, 90, 0.1, QuarterMile));
    }

    [Fact]
    public void TrapWhoseBeamsAreInTheWrongOrderIsRefused() =>
        Assert.Throws<FormulaDomainException>(() => Strip.TrapSpeed(9, 9));
}
