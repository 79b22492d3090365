using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Boost;

/// <summary>Charge behind the cooler.</summary>
/// <param name="OutletTemperature">K.</param>
/// <param name="DensityGain">Density behind over density before.</param>
public readonly record struct CooledCharge(
    [Quantity("outlet temperature", Dimension.Temperature, "°C", Symbol = "T3")] double OutletTemperature,
    [Quantity("density gain", Dimension.Number)] double DensityGain);

/// <summary>Charge coolers (intercoolers).</summary>
public static class ChargeCooler
{
    /// <summary>Outlet temperature and gain of density.</summary>
    /// <param name="inletTemperature">Charge before the cooler, K.</param>
    /// <param name="coolantTemperature">Air or water that cools, K.</param>
    /// <param name="effectiveness">0 to 1.</param>
    /// <param name="inletPressure">Pressure before the cooler, Pa.</param>
    /// <param name="pressureLoss">Pressure lost in the cooler, Pa.</param>
    [Formula("charge cooler", "T3 = T2 - ε (T2 - Tc); gain = (p2 - Δp) / p2 T2 / T3", "definition of the effectiveness", Provenance = Provenance.Definition)]
    public static CooledCharge Outlet(
        [Quantity("temperature before", Dimension.Temperature, "°C", Symbol = "T2", Above = 0)] double inletTemperature,
        [Quantity("coolant temperature", Dimension.Temperature, "°C", Symbol = "Tc", Above = 0)] double coolantTemperature,
        [Quantity("effectiveness", Dimension.Number, Symbol = "ε", Min = 0, Max = 1)] double effectiveness,
        [Quantity("pressure before", Dimension.Pressure, "kPa", Symbol = "p2", Above = 0)] double inletPressure,
        [Quantity("pressure loss", Dimension.Pressure, "kPa", Symbol = "Δp", Min = 0)] double pressureLoss = 0)
    {
        FormulaDomainException.Unless(pressureLoss < inletPressure, "pressure loss: must be below the pressure before the cooler");
        var outlet = inletTemperature - (effectiveness * (inletTemperature - coolantTemperature));
        return new(outlet, (inletPressure - pressureLoss) / inletPressure * inletTemperature / outlet);
    }

    /// <summary>Effectiveness from three measured temperatures.</summary>
    /// <param name="inletTemperature">Charge before the cooler, K.</param>
    /// <param name="outletTemperature">Charge behind the cooler, K.</param>
    /// <param name="coolantTemperature">Air or water that cools, K.</param>
    [Formula("charge cooler effectiveness", "ε = (T2 - T3) / (T2 - Tc)", "definition of the effectiveness", Provenance = Provenance.Definition)]
    [return: Quantity("effectiveness", Dimension.Number, Symbol = "ε")]
    public static double Effectiveness(
        [Quantity("temperature before", Dimension.Temperature, "°C", Symbol = "T2", Above = 0)] double inletTemperature,
        [Quantity("temperature behind", Dimension.Temperature, "°C", Symbol = "T3", Above = 0)] double outletTemperature,
        [Quantity("coolant temperature", Dimension.Temperature, "°C", Symbol = "Tc", Above = 0)] double coolantTemperature)
    {
        FormulaDomainException.Unless(inletTemperature > coolantTemperature, "coolant temperature: must be below the temperature before the cooler");
        return (inletTemperature - outletTemperature) / (inletTemperature - coolantTemperature);
    }
}
