using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The air filter before the blower; how the engine model feels it, with all before the blower, is <see cref="Intake.FilterArea"/>.</summary>
public static class AirFilter
{
    private static readonly Subject Subject = new("airFilter", "Air filter");

    public static readonly Field Area = Subject.Amount("area", "Area of the medium", Dimension.Area, "cm²", (50, 10000), "tape: height by length of the medium, pleats laid flat", "Of all filters together.");
    public static readonly Field TestFlow = Subject.Amount("testFlow", "Flow at which it was tested", Dimension.VolumeFlow, "L/s", (10, 1000), "flow bench, or by the maker", "Of all filters together, at 20 °C and 101.325 kPa.");
    public static readonly Field TestDrop = Subject.Amount("testDrop", "Pressure drop at that flow", Dimension.Pressure, "kPa", (0.05, 5), "manometer behind the filter, on the flow bench");
    public static readonly Field TestArea = Subject.Amount("testArea", "Area of the medium that was tested", Dimension.Area, "cm²", (50, 10000), help: "Where a filter of the same medium and another size was tested; as fitted when left out.");
    public static readonly Field Linear = Subject.Amount("linear", "Share of that drop that rises with the flow itself", Dimension.Number, "", (0, 1), "flow bench: a second point at half of the flow", "The rest rises with its square. 0.5 when left out: common practice, no source.", zero: true, most: 1);
    public static readonly Field FaceSpeed = Subject.Amount("faceSpeed", "Air speed that the medium allows", Dimension.Speed, "m/s", (0.03, 5), help: "By the maker; 1.5 m/s when left out: oiled gauze or foam, common practice, no source. Paper takes a tenth.");
}
