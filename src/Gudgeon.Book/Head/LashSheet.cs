using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Head;

/// <summary>What is done at one valve.</summary>
/// <param name="Valve">Key of the valve: "inlet.1.2".</param>
/// <param name="Lash">Lash measured, m; null when it was not.</param>
/// <param name="Least">Least lash allowed, m; null when the book does not say.</param>
/// <param name="Greatest">Greatest lash allowed, m.</param>
/// <param name="Wanted">Lash wanted, m.</param>
/// <param name="ShimIn">Shim fitted now, m.</param>
/// <param name="Shim">Shim to fit, m; null where none was found or nothing was planned.</param>
/// <param name="After">Lash that it gives, m.</param>
/// <param name="From">Where the shim comes from; null where nothing was planned.</param>
/// <param name="Action">What to do: "stays", "fit the one out of inlet.2.1", "fit from the bench", "buy".</param>
/// <param name="OldShim">Where the shim that comes out goes; empty when none comes out.</param>
/// <param name="Why">Why, in words.</param>
public sealed record LashRow(
    string Valve,
    double? Lash,
    double? Least,
    double? Greatest,
    double? Wanted,
    double? ShimIn,
    double? Shim,
    double? After,
    ShimFrom? From,
    string Action,
    string OldShim,
    string Why);

/// <summary>The table to work from at the head: lash measured, shims to fit, where they come from and what they give.</summary>
/// <param name="Rows">One for each valve, inlet valves first.</param>
/// <param name="Bought">Thicknesses to buy, m, thinnest first; one for each shim.</param>
/// <param name="Troubles">What is not known, or cannot be had: one sentence each.</param>
public sealed record LashSheet(IReadOnlyList<LashRow> Rows, IReadOnlyList<double> Bought, IReadOnlyList<string> Troubles)
{
    /// <summary>How it is done, in order.</summary>
    public static readonly IReadOnlyList<string> Steps =
    [
        "Engine cold, overnight: lash is asked for at 20 °C.",
        "Turn the engine until the lobe points away from the follower; feel the lash with two gauges, one that goes and one that does not. Write every valve down before a shim is moved.",
        "Measure every shim that comes out with a micrometer: the mark wears off, and so does the shim.",
        "Fit the shims of this table, marked side down, oiled.",
        "Turn the engine twice by hand, slowly; stop if it binds.",
        "Measure every valve again and write it down: that reading, not this table, is the lash.",
    ];

    /// <summary>What it is worth minding.</summary>
    public const string Caution = "Plugs out and ignition off while the engine is turned by hand. A valve without lash is held open when hot and burns; cam bearing caps are slackened evenly, a turn at a time, for the springs push the cam up.";

    /// <summary>How many valves are still without a shim that does.</summary>
    public int Open => Rows.Count(r => r.From is null or ShimFrom.None);

    /// <summary>The sheet of the values that hold.</summary>
    public static LashSheet Of(Snapshot now)
    {
        var view = new View(now);
        var all = Instances.AllValves(view).ToList();
        var measured = all.ToDictionary(v => v, v => Measured(view, v), StringComparer.Ordinal);
        var troubles = new List<string>();
        if (Lacking(view, all) is { Length: > 0 } lacking)
        {
            troubles.Add(lacking);
        }

        var chosen = ShimChoice.Best(new ShimProblem([.. measured.Values.OfType<MeasuredLash>()], Assortment.Of(view, Stock.Shims), Sold(view)));
        troubles.AddRange(chosen.Where(c => c.From == ShimFrom.None).Select(c => Unmet(c.Valve)));
        var goes = chosen.Where(c => c.From == ShimFrom.Valve).ToDictionary(c => c.Other, c => c.Valve.Valve, StringComparer.Ordinal);
        var rows = all.ConvertAll(v => chosen.FirstOrDefault(c => c.Valve.Valve == v) is { } c ? Planned(c, goes) : Unplanned(view, v));
        return new LashSheet(rows, [.. chosen.Where(c => c.From == ShimFrom.Bought).Select(c => c.Shim).Order()], troubles);
    }

    private static MeasuredLash? Measured(View view, string valve)
    {
        var (lash, shim, least, greatest) = (view.AmountIf(Valve.Lash, valve), view.AmountIf(Valve.Shim, valve), view.AmountIf(Valve.LashMin, valve), view.AmountIf(Valve.LashMax, valve));
        return (lash, shim, least, greatest) is ({ } c, { } t, { } low, { } high) && Ordered(valve, low, high)
            ? new MeasuredLash(valve, c, t, low, high, view.AmountOr(Valve.LashWanted, (low + high) / 2, valve))
            : null;
    }

    /// <exception cref="BadInputException">The least lash is not below the greatest.</exception>
    private static bool Ordered(string valve, double least, double greatest) => least < greatest
        ? true
        : throw new BadInputException($"{Valve.LashMin.At(valve)}: given {Valve.LashMin.Print(least)}, wanted less than the greatest lash, {Valve.LashMax.Print(greatest)}");

    /// <exception cref="BadInputException">A series that has no end, or ends before it begins.</exception>
    private static ShimSeries? Sold(View view)
    {
        if (view.AmountIf(Stock.ShimStep) is not { } step)
        {
            return null;
        }

        var (thin, thick) = (view.AmountIf(Stock.ShimThinnest), view.AmountIf(Stock.ShimThickest));
        return (thin, thick) is ({ } from, { } to) && from <= to
            ? new ShimSeries(step, from, to)
            : throw new BadInputException($"{Stock.ShimStep.Path}: shims are sold in steps of {Stock.ShimStep.Print(step)}, but not from and to what thickness; wanted {Stock.ShimThinnest.Path} and {Stock.ShimThickest.Path}, the thinner first");
    }

    /// <summary>The valves that cannot be planned, and what is wanted of them, in one sentence; empty when there are none.</summary>
    private static string Lacking(View view, List<string> all)
    {
        Field[] wanted = [Valve.Lash, Valve.Shim, Valve.LashMin, Valve.LashMax];
        var lacking = all.Select(v => (Valve: v, Fields: string.Join(", ", wanted.Where(f => !view.Knows(f, v)).Select(f => f.Name)))).Where(v => v.Fields.Length > 0).ToList();
        return lacking.Count == 0
            ? ""
            : $"not planned: {string.Join("; ", lacking.GroupBy(v => v.Fields, StringComparer.Ordinal).Select(g => $"{string.Join(", ", g.Select(v => v.Valve))} ({g.Key} not known)"))}. The shims in there stay where they are.";
    }

    private static string Unmet(MeasuredLash v) =>
        $"{v.Valve}: no shim from {Valve.Shim.Print(v.Lash + v.Shim - v.Greatest)} to {Valve.Shim.Print(v.Lash + v.Shim - v.Least)} is at hand or sold; as it is, its lash is {Valve.Lash.Print(v.Lash)}.";

    private static LashRow Planned(ShimChosen chosen, Dictionary<string, string> goes)
    {
        var v = chosen.Valve;
        var moves = chosen.From is not (ShimFrom.Stays or ShimFrom.None);
        double? shim = chosen.From == ShimFrom.None ? null : chosen.Shim;
        return new LashRow(
            v.Valve,
            v.Lash,
            v.Least,
            v.Greatest,
            v.Wanted,
            v.Shim,
            shim,
            shim is { } t ? v.With(t) : null,
            chosen.From,
            chosen.From switch
            {
                ShimFrom.Stays => "stays",
                ShimFrom.Valve => $"fit the one out of {chosen.Other}",
                ShimFrom.Bench => "fit one from the bench",
                ShimFrom.Bought => "buy and fit",
                _ => "find a shim",
            },
            moves ? (goes.TryGetValue(v.Valve, out var to) ? $"to {to}" : "to the bench") : "",
            Why(v, chosen));
    }

    private static string Why(MeasuredLash v, ShimChosen chosen)
    {
        var was = v.Takes(v.Shim) ? "in range" : v.Lash < v.Least ? "too tight" : "too loose";
        return chosen.From switch
        {
            ShimFrom.Stays => v.Off(v.Shim) == 0 ? "as wanted" : "in range, and nothing nearer is left for it",
            ShimFrom.None => $"{was}, and no shim that would do is left",
            ShimFrom.Bought => $"{was}, and none at hand is left that would do",
            _ when !v.Takes(v.Shim) => was,
            _ => v.Off(chosen.Shim) < v.Off(v.Shim) ? "in range, and nearer with this one" : "in range with either; its own does more good elsewhere",
        };
    }

    private static LashRow Unplanned(View view, string valve) => new(
        valve,
        view.AmountIf(Valve.Lash, valve),
        view.AmountIf(Valve.LashMin, valve),
        view.AmountIf(Valve.LashMax, valve),
        view.AmountIf(Valve.LashWanted, valve),
        view.AmountIf(Valve.Shim, valve),
        null,
        null,
        null,
        "measure it",
        "",
        "not known yet");
}
