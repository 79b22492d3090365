using System.ComponentModel;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon set: gives a field a value, in the baseline or in a change.</summary>
internal sealed class SetCommand : Command<SetCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<WORDS>")]
        [Description("[[BOOK]] PATH VALUE, such as cylinder[1].bore \"94.01 mm ± 0.005 mm\".")]
        public string[] Words { get; init; } = [];

        [CommandOption("--change <ID>")]
        [Description("Set it in this change instead of the baseline.")]
        public string? Change { get; init; }

        [CommandOption("--how <HOW>")]
        [Description("manual, drawing, measured or assumed.")]
        public string How { get; init; } = "";

        [CommandOption("--by <NAME>")]
        [Description("Who says so.")]
        public string By { get; init; } = "";

        [CommandOption("--on <DATE>")]
        [Description("When.")]
        public string On { get; init; } = "";

        [CommandOption("--with <INSTRUMENT>")]
        [Description("With which instrument.")]
        public string With { get; init; } = "";

        [CommandOption("--note <TEXT>")]
        [Description("Anything else worth knowing.")]
        public string Note { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (book, rest) = Books.Split(settings.Words, 2, "gudgeon set [BOOK] PATH VALUE");
        Dictionary<string, string> story = new(StringComparer.Ordinal) { ["how"] = settings.How, ["by"] = settings.By, ["on"] = settings.On, ["with"] = settings.With, ["note"] = settings.Note };
        var file = BookFile.Open(book).Set(rest[0], rest[1], story, settings.Change);
        Echo(file, rest[0]);
        return 0;
    }

    /// <summary>Says what holds now, and asks when it is outside what is usual.</summary>
    internal static void Echo(BookFile file, string path)
    {
        var address = FieldCatalogue.Address(path);
        var found = file.Book.Now().Find(address)!;
        Out.Line($"{address.Path} is {found.Value.Content} ({found.Value.Story})");
        Out.LineIf(found.Value.Question.Length > 0, "? " + found.Value.Question);
    }
}
