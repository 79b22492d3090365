using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom rods: rods, their bolts and the strength of the crank.</summary>
internal sealed class RodsCommand : SheetCommand<SheetSettings, RodSheet>
{
    protected override RodSheet Work(SheetSettings settings, BookFile file, DutyDesk desk) =>
        RodSheet.Of(new View(file.Book.Now(), desk));

    protected override void Draw(RodSheet sheet, string picture, SheetSettings settings) => RodPictures.Draw(sheet, picture, settings.Imperial);

    protected override void Print(RodSheet sheet, bool imperial) => FactLines.Print(sheet.Groups, sheet.Missing, [RodSheet.Remark, .. RodSheet.Remarks], RodSheet.Caution, imperial);

    protected override object Json(RodSheet sheet) => new
    {
        rods = sheet.Rods.Select(r => new { cylinder = r.Cylinder, facts = FactLines.Json(r.Facts) }),
        bolts = sheet.Bolts.Select(b => new { joint = b.Joint, facts = FactLines.Json(b.Facts) }),
        throws = sheet.Throws.Select(t => new { cylinder = t.Cylinder, facts = FactLines.Json(t.Facts) }),
        missing = sheet.Missing,
    };
}
