namespace Gudgeon.Book.Head;

/// <summary>A spring as it came off the tester.</summary>
/// <param name="Number">Number written on it.</param>
/// <param name="Load">Load at the test height, N.</param>
/// <param name="Open">Load at the open height, N; null when it was not read.</param>
public sealed record TestedCoil(int Number, double Load, double? Open);

/// <summary>Springs that belong together.</summary>
/// <param name="Springs">The springs, strongest first.</param>
/// <param name="Spread">Greatest less least load, N; of both heights together where both were read.</param>
public sealed record SpringSet(IReadOnlyList<TestedCoil> Springs, double Spread);

/// <summary>Sorts springs into matched sets.</summary>
public static class SpringSets
{
    /// <summary>
    /// One or two sets with the least spread in all. For one load the sets of least spread stand next to each other in the
    /// order of their loads, so trying every window is exact. With a second load one set is exact, and the second is the best
    /// of what the first leaves, tried in both orders.
    /// </summary>
    /// <param name="springs">The springs.</param>
    /// <param name="sizes">How many each set needs; sets of none are left empty.</param>
    /// <returns>A set for each size; null when there are too few springs.</returns>
    public static IReadOnlyList<SpringSet>? Best(IReadOnlyList<TestedCoil> springs, IReadOnlyList<int> sizes)
    {
        if (springs.Count < sizes.Sum())
        {
            return null;
        }

        var sorted = springs.OrderBy(s => s.Load).ThenBy(s => s.Number).ToList();
        return sizes.Count switch
        {
            0 => [],
            1 => [OneSet(sorted, sizes[0])],
            2 => sorted.TrueForAll(s => s.Open is null) ? Apart(sorted, sizes[0], sizes[1]) : InTurn(sorted, sizes[0], sizes[1]),
            _ => throw new ArgumentOutOfRangeException(nameof(sizes), "one or two sets"),
        };
    }

    /// <summary>Two sets of one load: the best window below a cut and the best above it, whichever is the first's.</summary>
    private static IReadOnlyList<SpringSet> Apart(List<TestedCoil> sorted, int first, int second)
    {
        var cuts = Enumerable.Range(first, sorted.Count - first - second + 1).Select(c => (Lower: OneSet(sorted[..c], first), Upper: OneSet(sorted[c..], second), Turned: false));
        var turned = Enumerable.Range(second, sorted.Count - first - second + 1).Select(c => (Lower: OneSet(sorted[..c], second), Upper: OneSet(sorted[c..], first), Turned: true));
        var best = cuts.Concat(turned).MinBy(p => p.Lower.Spread + p.Upper.Spread);
        return best.Turned ? [best.Upper, best.Lower] : [best.Lower, best.Upper];
    }

    private static IReadOnlyList<SpringSet> InTurn(List<TestedCoil> sorted, int first, int second)
    {
        (SpringSet Taken, SpringSet Left) After(int taken, int rest)
        {
            var set = OneSet(sorted, taken);
            return (set, OneSet([.. sorted.Except(set.Springs)], rest));
        }

        var (one, two) = (After(first, second), After(second, first));
        return one.Taken.Spread + one.Left.Spread <= two.Taken.Spread + two.Left.Spread ? [one.Taken, one.Left] : [two.Left, two.Taken];
    }

    /// <summary>The set of least spread: between every two loads that could bound it, the closest by the second load.</summary>
    private static SpringSet OneSet(List<TestedCoil> sorted, int size)
    {
        if (size == 0)
        {
            return new SpringSet([], 0);
        }

        SpringSet? best = null;
        for (var low = 0; low + size <= sorted.Count; low++)
        {
            for (var high = low + size - 1; high < sorted.Count && sorted[high].Load - sorted[low].Load < (best?.Spread ?? double.PositiveInfinity); high++)
            {
                var set = Closest(sorted[low..(high + 1)], size);
                best = best is null || set.Spread < best.Spread ? set : best;
            }
        }

        return best!;
    }

    private static SpringSet Closest(List<TestedCoil> among, int size)
    {
        var byOpen = among.OrderBy(s => s.Open ?? 0).ToList();
        return Enumerable.Range(0, byOpen.Count - size + 1)
            .Select(i => byOpen.GetRange(i, size))
            .Select(s => new SpringSet([.. s.OrderByDescending(c => c.Load)], Range(s, c => c.Load) + Range(s, c => c.Open ?? 0)))
            .MinBy(s => s.Spread)!;
    }

    private static double Range(List<TestedCoil> springs, Func<TestedCoil, double> load) => springs.Max(load) - springs.Min(load);
}
