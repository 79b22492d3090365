using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

/// <summary>Which limit acts, and how hard. Expected numbers from moments about the rear contact, computed outside this project.</summary>
public class LimitTests
{
    [Theory]
    [InlineData(0.9, 7.27416, SprintLimit.Traction)]
    [InlineData(1.1, 10.2411, SprintLimit.Traction)]
    [InlineData(1.2, 11.4411, SprintLimit.Wheelie)]
    public void TractionThenWheelieAsGripRises(double friction, double acceleration, SprintLimit limit)
    {
        var start = StandingStart.Run(Machines.Wheelstander(friction)).Trace[0];
        Assert.Equal(acceleration, start.Acceleration, acceleration * 1e-5);
        Assert.Equal(limit, start.Limit);
    }

    [Fact]
    public void LimitsMeetAtTheFrictionOfCentreOverHeight()
    {
        var below = StandingStart.Run(Machines.Wheelstander(1.166667 - 1e-6)).Trace[0];
        var above = StandingStart.Run(Machines.Wheelstander(1.166667 + 1e-6)).Trace[0];
        Assert.Equal((SprintLimit.Traction, SprintLimit.Wheelie), (below.Limit, above.Limit));
    }

    [Theory]
    [InlineData(40, 10.0119)]
    [InlineData(60, 8.22547)]
    [InlineData(80, 5.72442)]
    public void DragTakesFromTheWheelieLimit(double speed, double acceleration)
    {
        var spec = Machines.Wheelstander(5, dragArea: 0.35) with { Strip = new SprintStrip(5, 0, 1000) };
        var trace = StandingStart.Run(spec).Trace;
        var after = trace.Index().First(p => p.Item.Speed >= speed).Index;
        var (a, b) = (trace[after - 1], trace[after]);
        var between = a.Acceleration + ((speed - a.Speed) / (b.Speed - a.Speed) * (b.Acceleration - a.Acceleration));
        Assert.Equal(acceleration, between, 2e-4);
    }

    [Fact]
    public void LoadsCarryTheTransfer()
    {
        // Torque for 6 m/s² on 280 kg through a wheel of 1/π m.
        var spec = Machines.Wheelstander(2);
        var torque = 280 * 6 / Math.PI;
        var start = StandingStart.Run(spec with { Engine = spec.Engine with { Torques = [torque, torque] } }).Trace[0];
        Assert.Equal(6, start.Acceleration, 1e-9);
        Assert.Equal(2115.45, start.RearLoad, 0.01);
        Assert.Equal(630.416, start.FrontLoad, 0.01);
        Assert.Equal(SprintLimit.Power, start.Limit);
    }

    [Fact]
    public void FrontWheelCarriesNothingAtTheWheelieLimit() =>
        Assert.All(StandingStart.Run(Machines.Wheelstander(5)).Trace, p => Assert.InRange(p.FrontLoad, 0, 1e-9));

    [Fact]
    public void WheelieBarHelpsAndTheDriveForceStillEqualsFrictionTimesLoad()
    {
        var spec = Machines.Wheelstander(1.5);
        var start = StandingStart.Run(spec with { Wheels = spec.Wheels with { WheelieBar = 1.5 } }).Trace[0];
        Assert.True(start.Acceleration > 11.4411);
        Assert.Equal(1.5 * start.RearLoad, 280 * start.Acceleration, 1e-6);
    }

    [Fact]
    public void SlippingClutchHoldsTheLaunchAndItsCapacityIsTheLimit()
    {
        var spec = Machines.ThreeHundredHorsepower(friction: 3);
        var run = StandingStart.Run(spec with { Driveline = spec.Driveline with { ClutchCapacity = 60 } });
        Assert.Equal(SprintLimit.Clutch, run.Trace[0].Limit);
        Assert.Equal(60, run.Trace[0].EngineTorque, 1e-9);
        Assert.Equal(spec.Engine.LaunchSpeed, run.Trace[0].EngineSpeed, 1e-12);
    }

    [Fact]
    public void TopGearStaysOnTheRevLimit()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var driveline = spec.Driveline with { GearRatios = [2.50, 1.95, 1.62] };
        var run = StandingStart.Run(spec with { Driveline = driveline });
        Assert.True(run.Finished);
        Assert.Equal(SprintLimit.RevLimit, run.Trace[^1].Limit);
        Assert.Equal(spec.Engine.RevLimit, run.Trace.Max(p => p.EngineSpeed), 1e-6);
        Assert.True(run.LimitTimes[SprintLimit.RevLimit] > 0.5);
    }
}
