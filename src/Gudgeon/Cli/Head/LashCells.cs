using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Cli.Head;

/// <summary>The figures of the lash sheet as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class LashCells(bool imperial)
{
    /// <summary>Headings; those over words end in a tab.</summary>
    public static readonly IReadOnlyList<string> Headings = ["valve\t", "lash", "allowed\t", "shim in", "do\t", "shim to fit", "old shim\t", "lash then", "why\t"];

    /// <summary>The row of a valve, under the headings.</summary>
    public IReadOnlyList<string> Of(LashRow row) => [row.Valve, Length(row.Lash), Allowed(row), Length(row.ShimIn), row.Action, Length(row.Shim), row.OldShim, Length(row.After), row.Why];

    /// <summary>"2.35 mm, 2 of 2.4 mm".</summary>
    public string ToBuy(LashSheet sheet) => string.Join(", ", sheet.Bought.GroupBy(t => t).Select(g => g.Count() == 1 ? Length(g.Key) : $"{Figures.Number(g.Count())} of {Length(g.Key)}"));

    private string Allowed(LashRow row) => row is { Least: { } low, Greatest: { } high } ? $"{Length(low)} to {Length(high)}" : SpringCells.Unknown;

    /// <summary>To a hundredth and a half: shims come in steps of 0.025 mm, gauges in thousandths of an inch.</summary>
    private string Length(double? si) => si is { } m ? Figures.Print(Math.Round(m, 6), Dimension.Length, "mm", 4, imperial) : SpringCells.Unknown;
}
