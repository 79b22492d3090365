using System.Globalization;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head seats: seats, guides and stems, and the leak test.</summary>
internal sealed class SeatsCommand : SheetCommand<SheetSettings, SeatSheet>
{
    protected override SeatSheet Work(SheetSettings settings, BookFile file, DutyDesk desk) =>
        SeatSheet.Of(new View(file.Book.Now(), desk));

    protected override void Draw(SeatSheet sheet, string picture, SheetSettings settings) => SeatPicture.Draw(sheet, picture, settings.Imperial);

    protected override object Json(SeatSheet sheet) => sheet;

    protected override void Print(SeatSheet sheet, bool imperial)
    {
        Columns.Print(["valve\t", .. SeatCells.Headings], sheet.Rows.Select(r => (IReadOnlyList<string>)[r.Valve, .. new SeatCells(imperial).Of(r)]));
        Out.Line(SeatCells.Pressure(sheet, imperial));
        foreach (var leak in sheet.Leaks)
        {
            Out.Line($"leak test, cylinder {leak.Cylinder}: {leak.Leakage.ToString("P1", CultureInfo.InvariantCulture)}{(leak.Meaning.Length > 0 ? ", " + leak.Meaning : "")}");
        }

        Out.Line();
        foreach (var remark in SeatSheet.Remarks)
        {
            Out.Line(remark);
        }

        Out.Line("Caution: " + SeatSheet.Caution);
    }
}
