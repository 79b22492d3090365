namespace Gudgeon.Simulation.Pipes;

/// <summary>The gas and walls of a pipe held as temperatures, velocities, pressures and shares, so that a pipe of another length or cell can start from it.</summary>
internal sealed class PipeState
{
    private readonly double[] _temperature, _velocity, _pressure, _wall;
    private readonly double[][] _shares;

    private PipeState(Pipe pipe)
    {
        double[] Cells(double[] of) => of[1..(pipe.Gas.Cells + 1)];
        (_temperature, _velocity, _pressure) = (Cells(pipe.Gas.Temperature), Cells(pipe.Gas.Velocity), Cells(pipe.Gas.Pressure));
        (_wall, _shares) = (Cells(pipe.Walls.Temperature), [.. pipe.Gas.Share.Select(Cells)]);
    }

    public static PipeState Of(Pipe pipe) => new(pipe);

    /// <summary>Fills a pipe at the same relative places.</summary>
    public void Restore(Pipe pipe)
    {
        Span<double> shares = stackalloc double[pipe.Gas.Carried];
        for (var cell = 0; cell < pipe.Gas.Cells; cell++)
        {
            var from = (int)((cell + 0.5) / pipe.Gas.Cells * _temperature.Length);
            for (var k = 0; k < shares.Length; k++)
            {
                shares[k] = _shares[k][from];
            }

            pipe.Set(cell, shares, _temperature[from], _velocity[from], _pressure[from]);
            pipe.Walls.Temperature[cell + 1] = _wall[from];
        }

        pipe.Solve();
    }
}
