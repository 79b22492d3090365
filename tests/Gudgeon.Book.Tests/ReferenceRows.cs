using Gudgeon.Book.Rows;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Tests;

/// <summary>Every published value in tests/reference, computed by the formula it names.</summary>
public class ReferenceRows
{
    private static readonly string[] Kinds = ["published", "independent code", "identity"];

    public static TheoryData<string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var (file, row) in All())
            {
                rows.Add(file, row.Id);
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_known_value_is_computed(string file, string id)
    {
        var (_, row) = All().First(r => r.File == file && r.Row.Id == id);
        var result = RowSheet.Check(row);
        Assert.True(result.Inside, result.Problem.Length > 0 ? result.Problem : $"{id}: computed {result.Computed} {result.Unit}, known {result.Expected}, allowed {result.Allowed} ({row.Source})");
        Assert.NotEmpty(row.Source);
        Assert.Contains(row.Kind, Kinds);
    }

    [Fact]
    public void Ids_are_unique_in_a_file() =>
        Assert.Empty(All().GroupBy(r => (r.File, r.Row.Id)).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void A_wrong_value_is_outside()
    {
        var (_, row) = All().First();
        Assert.False(RowSheet.Check(row with { Expected = "1" + row.Expected }).Inside);
    }

    [Fact]
    public void Every_formula_prints_and_reads_in_its_declared_units()
    {
        foreach (var quantity in Formulas.All.SelectMany(f => f.Inputs.Select(i => i.Quantity).Concat(f.Outputs.Select(o => o.Quantity))))
        {
            Assert.NotNull(Gudgeon.Book.Values.Units.Declared(quantity.Dimension, quantity.Unit));
        }
    }

    private static IEnumerable<(string File, KnownRow Row)> All()
    {
        foreach (var path in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "reference"), "*.csv").Order(StringComparer.Ordinal))
        {
            using var file = new StreamReader(path);
            foreach (var row in RowSheet.Read(file, Path.GetFileName(path)))
            {
                yield return (Path.GetFileName(path), row);
            }
        }
    }
}
