using System.ComponentModel;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon set: gives a field a value, in the baseline or in a change.</summary>
internal sealed class SetCommand : Command<SetCommand.Settings>
{
    /// <summary>What a file of a table looks like.</summary>
    internal const string TableHelp = "A CSV file with the table: headings as gudgeon fields shows the columns, such as 'lift mm,flow L/s'; commas, semicolons (then a decimal comma may stand) or tabs; # before a remark. Angles may be headed cam ° or crank °. A flow bench's file says '# test pressure: 28 inH2O' and may say '# standard: 20 °C, 1013 hPa', or have a column 'depression kPa'.";

    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] PATH VALUE>")]
        [Description("The book, the only one in this folder when left out; the path of a field; its value, such as cylinder[[1]].bore \"94.01 mm ± 0.005 mm\". A file given with --from stands in place of the value.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--from <FILE>")]
        [Description(TableHelp)]
        public string? From { get; init; }

        [CommandOption("--change <ID>")]
        [Description("Set it in this change instead of the baseline.")]
        public string? Change { get; init; }

        [CommandOption("--how <HOW>")]
        [Description("How it is known: manual, drawing, measured or assumed; assumed when left out.")]
        public string How { get; init; } = "";

        [CommandOption("--based-on <REVISION>")]
        [Description("The revision that you saw: when the same value was edited since, both are kept until somebody settles.")]
        public int? BasedOn { get; init; }

        [CommandOption("--on <DATE>")]
        [Description("When it was read or said.")]
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
        var (book, rest) = settings.From is null ? Books.Split(settings.Words, 2, "gudgeon set [BOOK] PATH VALUE") : Books.Split(settings.Words, 1, "gudgeon set [BOOK] PATH --from FILE");
        Dictionary<string, string> story = new(StringComparer.Ordinal) { ["how"] = settings.How.Length > 0 ? settings.How : "assumed", ["by"] = settings.By, ["on"] = settings.On, ["with"] = settings.With, ["note"] = settings.Note };
        var table = settings.From is null ? null : TableFile.Open(rest[0], settings.From);
        var open = settings.Open(book);
        var file = table is null ? open.Set(rest[0], rest[1], story, settings.Change, settings.BasedOn) : open.Set(table, story, settings.Change, settings.BasedOn);
        var address = FieldCatalogue.Address(rest[0]);
        var layer = settings.Change is null ? file.Book.Baseline : file.Book.Find(settings.Change).Values;
        if (file is StoredBook { Contested: true })
        {
            Out.Line($"{address.Path} was edited after revision {settings.BasedOn} and holds {layer[address.Path].Content}; both are kept (gudgeon conflicts)");
            return 0;
        }

        foreach (var set in (table?.Conditions ?? []).Select(c => address with { Field = c.Key }).Prepend(address))
        {
            Echo(file.Book, set, layer[set.Path], settings.Change is null ? "in the baseline" : $"in the change {settings.Change}");
        }

        return 0;
    }

    /// <summary>Says what was taken, what holds when something else comes first, and asks when it is outside what is usual.</summary>
    internal static void Echo(BuildBook book, FieldAddress address, KnownValue taken, string where)
    {
        var holds = book.Now().Find(address);
        Out.Line($"{address.Path} is {taken.Content}{(ReferenceEquals(holds?.Value, taken) ? "" : $" {where}")} ({taken.Story})");
        Out.LineIf(holds is null, "  it does not hold now: the change is off");
        Out.LineIf(holds is not null && !ReferenceEquals(holds.Value, taken), $"  what holds now is {holds?.Value.Content} ({(holds?.Under.Length > 0 ? $"change {holds.Under}, " : "")}{holds?.Value.Story})");
        Out.LineIf(taken.Question.Length > 0, "? " + taken.Question);
    }
}
