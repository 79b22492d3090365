using System.ComponentModel;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Limits;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon gives: what gives first.</summary>
internal sealed class GivesCommand : Command<GivesCommand.Settings>
{
    private const int BarWidth = 46;

    internal sealed class Settings : ReadSettings
    {
        [CommandOption("--svg <FILE>")]
        [Description("Draw the ladder.")]
        public string? Svg { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var ladder = GivesFirst.Climb(file.Book.Now(), new() { Cancellation = cancellationToken, Shelf = file.Shelf }, Progress.OnTerminal("what gives first"));
        if (settings.Svg is not null)
        {
            Pictures.Ladder(ladder, settings.Svg);
        }

        if (settings.Json)
        {
            Out.Json(new
            {
                varied = ladder.Varied.Path,
                now = ladder.Now,
                depth = ladder.Depth,
                target = ladder.Target,
                levels = ladder.Levels,
                rungs = ladder.Rungs.Select(r => new { id = r.Finding.Id, title = r.Finding.Check.Title, verdict = Book.Checks.Verdicts.Words(r.Finding.Verdict), reserves = r.Reserves, power = r.Power, value = r.Value, givesBelow = r.GivesBelow }),
                dropped = ladder.Dropped,
            });
        }
        else
        {
            Print(ladder, settings.Imperial);
        }

        return 0;
    }

    /// <summary>The ladder as bars in the terminal.</summary>
    internal static void Print(Ladder ladder, bool imperial, int most = int.MaxValue)
    {
        Out.Line($"Levels by {ladder.Varied.Label.ToLowerInvariant()}: {string.Join(", ", ladder.Levels.Select(l => ladder.Words(l, imperial)))}");
        foreach (var dropped in ladder.Dropped)
        {
            Out.Line($"Left out: {dropped}.");
        }

        var top = Math.Max(ladder.Top, ladder.Mark ?? 0) * 1.02;
        var mark = ladder.Mark is { } marked ? (int)Math.Round(marked / top * BarWidth) : -1;
        Out.Line($"{"",-28} {new string(' ', Math.Max(mark, 0))}{(mark < 0 ? "" : "v " + ladder.MarkWords(imperial))}");
        foreach (var rung in ladder.Rungs.Take(most))
        {
            var length = (int)Math.Round((ladder.At(rung) ?? top) / top * BarWidth);
            var bar = new char[BarWidth];
            for (var i = 0; i < BarWidth; i++)
            {
                bar[i] = i == mark ? '|' : i < length ? (ladder.At(rung) is null ? '.' : '=') : ' ';
            }

            Out.Line($"{rung.Finding.Id,-28} {new string(bar)} {ladder.Words(rung, imperial)}");
        }

        Out.Line(ladder.Depth.Sentence());
    }
}
