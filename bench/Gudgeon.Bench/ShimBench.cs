using System.Diagnostics;
using Gudgeon.Book.Head;

namespace Gudgeon.Bench;

/// <summary>Shims for all valves together, against trying every way where that can be done, and the first call by itself.</summary>
internal static class ShimBench
{
    private const double Mm = 1e-3;

    public static void Choice()
    {
        var started = Stopwatch.GetTimestamp();
        _ = ShimChoice.Best(Problem(16));
        Console.WriteLine(FormattableString.Invariant($"shims for 16 valves, first call, native library and all: {Stopwatch.GetElapsedTime(started).TotalMilliseconds:0} ms"));
        foreach (var valves in (int[])[8, 16, 24])
        {
            var problem = Problem(valves);
            SideBySide.Run($"shims for {valves} valves from {problem.Stock.Count} sizes on the bench", "ms", 1e3, valves > 8 ? [Together(problem)] : [Together(problem), ("every way tried", () => EveryWay(problem))]);
        }
    }

    private static (string Name, Action Work) Together(ShimProblem problem) => ("chosen together, one worker", () => ShimChoice.Best(problem));

    /// <summary>Valves with lashes all over, shims in steps of 0.05 mm, the same every time.</summary>
    private static ShimProblem Problem(int valves)
    {
        var random = new Random(7);
        return new ShimProblem(
            [.. Enumerable.Range(0, valves).Select(i => new MeasuredLash($"inlet.{i + 1}.1", random.Next(5, 40) * 0.01 * Mm, random.Next(46, 60) * 0.05 * Mm, 0.15 * Mm, 0.25 * Mm, 0.2 * Mm))],
            [.. Enumerable.Range(44, 20).Select(i => new StockItem(i * 0.05 * Mm, 1))],
            new ShimSeries(0.025 * Mm, 2 * Mm, 3.5 * Mm));
    }

    /// <summary>The least of all ways of giving the pieces out, without words for it.</summary>
    private static (int Bought, double Off) EveryWay(ShimProblem problem)
    {
        var pieces = problem.Valves.Select(v => v.Shim).Concat(problem.Stock.Select(s => s.Thickness)).ToArray();
        return Best(problem, pieces, 0, new bool[pieces.Length]);
    }

    private static (int Bought, double Off) Best(ShimProblem problem, double[] pieces, int at, bool[] gone)
    {
        if (at == problem.Valves.Count)
        {
            return (0, 0);
        }

        var valve = problem.Valves[at];
        double Off(double shim) => Math.Abs(valve.With(shim) - valve.Wanted);
        var best = (Bought: int.MaxValue, Off: double.PositiveInfinity);
        for (var p = 0; p < pieces.Length; p++)
        {
            if (gone[p] || !valve.Takes(pieces[p]))
            {
                continue;
            }

            gone[p] = true;
            var rest = Best(problem, pieces, at + 1, gone);
            gone[p] = false;
            var way = (rest.Bought, rest.Off + Off(pieces[p]));
            best = way.CompareTo(best) < 0 ? way : best;
        }

        if (problem.Sold!.For(valve) is { } sold)
        {
            var rest = Best(problem, pieces, at + 1, gone);
            var way = (rest.Bought + 1, rest.Off + Off(sold));
            best = way.CompareTo(best) < 0 ? way : best;
        }

        return best;
    }
}
