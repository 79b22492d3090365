using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom pistons: gudgeon pins, pistons, rings and the clearances that move.</summary>
internal sealed class PistonsCommand : SheetCommand<SheetSettings, PistonSheet>
{
    protected override PistonSheet Work(SheetSettings settings, BookFile file, DutyDesk desk) =>
        PistonSheet.Of(new View(file.Book.Now(), desk));

    protected override void Draw(PistonSheet sheet, string picture, SheetSettings settings) => PistonPictures.Draw(sheet, picture, settings.Imperial);

    protected override void Print(PistonSheet sheet, bool imperial) => FactLines.Print(sheet.Groups, sheet.Missing, [PistonSheet.Remark, .. PistonSheet.Remarks], PistonSheet.Caution, imperial);

    protected override object Json(PistonSheet sheet) => new
    {
        pistons = sheet.Pistons.Select(p => new
        {
            cylinder = p.Cylinder,
            pin = FactLines.Json(p.Pin),
            piston = FactLines.Json(p.Piston),
            rings = FactLines.Json(p.Rings),
            squish = FactLines.Json(p.Squish.Facts),
        }),
        missing = sheet.Missing,
    };
}
