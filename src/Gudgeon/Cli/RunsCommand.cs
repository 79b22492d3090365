using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon runs: the runs that were kept.</summary>
internal sealed class RunsCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var book = settings.Open().Book;
        var now = book.Now();
        if (settings.Json)
        {
            Out.Json(book.Runs.Select(r => new { r.Revision, r.Kind, r.Depth, r.Title, r.By, r.On, r.Version, r.Changes, r.Given, holds = r.HoldsIn(now), r.Sha256, r.Reads, r.Figures.Columns, r.Figures.Rows }));
            return 0;
        }

        foreach (var run in book.Runs)
        {
            Out.Line($"{EnumWords.Of(run.Kind.ToString()),-6}  {run.Title}: {run.Figures.Headline}");
            Out.Line($"        {Story(run)}");
            Out.Line($"        {(run.HoldsIn(now) ? "holds: every value that it read is as it was" : "stale: a value that it read is not as it was; run it again")}");
        }

        Out.LineIf(book.Runs.Count == 0, "no kept runs; gudgeon run --keep TITLE keeps one");
        return 0;
    }

    private static string Story(KeptRun run) => string.Concat(
        run.By.Length > 0 ? $"{run.By}, " : "",
        run.On.Length > 0 ? $"{run.On}, " : "",
        run.Revision > 0 ? string.Create(CultureInfo.InvariantCulture, $"revision {run.Revision}, ") : "",
        $"program {run.Version}, {run.Depth.From()}, ",
        run.Changes.Count > 0 ? $"with {string.Join(", ", run.Changes)}" : "no changes on",
        run.Given.Count > 0 ? $"; given {string.Join(", ", run.Given.Select(g => $"{g.Key} {g.Value}"))}" : "");
}
