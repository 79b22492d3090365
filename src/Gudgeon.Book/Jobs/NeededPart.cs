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
public sealed record NeededPart(string Key, string Name, string State, string Card, DateOnly? Due)
{
    /// <summary>"part forged pistons (ordered, promised for 2026-12-12)".</summary>
    public string Words => $"part {Name} ({State}, {(Due is { } due ? $"promised for {Days.Written(due)}" : "no day promised")})";

    /// <summary>Parts that are needed or ordered.</summary>
    public static IReadOnlyList<NeededPart> All(View view) =>
        [.. view.Indices(Part.State.Subject).Select(key => Of(view, key)).Where(p => p.State is Part.Needed or Part.Ordered)];

    /// <summary>Those that a card waits for.</summary>
    public static IEnumerable<NeededPart> For(View view, string card) => All(view).Where(p => p.Card == card);

    private static NeededPart Of(View view, string key) => new(
        key,
        view.WordOr(Part.Name, key, key),
        view.WordOr(Part.State, "", key),
        view.WordOr(Part.Card, "", key),
        view.DateIf(Part.Due, key) ?? Promised(view, key));

    private static DateOnly? Promised(View view, string key) => view.DateIf(Part.OrderedOn, key) is { } ordered && view.AmountIf(Part.LeadTime, key) is { } lead
        ? ordered.AddDays((int)Math.Ceiling(lead / 86400))
        : null;
}
