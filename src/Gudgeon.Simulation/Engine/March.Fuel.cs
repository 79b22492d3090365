using Gudgeon.Simulation.Pipes;
using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>Fuel injected into the pipes: vapour, droplets, and a film on the wall.</summary>
internal sealed partial class March
{
    private int[] _injectors = [];
    private double[] _film = [];
    private double[] _laid = [];
    private double _trim = 1;

    /// <summary>Puts each film to the mass at which it gives what the last cycle laid on it; between cycles only.</summary>
    public void ForeseeFilms()
    {
        for (var p = 0; p < _film.Length; p++)
        {
            _film[p] = _laid[p] * _spec.Delivery.FilmTime / (Steps * _dt);
        }
    }

    /// <summary>
    /// Trims the dose of an engine with wall films so that the fuel of a cycle is right for its air: a film gives vapour also while
    /// nothing passes. Without films dosing by what passes comes out even to some tenths of a per cent.
    /// </summary>
    private void SettleTrim()
    {
        var (air, tank) = (-State[PerNode * Network.Ambient], PerNode * Network.Tank);
        var fuel = -(State[tank + Vapour] + State[tank + Liquid]);
        if (_pipes.Length > 0 && _spec.Delivery.FilmShare > 0 && air > 0 && fuel > 0)
        {
            _trim = Math.Clamp(_trim * Math.Sqrt(air * _setup.FuelPerAir / fuel), 0.8, 1.25);
        }
    }

    private void PrepareInjectors()
    {
        _injectors = [.. _net.Pipes.Select(InjectorOf)];
        (_film, _laid) = (new double[_pipes.Length], new double[_pipes.Length]);
    }

    /// <summary>Index of the cell that fuel is injected into; 0 for none.</summary>
    private int InjectorOf(PipeLine line)
    {
        if (_setup.FuelPerAir == 0 || line.Last.Kind != EndKind.InletValve)
        {
            return 0;
        }

        var place = line.Duct.Length - _spec.Delivery.InjectorDistance;
        return Math.Clamp((int)(place / line.Duct.CellLength) + 1, 1, line.Duct.Cells);
    }

    /// <summary>
    /// Fuel for the air that passes the injector towards the valve and has none yet, a share of it onto the wall; and what the film there gives.
    /// </summary>
    private void Inject(int p, double dt, double share)
    {
        var (gas, cell, area) = (_pipes[p].Gas, _injectors[p], _net.Pipes[p].Duct.FaceArea[_injectors[p] - 1]);
        var mass = gas.MassFlux[cell - 1];
        var (vapour, burned, droplets) = (gas.ShareFlux[PipeGas.Vapour][cell - 1], gas.ShareFlux[PipeGas.Burned][cell - 1], gas.ShareFlux[PipeGas.Droplets][cell - 1]);
        var dose = mass > 0 ? Math.Max(0, area * (((mass - vapour - burned - droplets) * _trim * _setup.FuelPerAir) - vapour - droplets)) : 0;
        _pipeRates[(PerNode * Network.Tank) + Liquid] -= share * dose;
        _pipeRates[(PerNode * Network.Tank) + Energy] -= share * dose * _fuelEnthalpy;
        var laid = dose * _spec.Delivery.FilmShare;
        Spray(p, (dose - laid) * dt);
        if (_spec.Delivery.FilmShare > 0)
        {
            Film(p, laid * dt, dt);
        }
    }

    /// <summary>Its given share evaporates at once, as far as the vapour stays under four fifths to all of saturation; the rest travels as droplets.</summary>
    private void Spray(int p, double mass)
    {
        var (gas, cell) = (_pipes[p].Gas, _injectors[p]);
        var t = gas.Temperature[cell];
        var pressure = gas.ShareDensity[PipeGas.Vapour][cell] * _gas.VapourR * t;
        var evaporated = _spec.Delivery.EvaporatedInPort * Math.Clamp(5 * (1 - (pressure / _gas.SaturationPressure(t))), 0, 1);
        var added = mass / _net.Pipes[p].Duct.Volume[cell - 1];
        gas.Density[cell] += added;
        gas.Total[cell] += added * _fuelEnthalpy;
        gas.ShareDensity[PipeGas.Vapour][cell] += added * evaporated;
        gas.ShareDensity[PipeGas.Droplets][cell] += added * (1 - evaporated);
    }

    /// <summary>What evaporates from the film comes as vapour at the wall's temperature, and the wall gives the heat for it.</summary>
    private void Film(int p, double laid, double dt)
    {
        var (gas, cell) = (_pipes[p].Gas, _injectors[p]);
        var given = _film[p] * (1 - Math.Exp(-dt / _spec.Delivery.FilmTime));
        _film[p] += laid - given;
        _laid[p] += laid;
        var wall = _pipes[p].Walls.Temperature[cell];
        var enthalpy = _gas.Energy(new Mixture(0, 1, 0, 0), wall, 1e5) + (_gas.VapourR * wall);
        var added = given / _net.Pipes[p].Duct.Volume[cell - 1];
        gas.Density[cell] += added;
        gas.Total[cell] += added * enthalpy;
        gas.ShareDensity[PipeGas.Vapour][cell] += added;
        State[_at.ExhaustHeat] -= given * (enthalpy - _fuelEnthalpy);
    }
}
