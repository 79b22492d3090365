using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head clearance: the room between valves and pistons.</summary>
internal sealed class ClearanceCommand : SheetCommand<SheetSettings, ClearanceSheet>
{
    protected override ClearanceSheet Work(SheetSettings settings, BookFile file, DutyDesk desk)
    {
        var sheet = ClearanceSheet.Of(file.Book.Now(), desk);
        return sheet.Valves.Count > 0 ? sheet : throw new BadInputException(string.Join("; ", sheet.Missing));
    }

    protected override void Draw(ClearanceSheet sheet, string picture, SheetSettings settings) => ClearancePicture.Draw(sheet, picture, settings.Imperial);

    protected override object Json(ClearanceSheet sheet) => new
    {
        angles = ClearanceSheet.Angles,
        valves = sheet.Valves.Select(v => new { index = v.Index, cold = v.Cold, running = v.Running, lift = v.Lift, wanted = v.Wanted, leastCold = v.LeastCold, leastRunning = v.LeastRunning, takes = new { v.Takes.Timing, v.Takes.Lash, v.Takes.Thrown, v.Takes.Stretch }, clay = v.Clay, beside = v.Beside }),
        missing = sheet.Missing,
    };

    protected override void Print(ClearanceSheet sheet, bool imperial)
    {
        var cells = new RoomCells(imperial);
        Columns.Print(["valve\t", .. RoomCells.Headings], sheet.Valves.Select(v => (IReadOnlyList<string>)[v.Index, .. cells.Of(v)]));
        Out.Line(RoomCells.Legend);
        foreach (var missing in sheet.Missing)
        {
            Out.Line(missing);
        }

        Out.Line("Caution: " + ClearanceSheet.Caution);
    }
}
