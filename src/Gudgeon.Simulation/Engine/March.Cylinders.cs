using Gudgeon.Calc.Performance;
using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>The gas in nodes and cylinders: temperatures and pressures, zones, wall heat, end gas.</summary>
internal sealed partial class March
{
    // Motored pressure of Woschni's combustion term goes on from ignition with this polytropic exponent.
    private const double MotoredExponent = 1.32;

    private const double StandardAtmosphere = 101_325;

    private double[] _headArea = [];
    private double[] _pistonArea = [];
    private double[] _woschni = [];
    private double[] _pistonSpeed = [];
    private double _octaneDelay;

    private void PrepareHeat()
    {
        var walls = _spec.Walls;
        _headArea = [.. _tables.Select(t => t.Geometry.Area * walls.HeadAreaRatio)];
        _pistonArea = [.. _tables.Select(t => t.Geometry.Area * walls.PistonAreaRatio)];
        _pistonSpeed = [.. _tables.Select(t => 2 * t.Geometry.Travel * _omega / (2 * Math.PI))];

        // The coefficient at 1 Pa, 1 K and 1 m/s: the march puts in p^0.8 T^-0.55 w^0.8.
        _woschni = [.. _spec.Cylinders.Select(c => walls.WoschniScale * WallHeat.WoschniMotored(c.Bore, 1, 1, 1, velocityFactor: 1).Coefficient)];
    }

    private void PrepareKnock()
    {
        // The delay of Douaud and Eyzat without its pressure and temperature, at the mean of research and motor octane number.
        var octane = _spec.Combustion is null ? 100 : (_spec.Fuel.ResearchOctane + _spec.Fuel.MotorOctane) / 2;
        _octaneDelay = Knock.Delay(octane, StandardAtmosphere, 1000) / Math.Exp(3.8);
    }

    private void SolveMixed(int n, double[] y, double volume)
    {
        var m = MixtureOf(y, n);
        var energy = y[(PerNode * n) + Energy];
        var state = _gas.AtEnergy(m, energy, Nodes.Pressure[n], ref Nodes.Hint[n]);
        Nodes.Set(n, m, energy, volume, state);
    }

    private void SolveCylinder(int c, int i, double[] y)
    {
        var n = _net.Cylinders[c];
        switch (_zones[c].Mode)
        {
            case ZoneMode.Mixed:
                SolveMixed(n, y, _tables[c].Volume[i]);
                break;
            case ZoneMode.Kernel:
                SolveKernel(c, n, i, y);
                break;
            default:
                SolveTwoZones(c, n, i, y);
                break;
        }
    }

    private void SolveKernel(int c, int n, int i, double[] y)
    {
        var (z, x, mass, energy) = (_zones[c], _burnedZone[c][i], MassOf(y, n), y[(PerNode * n) + Energy]);
        var (unburned, burned) = ((1 - x) * mass * z.Unburned, x * mass * z.Burned);
        var p = Nodes.Pressure[n];
        var kernel = _gas.Energy(burned, z.UnburnedTemperature + z.FlameRise, p);
        var state = _gas.AtEnergy(unburned, energy - kernel, p, ref z.UnburnedNode);
        for (var k = 0; k < 4; k++)
        {
            kernel = _gas.Energy(burned, state.Temperature + z.FlameRise, p);
            state = _gas.AtEnergy(unburned, energy - kernel, p, ref z.UnburnedNode);
        }

        z.UnburnedTemperature = state.Temperature;
        z.BurnedTemperature = state.Temperature + z.FlameRise;
        var burnedR = _gas.GasConstant(burned, z.BurnedTemperature, p);
        SetZones(n, i, c, energy, mass, state, new(z.BurnedTemperature, _gas.HeatCapacity(burned, z.BurnedTemperature, p), burnedR));
    }

    /// <summary>
    /// Pressure at which both zones fill the cylinder: the unburned gas follows its isentrope (moved by its heat loss), the
    /// burned gas holds the remaining energy. Newton's method on pressure.
    /// </summary>
    private void SolveTwoZones(int c, int n, int i, double[] y)
    {
        var (z, x, mass, energy) = (_zones[c], _burnedZone[c][i], MassOf(y, n), y[(PerNode * n) + Energy]);
        var (unburned, burned) = ((1 - x) * mass * z.Unburned, x * mass * z.Burned);
        var (volume, entropy, specificR) = (_tables[c].Volume[i], y[_at.Entropy(c)], _gas.GasConstant(z.Unburned, 500, 1e6));
        var p = Nodes.Pressure[n];
        GasState cool = default, hot = default;
        for (var k = 0; k < 20; k++)
        {
            var (temperature, slope) = _gas.AtEntropy(z.Unburned, entropy + (specificR * Math.Log(p)), ref z.UnburnedNode);
            cool = new(temperature, _gas.HeatCapacity(unburned, temperature, p), (1 - x) * mass * specificR);
            hot = _gas.AtEnergy(burned, energy - _gas.Energy(unburned, temperature, p), p, ref z.BurnedNode);
            var miss = (((cool.GasConstant * temperature) + (hot.GasConstant * hot.Temperature)) / volume) - p;
            var coolSlope = slope * specificR / p;
            var hotSlope = -cool.HeatCapacity * coolSlope / hot.HeatCapacity;
            var step = miss / (1 - (((cool.GasConstant * coolSlope) + (hot.GasConstant * hotSlope)) / volume));
            p += step;
            if (Math.Abs(step) < 1e-11 * p)
            {
                break;
            }
        }

        Nodes.Pressure[n] = p;
        z.UnburnedTemperature = cool.Temperature;
        z.BurnedTemperature = hot.Temperature;
        SetZones(n, i, c, energy, mass, cool, hot);
    }

    /// <summary>Shows both zones to the outside as one gas at their mean temperature.</summary>
    private void SetZones(int n, int i, int c, double energy, double mass, in GasState cool, in GasState hot)
    {
        var r = cool.GasConstant + hot.GasConstant;
        var mean = ((cool.GasConstant * cool.Temperature) + (hot.GasConstant * hot.Temperature)) / r;
        Nodes.Set(n, mass * _zones[c].Together(_burnedZone[c][i]), energy, _tables[c].Volume[i], new(mean, cool.HeatCapacity + hot.HeatCapacity, r));
    }

    /// <summary>Ignition, the kernel growing into a zone, and merging when a valve opens. True when the rates must be taken again.</summary>
    private bool Events(int i)
    {
        var changed = false;
        for (var c = 0; c < _zones.Length; c++)
        {
            var z = _zones[c];
            var open = _tables[c].Open[i];
            if (z.Mode == ZoneMode.Mixed && !open && _burnedZone[c][i + 1] > 0)
            {
                Ignite(c, i);
                changed = true;
            }
            else if (z.Mode != ZoneMode.Mixed && open)
            {
                z.Mode = ZoneMode.Mixed;
                changed = true;
            }
            else if (z.Mode == ZoneMode.Kernel && _burnedZone[c][i] >= Engine.Zones.KernelEnds)
            {
                GrowKernel(c);
            }
        }

        return changed;
    }

    private void Ignite(int c, int i)
    {
        var (z, n) = (_zones[c], _net.Cylinders[c]);
        State[(PerNode * n) + Vapour] += State[(PerNode * n) + Liquid];
        State[(PerNode * n) + Liquid] = 0;
        SolveMixed(n, State, _tables[c].Volume[i]);
        var mass = MassOf(State, n);
        (z.IgnitionPressure, z.IgnitionVolume) = (Nodes.Pressure[n], _tables[c].Volume[i]);
        z.WoschniReference = 1 / (mass * Nodes.RT[n] / Nodes.Temperature[n]);
        z.UnburnedNode = Nodes.Hint[n];
        z.Ignite(_gas, 1 / mass * MixtureOf(State, n), _spec.Combustion!.Efficiency, Nodes.Temperature[n], Nodes.Pressure[n]);
        if (_burnedZone[c][i] >= Engine.Zones.KernelEnds)
        {
            GrowKernel(c);
        }
    }

    private void GrowKernel(int c)
    {
        var (z, n) = (_zones[c], _net.Cylinders[c]);
        var r = _gas.GasConstant(z.Unburned, 500, 1e6);
        State[_at.Entropy(c)] = _gas.Entropy(z.Unburned, z.UnburnedTemperature) - (r * Math.Log(Nodes.Pressure[n]));
        z.Mode = ZoneMode.TwoZones;
        z.BurnedNode = GasTable.NodeOf(z.BurnedTemperature);
    }

    /// <summary>
    /// While a cylinder burns, only its whole mass and energy are integrated; the species follow from the burned fraction.
    /// Air and fuel counted with their share in the burned gas are unchanged by this.
    /// </summary>
    public void Partition(int i)
    {
        for (var c = 0; c < _zones.Length; c++)
        {
            if (_zones[c].Mode == ZoneMode.Mixed)
            {
                continue;
            }

            var n = _net.Cylinders[c];
            var m = MassOf(State, n) * _zones[c].Together(_burnedZone[c][i]);
            (State[PerNode * n], State[(PerNode * n) + Vapour], State[(PerNode * n) + Burned], State[(PerNode * n) + Liquid]) = (m.Air, m.Vapour, m.Burned, m.Liquid);
        }
    }

    private void CylinderRates(int c, int i, double[] y, double[] f)
    {
        var n = _net.Cylinders[c];
        var power = Nodes.Pressure[n] * _volumeRate[c];
        var heat = HeatToWalls(c, n, i, y, f);
        f[(PerNode * n) + Energy] -= power + heat;
        f[_at.Work(c)] = power;
        f[_at.Heat(c)] = heat;
        Evaporate(c, n, y, f);
        if (_spec.Combustion is not null && !_tables[c].Open[i])
        {
            f[_at.Knock(c)] = KnockRate(c, n, i);
        }
    }

    /// <summary>
    /// Woschni heat flow to the walls at the mean gas temperature; the unburned zone's share, over the (1 − √x) of the
    /// surface that it wets (Borman), moves its isentrope.
    /// </summary>
    private double HeatToWalls(int c, int n, int i, double[] y, double[] f)
    {
        if (_woschni[c] == 0)
        {
            return 0;
        }

        var (z, walls) = (_zones[c], _spec.Walls);
        var (p, t) = (Nodes.Pressure[n], Nodes.Temperature[n]);
        var velocity = (_tables[c].Open[i] ? 6.18 : 2.28) * _pistonSpeed[c];
        if (z.Mode != ZoneMode.Mixed)
        {
            var motored = z.IgnitionPressure * Math.Pow(z.IgnitionVolume / _tables[c].Volume[i], MotoredExponent);
            velocity += 3.24e-3 * _tables[c].Geometry.SweptVolume * z.WoschniReference * Math.Max(0, p - motored);
        }

        var h = _woschni[c] * Math.Exp((0.8 * Math.Log(p * velocity)) - (0.55 * Math.Log(t)));
        var (head, piston, liner) = (_headArea[c], _pistonArea[c], _tables[c].Liner[i]);
        var surface = head + piston + liner;
        var wallSum = (head * walls.Head) + (piston * walls.Piston) + (liner * walls.Liner);
        if (z.Mode != ZoneMode.Mixed)
        {
            var x = _burnedZone[c][i];
            if (x < 1)
            {
                var root = Math.Sqrt(x);
                var share = (1 - root) / (1 - x);
                f[_at.Entropy(c)] = -h * share * ((surface * z.UnburnedTemperature) - wallSum) / (MassOf(y, n) * z.UnburnedTemperature);
            }
        }

        return h * ((surface * t) - wallSum);
    }

    /// <summary>Liquid fuel in the cylinder evaporates with its remaining mass and with what is missing to saturation.</summary>
    private void Evaporate(int c, int n, double[] y, double[] f)
    {
        var liquid = y[(PerNode * n) + Liquid];
        if (_zones[c].Mode != ZoneMode.Mixed || liquid == 0)
        {
            return;
        }

        var rate = liquid * _omega / (_spec.Delivery.EvaporationAngle * Math.PI / 180) * Math.Max(0, 1 - Saturation(n));
        f[(PerNode * n) + Liquid] -= rate;
        f[(PerNode * n) + Vapour] += rate;
    }

    /// <summary>
    /// 1/τ of the end gas from the closed inlet valve until it is burned: full weight to 85 %, none from 95 % burned, since
    /// what goes off later is too little to hear. Nothing below 400 K, where
    /// the delay is seconds long.
    /// </summary>
    private double KnockRate(int c, int n, int i)
    {
        var z = _zones[c];
        var mixed = z.Mode == ZoneMode.Mixed;
        var t = mixed ? Nodes.Temperature[n] : z.UnburnedTemperature;
        if ((mixed && _tables[c].Angle[i] < 400) || t < 400)
        {
            return 0;
        }

        var weight = mixed ? 1 : Math.Clamp((0.95 - _burnedZone[c][i]) / 0.10, 0, 1);
        return weight == 0 ? 0 : weight * Math.Exp((1.7 * Math.Log(Nodes.Pressure[n] / StandardAtmosphere)) - (3800 / t)) / _octaneDelay;
    }
}
