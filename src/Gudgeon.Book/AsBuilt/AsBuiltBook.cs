using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Store;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.AsBuilt;

/// <summary>A bolt as it was tightened.</summary>
/// <param name="Card">The card.</param>
/// <param name="Joint">The joint: "head", "rod, 2".</param>
/// <param name="Round">Number of the round; 0 for a joint of which the book has no plan.</param>
/// <param name="Stage">What the plan wanted in it at that moment.</param>
/// <param name="Bolt">Its number; 0 for all bolts of a joint of which the book has no plan.</param>
/// <param name="Act">By whom, when, with what, to what.</param>
public sealed record TightenedBolt(CardState Card, string Joint, int Round, string Stage, int Bolt, CardAct Act)
{
    /// <summary>"3: 48 N·m", and why where it is far from what was wanted.</summary>
    public string Noted => string.Create(CultureInfo.InvariantCulture, $"{(Bolt > 0 ? $"{Bolt}: " : "")}{(Act.Value.Length > 0 ? Act.Value : "done")}{(Act.Note.Length > 0 ? $" ({Act.Note})" : "")}");
}

/// <summary>Something done to a job card out of the usual: overridden, taken back, opened again, ended early.</summary>
/// <param name="Card">The card.</param>
/// <param name="Act">By whom, when, why.</param>
/// <param name="Words">What it was.</param>
public sealed record OutOfTheUsual(CardState Card, CardAct Act, string Words);

/// <summary>Something that is not settled.</summary>
/// <param name="Kind">"falls short", "job card".</param>
/// <param name="Words">What it is.</param>
public sealed record OpenPoint(string Kind, string Words);

/// <summary>Everything that is shown of an engine afterwards: what is in it, who measured it and with what, what holds and what is open.</summary>
public sealed record AsBuiltBook
{
    /// <summary>The build.</summary>
    public required BuildBook Book { get; init; }

    /// <summary>The values that hold.</summary>
    public required Snapshot Now { get; init; }

    /// <summary>Every finding.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Job cards that the book calls for.</summary>
    public required IReadOnlyList<CardState> Cards { get; init; }

    /// <summary>What the engine is, in a few figures.</summary>
    public required IReadOnlyList<Fact> Figures { get; init; }

    /// <summary>Words of the engine that are no figures: fuel, firing order.</summary>
    public required IReadOnlyList<(string Name, string Words)> Told { get; init; }

    /// <summary>How many edits the book has seen; 0 in a book without a journal.</summary>
    public int Revision { get; init; }

    /// <summary>The seal of the journal's last entry, hexadecimal; empty in a book without one.</summary>
    public string Seal { get; init; } = "";

    /// <summary>Statements that people signed over the whole book.</summary>
    public IReadOnlyList<Signature> Signatures { get; init; } = [];

    /// <summary>Pictures and other files kept with the book.</summary>
    public IReadOnlyList<Attachment> Files { get; init; } = [];

    /// <summary>Values that are no readings of the book's, subject by subject, as far as they hold for anything: what is taken on somebody's word.</summary>
    public IReadOnlyList<Found> Declared
    {
        get
        {
            var view = new View(Now);
            return [.. Now.All().Where(f => f.Origin != Origin.Measurement && !Elsewhere.Contains(f.Value.Field.Subject) && Holds(view, f))];
        }
    }

    /// <summary>Instruments of the shop.</summary>
    public IReadOnlyList<InstrumentLine> Instruments => InstrumentLine.All(Book, Days.Today);

    /// <summary>Values that rest on readings, by path.</summary>
    public IReadOnlyList<Found> Readings => [.. Now.All().Where(f => f.Origin == Origin.Measurement).OrderBy(f => f.Source, StringComparer.Ordinal)];

    /// <summary>Bolts as they were tightened, in the order of the work.</summary>
    public IReadOnlyList<TightenedBolt> Tightened =>
    [
        .. from card in Cards
           from step in card.Steps
           where step.Step.Kind == StepKind.Tighten
           from stage in step.Stages
           from bolt in stage.Bolts
           where bolt.Ticked is not null
           select new TightenedBolt(card, Joined(step), stage.Number, bolt.Ticked!.Asked.Length > 0 ? bolt.Ticked.Asked : stage.Stage.Words(imperial: false), bolt.Number, bolt.Ticked),
        .. from card in Cards
           from step in card.Steps
           where step.Step.Kind == StepKind.Tighten && step.Stages.Count == 0 && step.Tick is not null
           select new TightenedBolt(card, Joined(step), 0, "by the maker's manual", 0, step.Tick!),
    ];

    /// <summary>What was done out of the usual, in the order of the work; a later signature does not take it away.</summary>
    public IReadOnlyList<OutOfTheUsual> Unusual =>
    [
        .. from card in Cards
           from act in card.Acts
           let words = Unlike(act)
           where words.Length > 0
           orderby act.On
           select new OutOfTheUsual(card, act, words),
    ];

    /// <summary>Parts of the build, those that are fitted first.</summary>
    public IReadOnlyList<PartLine> Parts => [.. PartLine.All(new View(Now)).OrderByDescending(p => p.State == Part.Fitted)];

    /// <summary>What the parts weigh, against the target; empty when none is listed.</summary>
    public string MassWords(bool imperial) => Parts.Count == 0 ? "" : PartSheet.Of(Book, Now, Days.Today).MassWords(imperial);

    /// <summary>New parts that are used once, as they were noted.</summary>
    public IReadOnlyList<(CardState Card, StepState Step)> Renewed => [.. Cards.SelectMany(c => c.Steps, (c, s) => (c, s)).Where(p => p.s.Step.Kind == StepKind.Renew && p.s.Tick is not null)];

    /// <summary>What is not settled, the gravest first.</summary>
    /// <param name="imperial">Whether in inch units.</param>
    public IReadOnlyList<OpenPoint> Open(bool imperial) =>
    [
        .. Points(Verdict.FallsShort, f => $"{Title(f)}: {f.ValueIn(imperial)}, reserve {f.ReserveText}"),
        .. Cards.Where(c => c.Standing == Standing.LookAgain).Select(c => new OpenPoint("look again", $"{c.Card.Title}: {string.Join("; ", c.LookAgain)}")),
        .. Cards.SelectMany(c => c.Acts.Where(a => a.WithOverdue).Select(a => a.With).Distinct(StringComparer.Ordinal), (c, tool) => new OpenPoint("tool", $"{c.Card.Title}: {tool}")),
        .. Cards.Where(c => c.Signature?.Overridden.Count > 0).Select(c => new OpenPoint("signed with a reason", $"{c.Card.Title}, by {c.Signature!.By}, because {c.Signature.Note}: {string.Join("; ", c.Signature.Overridden)}")),
        .. Points(Verdict.TooCloseToTell, f => $"{Title(f)}: {f.ValueIn(imperial)}, reserve {f.ReserveText}; {f.Advice}"),
        .. Points(Verdict.NotKnownYet, f => $"{Title(f)}: {f.Advice}"),
        .. Cards.Where(c => c.Standing is Standing.Waiting or Standing.Ready or Standing.Begun).Select(c => new OpenPoint("job card", string.Create(CultureInfo.InvariantCulture, $"{c.Card.Title}: {c.Standing.Words()}, {c.StepsDone} of {c.Steps.Count} steps done"))),
        .. NeededPart.All(new View(Now)).Select(p => new OpenPoint("part", p.Words)),
    ];

    /// <summary>Cautions of the findings and of the cards, each once.</summary>
    public IReadOnlyList<string> Cautions => [.. Findings.Select(f => f.Check.Caution).Concat(Cards.SelectMany(c => c.Steps.Select(s => s.Step.Caution))).Where(c => c.Length > 0).Distinct(StringComparer.Ordinal)];

    /// <summary>The book as it stands in a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="appraiser">Works the findings.</param>
    /// <param name="desk">Makes the engine run.</param>
    /// <param name="progress">Told the share of the findings done, 0 to 1.</param>
    public static AsBuiltBook Of(BookFile file, Appraiser appraiser, DutyDesk desk, IProgress<double>? progress = null)
    {
        var now = file.Book.Now();
        var store = file as StoredBook;
        return new AsBuiltBook
        {
            Book = file.Book,
            Now = now,
            Findings = appraiser.Appraise(now, progress: progress),
            Cards = CardStates.Of(file.Book, now),
            Figures = [.. Engine(new View(now, desk))],
            Told = [.. Words(now, Fields.Engine.FiringOrder, FuelSystem.Kind, Blower.Kind, Oil.Grade)],
            Revision = file.Revision,
            Seal = store?.Seal ?? "",
            Signatures = store?.Signatures ?? [],
            Files = store?.Attachments ?? [],
        };
    }

    private static IEnumerable<Fact> Engine(View view)
    {
        var (bore, stroke, cylinders) = (view.AmountIf(Cylinder.Bore, "1"), view.AmountIf(Crank.Stroke), view.CountOr(Fields.Engine.Cylinders, 0));
        yield return new Fact("cylinders", cylinders, Dimension.Number, "");
        yield return new Fact("bore", bore, Dimension.Length, "mm") { Digits = 5 };
        yield return new Fact("stroke", stroke, Dimension.Length, "mm") { Digits = 5 };
        yield return new Fact("swept volume", cylinders * Math.PI / 4 * bore * bore * stroke, Dimension.Volume, "cm³");
        yield return new Fact("rev limit", view.AmountIf(Fields.Engine.RevLimit), Dimension.RotationalSpeed, "rpm");
        var duty = view.DutyIf();
        yield return new Fact("predicted power", duty?.Power.Value, Dimension.Power, "kW") { Digits = 3, Remark = duty is null ? "" : $"at {Values.Figures.Rpm(duty.Power.Speed)}, by the {duty.Depth.Word()} model" };
        yield return new Fact("predicted cylinder pressure", duty?.PeakPressure.Value, Dimension.Pressure, "bar") { Digits = 3 };
        if (duty?.Most(f => f.Boost).Value is > 0 and var boost)
        {
            yield return new Fact("predicted boost above the air outside", boost - duty.Ambient.Pressure, Dimension.Pressure, "bar") { Digits = 3 };
        }
    }

    private static IEnumerable<(string, string)> Words(Snapshot now, params Field[] fields) =>
        fields.Select(f => (f.Label, Words: now.Find(new FieldAddress(f, ""))?.Value.Content as string)).Where(f => f.Words is not null).Select(f => (f.Label, f.Words!));

    /// <summary>"Top ring end gap, 2".</summary>
    public static string Title(Finding finding) => finding.Index.Length > 0 ? $"{finding.Check.Title}, {finding.Index}" : finding.Check.Title;

    /// <summary>Subjects that have a table of their own.</summary>
    private static readonly Subject[] Elsewhere = [Part.State.Subject, Instrument.Kind.Subject];

    /// <summary>Whether it is of one instance, or any instance takes it: a value of all does not hold where each has its own.</summary>
    private static bool Holds(View view, Found found) => FieldCatalogue.Address(found.Source).Index.Length > 0
        || Instances.Of(view, found.Value.Field.Subject).Any(i => view.Snapshot.Find(new FieldAddress(found.Value.Field, i))?.Source == found.Source);

    private static string Joined(StepState step) => step.Index.Length > 0 ? $"{step.Step.What}, {step.Index}" : step.Step.What;

    private static string Unlike(CardAct act) => act switch
    {
        { Kind: ActKind.Sign, Overridden.Count: > 0 } => $"signed although {string.Join("; ", act.Overridden)}",
        { Kind: ActKind.Reopen } => "opened again",
        { Kind: ActKind.Untick } => $"tick of {act.Step} taken back",
        { Kind: ActKind.LeaveOut } => "left out",
        { Kind: ActKind.Tick, Note.Length: > 0 } => $"{act.Step}{(act.Value.Length > 0 ? $": {act.Value}" : "")}",
        _ => "",
    };

    private IEnumerable<OpenPoint> Points(Verdict verdict, Func<Finding, string> words) =>
        Findings.Where(f => f.Verdict == verdict).Select(f => new OpenPoint(verdict.Words(), words(f)));
}
