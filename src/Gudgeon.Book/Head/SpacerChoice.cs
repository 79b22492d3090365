using Google.OrTools.Sat;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Head;

/// <summary>A spacer, or two on each other, under the springs of one valve, and what they do.</summary>
/// <param name="Stack">Thicknesses, m; none for no spacer.</param>
/// <param name="State">The springs on it.</param>
/// <param name="Refused">Why it is refused; empty when it may be fitted.</param>
public sealed record SpacerOption(IReadOnlyList<double> Stack, SpringState State, string Refused)
{
    /// <summary>Thickness in all, m.</summary>
    public double Thickness => Stack.Sum();
}

/// <summary>The spacers of one valve: what may be fitted and what is chosen.</summary>
/// <param name="Valve">The valve, or the side when its valves are not told apart.</param>
/// <param name="Wanted">Seat load wanted, N.</param>
/// <param name="Options">Everything that the bench gives, thinnest first.</param>
/// <param name="Chosen">The one to fit; null when every one is refused or the bench has too few.</param>
public sealed record SpacerRow(string Valve, double Wanted, IReadOnlyList<SpacerOption> Options, SpacerOption? Chosen);

/// <summary>
/// Chooses a spacer for every valve from what lies on the bench, up to two on each other: seat loads nearest to what is
/// wanted, the sum over the valves, then fewest pieces. What leaves too little before coil bind, or loads cam and follower
/// too much, is refused.
/// </summary>
public static class SpacerChoice
{
    /// <summary>One newton off weighs as much as a thousand pieces more.</summary>
    private const long PerNewton = 1000;

    private const long PerValve = 1_000_000_000;

    /// <summary>A row for each valve whose seat load is wanted and known; none when the bench has no spacers.</summary>
    internal static IReadOnlyList<SpacerRow> Of(View view, IReadOnlyList<string> valves)
    {
        var bench = Assortment.Of(view, Stock.Spacers);
        if (bench.Count == 0)
        {
            return [];
        }

        var stacks = Stacks([.. bench.Select(b => b.Thickness)]);
        var rows = valves
            .Select(v => (Valve: v, Wanted: view.AmountIf(Spring.SeatLoadWanted, v) ?? view.AmountIf(Spring.SeatLoadMin, v)))
            .Where(v => v.Wanted is not null)
            .Select(v => new SpacerRow(v.Valve, v.Wanted!.Value, [.. stacks.Select(s => Option(view, v.Valve, s))], null))
            .Where(r => r.Options.Any(o => o.State.SeatLoad is not null))
            .ToList();
        return rows.Count == 0 ? [] : Choose(rows, bench, rows.ConvertAll(r => Instances.ValvesOf(view, r.Valve)));
    }

    /// <summary>No spacer, every single one, every two on each other; thinnest first.</summary>
    private static List<double[]> Stacks(double[] thicknesses) =>
    [
        .. thicknesses.SelectMany((a, i) => thicknesses.Skip(i).Select(b => new[] { a, b }).Prepend([a])).Prepend([]).OrderBy(s => s.Sum()),
    ];

    private static SpacerOption Option(View view, string valve, double[] stack)
    {
        var state = SpringState.Of(view, valve, stack.Sum());
        var least = view.Limit("coil-bind.min", Dimension.Length, "mm", 1.5e-3);
        var most = view.AmountIf(Spring.OpenLoadMax, valve);
        var refused = state switch
        {
            { CoilBindMargin: { } margin } when margin < least => $"leaves {Spring.InstalledHeight.Print(Math.Round(margin, 6))} before coil bind, wanted {Spring.InstalledHeight.Print(least)}",
            { OpenLoad: { } open } when open > most => $"{Spring.OpenLoadMax.Print(Math.Round(open))} at full lift, allowed {Spring.OpenLoadMax.Print(most.Value)}",
            { SeatLoad: null } or { OpenLoad: null } or { CoilBindMargin: null } => "loads or heights are not known there",
            _ => "",
        };
        return new SpacerOption(stack, state, refused);
    }

    private static List<SpacerRow> Choose(List<SpacerRow> rows, IReadOnlyList<StockItem> bench, List<int> valves)
    {
        var model = new CpModel();
        var offers = rows.ConvertAll(r => r.Options.Where(o => o.Refused.Length == 0).ToList());
        var taken = offers.ConvertAll(of => of.ConvertAll(_ => model.NewBoolVar("")));
        taken.ForEach(row => model.AddAtMostOne(row));
        var all = offers.SelectMany((of, r) => of.Select((o, i) => (Row: r, Option: o, Taken: taken[r][i]))).ToList();
        foreach (var item in bench.Where(b => b.Count is not null))
        {
            var uses = all.ConvertAll(a => (long)a.Option.Stack.Count(t => Assortment.Grains(t) == Assortment.Grains(item.Thickness)) * valves[a.Row]);
            model.Add(LinearExpr.WeightedSum(all.ConvertAll(a => a.Taken), uses) <= item.Count!.Value);
        }

        // A valve that gets something suitable outweighs how near the others come.
        long Worth(int row, SpacerOption o) => valves[row] * (PerValve - ((long)Math.Round(PerNewton * Math.Abs(o.State.SeatLoad!.Value - rows[row].Wanted)) * 10) - o.Stack.Count);
        model.Maximize(LinearExpr.WeightedSum(all.ConvertAll(a => a.Taken), all.ConvertAll(a => Worth(a.Row, a.Option))));
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1" };
        var status = solver.Solve(model);
        return status == CpSolverStatus.Optimal
            ? [.. rows.Select((r, i) => r with { Chosen = offers[i].Where((_, o) => solver.BooleanValue(taken[i][o])).FirstOrDefault() })]
            : throw new InvalidOperationException($"the choice of spacers ended {status}");
    }
}
