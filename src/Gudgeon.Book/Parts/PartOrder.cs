using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Parts;

/// <summary>A part to be ordered.</summary>
/// <param name="Part">The part.</param>
/// <param name="WantedOn">Day on which its card can start if every part is here; null when no open card waits for it.</param>
/// <param name="By">Last day to order it for that; null when the day or its lead time is not known.</param>
/// <param name="LateDays">Days by which that day is past; 0 when it is not.</param>
public sealed record PartOrder(PartLine Part, DateOnly? WantedOn, DateOnly? By, int LateDays)
{
    /// <summary>"order by 2026-12-04", "order now: 3 d late", or why there is no such day.</summary>
    public string Words => (By, WantedOn) switch
    {
        ({ } by, _) when LateDays > 0 => $"order now: {LateDays} d late, was to be ordered by {Days.Written(by)}",
        ({ } by, _) => $"order by {Days.Written(by)}",
        (null, null) => "no job card before the first start waits for it",
        _ => "lead time not known",
    };

    /// <summary>Parts that are needed, soonest first, those of one supplier together.</summary>
    /// <param name="lines">All parts.</param>
    /// <param name="path">The way to the first start if every part were here.</param>
    /// <param name="today">The day on which it is asked.</param>
    public static IReadOnlyList<SupplierOrders> All(IEnumerable<PartLine> lines, CriticalPath path, DateOnly today) =>
    [
        .. lines.Where(l => l.State == Fields.Part.Needed)
            .Select(l => Of(l, path, today))
            .OrderBy(o => o.By ?? DateOnly.MaxValue).ThenBy(o => o.Part.Key, StringComparer.Ordinal)
            .GroupBy(o => o.Part.Supplier, (supplier, orders) => new SupplierOrders(supplier, [.. orders])),
    ];

    private static PartOrder Of(PartLine part, CriticalPath path, DateOnly today)
    {
        DateOnly? wanted = path.Cards.FirstOrDefault(c => c.Card.Card.Id == part.Card) is { } card ? path.Morning(card.Start) : null;
        DateOnly? by = wanted is { } day && part.LeadTime is { } lead ? day.AddDays(-Days.Whole(lead)) : null;
        return new PartOrder(part, wanted, by, by is { } last ? Math.Max(0, today.DayNumber - last.DayNumber) : 0);
    }
}

/// <summary>What is to be ordered from one supplier.</summary>
/// <param name="Supplier">From whom; empty when nobody said.</param>
/// <param name="Orders">The parts, soonest first.</param>
public sealed record SupplierOrders(string Supplier, IReadOnlyList<PartOrder> Orders)
{
    /// <summary>The supplier, for people.</summary>
    public string Words => Supplier.Length > 0 ? Supplier : "no supplier said";

    /// <summary>Price of all, in the shop's money; what is not known left out.</summary>
    public double Cost => Orders.Sum(o => o.Part.Cost ?? 0);
}
