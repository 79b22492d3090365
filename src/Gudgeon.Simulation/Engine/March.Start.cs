using static Gudgeon.Simulation.Engine.MarchLayout;

namespace Gudgeon.Simulation.Engine;

/// <summary>Filling the nodes before the first cycle.</summary>
internal sealed partial class March
{
    public Mixture ContentOf(int node) => MixtureOf(State, node);

    /// <summary>Puts a content at a temperature into a node.</summary>
    public void Fill(int n, in Mixture content, double temperature, double volume)
    {
        var pressure = _gas.GasConstant(content, temperature, 1e6) * temperature / volume;
        (State[PerNode * n], State[(PerNode * n) + Vapour], State[(PerNode * n) + Burned], State[(PerNode * n) + Liquid]) =
            (content.Air, content.Vapour, content.Burned, content.Liquid);
        State[(PerNode * n) + Energy] = _gas.Energy(content, temperature, pressure);
        Nodes.Pressure[n] = pressure;
        SolveMixed(n, State, volume);
    }

    /// <summary>Puts a content into a cylinder, in two zones when it was and still is burning at crank angle 0.</summary>
    public void FillCylinder(int c, in Mixture content, double temperature, in ZoneState zone)
    {
        var (n, z, x) = (_net.Cylinders[c], _zones[c], _burnedZone[c][0]);
        Fill(n, content, temperature, _tables[c].Volume[0]);
        if (zone.Mode != ZoneMode.TwoZones || x < Engine.Zones.KernelEnds || _tables[c].Open[0])
        {
            return;
        }

        z.Ignite(_gas, zone.Unburned, _spec.Combustion!.Efficiency, zone.UnburnedTemperature, zone.Pressure);
        (z.BurnedTemperature, z.IgnitionPressure, z.IgnitionVolume, z.WoschniReference) =
            (zone.BurnedTemperature, zone.IgnitionPressure, zone.IgnitionVolume, zone.WoschniReference);
        var mass = content.Mass;
        Nodes.Pressure[n] = zone.Pressure;
        State[(PerNode * n) + Energy] =
            _gas.Energy((1 - x) * mass * z.Unburned, zone.UnburnedTemperature, zone.Pressure)
            + _gas.Energy(x * mass * z.Burned, zone.BurnedTemperature, zone.Pressure);
        GrowKernel(c);
        Partition(0);
    }

    /// <summary>A first guess: warm charge, hot exhaust, each cylinder according to its stroke.</summary>
    public void FillFresh()
    {
        var ambient = _spec.Ambient;
        var (pressure, temperature) = (ambient.Pressure, ambient.Temperature);
        if (!_net.Imposed)
        {
            FillVolume(_net.Airbox, new(1, 0, 0, 0), pressure, temperature);
            (pressure, temperature) = GuessCharge();
            if (_net.Delivery >= 0)
            {
                FillVolume(_net.Delivery, new(1, 0, 0, 0), pressure, temperature);
            }

            FillVolume(_net.Plenum, new(1, 0, 0, 0), pressure, temperature);
            if (_net.Collector >= 0)
            {
                FillVolume(_net.Collector, new(0, 0, 1, 0), 1.05 * ambient.Pressure, _spec.Combustion is null ? temperature : 1000);
            }

            FillPipes(pressure, temperature);
        }
        else
        {
            pressure = _inletPortPressure[0][0];
        }

        for (var c = 0; c < _zones.Length; c++)
        {
            if (!_net.Imposed && !_net.Piped)
            {
                FillVolume(_net.Ports[c], new(1, _setup.FuelPerAir, 0, 0), pressure, temperature);
            }

            GuessCylinder(c, pressure);
        }
    }

    private (double Pressure, double Temperature) GuessCharge()
    {
        var (p, t) = (_spec.Ambient.Pressure, _spec.Ambient.Temperature);
        if (Line is null)
        {
            return (p, t);
        }

        var guess = Line.At(0.5);
        var delivered = t * (1 + (CompressorLine.Head(guess.PressureRatio) / guess.Efficiency));
        return (p * guess.PressureRatio, _spec.Intake.Cooler is { } cooler ? delivered - (cooler.Effectiveness * (delivered - cooler.CoolantTemperature)) : delivered);
    }

    private void GuessCylinder(int c, double pressure)
    {
        var t = _tables[c];
        var (angle, volume, largest) = (t.Angle[0], t.Volume[0], t.Volume.Max());
        var hot = _spec.Combustion is not null;
        var squeezed = largest / volume;
        var (p, temperature, burned) = angle switch
        {
            < 180 when hot => (4.0 * pressure * Math.Pow(squeezed, 1.25), 1400 * Math.Pow(squeezed, 0.25), true),
            < 180 => (0.95 * pressure * Math.Pow(squeezed, 1.36), 330 * Math.Pow(squeezed, 0.36), false),
            < 360 => (1.05 * _spec.Ambient.Pressure, hot ? 1000.0 : 330, hot),
            < 540 => (pressure, 340.0, false),
            _ => (pressure * Math.Pow(squeezed, 1.33), 340 * Math.Pow(squeezed, 0.33), false),
        };
        FillVolume(_net.Cylinders[c], burned ? new(0, 0, 1, 0) : new(1, _setup.FuelPerAir, 0, 0), p, temperature, volume);
    }

    private void FillVolume(int n, in Mixture proportions, double pressure, double temperature) =>
        FillVolume(n, proportions, pressure, temperature, _net.Volumes[n]);

    private void FillVolume(int n, in Mixture proportions, double pressure, double temperature, double volume)
    {
        var r = _gas.GasConstant(proportions, temperature, pressure);
        Fill(n, pressure * volume / (r * temperature) * proportions, temperature, volume);
    }
}
