using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>A card on the way to the first start. Days count from the beginning of the path.</summary>
/// <param name="Card">The card.</param>
/// <param name="Start">Earliest start, days.</param>
/// <param name="Finish">Earliest finish, days.</param>
/// <param name="Slack">By how much it may be late without moving the end, days.</param>
/// <param name="Part">The part that it waits for longest, when that sets its start; null otherwise.</param>
public sealed record PathCard(CardState Card, double Start, double Finish, double Slack, NeededPart? Part)
{
    /// <summary>Whether any delay of it moves the end.</summary>
    public bool Critical => Slack < 1e-6;
}

/// <summary>
/// The longest way to the first start through the cards that are not signed and the parts that are not here (critical path
/// method; Kelley and Walker, 1959): as many hands as there are cards that can be worked at once.
/// </summary>
/// <param name="Begin">Day from which it counts.</param>
/// <param name="Cards">Cards to be done, in the order of their starts.</param>
/// <param name="Undated">Parts without a day, which are counted as here.</param>
public sealed record CriticalPath(DateOnly Begin, IReadOnlyList<PathCard> Cards, IReadOnlyList<NeededPart> Undated)
{
    /// <summary>The card at whose end the engine runs for the first time.</summary>
    public const string FirstStart = "first-start";

    // What is left of a day of eight hours after telephone, sweeping and waiting: common practice, no source.
    private const double Day = 4 * 3600;

    /// <summary>The last finish, days; 0 when nothing is left to do.</summary>
    public double Length => Cards.Count == 0 ? 0 : Cards.Max(c => c.Finish);

    /// <summary>The day of the last finish.</summary>
    public DateOnly End => On(Length);

    /// <summary>What it comes to, in a sentence.</summary>
    public string Words => Cards.Count == 0
        ? "Every card to the first start is signed."
        : $"First start on {Days.Written(End)} at the earliest, from {Days.Written(Begin)}; {Figures.Number(Work / 3600, 3)} h of work are left. What may not be late: {string.Join(", ", Cards.Where(c => c.Critical).Select(c => c.Card.Card.Title))}.";

    /// <summary>The day on which a time of the path falls.</summary>
    /// <param name="days">Days from its beginning; a whole day ends on its own evening.</param>
    public DateOnly On(double days) => Begin.AddDays((int)Math.Floor(Math.Max(0, days - 1e-9)));

    /// <summary>Work that is left, were one person to do it all, s.</summary>
    public double Work => Cards.Sum(c => c.Card.Card.Hours);

    /// <summary>The way of a book.</summary>
    /// <param name="book">The build.</param>
    /// <param name="now">The values that hold.</param>
    /// <param name="today">The day on which it is asked.</param>
    public static CriticalPath Of(BuildBook book, Snapshot now, DateOnly today) => Of(book, new View(now), today, NeededPart.All(new View(now)));

    /// <summary>The same if every part were here.</summary>
    public static CriticalPath WithoutParts(BuildBook book, Snapshot now, DateOnly today) => Of(book, new View(now), today, []);

    /// <summary>The day on which a part must be here for work that starts at a time of the path.</summary>
    /// <param name="days">Days from its beginning.</param>
    public DateOnly Morning(double days) => Begin.AddDays((int)Math.Floor(days + 1e-9));

    private static CriticalPath Of(BuildBook book, View view, DateOnly today, IReadOnlyList<NeededPart> needed)
    {
        var begin = view.DateIf(Shop.Begin) is { } set && set > today ? set : today;
        var open = Wanted([.. CardStates.Of(book, view.Snapshot).Where(c => c.Standing is not (Standing.Signed or Standing.LeftOut))]);
        var hours = view.AmountOr(Shop.HoursPerDay, Day);
        var parts = needed.Where(p => open.Exists(c => c.Card.Id == p.Card)).ToList();
        return new CriticalPath(begin, Walk(open, parts, begin, today, hours), [.. parts.Where(p => p.Here(today) is null)]);
    }

    /// <summary>The first start and all that comes before it; every card when the book has no first start.</summary>
    private static List<CardState> Wanted(List<CardState> open)
    {
        if (open.Find(c => c.Card.Id == FirstStart) is not { } last)
        {
            return open;
        }

        var wanted = new HashSet<string>([last.Card.Id], StringComparer.Ordinal);
        var queue = new Queue<CardState>([last]);
        while (queue.TryDequeue(out var card))
        {
            foreach (var before in open.Where(c => card.Card.After.Contains(c.Card.Id) && wanted.Add(c.Card.Id)))
            {
                queue.Enqueue(before);
            }
        }

        return [.. open.Where(c => wanted.Contains(c.Card.Id))];
    }

    private static List<PathCard> Walk(List<CardState> open, List<NeededPart> parts, DateOnly begin, DateOnly today, double hours)
    {
        var order = CardOrder.Of(open, c => c.Card);
        var finish = new Dictionary<string, double>(StringComparer.Ordinal);
        var walked = new List<PathCard>();
        foreach (var card in order)
        {
            var ready = card.Card.After.Where(finish.ContainsKey).Select(a => finish[a]).DefaultIfEmpty(0).Max();
            var part = parts.Where(p => p.Card == card.Card.Id && p.Here(today) is not null).MaxBy(p => p.Here(today));
            var here = part?.Here(today) is { } due ? Math.Max(0, due.DayNumber - begin.DayNumber) : 0;
            var start = Math.Max(ready, here);
            finish[card.Card.Id] = start + (card.Card.Hours / hours);
            walked.Add(new PathCard(card, start, finish[card.Card.Id], 0, here > ready ? part : null));
        }

        var end = finish.Values.DefaultIfEmpty(0).Max();
        var latest = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var card in walked.AsEnumerable().Reverse())
        {
            var after = walked.Where(c => c.Card.Card.After.Contains(card.Card.Card.Id)).Select(c => latest[c.Card.Card.Id] - (c.Card.Card.Hours / hours));
            latest[card.Card.Card.Id] = after.DefaultIfEmpty(end).Min();
        }

        return [.. walked.Select(c => c with { Slack = latest[c.Card.Card.Id] - c.Finish }).OrderBy(c => c.Start).ThenBy(c => c.Finish)];
    }
}
