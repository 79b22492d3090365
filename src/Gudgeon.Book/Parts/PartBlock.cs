using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Parts;

/// <summary>A part that is not here and for which a card before the first start waits.</summary>
/// <param name="Part">The part.</param>
/// <param name="Card">Title of the card.</param>
/// <param name="WantedOn">Day on which the card can start if every part is here.</param>
/// <param name="Here">First day on which the part can be here; null when nobody can say.</param>
/// <param name="Delay">By how much it alone puts off the first start, days.</param>
public sealed record PartBlock(NeededPart Part, string Card, DateOnly WantedOn, DateOnly? Here, double Delay)
{
    /// <summary>What it does to the first start, in a sentence.</summary>
    public string Words => Here is { } here
        ? $"{Part.Name} ({Part.State}): here on {Days.Written(here)}{(Part.Due is null ? " if it is ordered today" : "")}, {Card} could start on {Days.Written(WantedOn)}: {(Delay > 0 ? $"puts off the first start by {Figures.Number(Delay, 3)} d" : "does not put off the first start")}."
        : $"{Part.Name} ({Part.State}): nobody knows when it comes, {Card} could start on {Days.Written(WantedOn)}; counted as here.";

    /// <summary>
    /// Parts that are not here, those that put off the first start most at the top. The start of a card may move by its slack
    /// before the end moves, so that a part alone puts off the end by what is left of its lateness.
    /// </summary>
    /// <param name="parts">Parts that are needed or ordered.</param>
    /// <param name="path">The way to the first start if every part were here.</param>
    /// <param name="today">The day on which it is asked.</param>
    public static IReadOnlyList<PartBlock> All(IReadOnlyList<NeededPart> parts, CriticalPath path, DateOnly today) =>
        path.Cards.All(c => c.Card.Card.Id != CriticalPath.FirstStart)
            ? []
            : [.. path.Cards.SelectMany(c => parts.Where(p => p.Card == c.Card.Card.Id), (c, p) => Of(p, c, path, today)).OrderByDescending(b => b.Delay).ThenBy(b => b.Here ?? DateOnly.MaxValue)];

    private static PartBlock Of(NeededPart part, PathCard card, CriticalPath path, DateOnly today)
    {
        var here = part.Here(today);
        var late = here is { } day ? day.DayNumber - path.Begin.DayNumber - card.Start - card.Slack : 0;
        return new PartBlock(part, card.Card.Card.Title, path.Morning(card.Start), here, Math.Max(0, late));
    }
}
