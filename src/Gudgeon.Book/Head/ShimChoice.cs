using Google.OrTools.Sat;

namespace Gudgeon.Book.Head;

/// <summary>
/// Chooses a shim for every valve, exactly: fewest valves left out of their range, then fewest shims bought, then lashes
/// nearest to what is wanted (the sum over the valves), then fewest shims moved. A shim goes to one valve only.
/// </summary>
/// <remarks>
/// Shims of one thickness are one choice with a number of pieces. A valve is offered its own shim and as many of the nearest
/// thicknesses as there are valves: of so many, one is always left for it, so a farther one is never in the best plan. Of
/// those that are sold it is offered the nearest. That keeps the model at a few hundred yes-or-no choices.
/// </remarks>
public static class ShimChoice
{
    /// <summary>The best plan; the same for the same problem.</summary>
    public static IReadOnlyList<ShimChosen> Best(ShimProblem problem)
    {
        if (problem.Valves.Count == 0)
        {
            return [];
        }

        var pieces = Pieces(problem);
        var model = new CpModel();
        var offers = problem.Valves.Select(v => Offers(v, problem, pieces)).ToList();
        var taken = offers.ConvertAll(of => of.ConvertAll(_ => model.NewBoolVar("")));
        foreach (var row in taken)
        {
            model.AddExactlyOne(row);
        }

        foreach (var (thickness, count) in pieces)
        {
            var users = Pick(offers, taken, o => o.Bought is false && o.Grains == thickness);
            if (users.Count > count)
            {
                model.Add(LinearExpr.Sum(users) <= count);
            }
        }

        model.Minimize(Cost(offers, taken));

        // One worker: two are slower on so small a model, and one gives the same plan every time.
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1 cp_model_probing_level:0 symmetry_level:0" };
        var status = solver.Solve(model);
        if (status != CpSolverStatus.Optimal)
        {
            throw new InvalidOperationException($"the choice of shims ended {status}");
        }

        return Hand(problem, [.. offers.Zip(taken, (of, row) => of[row.FindIndex(solver.BooleanValue)])]);
    }

    /// <summary>How many pieces there are of each thickness, fitted ones counted; no more than anybody could use.</summary>
    private static Dictionary<long, int> Pieces(ShimProblem problem)
    {
        var pieces = new Dictionary<long, int>();
        void Put(double thickness, int count) => pieces[Assortment.Grains(thickness)] = pieces.GetValueOrDefault(Assortment.Grains(thickness)) + count;
        foreach (var valve in problem.Valves)
        {
            Put(valve.Shim, 1);
        }

        foreach (var item in problem.Stock)
        {
            Put(item.Thickness, Math.Min(item.Count ?? int.MaxValue, problem.Valves.Count));
        }

        return pieces;
    }

    private static List<Offer> Offers(MeasuredLash valve, ShimProblem problem, Dictionary<long, int> pieces)
    {
        var own = Assortment.Grains(valve.Shim);
        var near = pieces.Keys.Select(g => new Offer(g, Bought: false, valve.Off(g * Assortment.Grain), g == own))
            .Where(o => valve.Takes(o.Thickness))
            .OrderBy(o => o.Off).ThenByDescending(o => o.Own).ThenBy(o => o.Grains)
            .ToList();
        var offers = near.Take(problem.Valves.Count).Union(near.Where(o => o.Own)).ToList();
        if (problem.Sold?.For(valve) is { } sold)
        {
            offers.Add(new Offer(Assortment.Grains(sold), Bought: true, valve.Off(sold), Own: false));
        }

        offers.Add(Offer.Nothing);
        return offers;
    }

    /// <summary>The four aims in one sum, each weighing more than all that come after it together.</summary>
    private static LinearExpr Cost(List<List<Offer>> offers, List<List<BoolVar>> taken)
    {
        var moving = (long)offers.Count + 1;
        var farthest = offers.SelectMany(o => o).Max(o => o.Off);
        var buying = moving * ((farthest * offers.Count) + 1);
        var leaving = buying * (offers.Count + 1);
        long Weight(Offer o) => o.IsNothing ? leaving : (o.Bought ? buying : 0) + (moving * o.Off) + (o.Own ? 0 : 1);
        return LinearExpr.WeightedSum(taken.SelectMany(t => t), offers.SelectMany(o => o).Select(Weight));
    }

    private static List<BoolVar> Pick(List<List<Offer>> offers, List<List<BoolVar>> taken, Func<Offer, bool> which) =>
        [.. offers.SelectMany((of, v) => of.Select((o, i) => (Offer: o, Taken: taken[v][i]))).Where(p => which(p.Offer)).Select(p => p.Taken)];

    /// <summary>Says which piece each valve gets: its own where it keeps its thickness, else one out of another valve, else off the bench.</summary>
    private static List<ShimChosen> Hand(ShimProblem problem, List<Offer> chosen)
    {
        var free = new Dictionary<long, Queue<string>>();
        foreach (var (valve, offer) in problem.Valves.Zip(chosen).Where(p => !p.Second.Own))
        {
            var grains = Assortment.Grains(valve.Shim);
            (free.TryGetValue(grains, out var queue) ? queue : free[grains] = new Queue<string>()).Enqueue(valve.Valve);
        }

        return [.. problem.Valves.Zip(chosen, (valve, offer) => offer switch
        {
            { IsNothing: true } => new ShimChosen(valve, double.NaN, ShimFrom.None),
            { Own: true } => new ShimChosen(valve, valve.Shim, ShimFrom.Stays),
            { Bought: true } => new ShimChosen(valve, offer.Thickness, ShimFrom.Bought),
            _ when free.TryGetValue(offer.Grains, out var others) && others.TryDequeue(out var other) => new ShimChosen(valve, offer.Thickness, ShimFrom.Valve, other),
            _ => new ShimChosen(valve, offer.Thickness, ShimFrom.Bench),
        })];
    }

    /// <summary>A thickness that a valve can be given.</summary>
    private sealed record Offer(long Grains, bool Bought, long Off, bool Own)
    {
        public static readonly Offer Nothing = new(-1, Bought: false, 0, Own: false);

        public bool IsNothing => Grains < 0;

        public double Thickness => Grains * Assortment.Grain;
    }
}
