using System.ComponentModel;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon fields: everything that can be known about a build.</summary>
internal sealed class FieldsCommand : Command<FieldsCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[FILTER]")]
        [Description("Part of a path or a label.")]
        public string? Filter { get; init; }

        [CommandOption("--json")]
        [Description("Print JSON.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var fields = FieldCatalogue.All.Where(f => settings.Filter is null || f.Path.Contains(settings.Filter, StringComparison.OrdinalIgnoreCase) || f.Label.Contains(settings.Filter, StringComparison.OrdinalIgnoreCase)).ToList();
        if (fields.Count == 0)
        {
            throw new BadInputException($"no field has '{settings.Filter}' in its path or label; the nearest is '{Nearest.To(settings.Filter!, FieldCatalogue.All.Select(f => f.Path))}'");
        }

        if (settings.Json)
        {
            Out.Json(fields.Select(Json));
            return 0;
        }

        foreach (var subject in fields.GroupBy(f => f.Subject))
        {
            Out.Line($"{subject.Key.Label} ({Index(subject.Key)})");
            foreach (var field in subject)
            {
                Out.Line($"  {field.Path,-32} {field.Label}{Range(field)}");
                Out.LineIf(field.Help.Length > 0, $"  {"",-32}   {field.Help}");
                Out.LineIf(field.Measured.Length > 0, $"  {"",-32}   measured by: {field.Measured}");
            }
        }

        return 0;
    }

    private static string Index(Subject subject) => subject.Indexing switch
    {
        Indexing.Cylinder => $"{subject.Path}[1], or {subject.Path} for all",
        Indexing.Valve => $"{subject.Path}[inlet.1.2], {subject.Path}[inlet], or {subject.Path} for all",
        Indexing.Name => $"{subject.Path}[name], or {subject.Path} for all",
        _ => subject.Path,
    };

    private static string Range(Field field) => field.Kind switch
    {
        FieldKind.Amount => $"; {field.Dimension} [{(field.Unit.Length > 0 ? field.Unit : "number")}]; usual {field.Print(field.Plausible.Low)} to {field.Print(field.Plausible.High)}",
        FieldKind.Count => $"; whole number; usual {field.Plausible.Low} to {field.Plausible.High}",
        FieldKind.Choice => $"; one of {string.Join(", ", field.Choices)}",
        FieldKind.Table => $"; table of {string.Join(", ", field.Columns.Select(c => $"{c.Name} {c.Unit}".Trim() + (c.Optional ? " (optional)" : "")))}",
        FieldKind.Date => "; a day, 2026-11-30",
        _ => "; text",
    };

    private static object Json(Field field) => new
    {
        path = field.Path,
        label = field.Label,
        subject = field.Subject.Path,
        indexing = field.Subject.Indexing,
        kind = field.Kind,
        dimension = field.Kind == FieldKind.Amount ? field.Dimension.ToString() : null,
        unit = field.Kind == FieldKind.Amount ? field.Unit : null,
        plausible = field.Kind is FieldKind.Amount or FieldKind.Count ? new { low = field.Plausible.Low, high = field.Plausible.High, unit = Calc.Catalogue.Dimensions.SiUnit(field.Dimension) } : null,
        choices = field.Choices,
        columns = field.Columns.Select(c => new { c.Name, dimension = c.Dimension.ToString(), c.Unit, c.Optional }),
        measured = field.Measured,
        help = field.Help,
    };
}

/// <summary>gudgeon schema: the JSON Schema of a book.</summary>
internal sealed class SchemaCommand : Command
{
    public override int Execute(CommandContext context, CancellationToken cancellationToken)
    {
        Out.Json(BookSchema.Make());
        return 0;
    }
}
