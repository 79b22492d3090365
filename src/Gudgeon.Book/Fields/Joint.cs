using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Fields;

/// <summary>Bolted joints: joint[head], joint[rod], joint[mount].</summary>
public static class Joint
{
    /// <summary>Words for thread inserts.</summary>
    public const string NoInsert = "none", WireInsert = "wire", BushInsert = "bush";

    /// <summary>Words for orders of tightening.</summary>
    public const string CentreOut = "centre out", Cross = "cross", Spiral = "spiral", ByMaker = "by the maker";

    /// <summary>Words for what a substitution wants.</summary>
    public const string Free = "free", MakersWord = "maker's word";

    private static readonly Subject Subject = new("joint", "Bolted joint", Indexing.Name);

    public static readonly Field BoltCount = Subject.Count("bolts", "Bolts in the joint", (1, 40), help: "For the head: bolts of the whole head.");
    public static readonly Field Cylinders = Subject.Count("cylinders", "Cylinders that the joint holds", (0, 6), 0, "Head bolts carry the gas load of these cylinders; 0 for a joint that sees none.");
    public static readonly Field Thread = Subject.Amount("thread", "Thread diameter", Dimension.Length, "mm", (3, 24), "micrometer");
    public static readonly Field Pitch = Subject.Amount("pitch", "Thread pitch", Dimension.Length, "mm", (0.5, 3), "pitch gauge");
    public static readonly Field YieldStrength = Subject.Amount("yieldStrength", "Yield strength of the bolt", Dimension.Pressure, "MPa", (200, 1400), help: "Rp0.2; 640 for class 8.8, 940 for 10.9, 1100 for 12.9.");
    public static readonly Field Modulus = Subject.Amount("modulus", "Young's modulus of the bolt", Dimension.Pressure, "GPa", (60, 220), help: "Steel 205, titanium 114 GPa.");
    public static readonly Field Expansion = Subject.Amount("expansion", "Thermal expansion of the bolt", Dimension.ThermalExpansion, "µm/(m·K)", (5, 25));
    public static readonly Field Grip = Subject.Amount("grip", "Grip (clamped length)", Dimension.Length, "mm", (4, 300), "calliper, parts stacked");
    public static readonly Field Engagement = Subject.Amount("engagement", "Thread engagement", Dimension.Length, "mm", (3, 60), "depth gauge and bolt length");
    public static readonly Field BearingDiameter = Subject.Amount("bearingDiameter", "Bearing diameter under the head", Dimension.Length, "mm", (5, 50), "calliper");
    public static readonly Field HoleDiameter = Subject.Amount("holeDiameter", "Clearance hole", Dimension.Length, "mm", (3, 30), "calliper");
    public static readonly Field OuterDiameter = Subject.Amount("outerDiameter", "Outside diameter of the clamped part", Dimension.Length, "mm", (6, 120));
    public static readonly Field ClampedModulus = Subject.Amount("clampedModulus", "Young's modulus of the clamped part", Dimension.Pressure, "GPa", (60, 220));
    public static readonly Field Torque = Subject.Amount("torque", "Tightening torque", Dimension.Torque, "N·m", (2, 300), "torque wrench in its range");
    public static readonly Field Method = Subject.Choice<TighteningMethod>("method", "Tightening method", "Sets the scatter of the preload.");
    public static readonly Field ThreadFriction = Subject.Amount("threadFriction", "Friction in the thread", Dimension.Number, "", (0.06, 0.3), help: "With the lubricant that is used.");
    public static readonly Field HeadFriction = Subject.Amount("headFriction", "Friction under the head", Dimension.Number, "", (0.06, 0.3), help: "With the lubricant that is used.");
    public static readonly Field Embedding = Subject.Amount("embedding", "Embedding of all faces", Dimension.Length, "µm", (2, 30), help: "Sum over thread, head and interfaces.");
    public static readonly Field SealDiameter = Subject.Amount("sealDiameter", "Diameter that the gasket seals", Dimension.Length, "mm", (30, 140), "calliper on the fire ring", "The pressure acts on this, not on the bore.");
    public static readonly Field LoadIntroduction = Subject.Amount("loadIntroduction", "Load introduction factor", Dimension.Number, "", (0.1, 1), help: "Where along the grip the load enters; 0.5 when left out.");

    public static readonly Field Head = Subject.Choice<BoltHead>("head", "Head of the bolt", "Hexagon when left out; none for a stud.");
    public static readonly Field Mating = Subject.Choice<MatingThread>("mating", "What the thread is screwed into", "A tapped hole when left out.");
    public static readonly Field ShankDiameter = Subject.Amount("shankDiameter", "Least diameter of the shank", Dimension.Length, "mm", (3, 24), "micrometer", "The thread diameter when left out; less for a waisted bolt.");
    public static readonly Field ShankLength = Subject.Amount("shankLength", "Length of plain shank in the grip", Dimension.Length, "mm", (0, 300), "calliper", "The whole grip when left out; the rest of the grip counts as free thread.", zero: true);
    public static readonly Field TensileStrength = Subject.Amount("tensileStrength", "Tensile strength of the bolt", Dimension.Pressure, "MPa", (300, 1600), help: "Rm: 800 for class 8.8, 1040 for 10.9, 1220 for 12.9.");
    public static readonly Field FatigueStrength = Subject.Amount("fatigueStrength", "Stress amplitude that the bolt bears for good", Dimension.Pressure, "MPa", (20, 250), help: "By VDI 2230 for a steel bolt with a thread rolled before heat treatment when left out; other metals want a figure.");
    public static readonly Field Density = Subject.Amount("density", "Density of the bolt", Dimension.Density, "kg/m³", (1700, 9000), help: "Steel 7850, titanium 4430 kg/m³; steel when left out.");
    public static readonly Field Layers = Subject.Table("layers", "Clamped parts from the head down", "Thickness, Young's modulus and outside diameter of each part, washers and sleeves counted in; expansion and working temperature where heat matters. Goes before the figures of a single part.", new Column("thickness", Dimension.Length, "mm"), new Column("modulus", Dimension.Pressure, "GPa"), new Column("diameter", Dimension.Length, "mm"), new Column("expansion", Dimension.ThermalExpansion, "µm/(m·K)", Optional: true), new Column("temperature", Dimension.Temperature, "°C", Optional: true));
    public static readonly Field ClampedExpansion = Subject.Amount("clampedExpansion", "Thermal expansion of the clamped part", Dimension.ThermalExpansion, "µm/(m·K)", (5, 30));
    public static readonly Field BoltTemperature = Subject.Amount("boltTemperature", "Bolt at work", Dimension.Temperature, "°C", (20, 300), "thermocouple or paint", "The mean over its length.");
    public static readonly Field PartTemperature = Subject.Amount("partTemperature", "Clamped parts at work", Dimension.Temperature, "°C", (20, 350), "thermocouple or paint", "The mean over the grip.");
    public static readonly Field AssemblyTemperature = Subject.Amount("assemblyTemperature", "Temperature when it was tightened", Dimension.Temperature, "°C", (0, 60), help: "20 °C when left out.");
    public static readonly Field Lubricant = Subject.Choice<Lubricant>("lubricant", "Lubricant of thread and head", "Gives the friction where none is written.");
    public static readonly Field Wrench = Subject.Choice<WrenchKind>("wrench", "Kind of torque wrench", "ISO 6789: a clicking wrench with a scale, one with a dial or a display, a beam, or a preset one.");
    public static readonly Field WrenchCapacity = Subject.Amount("wrenchCapacity", "Greatest torque of the wrench", Dimension.Torque, "N·m", (2, 500), help: "A wrench is good from a fifth of this up.");
    public static readonly Field AxialForce = Subject.Amount("axialForce", "Greatest working force on one bolt", Dimension.Force, "kN", (0, 200), help: "Along the bolt, pulling the joint apart; head bolts have it from the engine run, rod bolts from the pull at the rev limit where masses and stroke are known.", zero: true);
    public static readonly Field AxialForceLeast = Subject.Amount("axialForceLeast", "Least working force on one bolt", Dimension.Force, "kN", (-200, 200), help: "Nought when left out.", signed: true);
    public static readonly Field ClampWanted = Subject.Amount("clampWanted", "Clamp that must be left at one bolt", Dimension.Force, "kN", (0, 200), help: "What sealing or friction against sliding asks for.", zero: true);
    public static readonly Field TappedStrength = Subject.Amount("tappedStrength", "Tensile strength of the tapped part", Dimension.Pressure, "MPa", (100, 1400), help: "Cast aluminium 180 to 270 MPa.");
    public static readonly Field TappedShear = Subject.Amount("tappedShear", "Shear strength of the tapped part", Dimension.Pressure, "MPa", (60, 900), help: "0.6 of its tensile strength when left out (common practice).");
    public static readonly Field Insert = Subject.Choice("insert", "Thread insert", [NoInsert, WireInsert, BushInsert], "None when left out.");
    public static readonly Field InsertDiameter = Subject.Amount("insertDiameter", "Outer thread of the insert", Dimension.Length, "mm", (4, 32), "calliper", "Of a bush; a wire insert follows from the thread.");
    public static readonly Field FaceMaterial = Subject.Choice<BearingMaterial>("faceMaterial", "What the head rests on", "The washer where there is a hard one.");
    public static readonly Field SnugTorque = Subject.Amount("snugTorque", "Snug torque", Dimension.Torque, "N·m", (2, 150), "torque wrench in its range", "Where the angle counts from.");
    public static readonly Field Angle = Subject.Amount("angle", "Angle from snug", Dimension.Angle, "°", (15, 270), "angle gauge");
    public static readonly Field Stages = Subject.Table("stages", "Torques on the way to the last", "One torque for each stage before the last; 30 and 60 % of the last when left out (common practice, no source).", new Column("torque", Dimension.Torque, "N·m"));
    public static readonly Field BackOff = Subject.Choice("backOff", "All backed off and tightened again", ["yes", "no"], "Yes for new stretch bolts when left out: tightened to a figure, all backed off, tightened again in sequence (common practice, no source).");
    public static readonly Field Layout = Subject.Table("layout", "Places of the bolts", "Across and along, from any mark; the number stamped beside each, where the maker gives an order.", new Column("x", Dimension.Length, "mm", Signed: true), new Column("y", Dimension.Length, "mm", Signed: true), new Column("turn", Dimension.Number, "", Optional: true));
    public static readonly Field Order = Subject.Choice("order", "Order of tightening", [CentreOut, Cross, Spiral, ByMaker], "From the centre outwards when left out.");
    public static readonly Field UnusedLength = Subject.Amount("unusedLength", "Free length of the bolt when new", Dimension.Length, "mm", (8, 320), "micrometer over both ends");
    public static readonly Field FreeLength = Subject.Amount("freeLength", "Free length of the bolt now", Dimension.Length, "mm", (8, 320), "micrometer over both ends");
    public static readonly Field LengthMost = Subject.Amount("lengthMost", "Length up to which the bolt may be used again", Dimension.Length, "mm", (8, 320), help: "By the maker.");
    public static readonly Field Stretch = Subject.Amount("stretch", "Stretch when tightened", Dimension.Length, "mm", (0.03, 0.6), "stretch gauge over both ends, before and after", "Where it was read the preload comes from it, and not from the torque; its ± is the scatter of the preload.");
    public static readonly Field Eccentric = Subject.Amount("eccentric", "Factor of prying", Dimension.Number, "", (1, 2), help: "By how much a load that passes beside the bolts loads them more: multiplies the written force and a rod's pull; for caps 1.1 to 1.3 (common practice, no source); 1 when left out.");
    public static readonly Field Washer = Subject.Amount("washer", "Thickness of washers under the head", Dimension.Length, "mm", (0, 8), help: "Counted in the grip already; for the bolt list.", zero: true);
    public static readonly Field BoltLength = Subject.Amount("boltLength", "Length of the bolt from under the head", Dimension.Length, "mm", (6, 320), "calliper", "The standard length next above grip and engagement when left out.");
    public static readonly Field Price = Subject.Amount("price", "Price of one bolt", Dimension.Number, "", (0.05, 500), help: "In the shop's own money.");
    public static readonly Field RingWidth = Subject.Amount("ringWidth", "Width of the fire ring or wire", Dimension.Length, "mm", (0.5, 10), "calliper");
    public static readonly Field RingStressMost = Subject.Amount("ringStressMost", "Greatest pressure on the fire ring or wire", Dimension.Pressure, "MPa", (50, 2000), help: "All of the clamp counted on the ring; by the maker of the gasket.");
    public static readonly Field LineLoadWanted = Subject.Amount("lineLoadWanted", "Line load that the seal wants", Dimension.ForcePerLength, "N/mm", (20, 1500), help: "Force per length of the seal's circle, left at peak pressure; by the maker of the gasket.");
    public static readonly Field Gasket = Subject.Choice<GasketType>("gasket", "Kind of gasket", "With the width of its ring it gives the line load where the maker says nothing, by a table made for vessel flanges.");
    public static readonly Field Cord = Subject.Amount("cord", "Cord of the O-ring, or wire in a groove", Dimension.Length, "mm", (0.6, 8), "micrometer");
    public static readonly Field GrooveDepth = Subject.Amount("grooveDepth", "Depth of its groove", Dimension.Length, "mm", (0.4, 7), "depth gauge", "With the gap that is left between the faces.");
    public static readonly Field GrooveWidth = Subject.Amount("grooveWidth", "Width of its groove", Dimension.Length, "mm", (0.6, 12), "calliper", "Left out for a wire, which is pressed into its groove.");
    public static readonly Field Substitution = Subject.Choice("substitution", "Bolts of another material", [Free, MakersWord], "Whether they may go in without the maker's word; by the joint's name when left out: rods, brakes, steering, wheels and the head want it.");
}
