using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>Compares each cycle with the one before, and checks its books.</summary>
internal sealed class Repetition
{
    /// <summary>
    /// With pipes, junctions and cylinders at one instant sit on steep waves, where a hair's breadth in time is much in pressure: they count a twentieth
    /// beside work, trapped mass and the volumes that fill over many cycles.
    /// </summary>
    private const double QuickWeight = 0.05;

    private readonly MarchSetup _setup;
    private readonly March _march;
    private readonly double[] _start;
    private readonly double[] _startTemperature;
    private readonly double[] _work;
    private readonly double[] _trapped;
    private readonly int[] _carried;
    private readonly double[] _before;
    private readonly double[] _after;
    private readonly double[] _scale;
    private readonly double[] _next;
    private readonly Accelerator _accelerator;
    private double _best = double.PositiveInfinity;
    private Totals _startTotals;

    public Repetition(MarchSetup setup, March march)
    {
        (_setup, _march) = (setup, march);
        _start = new double[march.State.Length];
        _startTemperature = new double[setup.Network.NodeCount];
        _work = new double[march.Zones.Length];
        _trapped = new double[march.Zones.Length];
        _carried = [.. Carried()];
        (_before, _after) = (new double[_carried.Length], new double[_carried.Length]);
        (_scale, _next) = (new double[_carried.Length], new double[_carried.Length]);
        _accelerator = new Accelerator(_carried.Length);
    }

    /// <summary>Largest relative change over the last cycle.</summary>
    public double Change { get; private set; } = double.PositiveInfinity;

    /// <summary>Closure of the last cycle.</summary>
    public CycleBalance Balance { get; private set; } = new(0, 0, 0);

    public void Begin()
    {
        _march.EvaluateStart();
        _march.State.CopyTo(_start, 0);
        _march.Nodes.Temperature.CopyTo(_startTemperature, 0);
        _startTotals = Totals.Stored(_march.State, _setup) + _march.InPipes();
    }

    /// <summary>Largest relative change of node masses, temperatures and work per cylinder, with pipes of trapped mass too, over the cycle just marched.</summary>
    public double End()
    {
        Balance = Close();
        _march.EvaluateStart();
        var net = _setup.Network;
        var largest = 0.0;
        for (var n = 0; n < net.NodeCount; n++)
        {
            if (net.Volumes[n] > 0 || Array.IndexOf(net.Cylinders, n) >= 0)
            {
                largest = Larger(largest, (IsSlow(n) ? 1 : QuickWeight) * NodeChange(n));
            }
        }

        for (var c = 0; c < _work.Length; c++)
        {
            var work = _march.State[_march.Layout.Work(c)];
            var scale = Math.Max(Math.Abs(work), 1e5 * _march.Tables[c].Geometry.SweptVolume);
            largest = Larger(largest, Math.Abs(work - _work[c]) / scale);
            _work[c] = work;
            if (_setup.Network.Piped)
            {
                var trapped = _march.Record.Trapped[c].Mass;
                largest = Larger(largest, Math.Abs(trapped - _trapped[c]) / trapped);
                _trapped[c] = trapped;
            }
        }

        return Change = Larger(largest, _march.ShaftChange);
    }

    /// <summary>Puts the state to a better start of the next cycle than the end of this one.</summary>
    public void Accelerate()
    {
        if (Change > 3 * _best)
        {
            _accelerator.Restart();
        }

        _best = Math.Min(_best, Change);
        for (var j = 0; j < _carried.Length; j++)
        {
            var at = _carried[j];
            (_before[j], _after[j], _scale[j]) = (_start[at], _march.State[at], ScaleOf(at));
        }

        _accelerator.Take(_before, _after, _scale, _next);
        if (!Plausible())
        {
            _accelerator.Restart();
            return;
        }

        for (var j = 0; j < _carried.Length; j++)
        {
            _march.State[_carried[j]] = _next[j];
        }

        if (_setup.Network.Piped)
        {
            // A cylinder that burns at the start of the cycle keeps the elements of its two zones.
            _march.Partition(0);
            _march.ForeseeFilms();
        }
    }

    /// <summary>No further from the end of the cycle than a tenth of each node's content and energy.</summary>
    private bool Plausible()
    {
        for (var j = 0; j < _carried.Length; j++)
        {
            if (!(Math.Abs(_next[j] - _after[j]) < 0.1 * _scale[j]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Entries of the state that the next cycle starts from: contents and energies of volumes and cylinders, unburned zones.</summary>
    private IEnumerable<int> Carried()
    {
        var net = _setup.Network;
        yield return _march.Layout.Shaft;
        if (net.Piped)
        {
            // Cylinders and junctions follow the pipes within a cycle; what fills over many is foreseen.
            foreach (var n in new[] { net.Airbox, net.Delivery, net.Plenum })
            {
                for (var s = 0; s < PerNode && n >= 0; s++)
                {
                    yield return (PerNode * n) + s;
                }
            }

            yield break;
        }

        for (var n = 0; n < net.NodeCount; n++)
        {
            for (var s = 0; s < PerNode && (net.Volumes[n] > 0 || Array.IndexOf(net.Cylinders, n) >= 0); s++)
            {
                yield return (PerNode * n) + s;
            }
        }

        for (var c = 0; c < net.Cylinders.Length; c++)
        {
            yield return _march.Layout.Entropy(c);
        }
    }

    /// <summary>Mass of the node for its species, thermal energy for its energy, gas constant's order for the entropy.</summary>
    private double ScaleOf(int at)
    {
        if (at == _march.Layout.Shaft)
        {
            return Math.Max(1, _march.BlowerSpeed);
        }

        var n = at / PerNode;
        if (n >= _setup.Network.NodeCount)
        {
            return 1000;
        }

        var j = PerNode * n;
        var y = _march.State;
        var mass = y[j] + y[j + Vapour] + y[j + Burned] + y[j + Liquid];
        return at % PerNode == MarchLayout.Energy ? mass * _march.Nodes.HeatCapacity[n] * _march.Nodes.Temperature[n] : mass;
    }

    private bool IsSlow(int n)
    {
        var net = _setup.Network;
        return !net.Piped || n == net.Airbox || n == net.Delivery || n == net.Plenum;
    }

    private double NodeChange(int n)
    {
        var (now, before) = (_march.State, _start);
        var mass = 0.0;
        for (var s = 0; s < Energy; s++)
        {
            mass += before[(PerNode * n) + s];
        }

        var change = Math.Abs(_march.Nodes.Temperature[n] / _startTemperature[n] - 1);
        for (var s = 0; s < Energy; s++)
        {
            change = Larger(change, Math.Abs(now[(PerNode * n) + s] - before[(PerNode * n) + s]) / mass);
        }

        return change;
    }

    private CycleBalance Close()
    {
        var end = Totals.All(_march.State, _setup, _march.Layout) + _march.InPipes();
        var passed = Totals.Passed(_march.State, _setup, _march.Layout);
        return new CycleBalance(
            Relative(end.Air - _startTotals.Air, passed.Air),
            Relative(end.Fuel - _startTotals.Fuel, passed.Fuel),
            Relative(end.Energy - _startTotals.Energy, passed.Energy));
    }

    private static double Relative(double error, double scale) => scale > 0 ? error / scale : 0;

    /// <summary>The larger one; not-a-number wins, so that a diverged march is seen.</summary>
    private static double Larger(double a, double b) => b > a || double.IsNaN(b) ? b : a;
}

/// <summary>Conserved amounts: air and fuel with their share in burned gas, energy with enthalpies of formation.</summary>
internal readonly record struct Totals(double Air, double Fuel, double Energy)
{
    public static Totals operator +(Totals a, Totals b) => new(a.Air + b.Air, a.Fuel + b.Fuel, a.Energy + b.Energy);

    /// <summary>What the volumes hold at the start of a cycle, when reservoirs and sums stand at nothing.</summary>
    public static Totals Stored(double[] y, MarchSetup setup) => Sum(y, setup, n => IsVolume(setup.Network, n), x => x);

    /// <summary>What the volumes hold and the reservoirs and sums received by the end of a cycle.</summary>
    public static Totals All(double[] y, MarchSetup setup, MarchLayout at)
    {
        var nodes = Sum(y, setup, _ => true, x => x);
        var given = y[at.CoolerHeat] + y[at.ExhaustHeat] + y[at.TurbineWork] - y[at.BlowerWork];
        for (var c = 0; c < setup.Network.Cylinders.Length; c++)
        {
            given += y[at.Work(c)] + y[at.Heat(c)];
        }

        return nodes with { Energy = nodes.Energy + given };
    }

    /// <summary>What went through reservoirs and sums, as the scale of the error.</summary>
    public static Totals Passed(double[] y, MarchSetup setup, MarchLayout at)
    {
        var nodes = Sum(y, setup, n => !IsVolume(setup.Network, n), Math.Abs);
        var given = Math.Abs(y[at.CoolerHeat]) + Math.Abs(y[at.ExhaustHeat]) + Math.Abs(y[at.BlowerWork]);
        for (var c = 0; c < setup.Network.Cylinders.Length; c++)
        {
            given += Math.Abs(y[at.Work(c)]) + Math.Abs(y[at.Heat(c)]);
        }

        return nodes with { Energy = nodes.Energy + given };
    }

    private static Totals Sum(double[] y, MarchSetup setup, Func<int, bool> of, Func<double, double> measure)
    {
        var gas = setup.Gas;
        var (air, fuel, energy) = (0.0, 0.0, 0.0);
        for (var n = 0; n < setup.Network.NodeCount; n++)
        {
            if (of(n))
            {
                var j = PerNode * n;
                air += measure(y[j] + (gas.AirOfBurned * y[j + Burned]));
                fuel += measure(y[j + Vapour] + y[j + Liquid] + (gas.FuelOfBurned * y[j + Burned]));
                energy += measure(y[j + MarchLayout.Energy]);
            }
        }

        return new(air, fuel, energy);
    }

    private static bool IsVolume(Network net, int n) => net.Volumes[n] > 0 || Array.IndexOf(net.Cylinders, n) >= 0;
}
