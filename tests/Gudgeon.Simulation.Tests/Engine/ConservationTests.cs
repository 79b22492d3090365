using Gudgeon.Simulation.Engine;
using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>Mass, species and energy close to round-off; nothing is allocated on the way.</summary>
public class ConservationTests
{
    public static TheoryData<string> AllEngines => ["twin", "methanol", "petrol", "rig", "roots"];

    [Theory]
    [MemberData(nameof(AllEngines))]
    public void TheBooksCloseOverACycle(string engine)
    {
        var point = new EngineModel(Spec(engine)).RunPoint(Engines.Rpm(6100), Options);
        var balance = point.Figures!.Balance;
        Assert.InRange(Math.Abs(balance.AirError), 0, 1e-11);
        Assert.InRange(Math.Abs(balance.FuelError), 0, 1e-11);
        Assert.InRange(Math.Abs(balance.EnergyError), 0, 1e-11);
    }

    /// <summary>
    /// From the closing of the inlet to the opening of the exhaust valve only work, wall heat and blow-by change what the
    /// cylinder holds, while all of the charge burns.
    /// </summary>
    [Fact]
    public void AClosedCylinderKeepsItsEnergyWhileItBurns()
    {
        var (march, setup) = Settled(Engines.PetrolSingle(), 5000);
        var n = setup.Network.Cylinders[0];
        var from = march.Tables[0].InletCloses + 1;
        for (var i = 0; i < from; i++)
        {
            march.Step(i);
        }

        var (before, burned) = (Held(march, n), march.State[(PerNode * n) + Burned]);
        for (var i = from; i < march.Steps; i++)
        {
            march.Step(i);
        }

        for (var i = 0; !march.Tables[0].Open[i + 1]; i++)
        {
            march.Step(i);
        }

        Assert.True(march.State[(PerNode * n) + Burned] > 10 * burned);
        Assert.Equal(1, Held(march, n) / before, 1e-11);
    }

    /// <summary>Both zones fill the cylinder and make up its mass at every step of the burn.</summary>
    [Fact]
    public void TheZonesFillTheCylinder()
    {
        var (march, setup) = Settled(Engines.PetrolSingle(), 5000);
        var (n, z, gas, seen) = (setup.Network.Cylinders[0], march.Zones[0], setup.Gas, 0);
        for (var i = 0; i < march.Steps; i++)
        {
            march.Step(i);
            if (z.Mode == ZoneMode.Mixed)
            {
                continue;
            }

            march.EvaluateAt(i + 1);
            var x = march.BurnedZone(0, i + 1);
            var content = march.ContentOf(n);
            var pressure = march.Nodes.Pressure[n];
            var volumes = (gas.GasConstant((1 - x) * content.Mass * z.Unburned, z.UnburnedTemperature, pressure) * z.UnburnedTemperature / pressure)
                + (gas.GasConstant(x * content.Mass * z.Burned, z.BurnedTemperature, pressure) * z.BurnedTemperature / pressure);
            Assert.Equal(1, volumes / march.Tables[0].Volume[i + 1], 1e-7);
            Assert.Equal(1, z.Together(x).Mass, 1e-12);
            Assert.True(z.BurnedTemperature > z.UnburnedTemperature);
            seen++;
        }

        Assert.True(seen > 50);
    }

    [Fact]
    public void MarchingAllocatesNothing()
    {
        var (march, _) = Settled(Engines.BlownTwin(), 7000);
        var before = GC.GetAllocatedBytesForCurrentThread();
        march.Cycle();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static RunOptions Options { get; } = new() { Speeds = [0] };

    private static EngineSpec Spec(string engine) => engine switch
    {
        "twin" => Engines.BlownTwin(),
        "methanol" => Engines.MethanolSingle(),
        "petrol" => Engines.PetrolSingle(),
        "roots" => Engines.RootsTwin(),
        _ => MotoredRig.Spec,
    };

    private static (March March, MarchSetup Setup) Settled(EngineSpec spec, double rpm)
    {
        var setup = new MarchSetup(spec);
        var speed = Engines.Rpm(rpm);
        var march = new March(setup, speed, setup.Steps(speed, 1), setup.Spec.Combustion);
        march.FillFresh();
        for (var i = 0; i < 6; i++)
        {
            march.Cycle();
        }

        return (march, setup);
    }

    /// <summary>Energy in the cylinder, and what it gave since crank angle 0 as work, heat and blow-by.</summary>
    private static double Held(March march, int n) =>
        march.State[(PerNode * n) + Energy] + march.State[march.Layout.Work(0)] + march.State[march.Layout.Heat(0)]
        + march.State[(PerNode * Network.Crankcase) + Energy];
}
