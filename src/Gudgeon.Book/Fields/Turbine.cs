using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The turbine of an exhaust-driven supercharger.</summary>
public static class Turbine
{
    private static readonly Subject Subject = new("turbine", "Turbine");

    public static readonly Field ThroatArea = Subject.Amount("throatArea", "Effective area of the nozzle", Dimension.Area, "mm²", (100, 3000), "area of the volute's throat from the maker, times 0.8 to 0.95", "Passes the turbine's flow as one nozzle would.");
    public static readonly Field RotorDiameter = Subject.Amount("rotorDiameter", "Rotor diameter", Dimension.Length, "mm", (25, 120), "calliper over the inlet tips");
    public static readonly Field Efficiency = Subject.Amount("efficiency", "Greatest efficiency, total to static", Dimension.Number, "", (0.45, 0.8), help: "By the maker, what the bearings take counted as lost; 0.65 when left out (common practice).", most: 1);
    public static readonly Field BestSpeedRatio = Subject.Amount("bestSpeedRatio", "Tip speed over jet speed at the greatest efficiency", Dimension.Number, "", (0.55, 0.75), help: "0.65 when left out (common practice for a radial turbine).");
    public static readonly Field VoluteVolume = Subject.Amount("voluteVolume", "Volume of the volute", Dimension.Volume, "cm³", (30, 2000), "fill with water", "From its flange to the nozzle; 400 cm³ when left out. Read by the wave depth.");
}

/// <summary>The wastegate, which lets exhaust past the turbine when there is boost enough.</summary>
public static class Wastegate
{
    private static readonly Subject Subject = new("turbine.wastegate", "Wastegate");

    public static readonly Field Area = Subject.Amount("area", "Effective area, fully open", Dimension.Area, "mm²", (50, 2000), "bore area times 0.7", "0, or left out, when there is no wastegate.", zero: true);
    public static readonly Field OpeningPressure = Subject.Amount("openingPressure", "Opening pressure of the wastegate", Dimension.Pressure, "bar", (0.15, 2.5), "hand pump and gauge on the actuator", "Boost in the plenum, above ambient.");
    public static readonly Field Band = Subject.Amount("band", "Rise of boost until it is fully open", Dimension.Pressure, "bar", (0.03, 1), "hand pump and gauge on the actuator", "0.2 bar when left out (common practice).");
}
