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

    /// <summary>The remark where it has amounts in it, by whether the reader thinks in inches.</summary>
    public Func<bool, string>? RemarkIn { get; init; }

    /// <summary>Display unit in the inch system where the usual counterpart does not fit: thousandths for a fit.</summary>
    public string? InchUnit { get; init; }

    /// <summary>Significant digits that a reader wants.</summary>
    public int Digits { get; init; } = 4;

    /// <summary>Whether it is known.</summary>
    public bool Known => Value is { } si && !double.IsNaN(si);

    /// <summary>The number with its unit; "not known" when it is not.</summary>
    public string Print(bool imperial) => Known ? Figures.Print(Value!.Value, Dimension, imperial && InchUnit is { } inch ? inch : Unit, Digits, imperial) : "not known";

    /// <summary>The remark in the reader's units.</summary>
    public string Words(bool imperial) => RemarkIn?.Invoke(imperial) ?? Remark;
}
