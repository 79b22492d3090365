namespace Gudgeon.Simulation.Pipes;

/// <summary>One end of a pipe: what arrives there, what was decided to go through, and the cell beyond it.</summary>
internal sealed class PipeMouth(Pipe pipe, bool first)
{
    private readonly GasColumn _gas = pipe.Gas;
    private readonly int _cell = first ? 1 : pipe.Gas.Cells;
    private readonly int _ghost = first ? 0 : pipe.Gas.Cells + 1;
    private readonly int _face = first ? 0 : pipe.Gas.Cells;
    private readonly double _outwards = first ? -1 : 1;
    private MouthFlow _last;

    /// <summary>The pipe.</summary>
    public Pipe Pipe => pipe;

    /// <summary>Area, m².</summary>
    public double Area { get; } = pipe.Duct.FaceArea[first ? 0 : pipe.Duct.Cells];

    /// <summary>What went through last.</summary>
    public ref readonly MouthFlow Flow => ref _last;

    /// <summary>The gas that arrives at the end half a step on; after <see cref="Pipe.Begin"/>.</summary>
    public PipeEnd Arriving() => first
        ? new(_gas.LeftDensity[_cell], -_gas.LeftVelocity[_cell], _gas.LeftPressure[_cell], _gas.LeftEnergy[_cell] / _gas.LeftDensity[_cell], _gas.Degrees[_cell])
        : new(_gas.RightDensity[_cell], _gas.RightVelocity[_cell], _gas.RightPressure[_cell], _gas.RightEnergy[_cell] / _gas.RightDensity[_cell], _gas.Degrees[_cell]);

    /// <summary>A share of the gas that arrives.</summary>
    public double Share(int k) => (first ? _gas.LeftShare : _gas.RightShare)[k][_cell];

    /// <summary>Sets what goes through; <paramref name="entering"/> are the shares of what comes in, when it does.</summary>
    public void Let(in MouthFlow flow, ReadOnlySpan<double> entering)
    {
        _last = flow;
        var mass = flow.Outwards / Area;
        _gas.MassFlux[_face] = _outwards * mass;
        _gas.MomentumFlux[_face] = (mass * flow.Velocity) + flow.Pressure;
        _gas.EnergyFlux[_face] = _outwards * mass * flow.Enthalpy;
        for (var k = 0; k < _gas.Carried; k++)
        {
            _gas.ShareFlux[k][_face] = _outwards * mass * (mass > 0 ? Share(k) : entering[k]);
        }
    }

    /// <summary>Puts into the cell beyond the end what makes the slope of the last cell point at what was at the mouth.</summary>
    public void Mirror()
    {
        if (_last.Density == 0)
        {
            (_gas.Density[_ghost], _gas.Velocity[_ghost], _gas.Pressure[_ghost]) = (_gas.Density[_cell], _gas.Velocity[_cell], _gas.Pressure[_cell]);
        }
        else
        {
            _gas.Density[_ghost] = Math.Max(0.1 * _gas.Density[_cell], (2 * _last.Density) - _gas.Density[_cell]);
            _gas.Velocity[_ghost] = (2 * _outwards * _last.Velocity) - _gas.Velocity[_cell];
            _gas.Pressure[_ghost] = Math.Max(0.1 * _gas.Pressure[_cell], (2 * _last.Pressure) - _gas.Pressure[_cell]);
        }

        for (var k = 0; k < _gas.Carried; k++)
        {
            _gas.Share[k][_ghost] = _gas.Share[k][_cell];
        }
    }
}
