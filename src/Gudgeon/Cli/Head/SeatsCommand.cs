using Gudgeon.Cli.Sheets;
using System.Globalization;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head seats: seats, guides and stems, and the leak test.</summary>
internal sealed class SeatsCommand : Command<SheetSettings>
{
    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var sheet = SeatSheet.Of(new View(file.Book.Now(), Books.Desk(file, cancellationToken)));
        if (settings.Svg is not null)
        {
            SeatPicture.Draw(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(sheet);
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return 0;
    }

    private static void Print(SeatSheet sheet, bool imperial)
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
