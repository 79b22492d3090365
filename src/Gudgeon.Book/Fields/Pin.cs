using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Gudgeon pin; pin[1] is that of cylinder 1.</summary>
public static class Pin
{
    private static readonly Subject Subject = new("pin", "Gudgeon pin", Indexing.Cylinder);

    public static readonly Field Diameter = Subject.Amount("diameter", "Gudgeon pin diameter", Dimension.Length, "mm", (10, 40), "micrometer");
    public static readonly Field Bore = Subject.Amount("bore", "Bore of the gudgeon pin", Dimension.Length, "mm", (4, 30), "calliper");
    public static readonly Field Length = Subject.Amount("length", "Length of the gudgeon pin", Dimension.Length, "mm", (30, 110), "calliper");
    public static readonly Field BossGap = Subject.Amount("bossGap", "Distance between the piston's bosses", Dimension.Length, "mm", (12, 60), "calliper");
    public static readonly Field RodWidth = Subject.Amount("rodWidth", "Bearing length in the small end", Dimension.Length, "mm", (10, 50), "calliper");
    public static readonly Field Clearance = Subject.Amount("clearance", "Clearance in the small end", Dimension.Length, "mm", (0.003, 0.06), "bore gauge and micrometer");
    public static readonly Field Modulus = Subject.Amount("modulus", "Young's modulus of the gudgeon pin", Dimension.Pressure, "GPa", (100, 220), help: "Steel, 206 GPa, when left out.");
    public static readonly Field TensileStrength = Subject.Amount("tensileStrength", "Tensile strength of the gudgeon pin", Dimension.Pressure, "MPa", (600, 2200), help: "Of the core for case-hardened steel.");
    public static readonly Field FatigueStrength = Subject.Amount("fatigueStrength", "Fatigue strength of the gudgeon pin", Dimension.Pressure, "MPa", (200, 900), help: "Reversed bending, with its surface as it is; about 0.45 of the tensile strength, ground (common practice, no source).");
    public static readonly Field OvalityLimit = Subject.Amount("ovalityLimit", "Ovality allowed of the gudgeon pin", Dimension.Length, "mm", (0.01, 0.08), help: "By the maker; 0.05 mm when left out (textbook, from memory).");
    public static readonly Field RodPressureLimit = Subject.Amount("rodPressureLimit", "Pressure allowed in the small end", Dimension.Pressure, "MPa", (20, 200), help: "By the maker of the bush.");
    public static readonly Field BossPressureLimit = Subject.Amount("bossPressureLimit", "Pressure allowed in the piston's bosses", Dimension.Pressure, "MPa", (20, 150), help: "By the maker of the piston.");
}
