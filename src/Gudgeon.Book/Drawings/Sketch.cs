using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Drawings;

/// <summary>What the numbers of drawings share: a number that is not known, or that no formula takes, is none.</summary>
internal static class Sketch
{
    /// <summary>The number that a computation gives; null when an input is not known or out of its range.</summary>
    public static double? Known(Func<double> work) => Known(() => (double?)work()) is { } number && double.IsFinite(number) ? number : null;

    /// <summary>What a computation gives of several numbers; null when it gives nothing or no formula takes its inputs.</summary>
    public static T? Known<T>(Func<T?> work)
        where T : struct
    {
        try
        {
            return work();
        }
        catch (Exception e) when (e is OutOfRangeException or FormulaDomainException)
        {
            return null;
        }
    }

    /// <summary>Index keys as the checks of the same parts have them, without those that stand for nothing known.</summary>
    public static IReadOnlyList<string> Keys(IEnumerable<string> instances) => [.. instances.Distinct(StringComparer.Ordinal)];
}
