using Gudgeon.Simulation.Pipes;
using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>
/// The pipes of the wave depth. A step takes each pipe on by itself, in as many parts as its quickest wave wants, against
/// the volumes at its ends with their pressures carried on from the last step; what went through a mouth then moves the
/// volume evenly over the step, so that one gives what the other receives.
/// </summary>
internal sealed partial class March
{
    /// <summary>Largest part of a cell that a wave may cross in a step.</summary>
    public const double Courant = 0.9;

    private const double StefanBoltzmann = 5.670374419e-8;
    private const int SearchingCycles = 4;

    private Pipe[] _pipes = [];
    private double[] _pipeRates = [];
    private byte[][] _parts = [];
    private int _cycle;

    /// <summary>The pipes, in the order of the network's.</summary>
    public IReadOnlyList<Pipe> Pipes => _pipes;

    /// <summary>What the pipes hold.</summary>
    public Totals InPipes()
    {
        var (air, fuel, energy) = (0.0, 0.0, 0.0);
        foreach (var pipe in _pipes)
        {
            var gas = pipe.Gas;
            for (var cell = 0; cell < gas.Cells; cell++)
            {
                var (i, volume) = (cell + 1, pipe.Duct.Volume[cell]);
                var (vapour, burned) = (gas.ShareDensity[PipeGas.Vapour][i], gas.ShareDensity[PipeGas.Burned][i]);
                var droplets = gas.Carried > PipeGas.Droplets ? gas.ShareDensity[PipeGas.Droplets][i] : 0;
                air += volume * (gas.Density[i] - vapour - burned - droplets + (_gas.AirOfBurned * burned));
                fuel += volume * (vapour + droplets + (_gas.FuelOfBurned * burned));
                energy += volume * gas.Total[i];
            }
        }

        var film = _film.Sum();
        return new(air, fuel + film, energy + (film * _fuelEnthalpy));
    }

    private void PreparePipes()
    {
        if (!_net.Piped)
        {
            return;
        }

        _pipes = [.. _net.Pipes.Select(l => new Pipe(l.Duct, _setup.PipeGas!, l.Intake ? 3 : 2, l.Spec.Roughness, l.BendLoss, _spec.Pipework!.HeatScale))];
        _pipeRates = new double[State.Length];
        _parts = [.. _pipes.Select(_ => new byte[Steps])];
        (_pressureBefore, _rtBefore, _enthalpyBefore) = (new double[_net.NodeCount], new double[_net.NodeCount], new double[_net.NodeCount]);
        (_inletValvePressure, _exhaustValvePressure) = (new double[_tables.Length], new double[_tables.Length]);
        (_trunkFlow, _branchFlow) = (new double[_net.NodeCount], new double[_net.NodeCount]);
        PrepareInjectors();
        var outlets = _net.Pipes.Where(l => l.Last.Kind == EndKind.OpenAir).Sum(l => l.Duct.FaceArea[^1]);
        _outletOpening = _spec.Pipework!.OutletArea is { } effective ? Math.Min(1, effective / outlets) : 1;
        for (var p = 0; p < _pipes.Length; p++)
        {
            Array.Fill(_pipes[p].Walls.Temperature, _net.Pipes[p].Spec.Wall.Temperature ?? (_net.Pipes[p].Intake ? _spec.Ambient.Temperature : 700));
        }
    }

    /// <summary>Pipes filled with still gas of a first guess.</summary>
    private void FillPipes(double pressure, double temperature)
    {
        for (var p = 0; p < _pipes.Length; p++)
        {
            var hot = !_net.Pipes[p].Intake && _spec.Combustion is not null;
            var f = _setup.FuelPerAir;
            ReadOnlySpan<double> shares = _net.Pipes[p].Intake ? [f / (1 + f), 0, 0] : [0, hot ? 1 : 0];
            for (var cell = 0; cell < _pipes[p].Gas.Cells; cell++)
            {
                _pipes[p].Set(cell, shares, hot ? 1000 : temperature, 0, _net.Pipes[p].Intake ? pressure : 1.02 * _spec.Ambient.Pressure);
            }

            _pipes[p].Solve();
        }

        foreach (var line in _net.Pipes)
        {
            FillJunction(line.First, line.Intake, pressure, temperature);
            FillJunction(line.Last, line.Intake, pressure, temperature);
        }
    }

    private void FillJunction(in PipeEnding ending, bool intake, double pressure, double temperature)
    {
        if (ending.Kind != EndKind.Volume || ending.Node == _net.Plenum)
        {
            return;
        }

        if (intake)
        {
            FillVolume(ending.Node, new(1, _setup.FuelPerAir, 0, 0), pressure, temperature);
            return;
        }

        var hot = _spec.Combustion is not null;
        FillVolume(ending.Node, hot ? new(0, 0, 1, 0) : new(1, 0, 0, 0), 1.02 * _spec.Ambient.Pressure, hot ? 1000 : temperature);
    }

    /// <summary>Takes every pipe over the step that begins at a crank index, and adds what its mouths gave to the rates there.</summary>
    private void AdvancePipes(int i, double[] f)
    {
        if (_pipes.Length == 0)
        {
            return;
        }

        Array.Clear(_pipeRates);
        Array.Clear(_inletFlow);
        Array.Clear(_exhaustFlow);
        _exhaustPressure = 0;
        Array.Clear(_inletValvePressure);
        Array.Clear(_exhaustValvePressure);
        NoteJunctions();
        foreach (var whole in _net.WholePipes)
        {
            Advance(whole.Start.Value, whole.End.Value, i);
        }

        _pipeRates[_at.CollectorPressure] = _exhaustPressure;
        Nodes.Pressure.CopyTo(_pressureBefore, 0);
        Nodes.RT.CopyTo(_rtBefore, 0);
        Nodes.Enthalpy.CopyTo(_enthalpyBefore, 0);
        AddPipes(f);
    }

    /// <summary>Adds what went through the mouths during the step to the rates of nodes and sums.</summary>
    private void AddPipes(double[] f)
    {
        for (var j = 0; j < _pipeRates.Length; j++)
        {
            f[j] += _pipeRates[j];
        }
    }

    /// <summary>Takes the stretches of one pipe over a step, together.</summary>
    private void Advance(int from, int to, int i)
    {
        var parts = 1;
        for (var p = from; p < to; p++)
        {
            parts = Math.Max(parts, PartsOf(p, i));
        }

        var dt = _dt / parts;
        for (var part = 0; part < parts; part++)
        {
            for (var p = from; p < to; p++)
            {
                _pipes[p].Begin(dt);
            }

            LetThrough(_pipes[from].First, _net.Pipes[from].First, i, (part + 0.5) / parts, 1.0 / parts);
            LetThrough(_pipes[to - 1].Last, _net.Pipes[to - 1].Last, i, (part + 0.5) / parts, 1.0 / parts);
            for (var p = from; p < to - 1; p++)
            {
                LetThroughStep(_pipes[p].Last, _pipes[p + 1].First);
            }

            for (var p = from; p < to; p++)
            {
                if (_injectors[p] > 0)
                {
                    Inject(p, dt, 1.0 / parts);
                }

                _pipes[p].Finish(dt);
            }
        }
    }

    /// <summary>
    /// Into how many parts a pipe divides a step: none of its waves crosses a cell in one. What a step needed once it keeps
    /// after the first cycles, for a division that comes and goes keeps the cycles from repeating.
    /// </summary>
    private int PartsOf(int p, int i)
    {
        var wanted = Math.Clamp((int)Math.Ceiling(_pipes[p].Fastest() * _dt / (Courant * _pipes[p].Duct.CellLength)), 1, 100);
        var parts = _cycle < SearchingCycles ? wanted : Math.Max(wanted, _parts[p][i]);
        return _parts[p][i] = (byte)parts;
    }

    /// <summary>Counts the heat that the walls took over the cycle and puts each to the temperature at which it would give as much to the outside.</summary>
    private void SettleWalls()
    {
        _cycle++;
        for (var p = 0; p < _pipes.Length; p++)
        {
            var (walls, duct, wall) = (_pipes[p].Walls, _pipes[p].Duct, _net.Pipes[p].Spec.Wall);
            for (var i = 1; i <= duct.Cells; i++)
            {
                var surface = 4 / duct.Diameter[i - 1] * duct.Volume[i - 1];
                var (h, ht) = (walls.Coefficient[i], walls.CoefficientTemperature[i]);
                State[_at.ExhaustHeat] += surface * (ht - (h * walls.Temperature[i]));
                (walls.Coefficient[i], walls.CoefficientTemperature[i]) = (0, 0);
                if (wall.Temperature is null && h > 0)
                {
                    var time = Steps * _dt;
                    walls.Temperature[i] = Balanced(h / time, ht / time, wall, walls.Temperature[i]);
                }
            }
        }
    }

    /// <summary>Wall temperature at which heat from the gas equals heat to the air and by radiation; Newton's method.</summary>
    private double Balanced(double h, double ht, PipeWall wall, double start)
    {
        var outside = _spec.Ambient.Temperature;
        var radiation = wall.Emissivity * StefanBoltzmann;
        var t = start;
        for (var turn = 0; turn < 8; turn++)
        {
            var left = ht - (h * t) - (wall.OutsideCoefficient * (t - outside)) - (radiation * ((t * t * t * t) - (outside * outside * outside * outside)));
            t += left / (h + wall.OutsideCoefficient + (4 * radiation * t * t * t));
        }

        return t;
    }
}
