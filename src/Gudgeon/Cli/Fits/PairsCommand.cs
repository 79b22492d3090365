using Gudgeon.Book.Fits;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Fits;

/// <summary>gudgeon fits pairs: every fit of a build.</summary>
internal sealed class PairsCommand : Command<SheetSettings>
{
    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var sheet = FitsSheet.Of(settings.Open().Book.Now());
        if (settings.Svg is not null)
        {
            FitPictures.Draw(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { fits = sheet.Rows.Select(Json), spreads = sheet.Spreads });
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return 0;
    }

    private static void Print(FitsSheet sheet, bool imperial)
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
        Out.Line(FitsSheet.Remark);
        Out.Line("Caution: " + FitsSheet.Caution);
    }

    private static object Json(FitRow row) => new
    {
        row.Index, row.Size, row.Classes, row.HoleLimits, row.ShaftLimits, row.Hole, row.Shaft, row.Interference, row.Least, row.Greatest, row.Hot, row.SlipTorque, row.HubTemperature,
        facts = FactLines.Json(row.Facts),
    };
}
