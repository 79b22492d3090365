using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Cooling;

/// <summary>How the two flows of a cooler pass each other.</summary>
public enum CoolerFlow
{
    /// <summary>Against each other.</summary>
    [TradeName("counter-flow")]
    CounterFlow,

    /// <summary>Across each other, neither mixed.</summary>
    [TradeName("cross-flow")]
    CrossFlow,
}

/// <summary>Effectiveness of coolers from their size.</summary>
public static class Exchanger
{
    private const string Source = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed., table 11.3";

    /// <summary>Effectiveness of a cooler whose flows pass against each other.</summary>
    /// <param name="units">Number of transfer units: coefficient times area over the lesser capacity flow.</param>
    /// <param name="ratio">Lesser over greater capacity flow.</param>
    [Formula("counter-flow cooler effectiveness", "ε = (1 - exp(-N (1 - C))) / (1 - C exp(-N (1 - C))); N / (1 + N) where the capacity ratio is 1", Source, Provenance = Provenance.FromMemory)]
    [return: Quantity("effectiveness", Dimension.Number, Symbol = "ε")]
    public static double CounterFlow(
        [Quantity("transfer units", Dimension.Number, Symbol = "N", Min = 0)] double units,
        [Quantity("capacity ratio", Dimension.Number, Symbol = "C", Min = 0, Max = 1)] double ratio)
    {
        var left = Math.Exp(-units * (1 - ratio));
        return ratio > 1 - 1e-9 ? units / (1 + units) : (1 - left) / (1 - (ratio * left));
    }

    /// <summary>Effectiveness of a cooler whose flows cross each other, neither mixed.</summary>
    /// <param name="units">Number of transfer units: coefficient times area over the lesser capacity flow.</param>
    /// <param name="ratio">Lesser over greater capacity flow.</param>
    [Formula("cross-flow cooler effectiveness", "ε = 1 - exp((exp(-C N^0.78) - 1) N^0.22 / C); 1 - exp(-N) where the capacity ratio is 0", Source, Provenance = Provenance.FromMemory, Validity = "neither flow mixed")]
    [return: Quantity("effectiveness", Dimension.Number, Symbol = "ε")]
    public static double CrossFlow(
        [Quantity("transfer units", Dimension.Number, Symbol = "N", Min = 0)] double units,
        [Quantity("capacity ratio", Dimension.Number, Symbol = "C", Min = 0, Max = 1)] double ratio) => ratio < 1e-9
            ? 1 - Math.Exp(-units)
            : 1 - Math.Exp((Math.Exp(-ratio * Math.Pow(units, 0.78)) - 1) * Math.Pow(units, 0.22) / ratio);

    /// <summary>Effectiveness of a cooler of either kind.</summary>
    /// <param name="units">Number of transfer units: coefficient times area over the lesser capacity flow.</param>
    /// <param name="ratio">Lesser over greater capacity flow.</param>
    /// <param name="flow">How the flows pass each other.</param>
    [Formula("cooler effectiveness from transfer units", "ε by N and C, of flows opposed or crossing as asked for", Source, Provenance = Provenance.FromMemory)]
    [return: Quantity("effectiveness", Dimension.Number, Symbol = "ε")]
    public static double Effectiveness(
        [Quantity("transfer units", Dimension.Number, Symbol = "N", Min = 0)] double units,
        [Quantity("capacity ratio", Dimension.Number, Symbol = "C", Min = 0, Max = 1)] double ratio,
        [Quantity("passing", Dimension.Number)] CoolerFlow flow = CoolerFlow.CrossFlow) =>
        flow == CoolerFlow.CounterFlow ? CounterFlow(units, ratio) : CrossFlow(units, ratio);
}
