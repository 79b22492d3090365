using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;

namespace Gudgeon.Book.Fields;

/// <summary>Piston, pin and rings; piston[1] is that of cylinder 1.</summary>
public static class Piston
{
    private static readonly Subject Subject = new("piston", "Piston", Indexing.Cylinder);

    public static readonly Field Mass = Subject.Amount("mass", "Piston with pin and rings", Dimension.Mass, "g", (50, 1500), "scale");
    public static readonly Field CompressionLimit = Subject.Amount("peakPressureLimit", "Peak cylinder pressure allowed by the piston", Dimension.Pressure, "bar", (40, 200), help: "By the maker of the piston.");
    public static readonly Field TopRingGap = Subject.Amount("topRingGap", "Top ring end gap", Dimension.Length, "mm", (0.1, 1.5), "feeler gauge, ring squared in the bore");
    public static readonly Field SecondRingGap = Subject.Amount("secondRingGap", "Second ring end gap", Dimension.Length, "mm", (0.1, 1.5), "feeler gauge, ring squared in the bore");
    public static readonly Field RingService = Subject.Choice<RingService>("ringService", "Duty of the rings", "Chooses the trade's gap factor; the ring maker's figure wins, set as a limit.");
    public static readonly Field Diameter = Subject.Amount("diameter", "Piston diameter at the gauge point", Dimension.Length, "mm", (30, 130), "micrometer across the thrust faces at the maker's height");
    public static readonly Field ClearanceMin = Subject.Amount("clearanceMin", "Least piston-to-bore clearance", Dimension.Length, "mm", (0.01, 0.3), help: "By the maker of the piston, at 20 °C.");
    public static readonly Field ClearanceMax = Subject.Amount("clearanceMax", "Greatest piston-to-bore clearance", Dimension.Length, "mm", (0.02, 0.4), help: "By the maker of the piston, at 20 °C.");
    public static readonly Field SkirtLength = Subject.Amount("skirtLength", "Length of the skirt that bears", Dimension.Length, "mm", (15, 90), "calliper");
    public static readonly Field SkirtPressureLimit = Subject.Amount("skirtPressureLimit", "Pressure allowed on the skirt", Dimension.Pressure, "MPa", (0.3, 5), help: "By the maker of the piston, on diameter times skirt length.");
    public static readonly Field CrownHeight = Subject.Amount("crownHeight", "Gudgeon pin to the edge of the crown", Dimension.Length, "mm", (18, 70), "depth gauge from the pin bore");
    public static readonly Field Rock = Subject.Amount("rock", "Rise of the piston's edge as it tips", Dimension.Length, "mm", (0.01, 0.5), "dial gauge at the edge on the thrust side, piston pushed over at TDC", zero: true);
    public static readonly Field Expansion = Subject.Amount("expansion", "Thermal expansion of the piston", Dimension.ThermalExpansion, "µm/(m·K)", (10, 25), help: "Forged alloy 2618 22, silicon alloy 4032 19.4.");
    public static readonly Field SkirtTemperature = Subject.Amount("skirtTemperature", "Skirt temperature, running", Dimension.Temperature, "°C", (80, 220), help: "About 130 to 160 °C at full load: common practice, no source.");
    public static readonly Field CrownTemperature = Subject.Amount("crownTemperature", "Temperature of the piston from pin to crown, running", Dimension.Temperature, "°C", (100, 330), help: "Mean over that height; about 200 °C at full load: common practice, no source.");
    public static readonly Field HotMin = Subject.Amount("hotMin", "Least piston-to-bore clearance, hot", Dimension.Length, "mm", (0.003, 0.08), help: "What the oil film wants; 0.01 mm when left out (common practice, no source).");
    public static readonly Field RingExpansion = Subject.Amount("ringExpansion", "Thermal expansion of the top ring", Dimension.ThermalExpansion, "µm/(m·K)", (8, 16), help: "Steel 11.5, cast iron 11.");
    public static readonly Field RingTemperature = Subject.Amount("ringTemperature", "Temperature of the top ring, running", Dimension.Temperature, "°C", (100, 330), help: "About 200 to 240 °C at full load: common practice, no source.");
    public static readonly Field TopGroove = Subject.Amount("topGroove", "Height of the top ring groove", Dimension.Length, "mm", (0.6, 3), "gauge blocks or feeler gauge");
    public static readonly Field TopRingHeight = Subject.Amount("topRingHeight", "Height of the top ring", Dimension.Length, "mm", (0.5, 3), "micrometer");
    public static readonly Field SecondGroove = Subject.Amount("secondGroove", "Height of the second ring groove", Dimension.Length, "mm", (0.6, 3), "gauge blocks or feeler gauge");
    public static readonly Field SecondRingHeight = Subject.Amount("secondRingHeight", "Height of the second ring", Dimension.Length, "mm", (0.5, 3), "micrometer");
    public static readonly Field TopGrooveRoot = Subject.Amount("topGrooveRoot", "Root diameter of the top ring groove", Dimension.Length, "mm", (25, 125), "groove micrometer");
    public static readonly Field TopRingThickness = Subject.Amount("topRingThickness", "Radial thickness of the top ring", Dimension.Length, "mm", (1, 5), "micrometer");
}
