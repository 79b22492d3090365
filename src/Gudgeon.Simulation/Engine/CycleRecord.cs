namespace Gudgeon.Simulation.Engine;

/// <summary>What is noted of each cylinder over a cycle.</summary>
internal sealed class CycleRecord
{
    public CycleRecord(int cylinders, int steps)
    {
        Pressure = Make(cylinders, steps);
        Temperature = Make(cylinders, steps);
        Work = Make(cylinders, steps);
        EndGas = new double[cylinders];
        (Inlet, Exhaust) = (new Passed[cylinders], new Passed[cylinders]);
        Trapped = new TrappedCharge[cylinders];
    }

    /// <summary>Pa.</summary>
    public double[][] Pressure { get; }

    /// <summary>K.</summary>
    public double[][] Temperature { get; }

    /// <summary>Work to the piston since crank angle 0, J.</summary>
    public double[][] Work { get; }

    /// <summary>Highest end-gas temperature until 90 % is burned, K.</summary>
    public double[] EndGas { get; }

    public TrappedCharge[] Trapped { get; }

    /// <summary>What passed the inlet valves.</summary>
    public Passed[] Inlet { get; }

    /// <summary>What passed the exhaust valves.</summary>
    public Passed[] Exhaust { get; }

    /// <summary>Full traces when asked for.</summary>
    public CycleDetail? Detail { get; set; }

    public void Begin()
    {
        Array.Clear(EndGas);
        Array.Clear(Inlet);
        Array.Clear(Exhaust);
    }

    private static double[][] Make(int cylinders, int steps) => [.. Enumerable.Range(0, cylinders).Select(_ => new double[steps + 1])];
}

/// <summary>Gas that went through valves, kg.</summary>
/// <param name="On">The way the engine breathes.</param>
/// <param name="Back">The other way.</param>
internal readonly record struct Passed(double On, double Back)
{
    /// <summary>Share of what went on that came back.</summary>
    public double Reversed => On > 0 ? Back / On : 0;

    public Passed With(double mass) => mass > 0 ? this with { On = On + mass } : this with { Back = Back - mass };
}

/// <summary>Full traces over a cycle.</summary>
internal sealed class CycleDetail(IReadOnlyList<double> firingAngles, PipeLine[] pipes, int steps)
{
    public CylinderTrace[] Cylinders { get; } = [.. firingAngles.Select(a => new CylinderTrace(
        a, new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps]))];

    public PipeTrace[] Pipes { get; } = [.. pipes.Select(l => new PipeTrace(
        l.Name, l.Intake, [.. Enumerable.Range(0, l.Duct.Cells).Select(i => (i + 0.5) * l.Duct.CellLength)], new double[steps][], new double[steps][]))];

    public double[] PlenumPressure { get; } = new double[steps];

    public double[] ExhaustPressure { get; } = new double[steps];

    public CycleTrace ToTrace() => new(
        [.. Enumerable.Range(0, steps).Select(i => 720.0 * i / steps)],
        Cylinders,
        PlenumPressure,
        ExhaustPressure,
        Pipes);
}
