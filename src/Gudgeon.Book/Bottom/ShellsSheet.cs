using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Bottom;

/// <summary>The shells of one bearing.</summary>
/// <param name="Bearing">Its key.</param>
/// <param name="Housing">Housing bore, m; null when it is not known.</param>
/// <param name="Journal">Journal diameter, m.</param>
/// <param name="Least">Least clearance allowed, m.</param>
/// <param name="Greatest">Greatest clearance allowed, m.</param>
/// <param name="Wanted">Clearance wanted, m.</param>
/// <param name="Upper">Grade of the half in the housing; null where none was chosen.</param>
/// <param name="Lower">Grade of the half in the cap: the thicker one, where they differ.</param>
/// <param name="Clearance">Clearance that they give, m.</param>
/// <param name="Tightest">Least that the tolerance of the grades leaves, m.</param>
/// <param name="Loosest">Most that it leaves, m.</param>
/// <param name="Why">Why, in words.</param>
public sealed record ShellRow(string Bearing, double? Housing, double? Journal, double? Least, double? Greatest, double? Wanted, double? Upper, double? Lower, double? Clearance, double? Tightest, double? Loosest, string Why);

/// <summary>Halves to buy of one grade.</summary>
/// <param name="For">What they are for: "mains".</param>
/// <param name="Grade">Number of the grade.</param>
/// <param name="Halves">How many.</param>
public sealed record ShellOrder(string For, double Grade, int Halves);

/// <summary>The table of shells to work from.</summary>
/// <param name="Rows">One for each bearing, mains first.</param>
/// <param name="Bought">What to buy.</param>
/// <param name="Troubles">What is not known, or cannot be had: one sentence each.</param>
public sealed record ShellsSheet(IReadOnlyList<ShellRow> Rows, IReadOnlyList<ShellOrder> Bought, IReadOnlyList<string> Troubles)
{
    /// <summary>How it is done, in order.</summary>
    public static readonly IReadOnlyList<string> Steps =
    [
        "Clean housings and caps to bare metal; oil on the threads as the maker says, none behind the shells.",
        "Tighten the caps without shells to their full torque and read every bore; read every journal in two axes at both ends. Write it down before shells are ordered.",
        "Measure every half at the crown with a ball-anvil micrometer: a grade is a promise, the micrometer the fact.",
        "Fit the halves of this table, tongues in their notches, oil holes open; the thicker half in the cap where they differ.",
        "Tighten to full torque and measure the clearance again, with a bore gauge in the shells or a strip of gauging plastic; do not turn the crank on a strip.",
        "Oil shells and journals, tighten in stages, and turn the crank by hand after every cap: a cap that binds it is taken off again.",
    ];

    /// <summary>What it is worth minding.</summary>
    public const string Caution = "A crank is heavy and its webs pinch: two people, or a strap. A cap goes back where it came from and the same way round: it was bored there.";

    /// <summary>How many bearings are still without shells.</summary>
    public int Open => Rows.Count(r => r.Upper is null);

    /// <summary>The sheet of the values that hold.</summary>
    public static ShellsSheet Of(Snapshot now)
    {
        var view = new View(now);
        var keys = BearingFit.Keys(view).Where(k => k.Length > 0).ToList();
        List<ShellRow> rows = [];
        List<ShellOrder> bought = [];
        List<string> troubles = [];
        foreach (var (words, field, these) in new[] { ("mains", Stock.MainShells, keys.Where(k => !BearingFit.IsBigEnd(k))), ("big ends", Stock.BigEndShells, keys.Where(BearingFit.IsBigEnd)) })
        {
            Group(view, words, field, [.. these], rows, bought, troubles);
        }

        return new ShellsSheet(rows, bought, troubles);
    }

    private static void Group(View view, string words, Field field, IReadOnlyList<string> keys, List<ShellRow> rows, List<ShellOrder> bought, List<string> troubles)
    {
        var grades = ShellGrades.Of(view, field);
        if (keys.Count > 0 && grades.Count == 0)
        {
            troubles.Add($"No grades of shells are known for the {words}: wanted {field.Path}.");
        }

        var rooms = keys.ToDictionary(k => k, k => ShellGrades.Room(view, k, troubles), StringComparer.Ordinal);
        var chosen = grades.Count == 0 ? [] : ShellChoice.Best(new ShellProblem([.. rooms.Values.OfType<BearingRoom>()], grades));
        rows.AddRange(keys.Select(k => Row(view, k, rooms[k], chosen.FirstOrDefault(c => c.Bearing.Bearing == k), grades)));
        troubles.AddRange(chosen.Where(c => c.Thin is null).Select(c => ShellGrades.Unmet(view, c.Bearing, grades)));
        bought.AddRange(grades
            .Select(g => new ShellOrder(words, g.Number, chosen.Sum(c => (c.Thin == g ? 1 : 0) + (c.Thick == g ? 1 : 0)) - (g.Count ?? int.MaxValue)))
            .Where(o => o.Halves > 0));
    }

    private static ShellRow Row(View view, string key, BearingRoom? room, ShellsChosen? chosen, IReadOnlyList<ShellGrade> grades)
    {
        double? Known(Func<View, double> work) => view.Try(v => work(v) is var m && !double.IsNaN(m) ? m : (double?)null);
        var fits = chosen?.Thin is not null;
        return new ShellRow(
            key,
            Known(v => BearingFit.Housing(v, key)),
            Known(v => BearingFit.Journal(v, key)),
            view.AmountIf(Bearing.ClearanceMin, key),
            view.AmountIf(Bearing.ClearanceMax, key),
            room?.Wanted,
            chosen?.Thin?.Number,
            chosen?.Thick?.Number,
            fits ? chosen!.Clearance : null,
            fits ? chosen!.Tightest : null,
            fits ? chosen!.Loosest : null,
            room is null ? "not known yet" : grades.Count == 0 ? "no grades known" : !fits ? "no pair does" : Why(room, chosen!));
    }

    private static string Why(BearingRoom room, ShellsChosen chosen)
    {
        var edge = chosen.Tightest < room.Least - 1e-8 || chosen.Loosest > room.Greatest + 1e-8;
        var off = chosen.Clearance - room.Wanted;
        var where = Math.Abs(off) < 0.5e-6 ? "as wanted" : $"{Bearing.ClearanceMin.Print(Math.Abs(off))} {(off > 0 ? "more" : "less")} than wanted";
        return edge ? where + "; measure the halves: the grade's tolerance reaches past the limit" : where;
    }
}
