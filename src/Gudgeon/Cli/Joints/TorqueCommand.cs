using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints torque: where the torque goes, and what it does on other lubricants.</summary>
internal sealed class TorqueCommand : Command<JointSettings>
{
    public override int Execute(CommandContext context, JointSettings settings, CancellationToken cancellationToken)
    {
        var view = new View(settings.Open().Book.Now());
        var sheet = TorqueSheet.Of(view, JointSheet.Named(view, settings.Joint));
        if (settings.Svg is not null)
        {
            JointPictures.Lubricants(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { sheet.Key, facts = FactLines.Json(sheet.Facts), sheet.Rows, sheet.Missing });
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return sheet.Missing.Length > 0 ? 3 : 0;
    }

    private static void Print(TorqueSheet sheet, bool imperial)
    {
        Out.Line($"Joint {sheet.Key}:");
        FactLines.Print(sheet.Facts, imperial);
        Out.LineIf(sheet.Missing.Length > 0, sheet.Missing);
        Out.Line();
        Out.Line("The same torque on other lubricants, and the torque that would keep the preload:");
        Columns.Print(JointCells.Lubricants, sheet.Rows.Select(new JointCells(imperial).Of));
        Out.Line();
        Out.Line(TorqueSheet.Remark);
        Out.Line("Caution: " + TorqueSheet.Caution);
    }
}
