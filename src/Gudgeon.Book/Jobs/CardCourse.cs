using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>
/// When the course of each card began. A reading from before it may be of another part, or of this one before the work: it
/// does not tick a step of the card by itself.
/// </summary>
/// <param name="wanted">Ids of the cards that the book calls for.</param>
/// <param name="acts">What was done to each, in order.</param>
internal sealed class CardCourse(IReadOnlySet<string> wanted, IReadOnlyDictionary<string, List<CardAct>> acts)
{
    /// <summary>
    /// The moment from which readings count for a card: when the work on the cards before it ended; where none was done
    /// on one of them or there is none, when the card itself was begun; when it was opened again. Null while none of these happened.
    /// </summary>
    public DateTime? Begins(CardTemplate card)
    {
        var own = Acts(card.Id);
        var turn = own.FindLast(a => a.Kind is ActKind.Sign or ActKind.Reopen);
        if (turn is { Kind: ActKind.Sign })
        {
            return DateTime.MinValue;
        }

        var before = card.After.Where(wanted.Contains).Select(Acts).Where(a => LeftOut(a) is null).ToList();
        return before.Count > 0 && before.TrueForAll(a => a.Count > 0)
            ? Later(DateTime.MinValue, before.Select(a => a[^1]).Append(turn))
            : Later(null, own.Take(1).Append(turn));
    }

    /// <summary>The act by which a card is left out; null when it is not, or was taken in again.</summary>
    public static CardAct? LeftOut(List<CardAct> acts) => acts.FindLast(a => a.Kind is ActKind.LeaveOut or ActKind.TakeIn) is { Kind: ActKind.LeaveOut } left ? left : null;

    /// <summary>The latest of a moment and of acts; null when there is none.</summary>
    public static DateTime? Later(DateTime? moment, IEnumerable<CardAct?> acts) =>
        acts.OfType<CardAct>().Select(a => (DateTime?)CardWork.At(a.On)).Append(moment).Max();

    /// <summary>Whether something was done in a course that began at a moment.</summary>
    /// <param name="begins">The moment, UTC; null while it has not begun.</param>
    /// <param name="on">When it was done, as written: a time, or a day, which counts to its end.</param>
    public static bool Within(DateTime? begins, string on) => begins is { } from && (from == DateTime.MinValue || Days.Until(on) >= from);

    private List<CardAct> Acts(string card) => acts.GetValueOrDefault(card) ?? [];
}
