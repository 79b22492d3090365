using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints bolts: every joint in a line, and one of them whole.</summary>
internal sealed class BoltsCommand : SheetCommand<JointSettings, (JointSheet All, JointFigures One)>
{
    protected override (JointSheet All, JointFigures One) Work(JointSettings settings, BookFile file, DutyDesk desk)
    {
        var view = new View(file.Book.Now(), desk);
        var key = JointSheet.Named(view, settings.Joint);
        var all = JointSheet.Of(view);
        return (all, all.Joints.First(j => j.Key == key));
    }

    protected override void Draw((JointSheet All, JointFigures One) sheet, string picture, JointSettings settings) => JointPictures.Diagrams([($"Joint {sheet.One.Key}", sheet.One)], picture, settings.Imperial);

    protected override object Json((JointSheet All, JointFigures One) sheet) => new { joints = sheet.All.Joints.Select(j => new { j.Key, j.Thread, facts = FactLines.Json(j.Facts), j.Missing, j.Refused }) };

    protected override bool Finished((JointSheet All, JointFigures One) sheet) => sheet.One.Missing.Length == 0 && sheet.All.Joints.All(j => j.Refused.Length == 0);

    protected override void Print((JointSheet All, JointFigures One) sheet, bool imperial)
    {
        var (all, joint) = sheet;
        Columns.Print(JointCells.Joints, all.Joints.Select(new JointCells(imperial).Of));
        foreach (var refused in all.Joints.Select(j => j.Refused).Where(r => r.Length > 0))
        {
            Out.Line(refused);
        }

        Out.Line();
        Out.Line($"Joint {joint.Key}:");
        FactLines.Print(joint.Facts, imperial);
        Out.LineIf(joint.Missing.Length > 0, joint.Missing);
        Out.Line();
        Out.Line(JointSheet.Remark);
        Out.Line("Caution: " + JointSheet.Caution);
    }
}
