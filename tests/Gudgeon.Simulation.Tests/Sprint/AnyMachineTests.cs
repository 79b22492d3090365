using CsCheck;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

/// <summary>What must hold for every machine that can be run, sound or odd.</summary>
public class AnyMachineTests
{
    private static readonly Gen<SprintSpec> Machine =
        from friction in Gen.Double[0.5, 2.5]
        from torque in Gen.Double[0.3, 3]
        from shift in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.01, 0.5])
        from capacity in Gen.OneOf(Gen.Const(double.PositiveInfinity), Gen.Double[60, 400])
        from bar in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.5, 2])
        from wind in Gen.Double[-15, 15]
        from growth in Gen.Double[0, 1e-5]
        from gears in Gen.Int[1, 6]
        from rollout in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.1, 0.5])
        let spec = Machines.ThreeHundredHorsepower(friction)
        select spec with
        {
            Engine = spec.Engine with { Torques = [.. spec.Engine.Torques.Select(t => t * torque)] },
            Driveline = spec.Driveline with { GearRatios = [.. spec.Driveline.GearRatios.Take(gears)], ShiftTime = shift, ClutchCapacity = capacity },
            Wheels = spec.Wheels with { WheelieBar = bar, RearGrowth = growth },
            Air = spec.Air with { HeadWind = wind },
            Strip = spec.Strip with { Rollout = rollout },
        };

    [Fact]
    public void RunEndsBalancedAndWithinItsLimits() => Machine.Sample(
        spec =>
        {
            var run = StandingStart.Run(spec);
            Assert.True(run.Finished, run.Ending);
            Assert.InRange(run.Trace.Count, 0, 3000);
            Assert.Equal(0, run.Energy.Unaccounted / run.Energy.EngineWork, 1e-8);
            Assert.Equal(["60 ft", "330 ft", "1/8 mile", "1000 ft", "1/4 mile"], run.Splits.Select(s => s.Name));
            Assert.All(run.Trace, p => WithinLimits(spec, p));
        },
        iter: 300);

    private static void WithinLimits(SprintSpec spec, SprintPoint point)
    {
        Assert.True(double.IsFinite(point.Acceleration + point.EngineTorque + point.RearLoad));
        Assert.InRange(point.EngineSpeed, 0, spec.Engine.RevLimit * (1 + 1e-9));
        Assert.True(point.EngineTorque >= -1e-9);
        Assert.True(point.FrontLoad >= 0);
        var contact = (310 + (spec.Wheels.FrontInertia / 0.09)) * point.Acceleration;
        Assert.True(contact <= (spec.Strip.Friction * point.RearLoad * (1 + 1e-9)) + 200, "drive force beyond grip, wind allowed for");
    }
}
