using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Values;

/// <summary>A number within words, printed in the reader's system of units: "yield 1100 MPa", "goes 20 mm into the part".</summary>
/// <param name="Before">Words before it, with the space between.</param>
/// <param name="Si">Value, SI.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Display unit, metric.</param>
/// <param name="After">Words after it.</param>
public sealed record NumberInWords(string Before, double Si, Dimension Dimension, string Unit, string After = "")
{
    /// <summary>Significant digits that a reader wants.</summary>
    public int Digits { get; init; } = 5;

    /// <summary>The words.</summary>
    public string Print(bool imperial) => Before + Figures.Print(Si, Dimension, Unit, Digits, imperial) + After;
}
