using Gudgeon.Book.Fields;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Jobs;

/// <summary>Steps that the book's own parts bring to a card: what is used once must be new each time.</summary>
internal static class PartSteps
{
    /// <summary>Shorter words do not tell one part from another.</summary>
    private const int Telling = 4;

    /// <summary>The card with a step for each part of single use that it waits for, unless one of its own asks for that part anew.</summary>
    public static CardTemplate Added(View view, CardTemplate card)
    {
        List<CardStep> added =
        [
            .. from key in NeededPart.Keys(view)
               where view.WordOr(Part.Card, "", key) == card.Id && view.WordOr(Part.SingleUse, "no", key) == "yes" && view.WordOr(Part.State, "", key) != Part.Scrapped
               let name = view.WordOr(Part.Name, key, key)
               where !card.Steps.Any(s => s.Kind == StepKind.Renew && (s.When.Count == 0 || s.When.Any(view.Snapshot.Uses)) && SharesAWord(s.What, name))
               select new CardStep($"part-{key}", StepKind.Renew, name),
        ];
        return added.Count == 0 ? card : card with { Steps = [.. card.Steps, .. added] };
    }

    private static bool SharesAWord(string one, string other) => Words(one).Intersect(Words(other), StringComparer.OrdinalIgnoreCase).Any();

    private static IEnumerable<string> Words(string text) => text.Split([' ', ',', '-', '/'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length >= Telling);
}
