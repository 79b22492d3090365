using System.ComponentModel;
using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom loads: what gas and inertia do to rods, pins and bearings.</summary>
internal sealed class LoadsCommand : SheetCommand<LoadsCommand.Settings, LoadsSheet>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--at <SPEED>")]
        [Description("Crank speed to draw; the nearest of the run is taken, the highest when left out.")]
        public string? At { get; init; }
    }

    protected override LoadsSheet Work(Settings settings, BookFile file, DutyDesk desk) =>
        LoadsSheet.Of(new View(file.Book.Now(), desk), RunCommand.Asked(settings.At, "--at"));

    protected override void Draw(LoadsSheet sheet, string picture, Settings settings)
    {
        if (sheet.Shown is not null)
        {
            LoadsPictures.Draw(sheet, picture, settings.Imperial);
        }
    }

    protected override bool Finished(LoadsSheet sheet) => sheet.Shown is not null;

    protected override void Print(LoadsSheet sheet, bool imperial)
    {
        if (sheet.Shown is not null)
        {
            Columns.Print(LoadsCells.Headings(sheet), sheet.Rows.Select(new LoadsCells(imperial).Of));
            Out.Line();
            Out.Line($"At {sheet.At}:");
            FactLines.Print(sheet.Facts, imperial);
            Out.Line();
        }

        if (sheet.Missing.Length > 0)
        {
            Out.Line(sheet.Missing);
        }

        Out.Line(LoadsSheet.Remark);
    }

    protected override object Json(LoadsSheet sheet) => new
    {
        mains = sheet.MainNames,
        speeds = sheet.Rows.Select(r => new { r.Speed, r.RodTension, r.RodCompression, r.GudgeonPin, r.SideThrust, r.BigEnd, mains = r.Mains.Select(m => double.IsNaN(m) ? (double?)null : m), r.Torque, r.PeakTorque }),
        shown = sheet.Shown?.Speed,
        facts = FactLines.Json(sheet.Facts),
        missing = sheet.Missing,
    };
}
