using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Drawings;

/// <summary>When the valves of one cylinder open and close. rad of the crank; null where it is not known.</summary>
/// <param name="InletOpens">Before TDC.</param>
/// <param name="InletCloses">After BDC.</param>
/// <param name="ExhaustOpens">Before BDC.</param>
/// <param name="ExhaustCloses">After TDC.</param>
/// <param name="InletDuration">Crank angle for which the inlet valve is open.</param>
/// <param name="ExhaustDuration">Crank angle for which the exhaust valve is open.</param>
/// <param name="Overlap">Crank angle for which both are open; negative when there is none.</param>
/// <param name="InletLift">Lift curve; null when the book has none.</param>
/// <param name="ExhaustLift">Lift curve; null when the book has none.</param>
public sealed record ValveTiming(
    double? InletOpens,
    double? InletCloses,
    double? ExhaustOpens,
    double? ExhaustCloses,
    double? InletDuration,
    double? ExhaustDuration,
    double? Overlap,
    Table? InletLift,
    Table? ExhaustLift)
{
    /// <summary>Firing TDC is 0; these follow it, rad.</summary>
    private const double FirstBdc = Math.PI, OverlapTdc = 2 * Math.PI, SecondBdc = 3 * Math.PI;

    /// <summary>Keys of the cylinders.</summary>
    public static IReadOnlyList<string> Keys(Snapshot now) => CylinderSection.Keys(now);

    /// <summary>The numbers of one cylinder.</summary>
    public static ValveTiming Of(Snapshot now, string cylinder)
    {
        var view = new View(now);
        var suffix = cylinder.Length > 0 ? "." + cylinder : "";
        var (inlet, exhaust) = (view.TableIf(Valve.LiftTable, "inlet" + suffix), view.TableIf(Valve.LiftTable, "exhaust" + suffix));
        var (io, ic) = Events(view, "inlet" + suffix, inlet, OverlapTdc, SecondBdc);
        var (eo, ec) = Events(view, "exhaust" + suffix, exhaust, FirstBdc, OverlapTdc);
        return new ValveTiming(io, ic, eo, ec, io + Math.PI + ic, eo + Math.PI + ec, Overlapping(view, io, ic, eo, ec), inlet, exhaust);
    }

    private static double? Overlapping(View view, double? io, double? ic, double? eo, double? ec) => Sketch.Known(() =>
        (io + ic + eo + ec) is null ? double.NaN : view.Work(CamTiming.FromEvents, io!.Value, ic!.Value, eo!.Value, ec!.Value).Overlap);

    /// <summary>Before one dead centre and after the next: from the ends of the lift curve, which says it better, else as written.</summary>
    private static (double? Opens, double? Closes) Events(View view, string index, Table? lift, double before, double after) =>
        lift is null || Ends(lift) is not var (from, to)
            ? (view.AmountIf(Valve.Opens, index), view.AmountIf(Valve.Closes, index))
            : (before - from, to - after);

    /// <summary>The last shut point before the valve opens and the first after it has closed, rad.</summary>
    private static (double From, double To)? Ends(Table lift)
    {
        var (angles, lifts) = (lift["angle"], lift["lift"]);
        var (first, last) = (Array.FindIndex(lifts, l => l > 0), Array.FindLastIndex(lifts, l => l > 0));
        return first < 0 ? null : (angles[Math.Max(0, first - 1)], angles[Math.Min(angles.Length - 1, last + 1)]);
    }
}
