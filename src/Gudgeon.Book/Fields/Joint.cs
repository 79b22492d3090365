using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Fields;

/// <summary>Bolted joints: joint[head], joint[rod], joint[mount].</summary>
public static class Joint
{
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
    public static readonly Field ShankDiameter = Subject.Amount("shankDiameter", "Diameter of the shank", Dimension.Length, "mm", (3, 24), "micrometer", "Of a waisted bolt; the thread's when left out.");
    public static readonly Field Stretch = Subject.Amount("stretch", "Stretch when tightened", Dimension.Length, "mm", (0.03, 0.6), "stretch gauge over both ends, before and after", "Where it was read the preload comes from it, and not from the torque.");
    public static readonly Field Eccentric = Subject.Amount("eccentric", "Factor of prying", Dimension.Number, "", (1, 2), help: "By how much a load that passes beside the bolts loads them more; for caps 1.1 to 1.3 (common practice, no source); 1 when left out.");
}
