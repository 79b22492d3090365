using System.ComponentModel;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon limit: sets a limit of one's own, with a reason.</summary>
internal sealed class LimitCommand : Command<LimitCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] NAME VALUE>")]
        [Description("The book, the only one in this folder when left out; the limit, named after its check; its value, such as squish.min \"0.9 mm\".")]
        public string[] Words { get; init; } = [];

        [CommandOption("--reason <TEXT>")]
        [Description("Why it is not the usual one.")]
        public string Reason { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (book, rest) = Books.Split(settings.Words, 2, "gudgeon limit [BOOK] NAME VALUE --reason TEXT");
        if (settings.Reason.Length == 0)
        {
            throw new BadInputException($"limit {rest[0]}: a limit of one's own needs a reason: --reason TEXT");
        }

        settings.Open(book).Limit(rest[0], rest[1], settings.Reason);
        Out.Line($"limit {rest[0]} is {rest[1]}, because {settings.Reason}");
        return 0;
    }
}
