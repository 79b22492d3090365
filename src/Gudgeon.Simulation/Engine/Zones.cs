namespace Gudgeon.Simulation.Engine;

/// <summary>How a cylinder's gas is closed.</summary>
internal enum ZoneMode
{
    /// <summary>One mixed gas.</summary>
    Mixed,

    /// <summary>Burned kernel under 1 % of the mass: its temperature is the unburned one plus the flame's rise.</summary>
    Kernel,

    /// <summary>Unburned gas on its own isentrope with heat loss, burned gas by the energy that remains.</summary>
    TwoZones,
}

/// <summary>The two zones of one cylinder between ignition and the opening of a valve.</summary>
internal sealed class Zones
{
    /// <summary>Burned-zone fraction at which the kernel becomes a zone of its own.</summary>
    public const double KernelEnds = 0.01;

    public ZoneMode Mode;

    /// <summary>Mass fractions of the unburned zone, residual gas included, as at ignition.</summary>
    public Mixture Unburned;

    /// <summary>Mass fractions of the burned zone.</summary>
    public Mixture Burned;

    /// <summary>Adiabatic flame temperature less unburned temperature at ignition, K.</summary>
    public double FlameRise;

    /// <summary>Unburned temperature, K.</summary>
    public double UnburnedTemperature;

    /// <summary>Burned temperature, K.</summary>
    public double BurnedTemperature;

    /// <summary>Pressure, Pa, and volume, m³, at ignition: the motored pressure is carried on from here.</summary>
    public double IgnitionPressure;
    public double IgnitionVolume;

    /// <summary>Woschni's Tr/(pr Vr) of the trapped charge, K/J.</summary>
    public double WoschniReference;

    public int UnburnedNode;
    public int BurnedNode;

    /// <summary>Mass fractions of both zones together.</summary>
    public Mixture Together(double burnedZone) => new(
        Unburned.Air + (burnedZone * (Burned.Air - Unburned.Air)),
        Unburned.Vapour + (burnedZone * (Burned.Vapour - Unburned.Vapour)),
        Unburned.Burned + (burnedZone * (Burned.Burned - Unburned.Burned)),
        0);

    /// <summary>Closes the zones of a fresh charge at ignition.</summary>
    /// <param name="gas">Working gases.</param>
    /// <param name="fractions">Mass fractions of the charge, all fuel evaporated.</param>
    /// <param name="efficiency">Share of the mixture that burns.</param>
    /// <param name="temperature">K.</param>
    /// <param name="pressure">Pa.</param>
    public void Ignite(GasTable gas, in Mixture fractions, double efficiency, double temperature, double pressure)
    {
        var burnable = efficiency * Math.Min(fractions.Air / gas.AirOfBurned, fractions.Vapour / gas.FuelOfBurned);
        Unburned = fractions;
        Burned = new(
            fractions.Air - (burnable * gas.AirOfBurned),
            fractions.Vapour - (burnable * gas.FuelOfBurned),
            fractions.Burned + burnable,
            0);
        FlameRise = FlameTemperature(gas, temperature, pressure) - temperature;
        UnburnedTemperature = temperature;
        BurnedTemperature = temperature + FlameRise;
        Mode = ZoneMode.Kernel;
    }

    /// <summary>Temperature of the burned zone at the enthalpy of the unburned gas, by bisection.</summary>
    private double FlameTemperature(GasTable gas, double temperature, double pressure)
    {
        var enthalpy = Enthalpy(gas, Unburned, temperature, pressure);
        var (low, high) = (temperature, 4000.0);
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Enthalpy(gas, Burned, middle, pressure) < enthalpy ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static double Enthalpy(GasTable gas, in Mixture m, double t, double p) => gas.Energy(m, t, p) + (gas.GasConstant(m, t, p) * t);
}
