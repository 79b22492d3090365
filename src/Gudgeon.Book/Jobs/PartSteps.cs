using Gudgeon.Book.Fields;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Jobs;

/// <summary>Steps that the book's own parts bring to a card that asks for no new parts itself: what is used once must be new each time.</summary>
internal static class PartSteps
{
    /// <summary>The card with a step for each part of single use that it waits for.</summary>
    public static CardTemplate Added(View view, CardTemplate card)
    {
        if (card.Steps.Any(s => s.Kind == StepKind.Renew))
        {
            return card;
        }

        List<CardStep> added =
        [
            .. from key in NeededPart.Keys(view)
               where view.WordOr(Part.Card, "", key) == card.Id && view.WordOr(Part.SingleUse, "no", key) == "yes" && view.WordOr(Part.State, "", key) != Part.Scrapped
               select new CardStep($"part-{key}", StepKind.Renew, view.WordOr(Part.Name, key, key)),
        ];
        return card with { Steps = [.. card.Steps, .. added] };
    }
}
