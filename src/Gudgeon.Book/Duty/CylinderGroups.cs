using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Duty;

/// <summary>Cylinders that go together, written "1-4, 2-3".</summary>
public static class CylinderGroups
{
    /// <summary>What says that no cylinders go together.</summary>
    public const string None = "none";

    /// <summary>Cylinders that share an inlet port: two or more to a group, none twice, not all need be named.</summary>
    /// <exception cref="BadInputException">The sentence names the field, what was given and what was wanted.</exception>
    public static IReadOnlyList<IReadOnlyList<int>> Shared(string text, int cylinders)
    {
        var groups = text == None ? [] : Read(text);
        return groups is not null && groups.TrueForAll(g => g.Count > 1) && OnceEach(groups, cylinders)
            ? groups
            : throw new BadInputException($"{SharedRunner.Shared.Path}: given '{text}', wanted the numbers of two or more of {Of(cylinders)} for each port and none twice, such as 1-2, 3-4");
    }

    /// <summary>Primaries that meet two by two: every cylinder in one pair.</summary>
    /// <exception cref="BadInputException">The sentence names the field, what was given and what was wanted.</exception>
    public static IReadOnlyList<IReadOnlyList<int>> Pairs(string text, int cylinders)
    {
        if (cylinders % 2 != 0)
        {
            throw new BadInputException($"{Exhaust.Pairs.Path}: given '{text}', but {Of(cylinders)} {(cylinders == 1 ? "makes" : "make")} no pairs");
        }

        var groups = Read(text);
        return groups is not null && groups.TrueForAll(g => g.Count == 2) && OnceEach(groups, cylinders) && groups.Count * 2 == cylinders
            ? groups
            : throw new BadInputException($"{Exhaust.Pairs.Path}: given '{text}', wanted each of {Of(cylinders)} in one pair, such as 1-4, 2-3");
    }

    /// <summary>The pairs that fire half a cycle apart, as text: the usual ones.</summary>
    /// <param name="angles">Firing angle of each cylinder, degrees.</param>
    /// <exception cref="BadInputException">An odd number of cylinders.</exception>
    public static string UsualPairs(IReadOnlyList<double> angles)
    {
        var (fires, half) = (Enumerable.Range(0, angles.Count).OrderBy(i => angles[i]).ToList(), angles.Count / 2);
        return angles.Count % 2 == 0
            ? string.Join(", ", Enumerable.Range(0, half).Select(i => new[] { fires[i] + 1, fires[i + half] + 1 }.Order()).Select(p => string.Join('-', p)).Order(StringComparer.Ordinal))
            : throw new BadInputException($"{Exhaust.Layout.Path}: given '{ExhaustLayouts.Paired}' with {Of(angles.Count)}, wanted an even number of cylinders");
    }

    private static List<IReadOnlyList<int>>? Read(string text)
    {
        var groups = text.Split(',', StringSplitOptions.TrimEntries)
            .Select(g => g.Split('-', StringSplitOptions.TrimEntries).Select(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0).ToList())
            .ToList();
        return groups.Exists(g => g.Contains(0)) ? null : [.. groups];
    }

    private static bool OnceEach(List<IReadOnlyList<int>> groups, int cylinders)
    {
        var all = groups.SelectMany(g => g).ToList();
        return all.Distinct().Count() == all.Count && all.TrueForAll(n => n <= cylinders);
    }

    private static string Of(int cylinders) => cylinders == 1 ? "the one cylinder" : string.Create(CultureInfo.InvariantCulture, $"the {cylinders} cylinders");
}
