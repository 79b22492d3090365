using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom shells: the table of shells to work from.</summary>
internal sealed class ShellsCommand : SheetCommand<SheetSettings, ShellsSheet>
{
    protected override ShellsSheet Work(SheetSettings settings, BookFile file, DutyDesk desk) =>
        ShellsSheet.Of(file.Book.Now());

    protected override void Draw(ShellsSheet sheet, string picture, SheetSettings settings) => ShellsPicture.Draw(sheet, picture, settings.Imperial);

    protected override object Json(ShellsSheet sheet) => sheet;

    protected override bool Finished(ShellsSheet sheet) => sheet.Open == 0;

    protected override void Print(ShellsSheet sheet, bool imperial)
    {
        Columns.Print(ShellsCells.Headings, sheet.Rows.Select(new ShellsCells(imperial).Of));
        Out.LineIf(sheet.Bought.Count > 0, $"to buy: {ShellsCells.ToBuy(sheet)}");
        foreach (var trouble in sheet.Troubles)
        {
            Out.Line(trouble);
        }

        Out.Line();
        foreach (var (step, i) in ShellsSheet.Steps.Select((s, i) => (s, i)))
        {
            Out.Line(FormattableString.Invariant($"{i + 1}. {step}"));
        }

        Out.Line("Caution: " + ShellsSheet.Caution);
    }
}
