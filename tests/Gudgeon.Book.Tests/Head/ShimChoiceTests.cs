using CsCheck;
using Gudgeon.Book.Head;

namespace Gudgeon.Book.Tests.Head;

/// <summary>Shims for all valves together.</summary>
public class ShimChoiceTests
{
    private const double Mm = 1e-3;

    private static readonly ShimSeries Sold = new(0.025 * Mm, 2 * Mm, 3 * Mm);

    /// <summary>Two or three valves, a few shims on the bench, sometimes a shop.</summary>
    private static readonly Gen<ShimProblem> Problems = Gen.Select(
        Gen.Select(Gen.Int[5, 40], Gen.Int[46, 56]).Array[1, 4],
        Gen.Select(Gen.Int[44, 58], Gen.Int[1, 2]).Array[0, 4],
        Gen.Bool).Select((valves, bench, shop) => new ShimProblem(
            [.. valves.Select((v, i) => new MeasuredLash($"inlet.{i + 1}.1", v.Item1 * 0.01 * Mm, v.Item2 * 0.05 * Mm, 0.15 * Mm, 0.25 * Mm, 0.2 * Mm))],
            [.. bench.Select(b => new StockItem(b.Item1 * 0.05 * Mm, b.Item2))],
            shop ? Sold : null));

    // Worked by hand: both are out of range by 0.1 mm each way, and each has the shim that the other wants.
    [Fact]
    public void Two_valves_trade_their_shims()
    {
        var chosen = ShimChoice.Best(new ShimProblem([Valve("inlet.1.1", 0.30, 2.50), Valve("inlet.2.1", 0.10, 2.60)], [], Sold));
        Assert.Equal([ShimFrom.Valve, ShimFrom.Valve], chosen.Select(c => c.From));
        Assert.Equal(["inlet.2.1", "inlet.1.1"], chosen.Select(c => c.Other));
        Assert.Equal([0.20, 0.20], chosen.Select(c => Math.Round(c.Valve.With(c.Shim) / Mm, 6)));
    }

    [Fact]
    public void One_that_is_as_wanted_stays()
    {
        var chosen = ShimChoice.Best(new ShimProblem([Valve("inlet.1.1", 0.20, 2.50)], [new StockItem(2.50 * Mm, null)], Sold));
        Assert.Equal(ShimFrom.Stays, Assert.Single(chosen).From);
    }

    [Fact]
    public void What_nobody_has_is_bought_in_a_size_that_is_sold()
    {
        var chosen = Assert.Single(ShimChoice.Best(new ShimProblem([Valve("inlet.1.1", 0.41, 2.50)], [], Sold)));
        Assert.Equal(ShimFrom.Bought, chosen.From);
        Assert.Equal(2.70, chosen.Shim / Mm, 1e-6);
        Assert.Equal(ShimFrom.None, Assert.Single(ShimChoice.Best(new ShimProblem([Valve("inlet.1.1", 0.41, 2.50)], [], null))).From);
        Assert.Equal(ShimFrom.None, Assert.Single(ShimChoice.Best(new ShimProblem([Valve("inlet.1.1", 0.90, 2.50)], [], Sold))).From);
    }

    // One piece of 2.6 mm, two valves that could use it: the one that is out of range gets it.
    [Fact]
    public void A_shim_goes_to_one_valve_only()
    {
        var chosen = ShimChoice.Best(new ShimProblem([Valve("inlet.1.1", 0.24, 2.55), Valve("inlet.2.1", 0.30, 2.50)], [new StockItem(2.60 * Mm, 1)], null));
        Assert.Equal([ShimFrom.Stays, ShimFrom.Bench], chosen.Select(c => c.From));
    }

    /// <summary>Every way of giving out the shims is tried; the best of them is what the program finds.</summary>
    [Fact]
    public void The_plan_is_the_best_there_is() => Problems.Sample(problem =>
    {
        var chosen = ShimChoice.Best(problem);
        Assert.Equal(BruteForce.Best(problem), BruteForce.Cost(problem, chosen));
        Whole(problem, chosen);
    }, iter: 400);

    /// <summary>No piece is given twice, nothing comes from nowhere, and every lash is allowed.</summary>
    private static void Whole(ShimProblem problem, IReadOnlyList<ShimChosen> chosen)
    {
        Assert.Equal(problem.Valves, chosen.Select(c => c.Valve));
        Assert.All(chosen.Where(c => c.From != ShimFrom.None), c => Assert.InRange(c.Valve.With(c.Shim) / Mm, (c.Valve.Least / Mm) - 1e-4, (c.Valve.Greatest / Mm) + 1e-4));
        var traded = chosen.Where(c => c.From == ShimFrom.Valve).ToList();
        Assert.Equal(traded.Count, traded.DistinctBy(c => c.Other).Count());
        Assert.All(traded, c => Assert.Equal(c.Shim, chosen.Single(o => o.Valve.Valve == c.Other).Valve.Shim, 1e-9));
        Assert.All(traded, c => Assert.NotEqual(ShimFrom.Stays, chosen.Single(o => o.Valve.Valve == c.Other).From));
        foreach (var item in chosen.Where(c => c.From == ShimFrom.Bench).GroupBy(c => Math.Round(c.Shim * 1e7)))
        {
            Assert.True(item.Count() <= problem.Stock.Where(s => Math.Abs(Math.Round(s.Thickness * 1e7) - item.Key) < 0.5).Sum(s => s.Count));
        }
    }

    private static MeasuredLash Valve(string key, double lash, double shim) => new(key, lash * Mm, shim * Mm, 0.15 * Mm, 0.25 * Mm, 0.20 * Mm);

    /// <summary>Gives every single piece to every valve in turn.</summary>
    private static class BruteForce
    {
        public static (int Left, int Bought, double Off, int Moved) Best(ShimProblem problem)
        {
            var pieces = problem.Valves.Select(v => v.Shim).Concat(problem.Stock.SelectMany(s => Enumerable.Repeat(s.Thickness, s.Count!.Value))).ToArray();
            return Ways(problem, pieces, 0, new bool[pieces.Length]).Min();
        }

        public static (int Left, int Bought, double Off, int Moved) Cost(ShimProblem problem, IReadOnlyList<ShimChosen> chosen) => chosen
            .Select(c => c.From == ShimFrom.None ? (1, 0, 0, 1) : (0, c.From == ShimFrom.Bought ? 1 : 0, Off(c.Valve, c.Shim), c.From == ShimFrom.Stays ? 0 : 1))
            .Aggregate((Left: 0, Bought: 0, Off: 0.0, Moved: 0), Add);

        private static IEnumerable<(int Left, int Bought, double Off, int Moved)> Ways(ShimProblem problem, double[] pieces, int at, bool[] gone)
        {
            if (at == problem.Valves.Count)
            {
                yield return (0, 0, 0, 0);
                yield break;
            }

            var valve = problem.Valves[at];
            for (var p = 0; p < pieces.Length; p++)
            {
                if (!gone[p] && valve.Takes(pieces[p]))
                {
                    gone[p] = true;
                    foreach (var rest in Ways(problem, pieces, at + 1, gone))
                    {
                        yield return Add(rest, (0, 0, Off(valve, pieces[p]), Math.Abs(pieces[p] - valve.Shim) < 1e-8 ? 0 : 1));
                    }

                    gone[p] = false;
                }
            }

            foreach (var rest in Ways(problem, pieces, at + 1, gone))
            {
                yield return Add(rest, (1, 0, 0, 1));
                for (var sold = problem.Sold is null ? double.NaN : problem.Sold.Thinnest; sold <= problem.Sold?.Thickest + 1e-9; sold += problem.Sold!.Step)
                {
                    if (valve.Takes(sold))
                    {
                        yield return Add(rest, (0, 1, Off(valve, sold), 1));
                    }
                }
            }
        }

        private static double Off(MeasuredLash valve, double shim) => Math.Round(Math.Abs(valve.With(shim) - valve.Wanted) * 1e7);

        private static (int Left, int Bought, double Off, int Moved) Add((int Left, int Bought, double Off, int Moved) a, (int Left, int Bought, double Off, int Moved) b) =>
            (a.Left + b.Left, a.Bought + b.Bought, a.Off + b.Off, a.Moved + b.Moved);
    }
}
