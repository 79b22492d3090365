using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

/// <summary>Each bad spec is refused with a sentence that names the quantity.</summary>
public class SpecTests
{
    private static readonly SprintSpec Good = Machines.ThreeHundredHorsepower();

    public static TheoryData<string, SprintSpec> Bad => new()
    {
        { "torque curve", Good with { Engine = Good.Engine with { Speeds = [100, 90], Torques = [1, 1] } } },
        { "torque curve", Good with { Engine = Good.Engine with { Torques = [1, 2] } } },
        { "torque curve", Good with { Engine = Good.Engine with { Torques = [.. Good.Engine.Torques.Select(_ => double.NaN)] } } },
        { "launch speed", Good with { Engine = Good.Engine with { LaunchSpeed = 10 } } },
        { "rev limit", Good with { Engine = Good.Engine with { RevLimit = 5000 } } },
        { "gear ratios", Good with { Driveline = Good.Driveline with { GearRatios = [2, 2.5] } } },
        { "efficiency", Good with { Driveline = Good.Driveline with { Efficiency = 1.1 } } },
        { "shift speeds", Good with { Driveline = Good.Driveline with { ShiftSpeeds = [900] } } },
        { "clutch capacity", Good with { Driveline = Good.Driveline with { ClutchCapacity = double.NaN } } },
        { "mass of the machine", Good with { Machine = Good.Machine with { Mass = -1 } } },
        { "centre of gravity", Good with { Machine = Good.Machine with { Ahead = 2.5 } } },
        { "friction", Good with { Strip = Good.Strip with { Friction = double.NaN } } },
        { "circumference", Good with { Wheels = Good.Wheels with { RearCircumference = 0 } } },
        { "air density", Good with { Air = Good.Air with { Density = -1 } } },
        { "length of the run", Good with { Strip = Good.Strip with { Finish = 0 } } },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void BadSpecIsRefusedByName(string quantity, SprintSpec spec) =>
        Assert.Contains(quantity, Assert.Throws<SprintSpecException>(() => StandingStart.Run(spec)).Message, StringComparison.Ordinal);

    [Fact]
    public void ShiftBelowTheTorqueCurveIsRefused()
    {
        var spec = Good with { Driveline = Good.Driveline with { GearRatios = [2.5, 0.6] } };
        Assert.Contains("after the shift into gear 2", Assert.Throws<SprintSpecException>(() => StandingStart.Run(spec)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void MessageSpeaksInRevolutionsPerMinute()
    {
        var message = Assert.Throws<SprintSpecException>(() => StandingStart.Run(Good with { Engine = Good.Engine with { LaunchSpeed = 2000 * Machines.Rpm } })).Message;
        Assert.Equal("launch speed: 2000 rpm is outside the torque curve, which goes from 3000 rpm to 11500 rpm", message);
    }
}
