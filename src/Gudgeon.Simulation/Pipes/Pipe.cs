using System.Numerics;

namespace Gudgeon.Simulation.Pipes;

/// <summary>A pipe at work: its gas, walls and two ends. What its ends do is told from outside.</summary>
internal sealed class Pipe
{
    private readonly DuctArrays _shape;
    private readonly PipeGas _law;

    /// <param name="duct">Shape.</param>
    /// <param name="law">The gases.</param>
    /// <param name="carried">How many shares it carries; fuel droplets only where fuel is injected.</param>
    /// <param name="roughness">Of the wall, m.</param>
    /// <param name="bendLoss">Loss coefficient of all bends.</param>
    /// <param name="heatScale">Multiplies the heat transfer.</param>
    public Pipe(Duct duct, PipeGas law, int carried, double roughness, double bendLoss, double heatScale)
    {
        (Duct, _law, _shape) = (duct, law, new DuctArrays(duct));
        Gas = new GasColumn(duct.Cells, carried);
        Walls = new WallStep(_shape, duct.Cells, roughness, bendLoss / duct.Length, heatScale);
        First = new PipeMouth(this, first: true);
        Last = new PipeMouth(this, first: false);
        FillPadding();
    }

    public Duct Duct { get; }

    public GasColumn Gas { get; }

    public WallStep Walls { get; }

    /// <summary>The end from which cells are counted.</summary>
    public PipeMouth First { get; }

    /// <summary>The other end.</summary>
    public PipeMouth Last { get; }

    /// <summary>Fills a cell; <see cref="Solve"/> when all are.</summary>
    public void Set(int cell, ReadOnlySpan<double> shares, double temperature, double velocity, double pressure) =>
        _law.Set(Gas, cell, shares, temperature, velocity, pressure);

    /// <summary>Finds the condition of every cell from what it holds.</summary>
    public void Solve() => _law.Solve(Gas);

    /// <summary>Speed of the fastest wave, m/s.</summary>
    public double Fastest()
    {
        var (most, i) = (Vector<double>.Zero, 1);
        for (; i + Vector<double>.Count <= Gas.Cells + 1; i += Vector<double>.Count)
        {
            most = Vector.Max(most, Vector.Abs(Lanes.At(Gas.Velocity, i)) + Lanes.At(Gas.Sound, i));
        }

        var fastest = 0.0;
        for (var lane = 0; lane < Vector<double>.Count; lane++)
        {
            fastest = Math.Max(fastest, most[lane]);
        }

        for (; i <= Gas.Cells; i++)
        {
            fastest = Math.Max(fastest, Math.Abs(Gas.Velocity[i]) + Gas.Sound[i]);
        }

        return fastest;
    }

    /// <summary>Carries face states half a step on and works out the fluxes inside; the mouths are to be told theirs before <see cref="Finish"/>.</summary>
    public void Begin(double dt)
    {
        First.Mirror();
        Last.Mirror();
        PipeStep.Evolve(Gas, dt / Duct.CellLength, _shape);
        PipeStep.Fluxes(Gas);
    }

    /// <summary>Takes what the fluxes bring, then friction and heat.</summary>
    public void Finish(double dt)
    {
        PipeStep.Update(Gas, _shape.FaceArea, _shape.PerVolume, dt);
        Walls.Apply(Gas, dt);
        _law.Solve(Gas);
    }

    /// <summary>What is beyond the last cell is read by whole vectors and must be some gas.</summary>
    private void FillPadding()
    {
        Span<double> none = stackalloc double[Gas.Carried];
        for (var cell = -1; cell < Gas.Density.Length - 1; cell++)
        {
            Set(cell, none, 300, 0, 1e5);
        }

        Solve();
    }
}
