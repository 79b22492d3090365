using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The inner of two nested valve springs: innerSpring[inlet], innerSpring[exhaust.1.2]. The loads of both add.</summary>
public static class InnerSpring
{
    private static readonly Subject Subject = new("innerSpring", "Inner valve spring", Indexing.Valve);

    public static readonly Field Wire = Subject.Amount("wire", "Wire diameter", Dimension.Length, "mm", (1, 6), "micrometer");
    public static readonly Field OutsideDiameter = Subject.Amount("outsideDiameter", "Outside diameter", Dimension.Length, "mm", (8, 50), "calliper");
    public static readonly Field ActiveCoils = Subject.Amount("activeCoils", "Active coils", Dimension.Number, "", (2, 15), "count; total less the dead ends");
    public static readonly Field FreeLength = Subject.Amount("freeLength", "Free length", Dimension.Length, "mm", (20, 110), "calliper");
    public static readonly Field SolidHeight = Subject.Amount("solidHeight", "Solid height (coil bind)", Dimension.Length, "mm", (8, 80), "compress to solid in the tester and measure");
    public static readonly Field SeatStep = Subject.Amount("seatStep", "Inner spring shorter than the outer, as fitted", Dimension.Length, "mm", (-8, 8), "depth gauge: steps of seat and retainer together", "What its own seat and the retainer take from the outer spring's height; negative where it is the taller. A spacer lies under both.", signed: true);
    public static readonly Field LoadTable = Subject.Table("loadTable", "Loads at heights", "Readings of the spring tester, as for the outer spring, at the inner spring's own heights.", new Column("load", Dimension.Force, "N"), new Column("height", Dimension.Length, "mm"));
    public static readonly Field ShearModulus = Subject.Amount("shearModulus", "Shear modulus of the wire", Dimension.Pressure, "GPa", (70, 85), help: "79.3 GPa when left out.");
    public static readonly Field TensileStrength = Subject.Amount("tensileStrength", "Tensile strength of the wire", Dimension.Pressure, "MPa", (1200, 2400));
    public static readonly Field Mass = Subject.Amount("mass", "Spring mass", Dimension.Mass, "g", (5, 150), "scale");

    /// <summary>The fields of the coil.</summary>
    internal static readonly CoilFields Coil = new("inner spring", Wire, OutsideDiameter, ActiveCoils, FreeLength, SolidHeight, LoadTable, ShearModulus, TensileStrength, Mass);
}
