using System.Globalization;

namespace Gudgeon.Book.Build;

/// <summary>Order of index keys: a group before its instances, inlet before exhaust, numbers by size.</summary>
public sealed class IndexOrder : IComparer<string>
{
    /// <summary>The order.</summary>
    public static readonly IndexOrder Instance = new();

    public int Compare(string? x, string? y)
    {
        var (a, b) = ((x ?? "").Split('.'), (y ?? "").Split('.'));
        for (var i = 0; i < Math.Min(a.Length, b.Length); i++)
        {
            if (Part(a[i], b[i]) is not 0 and var order)
            {
                return order;
            }
        }

        return a.Length - b.Length;
    }

    private static int Part(string a, string b) => (Number(a), Number(b)) switch
    {
        ({ } n, { } m) => n.CompareTo(m),
        _ when a == "inlet" && b == "exhaust" => -1,
        _ when a == "exhaust" && b == "inlet" => 1,
        _ => string.CompareOrdinal(a, b),
    };

    private static int? Number(string part) => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
