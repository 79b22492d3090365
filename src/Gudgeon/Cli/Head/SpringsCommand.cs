using System.ComponentModel;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head springs: loads at the installed heights, spacers to fit, springs sorted into sets.</summary>
internal sealed class SpringsCommand : SheetCommand<SpringsCommand.Settings, (Snapshot Now, SpringSheet Sheet)>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--valve <VALVE>")]
        [Description("The valve that is drawn: exhaust.1.2; the first when left out.")]
        public string? Valve { get; init; }
    }

    protected override (Snapshot Now, SpringSheet Sheet) Work(Settings settings, BookFile file, DutyDesk desk)
    {
        var now = file.Book.Now();
        return (now, SpringSheet.Of(now));
    }

    protected override void Draw((Snapshot Now, SpringSheet Sheet) sheet, string picture, Settings settings) => SpringPicture.Draw(SpringDiagram.Of(sheet.Now, Drawn(sheet.Sheet, settings.Valve)), picture, settings.Imperial);

    protected override object Json((Snapshot Now, SpringSheet Sheet) sheet) => sheet.Sheet;

    /// <exception cref="BadInputException">No such valve.</exception>
    private static string Drawn(SpringSheet sheet, string? valve)
    {
        var keys = sheet.Rows.Select(r => r.Valve).ToList();
        return valve is null ? keys[0] : keys.Contains(valve, StringComparer.Ordinal) ? valve : throw new BadInputException($"--valve: given '{valve}', wanted one of {string.Join(", ", keys)}");
    }

    protected override void Print((Snapshot Now, SpringSheet Sheet) sheet, bool imperial) => Print(sheet.Sheet, imperial);

    private static void Print(SpringSheet sheet, bool imperial)
    {
        var cells = new SpringCells(imperial);
        Columns.Print(["valve\t", .. SpringCells.Headings], sheet.Rows.Select(r => (IReadOnlyList<string>)[r.Valve, .. cells.Of(r)]));
        if (sheet.Spacers.Count > 0)
        {
            Out.Line();
            Out.Line("Spacers off the bench, nearest to the seat load wanted:");
            Columns.Print(["valve\t", "wanted", "fit\t", .. SpringCells.StateHeadings], sheet.Spacers.Select(r => (IReadOnlyList<string>)[r.Valve, Spring.SeatLoadWanted.Print(r.Wanted, imperial), cells.Choice(r), .. cells.Of(r.Chosen?.State)]));
        }

        if (sheet.Sorting is { } sorting)
        {
            Out.Line();
            Out.Line("Springs off the bench, in sets of least spread:");
            Columns.Print(["valve\t", "spring", "tested", "seat load"], sorting.Places.Select(p => (IReadOnlyList<string>)[p.Valve, SpringCells.Number(p.Spring.Number), cells.Load(p.Spring.Load), cells.Load(p.SeatLoad)]));
            foreach (var (side, spread) in sorting.Spreads)
            {
                Out.Line($"{side}: {cells.Load(spread)} {sorting.SpreadWords}");
            }

            Out.LineIf(sorting.Left.Count > 0, $"left over: {string.Join(", ", sorting.Left.Select(s => SpringCells.Number(s.Number)))}");
            Out.LineIf(sorting.Sentence.Length > 0, sorting.Sentence);
        }

        Out.Line();
        foreach (var remark in SpringSheet.Remarks)
        {
            Out.Line(remark);
        }

        Out.Line("Caution: " + SpringSheet.Caution);
    }
}
