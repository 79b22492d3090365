using Gudgeon.Calc.Belts;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Belt from the crank to a supercharger.</summary>
public static class Belt
{
    private static readonly Subject Subject = new("belt", "Belt of the boost drive");

    public static readonly Field Kind = Subject.Choice("kind", "Kind of belt", BeltKinds.All);
    public static readonly Field CrankTeeth = Subject.Count("crankTeeth", "Teeth of the crank pulley", (16, 120), help: "Toothed belt.");
    public static readonly Field BlowerTeeth = Subject.Count("blowerTeeth", "Teeth of the blower pulley", (16, 120), help: "Toothed belt.");
    public static readonly Field Pitch = Subject.Amount("pitch", "Pitch of the teeth", Dimension.Length, "mm", (3, 15), help: "Toothed belt.");
    public static readonly Field CrankDiameter = Subject.Amount("crankDiameter", "Effective diameter of the crank pulley", Dimension.Length, "mm", (40, 300), "calliper over ribs, and the maker's line differential", "V-ribbed or flat belt.");
    public static readonly Field BlowerDiameter = Subject.Amount("blowerDiameter", "Effective diameter of the blower pulley", Dimension.Length, "mm", (40, 300), "calliper over ribs, and the maker's line differential", "V-ribbed or flat belt.");
    public static readonly Field Length = Subject.Amount("length", "Length of the belt on its pitch line", Dimension.Length, "mm", (250, 3000), help: "Teeth times pitch, or by the maker.");
    public static readonly Field Centres = Subject.Amount("centres", "Crank axis to blower axis", Dimension.Length, "mm", (60, 1000), "calliper over both shafts, half of each taken off");
    public static readonly Field IdlerDiameter = Subject.Amount("idlerDiameter", "Diameter of the idler to the belt's pitch line", Dimension.Length, "mm", (20, 150), help: "Left out when there is none. It sits on the slack span.");
    public static readonly Field IdlerAlong = Subject.Amount("idlerAlong", "Idler axis along the line of centres, from the crank", Dimension.Length, "mm", (0, 1000), "calliper, square off the line of both shafts", signed: true);
    public static readonly Field IdlerAcross = Subject.Amount("idlerAcross", "Idler axis across the line of centres", Dimension.Length, "mm", (-200, 300), "calliper, square off the line of both shafts", "Towards the slack span, which leaves the crank pulley.", signed: true);
    public static readonly Field IdlerOn = Subject.Choice<IdlerSide>("idlerOn", "Face of the belt that runs on the idler", "The back when left out.");
    public static readonly Field Mass = Subject.Amount("mass", "Mass of the belt for its length", Dimension.LinearDensity, "kg/m", (0.02, 1), "scale, over the belt's length");
    public static readonly Field SetUpTension = Subject.Amount("setUpTension", "Tension of a span at rest", Dimension.Force, "N", (30, 3000), help: "By drawing; worked from the note of the span where that was measured.");
    public static readonly Field SpanFrequency = Subject.Amount("spanFrequency", "Note of the tight span at rest", Dimension.Frequency, "Hz", (20, 800), "pluck it; telephone with a tuning program, or ear", "The free span without the idler.");
    public static readonly Field TensionMax = Subject.Amount("tensionMax", "Greatest working tension of a toothed belt", Dimension.Force, "N", (100, 15000), help: "For this width, by the maker.");
    public static readonly Field Friction = Subject.Amount("friction", "Friction of a belt without teeth", Dimension.Number, "", (0.15, 0.6), help: "0.3 on a flat pulley when left out: rubber on dry steel, common practice, no source. In ribs it is then the one that belts are designed for, tensions 4 to 1 over half a turn (from memory).");
    public static readonly Field Groove = Subject.Amount("groove", "Included angle of the ribs", Dimension.Angle, "°", (30, 60), help: "40° when left out (ISO 9982); not read of a flat belt.");
    public static readonly Field Ribs = Subject.Count("ribs", "Ribs of a V-ribbed belt", (2, 20), help: "Those that run in grooves.");
    public static readonly Field RibPull = Subject.Amount("ribPull", "Greatest pull of one rib", Dimension.Force, "N", (5, 400), help: "By the maker: power of a rib over the belt speed of its table, the service factor taken off.");
}

/// <summary>Kinds of belt.</summary>
public static class BeltKinds
{
    /// <summary>Teeth carry the pull.</summary>
    public const string Toothed = "toothed";

    /// <summary>Friction in wedged ribs carries it.</summary>
    public const string Ribbed = "V-ribbed";

    /// <summary>Friction on a smooth pulley carries it.</summary>
    public const string Flat = "flat";

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<string> All = [Toothed, Ribbed, Flat];
}
