namespace Gudgeon.Calc.Catalogue;

/// <summary>
/// An input is outside its declared range. Carries the declaration and the SI amount, so that the border can say it in
/// the units of the user.
/// </summary>
public sealed class OutOfRangeException : Exception
{
    internal OutOfRangeException(FormulaInput input, double amount)
        : base($"{input.Quantity.Name}: given {amount} {input.Quantity.Dimension.SiUnit()}, outside the range of the formula")
    {
        Input = input;
        Amount = amount;
    }

    /// <summary>The declaration.</summary>
    public FormulaInput Input { get; }

    /// <summary>What was given, SI.</summary>
    public double Amount { get; }
}
