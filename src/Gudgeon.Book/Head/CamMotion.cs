using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>How a cam moves its valve: lift at the valve, lash not yet taken off, against the cam's angle from the nose.</summary>
/// <param name="Points">Lift at the valve and its derivatives.</param>
/// <param name="Lash">What is to be taken off, m; none for a curve that was read at the valve with its lash taken off.</param>
/// <param name="Centre">Crank angle after firing TDC at which the nose stands, rad; NaN when it is not known.</param>
/// <param name="From">Where it comes from, for people.</param>
public sealed record CamMotion(LiftPoints Points, double Lash, double Centre, string From)
{
    /// <summary>Overlap TDC, crank rad after firing TDC.</summary>
    public const double OverlapTdc = 2 * Math.PI;

    private const double UsualBound = 0.01e-3;

    /// <summary>Less lift than this, m, is none: round-off, or what smoothing may have moved.</summary>
    public double Blur { get; init; } = 1e-6;

    /// <summary>Crank angles after firing TDC of its points, degrees.</summary>
    public double[] CrankDegrees => [.. Points.Angles.Select(a => (Centre + (2 * a)) * 180 / Math.PI)];

    /// <summary>Lift of the lobe on a flat follower with its derivatives; null when no lobe is known, only its lift at the valve.</summary>
    public LiftPoints? Lobe { get; init; }

    /// <summary>
    /// The motion of a valve: from the lift curve read at the valve, else from the lobe that was read, else from the lobe made
    /// by duration, lift and law; null when none of them is known.
    /// </summary>
    /// <param name="view">The values.</param>
    /// <param name="index">"inlet.1.2".</param>
    /// <exception cref="BadInputException">Values of which no lobe or follower can be made.</exception>
    public static CamMotion? Of(View view, string index)
    {
        if (view.TableIf(Valve.LiftTable, index) is { } table)
        {
            return AtValve(view, index, table);
        }

        return LobeOf(view, index) is var (lobe, from) ? ByFollower(view, index, lobe, from) : null;
    }

    private static CamMotion AtValve(View view, string index, Table table)
    {
        var (angles, lifts) = (ValveLift.AtSide(table["angle"], table["lift"], index), table["lift"]);
        var centre = LiftCrossings.Centre(angles, lifts);
        var points = LiftPoints.Of([.. angles.Select(a => (a - centre) / 2)], lifts, view.AmountOr(Cam.SmoothingBound, UsualBound, index));
        return new CamMotion(points, 0, centre - view.AmountOr(Cam.Advance, 0, index), "lift curve read at the valve") { Lobe = LobeFace.IsBucket(view, index) ? points : null };
    }

    private static (LiftPoints Lobe, string From)? LobeOf(View view, string index)
    {
        if (view.TableIf(Cam.LiftTable, index) is { } table)
        {
            var (angles, lifts) = (table["angle"], table["lift"]);
            var nose = LiftCrossings.Centre(angles, lifts);
            return (LiftPoints.Of([.. angles.Select(a => a - nose)], lifts, view.AmountOr(Cam.SmoothingBound, UsualBound, index)), "lobe that was read");
        }

        if (!view.Knows(Cam.Law, index))
        {
            return null;
        }

        var law = view.Choice<LobeLaw>(Cam.Law, index);
        var (lift, duration) = (view.Amount(Cam.Lift, index), view.Amount(Cam.Duration, index));
        var (height, angle) = (view.AmountOr(Cam.RampHeight, 0, index), view.AmountOr(Cam.RampAngle, 0, index));
        if (law is null || double.IsNaN(lift + duration))
        {
            return null;
        }

        if (height >= lift)
        {
            throw new BadInputException($"{Cam.RampHeight.At(index)}: given {Cam.RampHeight.Print(height)}, wanted less than the lift of the lobe, {Cam.Lift.Print(lift)}");
        }

        var lobe = new Lobe(law.Value, lift, duration / 2, height, angle / 2);
        return (LiftPoints.Of(lobe.Reach, lobe.At), $"lobe by the law {EnumWords.Of(law.Value.ToString())}");
    }

    private static CamMotion? ByFollower(View view, string index, LiftPoints lobe, string from)
    {
        var centre = view.Amount(Cam.Centre, index) * (index.StartsWith("inlet", StringComparison.Ordinal) ? 1 : -1);
        var lash = view.AmountOr(Valve.Lash, 0, index);
        var crank = OverlapTdc + centre - view.AmountOr(Cam.Advance, 0, index);
        if ((view.Knows(Follower.CamArm, index) ? Arms(view, index, lobe) : Scaled(lobe, view.AmountOr(Follower.Ratio, 1, index))) is not { } points)
        {
            return null;
        }

        var motion = new CamMotion(points, lash, crank, from) { Lobe = lobe };
        return view.Knows(Cam.LiftTable, index) ? motion with { Blur = view.AmountOr(Cam.SmoothingBound, UsualBound, index) } : motion;
    }

    /// <summary>The valve's lift by a finger or rocker of known arms; null, and the missing arm noted, when one is not known.</summary>
    private static LiftPoints? Arms(View view, string index, LiftPoints lobe)
    {
        var (radius, pivot, cam, pad, valve) = (view.Amount(Cam.BaseRadius, index), view.Amount(Follower.PivotToCam, index), view.Amount(Follower.CamArm, index), view.Amount(Follower.PadRadius, index), view.Amount(Follower.ValveArm, index));
        if (double.IsNaN(radius + pivot + cam + pad + valve))
        {
            return null;
        }

        var towards = view.WordOr(Follower.Wipes, Follower.AwayFromPivot, index) == Follower.TowardsPivot;
        try
        {
            var arms = new FollowerArms(lobe.At, radius, pivot, cam, pad, valve);
            return LiftPoints.Of(-lobe.First + Wander, angle => arms.Lift(angle, towards));
        }
        catch (FormulaDomainException e)
        {
            throw new BadInputException($"{Follower.CamArm.At(index)}: given {Follower.CamArm.Print(cam)}; {e.Message}");
        }
    }

    /// <summary>The contact wanders over a pad, so that the valve moves over a little more of the cam's turn than the lobe is wide, rad.</summary>
    private const double Wander = 0.2;

    private static LiftPoints Scaled(LiftPoints lobe, double ratio) => lobe with
    {
        Lift = [.. lobe.Lift.Select(l => l * ratio)],
        Slope = [.. lobe.Slope.Select(l => l * ratio)],
        Curvature = [.. lobe.Curvature.Select(l => l * ratio)],
        Jerk = [.. lobe.Jerk.Select(l => l * ratio)],
    };
}
