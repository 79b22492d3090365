namespace Gudgeon.Calc.Catalogue;

/// <summary>Where a formula or a figure comes from, said openly beside it.</summary>
public enum Provenance
{
    /// <summary>A published standard, handbook or paper, named in the source.</summary>
    Published,

    /// <summary>A definition or an exact identity; no publication is needed.</summary>
    Definition,

    /// <summary>Recalled, not read this time; the source named is where it should stand.</summary>
    FromMemory,

    /// <summary>What the trade does; no source.</summary>
    CommonPractice,
}

/// <summary>
/// Declares a static method of Gudgeon.Calc as a formula of the catalogue. The command line, the pages, the
/// documentation and the reference rows are made from this declaration and from the <see cref="QuantityAttribute"/>
/// of each parameter and result.
/// </summary>
/// <param name="name">Trade name, lower case, unique: "helical spring rate".</param>
/// <param name="expression">The formula in symbols: "R = G d^4 / (8 D^3 n)". Every symbol is a quantity's symbol.</param>
/// <param name="source">Standard, clause, equation; or book, edition, equation.</param>
[AttributeUsage(AttributeTargets.Method)]
public sealed class FormulaAttribute(string name, string expression, string source) : Attribute
{
    /// <summary>Trade name, unique in the catalogue.</summary>
    public string Name { get; } = name;

    /// <summary>The formula in symbols.</summary>
    public string Expression { get; } = expression;

    /// <summary>Where it is published.</summary>
    public string Source { get; } = source;

    /// <summary>How the source is known.</summary>
    public Provenance Provenance { get; init; } = Provenance.Published;

    /// <summary>Where the formula is valid and what happens outside; empty when the quantities' ranges say it all.</summary>
    public string Validity { get; init; } = "";

    /// <summary>A caution for the person who uses the result; empty when there is none.</summary>
    public string Caution { get; init; } = "";
}

/// <summary>
/// Declares one parameter, the return value, or one constructor parameter of a result record as a quantity.
/// Values are always SI; <see cref="Unit"/> is only how people write it.
/// </summary>
/// <param name="name">Trade name: "wire diameter".</param>
/// <param name="dimension">What it measures.</param>
/// <param name="unit">Display unit; empty for a pure number.</param>
[AttributeUsage(AttributeTargets.Parameter | AttributeTargets.ReturnValue | AttributeTargets.Property)]
public sealed class QuantityAttribute(string name, Dimension dimension, string unit = "") : Attribute
{
    /// <summary>Trade name.</summary>
    public string Name { get; } = name;

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; } = dimension;

    /// <summary>Display unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>Symbol in the formula's expression; the C# name when empty.</summary>
    public string Symbol { get; init; } = "";

    /// <summary>Least allowed value, SI, itself allowed.</summary>
    public double Min { get; init; } = double.NegativeInfinity;

    /// <summary>Greatest allowed value, SI, itself allowed.</summary>
    public double Max { get; init; } = double.PositiveInfinity;

    /// <summary>Bound that the value, SI, must exceed.</summary>
    public double Above { get; init; } = double.NegativeInfinity;

    /// <summary>Bound that the value, SI, must stay under.</summary>
    public double Below { get; init; } = double.PositiveInfinity;

    /// <summary>Significant digits that a reader of the workings wants.</summary>
    public int Digits { get; init; } = 4;

    /// <summary>One line of help; empty when the name says it all.</summary>
    public string Help { get; init; } = "";

    /// <summary>Whether the SI value is a number inside the declared bounds.</summary>
    public bool Allows(double si) => double.IsFinite(si) && si >= Min && si <= Max && si > Above && si < Below;
}
