using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Materials;

namespace Gudgeon.Book.Fields;

/// <summary>Sudden changes of engine speed that the boost drive must follow.</summary>
public static class Shock
{
    private static readonly Subject Subject = new("shock", "Shocks of the boost drive");

    public static readonly Field EngageTime = Subject.Amount("engageTime", "Time in which the next gear pulls the engine to its speed", Dimension.Time, "ms", (3, 400), "engine speed logged at 1 kHz or more over a shift", "driveline.shiftTime when left out.");
    public static readonly Field StartSpeed = Subject.Amount("startSpeed", "Speed to which the engine catches at the start", Dimension.RotationalSpeed, "rpm", (500, 5000));
    public static readonly Field StartTime = Subject.Amount("startTime", "Time in which it catches", Dimension.Time, "ms", (20, 3000), "engine speed logged");
}

/// <summary>Impeller of the supercharger, for its burst.</summary>
public static class Impeller
{
    private static readonly Subject Subject = new("impeller", "Impeller");

    public static readonly Field Diameter = Subject.Amount("diameter", "Tip diameter", Dimension.Length, "mm", (30, 250), "calliper");
    public static readonly Field Bore = Subject.Amount("bore", "Bore", Dimension.Length, "mm", (2, 60), "pin gauge", "None when left out.");
    public static readonly Field Material = Subject.Choice<MaterialGrade>("material", "Material", "Its density and its strength in the room are those of the handbook's table; what heat leaves of it, of aluminium by the handbook too.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Temperature of the impeller at full load", Dimension.Temperature, "°C", (20, 260), help: "That of the air from the blower in the engine run when left out: the rim is nearly as hot.");
    public static readonly Field HotStrength = Subject.Amount("hotStrength", "Tensile strength at that temperature", Dimension.Pressure, "MPa", (50, 1500), help: "By the maker; by the handbook when left out.");
}
