using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Values;

/// <summary>One number of a sheet with what it is.</summary>
/// <param name="Name">"lobe separation".</param>
/// <param name="Value">SI; null or NaN when it is not known.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Display unit, metric.</param>
public sealed record Fact(string Name, double? Value, Dimension Dimension, string Unit)
{
    /// <summary>A remark beside it: where it stands, what it rests on.</summary>
    public string Remark { get; init; } = "";

    /// <summary>What it is held to, printed beside it in the same system of units; null when it is held to nothing.</summary>
    public NumberInWords? Limit { get; init; }

    /// <summary>Significant digits that a reader wants.</summary>
    public int Digits { get; init; } = 4;

    /// <summary>Whether it is known.</summary>
    public bool Known => Value is { } si && !double.IsNaN(si);

    /// <summary>What stands beside it: its limit where there is one, and its remark.</summary>
    public string Beside(bool imperial) => string.Join("; ", new[] { Limit?.Print(imperial) ?? "", Remark }.Where(words => words.Length > 0));

    /// <summary>The number with its unit; "not known" when it is not.</summary>
    public string Print(bool imperial) => Known ? Figures.Print(Value!.Value, Dimension, Unit, Digits, imperial) : "not known";
}
