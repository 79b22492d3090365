using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Tests.Catalogue;

/// <summary>Every formula is declared whole, and its documentation, signature and expression agree.</summary>
public partial class DeclarationTests
{
    private static readonly Dictionary<string, XElement> Documentation = XDocument
        .Load(Path.ChangeExtension(typeof(Formulas).Assembly.Location, ".xml"))
        .Descendants("member")
        .ToDictionary(m => m.Attribute("name")!.Value, StringComparer.Ordinal);

    /// <summary>Solved by steps that no one expression shows, or read from a table; the expression says which.</summary>
    private static readonly string[] ShownInWords =
    [
        "Almen strip comparison", "Mach number from area ratio", "belt centre distance", "cylinder volume", "density altitude",
        "effective area from a flow bench", "hydrogen relief bake", "latent heat of a fuel", "load reversal speed",
        "plate clutch clamp force from face pressure", "rolling bearing viscosity ratio", "trap speed at constant power with drag",
        "trap speed, traction then power",
    ];

    private static readonly List<MethodInfo> Methods =
    [
        .. typeof(Formulas).Assembly.GetTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(m => m.GetCustomAttribute<FormulaAttribute>() is not null),
    ];

    [Fact]
    public void EveryDeclaredMethodIsFound()
    {
        Assert.NotEmpty(Methods);
        Assert.All(Methods, m => Assert.True(m is { IsPublic: true, IsStatic: true }, Name(m)));
        Assert.Equal(Methods.Count, Formulas.All.Count());
        Assert.All(Methods, m => Assert.True(Formulas.Of(m).Is(m)));
    }

    [Fact]
    public void EveryFormulaHasASummaryAndAWordForEachParameter() => None(
        from m in Methods
        let doc = Documented(m)
        from fault in doc is null || Empty(doc.Element("summary"))
            ? ["no summary"]
            : m.GetParameters().Where(p => Empty(doc.Elements("param").FirstOrDefault(e => e.Attribute("name")!.Value == p.Name))).Select(p => $"no <param> for {p.Name}")
        select $"{Name(m)}: {fault}");

    [Fact]
    public void NamesAreLowerCaseWords() => None(
        from f in Formulas.All
        where !TradeName().IsMatch(f.Name) || f.Name != f.Name.Trim() || f.Name.Contains("  ", StringComparison.Ordinal)
        select f.Name);

    /// <summary>A name spelt otherwise only in case would be two formulas to the eye and one to the command line.</summary>
    [Fact]
    public void NamesAreUnique() => None(
        Methods.Select(m => m.GetCustomAttribute<FormulaAttribute>()!.Name).GroupBy(n => n, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void SourcesAndExpressionsAreGiven() => None(
        from f in Formulas.All
        where string.IsNullOrWhiteSpace(f.Declaration.Source) || string.IsNullOrWhiteSpace(f.Declaration.Expression)
        select f.Name);

    /// <summary>An input and a result share a symbol only when they are the same quantity, handed through; two inputs never.</summary>
    [Fact]
    public void SymbolsAreUniqueWithinAFormula() => None(
        from f in Formulas.All
        let ends = f.Inputs.Select(i => (i.Symbol, i.Quantity.Name)).Concat(f.Outputs.Select(o => (o.Symbol, o.Quantity.Name)))
        from twice in Twice(f.Inputs.Select(i => i.Symbol)).Concat(Twice(f.Outputs.Select(o => o.Symbol))).Concat(Twice(ends.Distinct().Select(e => e.Symbol))).Distinct(StringComparer.Ordinal)
        select $"{f.Name}: {twice}");

    [Fact]
    public void KeysAreUnique() => None(
        from f in Formulas.All
        from twice in Twice(f.Inputs.Select(i => i.Key.ToUpperInvariant())).Concat(Twice(f.Outputs.Select(o => o.Key.ToUpperInvariant())))
        select $"{f.Name}: {twice}");

    /// <summary>
    /// A formula of one result shows all its amounts in the expression, or says in validity or help what they do there. Those of
    /// several results show the chief relations only, and a choice picks a relation rather than standing in it.
    /// </summary>
    [Fact]
    public void EverySymbolStandsInTheExpressionOrIsExplained() => None(
        from f in Formulas.All
        where f.Outputs.Count == 1 && !ShownInWords.Contains(f.Name, StringComparer.Ordinal)
        from i in f.Inputs
        where i.Kind != InputKind.Choice && i.Default is null && i.Quantity.Help.Length == 0 && !Tokens(f.Declaration.Expression + " " + f.Declaration.Validity).Contains(i.Symbol)
        select $"{f.Name}: {i.Symbol} ({i.Quantity.Name})");

    [Fact]
    public void BoundsAreInOrderAndDefaultsInside() => None(
        from f in Formulas.All
        from i in f.Inputs
        let q = i.Quantity
        where Math.Max(q.Min, q.Above) > Math.Min(q.Max, q.Below) || (i.Default is double or int && !q.Allows(Convert.ToDouble(i.Default, System.Globalization.CultureInfo.InvariantCulture)))
        select $"{f.Name}: {i.Key}");

    private static IEnumerable<string> Twice(IEnumerable<string> words) => words.GroupBy(w => w, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key);

    private static HashSet<string> Tokens(string expression) => [.. Token().Matches(expression).Select(m => m.Value)];

    private static void None(IEnumerable<string> faults)
    {
        var list = faults.ToList();
        Assert.True(list.Count == 0, $"{list.Count}:\n{string.Join('\n', list)}");
    }

    private static XElement? Documented(MethodInfo method)
    {
        var start = $"M:{method.DeclaringType!.FullName}.{method.Name}(";
        return Documentation.Where(d => d.Key.StartsWith(start, StringComparison.Ordinal) && d.Key.Count(c => c == ',') == method.GetParameters().Length - 1).Select(d => d.Value).FirstOrDefault();
    }

    private static bool Empty(XElement? element) => string.IsNullOrWhiteSpace(element?.Value) && element?.HasElements != true;

    private static string Name(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}";

    /// <summary>Words of letters, digits and joining marks; a capital only at the start of a person's name or in an abbreviation.</summary>
    [GeneratedRegex(@"^[\p{L}\d][\p{L}\d ,'’\-–/()·%²³.]*$", RegexOptions.None, 1000)]
    private static partial Regex TradeName();

    /// <summary>The same words as are replaced by numbers when an expression is shown.</summary>
    [GeneratedRegex(@"[\p{L}_][\p{L}\p{Nd}\p{No}_']*", RegexOptions.None, 1000)]
    private static partial Regex Token();
}
