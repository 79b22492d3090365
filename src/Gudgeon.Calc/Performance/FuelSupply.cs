using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Performance;

/// <summary>What the fuel system must deliver.</summary>
public static class FuelSupply
{
    /// <summary>Fuel flow for a power, kg/s.</summary>
    /// <param name="power">Brake power, W.</param>
    /// <param name="consumption">Brake specific fuel consumption, kg/J.</param>
    [Formula("fuel flow for power", "m = P bsfc", "definition of the specific fuel consumption", Provenance = Provenance.Definition)]
    [return: Quantity("fuel flow", Dimension.MassFlow, "g/s", Symbol = "m")]
    public static double FlowForPower(
        [Quantity("brake power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("brake specific fuel consumption", Dimension.SpecificFuelConsumption, "g/kWh", Symbol = "bsfc", Above = 0)] double consumption) => power * consumption;

    /// <summary>Static flow each injector needs, kg/s.</summary>
    /// <param name="fuelFlow">Fuel flow of the engine, kg/s.</param>
    /// <param name="injectors">Number of injectors that share it.</param>
    /// <param name="dutyCycle">Greatest share of the time they are open.</param>
    [Formula("injector flow needed", "q = m / (n d)", "continuity; 0.80 to 0.85 is the customary greatest duty", Provenance = Provenance.CommonPractice)]
    [return: Quantity("static flow of one injector", Dimension.MassFlow, "g/s", Symbol = "q")]
    public static double InjectorFlow(
        [Quantity("fuel flow of the engine", Dimension.MassFlow, "g/s", Symbol = "m", Above = 0)] double fuelFlow,
        [Quantity("injectors", Dimension.Number, Symbol = "n", Min = 1, Max = 64)] int injectors,
        [Quantity("duty cycle", Dimension.Number, Symbol = "d", Above = 0, Max = 1)] double dutyCycle = 0.85) => fuelFlow / (injectors * dutyCycle);

    /// <summary>Flow of an injector at another pressure drop, kg/s.</summary>
    /// <param name="ratedFlow">Static flow at the rated drop, kg/s.</param>
    /// <param name="ratedDrop">Pressure drop at which it is rated, Pa.</param>
    /// <param name="drop">Pressure drop as used, Pa: rail above manifold.</param>
    [Formula("injector flow at another pressure", "q = q0 sqrt(Δp / Δp0)", "incompressible orifice", Provenance = Provenance.Definition)]
    [return: Quantity("static flow", Dimension.MassFlow, "g/s", Symbol = "q")]
    public static double InjectorFlowAtDrop(
        [Quantity("rated flow", Dimension.MassFlow, "g/s", Symbol = "q0", Above = 0)] double ratedFlow,
        [Quantity("rated pressure drop", Dimension.Pressure, "bar", Symbol = "Δp0", Above = 0)] double ratedDrop,
        [Quantity("pressure drop", Dimension.Pressure, "bar", Symbol = "Δp", Min = 0)] double drop) => ratedFlow * Math.Sqrt(drop / ratedDrop);
}
