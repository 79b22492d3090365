using System.Text;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Rows;

/// <summary>A formula's expression with its numbers put in.</summary>
public static class Expression
{
    /// <summary>"R = G d^4 / (8 D^3 n)" becomes "27.068 N/mm = (79.3 GPa) (4 mm)^4 / …".</summary>
    public static string WithNumbers(Formula formula, IReadOnlyList<object> arguments, IReadOnlyList<double> results)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < formula.Outputs.Count; i++)
        {
            values[formula.Outputs[i].Symbol] = Shown(results[i], formula.Outputs[i].Quantity);
        }

        for (var i = 0; i < formula.Inputs.Count; i++)
        {
            values[formula.Inputs[i].Symbol] = Shown(arguments[i], formula.Inputs[i].Quantity);
        }

        return Replace(formula.Declaration.Expression, values);
    }

    private static string Shown(object value, QuantityAttribute quantity) => value switch
    {
        // Inside an expression a temperature is absolute, whatever its display unit.
        double si when quantity.Dimension == Dimension.Temperature => Bracketed(Figures.Print(si, quantity.Dimension, "K", 5)),
        double si => Bracketed(Figures.Print(si, quantity.Dimension, quantity.Unit, quantity.Digits)),
        double[] list => "[" + string.Join(", ", list.Select(si => Figures.Print(si, quantity.Dimension, quantity.Unit, 4))) + "]",
        _ => value.ToString()!,
    };

    private static string Bracketed(string text) => text.Contains(' ', StringComparison.Ordinal) || text.StartsWith('-') ? $"({text})" : text;

    private static string Replace(string expression, Dictionary<string, string> values)
    {
        var written = new StringBuilder();
        for (var at = 0; at < expression.Length;)
        {
            var end = at;
            while (end < expression.Length && IsSymbol(expression[end], end == at))
            {
                end++;
            }

            if (end == at)
            {
                written.Append(expression[at++]);
                continue;
            }

            var token = expression[at..end];
            var value = values.GetValueOrDefault(token, token);
            if (char.IsAsciiDigit(value[0]) && EndsInFactor(written))
            {
                written.Append("× ");
            }

            written.Append(value);
            at = end;
        }

        return written.ToString();
    }

    /// <summary>Whether a bare number put here would be read as one with the number before it: "4 6" for 4 C.</summary>
    private static bool EndsInFactor(StringBuilder written) =>
        written.Length > 1 && written[^1] == ' ' && (char.IsAsciiDigit(written[^2]) || written[^2] == ')');

    private static bool IsSymbol(char c, bool first) =>
        char.IsLetter(c) || c == '_' || (!first && (char.IsLetterOrDigit(c) || c is '\'' || char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.OtherNumber));
}
