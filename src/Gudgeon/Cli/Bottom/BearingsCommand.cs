using System.ComponentModel;
using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom bearings: clearances, films, oil.</summary>
internal sealed class BearingsCommand : SheetCommand<BearingsCommand.Settings, BearingsSheet>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--at <SPEED>")]
        [Description("Crank speed to show; the nearest of the run is taken, the highest when left out.")]
        public string? At { get; init; }
    }

    protected override BearingsSheet Work(Settings settings, BookFile file, DutyDesk desk) =>
        BearingsSheet.Of(new View(file.Book.Now(), desk), RunCommand.Asked(settings.At, "--at"));

    protected override void Draw(BearingsSheet sheet, string picture, Settings settings)
    {
        if (sheet.Rows.Count > 0)
        {
            BearingsPicture.Draw(sheet, picture, settings.Imperial);
        }
    }

    protected override bool Finished(BearingsSheet sheet) => sheet.Courses.Count > 0;

    protected override void Print(BearingsSheet sheet, bool imperial)
    {
        var cells = new BearingsCells(imperial);
        Columns.Print(BearingsCells.FitHeadings, sheet.Rows.Select(cells.Fit));
        Out.Line();
        if (sheet.Courses.Count > 0)
        {
            Out.Line($"At {Engine.RevLimit.Print(sheet.Speed!.Value)}, angles after firing TDC of cylinder 1:");
            Columns.Print(BearingsCells.RunHeadings, sheet.Rows.Select(cells.Run));
            Out.Line();
            FactLines.Print(sheet.Facts, imperial);
            Out.Line();
            Columns.Print(BearingsCells.SpeedHeadings(sheet), sheet.Speeds.Select((_, i) => cells.At(sheet, i)));
            Out.Line();
        }

        foreach (var trouble in sheet.Troubles)
        {
            Out.Line(trouble);
        }

        Out.Line(BearingsSheet.Remark);
        Out.Line("Caution: " + BearingsSheet.Caution);
    }

    protected override object Json(BearingsSheet sheet) => new
    {
        speed = sheet.Speed,
        bearings = sheet.Rows,
        speeds = sheet.Speeds.Select((s, i) => new { s.Speed, films = sheet.Courses.Select((c, k) => new { bearing = c.Bearing, film = s.Film[k] }), oil = new { sheet.Demands[i].Bearings, sheet.Demands[i].Other, pump = double.IsNaN(sheet.Demands[i].Pump) ? null : (double?)sheet.Demands[i].Pump, sheet.Demands[i].Loss } }),
        facts = FactLines.Json(sheet.Facts),
        troubles = sheet.Troubles,
    };
}
