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

    /// <summary>Full traces when asked for.</summary>
    public CycleDetail? Detail { get; set; }

    public void Begin() => Array.Clear(EndGas);

    private static double[][] Make(int cylinders, int steps) => [.. Enumerable.Range(0, cylinders).Select(_ => new double[steps + 1])];
}

/// <summary>Full traces over a cycle.</summary>
internal sealed class CycleDetail(IReadOnlyList<double> firingAngles, int steps)
{
    public CylinderTrace[] Cylinders { get; } = [.. firingAngles.Select(a => new CylinderTrace(
        a, new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps]))];

    public double[] PlenumPressure { get; } = new double[steps];

    public double[] ExhaustPressure { get; } = new double[steps];

    public CycleTrace ToTrace() => new(
        [.. Enumerable.Range(0, steps).Select(i => 720.0 * i / steps)],
        Cylinders,
        PlenumPressure,
        ExhaustPressure);
}
