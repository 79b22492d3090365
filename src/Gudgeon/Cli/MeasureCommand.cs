using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon measure: adds a reading; earlier ones stay.</summary>
internal sealed class MeasureCommand : Command<MeasureCommand.Settings>
{
    internal const string MadeOfHelp = "What the part is made of: its thermal expansion, such as 23µm/(m·K), or a material of the handbook, such as \"steel 42CrMo4\"; by the part's own field when left out.";

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[WORDS]")]
        [Description("The book, the only one in this folder when left out; the path of a field; the reading, such as cylinder[[1]].bore \"94.012 mm ± 0.006 mm\"; no reading with --from, neither with --csv.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--from <FILE>")]
        [Description(SetCommand.TableHelp)]
        public string? From { get; init; }

        [CommandOption("--csv <FILE>")]
        [Description("Readings of several fields, one to a line, under the headings field, value, unit, with, by, on, note, id, part at, tool at, made of: all of them or none; field and value must be there. A line without with, by or on has those given here.")]
        public string? Csv { get; init; }

        [CommandOption("--with <INSTRUMENT>")]
        [Description("With which instrument; the key of one of the book's, such as mic-25, and the reading is kept with its ± where it states none.")]
        public string With { get; init; } = "";

        [CommandOption("--by <NAME>")]
        [Description("Who read it.")]
        public string By { get; init; } = "";

        [CommandOption("--on <DATE>")]
        [Description("When it was read: a day such as 2026-11-29, or a time such as \"2026-11-29 08:30\"; now when left out.")]
        public string On { get; init; } = "";

        [CommandOption("--note <TEXT>")]
        [Description("Anything else worth knowing.")]
        public string Note { get; init; } = "";

        [CommandOption("--part-at <TEMPERATURE>")]
        [Description("Temperature of the part, such as 26°C or \"26 ± 0.5 °C\": a length is kept as it is at 20 °C (ISO 1), and its ± counts what the temperatures leave uncertain. With --tool-at.")]
        public string PartAt { get; init; } = "";

        [CommandOption("--tool-at <TEMPERATURE>")]
        [Description("Temperature of the instrument, which is taken to be of steel.")]
        public string ToolAt { get; init; } = "";

        [CommandOption("--made-of <MATERIAL>")]
        [Description(MadeOfHelp)]
        public string MadeOf { get; init; } = "";

        [CommandOption("--id <GUID>")]
        [Description("An id made where it was read, so that a reading sent again is not taken again.")]
        public string Id { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var on = settings.On.Length > 0 ? Days.Said("--on", settings.On) : DateTimeOffset.Now.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        if (settings.Csv is not null)
        {
            return Sheet(settings, on);
        }

        var (book, rest) = settings.From is null
            ? Books.Split(settings.Words, 2, "gudgeon measure [BOOK] PATH VALUE --with INSTRUMENT --by NAME")
            : Books.Split(settings.Words, 1, "gudgeon measure [BOOK] PATH --from FILE --with INSTRUMENT --by NAME");
        if (settings.With.Length == 0 || settings.By.Length == 0)
        {
            throw new BadInputException($"{rest[0]}: a reading needs the instrument and the person: --with INSTRUMENT --by NAME");
        }

        var table = settings.From is null ? null : TableFile.Open(rest[0], settings.From);
        var at = ReadAt.Said(rest[0], settings.PartAt, settings.ToolAt, settings.MadeOf);
        if (at is not null && table is not null)
        {
            throw new BadInputException($"{rest[0]}: a table is kept as it was read; gudgeon measuring-plan brings its mean to 20 °C");
        }

        var open = BookFile.Open(book, Hand.Here(settings.By));
        var file = table is null
            ? open.Measure(rest[0], rest[1], settings.With, settings.By, on, settings.Note, settings.Id, at)
            : open.Measure(table, settings.With, settings.By, on, settings.Note, settings.Id);
        if (file.Repeated)
        {
            Out.Line($"{FieldCatalogue.Address(rest[0]).Path}: this reading was taken before, and is not taken again");
            return 0;
        }

        foreach (var taken in file.Book.Measurements.TakeLast(1 + (table?.Conditions.Count ?? 0)))
        {
            SetCommand.Echo(file.Book, taken.Address, taken.Value, "by this reading");
        }

        Warn(file);
        return 0;
    }

    private static int Sheet(Settings settings, string on)
    {
        var (book, _) = Books.Split(settings.Words, 0, "gudgeon measure [BOOK] --csv FILE --with INSTRUMENT --by NAME");
        var readings = ReadingSheet.Open(settings.Csv!, settings.With, settings.By, on);
        var file = BookFile.Open(book, Hand.Here(settings.By)).Measure(readings, out var taken);
        foreach (var reading in file.Book.Measurements.TakeLast(taken))
        {
            SetCommand.Echo(file.Book, reading.Address, reading.Value, "by this reading");
        }

        Out.Line($"{taken} of {readings.Count} {(readings.Count == 1 ? "reading" : "readings")} taken{(taken < readings.Count ? "; the others were taken before" : "")}");
        Warn(file);
        return 0;
    }

    /// <summary>Says what whoever read it should know of the instrument.</summary>
    internal static void Warn(BookFile file)
    {
        foreach (var warning in file.Warnings)
        {
            Out.Line("! " + warning);
        }
    }
}
