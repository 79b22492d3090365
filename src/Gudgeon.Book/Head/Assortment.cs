using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Head;

/// <summary>One thickness on the bench.</summary>
/// <param name="Thickness">Thickness, m.</param>
/// <param name="Count">How many there are; null when there are plenty.</param>
public sealed record StockItem(double Thickness, int? Count);

/// <summary>Thicknesses that lie on the bench: shims, spacers.</summary>
internal static class Assortment
{
    /// <summary>Thicknesses compare to a tenth of a micrometre.</summary>
    public const double Grain = 1e-7;

    /// <summary>A length as a whole number of grains.</summary>
    public static long Grains(double length) => (long)Math.Round(length / Grain);

    /// <summary>What a table of thickness and count holds, thinnest first; nothing when the book has none.</summary>
    /// <exception cref="BadInputException">A count that is not a whole number.</exception>
    public static IReadOnlyList<StockItem> Of(View view, Field field)
    {
        if (view.TableIf(field) is not { } table)
        {
            return [];
        }

        var counts = table["count"];
        return [.. table["thickness"].Select((t, i) => new StockItem(t, counts.Length == 0 ? null : Whole(field, counts[i]))).OrderBy(s => s.Thickness)];
    }

    private static int Whole(Field field, double count) => count is >= 0 and < 1e6 && count == Math.Floor(count)
        ? (int)count
        : throw new BadInputException($"{field.Path}: given a count of {Figures.Number(count)}, wanted a whole number");
}
