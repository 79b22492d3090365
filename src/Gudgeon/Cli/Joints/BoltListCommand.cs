using System.ComponentModel;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints list: the bolts to order.</summary>
internal sealed class BoltListCommand : Command<BoltListCommand.Settings>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--csv <FILE>")]
        [Description("Write it as CSV.")]
        public string? Csv { get; init; }

        [CommandOption("--xlsx <FILE>")]
        [Description("Write it as a spreadsheet.")]
        public string? Xlsx { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var list = BoltList.Of(new View(settings.Open().Book.Now()));
        if (settings.Csv is not null)
        {
            BoltListFile.WriteCsv(list, settings.Csv);
        }

        if (settings.Xlsx is not null)
        {
            BoltListFile.WriteSheet(list, settings.Xlsx);
        }

        if (settings.Svg is not null)
        {
            JointPictures.Masses(list, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(list);
        }
        else
        {
            Print(list, settings.Imperial);
        }

        return 0;
    }

    private static void Print(BoltList list, bool imperial)
    {
        var cells = new JointCells(imperial);
        Columns.Print(JointCells.Bolts, list.Lines.Select(cells.Of));
        Out.Line($"together {cells.Mass(list.Mass)}, {cells.Mass(list.MassSaved)} less than in steel; {JointCells.Money(list.Cost)} in the shop's money");
        Out.Line(BoltList.Remark);
    }
}
