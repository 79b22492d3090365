using System.Globalization;
using Gudgeon.Book.Jobs;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Jobs;

/// <summary>gudgeon jobs board: every card, by the part of the rebuild that it belongs to.</summary>
internal sealed class BoardCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var book = settings.Open().Book;
        var cards = CardStates.Of(book, book.Now());
        if (settings.Json)
        {
            Out.Json(cards.Select(c => new { c.Card.Id, c.Card.Title, c.Card.Stage, c.Card.After, c.Card.Own, standing = c.Standing, steps = c.Steps.Count, done = c.StepsDone, c.WaitsFor, c.LookAgain, c.LeftOut, signedBy = c.Signature?.By, signedOn = c.Signature?.On }));
            return 0;
        }

        foreach (var stage in cards.GroupBy(c => c.Card.Stage))
        {
            Out.Line(stage.Key);
            foreach (var card in stage)
            {
                Out.Line($"  {card.Card.Id,-12} {card.Standing.Words(),-11} {Steps(card),-15} {card.Card.Title}{Why(card)}");
            }
        }

        Out.Line();
        Out.Line(string.Create(CultureInfo.InvariantCulture, $"{cards.Count(c => c.Standing == Standing.Signed)} of {cards.Count(c => c.Standing != Standing.LeftOut)} signed"));
        return 0;
    }

    private static string Steps(CardState card) => string.Create(CultureInfo.InvariantCulture, $"{card.StepsDone} of {card.Steps.Count} steps");

    private static string Why(CardState card) => card.Standing switch
    {
        Standing.Waiting or Standing.Begun when card.WaitsFor.Count > 0 => $" (waits for {string.Join(", ", card.WaitsFor)})",
        Standing.LookAgain => $" ({string.Join("; ", card.LookAgain.Take(2))}{(card.LookAgain.Count > 2 ? string.Create(CultureInfo.InvariantCulture, $"; and {card.LookAgain.Count - 2} more") : "")})",
        Standing.Signed => $" (by {card.Signature!.By}{(card.Signature.Overridden.Count > 0 ? ", overriding" : "")})",
        Standing.LeftOut => $" ({card.LeftOut})",
        _ => "",
    };
}
