using System.Numerics;

namespace Gudgeon.Simulation.Pipes;

/// <summary>What stands at the end of a pipe of perfect gas.</summary>
internal enum PerfectEnd
{
    /// <summary>A wall.</summary>
    Closed,

    /// <summary>The pipe goes on: waves leave and none comes back.</summary>
    Endless,
}

/// <summary>A pipe of perfect gas by itself, for holding the scheme to exact solutions and for timing it.</summary>
internal sealed class PerfectPipe
{
    private readonly Duct _duct;
    private readonly double _gamma;
    private readonly DuctArrays _shape;

    public PerfectPipe(Duct duct, double gamma)
    {
        (_duct, _gamma, _shape) = (duct, gamma, new DuctArrays(duct));
        Gas = new GasColumn(duct.Cells, 0);
    }

    public GasColumn Gas { get; }

    public PerfectEnd First { get; init; } = PerfectEnd.Endless;

    public PerfectEnd Last { get; init; } = PerfectEnd.Endless;

    /// <summary>Largest time step over which no wave crosses a cell, s.</summary>
    public double Step(double courant)
    {
        var fastest = 0.0;
        for (var i = 1; i <= Gas.Cells; i++)
        {
            fastest = Math.Max(fastest, Math.Abs(Gas.Velocity[i]) + Gas.Sound[i]);
        }

        return courant * _duct.CellLength / fastest;
    }

    /// <summary>Marches one time step.</summary>
    public void March(double dt)
    {
        var n = Gas.Cells;
        Beyond(0, 1, First);
        Beyond(n + 1, n, Last);
        PipeStep.Evolve(Gas, dt / _duct.CellLength, _shape);
        PipeStep.Fluxes(Gas);
        End(0, Gas.LeftDensity[1], Gas.LeftVelocity[1], Gas.LeftPressure[1], First, -1);
        End(n, Gas.RightDensity[n], Gas.RightVelocity[n], Gas.RightPressure[n], Last, 1);
        PipeStep.Update(Gas, _shape.FaceArea, _shape.PerVolume, dt);
        PerfectGas.Solve(Gas, _gamma);
    }

    private void Beyond(int ghost, int cell, PerfectEnd end)
    {
        foreach (var array in (ReadOnlySpan<double[]>)[Gas.Density, Gas.Velocity, Gas.Pressure])
        {
            array[ghost] = array[cell];
        }

        if (end == PerfectEnd.Closed)
        {
            Gas.Velocity[ghost] = -Gas.Velocity[cell];
        }
    }

    /// <summary>Flux through an end; a wall only pushes, with the pressure of the wave that stops the gas.</summary>
    private void End(int face, double rho, double u, double p, PerfectEnd end, int outwards)
    {
        if (end == PerfectEnd.Closed)
        {
            (Gas.MassFlux[face], Gas.EnergyFlux[face], Gas.MomentumFlux[face]) = (0, 0, Wall.Pressure(rho, u * outwards, p, _gamma));
            return;
        }

        Gas.MassFlux[face] = rho * u;
        Gas.MomentumFlux[face] = (rho * u * u) + p;
        Gas.EnergyFlux[face] = u * ((p * _gamma / (_gamma - 1)) + (0.5 * rho * u * u));
    }
}
