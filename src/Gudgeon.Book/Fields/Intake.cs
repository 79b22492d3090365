using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>From the air filter to the inlet ports.</summary>
public static class Intake
{
    private static readonly Subject Subject = new("intake", "Intake");

    public static readonly Field FilterArea = Subject.Amount("filterArea", "Effective area of filter and inlet", Dimension.Area, "mm²", (500, 20000), "flow bench at a known pressure drop");
    public static readonly Field AirboxVolume = Subject.Amount("airboxVolume", "Airbox volume", Dimension.Volume, "L", (0.5, 30), "fill with water or reckon from the drawing");
    public static readonly Field ThrottleArea = Subject.Amount("throttleArea", "Effective area of all throttles, wide open", Dimension.Area, "mm²", (300, 10000), "bore area less spindle and butterfly, times 0.9");
    public static readonly Field PlenumVolume = Subject.Amount("plenumVolume", "Plenum volume between throttle and ports", Dimension.Volume, "L", (0.1, 20));
    public static readonly Field DeliveryVolume = Subject.Amount("deliveryVolume", "Pipes and cooler between blower and throttle", Dimension.Volume, "L", (0.2, 20));
    public static readonly Field PortVolume = Subject.Amount("portVolume", "One cylinder's port and runner", Dimension.Volume, "cm³", (30, 1500), "burette from valve seat to plenum");
    public static readonly Field RunnerArea = Subject.Amount("runnerArea", "Effective area from plenum into one port", Dimension.Area, "mm²", (200, 4000));
}

/// <summary>Charge cooler.</summary>
public static class Cooler
{
    private static readonly Subject Subject = new("cooler", "Charge cooler");

    public static readonly Field Effectiveness = Subject.Amount("effectiveness", "Effectiveness", Dimension.Number, "", (0.2, 0.95), "three thermocouples under load", "Share of the way from delivery to coolant temperature; left out when there is no cooler.", most: 1);
    public static readonly Field CoolantTemperature = Subject.Amount("coolantTemperature", "Coolant or cooling-air temperature", Dimension.Temperature, "°C", (0, 70));
    public static readonly Field FlowArea = Subject.Amount("flowArea", "Effective flow area of the core", Dimension.Area, "mm²", (300, 10000), "flow bench at a known pressure drop");
    public static readonly Field Area = Subject.Amount("area", "Area of the core on the charge side", Dimension.Area, "m²", (0.1, 15), help: "Fins counted with what they do; by the maker.");
    public static readonly Field Coefficient = Subject.Amount("coefficient", "Heat through the core, on that area", Dimension.HeatTransferCoefficient, "W/(m²·K)", (15, 400), help: "By the maker, or from a measured effectiveness.");
    public static readonly Field Passing = Subject.Choice<Calc.Cooling.CoolerFlow>("passing", "How charge and coolant pass each other", "Cross-flow when left out.");
    public static readonly Field CoolantFlow = Subject.Amount("coolantFlow", "Coolant through the core", Dimension.MassFlow, "kg/s", (0.03, 3), "bucket and watch");
    public static readonly Field CoolantHeat = Subject.Amount("coolantHeat", "Heat capacity of the coolant", Dimension.SpecificHeat, "J/(kg·K)", (900, 4300), help: "4186 J/(kg·K) when left out: water. Air has 1005.");
    public static readonly Field TankWater = Subject.Amount("tankWater", "Water in the cooler's tank", Dimension.Mass, "kg", (1, 60), "scale");
    public static readonly Field TankIce = Subject.Amount("tankIce", "Ice in it", Dimension.Mass, "kg", (0, 40), "scale", "None when left out.", zero: true);
}

/// <summary>From the exhaust valves to the open air.</summary>
public static class Exhaust
{
    private static readonly Subject Subject = new("exhaust", "Exhaust");

    public static readonly Field CollectorVolume = Subject.Amount("collectorVolume", "Volume of pipes and collector", Dimension.Volume, "L", (0.5, 20));
    public static readonly Field OutletArea = Subject.Amount("outletArea", "Effective area of the way out", Dimension.Area, "mm²", (300, 8000), help: "Not read with a turbine, whose nozzle is the way out.");
    public static readonly Field Layout = Subject.Choice("layout", "How the pipes go together", ExhaustLayouts.All, "All into one when left out; the one pipe of a single has no need of it.");
    public static readonly Field Pairs = Subject.Text("pairs", "Which primaries meet first", "Cylinders of each pair with dashes between, pairs with commas: 1-4, 2-3. Those that fire half a cycle apart when left out.");
    public static readonly Field WallCoefficient = Subject.Amount("wallCoefficient", "Heat from the pipes to the air", Dimension.HeatTransferCoefficient, "W/(m²·K)", (5, 200), help: "10 standing still, 100 in the wind of the run; 40 when left out (common practice).");
    public static readonly Field Emissivity = Subject.Amount("emissivity", "Emissivity of the pipes", Dimension.Number, "", (0.1, 0.95), help: "0.3 polished, 0.9 oxidised or coated; 0.7 when left out (common practice).", most: 1);
}

/// <summary>How exhaust pipes can go together.</summary>
public static class ExhaustLayouts
{
    /// <summary>Each cylinder has its own pipe into the open.</summary>
    public const string Separate = "separate pipes";

    /// <summary>All primaries meet in one place.</summary>
    public const string Joined = "all into one";

    /// <summary>Primaries meet two by two, and what comes of that in one place.</summary>
    public const string Paired = "in pairs, then into one";

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<string> All = [Separate, Joined, Paired];
}
