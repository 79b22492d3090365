using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Ranges of basic size of ISO 286-1 up to 500 mm, each over … up to and including.</summary>
internal static class IsoRanges
{
    private static readonly double[] Ends = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];

    private static readonly double[] FineEnds =
        [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500];

    /// <summary>The value of a table for a size, m: one for each range, or for each of the fine ranges.</summary>
    internal static double Of(double[] table, double size)
    {
        var ends = table.Length == Ends.Length ? Ends : FineEnds;
        var range = Array.FindIndex(ends, end => size * 1e3 <= end + 1e-9);
        FormulaDomainException.Unless(range >= 0, "basic size: greater than 500 mm");
        return table[range];
    }
}
