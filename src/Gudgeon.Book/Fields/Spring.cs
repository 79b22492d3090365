using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Valve springs: spring[inlet], spring[exhaust.1.2].</summary>
public static class Spring
{
    private static readonly Subject Subject = new("spring", "Valve spring", Indexing.Valve);

    public static readonly Field Wire = Subject.Amount("wire", "Wire diameter", Dimension.Length, "mm", (1.5, 7), "micrometer");
    public static readonly Field OutsideDiameter = Subject.Amount("outsideDiameter", "Outside diameter", Dimension.Length, "mm", (12, 60), "calliper");
    public static readonly Field ActiveCoils = Subject.Amount("activeCoils", "Active coils", Dimension.Number, "", (2, 15), "count; total less the dead ends");
    public static readonly Field FreeLength = Subject.Amount("freeLength", "Free length", Dimension.Length, "mm", (20, 110), "calliper");
    public static readonly Field SolidHeight = Subject.Amount("solidHeight", "Solid height (coil bind)", Dimension.Length, "mm", (10, 80), "compress to solid in the tester and measure");
    public static readonly Field InstalledHeight = Subject.Amount("installedHeight", "Installed height without spacer", Dimension.Length, "mm", (15, 80), "height gauge between seat and retainer, valve shut");
    public static readonly Field Spacer = Subject.Amount("spacer", "Spacer under the spring", Dimension.Length, "mm", (0, 5), "micrometer", "Stands between the spring and its seat: adds load at every lift and takes the same from the coil-bind margin.", zero: true);
    public static readonly Field LoadTable = Subject.Table("loadTable", "Loads at heights", "Readings of the spring tester, written as a load at a height: 431 N at 34.5 mm; 720 N at 25 mm. Two make a straight line; three and more are followed as they lie, for a progressive spring, and hold only between the outer two.", new Column("load", Dimension.Force, "N"), new Column("height", Dimension.Length, "mm"));
    public static readonly Field ShearModulus = Subject.Amount("shearModulus", "Shear modulus of the wire", Dimension.Pressure, "GPa", (70, 85), help: "79.3 GPa when left out.");
    public static readonly Field TensileStrength = Subject.Amount("tensileStrength", "Tensile strength of the wire", Dimension.Pressure, "MPa", (1200, 2400));
    public static readonly Field Mass = Subject.Amount("mass", "Spring mass", Dimension.Mass, "g", (10, 200), "scale");
    public static readonly Field SeatLoadMin = Subject.Amount("seatLoadMin", "Least seat load wanted", Dimension.Force, "N", (50, 1000), help: "By the maker of the cam.");
    public static readonly Field OpenLoadMax = Subject.Amount("openLoadMax", "Greatest load at full lift", Dimension.Force, "N", (200, 3000), help: "What cam and follower are made for.");
    public static readonly Field SeatLoadWanted = Subject.Amount("seatLoadWanted", "Seat load wanted", Dimension.Force, "N", (50, 1000), help: "What spacers are picked for; the least seat load when left out.");
    public static readonly Field RetainerToSeal = Subject.Amount("retainerToSeal", "From retainer to stem seal, valve shut", Dimension.Length, "mm", (5, 30), "depth gauge or a stack of feeler gauges, new seal fitted");
    public static readonly Field CoilBindMeasured = Subject.Amount("coilBindMeasured", "Room before coil bind at full lift, read", Dimension.Length, "mm", (0.3, 8), "lever the valve open to full lift, then on until the coils touch: dial gauge on the retainer", zero: true);
    public static readonly Field StressRange = Subject.Amount("stressRange", "Stress range that the wire bears from nothing", Dimension.Pressure, "MPa", (400, 1200), help: "Where the fatigue diagram of the wire meets the axis (EN 13906-1), by its maker.");

    /// <summary>The fields of the coil.</summary>
    internal static readonly CoilFields Coil = new("spring", Wire, OutsideDiameter, ActiveCoils, FreeLength, SolidHeight, LoadTable, ShearModulus, TensileStrength, Mass);
}
