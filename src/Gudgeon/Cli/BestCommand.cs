using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Sweeps;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon best: values between bounds that give the most while checks hold.</summary>
internal sealed class BestCommand : Command<BestCommand.Settings>
{
    private const string WithoutUncertainty = "Reserves here leave the uncertainties out; gudgeon check counts them.";

    internal sealed class Settings : ReadSettings
    {
        [CommandOption("--let <RANGE>")]
        [Description("A field that is free between bounds, such as blower.driveRatio=0.9..1.2; up to six.")]
        public string[] Let { get; init; } = [];

        [CommandOption("--for <AIM>")]
        [Description("power, torque or mean-torque (the area under its curve); power when left out.")]
        public string For { get; init; } = "power";

        [CommandOption("--at <SPEED>")]
        [Description("At this speed alone; else the greatest, or the mean, of every speed.")]
        public string? At { get; init; }

        [CommandOption("--from <SPEED>")]
        [Description("Lowest speed that counts.")]
        public string? From { get; init; }

        [CommandOption("--to <SPEED>")]
        [Description("Highest speed that counts; the rev limit when left out.")]
        public string? To { get; init; }

        [CommandOption("--holding <CHECKS>")]
        [Description("Checks that must hold, by their ids, with commas between; all for every finding that holds now.")]
        public string[] Holding { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Let.Length == 0)
        {
            throw new BadInputException("--let: given no field, wanted one to six, such as --let blower.driveRatio=0.9..1.2");
        }

        var free = settings.Let.Select(l => FieldRange.Parse("--let", l)).ToList();
        var aim = Aim.Find(settings.For);
        var book = settings.Open().Book;
        var (speeds, where) = Speeds(settings, book, aim);
        var answer = new BestValues(book, free, aim)
        {
            Speeds = speeds,
            Holding = [.. settings.Holding.SelectMany(h => h.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries))],
            Progress = Progress.OnTerminal("search"),
            Cancellation = cancellationToken,
        }.Find();
        if (settings.Json)
        {
            Out.Json(Json(answer));
        }
        else
        {
            Print(answer, where, book, settings);
        }

        return answer.Holds ? 0 : 3;
    }

    /// <summary>The speeds that count, none when they are those of every run, and in words.</summary>
    private static (IReadOnlyList<double>? Speeds, string Words) Speeds(Settings settings, BuildBook book, Aim aim)
    {
        if (RunCommand.Asked(settings.At, "--at") is { } at)
        {
            return settings.From is not null || settings.To is not null || aim.IsMean
                ? throw new BadInputException(aim.IsMean ? "--at: a mean is taken over a range, --from and --to" : "--at, --from and --to: give a speed or a range")
                : at > 0 ? ([at], $" at {Engine.RevLimit.Print(at)}") : throw new BadInputException($"--at: given {Engine.RevLimit.Print(at)}, wanted a speed above zero");
        }

        var view = new View(book.Now());
        var speeds = RunCommand.Speeds(view, settings.From, settings.To, null);
        if (speeds.Count == 0)
        {
            throw Wanted.Refusal("the engine cannot be run", view.Trace);
        }

        return (settings.From is null && settings.To is null ? null : speeds, $" over {Engine.RevLimit.Print(speeds[0])} to {Engine.RevLimit.Print(speeds[^1])}");
    }

    private static void Print(BestAnswer answer, string where, BuildBook book, Settings settings)
    {
        string Shown(double si) => double.IsNaN(si) ? "not known" : answer.Aim.Figure.Print(si, settings.Imperial);
        var gain = answer.Before > 0 ? string.Create(CultureInfo.InvariantCulture, $" ({(answer.After - answer.Before) / answer.Before * 100:+0.0;-0.0} %)") : "";
        Out.Line($"{(answer.Aim.IsMean ? "" : "greatest ")}{answer.Aim.Name}{where}: {Shown(answer.Before)} as the book stands, {Shown(answer.After)} found{gain}");
        Out.LineIf(!answer.Holds, "no combination between these bounds was found with which all that must hold does; this is the one that is least short");
        Out.LineIf(answer.Holds && !answer.IsBetter, "nothing between these bounds was found to be better than the book as it stands");
        foreach (var field in answer.Fields)
        {
            Out.Line($"  {field.Range.Address.Path,-32} {field.Now?.Shown(settings.Imperial) ?? "not known",14} -> {field.Best.Shown(settings.Imperial),-14} {Bound(field)}".TrimEnd());
        }

        PrintHeld(answer);
        Out.Line(string.Create(CultureInfo.InvariantCulture, $"{answer.Trials} combinations tried in {answer.Runs} engine runs; {answer.Unsettled} of them did not settle or could not be run{(answer.Closed ? "" : "; the search was not done when it had used its trials up")}"));
        if (answer.IsBetter)
        {
            PrintChange(answer, book, settings.Path ?? "");
        }
    }

    private static void PrintHeld(BestAnswer answer)
    {
        if (answer.Held.Count == 0)
        {
            return;
        }

        Out.Line(string.Create(CultureInfo.InvariantCulture, $"{answer.Held.Count(h => h.After.Verdict == Verdict.Holds)} of {answer.Held.Count} findings hold. {WithoutUncertainty}"));
        var near = answer.Near.ToLookup(h => h.Moved);
        foreach (var held in near[true])
        {
            Out.Line($"  {held.After.Id,-32} {held.After.Verdict.Words()}, reserve {Reserve(held.After)} ({Reserve(held.Before)} as the book stands)");
        }

        Out.LineIf(near[false].Any(), string.Create(CultureInfo.InvariantCulture, $"  {near[false].Count()} more are near their limit, as they were before"));
    }

    private static void PrintChange(BestAnswer answer, BuildBook book, string path)
    {
        var id = Fresh("best-" + answer.Aim.Word, book);
        var named = path.Length > 0 ? Quoted(path) + " " : "";
        Out.Line("the book stays as it is; this lays it in:");
        Out.Line($"  gudgeon change add {named}{id} --title \"Best {answer.Aim.Name}\" --reason \"found by gudgeon best\"");
        foreach (var field in answer.Fields)
        {
            Out.Line($"  gudgeon set {named}\"{field.Range.Address.Path}\" \"{field.Best.Written}\" --change {id}");
        }

        foreach (var field in answer.Fields.Where(f => f.Ahead))
        {
            Out.Line($"  {field.Range.Address.Path} has a reading that goes before any change; the part must be measured again when it is made");
        }

        foreach (var question in answer.Fields.Select(f => f.Best.Question).Where(q => q.Length > 0))
        {
            Out.Line("? " + question);
        }
    }

    private static string Bound(FreeField field) => field.Bound switch
    {
        < 0 => $"at its lower bound, {field.Range.From}",
        > 0 => $"at its upper bound, {field.Range.To}",
        _ => $"between {field.Range.From} and {field.Range.To}",
    };

    private static string Reserve(Finding finding) => double.IsNaN(finding.Reserve) ? "not known" : Figures.Number(finding.Reserve, 3);

    private static string Fresh(string wanted, BuildBook book)
    {
        var id = wanted;
        for (var n = 2; book.Changes.Any(c => c.Id == id); n++)
        {
            id = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{n}");
        }

        return id;
    }

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;

    private static object Json(BestAnswer answer) => new
    {
        aim = answer.Aim.Word,
        unit = Calc.Catalogue.Dimensions.SiUnit(answer.Aim.Figure.Dimension),
        before = Finite(answer.Before),
        after = Finite(answer.After),
        holds = answer.Holds,
        isBetter = answer.IsBetter,
        fields = answer.Fields.Select(f => new { path = f.Range.Address.Path, now = f.Now?.Written, best = f.Best.Written, bound = f.Bound switch { < 0 => "lower", > 0 => "upper", _ => null } }),
        held = answer.Held.Select(h => new { id = h.After.Id, verdict = h.After.Verdict.Words(), reserveBefore = Finite(h.Before.Reserve), reserve = Finite(h.After.Reserve) }),
        trials = answer.Trials,
        runs = answer.Runs,
        unsettled = answer.Unsettled,
        closed = answer.Closed,
    };

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
