using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>The flows between nodes. Whatever one node gives another receives.</summary>
internal sealed partial class March
{
    private const double ReliefBand = 1e4;

    private double[] _inletFlow = [];
    private double[] _exhaustFlow = [];
    private double[][] _inletPortPressure = [];
    private double[][] _exhaustPortPressure = [];
    private double _fuelEnthalpy;

    private void PrepareReservoirs()
    {
        _inletFlow = new double[_zones.Length];
        _exhaustFlow = new double[_zones.Length];
        var (p, t) = (_spec.Ambient.Pressure, _spec.Ambient.Temperature);
        SetReservoir(Network.Ambient, new(1, 0, 0, 0), p, t);
        SetReservoir(Network.Tailpipe, new(0, 0, 1, 0), p, t);
        SetReservoir(Network.Crankcase, new(1, 0, 0, 0), p, t);
        SetReservoir(Network.Tank, new(1, 0, 0, 0), p, t);
        _fuelEnthalpy = _gas.LiquidEnthalpy(_spec.Delivery.Temperature);
    }

    private void PrepareImposed()
    {
        if (_spec.ImposedPorts is not { } ports)
        {
            return;
        }

        var f = _setup.FuelPerAir;
        _inletPortPressure = [.. _tables.Select(t => Array.ConvertAll(t.Angle, a => Table.ReadPeriodic(ports.Inlet.Angles, ports.Inlet.Pressures, a)))];
        _exhaustPortPressure = [.. _tables.Select(t => Array.ConvertAll(t.Angle, a => Table.ReadPeriodic(ports.Exhaust.Angles, ports.Exhaust.Pressures, a)))];
        for (var c = 0; c < _zones.Length; c++)
        {
            SetReservoir(_net.Ports[c], new(1 / (1 + f), f / (1 + f), 0, 0), _inletPortPressure[c][0], ports.InletTemperature);
            SetReservoir(_net.ExhaustPorts[c], f > 0 ? new(0, 0, 1, 0) : new(1, 0, 0, 0), _exhaustPortPressure[c][0], ports.ExhaustTemperature);
        }
    }

    private void SetReservoir(int n, in Mixture fractions, double pressure, double temperature)
    {
        var r = _gas.GasConstant(fractions, temperature, pressure);
        var state = new GasState(temperature, _gas.HeatCapacity(fractions, temperature, pressure), r);
        Nodes.Set(n, fractions, _gas.Energy(fractions, temperature, pressure), r * temperature / pressure, state);
    }

    private void ImposePorts(int i)
    {
        for (var c = 0; c < _exhaustPortPressure.Length; c++)
        {
            Nodes.Pressure[_net.Ports[c]] = _inletPortPressure[c][i];
            Nodes.Pressure[_net.ExhaustPorts[c]] = _exhaustPortPressure[c][i];
        }
    }

    private void Flow(in Link link, int i, double[] f)
    {
        switch (link.Kind)
        {
            case LinkKind.Restriction:
                Move(Through(link.From, link.To, link.Area, link.Area), link, f);
                break;
            case LinkKind.CooledRestriction:
                FlowCooled(link, f);
                break;
            case LinkKind.Runner:
                FlowRunner(link, f);
                break;
            case LinkKind.Relief:
                FlowRelief(link, f);
                break;
            case LinkKind.Compressor:
                FlowCompressor(link, f);
                break;
            case LinkKind.Displacement:
                FlowDisplacement(link, f);
                break;
            case LinkKind.InletValve:
                FlowInlet(link, i, f);
                break;
            case LinkKind.ExhaustValve:
                FlowExhaust(link, i, f);
                break;
            case LinkKind.Outlet:
                FlowOutlet(link, f);
                break;
            case LinkKind.Turbine:
                FlowTurbine(link, f);
                break;
            case LinkKind.Wastegate:
                FlowWastegate(link, f);
                break;
            case LinkKind.BlowBy:
                Move(Math.Max(0, Through(link.From, link.To, link.Area, 0)), link, f);
                break;
        }
    }

    /// <summary>Flow from one node to another, negative when it goes back, kg/s.</summary>
    private double Through(int from, int to, double forward, double reverse)
    {
        var (a, b) = (Nodes.Pressure[from], Nodes.Pressure[to]);
        return a >= b
            ? (forward == 0 ? 0 : FlowFunction.MassFlow(forward, a, Nodes.RT[from], Nodes.Gamma[from], b))
            : (reverse == 0 ? 0 : -FlowFunction.MassFlow(reverse, b, Nodes.RT[to], Nodes.Gamma[to], a));
    }

    private void Move(double flow, in Link link, double[] f) => Move(flow, link.From, link.To, flow >= 0 ? link.From : link.To, f);

    /// <summary>Takes a flow with the composition and enthalpy of <paramref name="like"/> out of one node and puts it into another.</summary>
    private void Move(double flow, int from, int to, int like, double[] f)
    {
        var (a, b) = (PerNode * from, PerNode * to);
        var moved = flow * Nodes.Air[like];
        f[a] -= moved;
        f[b] += moved;
        moved = flow * Nodes.Vapour[like];
        f[a + Vapour] -= moved;
        f[b + Vapour] += moved;
        moved = flow * Nodes.Burned[like];
        f[a + Burned] -= moved;
        f[b + Burned] += moved;
        moved = flow * Nodes.Liquid[like];
        f[a + Liquid] -= moved;
        f[b + Liquid] += moved;
        moved = flow * Nodes.Enthalpy[like];
        f[a + Energy] -= moved;
        f[b + Energy] += moved;
    }

    private void FlowCooled(in Link link, double[] f)
    {
        var flow = Through(link.From, link.To, link.Area, link.Area);
        Move(flow, link, f);
        if (flow > 0)
        {
            var cooler = _spec.Intake.Cooler!;
            var heat = cooler.Effectiveness * flow * Nodes.HeatCapacity[link.From] * (Nodes.Temperature[link.From] - cooler.CoolantTemperature);
            f[(PerNode * link.To) + Energy] -= heat;
            f[_at.CoolerHeat] += heat;
        }
    }

    /// <summary>
    /// What enters a port is brought to the run's mixture: fuel for the air that has none yet. Its given share evaporates, as
    /// far as the vapour stays under four fifths to all of saturation.
    /// </summary>
    private void FlowRunner(in Link link, double[] f)
    {
        var flow = Through(link.From, link.To, link.Area, link.Area);
        Move(flow, link, f);
        if (flow > 0 && _setup.FuelPerAir > 0)
        {
            var n = link.From;
            var dose = flow * Math.Max(0, (Nodes.Air[n] * _setup.FuelPerAir) - Nodes.Vapour[n] - Nodes.Liquid[n]);
            var (tank, port) = (PerNode * Network.Tank, PerNode * link.To);
            f[tank + Liquid] -= dose;
            f[tank + Energy] -= dose * _fuelEnthalpy;
            var evaporated = _spec.Delivery.EvaporatedInPort * Math.Clamp(5 * (1 - Saturation(link.To)), 0, 1);
            f[port + Vapour] += dose * evaporated;
            f[port + Liquid] += dose * (1 - evaporated);
            f[port + Energy] += dose * _fuelEnthalpy;
        }
    }

    /// <summary>Partial pressure of the fuel vapour over its saturation pressure.</summary>
    private double Saturation(int n) =>
        Nodes.Vapour[n] * Nodes.Pressure[n] / Nodes.RT[n] * _gas.VapourR * Nodes.Temperature[n] / _gas.SaturationPressure(Nodes.Temperature[n]);

    private void FlowRelief(in Link link, double[] f)
    {
        var over = Nodes.Pressure[link.From] - _spec.Ambient.Pressure - _spec.Intake.Relief!.OpeningPressure;
        if (over > 0)
        {
            Move(Through(link.From, link.To, link.Area * Math.Min(1, over / ReliefBand), 0), link, f);
        }
    }

    private void FlowInlet(in Link link, int i, double[] f)
    {
        var t = _tables[link.Cylinder];
        var flow = Through(link.From, link.To, t.InletIn[i], t.InletOut[i]);
        _inletFlow[link.Cylinder] = flow;
        if (flow != 0)
        {
            Move(flow, link, f);
        }
    }

    private void FlowExhaust(in Link link, int i, double[] f)
    {
        var t = _tables[link.Cylinder];
        var flow = Through(link.From, link.To, t.ExhaustOut[i], t.ExhaustIn[i]);
        _exhaustFlow[link.Cylinder] = flow;
        if (flow == 0)
        {
            return;
        }

        Move(flow, link, f);
        if (flow > 0 && !_net.Imposed)
        {
            var n = link.From;
            var heat = _spec.Exhaust.WallLossFraction * flow * Nodes.HeatCapacity[n] * (Nodes.Temperature[n] - _spec.Ambient.Temperature);
            f[(PerNode * link.To) + Energy] -= heat;
            f[_at.ExhaustHeat] += heat;
        }
    }

    /// <summary>Gas that comes back through the tailpipe is the gas that left it.</summary>
    private void FlowOutlet(in Link link, double[] f)
    {
        var n = link.From;
        var (p, ambient) = (Nodes.Pressure[n], _spec.Ambient.Pressure);
        var flow = p >= ambient
            ? FlowFunction.MassFlow(link.Area, p, Nodes.RT[n], Nodes.Gamma[n], ambient)
            : -FlowFunction.MassFlow(link.Area, ambient, Nodes.RT[n], Nodes.Gamma[n], p);
        Move(flow, n, link.To, n, f);
        f[_at.OutletMass] = flow;
        f[_at.OutletTemperature] = flow * Nodes.Temperature[n];
    }
}
