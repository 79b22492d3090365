using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Jobs;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Jobs;

/// <summary>gudgeon jobs card: one card as it stands.</summary>
internal sealed class CardCommand : Command<CardCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandArgument(0, "<[BOOK] CARD>")]
        [Description("The book, the only one in this folder when left out; the id of a card, such as head.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 1, "gudgeon jobs card [BOOK] CARD");
        var file = Gudgeon.Book.Files.BookFile.Open(path);
        var now = file.Book.Now();
        var card = CardStates.Find(file.Book, now, rest[0]);
        var examined = Examined.Of(card, now, new Appraiser(Books.Desk(file, cancellationToken)));
        var against = examined.Hindrances(card).ToList();
        if (settings.Json)
        {
            Out.Json(Json(card, examined, against));
        }
        else
        {
            Print(card, examined, against, settings.Imperial);
        }

        return against.Count == 0 || card.Standing == Standing.Signed ? 0 : 3;
    }

    private static void Print(CardState card, Examined examined, List<Hindrance> against, bool imperial)
    {
        Out.Line($"{card.Card.Title}: {card.Standing.Words()}{(card.Signature is { } s ? $", signed by {s.By} at {s.On}" : "")}");
        Lines("waits for", card.WaitsFor);
        Lines("look again:", card.LookAgain);
        Lines("signed although:", card.Signature?.Overridden ?? []);
        Out.LineIf(card.Signature?.Overridden.Count > 0, $"  because: {card.Signature?.Note}");
        Out.Line();
        foreach (var step in card.Steps)
        {
            Print(step, imperial);
        }

        Out.Line();
        foreach (var finding in examined.Findings)
        {
            Out.Line($"  stands on {finding.Id}: {finding.Verdict.Words()}{(finding.ReserveText.Length > 0 ? $", reserve {finding.ReserveText}" : "")}");
        }

        if (card.Standing != Standing.Signed)
        {
            Lines("against signing:", [.. against.Select(h => h.Sentence + (h.Overridable ? " (a reason overrides it)" : ""))]);
        }
    }

    private static void Print(StepState step, bool imperial)
    {
        var mark = step.Done ? "[x]" : step.Step.Hold ? "[!]" : "[ ]";
        Out.Line($"  {mark} {step.Key,-14} {step.Words}");
        Out.LineIf(step.Step.Hold && !step.Done, $"{"",21}hold: nothing after it before it is done");
        Out.LineIf(step.Step.Caution.Length > 0, $"{"",21}Caution: {step.Step.Caution}");
        Out.LineIf(step.Step.Uses.Length > 0, $"{"",21}uses: {step.Step.Uses}");
        Out.LineIf(step.Step.Source.Length > 0, $"{"",21}source: {step.Step.Source}");
        foreach (var trouble in step.Troubles)
        {
            Out.Line($"{"",21}{trouble}");
        }

        foreach (var stage in step.Stages)
        {
            Out.Line($"{"",21}stage {stage.Number}, {stage.Stage.Words(imperial)}: {string.Join(' ', stage.Bolts.Select(Shown))}");
        }

        Out.LineIf(step.Tick is not null, $"{"",21}{Told(step.Tick)}");
        Out.LineIf(step.Reading is not null, $"{"",21}{step.Reading?.Value.Content} ({step.Reading?.Value.Story}){(step.Earlier is null ? "" : "; from before: tick the step if it is still so, or read again")}");
        Out.LineIf(step.Begun is not null && step.Tick is null, $"{"",21}begun at {step.Begun?.On} by {step.Begun?.By}");
    }

    /// <summary>"3" while it is to be done, "(3: 48 N·m)" when it is, "3 (was to 40 N·m)" when the plan asks for something else now.</summary>
    private static string Shown(BoltState bolt) => bolt switch
    {
        { Done: { } done } => string.Create(CultureInfo.InvariantCulture, $"({bolt.Number}{(done.Value.Length > 0 ? $": {done.Value}" : "")})"),
        { Ticked: { } was } => string.Create(CultureInfo.InvariantCulture, $"{bolt.Number} (was {was.Asked})"),
        _ => bolt.Number.ToString(CultureInfo.InvariantCulture),
    };

    /// <summary>Who did it, with what.</summary>
    internal static string Told(CardAct? act) => act is null ? "" : string.Concat(
        $"by {act.By} at {act.On}",
        act.With.Length > 0 ? $", with {act.With}" : "",
        act.Value.Length > 0 ? $": {act.Value}" : "",
        act.Note.Length > 0 ? $" ({act.Note})" : "");

    private static void Lines(string heading, IReadOnlyList<string> lines)
    {
        Out.LineIf(lines.Count > 0, $"  {heading}");
        foreach (var line in lines)
        {
            Out.Line($"    {line}");
        }
    }

    private static object Json(CardState card, Examined examined, List<Hindrance> against) => new
    {
        card.Card.Id,
        card.Card.Title,
        card.Card.Stage,
        standing = card.Standing,
        card.WaitsFor,
        card.LookAgain,
        signature = card.Signature,
        steps = card.Steps.Select(s => new
        {
            s.Key,
            kind = s.Step.Kind,
            s.Words,
            s.Step.Hold,
            s.Step.Caution,
            s.Step.Source,
            s.Step.Uses,
            s.Done,
            tick = s.Tick,
            reading = s.Reading?.Value.Content.ToString(),
            earlier = s.Earlier is not null,
            s.Troubles,
            stages = s.Stages.Select(g => new { g.Number, what = g.Stage.Words(imperial: false), bolts = g.Bolts.Select(b => new { b.Number, b.Key, done = b.Done is not null, noted = b.Done?.Value }) }),
        }),
        standsOn = examined.Findings.Select(f => new { f.Id, verdict = f.Verdict, f.Reserve }),
        against,
    };
}
