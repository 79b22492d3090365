using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Clutch on the gearbox input shaft.</summary>
public static class Clutch
{
    private static readonly Subject Subject = new("clutch", "Clutch");

    public static readonly Field Faces = Subject.Count("faces", "Rubbing faces", (1, 30), help: "Two per friction plate.");
    public static readonly Field OuterDiameter = Subject.Amount("outerDiameter", "Outside diameter of the facing", Dimension.Length, "mm", (60, 300), "calliper");
    public static readonly Field InnerDiameter = Subject.Amount("innerDiameter", "Inside diameter of the facing", Dimension.Length, "mm", (40, 280), "calliper");
    public static readonly Field SpringLoad = Subject.Amount("springLoad", "Clamping load of all springs", Dimension.Force, "N", (300, 8000), "spring tester at the fitted height, all springs added");
    public static readonly Field Friction = Subject.Amount("friction", "Friction of the facing", Dimension.Number, "", (0.06, 0.5), help: "Wet about 0.12, dry about 0.3; by the maker of the plates.");
}
