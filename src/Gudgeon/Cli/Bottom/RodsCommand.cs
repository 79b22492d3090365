using Gudgeon.Book.Bottom;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom rods: rods, their bolts and the strength of the crank.</summary>
internal sealed class RodsCommand : Command<SheetSettings>
{
    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var sheet = RodSheet.Of(new View(file.Book.Now(), Books.Desk(file, cancellationToken)));
        if (settings.Svg is not null)
        {
            RodPictures.Draw(sheet, settings.Svg, settings.Imperial);
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

    private static void Print(RodSheet sheet, bool imperial)
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

        Out.Line(RodSheet.Remark);
        foreach (var remark in RodSheet.Remarks)
        {
            Out.Line(remark);
        }

        Out.Line("Caution: " + RodSheet.Caution);
    }

    private static object Json(RodSheet sheet) => new
    {
        rods = sheet.Rods.Select(r => new { cylinder = r.Cylinder, facts = FactLines.Json(r.Facts) }),
        bolts = sheet.Bolts.Select(b => new { joint = b.Joint, facts = FactLines.Json(b.Facts) }),
        throws = sheet.Throws.Select(t => new { cylinder = t.Cylinder, facts = FactLines.Json(t.Facts) }),
        missing = sheet.Missing,
    };
}
