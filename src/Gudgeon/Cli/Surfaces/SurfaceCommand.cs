using System.ComponentModel;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Surfaces;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Surfaces;

/// <summary>gudgeon surface heron.json gears --svg strips.svg: route cards of surface treatments.</summary>
internal sealed class SurfaceCommand : SheetCommand<SurfaceCommand.Settings, IReadOnlyList<RouteSheet>>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandArgument(1, "[NAME]")]
        [Description("The treatment; all of the book when left out.")]
        public string? Name { get; init; }
    }

    protected override IReadOnlyList<RouteSheet> Work(Settings settings, BookFile file, DutyDesk desk) => RouteSheet.Named(file.Book.Now(), settings.Name);

    protected override void Draw(IReadOnlyList<RouteSheet> sheet, string picture, Settings settings)
    {
        var strips = sheet.SelectMany(s => s.Steps).Select(s => s.Strips).OfType<StripCurve>().ToList();
        StripPictures.Draw(strips.Count > 0 ? strips : throw new BadInputException("--svg: no step has strip readings, so there is no curve to draw; peening[name].readings is wanted"), picture, settings.Imperial);
    }

    protected override object Json(IReadOnlyList<RouteSheet> sheet) => sheet.Select(s => new { s.Name, s.Part, steps = s.Steps.Select(Json), handed = FactLines.Json(s.Handed), s.Notes, s.Troubles });

    protected override bool Finished(IReadOnlyList<RouteSheet> sheet) => sheet.Count > 0 && sheet.All(s => s.Troubles.Count == 0);

    protected override void Print(IReadOnlyList<RouteSheet> sheet, bool imperial)
    {
        Out.LineIf(sheet.Count == 0, RouteSheet.None);
        foreach (var route in sheet)
        {
            Print(route, imperial);
        }

        Out.LineIf(sheet.Count > 0, RouteSheet.Remark);
    }

    private static object Json(RouteStep step) => new { step.Name, step.Process, facts = FactLines.Json(step.Facts), step.Words, step.Before, step.After, step.Masked, step.MaskedPath, step.Cautions, step.Source, step.Strips };

    private static void Print(RouteSheet route, bool imperial)
    {
        Out.Line($"Route card {route.Name}{(route.Part.Length > 0 ? ": " + route.Part : "")}");
        List("Wanting", route.Troubles);
        for (var i = 0; i < route.Steps.Count; i++)
        {
            Out.Line();
            Print(i + 1, route.Steps[i], imperial);
        }

        Out.Line();
        Out.LineIf(route.Handed.Count > 0, "Handed to the checks");
        FactLines.Print(route.Handed, imperial);
        List("Not counted", route.Notes);
        Out.Line();
    }

    private static void Print(int number, RouteStep step, bool imperial)
    {
        Out.Line($"{number}. {step.Title}");
        foreach (var caution in step.Cautions)
        {
            Out.Line("  Caution: " + caution);
        }

        Out.LineIf(step.Words.Count > 0, "  " + string.Join(" ", step.Words));
        FactLines.Print(step.Facts, imperial);
        List("  Masked or plugged", step.Masked);
        List("  Before", step.Before);
        List("  After", step.After);
        Out.Line("  Sources: " + step.Source);
    }

    private static void List(string title, IReadOnlyList<string> lines)
    {
        Out.LineIf(lines.Count > 0, title + ":");
        foreach (var line in lines)
        {
            Out.Line("    - " + line);
        }
    }
}
