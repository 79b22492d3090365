using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon check: will it hold.</summary>
internal sealed class CheckCommand : Command<CheckCommand.Settings>
{
    private const int FallsShort = 1;
    private const int NotKnown = 3;

    internal sealed class Settings : ReadSettings
    {
        [CommandOption("--list")]
        [Description("List every check with its source; opens no book.")]
        public bool List { get; init; }

        [CommandOption("--all")]
        [Description("Show every instance; those that hold alike are otherwise told by the one with the least reserve.")]
        public bool All { get; init; }

        [CommandOption("--family <FAMILY>")]
        [Description("Only the checks of this family.")]
        public string? Family { get; init; }

        [CommandOption("--explain <ID>")]
        [Description("Open one finding, such as squish or squish[[1]]: formulas with their numbers, inputs, sources, cautions.")]
        public string? Explain { get; init; }

        [CommandOption("--monte-carlo <N>")]
        [Description("Propagate the uncertainties by this many random draws as well (JCGM 101).")]
        public string? MonteCarlo { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.List)
        {
            return ListChecks(settings.Json);
        }

        int? number = settings.MonteCarlo is { } text ? Draws(text) : null;
        var file = settings.Open();
        var snapshot = file.Book.Now();
        var desk = Books.Desk(file, cancellationToken);
        var appraiser = new Appraiser(desk);
        var findings = Wanted(settings, appraiser, snapshot);
        var draws = number is { } n ? findings.ToDictionary(f => f.Id, f => MonteCarlo.Run(appraiser, f, snapshot, n), StringComparer.Ordinal) : [];
        if (settings.Json)
        {
            Out.Json(findings.Select(f => FindingJson.Of(f, draws.GetValueOrDefault(f.Id), Remedy.For(f, snapshot, Days.Today))));
        }
        else if (settings.Explain is not null)
        {
            findings.ToList().ForEach(f => Explain(f, snapshot, draws.GetValueOrDefault(f.Id), settings.Imperial));
        }
        else
        {
            List(findings, draws, snapshot, settings);
        }

        return findings.Any(f => f.Verdict == Verdict.FallsShort) ? FallsShort
            : findings.Any(f => f.Verdict is Verdict.NotKnownYet or Verdict.TooCloseToTell) ? NotKnown : 0;
    }

    private static int ListChecks(bool json)
    {
        if (json)
        {
            Out.Json(CheckCatalogue.All.Select(c => new { c.Id, c.Title, c.Family, c.Source, c.Caution }));
            return 0;
        }

        foreach (var family in CheckCatalogue.All.GroupBy(c => c.Family))
        {
            Out.Line(family.Key);
            foreach (var check in family)
            {
                Out.Line($"  {check.Id,-20} {check.Title}");
                Out.Line($"  {"",-20}   {check.Source}");
            }
        }

        return 0;
    }

    private static int Draws(string number) => int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var draws) && draws >= MonteCarlo.Fewest
        ? draws
        : throw new BadInputException($"--monte-carlo: given '{number}', wanted a whole number of draws, at least {MonteCarlo.Fewest}");

    private static IReadOnlyList<Finding> Wanted(Settings settings, Appraiser appraiser, Snapshot snapshot)
    {
        if (settings.Explain is not { } id)
        {
            return appraiser.Appraise(snapshot, settings.Family is null ? null : CheckCatalogue.OfFamily(settings.Family));
        }

        var open = id.IndexOf('[', StringComparison.Ordinal);
        var check = CheckCatalogue.Find(open < 0 ? id : id[..open]);
        var all = appraiser.Appraise(snapshot, [check]);
        var found = all.Where(f => open < 0 || f.Id == id).ToList();
        return found.Count > 0 ? found : throw new BadInputException(all.Count == 0
            ? $"the build has no part that the check '{check.Id}' is about"
            : $"there is no finding '{id}'; there are {string.Join(", ", all.Select(f => f.Id))}");
    }

    private static void List(IReadOnlyList<Finding> findings, Dictionary<string, MonteCarloResult?> draws, Snapshot snapshot, Settings settings)
    {
        foreach (var family in findings.GroupBy(f => f.Check.Family))
        {
            Out.Line(family.Key);
            foreach (var alike in Alike.Fold(family, one => !settings.All && !draws.ContainsKey(one.Id)))
            {
                var f = alike.Least;
                var others = alike.All.Count > 1 ? $" and {alike.All.Count - 1} more" : "";
                Out.Line($"  {Mark(f.Verdict)} {f.Id + others,-40} {f.Verdict.Words(),-18} {Figure(f, settings.Imperial)}");
                Out.LineIf(f.Advice.Length > 0, $"      {f.Advice}");
                Remedies("      ", f, snapshot);
                Out.LineIf(draws.GetValueOrDefault(f.Id) is not null, $"      by draws: {Drawn(draws.GetValueOrDefault(f.Id))}");
            }

            foreach (var question in family.SelectMany(f => f.Questions).Distinct(StringComparer.Ordinal))
            {
                Out.Line($"      ? {question}");
            }
        }

        Out.Line();
        Out.Line(string.Join(", ", Enum.GetValues<Verdict>().Select(v => $"{findings.Count(f => f.Verdict == v)} {v.Words()}")));
        if (Depths.Of(findings) is { } depth)
        {
            Out.Line(depth.Sentence());
        }

        Out.Line(DecisionRule.Said(findings));
        Out.Line(DecisionRule.OfUncertainty);
        Out.Line(DecisionRule.Advice);
    }

    private static void Explain(Finding f, Snapshot snapshot, MonteCarloResult? drawn, bool imperial)
    {
        Out.Line($"{f.Check.Title} [{f.Id}]: {f.Verdict.Words()}");
        Out.Line($"  {Figure(f, imperial)}");
        var own = f.Trace.Limits.Where(snapshot.Limits.ContainsKey).ToList();
        Out.LineIf(f.Judgement is not null && own.Count == 0, $"  limit from: {f.Judgement?.LimitSource}");
        foreach (var name in own)
        {
            Out.Line($"  limit of one's own: {name} is {snapshot.Limits[name].Text}, because {snapshot.Limits[name].Reason}");
        }

        Out.LineIf(f.Advice.Length > 0, $"  {f.Advice}");
        Remedies("  ", f, snapshot);
        foreach (var step in f.Trace.Steps)
        {
            Step(step);
        }

        Reads("read", f.Trace.Direct);
        Reads("read by the engine run", f.Trace.ThroughDuty);

        if (f.Contributions.Count > 0)
        {
            Out.Line("  uncertainty of the reserve, for one standard uncertainty of each:");
            foreach (var c in f.Contributions)
            {
                Out.Line($"    {c.Found.Source,-34} {Figures.Number(c.Effect, 3)}");
            }

            Out.Line($"  {f.Rule.Sentence}");
            Out.Line($"  probability that it holds: {f.Conformity.ToString("P1", CultureInfo.InvariantCulture)}");
        }

        Out.LineIf(f.TakenAsExact.Any(), $"  taken as exact, since no ± is given: {Book.Checks.Wanted.Words(f.TakenAsExact)}");
        Out.LineIf(drawn is not null, $"  by draws: {Drawn(drawn)}");
        Out.Line($"  source: {f.Check.Source}");
        Out.LineIf(f.Check.Caution.Length > 0, $"  caution: {f.Check.Caution}");
        foreach (var question in f.Questions)
        {
            Out.Line($"  ? {question}");
        }
    }

    private static void Remedies(string indent, Finding f, Snapshot snapshot)
    {
        foreach (var remedy in Remedy.For(f, snapshot, Days.Today))
        {
            Out.Line($"{indent}to decide it: {remedy.Words}");
        }
    }

    private static void Reads(string title, IEnumerable<Read> reads)
    {
        var sorted = reads.OrderBy(r => r.Address.Path, StringComparer.Ordinal).ToList();
        Out.LineIf(sorted.Count > 0, $"  {title}:");
        sorted.ForEach(r => Out.Line($"    {r.Address.Path,-34} {r.Words}"));
    }

    private static void Step(Step step)
    {
        Out.Line($"  {step.Formula.Name}: {step.Formula.Declaration.Expression}");
        Out.Line($"    {Expression.WithNumbers(step.Formula, step.Arguments, step.Results)}");
        Out.Line($"    {step.Formula.Declaration.Source}");
    }

    private static string Figure(Finding f, bool imperial)
    {
        if (f.Judgement is not { } j)
        {
            return "";
        }

        return $"{j.Quantity} {f.ValueIn(imperial)}{(j.Remark.Length > 0 ? " " + j.Remark : "")}, wanted {j.LimitIn(imperial)}; reserve {f.ReserveText}";
    }

    private static string Drawn(MonteCarloResult? drawn) => drawn is null ? "" : $"reserve {Figures.Number(drawn.Mean, 4)}, standard uncertainty {Figures.Number(drawn.Deviation, 2)}, 95 % between {Figures.Number(drawn.Low, 4)} and {Figures.Number(drawn.High, 4)}, holds in {drawn.Conformity.ToString("P1", CultureInfo.InvariantCulture)} of {drawn.Draws}";

    private static string Mark(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "+",
        Verdict.FallsShort => "x",
        Verdict.TooCloseToTell => "~",
        _ => "?",
    };
}
