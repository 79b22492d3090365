using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Book.Checks.Goal;

/// <summary>Quarter-mile time that the standing-start run predicts against the time that is wanted.</summary>
public sealed class TargetQuarterCheck : Check
{

    public override string Id => "target-quarter";

    public override string Title => "Predicted quarter mile against the target";

    public override string Family => "goal";

    public override string Source => "standing-start run on the torque curve of the engine run; the uncertainties of the machine are carried, those of the engine run are not";

    public override string Caution => "A standing start at full power is for a closed course, full gear, marshals and an ambulance; the scrutineers have the last word.";

    public override IEnumerable<string> Instances(View view) => view.Knows(Target.QuarterTime) ? [""] : [];

    public override Judgement Examine(View view, string index)
    {
        var time = double.NaN;
        if (SprintAssembly.Build(view, StripLength.QuarterMile) is { } spec)
        {
            try
            {
                time = StandingStart.Run(spec).At(StripLength.QuarterMile)?.Time ?? double.PositiveInfinity;
            }
            catch (SprintSpecException e)
            {
                view.Unknown(e.Message);
            }
        }

        return Judgement.AtMost("quarter-mile time", time, view.Amount(Target.QuarterTime), Dimension.Time, "s", "target.quarter");
    }
}
