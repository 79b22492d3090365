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
    private const int MaxIterations = 60;

    /// <summary>Equilibrium at temperature and pressure.</summary>
    /// <param name="elements">Atoms, mol per kilogram of gas.</param>
    /// <param name="temperature">Temperature, K; 200 to 6000.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="near">A state near the wanted one, or default.</param>
    /// <exception cref="FormulaDomainException">Out of range, or too rich for a gas without soot.</exception>
    public static EquilibriumState AtTemperaturePressure(in Elements elements, double temperature, double pressure, in EquilibriumState near = default)
    {
        FormulaDomainException.Unless(temperature >= NasaPolynomial.LowestTemperature && temperature <= NasaPolynomial.HighestTemperature, "temperature of the gas in equilibrium: must be from 200 K to 6000 K");
        FormulaDomainException.Unless(pressure > 0 && double.IsFinite(pressure), "pressure of the gas in equilibrium: must be greater than zero");
        FormulaDomainException.Unless(elements.Oxygen > elements.Carbon && elements.Carbon >= 0, "mixture: too rich, there is not one oxygen atom for each carbon atom");
        return EquilibriumComposition.Solve(elements, temperature, pressure, near.Solution);
    }

    /// <summary>Equilibrium at enthalpy and pressure: burning at constant pressure without heat loss.</summary>
    /// <param name="elements">Atoms, mol per kilogram of gas.</param>
    /// <param name="enthalpy">Absolute enthalpy, J/kg.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="near">A state near the wanted one, or default.</param>
    public static EquilibriumState AtEnthalpyPressure(in Elements elements, double enthalpy, double pressure, in EquilibriumState near = default)
    {
        var state = AtTemperaturePressure(elements, StartTemperature(near), pressure, near);
        for (var i = 0; i < MaxIterations; i++)
        {
            var step = (enthalpy - state.Enthalpy) / (state.HeatCapacity * state.Temperature);
            state = AtTemperaturePressure(elements, Stepped(state.Temperature, step), pressure, state);
            if (Math.Abs(step) < 1e-10)
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
        var state = AtTemperaturePressure(elements, StartTemperature(near), pressure, near);
        for (var i = 0; i < MaxIterations; i++)
        {
            var step = (entropy - state.Entropy) / state.HeatCapacity;
            state = AtTemperaturePressure(elements, Stepped(state.Temperature, step), pressure, state);
            if (Math.Abs(step) < 1e-10)
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
        FormulaDomainException.Unless(specificVolume > 0, "specific volume: must be greater than zero");
        var start = StartTemperature(near);
        var pressure = PhysicalConstants.MolarGasConstant * (near.TotalMoles > 0 ? near.TotalMoles : 36) * start / specificVolume;
        var state = AtTemperaturePressure(elements, start, pressure, near);
        for (var i = 0; i < MaxIterations; i++)
        {
            // Newton in ln T and ln p on u(T, p) and ln v(T, p).
            var work = state.Pressure * state.SpecificVolume;
            var energyByTemperature = (state.HeatCapacity * state.Temperature) - (work * state.VolumeByTemperature);
            var energyByPressure = -work * (state.VolumeByTemperature + state.VolumeByPressure);
            var energyError = energy - state.Energy;
            var volumeError = Math.Log(specificVolume / state.SpecificVolume);
            var determinant = (energyByTemperature * state.VolumeByPressure) - (energyByPressure * state.VolumeByTemperature);
            var stepT = ((energyError * state.VolumeByPressure) - (energyByPressure * volumeError)) / determinant;
            var stepP = ((energyByTemperature * volumeError) - (state.VolumeByTemperature * energyError)) / determinant;
            state = AtTemperaturePressure(elements, Stepped(state.Temperature, stepT), state.Pressure * Math.Exp(Math.Clamp(stepP, -1, 1)), state);
            if (Math.Abs(stepT) + Math.Abs(stepP) < 1e-10)
            {
                return state;
            }
        }

        throw NotFound("internal energy and volume");
    }

    private static double StartTemperature(in EquilibriumState near) => near.Temperature > 0 ? near.Temperature : 2200;

    private static double Stepped(double temperature, double logStep) => Math.Clamp(
        temperature * Math.Exp(Math.Clamp(logStep, -0.4, 0.4)),
        NasaPolynomial.LowestTemperature,
        NasaPolynomial.HighestTemperature);

    private static FormulaDomainException NotFound(string what) =>
        new($"{what} of the gas in equilibrium: no temperature between 200 K and 6000 K gives it");
}
