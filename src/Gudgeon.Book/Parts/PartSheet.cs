using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Parts;

/// <summary>Parts of the build: what they cost and weigh, what to order, what puts off the first start. SI.</summary>
/// <param name="Today">The day on which it is asked.</param>
/// <param name="FirstStart">The first start at the earliest.</param>
/// <param name="Lines">One for each part.</param>
/// <param name="Orders">What is to be ordered, by supplier.</param>
/// <param name="Blocks">Parts that are not here and that a card before the first start waits for.</param>
/// <param name="Budget">Budget, in the shop's money; null when none is set.</param>
/// <param name="TargetMass">Target for the mass of all parts, kg; null when none is set.</param>
public sealed record PartSheet(DateOnly Today, DateOnly FirstStart, IReadOnlyList<PartLine> Lines, IReadOnlyList<SupplierOrders> Orders, IReadOnlyList<PartBlock> Blocks, double? Budget, double? TargetMass)
{
    /// <summary>What the sheet leaves out.</summary>
    public const string Remark = "Money is the shop's own. Bolts of the joints are not in it; they have a list of their own (Joints, Bolt list; gudgeon joints list). A day to order by is the day on which the card can start if every part is here, less the lead time.";

    /// <summary>Money for parts that are ordered, here or fitted.</summary>
    public double Spent => Cost(l => l.Spent);

    /// <summary>Money for parts that are scrapped.</summary>
    public double OnScrap => Cost(l => l.Scrapped);

    /// <summary>Money for parts that are needed, or of which the book does not say how far they have come.</summary>
    public double ToSpend => Cost(l => !l.Spent && !l.Scrapped);

    /// <summary>Money for all parts.</summary>
    public double Total => Cost(_ => true);

    /// <summary>Mass of all parts that are not scrapped, kg; what is not weighed left out.</summary>
    public double Mass => Kept.Sum(l => l.MassAll ?? 0);

    /// <summary>Mass that they save over what they replace, kg.</summary>
    public double MassSaved => Kept.Sum(l => l.MassSaved ?? 0);

    /// <summary>What they cost, against the budget.</summary>
    public string BudgetWords => $"{Money.Written(Spent)} spent, {Money.Written(ToSpend)} still to spend{(OnScrap > 0 ? $", {Money.Written(OnScrap)} on scrapped parts" : "")}: {Money.Written(Total)} in all, {Held(Budget, Total, Target.Budget, "budget", Money.Written)}.{Named("Without a price", Lines.Where(l => l.Source == Part.Bought && l.Price is null))}";

    /// <summary>What needs a word: late deliveries, scrapped parts without another, parts without a state.</summary>
    public IEnumerable<string> Remarks =>
    [
        .. Lines.Where(l => l.State == Part.Ordered && l.Due < Today).Select(l => $"{l.Name} was promised for {Days.Written(l.Due!.Value)} and is not here: ask {(l.Supplier.Length > 0 ? l.Supplier : "whoever sends it")}."),
        .. Lines.Where(l => l.Scrapped && !Kept.Any(l.IsLike)).Select(l => $"{l.Name} is scrapped, and there is no other in its place."),
        .. Lines.Where(l => l.State.Length == 0).Select(l => $"{l.Name}: the book does not say how far it has come ({Part.State.At(l.Key)})."),
    ];

    private IEnumerable<PartLine> Kept => Lines.Where(l => !l.Scrapped);

    /// <summary>What they weigh, against the target.</summary>
    /// <param name="imperial">Whether in inch units.</param>
    public string MassWords(bool imperial) => string.Concat(
        $"{Target.Mass.Print(Mass, imperial)} together, {Held(TargetMass, Mass, Target.Mass, "target", m => Target.Mass.Print(m, imperial))}; ",
        $"{Part.Mass.Print(Math.Abs(MassSaved), imperial)} {(MassSaved < 0 ? "heavier" : "lighter")} than what they replace.",
        Named("Not weighed", Kept.Where(l => l.Mass is null)));

    /// <summary>The sheet of a book.</summary>
    /// <param name="book">The build.</param>
    /// <param name="now">The values that hold.</param>
    /// <param name="today">The day on which it is asked.</param>
    /// <exception cref="BadInputException">Job cards that wait for each other.</exception>
    public static PartSheet Of(BuildBook book, Snapshot now, DateOnly today)
    {
        var view = new View(now);
        var path = CriticalPath.WithoutParts(book, now, today);
        var lines = PartLine.All(view);
        return new PartSheet(
            today,
            CriticalPath.Of(book, now, today).End,
            lines,
            PartOrder.All(lines, path, today),
            PartBlock.All(NeededPart.All(view), path, today),
            view.AmountIf(Target.Budget),
            view.AmountIf(Target.Mass));
    }

    private static string Held(double? limit, double value, Field field, string word, Func<double, string> print) => limit switch
    {
        null => $"no {word} is set ({field.Path})",
        { } most when value > most => $"{print(value - most)} over the {word} of {print(most)}",
        { } most => $"{print(most - value)} under the {word} of {print(most)}",
    };

    private static string Named(string what, IEnumerable<PartLine> lines) => lines.Select(l => l.Name).ToList() is { Count: > 0 } names ? $" {what}: {string.Join(", ", names)}." : "";

    private double Cost(Func<PartLine, bool> which) => Lines.Where(which).Sum(l => l.Cost ?? 0);
}
