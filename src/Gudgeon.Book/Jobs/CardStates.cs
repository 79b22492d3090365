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
        var wanted = CardCatalogue.Of(book).Where(c => Wanted(now, c.When)).ToList();
        var parts = NeededPart.All(view);
        var (renewed, course) = (new PartSteps(view), new CardCourse(wanted.Select(c => c.Id).ToHashSet(StringComparer.Ordinal), acts));
        var alone = wanted.ConvertAll(c => Alone(view, renewed.Added(c), acts.GetValueOrDefault(c.Id) ?? [], course));
        return [.. alone.Select(c => Among(c, alone, parts))];
    }

    /// <summary>The card with this id.</summary>
    /// <exception cref="BadInputException">There is none, or the book does not call for it.</exception>
    public static CardState Find(BuildBook book, Snapshot now, string id) => Of(book, now).FirstOrDefault(c => c.Card.Id == id)
        ?? throw (CardCatalogue.Of(book).FirstOrDefault(c => c.Id == id) is { } idle
            ? new BadInputException($"the book does not call for the job card '{id}': it has none of {string.Join(", ", idle.When)}")
            : CardCatalogue.None(book, id));

    /// <summary>Whether the book has one of the parts for which a card or a step is wanted.</summary>
    internal static bool Wanted(Snapshot now, IReadOnlyList<string> when) => when.Count == 0 || when.Any(now.Uses);

    /// <summary>The card by itself: its steps, its signature, and whether what it stood on is as it was.</summary>
    private static CardState Alone(View view, CardTemplate card, List<CardAct> acts, CardCourse course)
    {
        var steps = Steps(view, card, acts, course.Begins(card));
        var turn = acts.FindLast(a => a.Kind is ActKind.Sign or ActKind.Reopen);
        var signature = acts.FindLast(a => a.Kind == ActKind.Sign);
        var left = CardCourse.LeftOut(acts);
        var again = signature is null ? [] : Again(view.Snapshot, signature, turn!, steps, acts);
        return new CardState(card, Turned(signature, left, again, steps), steps)
        {
            LookAgain = again,
            Signature = signature,
            LeftOut = left is null ? "" : $"{left.By}: {left.Note}",
            Acts = acts,
        };
    }

    private static Standing Turned(CardAct? signature, CardAct? left, List<string> again, List<StepState> steps) =>
        left is not null ? Standing.LeftOut
        : again.Count > 0 ? Standing.LookAgain
        : signature is not null ? Standing.Signed
        : steps.Exists(s => s.Touched) ? Standing.Begun
        : Standing.Ready;

    /// <summary>Why a signed card must be looked at again: it was opened by somebody, it has a step that it had not, or something that it stood on is another.</summary>
    private static List<string> Again(Snapshot now, CardAct signature, CardAct turn, List<StepState> steps, List<CardAct> acts)
    {
        List<string> why = turn.Kind == ActKind.Reopen
            ? [$"opened again by {turn.By}: {turn.Note}"]
            : [.. steps.Where(s => !s.Done).Select(s => $"not done: {s.Words}"), .. Since(signature, acts)];
        foreach (var (name, was) in signature.Limits)
        {
            var limit = Examined.LimitOf(now, name);
            if (limit != was)
            {
                why.Add($"the limit {name} was {Usual(was)} when it was signed, and is {Usual(limit)}");
            }
        }

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

    /// <summary>What was done after the signature, which nobody has signed.</summary>
    private static IEnumerable<string> Since(CardAct signature, List<CardAct> acts)
    {
        var since = acts.SkipWhile(a => a != signature).Where(a => a.Step.Length > 0).Select(a => a.Step).Distinct(StringComparer.Ordinal).ToList();
        return since.Count == 0 ? [] : [$"worked on since it was signed: {string.Join(", ", since)}"];
    }

    private static string Usual(string limit) => limit.Length > 0 ? limit : "the usual one";

    /// <summary>
    /// The steps in their order. A reading counts when it was taken after the card's course began, and after the last hold
    /// above it was passed.
    /// </summary>
    private static List<StepState> Steps(View view, CardTemplate card, List<CardAct> acts, DateTime? begins)
    {
        var steps = new List<StepState>();
        foreach (var step in card.Steps.Where(s => Wanted(view.Snapshot, s.When)))
        {
            var each = Steps(view, step, acts, begins).ToList();
            steps.AddRange(each);
            if (step.Hold)
            {
                begins = each.TrueForAll(s => s.Done) ? CardCourse.Later(begins, each.SelectMany(s => s.Stages.SelectMany(g => g.Bolts, (_, b) => b.Done).Append(s.Tick))) : null;
            }
        }

        return steps;
    }

    /// <summary>The card among the others: what it waits for, and which of those before it are open again.</summary>
    private static CardState Among(CardState card, List<CardState> all, IReadOnlyList<NeededPart> parts)
    {
        var before = all.Where(c => card.Card.After.Contains(c.Card.Id) && c.Standing is not (Standing.Signed or Standing.LeftOut)).ToList();
        IReadOnlyList<string> waits = [.. before.Select(c => c.Card.Title + (c.Standing == Standing.LookAgain ? $" ({c.Standing.Words()})" : "")), .. parts.Where(p => p.Card == card.Card.Id).Select(p => p.Words)];
        return card with { WaitsFor = waits, Standing = card.Standing == Standing.Ready && waits.Count > 0 ? Standing.Waiting : card.Standing };
    }

    private static IEnumerable<StepState> Steps(View view, CardStep step, List<CardAct> acts, DateTime? begins)
    {
        foreach (var index in Indices(view, step))
        {
            var key = index.Length == 0 ? step.Id : $"{step.Id}@{index}";
            var state = new StepState(step, key, index, Words(step, index))
            {
                Tick = Ticked(step.Kind == StepKind.Renew ? acts[(acts.FindLastIndex(a => a.Kind == ActKind.Reopen) + 1)..] : acts, key),
                Begun = acts.FindLast(a => (a.Step == key && a.Kind is ActKind.Start or ActKind.Untick) || a.Kind == ActKind.Reopen) is { Kind: ActKind.Start } start ? start : null,
            };
            yield return step.Kind switch
            {
                StepKind.Read => Read(view, state, FieldCatalogue.Address(step.What), begins),
                StepKind.Tighten => Tightened(view, state, acts),
                _ => state,
            };
        }
    }

    private static StepState Read(View view, StepState state, FieldAddress written, DateTime? begins)
    {
        var address = written.Index.Length == 0 ? written with { Index = state.Index } : written;
        var reading = view.Snapshot.Find(address) is { Origin: Origin.Measurement } found ? found : null;
        return state with
        {
            Address = address,
            Reading = reading,
            InItsCourse = reading is not null && CardCourse.Within(begins, reading.Value.On),
            Tick = state.Tick is { } tick && CardCourse.Within(begins, tick.On) && tick.Value == Examined.Written(reading) ? tick : null,
        };
    }

    private static IEnumerable<string> Indices(View view, CardStep step)
    {
        var subject = step.Kind == StepKind.Read && FieldCatalogue.Address(step.What) is { Index.Length: 0 } address
            ? address.Field.Subject
            : FieldCatalogue.Subjects.FirstOrDefault(s => s.Path == step.Each);
        return subject is null ? [""] : Instances.Of(view, subject);
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
            Stages = [.. plan.Stages.Where(s => s.Order.Count > 0).Select((s, i) => new StageState(i + 1, s, [.. s.Order.Select(n => Bolt(state.Key, i + 1, n, s, acts))]))],
        };
    }

    private static BoltState Bolt(string step, int stage, int number, TighteningStage wanted, List<CardAct> acts)
    {
        var key = string.Create(CultureInfo.InvariantCulture, $"{step}@{stage}.{number}");
        var ticked = Ticked(acts, key, step);
        return new BoltState(number, key, ticked, ticked is { Asked: var asked } && (asked.Length == 0 || asked == wanted.Words(imperial: false)) ? ticked : null);
    }

    /// <summary>The tick of a key that stands; null when there is none, or the last was taken back, by itself or with its whole step.</summary>
    private static CardAct? Ticked(List<CardAct> acts, string key, string step = "") =>
        acts.FindLast(a => (a.Step == key && a.Kind is ActKind.Tick or ActKind.Untick) || (a.Step == step && a.Kind == ActKind.Untick)) is { Kind: ActKind.Tick } tick ? tick : null;
}
