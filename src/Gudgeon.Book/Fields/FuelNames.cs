using Gudgeon.Calc.Gas;

namespace Gudgeon.Book.Fields;

/// <summary>The fuels of Gudgeon.Calc by the words of the book.</summary>
public static class FuelNames
{
    private static readonly Dictionary<string, Fuel> ByName = Enum.GetValues<FuelChoice>().Select(Fuels.Of).ToDictionary(f => f.Name, StringComparer.Ordinal);

    /// <summary>Names in the order of the fuel table.</summary>
    public static IReadOnlyList<string> All { get; } = [.. ByName.Keys];

    /// <summary>The fuel of this name.</summary>
    public static Fuel Of(string name) => ByName[name];
}
