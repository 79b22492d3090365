using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>A part that is not here yet.</summary>
/// <param name="Key">Its name in the book.</param>
/// <param name="Name">What it is.</param>
/// <param name="State">How far it has come; empty when the book does not say.</param>
/// <param name="Card">Id of the card that waits for it; empty when none does.</param>
/// <param name="Due">When it is promised; null when nobody said.</param>
/// <param name="LeadTime">Time from order to delivery, s; null when it is not known.</param>
public sealed record NeededPart(string Key, string Name, string State, string Card, DateOnly? Due, double? LeadTime = null)
{
    /// <summary>"part forged pistons (ordered, promised for 2026-12-12)".</summary>
    public string Words => $"part {Name} ({State}, {(Due is { } due ? $"promised for {Days.Written(due)}" : Unordered is { } lead ? $"{Figures.Number(lead / 86400, 3)} d from the order" : "no day promised")})";

    private double? Unordered => State == Part.Needed ? LeadTime : null;

    /// <summary>The first day on which it can be here: as promised, or its lead time from today where it is still to be ordered. Null when nobody can say.</summary>
    public DateOnly? Here(DateOnly today) => Due ?? (Unordered is { } lead ? today.AddDays(Days.Whole(lead)) : null);

    /// <summary>Keys of the parts in the book; groups of others left out.</summary>
    public static IReadOnlyList<string> Keys(View view) => [.. Instances.Named(view, Part.State.Subject).Where(k => k.Length > 0)];

    /// <summary>The day on which a part is promised, or its lead time after the day of its order; null when nobody said. The day of an order that was taken back does not count.</summary>
    public static DateOnly? Promised(View view, string key) => view.DateIf(Part.Due, key)
        ?? (view.WordOr(Part.State, "", key) != Part.Needed && view.DateIf(Part.OrderedOn, key) is { } ordered && view.AmountIf(Part.LeadTime, key) is { } lead ? ordered.AddDays(Days.Whole(lead)) : null);

    /// <summary>Parts that are needed or ordered.</summary>
    public static IReadOnlyList<NeededPart> All(View view) =>
        [.. Keys(view).Select(key => Of(view, key)).Where(p => p.State is Part.Needed or Part.Ordered)];

    private static NeededPart Of(View view, string key) => new(
        key,
        view.WordOr(Part.Name, key, key),
        view.WordOr(Part.State, "", key),
        view.WordOr(Part.Card, "", key),
        Promised(view, key),
        view.AmountIf(Part.LeadTime, key));
}
