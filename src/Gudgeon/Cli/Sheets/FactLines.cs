using Gudgeon.Calc.Catalogue;
using Gudgeon.Book.Values;

namespace Gudgeon.Cli.Sheets;

/// <summary>Numbers of a sheet on the terminal.</summary>
internal static class FactLines
{
    public static void Print(IEnumerable<Fact> facts, bool imperial)
    {
        var all = facts.ToList();
        var (names, values) = (all.Max(f => (int?)f.Name.Length) ?? 0, all.Max(f => (int?)f.Print(imperial).Length) ?? 0);
        foreach (var fact in all)
        {
            Out.Line($"  {fact.Name.PadRight(names)}  {fact.Print(imperial).PadLeft(values)}{(fact.Words(imperial) is { Length: > 0 } words ? "  " + words : "")}");
        }
    }

    /// <summary>A sheet of titled groups, what it does not know, its remarks and its caution.</summary>
    public static void Print(IEnumerable<(string Title, IReadOnlyList<Fact> Facts)> groups, string missing, IEnumerable<string> remarks, string caution, bool imperial)
    {
        foreach (var (title, facts) in groups)
        {
            Out.Line(title);
            Print(facts, imperial);
            Out.Line();
        }

        Out.LineIf(missing.Length > 0, missing);
        foreach (var remark in remarks)
        {
            Out.Line(remark);
        }

        Out.Line("Caution: " + caution);
    }

    /// <summary>What was given and cannot be.</summary>
    public static void PrintRefused(IEnumerable<string> refused)
    {
        foreach (var sentence in refused)
        {
            Out.Line($"Left out, because it cannot be: {sentence}.");
        }
    }

    /// <summary>The same for a program: SI.</summary>
    public static IEnumerable<object> Json(IEnumerable<Fact> facts) => facts.Select(f => new { name = f.Name, value = f.Known ? f.Value : null, unit = f.Dimension.SiUnit(), remark = f.Words(imperial: false) });
}
