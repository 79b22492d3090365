using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints head: the head joint over the levels of boost.</summary>
internal sealed class HeadJointCommand : SheetCommand<JointSettings, HeadJointSheet>
{
    protected override HeadJointSheet Work(JointSettings settings, BookFile file, DutyDesk desk) =>
        HeadJointSheet.Of(file.Book.Now(), desk, settings.Joint);

    protected override void Draw(HeadJointSheet sheet, string picture, JointSettings settings) => JointPictures.Head(sheet, picture, settings.Imperial);

    protected override object Json(HeadJointSheet sheet) => new { sheet.Key, varied = sheet.Varied.Path, sheet.Now, sheet.Levels, facts = FactLines.Json(sheet.Facts), sheet.Refused };

    protected override bool Finished(HeadJointSheet sheet) => sheet.Refused.Length == 0;

    protected override void Print(HeadJointSheet sheet, bool imperial)
    {
        Out.Line($"Joint {sheet.Key}:");
        FactLines.Print(sheet.Facts, imperial);
        Out.LineIf(sheet.Refused.Length > 0, sheet.Refused);
        Out.Line();
        var cells = new JointCells(imperial);
        Columns.Print(JointCells.Levels(sheet), sheet.Levels.Select(l => cells.Of(sheet, l)));
        Out.Line();
        Out.Line(HeadJointSheet.Remark);
        Out.Line("Caution: " + HeadJointSheet.Caution);
    }
}
