using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>Whole engines: plausible figures, the directions the trade knows, repeatable and quick to settle.</summary>
public class EngineBehaviourTests
{
    private static readonly RunOptions Fine = new() { Speeds = [0], Tolerance = 1e-8, MaxCycles = 300 };

    /// <summary>Plausibility bands of the trade, not measurements.</summary>
    [Fact]
    public void ABlownTwinGivesSensibleFigures()
    {
        var f = At(Engines.BlownTwin(), 9000);
        Assert.InRange(f.Power, 110e3, 180e3);
        Assert.InRange(f.Boost, 0.8e5, 1.4e5);
        Assert.InRange(f.Bsfc!.Value * 3.6e9, 270, 350);
        Assert.InRange(f.PeakPressure, 70e5, 130e5);
        Assert.InRange(f.ExhaustTemperature, 900, 1350);
        Assert.InRange(f.Blower!.Efficiency, 0.6, 0.8);
        Assert.Equal(0.86, f.Lambda!.Value, 1e-4);
        Assert.Equal(f.Cylinders[0].NetImep, f.Cylinders[1].NetImep, 0.03 * f.NetImep);
    }

    [Fact]
    public void ASingleGivesSensibleFigures()
    {
        var f = At(Engines.PetrolSingle(), 8000);
        Assert.InRange(f.Power / 0.499, 45e3, 75e3);
        Assert.InRange(f.VolumetricEfficiency, 0.82, 1.02);
        Assert.InRange(f.Cylinders[0].ResidualFraction, 0.01, 0.08);
        Assert.InRange(f.Bsfc!.Value * 3.6e9, 250, 340);
        Assert.InRange(f.ExhaustTemperature, 900, 1300);
    }

    /// <summary>Methanol's latent heat fills the cylinder better and cools it, against the same engine on petrol.</summary>
    [Fact]
    public void MethanolCoolsAndFillsTheEngine()
    {
        var methanol = At(Engines.MethanolSingle(), 6000);
        var petrol = At(Engines.PetrolSingle() with { Cylinders = Engines.MethanolSingle().Cylinders }, 6000);
        Assert.InRange(methanol.VolumetricEfficiency / petrol.VolumetricEfficiency, 1.03, 1.15);
        Assert.True(methanol.Cylinders[0].EndGasTemperature < petrol.Cylinders[0].EndGasTemperature - 100);
        Assert.True(methanol.KnockIntegral < 0.5 * petrol.KnockIntegral);
        Assert.True(methanol.NetImep > 1.08 * petrol.NetImep);
        Assert.InRange(methanol.FuelFlow / petrol.FuelFlow, 2.1, 2.7);
    }

    /// <summary>Torque is best rich, consumption lean of the stoichiometric mixture.</summary>
    [Fact]
    public void MixtureActsAsKnown()
    {
        var rich = At(Engines.PetrolSingle() with { Lambda = 0.88 }, 5000);
        var lean = At(Engines.PetrolSingle() with { Lambda = 1.08 }, 5000);
        Assert.True(rich.NetImep > 1.05 * lean.NetImep);
        Assert.True(rich.Bsfc > 1.08 * lean.Bsfc);
        Assert.True(At(Engines.PetrolSingle() with { Lambda = 0.72 }, 5000).NetImep < rich.NetImep);
        Assert.True(rich.ExhaustTemperature < At(Engines.PetrolSingle() with { Lambda = 1.0 }, 5000).ExhaustTemperature);
    }

    /// <summary>The directions of SAE 960497: advance, compression, warm or dense intake and back pressure all cost octane.</summary>
    [Fact]
    public void KnockMovesInTheKnownDirections()
    {
        var twin = Engines.BlownTwin();
        var knock = At(twin, 7000).KnockIntegral;
        Assert.True(At(twin with { Combustion = twin.Combustion! with { Burned50 = 8 } }, 7000).KnockIntegral > 1.02 * knock);
        Assert.True(At(twin with { Cylinders = [.. twin.Cylinders.Select(c => c with { CompressionRatio = 10 })] }, 7000).KnockIntegral > 1.05 * knock);
        Assert.True(At(Engines.BlownTwin(2.9), 7000).KnockIntegral > 1.05 * knock);
        Assert.True(At(twin with { Intake = twin.Intake with { Cooler = null } }, 7000).KnockIntegral > 1.15 * knock);
        Assert.True(At(twin with { Fuel = Fuels.Petrol95 }, 7000).KnockIntegral > 1.1 * knock);
        Assert.True(At(twin with { Exhaust = twin.Exhaust with { OutletArea = 1.2e-3 } }, 7000).ExhaustBackPressure > 0.1e5);
    }

    /// <summary>More drive, more boost, more torque and more drive power; a relief valve holds the boost.</summary>
    [Fact]
    public void BoostFollowsTheDrive()
    {
        var (slow, fast) = (At(Engines.BlownTwin(2.2), 8000), At(Engines.BlownTwin(2.6), 8000));
        Assert.True(fast.Boost > 1.2 * slow.Boost);
        Assert.True(fast.Torque > slow.Torque);
        Assert.True(fast.Blower!.DrivePower > 1.3 * slow.Blower!.DrivePower);
        var twin = Engines.BlownTwin();
        var relieved = At(twin with { Intake = twin.Intake with { Relief = new ReliefValve(0.5e5, 400e-6) } }, 8000);
        Assert.InRange(relieved.Boost, 0.4e5, 0.7e5);
    }

    /// <summary>Without internal compression a Roots blower's work is (p2 − p1) V over its efficiency.</summary>
    [Fact]
    public void RootsWorkIsDisplacementTimesPressureRise()
    {
        var spec = Engines.RootsTwin();
        var speed = Engines.Rpm(6000);
        var blower = At(spec, 6000).Blower!;
        var airbox = blower.MeanInletPressure;
        var rise = airbox * (blower.PressureRatio - 1);
        var ideal = rise * 0.6e-3 * speed * 1.3 / (2 * Math.PI) / 0.85 / 0.95;
        Assert.Equal(1, blower.DrivePower / ideal, 1e-9);
        Assert.Null(blower.SurgeMargin);
        var built = (PositiveDisplacementInduction)spec.Intake.Induction! with { InternalCompression = 1.25 };
        Assert.True(At(spec with { Intake = spec.Intake with { Induction = built } }, 6000).Blower!.Efficiency > blower.Efficiency);
    }

    /// <summary>Cylinders that see the same ports give the same, whatever their firing angles.</summary>
    [Fact]
    public void FiringAnglesChangeNothingWithImposedPorts()
    {
        var single = Engines.PetrolSingle();
        var ports = new ImposedPorts(PressureTrace.Constant(1e5), 300, PressureTrace.Constant(1.05e5), 900);
        var three = single with { ImposedPorts = ports, Cylinders = [.. new[] { 0.0, 240, 480 }.Select(a => single.Cylinders[0] with { FiringAngle = a })] };
        var f = At(three, 6000);
        Assert.All(f.Cylinders, c => Assert.Equal(f.Cylinders[0].NetImep, c.NetImep, 1e-5 * f.NetImep));
        Assert.All(f.Cylinders, c => Assert.Equal(f.Cylinders[0].GrossImep, c.GrossImep, 1e-5 * f.NetImep));
        Assert.All(f.Cylinders, c => Assert.Equal(f.Cylinders[0].KnockIntegral, c.KnockIntegral, 1e-4));
    }

    [Fact]
    public void CylindersMayDiffer()
    {
        var twin = Engines.BlownTwin();
        var f = At(twin with { Cylinders = [twin.Cylinders[0], twin.Cylinders[1] with { CompressionRatio = 8 }] }, 6000);
        Assert.True(f.Cylinders[0].PeakPressure > 1.05 * f.Cylinders[1].PeakPressure);
    }

    /// <summary>
    /// Halving the step takes the error to a quarter or less (a first-order march would halve it). Taken over a closed stroke with wall heat and
    /// leak, motored, because corners of lift tables and of the burn hide the order elsewhere; those of the
    /// gas table leave it a little uneven.
    /// </summary>
    [Fact]
    public void TheMarchIsOfSecondOrder()
    {
        var fine = ClosedWork(23_040, burning: false);
        var errors = new[] { 720, 1440, 2880 }.Select(steps => ClosedWork(steps, burning: false) - fine).ToArray();
        Assert.InRange(errors[0] / errors[1], 3, 8);
        Assert.InRange(errors[0] / errors[2], 9, 40);
    }

    /// <summary>With the burn, a step of one degree is good to 0.02 % of the work, a quarter of a degree to a tenth of that.</summary>
    [Fact]
    public void OneDegreeIsFineEnoughForTheBurn()
    {
        var fine = ClosedWork(11_520, burning: true);
        Assert.Equal(1, ClosedWork(720, burning: true) / fine, 2e-4);
        Assert.Equal(1, ClosedWork(2880, burning: true) / fine, 2e-5);
    }

    /// <summary>A warm start reaches the same point in fewer cycles.</summary>
    [Fact]
    public void WarmStartReachesTheSamePoint()
    {
        var model = new EngineModel(Engines.BlownTwin());
        var (a, b) = (Engines.Rpm(7000), Engines.Rpm(7050));
        var cold = model.RunPoint(b, Fine);
        var warm = model.RunPoint(b, Fine, model.RunPoint(a, Fine).State);
        Assert.True(warm.CyclesUsed < cold.CyclesUsed);
        Assert.Equal(1, warm.Figures!.Torque / cold.Figures!.Torque, 1e-6);
        Assert.Equal(1, warm.Figures.Boost / cold.Figures.Boost, 1e-6);
        Assert.Equal(1, warm.Figures.KnockIntegral / cold.Figures.KnockIntegral, 1e-5);
    }

    /// <summary>A state from another mixture and fuel is taken over as temperatures and contents.</summary>
    [Fact]
    public void AStateOfAnotherFuelStartsToo()
    {
        var other = new EngineModel(Engines.PetrolSingle() with { Lambda = 1.1 }).RunPoint(Engines.Rpm(6000), Fine);
        var model = new EngineModel(Engines.PetrolSingle() with { Fuel = Fuels.E85 });
        var (cold, warm) = (model.RunPoint(Engines.Rpm(6000), Fine), model.RunPoint(Engines.Rpm(6000), Fine, other.State));
        Assert.Equal(1, warm.Figures!.NetImep / cold.Figures!.NetImep, 1e-6);
    }

    /// <summary>Small changes of an input give clean slopes: forward and backward differences agree.</summary>
    [Theory]
    [InlineData("compression")]
    [InlineData("lambda")]
    [InlineData("ambient")]
    public void NudgedInputsGiveCleanSlopes(string what)
    {
        var (down, middle, up) = (At(Nudged(what, -1), 7000), At(Nudged(what, 0), 7000), At(Nudged(what, 1), 7000));
        AssertClean(down.Torque, middle.Torque, up.Torque);
        AssertClean(down.PeakPressure, middle.PeakPressure, up.PeakPressure);
        AssertClean(down.KnockIntegral, middle.KnockIntegral, up.KnockIntegral);
    }

    [Fact]
    public void ParallelAndSerialAgreeToTheBit()
    {
        var model = new EngineModel(Engines.BlownTwin());
        double[] speeds = [Engines.Rpm(4000), Engines.Rpm(6000), Engines.Rpm(8000)];
        var serial = model.Run(new RunOptions { Speeds = speeds, DegreeOfParallelism = 1 });
        var parallel = model.Run(new RunOptions { Speeds = speeds, DegreeOfParallelism = 3 });
        Assert.Equal(serial.Select(p => p.Figures!.Torque), parallel.Select(p => p.Figures!.Torque));
        Assert.Equal(speeds, serial.Select(p => p.Speed));
    }

    [Fact]
    public void APointThatDoesNotSettleHasNoFigures()
    {
        var point = new EngineModel(Engines.BlownTwin()).RunPoint(Engines.Rpm(6000), new RunOptions { Speeds = [0], MaxCycles = 3 });
        Assert.False(point.Converged);
        Assert.Null(point.Figures);
        Assert.Null(point.State);
        Assert.Null(point.Trace);
        Assert.True(point.Residual > 1e-6);
    }

    [Fact]
    public void ARunCanBeStopped()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var options = new RunOptions { Speeds = [500], Cancellation = source.Token };
        Assert.ThrowsAny<OperationCanceledException>(() => new EngineModel(Engines.BlownTwin()).Run(options));
    }

    [Fact]
    public void TracesAgreeWithTheFigures()
    {
        var point = new EngineModel(Engines.BlownTwin()).RunPoint(Engines.Rpm(7000), new RunOptions { Speeds = [0], WithTraces = true });
        var (trace, c) = (point.Trace!.Cylinders[1], point.Figures!.Cylinders[1]);
        Assert.Equal(450, trace.FiringAngle);
        Assert.Equal(c.PeakPressure, trace.Pressure.Max(), 0.002 * c.PeakPressure);
        var work = 0.0;
        for (var i = 0; i < trace.Pressure.Length; i++)
        {
            var next = (i + 1) % trace.Pressure.Length;
            work += (trace.Pressure[i] + trace.Pressure[next]) / 2 * (trace.Volume[next] - trace.Volume[i]);
        }

        Assert.Equal(c.NetImep, work / (trace.Volume.Max() - trace.Volume.Min()), 0.002 * c.NetImep);
        Assert.Equal(point.Figures.WallHeat, point.Trace.Cylinders.Sum(t => t.WallHeat.Average()), 0.01 * point.Figures.WallHeat);
    }

    /// <summary>Work from the closing of the inlet valve to just before the exhaust valve opens, J.</summary>
    private static double ClosedWork(int steps, bool burning)
    {
        var single = Engines.PetrolSingle();
        var ports = new ImposedPorts(PressureTrace.Constant(1e5), 300, PressureTrace.Constant(1.05e5), 900);
        var cylinder = single.Cylinders[0] with { Inlet = Engines.Valves(2, 0.038, 340, 580, 0.01), Exhaust = Engines.Valves(2, 0.032, 140, 380, 0.01) };
        var setup = new MarchSetup(single with { ImposedPorts = ports, Cylinders = [cylinder], Combustion = burning ? single.Combustion : null });
        var march = new March(setup, Engines.Rpm(6000), steps, setup.Spec.Combustion);
        march.FillFresh();
        march.Fill(setup.Network.Cylinders[0], new(5.6e-4, burning ? 4.2e-5 : 0, 2e-5, 0), 350, march.Tables[0].Volume[steps * 590 / 720]);
        for (var i = steps * 590 / 720; i < steps; i++)
        {
            march.Step(i);
        }

        for (var i = 0; i < steps * 130 / 720; i++)
        {
            march.Step(i);
        }

        return march.State[march.Layout.Work(0)];
    }

    private static EngineSpec Nudged(string what, int sign)
    {
        var twin = Engines.BlownTwin();
        return what switch
        {
            "compression" => twin with { Cylinders = [.. twin.Cylinders.Select(c => c with { CompressionRatio = 9 + (0.02 * sign) })] },
            "lambda" => twin with { Lambda = 0.9 + (0.002 * sign) },
            _ => twin with { Ambient = twin.Ambient with { Pressure = 100e3 + (200 * sign) } },
        };
    }

    private static void AssertClean(double down, double middle, double up)
    {
        Assert.NotEqual(down, up);
        Assert.InRange((up - middle) / (middle - down), 0.9, 1.1);
    }

    private static PointFigures At(EngineSpec spec, double rpm)
    {
        var point = new EngineModel(spec).RunPoint(Engines.Rpm(rpm), Fine);
        Assert.True(point.Converged);
        return point.Figures!;
    }
}
