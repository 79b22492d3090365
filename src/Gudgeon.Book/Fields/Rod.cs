using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Connecting rod; rod[1] is that of cylinder 1.</summary>
public static class Rod
{
    private static readonly Subject Subject = new("rod", "Connecting rod", Indexing.Cylinder);

    public static readonly Field Length = Subject.Amount("length", "Rod length between centres", Dimension.Length, "mm", (70, 250), "plug gauges and height gauge");
    public static readonly Field Mass = Subject.Amount("mass", "Rod mass", Dimension.Mass, "g", (100, 1500), "scale");
    public static readonly Field SmallEndMass = Subject.Amount("smallEndMass", "Small-end share of the rod mass", Dimension.Mass, "g", (20, 500), "two-scale weighing, centres level");
    public static readonly Field BigEndMass = Subject.Amount("bigEndMass", "Big-end share of the rod mass", Dimension.Mass, "g", (50, 1200), "two-scale weighing, centres level", "With the small end's share it comes to the rod's mass, or a reading is wrong.");
    public static readonly Field MassCentre = Subject.Amount("massCentre", "Centre of mass from the big-end centre", Dimension.Length, "mm", (5, 150), "balanced on an edge", "Gives the shares where they were not weighed.");
    public static readonly Field SwingPeriod = Subject.Amount("swingPeriod", "Time of one full swing, hung at the small end", Dimension.Time, "s", (0.4, 1.5), "stopwatch over fifty swings");
    public static readonly Field SwingPivot = Subject.Amount("swingPivot", "Pivot edge above the small-end centre", Dimension.Length, "mm", (0, 30), "half the bore of the small end", zero: true);
    public static readonly Field ShankArea = Subject.Amount("shankArea", "Least section of the shank", Dimension.Area, "mm²", (40, 600));
    public static readonly Field Modulus = Subject.Amount("modulus", "Young's modulus of the rod", Dimension.Pressure, "GPa", (60, 220), help: "Steel about 205, titanium 114, aluminium 72 GPa.");
    public static readonly Field Depth = Subject.Amount("depth", "Depth of the shank in the swing plane", Dimension.Length, "mm", (10, 60), "calliper at the thinnest place");
    public static readonly Field Width = Subject.Amount("width", "Width of the shank along the crank", Dimension.Length, "mm", (6, 40), "calliper at the thinnest place");
    public static readonly Field Web = Subject.Amount("web", "Web thickness of the shank", Dimension.Length, "mm", (1.5, 15), "ball-anvil micrometer");
    public static readonly Field Flange = Subject.Amount("flange", "Flange thickness of the shank", Dimension.Length, "mm", (1.5, 15), "calliper");
    public static readonly Field SwingGyration = Subject.Amount("swingGyration", "Radius of gyration in the swing plane", Dimension.Length, "mm", (2, 25), help: "For a shank that is no I; from the I's measures when left out.");
    public static readonly Field AcrossGyration = Subject.Amount("acrossGyration", "Radius of gyration along the crank", Dimension.Length, "mm", (1, 15), help: "For a shank that is no I; from the I's measures when left out.");
    public static readonly Field Density = Subject.Amount("density", "Density of the rod", Dimension.Density, "kg/m³", (2600, 8200), help: "Steel 7850, titanium 4430, aluminium 2800; steel when left out.");
    public static readonly Field YieldStrength = Subject.Amount("yieldStrength", "Yield strength of the rod", Dimension.Pressure, "MPa", (250, 1700), help: "Rp0.2 of the material in its condition.");
    public static readonly Field TensileStrength = Subject.Amount("tensileStrength", "Tensile strength of the rod", Dimension.Pressure, "MPa", (300, 2000));
    public static readonly Field FatigueStrength = Subject.Amount("fatigueStrength", "Fatigue strength of the rod, push and pull", Dimension.Pressure, "MPa", (80, 700), help: "Amplitude that the shank bears for ever with its surface as it is: about 0.3 of the tensile strength forged and shot-peened (common practice, no source).");
    public static readonly Field BigEndWidth = Subject.Amount("bigEndWidth", "Width of the big end", Dimension.Length, "mm", (12, 40), "micrometer");
    public static readonly Field SideClearance = Subject.Amount("sideClearance", "Side clearance of the rod", Dimension.Length, "mm", (0.05, 1), "feeler gauge between big end and web", "Pin length less width of the big end when it was not read.");
    public static readonly Field SideClearanceMin = Subject.Amount("sideClearanceMin", "Least side clearance of the rod", Dimension.Length, "mm", (0.05, 0.5), help: "By the maker of the engine.");
    public static readonly Field SideClearanceMax = Subject.Amount("sideClearanceMax", "Greatest side clearance of the rod", Dimension.Length, "mm", (0.1, 1), help: "By the maker of the engine.");
    public static readonly Field CapMass = Subject.Amount("capMass", "Mass of the cap with its shell and bolts", Dimension.Mass, "g", (20, 400), "scale", "Hangs on the pin and not on the bolts; counted on the bolts when left out.", zero: true);
    public static readonly Field Expansion = Subject.Amount("expansion", "Thermal expansion of rod and crank", Dimension.ThermalExpansion, "µm/(m·K)", (8, 24), help: "Steel 11.5, titanium 8.6, aluminium 23.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Temperature of rod and crank, running", Dimension.Temperature, "°C", (40, 200), help: "About the oil's: common practice, no source.");
}
