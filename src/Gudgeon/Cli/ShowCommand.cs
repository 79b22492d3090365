using System.ComponentModel;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon show: the values that hold, and how each is known.</summary>
internal sealed class ShowCommand : Command<ShowCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandArgument(0, "[BOOK-OR-PATH]")]
        [Description("The book, the path of a field or subject, or both: heron.json cylinder.bore.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var named = settings.Words.Length > 0 && Books.IsNamed(settings.Words[0]);
        if (settings.Words.Length > (named ? 2 : 1))
        {
            throw new BadInputException("wanted: gudgeon show [BOOK] [PATH]");
        }

        var file = BookFile.Open(Books.Find(named ? settings.Words[0] : null));
        var filter = settings.Words.Skip(named ? 1 : 0).FirstOrDefault() ?? "";
        var values = file.Book.Now().All().Where(f => Matches(f, filter)).ToList();
        if (values.Count == 0)
        {
            throw new BadInputException(filter.Length > 0
                ? $"nothing is known under '{filter}'; the nearest field is '{Nearest.To(filter, FieldCatalogue.All.Select(f => f.Path))}'"
                : "the book holds no values yet");
        }

        if (settings.Json)
        {
            Out.Json(values.Select(Json));
            return 0;
        }

        var conflicts = file is StoredBook stored ? stored.Conflicts : [];
        Out.Line($"{file.Book.Name}: {file.Book.Changes.Count(c => c.On)} of {file.Book.Changes.Count} changes on, {file.Book.Measurements.Count} readings{(file.Revision > 0 ? $", revision {file.Revision}" : "")}");
        Out.LineIf(conflicts.Count > 0, $"! {conflicts.Count} {(conflicts.Count == 1 ? "conflict waits" : "conflicts wait")} to be settled (gudgeon conflicts): {string.Join(", ", conflicts.Select(c => c.Path))}");
        foreach (var subject in values.GroupBy(v => v.Value.Field.Subject))
        {
            Out.Line();
            Out.Line(subject.Key.Label);
            foreach (var found in subject)
            {
                Out.Line($"  {found.Source,-34} {Shown(found.Value, settings.Imperial),-26} {Origin(found)}");
                Out.LineIf(found.Value.Question.Length > 0, $"      ? {found.Value.Question}");
                if (filter.Length > 0)
                {
                    Readings(file.Book, found, settings.Imperial);
                }
            }
        }

        return 0;
    }

    /// <summary>Every reading of the field, unless it is the one that holds and stands there already.</summary>
    private static void Readings(BuildBook book, Found found, bool imperial)
    {
        var readings = book.Measurements.Where(m => m.Address.Path == found.Source).ToList();
        foreach (var reading in readings.Where(r => readings.Count > 1 || !ReferenceEquals(r, found.Reading)))
        {
            Out.Line($"      reading {Shown(reading.Value, imperial)} ({reading.Value.Story}){(reading.Value.Note.Length > 0 ? $": {reading.Value.Note}" : "")}");
        }
    }

    private static bool Matches(Found found, string filter) =>
        filter.Length == 0 || found.Source.StartsWith(filter, StringComparison.Ordinal) || found.Value.Field.Path.StartsWith(filter, StringComparison.Ordinal);

    private static string Shown(KnownValue value, bool imperial) => value.Content is Amount amount && imperial
        ? Figures.Print(amount.Si, value.Field.Dimension, value.Field.Unit, 5, imperial: true)
        : value.Content.ToString()!;

    private static string Origin(Found found) => found.Origin switch
    {
        Book.Build.Origin.Measurement when found.Repeats > 1 => $"mean of {found.Repeats} readings, {found.Value.Story}",
        Book.Build.Origin.Measurement => found.Value.Story,
        Book.Build.Origin.Change => $"change {found.Under}, {found.Value.Story}",
        _ => $"baseline, {found.Value.Story}",
    };

    private static object Json(Found found) => new
    {
        path = found.Source,
        label = found.Value.Field.Label,
        value = found.Value.Content is Table table ? null : found.Value.Content.ToString(),
        table = found.Value.Content is Table t ? new { columns = t.Headings, rows = t.Shown } : null,
        si = double.IsNaN(found.Value.Si) ? (double?)null : found.Value.Si,
        siUnit = found.Value.Field.Kind == FieldKind.Amount ? Calc.Catalogue.Dimensions.SiUnit(found.Value.Field.Dimension) : null,
        standardUncertainty = found.Value.StandardUncertainty,
        how = found.Value.How,
        by = found.Value.By,
        on = found.Value.On,
        with = found.Value.With,
        note = found.Value.Note,
        origin = found.Origin,
        change = found.Under,
        repeats = found.Repeats,
        question = found.Value.Question,
    };
}
