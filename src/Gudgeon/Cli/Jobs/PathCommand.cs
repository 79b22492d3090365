using System.Globalization;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Jobs;

/// <summary>gudgeon jobs path: the longest way to the first start.</summary>
internal sealed class PathCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var book = settings.Open().Book;
        var path = CriticalPath.Of(book, book.Now(), Days.Today);
        if (settings.Json)
        {
            Out.Json(new { begin = Days.Written(path.Begin), end = Days.Written(path.End), work = path.Work, cards = path.Cards.Select(c => new { c.Card.Card.Id, c.Card.Card.Title, start = Days.Written(path.Morning(c.Start)), finish = Days.Written(path.On(c.Finish)), slackDays = c.Slack, c.Critical, waitsFor = c.Part?.Words }), undated = path.Undated.Select(p => p.Words) });
            return 0;
        }

        Out.Line($"{"card",-12} {"from",-10} {"to",-10} {"may be late by",-15}");
        foreach (var card in path.Cards)
        {
            Out.Line($"{card.Card.Card.Id,-12} {Days.Written(path.Morning(card.Start))} {Days.Written(path.On(card.Finish))} {(card.Critical ? "not at all" : $"{Figures.Number(card.Slack, 3)} d"),-15} {card.Card.Card.Title}{(card.Part is { } part ? $" (waits for {part.Words})" : "")}");
        }

        Out.Line();
        Out.Line(path.Words);
        foreach (var part in path.Undated)
        {
            Out.Line($"{part.Words}: counted as here");
        }

        return 0;
    }
}
