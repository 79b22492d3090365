using Gudgeon.Book.Fits;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Fits;

/// <summary>The fits of a build as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class FitCells(bool imperial)
{
    /// <summary>Headings of a fit's row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["size", "class\t", "hole", "shaft", "interference", "wanted", "hot", "slip torque", "hub to go on"];

    /// <summary>Headings of several fits of one kind.</summary>
    public static readonly IReadOnlyList<string> SpreadHeadings = ["measured", "mean", "deviation", "least", "greatest", "outside"];

    /// <summary>The row of a fit.</summary>
    public IReadOnlyList<string> Of(FitRow row) =>
    [
        Cell.Of(row.Size, Dimension.Length, "mm", 4, imperial), row.Classes.Length > 0 ? row.Classes : Cell.Unknown,
        Cell.Of(row.Hole, Dimension.Length, "mm", 5, imperial), Cell.Of(row.Shaft, Dimension.Length, "mm", 5, imperial),
        Small(row.Interference), Wanted(row), Small(row.Hot),
        Cell.Of(row.SlipTorque, Dimension.Torque, "N·m", 3, imperial), Cell.Of(row.HubTemperature, Dimension.Temperature, "°C", 3, imperial),
    ];

    /// <summary>The row of several fits of one kind.</summary>
    public IReadOnlyList<string> Of(FitSpread spread) =>
    [
        spread.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), Small(spread.Mean), Small(spread.Deviation), Small(spread.Least), Small(spread.Greatest),
        spread.Outside is { } share ? share.ToString("P1", System.Globalization.CultureInfo.InvariantCulture) : Cell.Unknown,
    ];

    private string Wanted(FitRow row) => row is { Least: { } low, Greatest: { } high } ? $"{Small(low)} to {Small(high)}" : Cell.Unknown;

    private string Small(double? metres) => Cell.Of(metres is { } m ? Math.Round(m, 7) : null, Dimension.Length, imperial ? "thou" : "µm", 3, imperial);
}
