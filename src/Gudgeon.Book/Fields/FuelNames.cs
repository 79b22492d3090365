namespace Gudgeon.Book.Fields;

/// <summary>The fuels of Gudgeon.Calc by the words of the book.</summary>
public static class FuelNames
{
    /// <summary>Names in the order of the fuel table.</summary>
    public static IReadOnlyList<string> All { get; } = ["petrol"];
}
