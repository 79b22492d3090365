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
            Out.Line($"  {fact.Name.PadRight(names)}  {fact.Print(imperial).PadLeft(values)}{(fact.Remark.Length > 0 ? "  " + fact.Remark : "")}");
        }
    }

    /// <summary>The same for a program: SI.</summary>
    public static IEnumerable<object> Json(IEnumerable<Fact> facts) => facts.Select(f => new { name = f.Name, value = f.Known ? f.Value : null, unit = f.Dimension.SiUnit(), remark = f.Remark });
}
