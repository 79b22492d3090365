using System.Globalization;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Rows;

/// <summary>A formula called from text: names found, amounts read with their units, results computed.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Arguments">SI arguments in the order of the inputs.</param>
/// <param name="Results">SI results in the order of the outputs.</param>
public sealed record FormulaCall(Formula Formula, IReadOnlyList<object> Arguments, IReadOnlyList<double> Results)
{
    /// <summary>Calls the formula of this name with inputs written as name and amount.</summary>
    /// <exception cref="BadInputException">Unknown formula or input, missing input, wrong unit, out of range.</exception>
    public static FormulaCall Run(string formulaName, IEnumerable<KeyValuePair<string, string>> inputs)
    {
        var formula = Formulas.Find(formulaName) ?? throw new BadInputException(
            $"there is no formula '{formulaName}'; the nearest is '{Nearest.To(formulaName, Formulas.All.Select(f => f.Name))}'");
        var arguments = Read(formula, inputs);
        try
        {
            return new FormulaCall(formula, arguments, formula.Compute(arguments));
        }
        catch (FormulaDomainException e)
        {
            throw new BadInputException($"{formula.Name}: {e.Message}");
        }
        catch (OutOfRangeException e)
        {
            throw new BadInputException($"{formula.Name}: {Sentence(e)}");
        }
    }

    /// <summary>The place of a result by its key or its trade name.</summary>
    /// <exception cref="BadInputException">The formula has no such result.</exception>
    public int OutputIndex(string output)
    {
        if (output.Length == 0)
        {
            return 0;
        }

        for (var i = 0; i < Formula.Outputs.Count; i++)
        {
            if (Same(Formula.Outputs[i].Key, output) || Same(Formula.Outputs[i].Quantity.Name, output))
            {
                return i;
            }
        }

        throw new BadInputException($"{Formula.Name}: there is no result '{output}'; it gives {string.Join(", ", Formula.Outputs.Select(o => o.Key))}");
    }

    /// <summary>What was given and what was wanted, in the units of the declaration.</summary>
    public static string Sentence(OutOfRangeException e)
    {
        var q = e.Input.Quantity;
        return $"{q.Name}: given {Figures.Print(e.Amount, q.Dimension, q.Unit)}, wanted {(q.Range() is { Length: > 0 } wanted ? wanted : "a finite number")}";
    }

    /// <summary>Reads one input as it is written, and refuses what lies outside its declared range.</summary>
    /// <returns>SI argument: double, int, double[] or enum value.</returns>
    /// <exception cref="BadInputException">Wrong unit, wrong form, or out of range.</exception>
    public static object Read(FormulaInput input, string text)
    {
        var argument = Argument(input, text);
        try
        {
            Formula.Check(input, argument);
            return argument;
        }
        catch (OutOfRangeException e)
        {
            throw new BadInputException(Sentence(e));
        }
    }

    private static object[] Read(Formula formula, IEnumerable<KeyValuePair<string, string>> inputs)
    {
        var arguments = formula.Inputs.Select(i => i.Default).ToArray();
        var given = new HashSet<int>();
        foreach (var (key, text) in inputs)
        {
            var at = formula.Inputs.TakeWhile(i => !Same(i.Key, key) && !Same(i.Quantity.Name, key)).Count();
            if (at == formula.Inputs.Count)
            {
                throw new BadInputException($"{formula.Name}: there is no input '{key}'; it takes {string.Join(", ", formula.Inputs.Select(i => i.Key))}");
            }

            if (!given.Add(at))
            {
                throw new BadInputException($"{formula.Name}: '{key}' is given twice");
            }

            arguments[at] = Argument(formula.Inputs[at], text);
        }

        var missing = formula.Inputs.Where((_, i) => arguments[i] is null).Select(i => $"{i.Key} ({i.Quantity.Name}{(i.Quantity.Unit.Length > 0 ? ", " + i.Quantity.Unit : "")})").ToList();
        return missing.Count == 0 ? [.. arguments.Select(a => a!)] : throw new BadInputException($"{formula.Name}: missing {string.Join(", ", missing)}");
    }

    private static object Argument(FormulaInput input, string text) => input.Kind switch
    {
        InputKind.Amount => Amount.Parse(input.Quantity.Name, text, input.Quantity.Dimension, input.Quantity.Unit).Si,
        InputKind.Count => Count(input, text),
        InputKind.List => List(input, text),
        _ => Choice(input, text),
    };

    /// <summary>A whole number; 01 is none, since it is not 1 where it names a tolerance grade.</summary>
    private static int Count(FormulaInput input, string text) =>
        int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var count) && (count == 0 || !text.Trim().StartsWith('0'))
            ? count
            : throw new BadInputException($"{input.Quantity.Name}: given '{text}', wanted a whole number{(input.Quantity.Help.Length > 0 ? $"; {input.Quantity.Help}" : "")}");

    /// <summary>"1.2, 1.3, 1.4 mm": the last unit holds for the numbers before it that have none.</summary>
    private static double[] List(FormulaInput input, string text)
    {
        var items = text.Split([',', '|'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (items.Length == 0)
        {
            throw new BadInputException($"{input.Quantity.Name}: given '{text}', wanted a list such as '1.2, 1.3, 1.4 {input.Quantity.Unit}'");
        }

        var unit = Amount.Split(items[^1]).Symbol;
        return [.. items.Select(i => Amount.Parse(input.Quantity.Name, Amount.Split(i).Symbol.Length == 0 ? $"{i} {unit}" : i, input.Quantity.Dimension, input.Quantity.Unit).Si)];
    }

    private static object Choice(FormulaInput input, string text)
    {
        var match = input.Choices.FirstOrDefault(c => Same(c, text));
        return match is not null
            ? Enum.Parse(input.Type, match)
            : throw new BadInputException($"{input.Quantity.Name}: given '{text}', wanted one of {string.Join(", ", input.Choices)}");
    }

    private static bool Same(string a, string b) => string.Equals(Plain(a), Plain(b), StringComparison.OrdinalIgnoreCase);

    private static string Plain(string name) => new([.. name.Where(c => c is not (' ' or '-' or '_'))]);
}
