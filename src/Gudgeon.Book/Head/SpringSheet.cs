using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.ValveTrain;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Book.Head;

/// <summary>The springs of one valve as the book has them. SI; null where it is not known.</summary>
/// <param name="Valve">The valve, or the side when its valves are not told apart.</param>
/// <param name="Installed">Installed height without spacer, m.</param>
/// <param name="State">The springs as fitted.</param>
/// <param name="CoilBindMeasured">Room before coil bind as read on the head, m.</param>
/// <param name="GapWanted">What EN 13906-1 would leave between the coils at full lift, m, over all of them.</param>
/// <param name="Coils">How many coils stand in each other: 1 or 2.</param>
public sealed record SpringRow(string Valve, double? Installed, SpringState State, double? CoilBindMeasured, double? GapWanted, int Coils);

/// <summary>A spring off the bench for a valve.</summary>
/// <param name="Valve">The valve.</param>
/// <param name="Spring">The spring.</param>
/// <param name="SeatLoad">Load that it gives with the valve shut, N; null when the test height does not lead there.</param>
public sealed record SpringPlace(string Valve, TestedCoil Spring, double? SeatLoad);

/// <summary>Springs off the bench sorted for the valves.</summary>
/// <param name="Places">Which goes where.</param>
/// <param name="Spreads">Spread of each side's set, N.</param>
/// <param name="Left">What is left over.</param>
/// <param name="Sentence">What could not be done; empty when all valves have one.</param>
public sealed record SpringSorting(IReadOnlyList<SpringPlace> Places, IReadOnlyList<(string Side, double Spread)> Spreads, IReadOnlyList<TestedCoil> Left, string Sentence)
{
    /// <summary>What a spread is.</summary>
    public string SpreadWords => Places.Any(p => p.Spring.Open is not null) ? "from weakest to strongest, both heights added" : "from weakest to strongest";
}

/// <summary>Springs at their installed heights, spacers to fit, springs to sort.</summary>
/// <param name="Rows">One for each valve or side.</param>
/// <param name="Spacers">Spacers chosen from the bench; none when there are none on it.</param>
/// <param name="Sorting">Springs sorted from the bench; null when there are none on it.</param>
public sealed record SpringSheet(IReadOnlyList<SpringRow> Rows, IReadOnlyList<SpacerRow> Spacers, SpringSorting? Sorting)
{
    /// <summary>What stands beside the step.</summary>
    public static readonly IReadOnlyList<string> Remarks =
    [
        "A spacer under the spring adds its thickness times the rate at every lift, and takes its thickness from the coil-bind margin: with 2 mm, look at both (common practice, no source).",
        "New stem seals at every spring job, pushed home with the right tool, before the springs go on (common practice, no source).",
        "Measure every installed height with the spring's own retainer and collets: two valves of one head differ by tenths.",
    ];

    /// <summary>What can hurt.</summary>
    public static string Caution => new SeatLoadCheck().Caution;

    /// <summary>The sheet of the values that hold.</summary>
    public static SpringSheet Of(Snapshot now)
    {
        var view = new View(now);
        var keys = SpringHeights.Keys(now);
        return new SpringSheet([.. keys.Select(k => Row(view, k))], SpacerChoice.Of(view, keys), Sort(view));
    }

    private static SpringRow Row(View view, string key)
    {
        var spring = new FittedSpring(view, key);
        var outer = spring.Coils[0];
        return new SpringRow(
            key,
            view.AmountIf(Spring.InstalledHeight, key),
            SpringState.Of(view, key),
            view.AmountIf(Spring.CoilBindMeasured, key),
            Sketch.Known(() => view.Work(SpringGap.Least, outer.Wire, outer.MeanDiameter, outer.ActiveCoils, SpringDuty.Dynamic)),
            spring.Coils.Count);
    }

    private static SpringSorting? Sort(View view)
    {
        if (view.TableIf(Stock.Springs) is not { } table)
        {
            return null;
        }

        var open = table["openLoad"];
        var springs = table["load"].Select((load, i) => new TestedCoil(Number(table["number"][i]), load, open.Length == 0 ? null : open[i])).ToList();
        if (springs.GroupBy(s => s.Number).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new BadInputException($"{Stock.Springs.Path}: given the number {twice.Key} twice, wanted another number on every spring");
        }

        var sides = Instances.AllValves(view).GroupBy(v => v.Split('.')[0], StringComparer.Ordinal).ToList();
        var (sets, served, sentence) = Sets(springs, sides);
        var places = served.Zip(sets).SelectMany(p => Places(view, [.. p.First], p.Second)).ToList();
        return new SpringSorting(places, [.. served.Zip(sets, (side, set) => (side.Key, set.Spread))], [.. springs.Where(s => places.TrueForAll(p => p.Spring != s)).OrderBy(s => s.Number)], sentence);
    }

    /// <summary>Sets for both sides where there are enough springs, else for the larger side that can be served.</summary>
    private static (IReadOnlyList<SpringSet> Sets, IReadOnlyList<IGrouping<string, string>> Served, string Sentence) Sets(List<TestedCoil> springs, List<IGrouping<string, string>> sides)
    {
        if (SpringSets.Best(springs, [.. sides.Select(s => s.Count())]) is { } all)
        {
            return (all, sides, "");
        }

        var wanted = sides.Sum(s => s.Count());
        var side = sides.Where(s => s.Count() <= springs.Count).OrderByDescending(s => s.Count()).FirstOrDefault();
        return side is null
            ? ([], [], $"{springs.Count} springs are on the bench; a side needs {sides.Min(s => s.Count())}.")
            : (SpringSets.Best(springs, [side.Count()])!, [side], $"{springs.Count} springs are on the bench and both sides need {wanted}: sorted for the {side.Key} side alone.");
    }

    /// <summary>The strongest spring goes where it stands tallest, so that the seat loads come together.</summary>
    private static IEnumerable<SpringPlace> Places(View view, IReadOnlyList<string> valves, SpringSet set)
    {
        var tested = view.AmountIf(Stock.SpringTestHeight);
        double Shut(string valve) => (view.AmountIf(Spring.InstalledHeight, valve) ?? double.NaN) - view.AmountOr(Spring.Spacer, 0, valve);
        return valves.OrderByDescending(Shut).Zip(set.Springs, (valve, spring) => new SpringPlace(
            valve,
            spring,
            Sketch.Known(() => spring.Load + (new FittedSpring(view, valve).Coils[0].RateShut() * ((tested ?? double.NaN) - Shut(valve)))))).OrderBy(p => p.Valve, IndexOrder.Instance);
    }

    private static int Number(double number) => number == Math.Floor(number) && number is > 0 and < 1e9
        ? (int)number
        : throw new BadInputException($"{Stock.Springs.Path}: given the number {Figures.Number(number)}, wanted a whole number above nought");
}
