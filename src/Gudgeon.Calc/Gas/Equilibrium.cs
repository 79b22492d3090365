using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>
/// Chemical equilibrium of burned gas: the twelve species of <see cref="ProductAmounts"/>, ideal gas, minimum of the Gibbs
/// function at given temperature and pressure, and the states with given enthalpy, energy or entropy on top of it.
/// Good for 200 to 6000 K and any mixture with more oxygen atoms than carbon atoms; richer than that soot would form, and
/// it is refused. No methane among the products: below about 900 K a rich mixture is a water-gas equilibrium only.
/// Nothing here allocates. Pass a nearby state as <c>near</c> to save iterations.
/// </summary>
public static class Equilibrium
{
    private const int MaxIterations = 100;
    private const double Tolerance = 1e-10;

    /// <summary>Equilibrium at temperature and pressure.</summary>
    /// <param name="elements">Atoms, mol per kilogram of gas.</param>
    /// <param name="temperature">Temperature, K; 200 to 6000.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="near">A state near the wanted one, or default.</param>
    /// <exception cref="FormulaDomainException">Out of range, or too rich for a gas without soot.</exception>
    public static EquilibriumState AtTemperaturePressure(in Elements elements, double temperature, double pressure, in EquilibriumState near = default)
    {
        FormulaDomainException.Unless(pressure > 0 && double.IsFinite(pressure), "pressure of the gas in equilibrium: must be greater than zero");
        Guard(elements, temperature);
        return EquilibriumComposition.SolveAtPressure(elements, temperature, pressure, near.Solution);
    }

    /// <summary>Equilibrium at temperature and specific volume.</summary>
    /// <param name="elements">Atoms, mol per kilogram of gas.</param>
    /// <param name="temperature">Temperature, K; 200 to 6000.</param>
    /// <param name="specificVolume">Specific volume, m³/kg.</param>
    /// <param name="near">A state near the wanted one, or default.</param>
    /// <exception cref="FormulaDomainException">Out of range, or too rich for a gas without soot.</exception>
    public static EquilibriumState AtTemperatureVolume(in Elements elements, double temperature, double specificVolume, in EquilibriumState near = default)
    {
        FormulaDomainException.Unless(specificVolume > 0 && double.IsFinite(specificVolume), "specific volume of the gas in equilibrium: must be greater than zero");
        Guard(elements, temperature);
        return EquilibriumComposition.SolveAtVolume(elements, temperature, specificVolume, near.Solution);
    }

    /// <summary>Equilibrium at enthalpy and pressure: burning at constant pressure without heat loss.</summary>
    /// <param name="elements">Atoms, mol per kilogram of gas.</param>
    /// <param name="enthalpy">Absolute enthalpy, J/kg.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="near">A state near the wanted one, or default.</param>
    public static EquilibriumState AtEnthalpyPressure(in Elements elements, double enthalpy, double pressure, in EquilibriumState near = default)
    {
        var search = new TemperatureSearch(near);
        var state = AtTemperaturePressure(elements, search.Temperature, pressure, near);
        for (var i = 0; i < MaxIterations; i++)
        {
            var done = search.Step((enthalpy - state.Enthalpy) / (state.HeatCapacity * state.Temperature));
            state = AtTemperaturePressure(elements, search.Temperature, pressure, state);
            if (done)
            {
                return state;
            }
        }

        throw NotFound("enthalpy");
    }

    /// <summary>Equilibrium at entropy and pressure: expansion without loss.</summary>
    /// <param name="elements">Atoms, mol per kilogram of gas.</param>
    /// <param name="entropy">Entropy, J/(kg·K).</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="near">A state near the wanted one, or default.</param>
    public static EquilibriumState AtEntropyPressure(in Elements elements, double entropy, double pressure, in EquilibriumState near = default)
    {
        var search = new TemperatureSearch(near);
        var state = AtTemperaturePressure(elements, search.Temperature, pressure, near);
        for (var i = 0; i < MaxIterations; i++)
        {
            var done = search.Step((entropy - state.Entropy) / state.HeatCapacity);
            state = AtTemperaturePressure(elements, search.Temperature, pressure, state);
            if (done)
            {
                return state;
            }
        }

        throw NotFound("entropy");
    }

    /// <summary>Equilibrium at internal energy and specific volume: burning in a closed vessel without heat loss.</summary>
    /// <param name="elements">Atoms, mol per kilogram of gas.</param>
    /// <param name="energy">Absolute internal energy, J/kg.</param>
    /// <param name="specificVolume">Specific volume, m³/kg.</param>
    /// <param name="near">A state near the wanted one, or default.</param>
    public static EquilibriumState AtEnergyVolume(in Elements elements, double energy, double specificVolume, in EquilibriumState near = default)
    {
        var search = new TemperatureSearch(near);
        var state = AtTemperatureVolume(elements, search.Temperature, specificVolume, near);
        for (var i = 0; i < MaxIterations; i++)
        {
            var done = search.Step((energy - state.Energy) / (state.HeatCapacityAtConstantVolume * state.Temperature));
            state = AtTemperatureVolume(elements, search.Temperature, specificVolume, state);
            if (done)
            {
                return state;
            }
        }

        throw NotFound("internal energy");
    }

    private static void Guard(in Elements elements, double temperature)
    {
        FormulaDomainException.Unless(temperature >= NasaPolynomial.LowestTemperature && temperature <= NasaPolynomial.HighestTemperature, "temperature of the gas in equilibrium: must be from 200 K to 6000 K");
        FormulaDomainException.Unless(elements.Oxygen > elements.Carbon && elements.Carbon >= 0, "mixture: too rich, there is not one oxygen atom for each carbon atom");
    }

    private static FormulaDomainException NotFound(string what) =>
        new($"{what} of the gas in equilibrium: no temperature between 200 K and 6000 K gives it");

    /// <summary>
    /// Newton on a property that rises with temperature, inside a bracket: where a thin gas dissociates, its heat capacity
    /// peaks so sharply that Newton alone leaps to and fro.
    /// </summary>
    private struct TemperatureSearch(in EquilibriumState near)
    {
        private double _low = NasaPolynomial.LowestTemperature;
        private double _high = NasaPolynomial.HighestTemperature;

        internal double Temperature { get; private set; } = near.Temperature > 0 ? near.Temperature : 2200;

        /// <summary>Moves by the change of ln T that Newton asks for; true when it is small enough to be the last.</summary>
        internal bool Step(double change)
        {
            (_low, _high) = change > 0 ? (Temperature, _high) : (_low, Temperature);
            var next = Temperature * Math.Exp(Math.Clamp(change, -1, 1));
            var done = Math.Abs(change) < Tolerance;
            Temperature = done || (next > _low && next < _high) ? next : 0.5 * (_low + _high);
            return done;
        }
    }
}
