using Gudgeon.Book.Joints;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints plan: stages and order of one joint.</summary>
internal sealed class PlanCommand : Command<JointSettings>
{
    public override int Execute(CommandContext context, JointSettings settings, CancellationToken cancellationToken)
    {
        var view = new View(settings.Open().Book.Now());
        var plan = TighteningPlan.Of(view, JointSheet.Named(view, settings.Joint));
        if (settings.Svg is not null)
        {
            JointPictures.Plan(plan.Places.Count > 0 ? plan : throw new BadInputException(plan.Troubles[0]), settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(plan);
        }
        else
        {
            Print(plan, settings.Imperial);
        }

        return plan.Troubles.Count > 0 ? 3 : 0;
    }

    private static void Print(TighteningPlan plan, bool imperial)
    {
        Out.Line($"Joint {plan.Key}, {plan.OrderName}. Before the first stage:");
        foreach (var step in TighteningPlan.Before)
        {
            Out.Line("  - " + step);
        }

        Out.Line();
        Columns.Print(JointCells.Stages, plan.Stages.Select((s, i) => new JointCells(imperial).Of(s, i + 1)));
        Out.Line();
        foreach (var trouble in plan.Troubles)
        {
            Out.Line(trouble);
        }

        Out.Line("Caution: " + TighteningPlan.Caution);
    }
}
