using System.ComponentModel;
using Gudgeon.Book.Changes;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon changes: what each change does to every other part.</summary>
internal sealed class ChangesCommand : Command<ChangesCommand.Settings>
{
    internal sealed class Settings : ReadSettings
    {
        [CommandOption("--change <ID>")]
        [Description("Only this change; every change when left out.")]
        public string? Change { get; init; }
    }

    /// <summary>Said above consequences that were worked without uncertainties, which would take long for every change.</summary>
    internal const string WithoutUncertainty = "Verdicts here leave the uncertainties out; gudgeon changes --change ID counts them.";

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var book = file.Book;
        var wanted = settings.Change is { } id ? [book.Find(id)] : book.Changes;
        var appraiser = new Appraiser(Books.Desk(file, cancellationToken)) { WithUncertainty = settings.Change is not null };
        var all = wanted.Select(c => Consequences.Of(book, c, appraiser)).ToList();
        if (settings.Json)
        {
            Out.Json(all.Select(Json));
            return 0;
        }

        Out.LineIf(all.Count == 0, "the book has no changes yet");
        Out.LineIf(settings.Change is null && all.Count > 0, WithoutUncertainty);
        all.ForEach(c => Print(c, settings.Imperial));
        return 0;
    }

    internal static void Print(Consequences c, bool imperial)
    {
        Out.Line($"{c.Change.Id}: {c.Change.Title}");
        // Valves and cylinders that fare alike stand on one line, by the one with the least reserve.
        foreach (var (move, all) in c.Alike)
        {
            var others = all.Count > 1 ? $" ({all.Count - 1} more like it)" : "";
            Out.Line($"  {Arrow(move)} {move.Id + others,-42} {Side(move.Before, imperial)} -> {Side(move.After, imperial)}{(move.Turned ? "  TURNED" : "")}");
        }

        Out.Line($"  {c.Still} findings did not move");
        Out.LineIf(c.Measure.Count > 0, "  measure:");
        foreach (var m in c.Measure)
        {
            Out.Line($"    {m.Path,-32} {m.Reason}{(m.Field.Measured.Length > 0 ? $"; {m.Field.Measured}" : "")}");
        }

        Out.LineIf(c.RestsOn.Count > 0, $"  rests also on earlier readings of: {Wanted.Words(c.RestsOn)}");
        Out.Line();
    }

    private static string Side(Finding? finding, bool imperial) => finding switch
    {
        null => "no such part",
        { Judgement: null } => finding.Verdict.Words(),
        _ => $"{finding.Judgement.Print(finding.Judgement.Value, imperial)}, {finding.Verdict.Words()} (reserve {Figures.Number(finding.Reserve, 3)})",
    };

    private static string Arrow(Move move) => move.Way switch
    {
        0 => "*",
        > 0 => "^",
        _ => "v",
    };

    private static object Json(Consequences c) => new
    {
        change = c.Change.Id,
        title = c.Change.Title,
        moves = c.Moves.Select(m => new { id = m.Id, turned = m.Turned, shift = double.IsNaN(m.Shift) ? (double?)null : m.Shift, before = m.Before is null ? null : FindingJson.Of(m.Before), after = m.After is null ? null : FindingJson.Of(m.After) }),
        still = c.Still,
        restsOn = c.RestsOn,
        measure = c.Measure.Select(m => new { path = m.Path, reason = m.Reason, how = m.Field.Measured }),
    };
}
