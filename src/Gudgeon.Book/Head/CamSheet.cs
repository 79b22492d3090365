using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>Timing of one valve at one lift, crank rad after firing TDC.</summary>
/// <param name="Lift">The lift at which it counts as open, m.</param>
/// <param name="Crossings">Opening and closing.</param>
public sealed record TimingAt(double Lift, LiftCrossings Crossings);

/// <summary>What one cam does.</summary>
/// <param name="Index">"inlet", "exhaust.2".</param>
/// <param name="Motion">How it moves its valve.</param>
/// <param name="Timings">Timing at the lifts of reference.</param>
/// <param name="Facts">Its numbers.</param>
public sealed record CamFigures(string Index, CamMotion Motion, IReadOnlyList<TimingAt> Timings, IReadOnlyList<Fact> Facts)
{
    /// <summary>Readings of the degree wheel and what they ask for; null when none was taken.</summary>
    public WheelFigures? Wheel { get; init; }

    /// <summary>Lifts that were asked for and that the valve does not reach, m.</summary>
    public IReadOnlyList<double> NotReached { get; init; } = [];
}

/// <summary>The cams of a build: motion, timing, lobe centres, and how far a sprocket must be moved.</summary>
/// <param name="Cams">Cams of which a lift is known.</param>
/// <param name="Facts">What the two sides make together: separation, overlap, effective compression.</param>
/// <param name="Speed">Crank speed at which motions are given, rad/s.</param>
public sealed record CamSheet(IReadOnlyList<CamFigures> Cams, IReadOnlyList<Fact> Facts, double Speed)
{
    /// <summary>Lifts at which timing is given when nobody asks for another: 1 mm, and the 0.050 in of cam makers' cards.</summary>
    public static readonly IReadOnlyList<double> UsualLifts = [1e-3, 1.27e-3];

    private const string Undone = "no lift curve, lobe or law of this side is known yet; read one with a degree wheel and a dial gauge, or give cam.law, cam.duration and cam.lift";

    /// <summary>What is missing, for people; empty when every cam is known.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>The sheet of a build.</summary>
    /// <param name="now">The values that hold.</param>
    /// <param name="lifts">Lifts at which timing is wanted, m; the usual ones when empty.</param>
    /// <exception cref="BadInputException">Values of which no lobe or follower can be made.</exception>
    public static CamSheet Of(Snapshot now, params IReadOnlyList<double> lifts)
    {
        var view = new View(now);
        var speed = view.AmountIf(Engine.RevLimit) ?? double.NaN;
        var (cams, missing) = (new List<CamFigures>(), new List<string>());
        foreach (var index in Indices(view))
        {
            var own = new View(now);
            if (Figures(own, index, lifts.Count > 0 ? lifts : UsualLifts, speed) is { } cam)
            {
                cams.Add(cam);
            }
            else
            {
                missing.Add($"{index}: {Wanted(own, index)}");
            }
        }

        return new CamSheet(cams, Together(view, cams), speed) { Missing = missing };
    }

    /// <summary>What a lobe that was begun still lacks; else how to come by one.</summary>
    private static string Wanted(View view, string index) => view.Knows(Cam.LiftTable, index) || view.Knows(Cam.Law, index)
        ? $"not known yet; wanted: {Checks.Wanted.Words(view.Trace.Missing)}"
        : Undone;

    /// <summary>A side once, or each of its valves where the book tells their cams apart; that only a lash or a seat differs makes no other cam.</summary>
    private static IEnumerable<string> Indices(View view)
    {
        var each = Checks.Instances.Valves(view, Valve.LiftTable.Subject, Cam.LiftTable.Subject).ToList();
        return Valve.Sides.SelectMany(side => each.FindAll(i => i.StartsWith(side, StringComparison.Ordinal)) is var valves && valves.Select(i => Sources(view, i)).Distinct(StringComparer.Ordinal).Count() == 1 ? [side] : valves);
    }

    /// <summary>Under which paths a valve's cam is written.</summary>
    private static string Sources(View view, string index) => string.Join(' ', FieldCatalogue.All.Where(f => f == Valve.LiftTable || f.Subject == Cam.LiftTable.Subject || f.Subject == Follower.Kind.Subject)
        .Select(f => view.Snapshot.Find(new FieldAddress(f, index))?.Source));

    private static CamFigures? Figures(View view, string index, IReadOnlyList<double> lifts, double speed)
    {
        if (CamMotion.Of(view, index) is not { } motion || ValveLift.Drawn(view, index) is not { } curve)
        {
            return null;
        }

        var (angles, heights) = ValveLift.InRadians(curve);
        var timings = lifts.Prepend(0).Select(l => LiftCrossings.Of(angles, heights, l) is { } c ? new TimingAt(l, c) : null).OfType<TimingAt>().ToList();
        return new CamFigures(index, motion, timings, [.. OfCam(view, index, motion, speed)])
        {
            Wheel = WheelFigures.Of(view, index),
            NotReached = [.. lifts.Where(l => !timings.Exists(t => t.Lift == l))],
        };
    }

    private static IEnumerable<Fact> OfCam(View view, string index, CamMotion motion, double speed)
    {
        var (points, turning) = (motion.Points, speed / 2);
        var centre = (motion.Centre - CamMotion.OverlapTdc) * (index.StartsWith("inlet", StringComparison.Ordinal) ? 1 : -1);
        yield return new Fact($"lobe centre {(index.StartsWith("inlet", StringComparison.Ordinal) ? "after" : "before")} overlap TDC", centre, Dimension.Angle, "°") { Remark = motion.From };
        yield return new Fact("full lift at the valve", points.Lift.Max() - motion.Lash, Dimension.Length, "mm");
        yield return new Fact("greatest speed of the valve", points.Slope.Max(Math.Abs) * turning, Dimension.Speed, "m/s") { Remark = AtLimit };
        yield return new Fact("greatest acceleration, either flank", points.Curvature.Max() * turning * turning, Dimension.Acceleration, "m/s²") { Remark = AtLimit + (points.IsRough ? Rough : "") };
        yield return new Fact("acceleration over the nose", points.Curvature.Min() * turning * turning, Dimension.Acceleration, "m/s²") { Remark = AtLimit };
        yield return new Fact("greatest jerk", points.Jerk.Max(Math.Abs) * turning * turning * turning, Dimension.Jerk, "m/s³") { Remark = AtLimit };
        if (motion.Lash > 0)
        {
            yield return new Fact("speed at which the lash is taken up", SlopeAt(points, motion.Lash) * turning, Dimension.Speed, "m/s") { Remark = AtLimit };
        }

        if (motion.Lobe is { } lobe && view.AmountIf(Cam.BaseRadius, index) is { } radius)
        {
            yield return new Fact("least radius of the lobe, flat follower", LobeFace.LeastRadius(view, lobe, radius), Dimension.Length, "mm") { Remark = "below zero the lobe is hollow" };
        }

        if (motion.Lobe is { } pressed && LobeFace.IsBucket(view, index))
        {
            yield return new Fact("bucket face that the contact needs", LobeFace.LeastFace(view, index, pressed), Dimension.Length, "mm") { Remark = view.Knows(Cam.Width, index) ? "" : "its middle alone; cam.width is not known" };
        }
    }

    private const string AtLimit = "at the rev limit";

    private const string Rough = "; the readings scatter by more than cam.smoothingBound: read again, or allow more, before the accelerations are believed";

    private static double SlopeAt(LiftPoints points, double lift) => Array.FindIndex(points.Lift, l => l >= lift) is var i and >= 0 ? points.Slope[i] : double.NaN;

    private static List<Fact> Together(View view, List<CamFigures> cams)
    {
        CamFigures? First(string side) => cams.Find(c => c.Index.StartsWith(side, StringComparison.Ordinal));
        var facts = new List<Fact>();
        if (First("inlet") is not { } inlet)
        {
            return facts;
        }

        if (First("exhaust") is { } exhaust)
        {
            facts.Add(new Fact("lobe separation, cam degrees", (inlet.Motion.Centre - exhaust.Motion.Centre) / 2, Dimension.Angle, "°"));
            facts.AddRange(inlet.Timings.Join(exhaust.Timings, i => i.Lift, e => e.Lift, (i, e) => new Fact($"overlap{At(i.Lift)}", e.Crossings.Closes - i.Crossings.Opens, Dimension.Angle, "°")));
        }

        facts.AddRange(inlet.Timings.Where(t => t.Lift > 0).Take(1).Select(t => Effective(view, inlet.Index, t)));
        return facts;
    }

    private static Fact Effective(View view, string index, TimingAt timing)
    {
        var cylinder = index.Split('.') is [_, var number, ..] ? number : "";
        var clearance = Duty.EngineAssembly.ClearanceVolume(view, cylinder);
        var (bore, stroke, rod) = (view.Amount(Cylinder.Bore, cylinder), view.Amount(Crank.Stroke), view.Amount(Rod.Length, cylinder));
        var ratio = 1 + (Math.PI / 4 * bore * bore * stroke / clearance);
        var closing = view.Work(EffectiveCompression.AtClosing, ratio, stroke, rod, timing.Crossings.Closes - (3 * Math.PI));
        return new Fact("effective compression ratio", closing.Ratio, Dimension.Number, "") { Remark = $"from the inlet closing{At(timing.Lift)}" + (double.IsNaN(ratio) ? "" : $"; {Values.Figures.Number(ratio, 4)} over the whole stroke") };
    }

    /// <summary>" at 1 mm"; nothing at the seat.</summary>
    public static string At(double lift) => lift == 0 ? " at the seat" : string.Create(CultureInfo.InvariantCulture, $" at {lift * 1e3:0.###} mm");
}
