using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Supercharger and its drive; the compressor of an exhaust-driven one, whose other half is <see cref="Turbine"/>.</summary>
public static class Blower
{
    private static readonly Subject Subject = new("blower", "Supercharger");

    public static readonly Field Kind = Subject.Choice("kind", "Kind of supercharger", BlowerKinds.All, "Exhaust-driven: a turbocharger, whose compressor has its map here and whose turbine is a subject of its own.");
    public static readonly Field DriveRatio = Subject.Amount("driveRatio", "Blower pulley speed over crank speed", Dimension.Number, "", (0.5, 4), "teeth or diameters of the pulleys");
    public static readonly Field StepUp = Subject.Amount("stepUp", "Step-up gear inside the blower", Dimension.Number, "", (1, 15), help: "1 when there is none.");
    public static readonly Field BeltSlip = Subject.Amount("beltSlip", "Belt slip", Dimension.Number, "%", (0, 8), help: "0 for a toothed belt or a chain.", zero: true);
    public static readonly Field MaxSpeed = Subject.Amount("maxSpeed", "Greatest impeller or rotor speed", Dimension.RotationalSpeed, "rpm", (5000, 200000), help: "By the maker of the blower; of a turbocharger the quickest line of the map when left out.");
    public static readonly Field DriveEfficiency = Subject.Amount("driveEfficiency", "Efficiency of belt, gears and bearings", Dimension.Number, "", (0.8, 0.99), most: 1);
    public static readonly Field Map = Subject.Table("map", "Compressor map", "Speed lines: corrected impeller speed, corrected flow, total pressure ratio and isentropic efficiency; each line from surge to choke.", new Column("speed", Dimension.RotationalSpeed, "rpm"), new Column("flow", Dimension.MassFlow, "kg/s"), new Column("ratio", Dimension.Number, ""), new Column("efficiency", Dimension.Number, ""));
    public static readonly Field MapTemperature = Subject.Amount("mapTemperature", "Reference temperature of the map", Dimension.Temperature, "°C", (10, 35));
    public static readonly Field MapPressure = Subject.Amount("mapPressure", "Reference pressure of the map", Dimension.Pressure, "kPa", (90, 105));
    public static readonly Field Displacement = Subject.Amount("displacement", "Displacement per turn", Dimension.Volume, "cm³", (50, 3000), help: "Positive displacement only; by the maker.");
    public static readonly Field InternalCompression = Subject.Amount("internalCompression", "Built-in volume ratio", Dimension.Number, "", (1, 2.5), help: "1 for a Roots blower.");
    public static readonly Field LeakArea = Subject.Amount("leakArea", "Leak back through the rotors", Dimension.Area, "mm²", (1, 300));
    public static readonly Field Efficiency = Subject.Amount("efficiency", "Indicated efficiency of a displacement blower", Dimension.Number, "", (0.5, 0.95), most: 1);
    public static readonly Field ReliefPressure = Subject.Amount("reliefPressure", "Relief valve opens at", Dimension.Pressure, "bar", (0.2, 3), help: "Above ambient; left out when there is no relief valve.");
}

/// <summary>Kinds of supercharger.</summary>
public static class BlowerKinds
{
    /// <summary>Naturally aspirated.</summary>
    public const string None = "none";

    /// <summary>A centrifugal compressor that the crank drives.</summary>
    public const string Centrifugal = "centrifugal";

    /// <summary>Roots, screw or vane, driven by the crank.</summary>
    public const string Displacement = "positive displacement";

    /// <summary>A turbocharger: a centrifugal compressor on one shaft with a turbine in the exhaust.</summary>
    public const string ExhaustDriven = "exhaust-driven";

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<string> All = [None, Centrifugal, Displacement, ExhaustDriven];

    /// <summary>Whether the crank drives this kind.</summary>
    public static bool IsDriven(string kind) => kind is Centrifugal or Displacement;
}
