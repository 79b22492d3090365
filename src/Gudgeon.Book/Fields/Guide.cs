using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Valve guides and the stems in them: guide[inlet], guide[exhaust.1.2].</summary>
public static class Guide
{
    private static readonly Subject Subject = new("guide", "Valve guide", Indexing.Valve);

    public static readonly Field Bore = Subject.Amount("bore", "Guide bore", Dimension.Length, "mm", (3.5, 12.5), "small-hole gauge, three heights, two axes");
    public static readonly Field ClearanceMin = Subject.Amount("clearanceMin", "Least stem clearance, cold", Dimension.Length, "mm", (0.008, 0.1), help: "By the maker of guide or valve.");
    public static readonly Field ClearanceMax = Subject.Amount("clearanceMax", "Greatest stem clearance, cold", Dimension.Length, "mm", (0.02, 0.2), help: "By the maker; the wear limit.");
    public static readonly Field HotMin = Subject.Amount("hotMin", "Least stem clearance, hot", Dimension.Length, "mm", (0.003, 0.06), help: "What the oil film wants; 0.005 mm when left out (common practice).");
    public static readonly Field StemTemperature = Subject.Amount("stemTemperature", "Stem temperature at the hot end of the guide", Dimension.Temperature, "°C", (100, 650), help: "Inlet about 150 to 200 °C, exhaust about 350 to 450 °C at full load: common practice, no source.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Guide temperature at its hot end", Dimension.Temperature, "°C", (80, 350), help: "Inlet about 120, exhaust about 200 °C at full load: common practice, no source.");
    public static readonly Field StemExpansion = Subject.Amount("stemExpansion", "Thermal expansion of the stem", Dimension.ThermalExpansion, "µm/(m·K)", (8, 20), help: "Martensitic valve steel 12, austenitic 18, titanium 9.");
    public static readonly Field Expansion = Subject.Amount("expansion", "Thermal expansion of the guide", Dimension.ThermalExpansion, "µm/(m·K)", (9, 20), help: "Bronze 18, grey iron 11.");
}
