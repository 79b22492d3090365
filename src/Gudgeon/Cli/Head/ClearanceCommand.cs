using Gudgeon.Cli.Sheets;
using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head clearance: the room between valves and pistons.</summary>
internal sealed class ClearanceCommand : Command<SheetSettings>
{
    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var sheet = ClearanceSheet.Of(file.Book.Now(), Books.Desk(file, cancellationToken));
        if (sheet.Valves.Count == 0)
        {
            throw new BadInputException(string.Join("; ", sheet.Missing));
        }

        if (settings.Svg is not null)
        {
            ClearancePicture.Draw(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { angles = ClearanceSheet.Angles, valves = sheet.Valves.Select(v => new { index = v.Index, cold = v.Cold, running = v.Running, lift = v.Lift, wanted = v.Wanted, leastCold = v.LeastCold, leastRunning = v.LeastRunning, takes = new { v.Takes.Timing, v.Takes.Lash, v.Takes.Thrown, v.Takes.Stretch }, clay = v.Clay, beside = v.Beside }), missing = sheet.Missing });
            return 0;
        }

        var cells = new RoomCells(settings.Imperial);
        Columns.Print(["valve\t", .. RoomCells.Headings], sheet.Valves.Select(v => (IReadOnlyList<string>)[v.Index, .. cells.Of(v)]));
        Out.Line(RoomCells.Legend);
        foreach (var missing in sheet.Missing)
        {
            Out.Line(missing);
        }

        Out.Line("Caution: " + ClearanceSheet.Caution);
        return 0;
    }
}
