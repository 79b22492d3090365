using Gudgeon.Book.Rows;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Parts;

/// <summary>A formula's form: what was typed, what is wrong with it, and the results once everything is right.</summary>
public sealed class FormulaSheet
{
    private const int Digits = 10;

    private readonly Formula _formula;
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _refused = new(StringComparer.Ordinal);

    /// <param name="formula">The formula.</param>
    /// <param name="given">What was typed for an input, by its key; null for the default.</param>
    public FormulaSheet(Formula formula, Func<string, string?> given)
    {
        _formula = formula;
        foreach (var input in formula.Inputs)
        {
            _texts[input.Key] = given(input.Key) ?? Default(input);
        }

        Work();
    }

    /// <summary>The worked formula; null while something is wanted or wrong.</summary>
    public FormulaCall? Call { get; private set; }

    /// <summary>Why the formula has no meaning for these inputs, each of them right by itself; else empty.</summary>
    public string Sentence { get; private set; } = "";

    /// <summary>Inputs that are still wanted, or wrong.</summary>
    public IEnumerable<string> Wanted => _formula.Inputs.Where(i => (Text(i).Length == 0 && i.Default is null) || Refused(i).Length > 0).Select(i => i.Quantity.Name);

    /// <summary>What was typed, where it is not the default, for the address.</summary>
    public IEnumerable<KeyValuePair<string, string>> Given => _formula.Inputs.Where(i => Text(i) != Default(i)).Select(i => KeyValuePair.Create(i.Key, Text(i)));

    /// <summary>What stands in the box of an input.</summary>
    public string Text(FormulaInput input) => _texts[input.Key];

    /// <summary>What is wrong with an input, in one sentence; empty when nothing is.</summary>
    public string Refused(FormulaInput input) => _refused.GetValueOrDefault(input.Key, "");

    /// <summary>The form with another text for one input.</summary>
    public FormulaSheet With(FormulaInput input, string text) => new(_formula, key => key == input.Key ? text.Trim() : _texts[key]);

    private static string Default(FormulaInput input) => input.Default is { } value ? input.Written(value, Digits) : "";

    private void Work()
    {
        foreach (var input in _formula.Inputs.Where(i => Text(i).Length > 0))
        {
            try
            {
                FormulaCall.Read(input, Text(input));
            }
            catch (BadInputException e)
            {
                _refused[input.Key] = e.Message;
            }
        }

        if (Wanted.Any())
        {
            return;
        }

        try
        {
            Call = FormulaCall.Run(_formula.Name, _texts.Where(t => t.Value.Length > 0));
        }
        catch (BadInputException e)
        {
            Sentence = e.Message;
        }
    }
}
