using Gudgeon.Simulation.Pipes;

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
internal sealed class CycleDetail(IReadOnlyList<double> firingAngles, PipeLine[][] pipes, int steps)
{
    public CylinderTrace[] Cylinders { get; } = [.. firingAngles.Select(a => new CylinderTrace(
        a, new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps], new double[steps]))];

    /// <summary>One for each pipe, all its stretches in a row.</summary>
    public PipeTrace[] Pipes { get; } = [.. pipes.Select(s => new PipeTrace(
        s[0].Name, s[0].Intake, Math.Max(s[0].Cylinder, s[^1].Cylinder), s[0].Trunk, Places(s), s.Sum(l => l.Duct.Length), new double[steps][], new double[steps][]))];

    public double[] PlenumPressure { get; } = new double[steps];

    public double[] ExhaustPressure { get; } = new double[steps];

    /// <summary>Notes the gas in every pipe.</summary>
    public void Observe(Pipe[] stretches, int i)
    {
        for (var (p, next) = (0, 0); p < Pipes.Length; p++)
        {
            var cells = Pipes[p].Places.Length;
            var (pressure, velocity) = (new double[cells], new double[cells]);
            for (var at = 0; at < cells; next++)
            {
                var gas = stretches[next].Gas;
                Array.Copy(gas.Pressure, 1, pressure, at, gas.Cells);
                Array.Copy(gas.Velocity, 1, velocity, at, gas.Cells);
                at += gas.Cells;
            }

            (Pipes[p].Pressure[i], Pipes[p].Velocity[i]) = (pressure, velocity);
        }
    }

    public CycleTrace ToTrace() => new(
        [.. Enumerable.Range(0, steps).Select(i => 720.0 * i / steps)],
        Cylinders,
        PlenumPressure,
        ExhaustPressure,
        Pipes);

    private static double[] Places(PipeLine[] stretches)
    {
        var (places, before) = (new List<double>(), 0.0);
        foreach (var duct in stretches.Select(l => l.Duct))
        {
            places.AddRange(Enumerable.Range(0, duct.Cells).Select(i => before + ((i + 0.5) * duct.CellLength)));
            before += duct.Length;
        }

        return [.. places];
    }
}
