using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Cli.Sheets;

/// <summary>One number of a sheet as it is written, on paper and on the page.</summary>
internal static class Cell
{
    /// <summary>What stands for a number that is not known.</summary>
    public const string Unknown = "–";

    /// <summary>The number with its unit.</summary>
    /// <param name="si">SI; null or NaN when it is not known.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="unit">Display unit, metric.</param>
    /// <param name="digits">Significant digits.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public static string Of(double? si, Dimension dimension, string unit, int digits, bool imperial) =>
        si is { } value && !double.IsNaN(value) ? Figures.Print(value, dimension, unit, digits, imperial) : Unknown;
}
