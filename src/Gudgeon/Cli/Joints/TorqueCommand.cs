using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints torque: where the torque goes, and what it does on other lubricants.</summary>
internal sealed class TorqueCommand : SheetCommand<JointSettings, TorqueSheet>
{
    protected override TorqueSheet Work(JointSettings settings, BookFile file, DutyDesk desk)
    {
        var view = new View(file.Book.Now());
        return TorqueSheet.Of(view, JointSheet.Named(view, settings.Joint));
    }

    protected override void Draw(TorqueSheet sheet, string picture, JointSettings settings) => JointPictures.Lubricants(sheet, picture, settings.Imperial);

    protected override object Json(TorqueSheet sheet) => new { sheet.Key, facts = FactLines.Json(sheet.Facts), sheet.Rows, sheet.Missing, sheet.Refused };

    protected override bool Finished(TorqueSheet sheet) => sheet.Missing.Length == 0 && sheet.Refused.Length == 0;

    protected override void Print(TorqueSheet sheet, bool imperial)
    {
        Out.Line($"Joint {sheet.Key}:");
        FactLines.Print(sheet.Facts, imperial);
        Out.LineIf(sheet.Missing.Length > 0, sheet.Missing);
        Out.LineIf(sheet.Refused.Length > 0, sheet.Refused);
        Out.Line();
        Out.Line("The same torque on other lubricants, and the torque that would keep the preload:");
        Columns.Print(JointCells.Lubricants, sheet.Rows.Select(new JointCells(imperial).Of));
        Out.Line();
        Out.Line(TorqueSheet.Remark);
        Out.Line("Caution: " + TorqueSheet.Caution);
    }
}
