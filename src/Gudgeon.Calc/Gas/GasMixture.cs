using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>A mixture of the twelve product species whose composition is held (frozen): air, moist air, cold exhaust. All properties per kilogram.</summary>
public readonly struct GasMixture
{
    private readonly ProductAmounts _moles;

    /// <param name="moles">Amounts, mol per kilogram of mixture.</param>
    public GasMixture(ProductAmounts moles)
    {
        _moles = moles;
        for (var i = 0; i < ProductAmounts.Count; i++)
        {
            TotalMoles += moles[i];
        }
    }

    /// <summary>Amount of gas, mol/kg.</summary>
    public double TotalMoles { get; }

    /// <summary>Molar mass, kg/mol.</summary>
    public double MolarMass => 1 / TotalMoles;

    /// <summary>Gas constant, J/(kg·K).</summary>
    public double GasConstant => TotalMoles * MolarGasConstant;

    /// <summary>Atoms, mol/kg.</summary>
    public Elements Elements
    {
        get
        {
            var sum = default(Elements);
            for (var i = 0; i < ProductAmounts.Count; i++)
            {
                sum += _moles[i] * SpeciesTable.Of((Species)i).Atoms;
            }

            return sum;
        }
    }

    /// <summary>A mixture from amounts in any proportion, scaled to one kilogram.</summary>
    public static GasMixture FromProportions(ProductAmounts proportions)
    {
        var mass = new GasMixture(proportions).Elements.Mass;
        for (var i = 0; i < ProductAmounts.Count; i++)
        {
            proportions[i] /= mass;
        }

        return new GasMixture(proportions);
    }

    /// <summary>Mole fraction of a product species.</summary>
    public double MoleFraction(Species species) => _moles[(int)species] / TotalMoles;

    /// <summary>Heat capacity at constant pressure, J/(kg·K), at <paramref name="temperature"/>, K.</summary>
    public double HeatCapacity(double temperature)
    {
        var sum = 0.0;
        for (var i = 0; i < ProductAmounts.Count; i++)
        {
            sum += _moles[i] == 0 ? 0 : _moles[i] * NasaPolynomial.HeatCapacity((Species)i, temperature);
        }

        return sum;
    }

    /// <summary>Absolute enthalpy, J/kg, at <paramref name="temperature"/>, K.</summary>
    public double Enthalpy(double temperature)
    {
        var sum = 0.0;
        for (var i = 0; i < ProductAmounts.Count; i++)
        {
            sum += _moles[i] == 0 ? 0 : _moles[i] * NasaPolynomial.Enthalpy((Species)i, temperature);
        }

        return sum;
    }

    /// <summary>Absolute internal energy, J/kg, at <paramref name="temperature"/>, K.</summary>
    public double Energy(double temperature) => Enthalpy(temperature) - (GasConstant * temperature);

    /// <summary>Entropy with that of mixing, J/(kg·K), at <paramref name="temperature"/>, K, and <paramref name="pressure"/>, Pa.</summary>
    public double Entropy(double temperature, double pressure)
    {
        var sum = 0.0;
        for (var i = 0; i < ProductAmounts.Count; i++)
        {
            if (_moles[i] > 0)
            {
                var partial = _moles[i] / TotalMoles * pressure / StandardPressure;
                sum += _moles[i] * (NasaPolynomial.Entropy((Species)i, temperature) - (MolarGasConstant * Math.Log(partial)));
            }
        }

        return sum;
    }

    /// <summary>Ratio of specific heats at <paramref name="temperature"/>, K.</summary>
    public double HeatCapacityRatio(double temperature)
    {
        var cp = HeatCapacity(temperature);
        return cp / (cp - GasConstant);
    }
}
