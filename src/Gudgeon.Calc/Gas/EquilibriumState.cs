using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>A gas in chemical equilibrium: composition and all properties, per kilogram, SI.</summary>
public readonly struct EquilibriumState
{
    /// <summary>Amounts of the product species, mol/kg.</summary>
    public ProductAmounts Moles { get; init; }

    /// <summary>Temperature, K.</summary>
    public double Temperature { get; init; }

    /// <summary>Pressure, Pa.</summary>
    public double Pressure { get; init; }

    /// <summary>Amount of gas, mol/kg.</summary>
    public double TotalMoles { get; init; }

    /// <summary>Absolute enthalpy, J/kg.</summary>
    public double Enthalpy { get; init; }

    /// <summary>Entropy, J/(kg·K).</summary>
    public double Entropy { get; init; }

    /// <summary>Heat capacity at constant pressure with the composition held, J/(kg·K).</summary>
    public double FrozenHeatCapacity { get; init; }

    /// <summary>Heat capacity at constant pressure with the composition following, J/(kg·K).</summary>
    public double HeatCapacity { get; init; }

    /// <summary>(∂ ln v / ∂ ln T) at constant pressure: 1 when frozen.</summary>
    public double VolumeByTemperature { get; init; }

    /// <summary>(∂ ln v / ∂ ln p) at constant temperature: -1 when frozen.</summary>
    public double VolumeByPressure { get; init; }

    /// <summary>Where the solver ended: start of the next state nearby.</summary>
    internal EquilibriumGuess Solution { get; init; }

    /// <summary>Gas constant, J/(kg·K).</summary>
    public double GasConstant => TotalMoles * MolarGasConstant;

    /// <summary>Molar mass, kg/mol.</summary>
    public double MolarMass => 1 / TotalMoles;

    /// <summary>Specific volume, m³/kg.</summary>
    public double SpecificVolume => GasConstant * Temperature / Pressure;

    /// <summary>Density, kg/m³.</summary>
    public double Density => 1 / SpecificVolume;

    /// <summary>Absolute internal energy, J/kg.</summary>
    public double Energy => Enthalpy - (GasConstant * Temperature);

    /// <summary>Heat capacity at constant volume with the composition following, J/(kg·K).</summary>
    public double HeatCapacityAtConstantVolume =>
        HeatCapacity + (GasConstant * VolumeByTemperature * VolumeByTemperature / VolumeByPressure);

    /// <summary>Isentropic exponent (∂ ln p / ∂ ln ρ) at constant entropy with the composition following.</summary>
    public double IsentropicExponent => -HeatCapacity / (HeatCapacityAtConstantVolume * VolumeByPressure);

    /// <summary>Ratio of specific heats with the composition held.</summary>
    public double FrozenHeatCapacityRatio => FrozenHeatCapacity / (FrozenHeatCapacity - GasConstant);

    /// <summary>Speed of sound with the composition following, m/s.</summary>
    public double SoundSpeed => Math.Sqrt(IsentropicExponent * GasConstant * Temperature);

    /// <summary>Mole fraction of a product species.</summary>
    public double MoleFraction(Species species) => Moles[(int)species] / TotalMoles;

    /// <summary>The same composition, held from here on.</summary>
    public GasMixture Frozen() => new(Moles);
}

/// <summary>The solver's two unknowns.</summary>
/// <param name="LogOxygen">ln of the square root of the oxygen partial pressure, in bar.</param>
/// <param name="LogMoles">ln of the amount of gas, mol/kg.</param>
internal readonly record struct EquilibriumGuess(double LogOxygen, double LogMoles)
{
    /// <summary>Whether there is a guess at all.</summary>
    internal bool IsGiven => LogMoles != 0;
}
