using Gudgeon.Book.Drive;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Drive;

/// <summary>Loads along the nose as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class NoseCells(bool imperial)
{
    /// <summary>Headings of a row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["load at\t", "from the near main", "against the pull"];

    /// <summary>The row of a load.</summary>
    public IReadOnlyList<string> Of(NoseLoad load) => [load.Name, Cell.Of(load.Place, Dimension.Length, "mm", 4, imperial), Cell.Of(load.Load, Dimension.Force, "N", 4, imperial)];
}
