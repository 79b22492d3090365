using Gudgeon.Book.Fields;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Jobs;

/// <summary>Steps that the book's own parts bring to the cards: what is used once must be new each time.</summary>
/// <param name="view">The values.</param>
internal sealed class PartSteps(View view)
{
    /// <summary>Shorter words do not tell one part from another.</summary>
    private const int Telling = 4;

    private readonly ILookup<string, (string Key, string Name)> _once = (
        from key in NeededPart.Keys(view)
        where view.WordOr(Part.SingleUse, "no", key) == "yes" && view.WordOr(Part.State, "", key) != Part.Scrapped
        select (Card: view.WordOr(Part.Card, "", key), Key: key, Name: view.WordOr(Part.Name, key, key))).ToLookup(p => p.Card, p => (p.Key, p.Name), StringComparer.Ordinal);

    /// <summary>The card with a step for each part of single use that it waits for, unless one of its own asks for that part anew.</summary>
    public CardTemplate Added(CardTemplate card)
    {
        List<CardStep> added =
        [
            .. from part in _once[card.Id]
               where !card.Steps.Any(s => s.Kind == StepKind.Renew && CardStates.Wanted(view.Snapshot, s.When) && SharesAWord(s.What, part.Name))
               select new CardStep($"part-{part.Key}", StepKind.Renew, part.Name),
        ];
        return added.Count == 0 ? card : card with { Steps = [.. card.Steps, .. added] };
    }

    private static bool SharesAWord(string one, string other) => Words(one).Intersect(Words(other), StringComparer.OrdinalIgnoreCase).Any();

    private static IEnumerable<string> Words(string text) => text.Split([' ', ',', '-', '/'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length >= Telling);
}
