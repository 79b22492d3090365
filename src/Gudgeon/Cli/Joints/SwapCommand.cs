using System.ComponentModel;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints swap: a joint with other bolts beside the joint as it is.</summary>
internal sealed class SwapCommand : SheetCommand<SwapCommand.Settings, SwapSheet>
{
    internal sealed class Settings : JointSettings
    {
        [CommandOption("--material <NAME>")]
        [Description("What the other bolts are of: titanium, steel 8.8, steel 10.9, steel 12.9, 17-4 PH, nickel 718, aluminium 7075.")]
        public string? Material { get; init; }

        [CommandOption("--set <VALUES>")]
        [Description("Other values of the joint, such as \"thread=11mm; pitch=1.25mm\": larger studs.")]
        public string[] Set { get; init; } = [];
    }

    protected override SwapSheet Work(Settings settings, BookFile file, DutyDesk desk) =>
        Compare(file.Book, desk, settings);

    protected override void Draw(SwapSheet sheet, string picture, Settings settings) => JointPictures.Diagrams([.. sheet.Columns.Select(c => ($"{sheet.Key}, {(c.Name == "now" ? c.Name : $"{sheet.Other}, {c.Name}")}", c.Figures))], picture, settings.Imperial);

    protected override object Json(SwapSheet sheet) => new { sheet.Key, sheet.Other, columns = sheet.Columns.Select(c => new { c.Name, c.Torque, c.Mass, facts = FactLines.Json(c.Figures.Facts), verdicts = c.Verdicts.Select(v => new { v.Check, reserve = double.IsFinite(v.Reserve) ? v.Reserve : (double?)null, verdict = v.Verdict.Words() }) }), sheet.Cautions, sheet.FallsShort, sheet.Trouble };

    protected override bool Finished(SwapSheet sheet) => sheet.Trouble.Length == 0 && !sheet.FallsShort.Any();

    private static SwapSheet Compare(Book.Build.BuildBook book, Book.Duty.DutyDesk desk, Settings settings)
    {
        var key = JointSheet.Named(new View(book.Now()), settings.Joint);
        if (settings.Material is null && settings.Set.Length == 0)
        {
            throw new BadInputException("wanted --material or --set: what the other bolts are");
        }

        var material = settings.Material is { } name ? SwapMaterial.Of(name) : null;
        if (material is not null && settings.Set.Length == 0)
        {
            return SwapSheet.Of(book, desk, key, material);
        }

        var given = Books.Given(settings.Set, $"joint[{key}].");
        var values = SwapSheet.Values(book, key, material, given);
        return SwapSheet.Compare(book, desk, key, string.Join(", ", given.Select(v => $"{v.Value.Field.Label} {v.Value.Content}").Prepend(material?.Name).OfType<string>()), values, material?.Cautions ?? []);
    }

    protected override void Print(SwapSheet sheet, bool imperial)
    {
        Out.Line($"Joint {sheet.Key}, as it is and with {sheet.Other}:");
        Columns.Print(["\t", .. sheet.Columns.Select(c => c.Name)], new JointCells(imperial).Rows(sheet));
        Out.Line();
        Out.LineIf(sheet.Trouble.Length > 0, sheet.Trouble);
        foreach (var shortfall in sheet.FallsShort)
        {
            Out.Line(shortfall);
        }

        Out.Line(SwapSheet.Remark);
        foreach (var caution in sheet.Cautions)
        {
            Out.Line("Caution: " + caution);
        }
    }
}
