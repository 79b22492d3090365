using Gudgeon.Book.Rows;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Tracing;

/// <summary>Why a formula takes its inputs no further, in one sentence.</summary>
internal static class Refusal
{
    /// <summary>"belt with an idler: centre distance: given 80 mm, two pulleys of the belt overlap".</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="arguments">What it was given, SI.</param>
    /// <param name="refused">What it said.</param>
    public static string Sentence(Formula formula, IReadOnlyList<object> arguments, Exception refused)
    {
        if (refused is OutOfRangeException range)
        {
            return $"{formula.Name}: {FormulaCall.Sentence(range)}";
        }

        var (at, said) = (refused.Message.IndexOf(": ", StringComparison.Ordinal), refused.Message);
        for (var i = 0; at > 0 && i < arguments.Count; i++)
        {
            var quantity = formula.Inputs[i].Quantity;
            if (quantity.Name == said[..at] && arguments[i] is double amount)
            {
                return $"{formula.Name}: {said[..at]}: given {Figures.Print(amount, quantity.Dimension, quantity.Unit)}, {said[(at + 2)..]}";
            }
        }

        return $"{formula.Name}: {said}";
    }
}
