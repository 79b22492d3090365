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
}
