using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Checks.Balance;

/// <summary>Stress of torsional vibration in the joint that has it hardest within the running range.</summary>
public sealed class TorsionalCheck : Check
{
    private const int Points = 80;

    public override string Id => "torsional-critical";

    public override string Title => "Torsional vibration in the running range";

    public override string Family => "balance";

    public override string Source => "forced vibration of the line by gas and inertia, orders 0.5 to 12; nominal stress of 50 MPa in a steel crank: common practice, no source";

    public override string Caution => TorsionSheet.Caution;

    public override IEnumerable<string> Instances(View view) => TorsionAssembly.Names(view).Count > 1 ? [""] : [];

    public override Judgement Examine(View view, string index)
    {
        var (run, crank) = (CycleLoads.All(view), CrankAssembly.Of(view));
        var worst = crank is not null && run.Count > 0 && TorsionAssembly.Of(view, crank) is { } build && TorsionalDuty.Range(view) is { } range ? Worst(build, TorqueOrders.Of(crank, run), range) : null;
        if (worst is null && !view.Trace.Missing.Any())
        {
            view.Unknown($"{Rotor.Diameter.Path} of a joint");
        }

        return Judgement.AtMost("vibratory torsional stress", worst?.Stress ?? double.NaN, worst?.Joint.Limit ?? double.NaN, Dimension.Pressure, "MPa", "rotor.stressLimit, else common practice, no source") with
        {
            Remark = worst is null ? "" : $"{worst.Joint.Name}, at {Figures.Rpm(worst.Speed)}, most of it order {Figures.Number(worst.Order, 3)}",
        };
    }

    private static JointRow? Worst(TorsionalBuild build, TorqueOrders torque, (double From, double To) range) => TorsionalDuty
        .Joints(build, TorsionalSweep.Of(build.Line, torque, TorsionalDuty.Speeds(range.From, range.To, Points)), range)
        .Where(j => j.Stress is not null)
        .MaxBy(j => j.Stress / j.Joint.Limit);
}
