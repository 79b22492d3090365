using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Fits;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Fits;

/// <summary>gudgeon fits pairs: every fit of a build.</summary>
internal sealed class PairsCommand : SheetCommand<SheetSettings, FitsSheet>
{
    protected override FitsSheet Work(SheetSettings settings, BookFile file, DutyDesk desk) =>
        FitsSheet.Of(file.Book.Now());

    protected override void Draw(FitsSheet sheet, string picture, SheetSettings settings) => FitPictures.Draw(sheet, picture, settings.Imperial);

    protected override object Json(FitsSheet sheet) => new { fits = sheet.Rows.Select(Json), spreads = sheet.Spreads };

    protected override bool Finished(FitsSheet sheet) => sheet.Rows.Count > 0 && sheet.Rows.All(r => r.Refused.Count == 0);

    protected override void Print(FitsSheet sheet, bool imperial)
    {
        var cells = new FitCells(imperial);
        if (sheet.Rows.Count == 0)
        {
            Out.Line("No fit is in the book: set fit[name].size, holeClass, shaftClass, hole and shaft.");
            return;
        }

        Columns.Print(["fit\t", .. FitCells.Headings], sheet.Rows.Select(r => (IReadOnlyList<string>)[r.Index, .. cells.Of(r)]));
        foreach (var row in sheet.Rows.Where(r => r.Facts.Count > 0))
        {
            Out.Line();
            Out.Line($"{row.Index}:");
            FactLines.Print(row.Facts, imperial);
        }

        if (sheet.Spreads.Count > 0)
        {
            Out.Line();
            Columns.Print(["kind\t", .. FitCells.SpreadHeadings], sheet.Spreads.Select(s => (IReadOnlyList<string>)[s.Name, .. cells.Of(s)]));
        }

        Out.Line();
        FactLines.PrintRefused(sheet.Rows.SelectMany(r => r.Refused.Select(s => $"{r.Index}: {s}")));
        Out.Line(FitsSheet.Remark);
        Out.Line("Caution: " + FitsSheet.Caution);
    }

    private static object Json(FitRow row) => new
    {
        row.Index, row.Size, row.Classes, zones = SizeZone.Of(row), row.Hole, row.Shaft, row.Interference, row.Least, row.Greatest, row.Hot, row.SlipTorque, row.HubTemperature,
        facts = FactLines.Json(row.Facts), row.Refused,
    };
}
