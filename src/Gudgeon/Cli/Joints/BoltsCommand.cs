using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints bolts: every joint in a line, and one of them whole.</summary>
internal sealed class BoltsCommand : Command<JointSettings>
{
    public override int Execute(CommandContext context, JointSettings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var view = new View(file.Book.Now(), Books.Desk(file, cancellationToken));
        var key = JointSheet.Named(view, settings.Joint);
        var sheet = JointSheet.Of(view);
        var joint = sheet.Joints.First(j => j.Key == key);
        if (settings.Svg is not null)
        {
            JointPictures.Diagrams([($"Joint {key}", joint)], settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { joints = sheet.Joints.Select(j => new { j.Key, j.Thread, facts = FactLines.Json(j.Facts), j.Missing }) });
        }
        else
        {
            Print(sheet, joint, settings.Imperial);
        }

        return joint.Missing.Length > 0 ? 3 : 0;
    }

    private static void Print(JointSheet sheet, JointFigures joint, bool imperial)
    {
        Columns.Print(JointCells.Joints, sheet.Joints.Select(new JointCells(imperial).Of));
        Out.Line();
        Out.Line($"Joint {joint.Key}:");
        FactLines.Print(joint.Facts, imperial);
        Out.LineIf(joint.Missing.Length > 0, joint.Missing);
        Out.Line();
        Out.Line(JointSheet.Remark);
        Out.Line("Caution: " + JointSheet.Caution);
    }
}
