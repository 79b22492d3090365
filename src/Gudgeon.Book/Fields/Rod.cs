using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Connecting rod; rod[1] is that of cylinder 1.</summary>
public static class Rod
{
    private static readonly Subject Subject = new("rod", "Connecting rod", Indexing.Cylinder);

    public static readonly Field Length = Subject.Amount("length", "Rod length between centres", Dimension.Length, "mm", (70, 250), "plug gauges and height gauge");
    public static readonly Field Mass = Subject.Amount("mass", "Rod mass", Dimension.Mass, "g", (100, 1500), "scale");
    public static readonly Field SmallEndMass = Subject.Amount("smallEndMass", "Small-end share of the rod mass", Dimension.Mass, "g", (20, 500), "two-scale weighing, centres level");
    public static readonly Field ShankArea = Subject.Amount("shankArea", "Least section of the shank", Dimension.Area, "mm²", (40, 600));
    public static readonly Field Modulus = Subject.Amount("modulus", "Young's modulus of the rod", Dimension.Pressure, "GPa", (60, 220), help: "Steel about 205, titanium 114, aluminium 72 GPa.");
}
