using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Fields;

/// <summary>
/// Parts whose surface is treated: treatment[gears]. The steps of its route bear the same name: peening[gears.coarse],
/// peening[gears.fine], superfinish[gears], coating[gears], bake[gears].
/// </summary>
public static class Treatment
{
    private static readonly Subject Subject = new("treatment", "Surface treatment", Indexing.Name);

    public static readonly Field Part = Subject.Text("part", "Part and faces that are treated", "In the words of the drawing.");
    public static readonly Field Metal = Subject.Choice<PeenedMetal>("metal", "Metal of the part", "Steel when left out.");
    public static readonly Field TensileStrength = Subject.Amount("tensileStrength", "Tensile strength of the part", Dimension.Pressure, "MPa", (300, 2400), help: "Of the core for case-hardened steel; from the hardness when left out.");
    public static readonly Field Hardness = Subject.Amount("hardness", "Hardness of the part, HRC", Dimension.Number, "", (30, 55), "Rockwell tester, on the core of a case-hardened part", "Read where the tensile strength is not known.");
    public static readonly Field Tempering = Subject.Amount("tempering", "Hottest that the part may be made", Dimension.Temperature, "°C", (80, 650), help: "The temperature at which it was tempered or aged: hotter, and it softens.");
    public static readonly Field Thickness = Subject.Amount("thickness", "Thickness of the treated section", Dimension.Length, "mm", (1, 100), "calliper", "Gives the customary intensity of steel where the drawing gives none.");
    public static readonly Field SmallestFillet = Subject.Amount("smallestFillet", "Smallest fillet to be peened", Dimension.Length, "mm", (0.2, 20), "radius gauge or cast");
    public static readonly Field SlotWidth = Subject.Amount("slotWidth", "Narrowest slot or hole to be peened", Dimension.Length, "mm", (0.5, 50), "calliper", "Between the teeth of a gear: the gap at the root.");
    public static readonly Field CaseDepth = Subject.Amount("caseDepth", "Depth of the hardened case", Dimension.Length, "mm", (0.05, 3), "by who hardened it, or on a test piece");
    public static readonly Field CaseLeast = Subject.Amount("caseLeast", "Least depth of the case that must be left", Dimension.Length, "mm", (0.03, 3), help: "By the drawing.");
    public static readonly Field Bearing = Subject.Text("bearing", "Shell bearing whose journal it is", "Its name, such as main.1 or bigEnd: the roughness after superfinishing then counts for its oil film, where none is written there.");
}
