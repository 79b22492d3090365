using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints plan: stages and order of one joint.</summary>
internal sealed class PlanCommand : SheetCommand<JointSettings, TighteningPlan>
{
    protected override TighteningPlan Work(JointSettings settings, BookFile file, DutyDesk desk)
    {
        var view = new View(file.Book.Now());
        return TighteningPlan.Of(view, JointSheet.Named(view, settings.Joint));
    }

    protected override void Draw(TighteningPlan sheet, string picture, JointSettings settings) => JointPictures.Plan(sheet.Places.Count > 0 ? sheet : throw new BadInputException(sheet.Troubles[0]), picture, settings.Imperial);

    protected override object Json(TighteningPlan sheet) => sheet;

    protected override bool Finished(TighteningPlan sheet) => sheet.Troubles.Count == 0;

    protected override void Print(TighteningPlan plan, bool imperial)
    {
        Out.Line($"Joint {plan.Key}, {plan.OrderName}. Before the first stage:");
        foreach (var step in TighteningPlan.Before)
        {
            Out.Line("  - " + step);
        }

        Out.Line();
        Out.Line(plan.Numbering);
        Columns.Print(JointCells.Stages, plan.Stages.Select((s, i) => new JointCells(imperial).Of(s, i + 1)));
        Out.Line();
        foreach (var trouble in plan.Troubles)
        {
            Out.Line(trouble);
        }

        Out.Line("Caution: " + TighteningPlan.Caution);
    }
}
