using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>The job cards that a book calls for, as they stand: made afresh from the values that hold and from all that was done.</summary>
public static class CardStates
{
    /// <summary>The cards, in the order of the rebuild.</summary>
    /// <param name="book">The build.</param>
    /// <param name="now">The values that hold.</param>
    public static IReadOnlyList<CardState> Of(BuildBook book, Snapshot now)
    {
        var view = new View(now);
        var acts = book.Acts.GroupBy(a => a.Card).ToDictionary(g => g.Key, g => g.ToList(), StringComparer.Ordinal);
        var alone = CardCatalogue.Of(book).Where(c => Wanted(now, c.When)).Select(c => Alone(view, c, acts.GetValueOrDefault(c.Id) ?? [])).ToList();
        var parts = NeededPart.All(view);
        return [.. alone.Select(c => Among(c, alone, parts))];
    }

    /// <summary>The card with this id.</summary>
    /// <exception cref="BadInputException">There is none, or the book does not call for it.</exception>
    public static CardState Find(BuildBook book, Snapshot now, string id) => Of(book, now).FirstOrDefault(c => c.Card.Id == id)
        ?? throw (CardCatalogue.Of(book).FirstOrDefault(c => c.Id == id) is { } idle
            ? new BadInputException($"the book does not call for the job card '{id}': it has none of {string.Join(", ", idle.When)}")
            : CardCatalogue.None(book, id));

    private static bool Wanted(Snapshot now, IReadOnlyList<string> when) => when.Count == 0 || when.Any(now.Uses);

    /// <summary>The card by itself: its steps, its signature, and whether what it stood on is as it was.</summary>
    private static CardState Alone(View view, CardTemplate card, List<CardAct> acts)
    {
        var steps = card.Steps.Where(s => Wanted(view.Snapshot, s.When)).SelectMany(s => Steps(view, s, acts)).ToList();
        var turn = acts.FindLast(a => a.Kind is ActKind.Sign or ActKind.Reopen);
        var signature = acts.FindLast(a => a.Kind == ActKind.Sign);
        var left = acts.FindLast(a => a.Kind is ActKind.LeaveOut or ActKind.TakeIn);
        var again = signature is null ? [] : Again(view.Snapshot, signature, turn!);
        return new CardState(card, Turned(signature, left, again, steps), steps)
        {
            LookAgain = again,
            Signature = signature,
            LeftOut = left is { Kind: ActKind.LeaveOut } ? $"{left.By}: {left.Note}" : "",
            Acts = acts,
        };
    }

    private static Standing Turned(CardAct? signature, CardAct? left, List<string> again, List<StepState> steps) =>
        left is { Kind: ActKind.LeaveOut } ? Standing.LeftOut
        : again.Count > 0 ? Standing.LookAgain
        : signature is not null ? Standing.Signed
        : steps.Exists(s => s.Step.Kind != StepKind.Read && s.Touched) ? Standing.Begun
        : Standing.Ready;

    /// <summary>Why a signed card must be looked at again: it was opened by somebody, or a value that it stood on is another.</summary>
    private static List<string> Again(Snapshot now, CardAct signature, CardAct turn)
    {
        List<string> why = turn.Kind == ActKind.Reopen ? [$"opened again by {turn.By}: {turn.Note}"] : [];
        foreach (var (path, was) in signature.Reads)
        {
            var reads = Examined.Written(now.Find(FieldCatalogue.Address(path)));
            if (reads != was)
            {
                why.Add($"{path} was {Examined.Shown(was)} when it was signed, and is {Examined.Shown(reads)}");
            }
        }

        return why;
    }

    /// <summary>The card among the others: what it waits for, and which of those before it are open again.</summary>
    private static CardState Among(CardState card, List<CardState> all, IReadOnlyList<NeededPart> parts)
    {
        var before = all.Where(c => card.Card.After.Contains(c.Card.Id) && c.Standing is not (Standing.Signed or Standing.LeftOut)).ToList();
        IReadOnlyList<string> waits = [.. before.Select(c => c.Card.Title + (c.Standing == Standing.LookAgain ? $" ({c.Standing.Words()})" : "")), .. parts.Where(p => p.Card == card.Card.Id).Select(p => p.Words)];
        return card with { WaitsFor = waits, Standing = card.Standing == Standing.Ready && waits.Count > 0 ? Standing.Waiting : card.Standing };
    }

    private static IEnumerable<StepState> Steps(View view, CardStep step, List<CardAct> acts)
    {
        foreach (var index in Indices(view, step))
        {
            var key = index.Length == 0 ? step.Id : $"{step.Id}@{index}";
            var state = new StepState(step, key, index, Words(step, index))
            {
                Tick = Ticked(acts, key),
                Begun = acts.FindLast(a => a.Step == key && a.Kind == ActKind.Start),
            };
            yield return step.Kind switch
            {
                StepKind.Read => Read(view, state, FieldCatalogue.Address(step.What)),
                StepKind.Tighten => Tightened(view, state, acts),
                _ => state,
            };
        }
    }

    private static StepState Read(View view, StepState state, FieldAddress written)
    {
        var address = written.Index.Length == 0 ? written with { Index = state.Index } : written;
        return state with { Address = address, Reading = view.Snapshot.Find(address) is { Origin: Origin.Measurement } found ? found : null };
    }

    private static IEnumerable<string> Indices(View view, CardStep step)
    {
        var subject = step.Kind == StepKind.Read && FieldCatalogue.Address(step.What) is { Index.Length: 0 } address
            ? address.Field.Subject
            : FieldCatalogue.Subjects.FirstOrDefault(s => s.Path == step.Each);
        return subject?.Indexing switch
        {
            Indexing.Cylinder => Instances.Cylinders(view),
            Indexing.Valve => Instances.AllValves(view),
            Indexing.Name => Instances.Named(view, subject),
            _ => [""],
        };
    }

    private static string Words(CardStep step, string index)
    {
        var words = step.Kind switch
        {
            StepKind.Read => $"{FieldCatalogue.Address(step.What).Field.Label}: {step.Text}".TrimEnd(':', ' '),
            StepKind.Tighten => $"Tighten the joint {step.What} after its plan. {step.Text}".TrimEnd(),
            StepKind.Wait => $"{step.Text} ({step.What})",
            StepKind.Renew => $"New: {step.What}. {step.Text}".TrimEnd(),
            StepKind.Photo => $"Picture: {step.What}. {step.Text}".TrimEnd(),
            _ => $"{step.What} {step.Text}".TrimEnd(),
        };
        return index.Length == 0 ? words : $"{index}: {words}";
    }

    private static StepState Tightened(View view, StepState state, List<CardAct> acts)
    {
        var joint = state.Step.What;
        if (!view.Snapshot.Uses($"joint[{joint}]"))
        {
            return state with { Troubles = [$"The book does not know the joint {joint} yet: tighten by the maker's manual and write down the torque."] };
        }

        var plan = TighteningPlan.Of(view, joint);
        return state with
        {
            Plan = plan,
            Troubles = plan.Troubles,
            Stages = [.. plan.Stages.Where(s => s.Order.Count > 0).Select((s, i) => new StageState(i + 1, s, [.. s.Order.Select(n => Bolt(state.Key, i + 1, n, acts))]))],
        };
    }

    private static BoltState Bolt(string step, int stage, int number, List<CardAct> acts)
    {
        var key = string.Create(CultureInfo.InvariantCulture, $"{step}@{stage}.{number}");
        return new BoltState(number, key, Ticked(acts, key));
    }

    /// <summary>The tick of a key that stands; null when there is none, or the last was taken back.</summary>
    private static CardAct? Ticked(List<CardAct> acts, string key) =>
        acts.FindLast(a => a.Step == key && a.Kind is ActKind.Tick or ActKind.Untick) is { Kind: ActKind.Tick } tick ? tick : null;
}
