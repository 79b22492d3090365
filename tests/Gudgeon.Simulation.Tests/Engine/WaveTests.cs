using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>The engine with its pipes as a whole: books, agreement with the lumped depth where it must be, known directions.</summary>
public class WaveTests
{
    private static RunOptions Options { get; } = new() { Speeds = [0] };

    private static EngineSpec Spec(string name) => name switch
    {
        "twin" => PipedEngines.Twin(),
        "single" => PipedEngines.Single(),
        "methanol" => PipedEngines.Methanol(),
        "stepped" => PipedEngines.Stepped(),
        "siamese" => PipedEngines.Siamese(),
        "film" => PipedEngines.Methanol() with { Delivery = new FuelDelivery { FilmShare = 0.6, EvaporatedInPort = 0.3 } },
        _ => PipedEngines.Turbo(),
    };

    private static PointFigures At(EngineSpec spec, double rpm, EngineState? previous = null) => new EngineModel(spec).RunPoint(Engines.Rpm(rpm), Options, previous).Figures!;

    [Theory]
    [InlineData("twin", 6100)]
    [InlineData("single", 4200)]
    [InlineData("methanol", 7300)]
    [InlineData("stepped", 8000)]
    [InlineData("siamese", 6000)]
    [InlineData("turbo", 7000)]
    [InlineData("film", 5200)]
    public void TheBooksCloseOverACycle(string engine, double rpm)
    {
        var balance = At(Spec(engine), rpm).Balance;
        Assert.InRange(Math.Abs(balance.AirError), 0, 1e-11);
        Assert.InRange(Math.Abs(balance.FuelError), 0, 1e-11);
        Assert.InRange(Math.Abs(balance.EnergyError), 0, 1e-11);
    }

    /// <summary>Pipes of 20 mm hold back no gas to speak of up to middling speeds.</summary>
    [Theory]
    [InlineData(true, 2000)]
    [InlineData(true, 5000)]
    [InlineData(false, 2000)]
    [InlineData(false, 5000)]
    public void VeryShortPipesAreTheLumpedModel(bool blown, double rpm)
    {
        var (lumped, wave) = PipedEngines.Short(blown ? Engines.BlownTwin() : Engines.PetrolSingle(), 0.02);
        Assert.Equal(1, At(wave, rpm).Torque / At(lumped, rpm).Torque, 0.02);
    }

    [Theory]
    [InlineData("twin", 6500)]
    [InlineData("single", 7500)]
    public void TorqueHardlyDependsOnTheCell(string engine, double rpm)
    {
        double Torque(double cell) => At(engine == "twin" ? PipedEngines.Twin(cell) : PipedEngines.Single(cell), rpm).Torque;
        var fine = Torque(10e-3);
        Assert.Equal(1, Torque(20e-3) / fine, 4e-3);
        Assert.Equal(1, Torque(40e-3) / fine, 1e-2);
    }

    [Fact]
    public void TorqueHardlyDependsOnTheStep()
    {
        var model = new EngineModel(PipedEngines.Single());
        var (coarse, fine) = (model.RunPoint(Engines.Rpm(7500), Options), model.RunPoint(Engines.Rpm(7500), Options with { CrankStep = 0.2 }));
        Assert.Equal(1, coarse.Figures!.Torque / fine.Figures!.Torque, 1.5e-3);
    }

    /// <summary>A longer runner fills best at a lower speed (the sign in Sodré, Costa and Hanriot, J. Braz. Soc. Mech. Sci. Eng. 36, 2014, abstract).</summary>
    [Fact]
    public void LongAndNarrowRunnersSuitLowSpeedShortAndWideOnesHigh()
    {
        double[] speeds = [3500, 4500, 5500, 6500, 7500, 8500, 9500];
        double BestSpeed(double length, double diameter)
        {
            var filling = new EngineModel(PipedEngines.Single(20e-3, length, diameter, 0.3)).Run(new RunOptions { Speeds = [.. speeds.Select(Engines.Rpm)] });
            return filling.MaxBy(p => p.Figures!.VolumetricEfficiency)!.Speed;
        }

        var (longer, shorter) = (BestSpeed(0.6, 0.042), BestSpeed(0.15, 0.05));
        Assert.True(longer < shorter, $"best at {longer:F0} rad/s with the long runner, {shorter:F0} with the short one");
    }

    /// <summary>
    /// With stubs for pipes, volumetric efficiency falls quickly once the inlet Mach index (bore²/valve², mean piston speed, mean flow coefficient,
    /// speed of sound) is past some 0.6: Taylor and Livengood's finding, from memory; only its sign is asked.
    /// </summary>
    [Fact]
    public void FillingFallsOffBeyondTheMachIndex()
    {
        double[] speeds = [3000, 5000, 7000, 9000, 11_000, 13_000];
        var (_, wave) = PipedEngines.Short(Engines.PetrolSingle(), 0.03);
        var cylinder = wave.Cylinders[0];
        var choked = wave with { Pipework = wave.Pipework! with { CellLength = 10e-3 }, Cylinders = [cylinder with { Inlet = cylinder.Inlet with { Count = 1, HeadDiameter = 0.038 } }] };
        var index = speeds.Select(rpm => 0.095 * 0.095 / (0.038 * 0.038) * (2 * 0.0704 * rpm / 60) / (0.4 * 345)).ToArray();
        var filling = new EngineModel(choked).Run(new RunOptions { Speeds = [.. speeds.Select(Engines.Rpm)] }).Select(p => p.Figures!.VolumetricEfficiency).ToArray();
        var most = filling.Max();
        Assert.All(index.Zip(filling), p => Assert.True(p.First > 0.55 || p.Second > 0.95 * most, $"{p.Second:F3} at {p.First:F2}"));
        Assert.All(index.Zip(filling), p => Assert.True(p.First < 1.1 || p.Second < 0.7 * most, $"{p.Second:F3} at {p.First:F2}"));
    }

    [Fact]
    public void AWarmStartReachesTheSamePoint()
    {
        var model = new EngineModel(PipedEngines.Twin());
        var near = model.RunPoint(Engines.Rpm(6500), Options);
        var (cold, warm) = (model.RunPoint(Engines.Rpm(7000), Options), model.RunPoint(Engines.Rpm(7000), Options, near.State));
        Assert.Equal(1, warm.Figures!.Torque / cold.Figures!.Torque, 5e-4);
        Assert.True(warm.CyclesUsed <= cold.CyclesUsed);
    }

    [Fact]
    public void APointThatDoesNotSettleHasNoFigures()
    {
        var point = new EngineModel(PipedEngines.Twin()).RunPoint(Engines.Rpm(7000), Options with { MaxCycles = 4 });
        Assert.False(point.Converged);
        Assert.Null(point.Figures);
        Assert.Null(point.State);
    }

    [Fact]
    public void MarchingAllocatesNothing()
    {
        var setup = new MarchSetup(PipedEngines.Stepped());
        var march = new March(setup, Engines.Rpm(7000), setup.Steps(Engines.Rpm(7000), 1), setup.Spec.Combustion);
        march.FillFresh();
        march.Cycle();
        march.Cycle();
        var before = GC.GetAllocatedBytesForCurrentThread();
        march.Cycle();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>Two cylinders that fire evenly through equal pipes do the same; one with a longer runner does not.</summary>
    [Fact]
    public void CylindersDifferOnlyWhereTheirPipesDo()
    {
        var twin = PipedEngines.Twin();
        var even = twin with { Cylinders = [twin.Cylinders[0], twin.Cylinders[1] with { FiringAngle = 360 }] };
        var same = At(even, 6000).Cylinders;
        Assert.Equal(1, same[0].TrappedMass / same[1].TrappedMass, 1e-3);
        var pipes = even.Pipework!;
        var uneven = even with { Pipework = pipes with { Inlets = [PipedEngines.Leaf(0.4, 0.048, 0.044, 0), pipes.Inlets[1]] } };
        var different = At(uneven, 6000).Cylinders;
        Assert.True(Math.Abs((different[0].TrappedMass / different[1].TrappedMass) - 1) > 0.01);
    }

    /// <summary>With the crank turning slowly waves have no say: as much is trapped as in the lumped depth.</summary>
    [Fact]
    public void SlowFillingIsThatOfTheLumpedModel()
    {
        var single = PipedEngines.Single(40e-3);
        var spec = single with { Combustion = null, Pipework = single.Pipework! with { HeatScale = 0 } };
        Assert.Equal(1, At(spec, 300).Cylinders[0].TrappedMass / At(spec with { Pipework = null }, 300).Cylinders[0].TrappedMass, 3e-3);
    }

    /// <summary>Slow, without heat and with valves that open and close at the dead centres, the cylinder fills with the air outside: volumetric efficiency 1.</summary>
    [Fact]
    public void InTheLimitOfNoSpeedTheCylinderFillsWhole()
    {
        var single = PipedEngines.Single(40e-3);
        var cylinder = single.Cylinders[0] with { Inlet = Engines.Valves(2, 0.038, 360, 540, 0.0112), Exhaust = Engines.Valves(2, 0.032, 180, 360, 0.0105), BlowByArea = 0 };
        var spec = single with { Cylinders = [cylinder], Combustion = null, Walls = single.Walls with { WoschniScale = 0 }, Pipework = single.Pipework! with { HeatScale = 0 } };
        Assert.Equal(1, At(spec, 150).VolumetricEfficiency, 5e-3);
    }

    [Fact]
    public void TheBurnIsPlacedForBestTorqueWithinItsLimits()
    {
        EngineSpec With(BurnSearch search) => PipedEngines.Twin() with { Combustion = new CombustionSpec { Burned50 = 11, Duration = 27, ReferenceResidual = 0.05, Search = search } };
        EngineSpec Held(double angle) => PipedEngines.Twin() with { Combustion = new CombustionSpec { Burned50 = angle, Duration = 27, ReferenceResidual = 0.05 } };
        var free = At(With(new BurnSearch { KnockLimit = 3 }), 5000);
        Assert.True(free.Torque > At(Held(free.Burned50!.Value - 4), 5000).Torque);
        Assert.True(free.Torque > At(Held(free.Burned50!.Value + 4), 5000).Torque);
        var knocking = At(With(new BurnSearch { KnockLimit = 0.6 }), 8000);
        Assert.InRange(knocking.KnockIntegral, 0.57, 0.601);
        var pressed = At(With(new BurnSearch { PressureLimit = 80e5 }), 7000);
        Assert.InRange(pressed.PeakPressure, 78e5, 80e5);
        Assert.True(At(Held(pressed.Burned50!.Value - 1), 7000).PeakPressure > 80e5);
    }

    [Fact]
    public void ResidualGasLengthensTheBurn()
    {
        var spec = new CombustionSpec { ReferenceResidual = 0.05 };
        double Length(double residual) => new BurnCurve(spec, spec.ReferenceSpeed, spec.QuickestLambda, residual).Length;
        Assert.Equal(new BurnCurve(new CombustionSpec(), spec.ReferenceSpeed, spec.QuickestLambda).Length, Length(0.05), 1e-9);

        // 1 − 2.06 x^0.77 is 0.7950 at 5 % and 0.6502 at 10 %; to the power of −2/3 the burn is 1.1435 times as long.
        Assert.Equal(1.1435, Length(0.10) / Length(0.05), 2e-4);
        Assert.Equal(Length(0.05), new BurnCurve(spec with { ReferenceResidual = null }, spec.ReferenceSpeed, spec.QuickestLambda, 0.2).Length, 1e-9);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void TurbineAndCompressorDoTheSameWork(bool piped)
    {
        var spec = PipedEngines.Turbo(piped);
        var figures = At(spec, 7000);
        var blower = figures.Blower!;
        var compressor = blower.Flow * 1006 * (blower.DeliveryTemperature - 298.15);
        Assert.Equal(1, blower.Turbine!.Power * 0.95 / compressor, 0.01);
        Assert.Equal(0, blower.DrivePower);
        Assert.True(figures.ExhaustBackPressure > 0.2e5);

        var open = spec with { Intake = spec.Intake with { Induction = Wastegate(spec, 0.3e5) } };
        Assert.True(At(open, 7000).Boost < 0.85 * figures.Boost);
    }

    /// <summary>What evaporates with the wall's heat does not cool the charge: less methanol engine is filled, by less than the latent heat would do.</summary>
    [Fact]
    public void AWallFilmTakesItsHeatFromTheWall()
    {
        var methanol = PipedEngines.Methanol();
        var sprayed = methanol with { Delivery = new FuelDelivery { EvaporatedInPort = 0.5 } };
        var laid = methanol with { Delivery = new FuelDelivery { EvaporatedInPort = 0.5, FilmShare = 0.5 } };
        var (cool, warm) = (At(sprayed, 6500), At(laid, 6500));
        Assert.InRange(cool.VolumetricEfficiency / warm.VolumetricEfficiency, 1.01, 1.12);
        Assert.Equal(cool.Lambda!.Value, warm.Lambda!.Value, 5e-3);
    }

    /// <summary>Off its best ratio of tip speed to jet speed a turbine gives less, as 2 r − r² of the best: so little boost here that the wastegate stays shut.</summary>
    [Fact]
    public void ATurbineOffItsBestSpeedRatioGivesLess()
    {
        var spec = PipedEngines.Turbo(piped: false);
        var induction = (CentrifugalInduction)spec.Intake.Induction!;
        double Boost(double best) => At(spec with { Intake = spec.Intake with { Induction = induction with { Turbine = induction.Turbine! with { BestSpeedRatio = best, ThroatArea = 700e-6 } } } }, 5000).Boost;
        Assert.True(Boost(1) < 0.9 * Boost(0.65), $"{Boost(1):F0} against {Boost(0.65):F0} Pa");
    }

    [Fact]
    public void TracesShowThePipes()
    {
        var point = new EngineModel(PipedEngines.Twin()).RunPoint(Engines.Rpm(6000), Options with { WithTraces = true });
        var pipes = point.Trace!.Pipes;
        Assert.Equal(["runner 1", "runner 2", "tail", "primary 1", "primary 2"], pipes.Select(p => p.Name));
        Assert.All(pipes, p => Assert.Equal(point.Trace.CrankAngle.Length, p.Pressure.Length));
        Assert.Equal(0.24, pipes[0].Places[^1] + pipes[0].Places[0], 1e-9);

        // The blowdown reaches the junction some 0.6 m / (sound and flow speed) after it left the valve.
        var valve = pipes[3].At(0);
        var end = pipes[3].At(0.6);
        var (atValve, atEnd) = (Rise(valve), Rise(end));
        var lag = (atEnd - atValve) / 720 * (4 * Math.PI / Engines.Rpm(6000));
        Assert.InRange(0.6 / lag, 550, 1100);
        double Rise(double[] pressure)
        {
            var from = Array.FindIndex(point.Trace.CrankAngle, a => a > 115);
            var limit = 1.15 * pressure[from];
            return point.Trace.CrankAngle[Array.FindIndex(pressure, from, p => p > limit)];
        }
    }

    [Fact]
    public void ParallelAndSerialAgreeToTheBit()
    {
        var model = new EngineModel(PipedEngines.Single(40e-3));
        var speeds = new[] { 4000.0, 5000, 6000, 7000, 8000 }.Select(Engines.Rpm).ToArray();
        var (one, two) = (model.Run(new RunOptions { Speeds = speeds, DegreeOfParallelism = 1 }), model.Run(new RunOptions { Speeds = speeds, DegreeOfParallelism = 2 }));
        Assert.Equal(one.Select(p => p.Figures!.Torque), two.Select(p => p.Figures!.Torque));
    }

    [Theory]
    [InlineData("cylinder", "exhaust pipes: 0 lead to cylinder 2, which must be one")]
    [InlineData("stray", "inlet pipes: one leads to cylinder 5, which the engine does not have")]
    [InlineData("length", "inlet pipe of cylinder 1: length 0.001 m, which must lie in 0.005 to 20 m")]
    [InlineData("cell", "pipework: cell length 0.5 m, which must lie in 0.002 to 0.1 m")]
    public void PipeworkThatMakesNoEngineIsRefused(string fault, string sentence)
    {
        var twin = PipedEngines.Twin();
        var pipes = twin.Pipework!;
        var wrong = fault switch
        {
            "cylinder" => pipes with { Exhausts = [PipedEngines.Leaf(0.5, 0.04, 0.04, 0)] },
            "stray" => pipes with { Inlets = [.. pipes.Inlets, PipedEngines.Leaf(0.2, 0.04, 0.04, 4)] },
            "length" => pipes with { Inlets = [PipedEngines.Leaf(0.001, 0.04, 0.04, 0), pipes.Inlets[1]] },
            _ => pipes with { CellLength = 0.5 },
        };
        Assert.Equal(sentence, Assert.Throws<EngineSpecException>(() => new EngineModel(twin with { Pipework = wrong })).Message);
    }

    private static CentrifugalInduction Wastegate(EngineSpec spec, double opening)
    {
        var induction = (CentrifugalInduction)spec.Intake.Induction!;
        return induction with { Turbine = induction.Turbine! with { WastegateOpening = opening } };
    }
}
