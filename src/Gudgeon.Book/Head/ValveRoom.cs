using Gudgeon.Book.Checks.Chamber;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Crank;
using Gudgeon.Calc.ValveTrain;
using MathNet.Numerics.Interpolation;

namespace Gudgeon.Book.Head;

/// <summary>Where the room between a valve and its piston is least.</summary>
/// <param name="Room">Least room along the stem, m; below zero they meet.</param>
/// <param name="Angle">Crank angle after overlap TDC, rad.</param>
public readonly record struct LeastRoom(double Room, double Angle);

/// <summary>The room between one valve and the piston around overlap TDC, along the stem.</summary>
internal sealed class ValveRoom
{
    /// <summary>A timing tolerance that chains and slotted sprockets keep: common practice.</summary>
    private const double UsualTolerance = 2 * Math.PI / 180;

    /// <summary>Crank angle on each side of overlap TDC that is looked at, rad, and the step.</summary>
    private const double Reach = Math.PI / 2, Step = 0.25 * Math.PI / 180;

    private readonly double _tdcRoom;
    private readonly double _radius;
    private readonly double _rod;
    private readonly double _stemAngle;
    private readonly Func<double, double> _lift;

    private ValveRoom(double tdcRoom, double radius, double rod, double stemAngle, Func<double, double> lift) =>
        (_tdcRoom, _radius, _rod, _stemAngle, _lift) = (tdcRoom, radius, rod, stemAngle, lift);

    /// <summary>Crank angles after overlap TDC that are looked at, rad.</summary>
    public static double[] Angles { get; } = [.. Enumerable.Range((int)(-Reach / Step), (2 * (int)(Reach / Step)) + 1).Select(i => i * Step)];

    /// <summary>The room of a valve; null, and what is missing noted, when something is not known.</summary>
    /// <param name="view">The values.</param>
    /// <param name="index">"inlet.1.2".</param>
    public static ValveRoom? Of(View view, string index)
    {
        var cylinder = Cylinder(index);
        var (stem, rod, radius) = (view.AmountOr(Valve.StemAngle, 0, index), view.Amount(Rod.Length, cylinder), view.Amount(Crank.Stroke) / 2);
        var room = AtTdc(view, index, cylinder, stem);
        return ValveLift.Of(view, index) is { } curve && !double.IsNaN(room + rod + radius) ? new ValveRoom(room, radius, rod, stem, Smooth(curve)) : null;
    }

    /// <summary>What to say of a room whose lift was neither read nor comes from a cam; empty where it was or does.</summary>
    public static string Caveat(View view, string index) => ValveLift.IsDrawn(view, index) ? "" : "by a smooth curve of its opening, closing and lift: read a lift curve before it is believed";

    /// <summary>The cylinder of a valve; empty for a side as a whole.</summary>
    public static string Cylinder(string index) => index.Split('.') is [_, var number, ..] ? number : "";

    /// <summary>Room at a crank angle, m.</summary>
    /// <param name="angle">After overlap TDC, rad.</param>
    /// <param name="off">What tolerance, movement and speed take.</param>
    public double At(double angle, RoomTaken off = default) =>
        _tdcRoom + (Math.Cos(_stemAngle) * (SliderCrank.Motion(_radius, _rod, angle, 0).Travel - off.Piston)) - Lift(angle, off);

    /// <summary>Lift of the valve at a crank angle after overlap TDC, m.</summary>
    public double Lift(double angle, RoomTaken off = default)
    {
        var lift = Math.Max(_lift(angle), Math.Max(_lift(angle - off.Timing), _lift(angle + off.Timing)));
        return lift > 0 ? lift + off.Lash + off.Thrown : 0;
    }

    /// <summary>Least room.</summary>
    public LeastRoom Least(RoomTaken off = default) => Angles.Select(a => new LeastRoom(At(a, off), a)).MinBy(r => r.Room);

    /// <summary>The least room as a formula was worked for it, for the finding to show.</summary>
    public double Worked(View view, LeastRoom least, RoomTaken off = default) =>
        view.Work(ValveToPiston.RoomAt, _tdcRoom - (off.Piston * Math.Cos(_stemAngle)), _radius, _rod, _stemAngle, Lift(least.Angle, off), least.Angle);

    /// <summary>What takes from the room at the rev limit: the timing's tolerance, the lash closed up, the valve thrown above its curve, the rod's stretch.</summary>
    /// <param name="view">The values.</param>
    /// <param name="index">"inlet.1.2".</param>
    public static RoomTaken Running(View view, string index) => new(
        view.AmountOr(Cam.CentreTolerance, UsualTolerance, index),
        view.AmountOr(Valve.Lash, 0, index),
        view.Try(v => Thrown(v, index)),
        RunningSquishCheck.Stretch(view, Cylinder(index)));

    /// <summary>How far the marched valve runs above its curve, m; nothing where the train is not known or does not settle, which other checks say.</summary>
    private static double Thrown(View view, string index) =>
        TrainAssembly.Build(view, index) is var (spec, motion) && view.Amount(Engine.RevLimit) is var limit && !double.IsNaN(limit) && view.Motion(spec, limit / 2).Motion is { } settled
            ? MotionFacts.Thrown(settled, motion)
            : 0;

    private static double AtTdc(View view, string index, string cylinder, double stem) => view.AmountIf(Valve.PistonClearance, index) ?? (view.Knows(Valve.PocketDepth, index)
        ? view.Work(
            ValveToPiston.RoomByParts,
            view.Amount(Valve.PocketDepth, index),
            view.Amount(Valve.Recess, index),
            view.Amount(Fields.Cylinder.GasketThickness, cylinder),
            view.Amount(Fields.Cylinder.DeckHeight, cylinder),
            stem)
        : view.Amount(Valve.PistonClearance, index));

    /// <summary>A lift that bends between its readings; straight lines would leave too much room.</summary>
    private static Func<double, double> Smooth(Simulation.Engine.LiftCurve curve)
    {
        var (angles, lifts) = ValveLift.InRadians(curve);
        var spline = CubicSpline.InterpolatePchip(angles, lifts);
        return angle => (CamMotion.OverlapTdc + angle) is var crank && crank > angles[0] && crank < angles[^1] ? spline.Interpolate(crank) : 0;
    }
}

/// <summary>What takes from the room between valve and piston.</summary>
/// <param name="Timing">Cam timing either way, crank rad.</param>
/// <param name="Lash">Lash closed up, m.</param>
/// <param name="Thrown">Valve above its lift curve, m.</param>
/// <param name="Piston">Piston higher, m.</param>
public readonly record struct RoomTaken(double Timing = 0, double Lash = 0, double Thrown = 0, double Piston = 0);
