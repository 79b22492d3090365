using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>Lobe centre by degree wheel against the one wanted.</summary>
public sealed class LobeCentreCheck : Check
{
    private const double UsualTolerance = 2 * Math.PI / 180;

    public override string Id => "lobe-centre";

    public override string Title => "Lobe centre by degree wheel";

    public override string Family => "valve train";

    public override string Source => "mean of equal lifts on both flanks; wanted centre by the maker of the cam; 2 crank degrees either way: common practice, no source";

    public override string Caution => "Turn by hand, plug out, one way only; a valve that meets a piston bends before it is felt on a long bar.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Valves(view, Cam.WheelTable.Subject).Where(i => view.Knows(Cam.WheelTable, i));

    public override Judgement Examine(View view, string index)
    {
        var (wanted, tolerance) = (view.Amount(Cam.CentreWanted, index), view.AmountOr(Cam.CentreTolerance, UsualTolerance, index));
        var centre = WheelFigures.CentreOf(view, index)?.Centre ?? double.NaN;
        return Judgement.Between("lobe centre from overlap TDC", centre, wanted - tolerance, wanted + tolerance, Dimension.Angle, "°", "cam.centreWanted and cam.centreTolerance");
    }
}

/// <summary>What the checks of a lobe on its follower share.</summary>
public abstract class LobeCheck : Check
{
    public override string Family => "valve train";

    /// <summary>Where a lobe on a flat face is known.</summary>
    public override IEnumerable<string> Instances(View view) => Checks.Instances.Valves(view, Cam.Lift.Subject).Where(i => view.Knows(Cam.BaseRadius, i) && LobeFace.IsBucket(view, i));

    private protected static LiftPoints? Lobe(View view, string index)
    {
        var motion = CamMotion.Of(view, index);
        if (motion is null)
        {
            view.Unknown($"a lift curve or lobe of {index}");
        }

        return motion?.Lobe;
    }
}

/// <summary>Least radius of curvature of a lobe under a flat face.</summary>
public sealed class LobeRadiusCheck : LobeCheck
{
    public override string Id => "lobe-radius";

    public override string Title => "Least radius of the lobe under a flat face";

    public override string Source => "radius of curvature Rb + s + s'' (kinematics of the flat follower); 2 mm, so that the edge does not cut: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var radius = view.Amount(Cam.BaseRadius, index);
        var least = Lobe(view, index) is { } lobe ? LobeFace.LeastRadius(view, lobe, radius) : double.NaN;
        return Judgement.AtLeast("least radius", least, view.Limit("lobe-radius.min", Dimension.Length, "mm", 2e-3), Dimension.Length, "mm", "common practice, no source");
    }
}

/// <summary>Whether the contact stays on the face of its bucket.</summary>
public sealed class BucketFaceCheck : LobeCheck
{
    public override string Id => "bucket-face";

    public override string Title => "Contact of cam and bucket";

    public override string Source => "contact at ds/dφ from the middle and as long as the lobe is wide (kinematics of the flat follower), bucket in line with the lobe; 0.5 mm left to the edge: common practice, no source";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Follower.FaceDiameter, i));

    public override Judgement Examine(View view, string index)
    {
        var needed = Lobe(view, index) is { } lobe ? LobeFace.LeastFace(view, index, lobe) : double.NaN;
        var face = view.Amount(Follower.FaceDiameter, index) - (2 * view.Limit("bucket-face.edge", Dimension.Length, "mm", 0.5e-3));
        return Judgement.AtMost("face that the contact needs", needed, face, Dimension.Length, "mm", "follower.faceDiameter less the edge on both sides") with { Remark = view.Knows(Cam.Width, index) ? "" : "its middle alone; cam.width is not known" };
    }
}

/// <summary>Whether the lash is taken up on the ramp.</summary>
public sealed class RampCheck : Check
{
    public override string Id => "ramp";

    public override string Title => "Lash taken up on the ramp";

    public override string Family => "valve train";

    public override string Source => "lash at the cam against the height of the ramp: beyond it the valve leaves and meets its seat at the speed of the flank";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Valves(view, Cam.Lift.Subject, Valve.Lash.Subject).Where(i => view.Knows(Cam.RampHeight, i));

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "lash", view.Amount(Valve.Lash, index), view.Amount(Cam.RampHeight, index) * Ratio(view, index), Dimension.Length, "mm", "cam.rampHeight at the valve");

    /// <summary>By the arms where they are known: at the base circle they are not what two dial gauges say at half lift.</summary>
    private static double Ratio(View view, string index) => view.Knows(Follower.CamArm, index)
        ? view.Work(FollowerRatio.OfArms, view.Amount(Cam.BaseRadius, index), view.Amount(Follower.PivotToCam, index), view.Amount(Follower.CamArm, index), view.Amount(Follower.PadRadius, index), view.Amount(Follower.ValveArm, index), 0.0)
        : view.AmountOr(Follower.Ratio, 1, index);
}
