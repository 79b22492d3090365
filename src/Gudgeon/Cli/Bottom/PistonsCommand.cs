using Gudgeon.Book.Bottom;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom pistons: gudgeon pins, pistons, rings and the clearances that move.</summary>
internal sealed class PistonsCommand : Command<SheetSettings>
{
    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var sheet = PistonSheet.Of(new View(file.Book.Now(), Books.Desk(file, cancellationToken)));
        if (settings.Svg is not null)
        {
            PistonPictures.Draw(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(Json(sheet));
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return 0;
    }

    private static void Print(PistonSheet sheet, bool imperial)
    {
        foreach (var (title, facts) in sheet.Groups)
        {
            Out.Line(title);
            FactLines.Print(facts, imperial);
            Out.Line();
        }

        if (sheet.Missing.Length > 0)
        {
            Out.Line(sheet.Missing);
        }

        Out.Line(PistonSheet.Remark);
        foreach (var remark in PistonSheet.Remarks)
        {
            Out.Line(remark);
        }

        Out.Line("Caution: " + PistonSheet.Caution);
    }

    private static object Json(PistonSheet sheet) => new
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
