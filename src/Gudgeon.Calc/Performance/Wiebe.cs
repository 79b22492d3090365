using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Performance;

/// <summary>Burned mass fraction and its rate.</summary>
/// <param name="Fraction">Burned mass fraction.</param>
/// <param name="Rate">Its rise per burn duration.</param>
public readonly record struct BurnProgress(
    [Quantity("burned mass fraction", Dimension.Number, Symbol = "x")] double Fraction,
    [Quantity("rate per burn duration", Dimension.Number, Symbol = "dx/dy")] double Rate);

/// <summary>Wiebe's burn curve.</summary>
public static class Wiebe
{
    private const string Source = "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 9.31 (a = 5, m = 2)";

    /// <summary>Burned mass fraction and rate at a point of the burn.</summary>
    /// <param name="progress">Crank angle since the start of burning over the burn duration; below 0 nothing is burned.</param>
    /// <param name="efficiency">Efficiency parameter: 5 leaves 0.7 % unburned at the end.</param>
    /// <param name="form">Form factor.</param>
    [Formula("Wiebe burn curve", "x = 1 - exp(-a y^(m + 1)); dx/dy = a (m + 1) y^m exp(-a y^(m + 1))", Source, Provenance = Provenance.FromMemory)]
    public static BurnProgress Burned(
        [Quantity("share of the burn duration", Dimension.Number, Symbol = "y", Min = -1e3, Max = 1e3)] double progress,
        [Quantity("efficiency parameter", Dimension.Number, Symbol = "a", Above = 0, Max = 100)] double efficiency = 5,
        [Quantity("form factor", Dimension.Number, Symbol = "m", Min = 0, Max = 100)] double form = 2)
    {
        if (progress <= 0)
        {
            return new(0, progress == 0 && form == 0 ? efficiency : 0);
        }

        var power = Math.Pow(progress, form);
        var left = Math.Exp(-efficiency * power * progress);
        return new(1 - left, efficiency * (form + 1) * power * left);
    }

    /// <summary>Where in the burn a given fraction is burned: the inverse of the burn curve.</summary>
    /// <param name="fraction">Burned mass fraction, 0 to below 1.</param>
    /// <param name="efficiency">Efficiency parameter.</param>
    /// <param name="form">Form factor.</param>
    [Formula("Wiebe burn point", "y = (-ln(1 - x) / a)^(1 / (m + 1))", Source, Provenance = Provenance.FromMemory)]
    [return: Quantity("share of the burn duration", Dimension.Number, Symbol = "y")]
    public static double Progress(
        [Quantity("burned mass fraction", Dimension.Number, Symbol = "x", Min = 0, Below = 1)] double fraction,
        [Quantity("efficiency parameter", Dimension.Number, Symbol = "a", Above = 0, Max = 100)] double efficiency = 5,
        [Quantity("form factor", Dimension.Number, Symbol = "m", Min = 0, Max = 100)] double form = 2) =>
        Math.Pow(-Math.Log(1 - fraction) / efficiency, 1 / (form + 1));
}
