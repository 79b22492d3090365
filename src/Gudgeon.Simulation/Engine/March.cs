using System.Numerics;
using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>
/// Marches the whole network over one cycle at a time with Heun's method on an even grid of crank angles. The state is one
/// flat array (species masses and energy of every node, work, heat, sums), so one rule integrates all of it and what leaves
/// one place arrives in another to round-off. Nothing is allocated while marching.
/// </summary>
internal sealed partial class March
{
    private readonly MarchSetup _setup;
    private readonly EngineSpec _spec;
    private readonly Network _net;
    private readonly GasTable _gas;
    private readonly MarchLayout _at;
    private readonly CylinderTable[] _tables;
    private readonly CombustionSpec? _combustion;
    private readonly double[][] _burnedZone;
    private readonly double[] _residual;
    private readonly Zones[] _zones;
    private readonly double[] _volumeRate;
    private readonly double[] _predicted;
    private readonly double[] _rate0;
    private readonly double[] _rate1;
    private readonly double _omega;
    private readonly double _dt;

    /// <param name="setup">What the engine's points share.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="steps">Steps per cycle.</param>
    /// <param name="combustion">The burn, where it is another than the engine's; null motors it.</param>
    public March(MarchSetup setup, double speed, int steps, CombustionSpec? combustion)
    {
        (_setup, _spec, _net, _gas) = (setup, setup.Spec, setup.Network, setup.Gas);
        (_omega, Steps, _dt) = (speed, steps, 4 * Math.PI / speed / steps);
        _tables = setup.Tables(steps);
        var cylinders = _tables.Length;
        _at = new MarchLayout(_net.NodeCount, cylinders);
        _combustion = combustion;
        _burnedZone = [.. _tables.Select(_ => new double[steps + 1])];
        _residual = new double[cylinders];
        Array.Fill(_residual, combustion?.ReferenceResidual ?? 0);
        PlaceBurns();
        _zones = [.. _tables.Select(_ => new Zones())];
        _volumeRate = new double[cylinders];
        State = new double[_at.Length];
        (_predicted, _rate0, _rate1) = (new double[_at.Length], new double[_at.Length], new double[_at.Length]);
        Nodes = new NodeGas(_net.NodeCount);
        Record = new CycleRecord(cylinders, steps);
        PrepareHeat();
        PrepareKnock();
        PrepareBlower();
        SetShaft(BlowerSpeed);
        PrepareReservoirs();
        PrepareImposed();
        PreparePipes();
    }

    public int Steps { get; }

    public MarchLayout Layout => _at;

    public CylinderTable[] Tables => _tables;

    /// <summary>Crank angle of 50 % burned, degrees; null when motored.</summary>
    public double? Burned50 { get; private set; }

    /// <summary>The marched state; see <see cref="MarchLayout"/>.</summary>
    public double[] State { get; }

    /// <summary>Condition of every node as last evaluated.</summary>
    public NodeGas Nodes { get; }

    /// <summary>What was seen over the last cycle.</summary>
    public CycleRecord Record { get; }

    public Zones[] Zones => _zones;

    /// <summary>Marches one cycle from crank angle 0 to 720.</summary>
    public void Cycle()
    {
        ClearSums();
        Record.Begin();
        SetShaft(State[_at.Shaft]);
        Array.Clear(_laid);
        if (_combustion?.ReferenceResidual is not null)
        {
            PlaceBurns();
        }

        for (var i = 0; i < Steps; i++)
        {
            Step(i);
        }

        for (var c = 0; c < _zones.Length; c++)
        {
            Record.Work[c][Steps] = State[_at.Work(c)];
        }

        for (var c = 0; c < _zones.Length; c++)
        {
            // Within a hundredth, a tenth of a per cent of the burn's length, it stays: else the grid of crank angles makes it hunt.
            var residual = Record.Trapped[c].Residual;
            _residual[c] = Math.Abs(residual - _residual[c]) > 0.01 * residual ? residual : _residual[c];
        }

        SettleWalls();
        SettleShaft();
        SettleTrim();
    }

    /// <summary>Lays the burns on the grid, each as long as the residual gas of the last cycle makes it.</summary>
    private void PlaceBurns()
    {
        for (var c = 0; c < _tables.Length && _combustion is { } burn; c++)
        {
            var curve = new BurnCurve(burn, _omega, _spec.Lambda, _residual[c]);
            _tables[c].BurnedZone(curve, _burnedZone[c]);
            Burned50 = curve.Burned50;
        }
    }

    /// <summary>Puts the nodes' condition to the state at crank angle 0.</summary>
    public void EvaluateStart() => EvaluateAt(0);

    /// <summary>Puts the nodes' condition to the state at a crank index.</summary>
    public void EvaluateAt(int i) => Evaluate(i, State, _rate0);

    /// <summary>Fraction of a cylinder's mass in its burned zone at a crank index.</summary>
    public double BurnedZone(int cylinder, int i) => _burnedZone[cylinder][i];

    /// <summary>Marches one step from crank index <paramref name="i"/>.</summary>
    public void Step(int i)
    {
        for (var c = 0; c < _volumeRate.Length; c++)
        {
            _volumeRate[c] = (_tables[c].Volume[i + 1] - _tables[c].Volume[i]) / _dt;
        }

        Evaluate(i, State, _rate0);
        if (Events(i))
        {
            Evaluate(i, State, _rate0);
        }

        AdvancePipes(i, _rate0);
        Observe(i);
        Predict();
        Evaluate(i + 1, _predicted, _rate1);
        AddPipes(_rate1);
        Correct();
        Partition(i + 1);
    }

    /// <summary>First rates carried over the whole step.</summary>
    private void Predict()
    {
        var (y, f, p, dt) = (State, _rate0, _predicted, new Vector<double>(_dt));
        for (var j = 0; j < y.Length; j += Vector<double>.Count)
        {
            (new Vector<double>(y, j) + (dt * new Vector<double>(f, j))).CopyTo(p, j);
        }
    }

    /// <summary>Mean of first and predicted rates over the step.</summary>
    private void Correct()
    {
        var (y, f, g, half) = (State, _rate0, _rate1, new Vector<double>(_dt / 2));
        for (var j = 0; j < y.Length; j += Vector<double>.Count)
        {
            (new Vector<double>(y, j) + (half * (new Vector<double>(f, j) + new Vector<double>(g, j)))).CopyTo(y, j);
        }
    }

    /// <summary>Rates of change of the state at a crank index.</summary>
    private void Evaluate(int i, double[] y, double[] f)
    {
        Array.Clear(f);
        for (var n = 0; n < _net.Volumes.Length; n++)
        {
            if (_net.Volumes[n] > 0)
            {
                SolveMixed(n, y, _net.Volumes[n]);
            }
        }

        for (var c = 0; c < _zones.Length; c++)
        {
            SolveCylinder(c, i, y);
        }

        ImposePorts(i);
        foreach (ref readonly var link in _net.Links.AsSpan())
        {
            Flow(link, i, f);
        }

        for (var c = 0; c < _zones.Length; c++)
        {
            CylinderRates(c, i, y, f);
        }

        Means(f);
    }

    private void Means(double[] f)
    {
        if (_net.Imposed)
        {
            return;
        }

        f[_at.PlenumPressure] = Nodes.Pressure[_net.Plenum];
        f[_at.PlenumTemperature] = Nodes.Temperature[_net.Plenum];
        f[_at.AirboxPressure] = Nodes.Pressure[_net.Airbox];
        if (_net.Collector >= 0)
        {
            f[_at.CollectorPressure] = Nodes.Pressure[_net.Collector];
        }

        if (_net.Delivery >= 0)
        {
            f[_at.DeliveryPressure] = Nodes.Pressure[_net.Delivery];
        }
    }

    /// <summary>Reservoirs and sums start every cycle from nothing.</summary>
    private void ClearSums()
    {
        for (var n = 0; n < _net.Volumes.Length; n++)
        {
            if (_net.Volumes[n] == 0 && Array.IndexOf(_net.Cylinders, n) < 0)
            {
                Array.Clear(State, PerNode * n, PerNode);
            }
        }

        for (var c = 0; c < _zones.Length; c++)
        {
            (State[_at.Knock(c)], State[_at.Work(c)], State[_at.Heat(c)]) = (0, 0, 0);
        }

        Array.Clear(State, _at.CoolerHeat, _at.Length - _at.CoolerHeat);
    }

    private void Observe(int i)
    {
        var r = Record;
        for (var c = 0; c < _zones.Length; c++)
        {
            var n = _net.Cylinders[c];
            r.Pressure[c][i] = Nodes.Pressure[n];
            r.Temperature[c][i] = Nodes.Temperature[n];
            r.Work[c][i] = State[_at.Work(c)];
            if (_zones[c].Mode != ZoneMode.Mixed && _burnedZone[c][i] < 0.9)
            {
                r.EndGas[c] = Math.Max(r.EndGas[c], _zones[c].UnburnedTemperature);
            }

            if (i == _tables[c].InletCloses)
            {
                r.Trapped[c] = Nodes.Condition(n, MassOf(State, n));
            }

            r.Inlet[c] = r.Inlet[c].With(_inletFlow[c] * _dt);
            r.Exhaust[c] = r.Exhaust[c].With(_exhaustFlow[c] * _dt);
            if (r.Detail is { } detail)
            {
                ObserveDetail(detail, c, n, i);
            }
        }

        r.Detail?.Observe(_pipes, i);
    }

    private void ObserveDetail(CycleDetail detail, int c, int n, int i)
    {
        var (z, t) = (_zones[c], detail.Cylinders[c]);
        var mixed = z.Mode == ZoneMode.Mixed;
        t.Pressure[i] = Nodes.Pressure[n];
        t.Temperature[i] = Nodes.Temperature[n];
        t.Volume[i] = _tables[c].Volume[i];
        t.BurnedFraction[i] = mixed ? 0 : _burnedZone[c][i];
        t.UnburnedTemperature[i] = mixed ? Nodes.Temperature[n] : z.UnburnedTemperature;
        t.BurnedTemperature[i] = mixed ? Nodes.Temperature[n] : z.BurnedTemperature;
        t.InletFlow[i] = _inletFlow[c];
        t.ExhaustFlow[i] = _exhaustFlow[c];
        t.WallHeat[i] = _rate0[_at.Heat(c)];
        (t.InletPressure[i], t.ExhaustPressure[i]) = _net.Piped
            ? (_inletValvePressure[c], _exhaustValvePressure[c])
            : (Nodes.Pressure[_net.Ports[c]], Nodes.Pressure[_net.ExhaustPorts[c]]);
        if (!_net.Imposed && c == 0)
        {
            detail.PlenumPressure[i] = Nodes.Pressure[_net.Plenum];
            detail.ExhaustPressure[i] = _net.Collector >= 0 ? Nodes.Pressure[_net.Collector] : _exhaustPressure;
        }
    }

    private static double MassOf(double[] y, int n) => y[PerNode * n] + y[(PerNode * n) + Vapour] + y[(PerNode * n) + Burned] + y[(PerNode * n) + Liquid];

    private static Mixture MixtureOf(double[] y, int n) => new(y[PerNode * n], y[(PerNode * n) + Vapour], y[(PerNode * n) + Burned], y[(PerNode * n) + Liquid]);
}
