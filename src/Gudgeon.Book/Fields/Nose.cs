using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Shafts;

namespace Gudgeon.Book.Fields;

/// <summary>Nose of the crank: the spigot that carries the pulley. Its fit in the crank's end is fit[spigot].</summary>
public static class Nose
{
    /// <summary>The fit of the spigot among the fits.</summary>
    public const string Fit = "spigot";

    private static readonly Subject Subject = new("nose", "Crank nose and drive spigot");

    public static readonly Field Diameter = Subject.Amount("diameter", "Diameter of the spigot beside its shoulder", Dimension.Length, "mm", (12, 60), "micrometer");
    public static readonly Field Shoulder = Subject.Amount("shoulder", "Diameter of the shoulder", Dimension.Length, "mm", (13, 90), "micrometer", "Left out when there is none.");
    public static readonly Field Fillet = Subject.Amount("fillet", "Fillet radius at the shoulder", Dimension.Length, "mm", (0.2, 10), "radius gauge");
    public static readonly Field Overhang = Subject.Amount("overhang", "Middle of the near main bearing to middle of the belt", Dimension.Length, "mm", (15, 250), "depth gauge");
    public static readonly Field MouthFrom = Subject.Amount("mouthFrom", "Middle of the near main bearing to the mouth of the crank's end", Dimension.Length, "mm", (5, 200), "depth gauge", "Where the spigot leaves its fit.");
    public static readonly Field FilletFrom = Subject.Amount("filletFrom", "Middle of the near main bearing to the shoulder", Dimension.Length, "mm", (5, 250), "depth gauge");
    public static readonly Field Span = Subject.Amount("span", "Middle of the near main bearing to the next one", Dimension.Length, "mm", (40, 300), "calliper");
    public static readonly Field Finish = Subject.Choice<SurfaceFinish>("finish", "Surface of the spigot", "Ground when left out.");
    public static readonly Field Vibration = Subject.Amount("vibration", "Vibratory torque in the nose", Dimension.Torque, "N·m", (1, 300), help: "The joint of rotor[nose] on the sheet of torsion; half of the steady torque when left out.");
}

/// <summary>Bearing in a cover that holds the end of the nose.</summary>
public static class Outboard
{
    private static readonly Subject Subject = new("outboard", "Outboard bearing of the nose");

    public static readonly Field Distance = Subject.Amount("distance", "Middle of the near main bearing to middle of the outboard bearing", Dimension.Length, "mm", (30, 350), "depth gauge", "Left out when there is none.");
    public static readonly Field Offset = Subject.Amount("offset", "Bore of the cover off the line of the mains", Dimension.Length, "mm", (0.002, 0.3), "dial gauge on the crank, swung round the bore: half of its reading", "Any direction; the worst is counted. What the bearing has of play comes off it.", zero: true);
    public static readonly Field Tilt = Subject.Amount("tilt", "Tilt of the bore against the crank", Dimension.Angle, "°", (0.005, 0.5), "dial gauge on the face of the bore", zero: true);
    public static readonly Field Stiffness = Subject.Amount("stiffness", "Stiffness of cover and bearing", Dimension.ForcePerLength, "N/mm", (2000, 500000), "pulled with a known force, dial gauge at the bore");
    public static readonly Field Rating = Subject.Amount("rating", "Basic dynamic load rating", Dimension.Force, "kN", (2, 100), help: "By the maker.");
    public static readonly Field AxialForce = Subject.Amount("axialForce", "Axial force on the bearing", Dimension.Force, "N", (5, 3000), help: "None when left out; counted with X 0.56 and Y 2 of a lightly loaded ball bearing.");
    public static readonly Field TiltLimit = Subject.Amount("tiltLimit", "Misalignment that the bearing allows", Dimension.Angle, "°", (0.02, 3), help: "By the maker; 4 minutes of arc (0.067°) when left out: deep-groove ball bearings take 2 to 10 (from memory).");
    public static readonly Field LifeWanted = Subject.Amount("lifeWanted", "Life wanted at full load", Dimension.Time, "h", (5, 2000), help: "50 h when left out: common practice, no source.");
}
