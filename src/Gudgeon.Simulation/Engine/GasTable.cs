using System.Runtime.CompilerServices;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Simulation.Engine;

/// <summary>Where a temperature search ended.</summary>
/// <param name="Temperature">K.</param>
/// <param name="HeatCapacity">Of the whole mixture at constant volume, J/K.</param>
/// <param name="GasConstant">Of the whole mixture (mass times specific gas constant), J/K.</param>
internal readonly record struct GasState(double Temperature, double HeatCapacity, double GasConstant);

/// <summary>
/// Internal energies (enthalpy of formation included) and gas constants of the carried species on an even temperature
/// grid, straight between the nodes, so that the temperature of a known energy is found exactly in one bracket. Burned
/// gas is in chemical equilibrium above <see cref="FreezingTemperature"/>, there tabulated over the logarithm of pressure
/// too, and keeps its composition below.
/// </summary>
internal sealed class GasTable
{
    /// <summary>Below this the burned gas no longer reacts in the time a cycle leaves it; Heywood 1988, sect. 4.9 (from memory).</summary>
    public const double FreezingTemperature = 1700;

    private const double Lowest = 150;
    private const double Step = 10;
    private const int Nodes = 386;
    private const int Freezing = (int)((FreezingTemperature - Lowest) / Step);
    private const double FreezingPressure = 10e5;
    private const int Columns = 14;
    private static readonly double LowestLog = Math.Log(0.3e5);
    private static readonly double LogStep = Math.Log(1000) / (Columns - 1);

    private readonly double[] _air = new double[Nodes];
    private readonly double[] _vapour = new double[Nodes];
    private readonly double[] _liquid = new double[Nodes];
    private readonly double[][] _burned = new double[Columns][];
    private readonly double[][] _burnedR = new double[Columns][];
    private readonly double[] _airEntropy;
    private readonly double[] _vapourEntropy;
    private readonly double[] _burnedEntropy;
    private readonly double _boiling;
    private readonly double _evaporation;

    /// <summary>Tabulates the gases of a run.</summary>
    /// <param name="air">The air with its humidity.</param>
    /// <param name="fuel">The fuel; null for an engine motored on air.</param>
    /// <param name="fuelPerAir">Mass of fuel to mass of moist air.</param>
    public GasTable(in GasMixture air, Fuel? fuel, double fuelPerAir)
    {
        (AirMixture, AirR) = (air, air.GasConstant);
        VapourR = fuel?.VapourGasConstant ?? AirR;
        FuelPerAir = fuelPerAir;
        (_boiling, _evaporation) = fuel is null ? (300, 0) : (BoilingPoint(fuel.Shares), fuel.LatentHeat / VapourR);
        for (var k = 0; k < Nodes; k++)
        {
            var t = Lowest + (k * Step);
            _air[k] = air.Energy(t);
            _vapour[k] = fuel?.VapourEnergy(t) ?? _air[k];
            _liquid[k] = fuel?.LiquidEnthalpy(t) ?? _air[k];
        }

        Frozen = FrozenOf(air, fuel);
        FillBurned(air, fuel);
        _airEntropy = Entropies(_air, _ => AirR);
        _vapourEntropy = Entropies(_vapour, _ => VapourR);
        _burnedEntropy = Entropies(_burned[0], k => _burnedR[0][k]);
    }

    /// <summary>The air with its humidity.</summary>
    public GasMixture AirMixture { get; }

    /// <summary>Burned gas as it is when it no longer reacts.</summary>
    public GasMixture Frozen { get; }

    /// <summary>Specific gas constant of the air, J/(kg·K).</summary>
    public double AirR { get; }

    /// <summary>Specific gas constant of the fuel vapour, J/(kg·K).</summary>
    public double VapourR { get; }

    /// <summary>Mass of fuel to mass of moist air in the run's mixture; 0 when motored.</summary>
    public double FuelPerAir { get; }

    /// <summary>Air that went into one kilogram of burned gas, kg.</summary>
    public double AirOfBurned => 1 / (1 + FuelPerAir);

    /// <summary>Fuel that went into one kilogram of burned gas, kg.</summary>
    public double FuelOfBurned => FuelPerAir / (1 + FuelPerAir);

    /// <summary>Temperature at which a mixture holds an internal energy.</summary>
    /// <param name="m">Masses, kg.</param>
    /// <param name="energy">Internal energy, J.</param>
    /// <param name="pressure">Pressure for the equilibrium of hot burned gas, Pa.</param>
    /// <param name="node">Grid node to start the search from; where it ended.</param>
    public GasState AtEnergy(in Mixture m, double energy, double pressure, ref int node)
    {
        var (column, share) = node < Freezing - 1 || m.Burned == 0 ? (0, 0.0) : Locate(pressure);
        var (low, high) = Search(m, energy, column, share, ref node);
        if (node >= Freezing - 1 && column == 0 && share == 0 && m.Burned > 0)
        {
            (column, share) = Locate(pressure);
            (low, high) = Search(m, energy, column, share, ref node);
        }

        var slope = (high - low) / Step;
        var above = (energy - low) / slope;
        return new GasState(Lowest + (node * Step) + above, slope, GasConstantAt(m, node, column, share, above / Step));
    }

    /// <summary>Internal energy of a mixture, J.</summary>
    public double Energy(in Mixture m, double temperature, double pressure)
    {
        var (k, above) = Node(temperature);
        var (column, share) = Locate(pressure);
        var low = EnergyAt(m, k, column, share);
        return low + (above * (EnergyAt(m, k + 1, column, share) - low));
    }

    /// <summary>Mass times specific gas constant of a mixture, J/K.</summary>
    public double GasConstant(in Mixture m, double temperature, double pressure)
    {
        var (k, above) = Node(temperature);
        var (column, share) = Locate(pressure);
        return GasConstantAt(m, k, column, share, above);
    }

    /// <summary>Heat capacity of a mixture at constant volume, J/K.</summary>
    public double HeatCapacity(in Mixture m, double temperature, double pressure)
    {
        var (k, _) = Node(temperature);
        var (column, share) = Locate(pressure);
        return (EnergyAt(m, k + 1, column, share) - EnergyAt(m, k, column, share)) / Step;
    }

    /// <summary>Enthalpy of liquid fuel, J/kg.</summary>
    public double LiquidEnthalpy(double temperature)
    {
        var (k, above) = Node(temperature);
        return _liquid[k] + (above * (_liquid[k + 1] - _liquid[k]));
    }

    /// <summary>
    /// Saturation pressure of the fuel, Pa, by Clausius and Clapeyron from the latent heat and the boiling point: methanol
    /// 17 kPa, iso-octane 6 kPa at 25 °C.
    /// </summary>
    public double SaturationPressure(double temperature) => 101_325 * Math.Exp(_evaporation * ((1 / _boiling) - (1 / temperature)));

    /// <summary>∫ cp/T dT of an unburned mixture from the foot of the table, J/K.</summary>
    public double Entropy(in Mixture m, double temperature)
    {
        var (k, above) = Node(temperature);
        var low = EntropyAt(m, k);
        return low + (above * (EntropyAt(m, k + 1) - low));
    }

    /// <summary>Temperature of an unburned mixture with a known ∫ cp/T dT; its slope dT/dφ comes along.</summary>
    public (double Temperature, double Slope) AtEntropy(in Mixture m, double entropy, ref int node)
    {
        var k = node;
        while (k < Nodes - 2 && EntropyAt(m, k + 1) < entropy)
        {
            k++;
        }

        while (k > 0 && EntropyAt(m, k) > entropy)
        {
            k--;
        }

        node = k;
        var low = EntropyAt(m, k);
        var slope = Step / (EntropyAt(m, k + 1) - low);
        return (Lowest + (k * Step) + ((entropy - low) * slope), slope);
    }

    /// <summary>Grid node at or below a temperature.</summary>
    public static int NodeOf(double temperature) => Node(temperature).Node;

    private static (int Node, double Above) Node(double temperature)
    {
        var x = (temperature - Lowest) / Step;
        var k = Math.Clamp((int)x, 0, Nodes - 2);
        return (k, x - k);
    }

    private static (int Column, double Share) Locate(double pressure)
    {
        var x = Math.Clamp((Math.Log(pressure) - LowestLog) / LogStep, 0, Columns - 1.000001);
        var column = (int)x;
        return (column, x - column);
    }

    /// <summary>Moves to the bracket of an energy; returns the energies at its ends.</summary>
    private (double Low, double High) Search(in Mixture m, double energy, int column, double share, ref int node)
    {
        var k = node;
        var low = EnergyAt(m, k, column, share);
        var high = EnergyAt(m, k + 1, column, share);
        while (high < energy && k < Nodes - 2)
        {
            k++;
            (low, high) = (high, EnergyAt(m, k + 1, column, share));
        }

        while (low > energy && k > 0)
        {
            k--;
            (low, high) = (EnergyAt(m, k, column, share), low);
        }

        node = k;
        return (low, high);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double EnergyAt(in Mixture m, int k, int column, double share)
    {
        var cool = _burned[column][k];
        var burned = share == 0 ? cool : cool + (share * (_burned[column + 1][k] - cool));
        return (m.Air * _air[k]) + (m.Vapour * _vapour[k]) + (m.Liquid * _liquid[k]) + (m.Burned * burned);
    }

    private double GasConstantAt(in Mixture m, int k, int column, double share, double above)
    {
        var (low, high) = (_burnedR[column], _burnedR[Math.Min(column + 1, Columns - 1)]);
        var a = low[k] + (share * (high[k] - low[k]));
        var b = low[k + 1] + (share * (high[k + 1] - low[k + 1]));
        return (m.Air * AirR) + (m.Vapour * VapourR) + (m.Burned * (a + (above * (b - a))));
    }

    private double EntropyAt(in Mixture m, int k) =>
        (m.Air * _airEntropy[k]) + (m.Vapour * _vapourEntropy[k]) + (m.Burned * _burnedEntropy[k]);

    /// <summary>Boiling points at 1 atm of iso-octane (which also stands for the middle of petrol), ethanol and methanol, K; by mass share.</summary>
    private static double BoilingPoint(FuelShares shares) => (shares.IsoOctane * 372.4) + (shares.Ethanol * 351.4) + (shares.Methanol * 337.7);

    private Elements BurnedElements(in GasMixture air, Fuel? fuel) =>
        fuel is null ? air.Elements : (AirOfBurned * air.Elements) + (FuelOfBurned * fuel.ElementsPerKilogram);

    private GasMixture FrozenOf(in GasMixture air, Fuel? fuel) =>
        fuel is null ? air : Equilibrium.AtTemperaturePressure(BurnedElements(air, fuel), FreezingTemperature, FreezingPressure).Frozen();

    private void FillBurned(in GasMixture air, Fuel? fuel)
    {
        var elements = BurnedElements(air, fuel);
        for (var c = 0; c < Columns; c++)
        {
            (_burned[c], _burnedR[c]) = (new double[Nodes], new double[Nodes]);
            var pressure = Math.Exp(LowestLog + (c * LogStep));
            var state = default(EquilibriumState);
            for (var k = 0; k < Nodes; k++)
            {
                var t = Lowest + (k * Step);
                if (k < Freezing || fuel is null)
                {
                    (_burned[c][k], _burnedR[c][k]) = c == 0 ? (Frozen.Energy(t), Frozen.GasConstant) : (_burned[0][k], _burnedR[0][k]);
                    continue;
                }

                state = Equilibrium.AtTemperaturePressure(elements, t, pressure, state);
                (_burned[c][k], _burnedR[c][k]) = (state.Energy, state.GasConstant);
            }
        }
    }

    /// <summary>∫ cp/T dT on the grid with cp held between nodes, as the energies have it.</summary>
    private static double[] Entropies(double[] energies, Func<int, double> gasConstant)
    {
        var entropies = new double[Nodes];
        for (var k = 1; k < Nodes; k++)
        {
            var cp = ((energies[k] - energies[k - 1]) / Step) + gasConstant(k);
            entropies[k] = entropies[k - 1] + (cp * Math.Log((Lowest + (k * Step)) / (Lowest + ((k - 1) * Step))));
        }

        return entropies;
    }
}
