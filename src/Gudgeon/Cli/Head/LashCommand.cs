using Gudgeon.Cli.Sheets;
using Gudgeon.Book.Head;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head lash: the table of shims to work from.</summary>
internal sealed class LashCommand : Command<SheetSettings>
{
    /// <summary>Exit code when a valve stays without a shim that does.</summary>
    private const int NotAll = 3;

    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var sheet = LashSheet.Of(settings.Open().Book.Now());
        if (settings.Svg is not null)
        {
            LashPicture.Draw(sheet, settings.Svg, settings.Imperial);
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

    private static void Print(LashSheet sheet, bool imperial)
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
