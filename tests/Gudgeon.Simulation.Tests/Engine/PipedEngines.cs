using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>The engines of <see cref="Engines"/> with pipes. Every value is invented.</summary>
internal static class PipedEngines
{
    /// <summary>The blown twin: two runners, two primaries into one tail.</summary>
    public static EngineSpec Twin(double cell = 15e-3, double runner = 0.24) => Engines.BlownTwin() with { Pipework = TwinPipes(cell, runner) };

    /// <summary>The petrol single: one runner, one open pipe.</summary>
    public static EngineSpec Single(double cell = 15e-3, double runner = 0.24, double runnerDiameter = 0.046, double primary = 0.7) =>
        WithPipe(Engines.PetrolSingle(), cell, runner, runnerDiameter, primary);

    /// <summary>The methanol single with the same pipes.</summary>
    public static EngineSpec Methanol() => WithPipe(Engines.MethanolSingle(), 15e-3, 0.24, 0.046, 0.7);

    /// <summary>The single with an exhaust whose width jumps twice.</summary>
    public static EngineSpec Stepped()
    {
        var single = Single();
        return single with
        {
            Pipework = single.Pipework! with
            {
                Exhausts = [new PipeTree { Pipe = new PipeSpec { Tapers = [Taper.Straight(0.3, 0.038), Taper.Straight(0.3, 0.042), Taper.Straight(0.3, 0.046)] }, Cylinder = 0 }],
            },
        };
    }

    /// <summary>The twin with one inlet stem that forks to both cylinders, and a silencer box before the tail.</summary>
    public static EngineSpec Siamese()
    {
        var twin = Twin();
        return twin with
        {
            Pipework = twin.Pipework! with
            {
                Inlets = [new PipeTree { Pipe = Pipe(0.15, 0.052, 0.052), JunctionVolume = 0.08e-3, Branches = [Leaf(0.1, 0.044, 0.044, 0), Leaf(0.1, 0.044, 0.044, 1)] }],
                Exhausts = [new PipeTree { Pipe = Pipe(0.3, 0.05, 0.05), JunctionVolume = 3e-3, JunctionRecovery = 0, Branches = twin.Pipework.Exhausts }],
            },
        };
    }

    /// <summary>The twin with a turbine in its exhaust that drives the compressor.</summary>
    public static EngineSpec Turbo(bool piped = true)
    {
        var twin = Engines.BlownTwin();
        var turbine = new TurbineSpec { ThroatArea = 450e-6, RotorDiameter = 0.05, WastegateArea = 400e-6, WastegateOpening = 0.6e5 };
        var turbo = twin with { Intake = twin.Intake with { Induction = (CentrifugalInduction)twin.Intake.Induction! with { Turbine = turbine } } };
        return piped ? turbo with { Pipework = TwinPipes(15e-3, 0.24) } : turbo;
    }

    /// <summary>A spec with pipes so short that they are hardly more than the lumped depth's volumes.</summary>
    public static (EngineSpec Lumped, EngineSpec Wave) Short(EngineSpec engine, double length)
    {
        const double Inlet = 0.052, Outlet = 0.048;
        double Area(double d) => Math.PI / 4 * d * d;
        var count = engine.Cylinders.Count;
        PipeTree Stub(double diameter, int c) => new() { Pipe = new PipeSpec { Tapers = [Taper.Straight(length, diameter)], EntryLoss = 0 }, Cylinder = c };
        var lumped = engine with
        {
            Exhaust = engine.Exhaust with { WallLossFraction = 0 },
            Intake = engine.Intake with { PortVolume = Area(Inlet) * length, RunnerArea = Area(Inlet) },
        };
        var pipework = new PipeworkSpec
        {
            HeatScale = 0,
            CellLength = 8e-3,
            OutletArea = engine.Exhaust.OutletArea,
            OutletLoss = 0,
            Inlets = [.. Enumerable.Range(0, count).Select(c => Stub(Inlet, c))],
            Exhausts =
            [
                new PipeTree
                {
                    Pipe = new PipeSpec { Tapers = [Taper.Straight(length, Outlet)], EntryLoss = 0 },
                    JunctionVolume = engine.Exhaust.CollectorVolume - (count * length * Area(Outlet)),
                    JunctionRecovery = 0,
                    Branches = [.. Enumerable.Range(0, count).Select(c => Stub(Outlet, c))],
                },
            ],
        };
        return (lumped, lumped with { Pipework = pipework });
    }

    public static PipeSpec Pipe(double length, double from, double to) => new() { Tapers = [new(length, from, to)] };

    public static PipeTree Leaf(double length, double from, double to, int cylinder) => new() { Pipe = Pipe(length, from, to), Cylinder = cylinder };

    private static EngineSpec WithPipe(EngineSpec engine, double cell, double runner, double runnerDiameter, double primary) => engine with
    {
        Pipework = new PipeworkSpec
        {
            CellLength = cell,
            Inlets = [Leaf(runner, runnerDiameter, runnerDiameter, 0)],
            Exhausts = [Leaf(primary, 0.04, 0.046, 0)],
        },
    };

    private static PipeworkSpec TwinPipes(double cell, double runner) => new()
    {
        CellLength = cell,
        Inlets = [Leaf(runner, 0.048, 0.044, 0), Leaf(runner, 0.048, 0.044, 1)],
        Exhausts = [new PipeTree { Pipe = Pipe(0.6, 0.05, 0.055), JunctionVolume = 0.4e-3, Branches = [Leaf(0.6, 0.041, 0.043, 0), Leaf(0.6, 0.041, 0.043, 1)] }],
    };
}
