using Gudgeon.Book.Joints;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints head: the head joint over the levels of boost.</summary>
internal sealed class HeadJointCommand : Command<JointSettings>
{
    public override int Execute(CommandContext context, JointSettings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var sheet = HeadJointSheet.Of(file.Book.Now(), Books.Desk(file, cancellationToken), settings.Joint);
        if (settings.Svg is not null)
        {
            JointPictures.Head(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { sheet.Key, varied = sheet.Varied.Path, sheet.Now, sheet.Levels, facts = FactLines.Json(sheet.Facts) });
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return 0;
    }

    private static void Print(HeadJointSheet sheet, bool imperial)
    {
        Out.Line($"Joint {sheet.Key}:");
        FactLines.Print(sheet.Facts, imperial);
        Out.Line();
        var cells = new JointCells(imperial);
        Columns.Print(JointCells.Levels(sheet), sheet.Levels.Select(l => cells.Of(sheet, l)));
        Out.Line();
        Out.Line(HeadJointSheet.Remark);
        Out.Line("Caution: " + HeadJointSheet.Caution);
    }
}
