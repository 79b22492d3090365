using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>How the shape of a pipe is written down: its diameter along its length.</summary>
internal static class PipeShape
{
    /// <summary>Distance from the end at which the gas of an engine enters, and diameter there.</summary>
    public static readonly Column[] Columns = [new("distance", Dimension.Length, "mm", Place: true), new("diameter", Dimension.Length, "mm")];
}
