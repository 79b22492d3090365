using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Bottom;

/// <summary>How much warmer than when they were measured the parts of a bearing run, K, and how its housing grows.</summary>
/// <param name="Housing">Rise of the housing.</param>
/// <param name="Shell">Rise of the shells: between housing and journal.</param>
/// <param name="Journal">Rise of the journal.</param>
/// <param name="Expansion">Thermal expansion of the housing, 1/K.</param>
internal readonly record struct WarmBearing(double Housing, double Shell, double Journal, double Expansion)
{
    private const double Measured = ThermalLength.Reference;

    /// <summary>By how much a journal runs hotter than the oil that it is fed, K: common practice, no source.</summary>
    private const double JournalAboveOil = 20;

    /// <summary>Of a bearing of the book.</summary>
    public static WarmBearing Of(View view, string index)
    {
        var oil = view.Amount(Oil.Temperature);
        var journal = view.AmountIf(Bearing.JournalTemperature, index) ?? oil + JournalAboveOil;

        // A rod has nothing but its own film to warm and to cool it; a case is as warm as the oil that runs through it.
        var housing = view.AmountIf(Bearing.HousingTemperature, index) ?? (BearingFit.IsBigEnd(index) ? journal : oil);
        var expansion = BearingFit.HousingExpansion(view, index);
        return new WarmBearing(housing - Measured, ((housing + journal) / 2) - Measured, journal - Measured, expansion);
    }

    /// <summary>Diametral clearance, running, m.</summary>
    public double Clearance(View view, string index) => view.Work(
        ShellClearance.Hot,
        BearingFit.Housing(view, index),
        2 * view.Amount(Bearing.ShellThickness, index),
        BearingFit.Journal(view, index),
        Expansion,
        Housing,
        Shell,
        Journal,
        12e-6);

    /// <summary>Excess of the shells over the bore that is left running, m.</summary>
    public double Excess(View view, string index) => view.Work(ShellCrush.Hot, view.Amount(Bearing.Excess, index), BearingFit.Housing(view, index), Expansion, Housing, Shell, 12e-6);
}
