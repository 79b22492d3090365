using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Fields;

/// <summary>What stands between cam and valve: follower[inlet], follower[exhaust.1.2].</summary>
public static class Follower
{
    /// <summary>Words for the way in which a lobe wipes its pad.</summary>
    public const string AwayFromPivot = "away from the pivot", TowardsPivot = "towards the pivot";

    private static readonly Subject Subject = new("follower", "Follower", Indexing.Valve);

    public static readonly Field Kind = Subject.Choice<FollowerKind>("kind", "Kind of follower");
    public static readonly Field Ratio = Subject.Amount("ratio", "Ratio: valve lift over cam lift", Dimension.Number, "", (0.8, 2.2), "two dial gauges, at half lift", "1 for a bucket. Where the arms below are known they say it better.");
    public static readonly Field CamArm = Subject.Amount("camArm", "Arm from the pivot to the middle of the pad's arc", Dimension.Length, "mm", (8, 60), "coordinate table or profile projector");
    public static readonly Field ValveArm = Subject.Amount("valveArm", "Arm from the pivot to the valve tip", Dimension.Length, "mm", (10, 70), "calliper");
    public static readonly Field PivotToCam = Subject.Amount("pivotToCam", "From the pivot to the cam's axis", Dimension.Length, "mm", (15, 90), "between plug gauges");
    public static readonly Field PadRadius = Subject.Amount("padRadius", "Radius of the pad on the cam", Dimension.Length, "mm", (5, 80), "radius gauge", "Flat when left out.");
    public static readonly Field Wipes = Subject.Choice("wipes", "The lobe wipes the pad", [AwayFromPivot, TowardsPivot], "By the cam's sense of turning; away from the pivot when left out.");
    public static readonly Field FaceDiameter = Subject.Amount("faceDiameter", "Diameter of the bucket's face", Dimension.Length, "mm", (18, 50), "micrometer");
    public static readonly Field CamMass = Subject.Amount("camMass", "Moving mass that follows the cam, at the valve", Dimension.Mass, "g", (2, 250), "scale; a finger by its inertia over the square of the valve arm", "The part of the mass moving with the valve that is the bucket, finger or rocker; half of it when left out.");
    public static readonly Field Stiffness = Subject.Amount("stiffness", "Stiffness from cam to valve, at the valve", Dimension.ForcePerLength, "N/mm", (2000, 200000), "a weight on the retainer and a dial gauge, cam locked", "A bucket about 40 000, a finger 15 000 to 30 000, a pushrod train 4000 to 8000 N/mm: common practice, no source.");
    public static readonly Field Modulus = Subject.Amount("modulus", "Young's modulus of the follower's face", Dimension.Pressure, "GPa", (90, 320), help: "206 GPa when left out.");
}
