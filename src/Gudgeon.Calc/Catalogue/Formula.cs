using System.Reflection;

namespace Gudgeon.Calc.Catalogue;

/// <summary>What a formula input is made of.</summary>
public enum InputKind
{
    /// <summary>One amount (double).</summary>
    Amount,

    /// <summary>A whole number (int).</summary>
    Count,

    /// <summary>A list of amounts (double[]).</summary>
    List,

    /// <summary>One of a fixed set of words (an enum).</summary>
    Choice,
}

/// <summary>One input of a formula, as declared on the parameter.</summary>
/// <param name="Key">The short name used on the command line and in row files: the C# parameter's name.</param>
/// <param name="Quantity">The declaration.</param>
/// <param name="Kind">What it is made of.</param>
/// <param name="Type">CLR type of the parameter.</param>
/// <param name="Default">The value used when it is left out; null when it must be given.</param>
public sealed record FormulaInput(string Key, QuantityAttribute Quantity, InputKind Kind, Type Type, object? Default)
{
    /// <summary>Symbol in the expression.</summary>
    public string Symbol => Quantity.Symbol.Length > 0 ? Quantity.Symbol : Key;

    /// <summary>The words a <see cref="InputKind.Choice"/> accepts; empty otherwise.</summary>
    public IReadOnlyList<string> Choices => Kind == InputKind.Choice ? Enum.GetNames(Type) : [];
}

/// <summary>One result of a formula.</summary>
/// <param name="Key">Short name: the result record's property, lower camel case; "result" for a single value.</param>
/// <param name="Quantity">The declaration.</param>
public sealed record FormulaOutput(string Key, QuantityAttribute Quantity)
{
    /// <summary>Symbol in the expression.</summary>
    public string Symbol => Quantity.Symbol.Length > 0 ? Quantity.Symbol : Key;
}

/// <summary>A formula of the catalogue: its declaration and how to call it.</summary>
public sealed class Formula
{
    private readonly MethodInfo _method;
    private readonly PropertyInfo[] _resultProperties;

    internal Formula(MethodInfo method, FormulaAttribute declaration)
    {
        _method = method;
        Declaration = declaration;
        Inputs = [.. method.GetParameters().Select(Input)];
        _resultProperties = method.ReturnType == typeof(double) ? [] : ResultProperties(method.ReturnType);
        Outputs = method.ReturnType == typeof(double) ? [SingleOutput(method)] : [.. RecordOutputs(method.ReturnType)];
    }

    /// <summary>The declaration on the method.</summary>
    public FormulaAttribute Declaration { get; }

    /// <summary>Trade name.</summary>
    public string Name => Declaration.Name;

    /// <summary>Trade subject: the last part of the method's namespace ("Springs").</summary>
    public string Subject => _method.DeclaringType!.Namespace!.Split('.')[^1];

    /// <summary>Inputs in the order of the parameters.</summary>
    public IReadOnlyList<FormulaInput> Inputs { get; }

    /// <summary>Results in the order of the record's constructor.</summary>
    public IReadOnlyList<FormulaOutput> Outputs { get; }

    /// <summary>Whether this formula is the given method.</summary>
    public bool Is(MethodInfo method) => _method == method;

    /// <summary>
    /// Computes the results, SI, in the order of <see cref="Outputs"/>. <paramref name="arguments"/> are SI values in the
    /// order of <see cref="Inputs"/>: double, int, double[] or enum value.
    /// </summary>
    /// <exception cref="FormulaDomainException">An argument is outside the declared range, or the formula has no meaning there.</exception>
    public double[] Compute(IReadOnlyList<object> arguments)
    {
        for (var i = 0; i < Inputs.Count; i++)
        {
            Check(Inputs[i], arguments[i]);
        }

        var result = _method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [.. arguments], null)!;
        return Flatten(result);
    }

    /// <summary>The results of a returned value, SI, in the order of <see cref="Outputs"/>.</summary>
    public double[] Flatten(object result) => result is double single
        ? [single]
        : [.. _resultProperties.Select(p => Convert.ToDouble(p.GetValue(result), System.Globalization.CultureInfo.InvariantCulture))];

    /// <summary>Refuses an argument outside its declared range.</summary>
    /// <exception cref="FormulaDomainException">The sentence names the input, what was given and what was wanted, in SI.</exception>
    public static void Check(FormulaInput input, object argument)
    {
        switch (argument)
        {
            case double amount:
                Check(input, amount);
                break;
            case int count:
                Check(input, (double)count);
                break;
            case double[] list:
                FormulaDomainException.Unless(list.Length > 0, $"{input.Quantity.Name}: the list is empty");
                Array.ForEach(list, amount => Check(input, amount));
                break;
        }
    }

    private static void Check(FormulaInput input, double amount)
    {
        if (!input.Quantity.Allows(amount))
        {
            throw new OutOfRangeException(input, amount);
        }
    }

    private static FormulaInput Input(ParameterInfo parameter)
    {
        var quantity = parameter.GetCustomAttribute<QuantityAttribute>()
            ?? throw new InvalidOperationException($"{parameter.Member.DeclaringType}.{parameter.Member.Name}: parameter {parameter.Name} has no [Quantity]");
        var type = parameter.ParameterType;
        var kind = type == typeof(double) ? InputKind.Amount
            : type == typeof(int) ? InputKind.Count
            : type == typeof(double[]) ? InputKind.List
            : type.IsEnum ? InputKind.Choice
            : throw new InvalidOperationException($"{parameter.Member.DeclaringType}.{parameter.Member.Name}: parameter {parameter.Name} is {type}, which no catalogue form can ask for");
        var fallback = parameter.HasDefaultValue ? (type.IsEnum ? Enum.ToObject(type, parameter.DefaultValue!) : parameter.DefaultValue) : null;
        return new FormulaInput(parameter.Name!, quantity, kind, type, fallback);
    }

    private static FormulaOutput SingleOutput(MethodInfo method) => new(
        "result",
        method.ReturnParameter.GetCustomAttribute<QuantityAttribute>()
            ?? throw new InvalidOperationException($"{method.DeclaringType}.{method.Name}: the return value has no [return: Quantity]"));

    private static IEnumerable<FormulaOutput> RecordOutputs(Type record) => ResultParameters(record).Select(p => new FormulaOutput(
        char.ToLowerInvariant(p.Name![0]) + p.Name[1..],
        p.GetCustomAttribute<QuantityAttribute>()
            ?? throw new InvalidOperationException($"{record}: constructor parameter {p.Name} has no [Quantity]")));

    private static PropertyInfo[] ResultProperties(Type record) => [.. ResultParameters(record).Select(p => record.GetProperty(p.Name!)!)];

    private static ParameterInfo[] ResultParameters(Type record) => record.GetConstructors().OrderByDescending(c => c.GetParameters().Length).First().GetParameters();
}
