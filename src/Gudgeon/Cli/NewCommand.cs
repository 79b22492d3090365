using System.ComponentModel;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon new: begins a book.</summary>
internal sealed class NewCommand : Command<NewCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<FILE>")]
        [Description("The new file: heron.gudgeon, with a journal of every edit, or heron.json, for a text editor.")]
        public string File { get; init; } = "";

        [CommandOption("--name <NAME>")]
        [Description("Name of the build; the file's name when left out.")]
        public string? Name { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.File.Length == 0 || Directory.Exists(settings.File))
        {
            throw new BadInputException($"given '{settings.File}', wanted the name of a new file, such as heron.json");
        }

        var book = BookFile.Create(settings.File, settings.Name ?? Path.GetFileNameWithoutExtension(settings.File));
        Out.Line($"{book.Book.Name} begins in {settings.File}; give it values with: gudgeon set engine.cylinders 2");
        return 0;
    }
}
