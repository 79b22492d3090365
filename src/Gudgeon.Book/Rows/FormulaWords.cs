using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Rows;

/// <summary>What a formula's declaration says, in words.</summary>
public static class FormulaWords
{
    /// <summary>"source: EN 13906-1 (from memory)".</summary>
    public static string Credit(this Formula formula) => $"source: {formula.Declaration.Source}" + formula.Declaration.Provenance switch
    {
        Provenance.FromMemory => " (from memory)",
        Provenance.CommonPractice => " (common practice, no source)",
        _ => "",
    };

    /// <summary>"more than 0 mm and at most 50 mm"; empty when every finite number is allowed.</summary>
    public static string Range(this QuantityAttribute quantity, bool imperial = false)
    {
        (string Words, double Bound)[] bounds = [("more than", quantity.Above), ("at least", quantity.Min), ("less than", quantity.Below), ("at most", quantity.Max)];
        return string.Join(" and ", bounds.Where(b => double.IsFinite(b.Bound)).Select(b => $"{b.Words} {Figures.Print(b.Bound, quantity.Dimension, quantity.Unit, 5, imperial)}"));
    }

    /// <summary>The value used when an input is left out, as people write it; empty when it must be given.</summary>
    public static string DefaultText(this FormulaInput input) => input.Default is { } value ? Written(input, value) : "";

    /// <summary>An SI argument as people write it, to all the digits that tell: "27.068 N/mm", "1.2 mm, 1.3 mm".</summary>
    public static string Written(this FormulaInput input, object argument, int digits = 5) => argument switch
    {
        double si => Figures.Print(si, input.Quantity.Dimension, input.Quantity.Unit, digits),
        double[] list => string.Join(", ", list.Select(si => Figures.Print(si, input.Quantity.Dimension, input.Quantity.Unit, digits))),
        _ => argument.ToString()!,
    };
}
