using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>
/// What people do to job cards. Each is held to the book as it stands in the file at that moment, so that two people at one
/// card do not step over each other; a refusal says what comes first.
/// </summary>
/// <param name="By">Who does it.</param>
/// <param name="On">When: UTC, ISO 8601.</param>
public sealed record CardWork(string By, string On)
{
    /// <summary>A share of what the plan asks for within which a wrench that was set right stays: common practice, no source.</summary>
    private const double FarOff = 0.10;

    private const string Form = "yyyy-MM-dd'T'HH:mm:ss'Z'";

    /// <summary>Somebody, now.</summary>
    /// <exception cref="BadInputException">No name.</exception>
    public static CardWork Now(string by) => by.Trim().Length > 0
        ? new CardWork(by.Trim(), DateTime.UtcNow.ToString(Form, CultureInfo.InvariantCulture))
        : throw new BadInputException("work on a job card needs the person: --by NAME");

    /// <summary>What a picture taken for a card is about: "card[pistons]".</summary>
    public static string About(string card) => $"card[{card}]";

    /// <summary>Whether something is about a job card.</summary>
    internal static bool IsCard(string about) => about.StartsWith("card[", StringComparison.Ordinal) && about.EndsWith(']') && BookReader.IsShortName(about[5..^1]);

    /// <summary>A step, or one bolt of it, is done.</summary>
    /// <param name="book">The book as it stands.</param>
    /// <param name="card">Id of the card.</param>
    /// <param name="key">"gap", "gap@2", "tighten@3.7".</param>
    /// <param name="with">With which tool.</param>
    /// <param name="value">What was read, set or fitted.</param>
    /// <param name="note">Anything else worth knowing.</param>
    /// <exception cref="BadInputException">Not yet, not so, or not at all.</exception>
    public CardAct Tick(BuildBook book, string card, string key, string with, string value, string note)
    {
        var (state, step) = Open(book, card, key);
        if (state.Steps.TakeWhile(s => s != step).FirstOrDefault(s => s.Step.Hold && !s.Done) is { } held)
        {
            throw new BadInputException($"{card}, {key}: held until this is done: {held.Words}");
        }

        double? torque = null;
        switch (step.Step.Kind)
        {
            case StepKind.Read:
                return StillSo(card, key, value, step);
            case StepKind.Tighten:
                InOrder(card, key, with, step);
                torque = Noted(book.Now(), card, key, with, value, note, step);
                break;
            case StepKind.Renew when value.Trim().Length == 0:
                throw new BadInputException($"{card}, {key}: used once; wanted the batch, number or bag of the new one");
            case StepKind.Photo when value.Trim().Length == 0:
                throw new BadInputException($"{card}, {key}: wanted the name of the picture's file");
            case StepKind.Wait:
                Waited(card, key, note, step);
                break;
        }

        return step.Stages.Count == 0 && step.Tick is { } done
            ? throw new BadInputException($"{card}, {key}: done already, by {done.By} at {done.On}")
            : Act(card, ActKind.Tick) with { Step = key, With = Tool(book, with.Trim(), torque), Value = value.Trim(), Asked = step.Next?.Stage.Stage.Words(imperial: false) ?? "", Note = note.Trim() };
    }

    /// <summary>A step that was ticked is not done after all.</summary>
    /// <exception cref="BadInputException">It was not ticked, or nothing says why.</exception>
    public CardAct Untick(BuildBook book, string card, string key, string why)
    {
        var (_, step) = Open(book, card, key);
        var ticked = step.Stages.Count == 0 ? step.Tick is not null : step.Stages.Any(s => s.Bolts.Any(b => b.Ticked is not null && (b.Key == key || step.Key == key)));
        return !ticked ? throw new BadInputException($"{card}, {key}: is not ticked")
            : Act(card, ActKind.Untick) with { Step = key, Note = Reason(why, "a tick taken back") };
    }

    /// <summary>A process that takes its time is begun.</summary>
    /// <exception cref="BadInputException">It is no such step, or was begun.</exception>
    public CardAct Start(BuildBook book, string card, string key)
    {
        var (_, step) = Open(book, card, key);
        return step switch
        {
            { Step.Kind: not StepKind.Wait } => throw new BadInputException($"{card}, {key}: is no process that takes its time"),
            { Tick: not null } or { Begun: not null } => throw new BadInputException($"{card}, {key}: was begun already, at {step.Begun?.On ?? step.Tick!.On}"),
            _ => Act(card, ActKind.Start) with { Step = key },
        };
    }

    /// <summary>A card is signed.</summary>
    /// <param name="book">The book as it stands.</param>
    /// <param name="card">Id of the card.</param>
    /// <param name="examined">What it stands on.</param>
    /// <param name="because">Why it is signed although something speaks against it; empty when nothing does.</param>
    /// <exception cref="BadInputException">It cannot be signed; the sentence says why.</exception>
    public CardAct Sign(BuildBook book, string card, Examined examined, string because)
    {
        var state = CardStates.Find(book, book.Now(), card);
        if (state.Standing is Standing.LeftOut)
        {
            throw new BadInputException($"{card}: is left out of this build; take it in first");
        }

        if (state.Standing is Standing.Signed)
        {
            throw new BadInputException($"{card}: signed already, by {state.Signature!.By} at {state.Signature.On}");
        }

        var against = examined.Hindrances(state).ToList();
        if (against.Find(h => !h.Overridable) is { } never)
        {
            throw new BadInputException($"{card}: {never.Sentence}");
        }

        return against.Count > 0 && because.Trim().Length == 0
            ? throw new BadInputException($"{card}: not to be signed: {string.Join("; ", against.Select(h => h.Sentence))}. To sign all the same takes a reason")
            : Act(card, ActKind.Sign) with { Note = because.Trim(), Reads = examined.Reads, Limits = examined.Limits, Overridden = [.. against.Select(h => h.Sentence)] };
    }

    /// <summary>A signed card is opened again.</summary>
    /// <exception cref="BadInputException">It is not signed, or nothing says why.</exception>
    public CardAct Reopen(BuildBook book, string card, string why) => CardStates.Find(book, book.Now(), card).Signature is null
        ? throw new BadInputException($"{card}: is not signed")
        : Act(card, ActKind.Reopen) with { Note = Reason(why, "a card opened again") };

    /// <summary>A card is not wanted for this build.</summary>
    /// <exception cref="BadInputException">It is left out already, or nothing says why.</exception>
    public CardAct LeaveOut(BuildBook book, string card, string why) => CardStates.Find(book, book.Now(), card).Standing == Standing.LeftOut
        ? throw new BadInputException($"{card}: is left out already")
        : Act(card, ActKind.LeaveOut) with { Note = Reason(why, "a card left out") };

    /// <summary>A card is wanted after all.</summary>
    /// <exception cref="BadInputException">It is not left out.</exception>
    public CardAct TakeIn(BuildBook book, string card) => CardStates.Find(book, book.Now(), card).Standing == Standing.LeftOut
        ? Act(card, ActKind.TakeIn)
        : throw new BadInputException($"{card}: is not left out");

    private static (CardState Card, StepState Step) Open(BuildBook book, string card, string key)
    {
        var state = CardStates.Find(book, book.Now(), card);
        return state.Standing switch
        {
            Standing.Signed => throw new BadInputException($"{card}: is signed, by {state.Signature!.By} at {state.Signature.On}; open it again first"),
            Standing.LeftOut => throw new BadInputException($"{card}: is left out of this build; take it in first"),
            _ => (state, state.Find(key) ?? throw new BadInputException($"{card}: has no step '{key}'; the nearest is '{Nearest.To(key, state.Steps.Select(s => s.Key))}'")),
        };
    }

    /// <summary>A reading from before the card's course is found to be so still.</summary>
    private CardAct StillSo(string card, string key, string value, StepState step)
    {
        var path = step.Address!.Value.Path;
        return step switch
        {
            _ when value.Trim().Length > 0 => throw new BadInputException($"{card}, {key}: given '{value.Trim()}'; a reading is taken with its instrument: gudgeon measure {path} \"{value.Trim()}\" --with INSTRUMENT --by NAME"),
            { Done: true } => throw new BadInputException($"{card}, {key}: done already, by the reading {step.Reading!.Value.Content} of {path}"),
            { Reading: { } reading } => Act(card, ActKind.Tick) with { Step = key, Value = Examined.Written(reading), Note = $"still so; read {reading.Value.On} by {reading.Value.By}" },
            _ => throw new BadInputException($"{card}, {key}: done by a reading of {path}, such as gudgeon measure {path} VALUE --with INSTRUMENT --by NAME"),
        };
    }

    /// <summary>What a bolt was tightened to is noted, in the unit of what the plan asks for; far from that it takes a reason.</summary>
    /// <returns>The torque, N·m; null where something else was noted, or nothing.</returns>
    private static double? Noted(Snapshot now, string card, string key, string with, string value, string note, StepState step)
    {
        var (field, wanted) = step.Next is { Stage.Stage: var stage } ? (stage.Field, stage.Value) : (Joint.Torque, new View(now).AmountIf(Joint.Torque, step.Step.What));
        if (field is null)
        {
            return null;
        }

        var usual = wanted is { } asked ? field.Print(asked) : "8 N·m";
        if (value.Trim().Length == 0)
        {
            throw new BadInputException($"{card}, {key}: wanted what it was tightened to, such as {usual}");
        }

        var noted = KnownValue.Read(field, value).Si;
        if (ShopInstrument.Find(now, with) is { } tool && tool.Dimension == field.Dimension && !tool.Reaches(noted))
        {
            throw TakenWith.TooFar(tool, $"{card}, {key}", value.Trim());
        }

        if (wanted is { } target && Math.Abs((noted / target) - 1) > FarOff && note.Trim().Length == 0)
        {
            throw new BadInputException($"{card}, {key}: given {value.Trim()} where the plan asks for {usual}; so far from it takes a note that says why");
        }

        return field == Joint.Torque ? noted : null;
    }

    private static void InOrder(string card, string key, string with, StepState step)
    {
        if (with.Trim().Length == 0)
        {
            throw new BadInputException($"{card}, {key}: wanted the wrench that it was tightened with");
        }

        if (step.Stages.Count > 0 && step.Next is { } next && next.Bolt.Key != key)
        {
            throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"{card}, {key}: bolt {next.Bolt.Number} of stage {next.Stage.Number} comes first ({next.Stage.Stage.Words(imperial: false)})"));
        }

        if (step.Stages.Count > 0 && step.Next is null)
        {
            throw new BadInputException($"{card}, {key}: every bolt is done already");
        }
    }

    private void Waited(string card, string key, string note, StepState step)
    {
        if (step.Begun is not { } begun)
        {
            throw new BadInputException($"{card}, {key}: was not begun yet");
        }

        var gone = At(On) - At(begun.On);
        if (gone.TotalSeconds < step.Step.Time && note.Trim().Length == 0)
        {
            throw new BadInputException(string.Create(CultureInfo.InvariantCulture, $"{card}, {key}: {step.Step.What} wanted, {gone.TotalHours:0.0} h gone; to end it sooner takes a note that says why"));
        }
    }

    /// <summary>A time as acts have it.</summary>
    /// <exception cref="BadInputException">It is none.</exception>
    internal static DateTime At(string on) => DateTime.TryParseExact(on, Form, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out var time)
        ? time
        : throw new BadInputException($"given '{on}', wanted a time in UTC such as 2026-11-29T08:00:00Z");

    /// <summary>The tool as it is kept: one of the book's instruments with how its calibration stood.</summary>
    private string Tool(BuildBook book, string name, double? torque)
    {
        if (ShopInstrument.Find(book.Now(), name) is not { } known)
        {
            return name;
        }

        var due = InstrumentLine.Of(known, DateOnly.FromDateTime(At(On))).DueWords;
        var words = string.Join("; ", new[] { due.Length > 0 ? $"calibration {due}" : "", torque < known.LeastOfRange ? "below a fifth of its range" : "" }.Where(w => w.Length > 0));
        return words.Length > 0 ? $"{name} ({words})" : name;
    }

    private CardAct Act(string card, ActKind kind) => new(card, kind, By, On);

    private static string Reason(string why, string what) => why.Trim().Length > 0 ? why.Trim() : throw new BadInputException($"{what} needs a reason");
}
