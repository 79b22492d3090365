using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Drawings;

/// <summary>When the valves of one cylinder open and close. rad of the crank; null where it is not known.</summary>
/// <param name="InletOpens">Before TDC.</param>
/// <param name="InletCloses">After BDC.</param>
/// <param name="ExhaustOpens">Before BDC.</param>
/// <param name="ExhaustCloses">After TDC.</param>
/// <param name="InletDuration">Crank angle for which the inlet valve is open.</param>
/// <param name="ExhaustDuration">Crank angle for which the exhaust valve is open.</param>
/// <param name="Overlap">Crank angle for which both are open; negative when there is none.</param>
/// <param name="InletLift">Lift curve, read at the valve or given by its cam; null when the book has none.</param>
/// <param name="ExhaustLift">Lift curve, read at the valve or given by its cam; null when the book has none.</param>
public sealed record ValveTiming(
    double? InletOpens,
    double? InletCloses,
    double? ExhaustOpens,
    double? ExhaustCloses,
    double? InletDuration,
    double? ExhaustDuration,
    double? Overlap,
    LiftCurve? InletLift,
    LiftCurve? ExhaustLift)
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
        var (inlet, exhaust) = (ValveLift.Drawn(view, "inlet" + suffix), ValveLift.Drawn(view, "exhaust" + suffix));
        var (io, ic) = Events(view, "inlet" + suffix, inlet, OverlapTdc, SecondBdc);
        var (eo, ec) = Events(view, "exhaust" + suffix, exhaust, FirstBdc, OverlapTdc);
        return new ValveTiming(io, ic, eo, ec, io + Math.PI + ic, eo + Math.PI + ec, Overlapping(view, io, ic, eo, ec), inlet, exhaust);
    }

    private static double? Overlapping(View view, double? io, double? ic, double? eo, double? ec) => Sketch.Known(() =>
        (io + ic + eo + ec) is null ? double.NaN : view.Work(CamTiming.FromEvents, io!.Value, ic!.Value, eo!.Value, ec!.Value).Overlap);

    /// <summary>Before one dead centre and after the next: from the ends of the lift curve, which says it better, else as written.</summary>
    private static (double? Opens, double? Closes) Events(View view, string index, LiftCurve? lift, double before, double after) => lift is null
        ? (view.AmountIf(Valve.Opens, index), view.AmountIf(Valve.Closes, index))
        : (before - (lift.Opens * Math.PI / 180), (lift.Closes * Math.PI / 180) - after);
}
