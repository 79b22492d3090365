using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;

namespace Gudgeon.Book.Bottom;

/// <summary>What makes the clearance of a shell bearing, cold. A reading by itself wins over the mean of a table.</summary>
internal static class BearingFit
{
    /// <summary>Keys of the bearings of the crank.</summary>
    public static IEnumerable<string> Keys(View view) => Checks.Instances.Named(view, Bearing.Journal.Subject);

    /// <summary>Whether it is a big end; else a main.</summary>
    public static bool IsBigEnd(string index) => index.StartsWith("bigEnd", StringComparison.Ordinal);

    /// <summary>Journal diameter, m; NaN and noted as missing when it is not known.</summary>
    public static double Journal(View view, string index) => Single(view, Bearing.Journal, Bearing.JournalTable, index);

    /// <summary>Housing bore, m; NaN and noted as missing when it is not known.</summary>
    public static double Housing(View view, string index) => Single(view, Bearing.Housing, Bearing.HousingTable, index);

    /// <summary>Thermal expansion of the housing, 1/K: of a light-alloy case for mains and of a steel rod for big ends where nothing is said.</summary>
    public static double HousingExpansion(View view, string index) => view.AmountOr(Bearing.HousingExpansion, IsBigEnd(index) ? 12e-6 : 21e-6, index);

    /// <summary>Diametral clearance, cold, m.</summary>
    public static double Clearance(View view, string index) => view.Work(ShellClearance.Clearance, Housing(view, index), view.Amount(Bearing.ShellThickness, index), Journal(view, index), 0.0);

    /// <summary>
    /// Least and greatest clearance at any station, m: the tightest reading of one against the tightest of the other, wherever
    /// along the bearing they stand; null when nothing but single readings is known.
    /// </summary>
    public static (double Least, double Greatest)? Stations(View view, string index)
    {
        var (journal, housing) = (Roundness.Of(view, Bearing.JournalTable, index), Roundness.Of(view, Bearing.HousingTable, index));
        if (journal is null && housing is null)
        {
            return null;
        }

        var shells = 2 * view.Amount(Bearing.ShellThickness, index);
        return (
            (housing?.Least ?? Housing(view, index)) - shells - (journal?.Greatest ?? Journal(view, index)),
            (housing?.Greatest ?? Housing(view, index)) - shells - (journal?.Least ?? Journal(view, index)));
    }

    private static double Single(View view, Field single, Field table, string index) =>
        !view.Knows(single, index) && Roundness.Of(view, table, index) is { } readings ? readings.Mean : view.Amount(single, index);
}
