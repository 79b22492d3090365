using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Head;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head lash: the table of shims to work from.</summary>
internal sealed class LashCommand : SheetCommand<SheetSettings, LashSheet>
{
    protected override LashSheet Work(SheetSettings settings, BookFile file, DutyDesk desk) =>
        LashSheet.Of(file.Book.Now());

    protected override void Draw(LashSheet sheet, string picture, SheetSettings settings) => LashPicture.Draw(sheet, picture, settings.Imperial);

    protected override object Json(LashSheet sheet) => sheet;

    protected override bool Finished(LashSheet sheet) => sheet.Open == 0;

    protected override void Print(LashSheet sheet, bool imperial)
    {
        var cells = new LashCells(imperial);
        Columns.Print(LashCells.Headings, sheet.Rows.Select(cells.Of));
        Out.LineIf(sheet.Bought.Count > 0, $"to buy: {cells.ToBuy(sheet)}");
        foreach (var trouble in sheet.Troubles)
        {
            Out.Line(trouble);
        }

        Out.Line();
        foreach (var (step, i) in LashSheet.Steps.Select((s, i) => (s, i)))
        {
            Out.Line(FormattableString.Invariant($"{i + 1}. {step}"));
        }

        Out.Line("Caution: " + LashSheet.Caution);
    }
}
