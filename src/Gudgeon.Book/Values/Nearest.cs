namespace Gudgeon.Book.Values;

/// <summary>The known word nearest to a mistyped one, by edit distance.</summary>
public static class Nearest
{
    /// <summary>The nearest of <paramref name="known"/>; empty when there is none.</summary>
    public static string To(string given, IEnumerable<string> known) =>
        known.MinBy(k => Distance(given.ToUpperInvariant(), k.ToUpperInvariant())) ?? "";

    /// <summary>
    /// The nearest of <paramref name="known"/> if it is so near that it may have been meant: at most one letter in three is
    /// another (common practice, no source); empty when none is.
    /// </summary>
    public static string Near(string given, IEnumerable<string> known) =>
        To(given, known) is { Length: > 0 } nearest && 3 * Distance(given.ToUpperInvariant(), nearest.ToUpperInvariant()) <= given.Length ? nearest : "";

    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                row[j] = a[i - 1] == b[j - 1] ? diagonal : 1 + Math.Min(diagonal, Math.Min(above, row[j - 1]));
                diagonal = above;
            }
        }

        return row[^1];
    }
}
