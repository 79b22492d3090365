namespace Gudgeon.Cli.Sheets;

/// <summary>Rows of text in columns as wide as their widest cell: words to the left, numbers to the right.</summary>
internal static class Columns
{
    /// <summary>Prints headings and rows.</summary>
    /// <param name="headings">Headings; one that ends in a tab stands over words, the others over numbers.</param>
    /// <param name="rows">Cells, as many in each row as there are headings.</param>
    public static void Print(IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows)
    {
        List<IReadOnlyList<string>> all = [[.. headings.Select(h => h.TrimEnd('\t'))], .. rows];
        var widths = headings.Select((_, i) => all.Max(r => r[i].Length)).ToList();
        foreach (var row in all)
        {
            Out.Line(string.Join("  ", row.Select((cell, i) => headings[i].EndsWith('\t') ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i]))).TrimEnd());
        }
    }
}
