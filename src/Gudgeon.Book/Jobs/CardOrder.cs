using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>Cards one after the other, each after those that come before it.</summary>
internal static class CardOrder
{
    /// <summary>The cards in such an order.</summary>
    /// <param name="cards">The cards.</param>
    /// <param name="declared">How each is declared.</param>
    /// <exception cref="BadInputException">Two wait for each other.</exception>
    public static IReadOnlyList<T> Of<T>(IReadOnlyList<T> cards, Func<T, CardTemplate> declared)
    {
        var (left, ordered, done) = (cards.Select(c => (Card: c, Declared: declared(c))).ToList(), new List<T>(), new HashSet<string>(StringComparer.Ordinal));
        while (left.Count > 0)
        {
            var next = left.FindIndex(c => c.Declared.After.All(a => done.Contains(a) || left.TrueForAll(l => l.Declared.Id != a)));
            if (next < 0)
            {
                throw Round([.. left.Select(l => l.Declared)]);
            }

            ordered.Add(left[next].Card);
            done.Add(left[next].Declared.Id);
            left.RemoveAt(next);
        }

        return ordered;
    }

    /// <summary>Refuses a card that comes after one that does not exist, or after one that comes after it.</summary>
    /// <param name="card">The card that is to be put among the others.</param>
    /// <param name="others">The cards of the book, one of the same id among them or not.</param>
    /// <exception cref="BadInputException">The sentence names the card.</exception>
    public static void Verify(CardTemplate card, IReadOnlyList<CardTemplate> others)
    {
        List<CardTemplate> all = [.. others.Where(c => c.Id != card.Id), card];
        if (card.After.FirstOrDefault(a => !all.Exists(c => c.Id == a)) is { } wrong)
        {
            throw new BadInputException($"the card.after: given '{wrong}', wanted the id of a job card; the nearest is '{Nearest.To(wrong, all.Select(c => c.Id))}'");
        }

        Of(all, c => c);
    }

    /// <summary>The cards that wait for each other, without those that only wait for them.</summary>
    private static BadInputException Round(List<CardTemplate> left)
    {
        while (left.RemoveAll(c => left.TrueForAll(l => !l.After.Contains(c.Id))) > 0)
        {
        }

        if (left is [var alone])
        {
            return new BadInputException($"job card {alone.Id}: comes after itself; take it out of its own 'after'");
        }

        return new BadInputException($"job cards: {string.Join(" and ", left.Select(c => c.Id))} wait for each other; take one out of the other's 'after'");
    }
}
