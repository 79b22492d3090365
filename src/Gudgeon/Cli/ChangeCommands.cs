using System.ComponentModel;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon change add: begins a change.</summary>
internal sealed class ChangeAddCommand : Command<ChangeAddCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] ID>")]
        [Description("The book, the only one in this folder when left out; a short name for the change, such as valve-spacers.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--title <TEXT>")]
        [Description("What is done.")]
        public string Title { get; init; } = "";

        [CommandOption("--reason <TEXT>")]
        [Description("Why.")]
        public string Reason { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (book, rest) = Books.Split(settings.Words, 1, "gudgeon change add [BOOK] ID --title TEXT --reason TEXT");
        settings.Open(book).AddChange(rest[0], settings.Title, settings.Reason);
        Out.Line($"{rest[0]} is on; give it values with: gudgeon set PATH VALUE --change {rest[0]}");
        return 0;
    }
}

/// <summary>gudgeon change on and off.</summary>
internal sealed class ChangeSwitchCommand : Command<ChangeSwitchCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] ID>")]
        [Description("The book, the only one in this folder when left out; the name of the change.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (book, rest) = Books.Split(settings.Words, 1, $"gudgeon change {context.Name} [BOOK] ID");
        var on = context.Name == "on";
        settings.Open(book).Switch(rest[0], on);
        Out.Line($"{rest[0]} is {context.Name}");
        return 0;
    }
}

/// <summary>gudgeon change list.</summary>
internal sealed class ChangeListCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var book = settings.Open().Book;
        if (settings.Json)
        {
            Out.Json(book.Changes.Select(c => new { c.Id, c.Title, c.Reason, c.On, values = c.Values.ToDictionary(v => v.Key, v => v.Value.Content.ToString()) }));
            return 0;
        }

        foreach (var change in book.Changes)
        {
            Out.Line($"{(change.On ? "on " : "off")}  {change.Id,-20} {change.Title}");
            Out.LineIf(change.Reason.Length > 0, $"     {"",-20} because {change.Reason}");
            foreach (var (path, value) in change.Values)
            {
                Out.Line($"     {"",-20} {path} = {value.Content} ({value.Story})");
            }
        }

        Out.LineIf(book.Changes.Count == 0, "no changes yet; begin one with: gudgeon change add ID --title TEXT --reason TEXT");
        return 0;
    }
}
