using Gudgeon.Book.Bottom;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom shells: the table of shells to work from.</summary>
internal sealed class ShellsCommand : Command<SheetSettings>
{
    /// <summary>Exit code when a bearing stays without shells.</summary>
    private const int NotAll = 3;

    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var sheet = ShellsSheet.Of(settings.Open().Book.Now());
        if (settings.Svg is not null)
        {
            ShellsPicture.Draw(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(sheet);
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return sheet.Open == 0 ? 0 : NotAll;
    }

    private static void Print(ShellsSheet sheet, bool imperial)
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
