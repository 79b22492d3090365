using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>Cards one after the other, each after those that come before it.</summary>
internal static class CardOrder
{
    /// <summary>The cards in such an order.</summary>
    /// <exception cref="BadInputException">Two wait for each other.</exception>
    public static IReadOnlyList<CardState> Of(IReadOnlyList<CardState> cards)
    {
        var (left, ordered, done) = (cards.ToList(), new List<CardState>(), new HashSet<string>(StringComparer.Ordinal));
        while (left.Count > 0)
        {
            var next = left.Find(c => c.Card.After.All(a => done.Contains(a) || left.TrueForAll(l => l.Card.Id != a)))
                ?? throw Round(left);
            left.Remove(next);
            done.Add(next.Card.Id);
            ordered.Add(next);
        }

        return ordered;
    }

    /// <summary>The cards that wait for each other, without those that only wait for them.</summary>
    private static BadInputException Round(List<CardState> left)
    {
        while (left.RemoveAll(c => left.TrueForAll(l => !l.Card.After.Contains(c.Card.Id))) > 0)
        {
        }

        return new BadInputException($"job cards: {string.Join(" and ", left.Select(c => c.Card.Id))} wait for each other; take one out of the other's 'after'");
    }
}
