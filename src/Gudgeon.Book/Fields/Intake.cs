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
}

/// <summary>From the exhaust valves to the open air.</summary>
public static class Exhaust
{
    private static readonly Subject Subject = new("exhaust", "Exhaust");

    public static readonly Field CollectorVolume = Subject.Amount("collectorVolume", "Volume of pipes and collector", Dimension.Volume, "L", (0.5, 20));
    public static readonly Field OutletArea = Subject.Amount("outletArea", "Effective area of the way out", Dimension.Area, "mm²", (300, 8000));
}
