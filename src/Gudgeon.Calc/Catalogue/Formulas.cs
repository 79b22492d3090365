using System.Reflection;

namespace Gudgeon.Calc.Catalogue;

/// <summary>Every formula declared in Gudgeon.Calc, found by reflection once.</summary>
public static class Formulas
{
    private static readonly Lazy<Dictionary<string, Formula>> ByName = new(Discover);
    private static readonly Lazy<Dictionary<MethodInfo, Formula>> ByMethod = new(() => Methods().ToDictionary(m => m.Method, m => ByName.Value[m.Declaration.Name]));

    /// <summary>All formulas, by subject and then name.</summary>
    public static IEnumerable<Formula> All => ByName.Value.Values.OrderBy(f => f.Subject, StringComparer.Ordinal).ThenBy(f => f.Name, StringComparer.Ordinal);

    /// <summary>The formula with this trade name (case does not matter), or null.</summary>
    public static Formula? Find(string name) => ByName.Value.GetValueOrDefault(name.Trim());

    /// <summary>The formula that a method of Gudgeon.Calc is declared to be.</summary>
    /// <exception cref="InvalidOperationException">The method has no [Formula].</exception>
    public static Formula Of(MethodInfo method) => ByMethod.Value.TryGetValue(method, out var formula)
        ? formula
        : throw new InvalidOperationException($"{method.DeclaringType}.{method.Name} is not declared as a formula");

    private static Dictionary<string, Formula> Discover() => Methods().ToDictionary(
        m => m.Declaration.Name,
        m => new Formula(m.Method, m.Declaration),
        StringComparer.OrdinalIgnoreCase);

    private static IEnumerable<(MethodInfo Method, FormulaAttribute Declaration)> Methods() =>
        from type in typeof(Formulas).Assembly.GetTypes()
        where type.IsClass && type.IsAbstract && type.IsSealed
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static)
        let declaration = method.GetCustomAttribute<FormulaAttribute>()
        where declaration is not null
        select (method, declaration);
}
