using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Boost;

/// <summary>Air and boost that a power goal asks for.</summary>
/// <param name="AirFlow">kg/s.</param>
/// <param name="ManifoldPressure">Absolute manifold pressure, Pa.</param>
public readonly record struct BoostGoal(
    [Quantity("air flow", Dimension.MassFlow, "kg/s", Symbol = "m")] double AirFlow,
    [Quantity("manifold pressure, absolute", Dimension.Pressure, "kPa", Symbol = "p")] double ManifoldPressure);

/// <summary>How much air the engine swallows.</summary>
public static class AirDemand
{
    /// <summary>Air flow of the engine, kg/s.</summary>
    /// <param name="displacement">Engine displacement, m³.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="density">Density in the manifold, kg/m³.</param>
    /// <param name="volumetricEfficiency">On that density.</param>
    /// <param name="turns">Crank turns per cycle.</param>
    [Formula("engine air flow", "m = ηv ρ Vd ω / (2 π n)", "definition of the volumetric efficiency; Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 2.27", Provenance = Provenance.Definition)]
    [return: Quantity("air flow", Dimension.MassFlow, "kg/s", Symbol = "m")]
    public static double Flow(
        [Quantity("displacement", Dimension.Volume, "cm³", Symbol = "Vd", Above = 0)] double displacement,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double speed,
        [Quantity("manifold density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("volumetric efficiency", Dimension.Number, Symbol = "ηv", Above = 0, Max = 2)] double volumetricEfficiency = 1,
        [Quantity("crank turns per cycle", Dimension.Number, Symbol = "n", Min = 1, Max = 2)] int turns = 2) =>
        volumetricEfficiency * density * displacement * speed / (2 * Math.PI * turns);

    /// <summary>Air flow of the engine from manifold pressure and temperature, kg/s.</summary>
    /// <param name="displacement">Engine displacement, m³.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="pressure">Absolute manifold pressure, Pa.</param>
    /// <param name="temperature">Manifold temperature, K.</param>
    /// <param name="volumetricEfficiency">On the manifold density.</param>
    /// <param name="turns">Crank turns per cycle.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("boosted engine air flow", "m = ηv p / (R T) Vd ω / (2 π n)", "definition of the volumetric efficiency, ideal gas", Provenance = Provenance.Definition)]
    [return: Quantity("air flow", Dimension.MassFlow, "kg/s", Symbol = "m")]
    public static double BoostedFlow(
        [Quantity("displacement", Dimension.Volume, "cm³", Symbol = "Vd", Above = 0)] double displacement,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Min = 0)] double speed,
        [Quantity("manifold pressure, absolute", Dimension.Pressure, "kPa", Symbol = "p", Above = 0)] double pressure,
        [Quantity("manifold temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("volumetric efficiency", Dimension.Number, Symbol = "ηv", Above = 0, Max = 2)] double volumetricEfficiency = 1,
        [Quantity("crank turns per cycle", Dimension.Number, Symbol = "n", Min = 1, Max = 2)] int turns = 2,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = PhysicalConstants.DryAirGasConstant) =>
        Flow(displacement, speed, Compressor.ChargeDensity(pressure, temperature, gasConstant), volumetricEfficiency, turns);

    /// <summary>Air flow and manifold pressure that a power asks for.</summary>
    /// <param name="power">Brake power, W; add what the blower takes.</param>
    /// <param name="consumption">Brake specific fuel consumption, kg/J.</param>
    /// <param name="airFuelRatio">Air/fuel ratio by mass.</param>
    /// <param name="displacement">Engine displacement, m³.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="temperature">Manifold temperature, K.</param>
    /// <param name="volumetricEfficiency">On the manifold density.</param>
    /// <param name="turns">Crank turns per cycle.</param>
    [Formula("manifold pressure for a power", "m = P bsfc AFR; p = 2 π n m 287.05287 T / (ηv Vd ω)", "definitions of fuel consumption and volumetric efficiency, ideal gas", Provenance = Provenance.Definition)]
    public static BoostGoal ForPower(
        [Quantity("brake power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("brake specific fuel consumption", Dimension.SpecificFuelConsumption, "g/kWh", Symbol = "bsfc", Above = 0)] double consumption,
        [Quantity("air/fuel ratio by mass", Dimension.Number, Symbol = "AFR", Above = 0)] double airFuelRatio,
        [Quantity("displacement", Dimension.Volume, "cm³", Symbol = "Vd", Above = 0)] double displacement,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Above = 0)] double speed,
        [Quantity("manifold temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("volumetric efficiency", Dimension.Number, Symbol = "ηv", Above = 0, Max = 2)] double volumetricEfficiency = 1,
        [Quantity("crank turns per cycle", Dimension.Number, Symbol = "n", Min = 1, Max = 2)] int turns = 2)
    {
        var flow = power * consumption * airFuelRatio;
        return new(flow, flow / Flow(displacement, speed, 1, volumetricEfficiency, turns) * PhysicalConstants.DryAirGasConstant * temperature);
    }
}
