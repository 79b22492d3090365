using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>Properties of a gas mixture whose composition is held.</summary>
/// <param name="MolarMass">Mean molar mass, kg/mol.</param>
/// <param name="GasConstant">Gas constant, J/(kg·K).</param>
/// <param name="HeatCapacity">Heat capacity at constant pressure, J/(kg·K).</param>
/// <param name="HeatCapacityRatio">Ratio of specific heats.</param>
/// <param name="SoundSpeed">Speed of sound, m/s.</param>
public readonly record struct FrozenProperties(
    [Quantity("molar mass", Dimension.MolarMass, "g/mol", Symbol = "W")] double MolarMass,
    [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R")] double GasConstant,
    [Quantity("heat capacity", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "cp")] double HeatCapacity,
    [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ")] double HeatCapacityRatio,
    [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a")] double SoundSpeed);

/// <summary>Heat capacity and its ratio for air and for fresh charge.</summary>
public static class MixtureProperties
{
    private const string Expression = "W = Σ x_i W_i; cp = Σ x_i C_i / W; R = 8.314462618 / W; γ = cp / (cp - R); a = sqrt(γ R T)";
    private const string Source = "ideal mixture of ideal gases; species data NASA/TP-2002-211556";

    /// <summary>Properties of air.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="air">Which dry air.</param>
    /// <param name="humidityRatio">Mass of water vapour to mass of dry air.</param>
    [Formula("air properties", Expression, Source)]
    public static FrozenProperties OfAir(
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 150, Max = 6000)] double temperature,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry,
        [Quantity("humidity ratio", Dimension.Number, Min = 0, Max = 0.5)] double humidityRatio = 0)
    {
        var gas = Air.Of(air, humidityRatio);
        return Frozen(gas.GasConstant, gas.HeatCapacity(temperature), temperature);
    }

    /// <summary>Properties of fresh charge: air with the fuel evaporated in it.</summary>
    /// <param name="fuel">Fuel.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="equivalenceRatio">Fuel/air ratio over the stoichiometric one.</param>
    /// <param name="air">Which dry air.</param>
    [Formula("fresh charge properties", Expression, Source)]
    public static FrozenProperties OfCharge(
        [Quantity("fuel", Dimension.Number)] FuelChoice fuel,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 150, Max = 6000)] double temperature,
        [Quantity("equivalence ratio", Dimension.Number, Symbol = "φ", Min = 0, Max = 10)] double equivalenceRatio = 1,
        [Quantity("air model", Dimension.Number)] AirModel air = AirModel.StandardDry)
    {
        var charge = new Charge(Fuels.Of(fuel), equivalenceRatio, air);
        return Frozen(charge.GasConstant, charge.HeatCapacity(temperature), temperature);
    }

    private static FrozenProperties Frozen(double gasConstant, double cp, double temperature)
    {
        var ratio = cp / (cp - gasConstant);
        return new(PhysicalConstants.MolarGasConstant / gasConstant, gasConstant, cp, ratio, Math.Sqrt(ratio * gasConstant * temperature));
    }
}
