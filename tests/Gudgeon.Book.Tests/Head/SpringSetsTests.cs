using CsCheck;
using Gudgeon.Book.Head;

namespace Gudgeon.Book.Tests.Head;

/// <summary>Springs sorted into matched sets.</summary>
public class SpringSetsTests
{
    private static readonly Gen<TestedCoil[]> OneLoad = Gen.Int[200, 320].Array[2, 8].Select(loads => loads.Select((l, i) => new TestedCoil(i + 1, l, null)).ToArray());

    private static readonly Gen<TestedCoil[]> TwoLoads = Gen.Select(Gen.Int[200, 320], Gen.Int[500, 640]).Array[2, 8].Select(loads => loads.Select((l, i) => new TestedCoil(i + 1, l.Item1, l.Item2)).ToArray());

    [Fact]
    public void One_set_is_the_closest_there_is() => Gen.Select(Gen.OneOf(OneLoad, TwoLoads), Gen.Int[1, 4]).Sample((springs, size) =>
    {
        var best = SpringSets.Best(springs, [size]);
        if (springs.Length < size)
        {
            Assert.Null(best);
            return;
        }

        Assert.Equal(size, Assert.Single(best!).Springs.Distinct().Count());
        Assert.Equal(Subsets(springs, size).Min(Spread), best![0].Spread, 1e-9);
        Assert.Equal(Spread(best[0].Springs), best[0].Spread, 1e-9);
    });

    [Fact]
    public void Two_sets_of_one_load_are_the_closest_there_are() => Gen.Select(OneLoad, Gen.Int[1, 3], Gen.Int[1, 3]).Sample((springs, first, second) =>
    {
        var best = SpringSets.Best(springs, [first, second]);
        if (springs.Length < first + second)
        {
            Assert.Null(best);
            return;
        }

        var least = Subsets(springs, first).Min(a => Spread(a) + Subsets([.. springs.Except(a)], second).Min(Spread));
        Assert.Equal(least, best!.Sum(s => s.Spread), 1e-9);
        Assert.Equal([first, second], best!.Select(s => s.Springs.Count));
        Assert.Equal(first + second, best!.SelectMany(s => s.Springs).Distinct().Count());
    });

    // 266 and 279 N are the strays: the sets are 270 to 273 and 274 to 276.
    [Fact]
    public void Strays_are_left_over()
    {
        double[] loads = [270, 279, 271, 274, 266, 275, 273, 276];
        var sets = SpringSets.Best([.. loads.Select((l, i) => new TestedCoil(i + 1, l, null))], [3, 3])!;
        Assert.Equal([[273, 271, 270], [276, 275, 274]], sets.Select(s => s.Springs.Select(c => c.Load).ToArray()).OrderBy(s => s[0]));
        Assert.Equal(5, sets.Sum(s => s.Spread));
    }

    private static double Spread(IReadOnlyList<TestedCoil> set) => set.Max(s => s.Load) - set.Min(s => s.Load) + set.Max(s => s.Open ?? 0) - set.Min(s => s.Open ?? 0);

    private static IEnumerable<List<TestedCoil>> Subsets(IReadOnlyList<TestedCoil> springs, int size) => Enumerable.Range(0, 1 << springs.Count)
        .Where(mask => int.PopCount(mask) == size)
        .Select(mask => springs.Where((_, i) => (mask >> i & 1) == 1).ToList());
}
