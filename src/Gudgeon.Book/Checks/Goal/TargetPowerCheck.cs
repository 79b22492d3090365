using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Goal;

/// <summary>Power that the run predicts against the power that is wanted.</summary>
public sealed class TargetPowerCheck : Check
{
    public override string Id => "target-power";

    public override string Title => "Predicted power against the target";

    public override string Family => "goal";

    public override string Source => "engine run, full load, lumped model";

    public override IEnumerable<string> Instances(View view) => view.Knows(Target.Power) ? [""] : [];

    public override Judgement Examine(View view, string index)
    {
        var (power, speed) = view.Duty()?.Power ?? (double.NaN, double.NaN);
        return Judgement.AtLeast("greatest power", power, view.Amount(Target.Power), Dimension.Power, "kW", "target.power") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }
}
