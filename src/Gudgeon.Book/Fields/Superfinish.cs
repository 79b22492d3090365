using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Superfinishing of a treated part in a vibratory bowl: superfinish[gears].</summary>
public static class Superfinish
{
    public const string Acid = "acid", Neutral = "neutral";

    private static readonly Subject Subject = new("superfinish", "Superfinishing", Indexing.Name);

    public static readonly Field Removal = Subject.Amount("removal", "Stock taken off each face", Dimension.Length, "µm", (0.5, 40), "before and after: micrometer, of gears the span over several teeth; half of the difference", "As planned until it is measured; 2.5 to 10 µm is usual (common practice, no source).");
    public static readonly Field RemovalMax = Subject.Amount("removalMax", "Stock that each face may lose", Dimension.Length, "µm", (1, 60), help: "What the tolerance leaves: size as measured less the least of the drawing, halved on a diameter.");
    public static readonly Field RoughnessBefore = Subject.Amount("roughnessBefore", "Roughness Ra before", Dimension.Length, "µm", (0.05, 3.2), "roughness tester, across the lay");
    public static readonly Field RoughnessAfter = Subject.Amount("roughnessAfter", "Roughness Ra after", Dimension.Length, "µm", (0.01, 0.8), "roughness tester, across the old lay");
    public static readonly Field RoughnessMax = Subject.Amount("roughnessMax", "Greatest roughness Ra wanted", Dimension.Length, "µm", (0.02, 0.8), help: "By the drawing.");
    public static readonly Field MatingRoughness = Subject.Amount("matingRoughness", "Roughness Ra of the face that it runs on", Dimension.Length, "µm", (0.01, 3.2), "roughness tester", "As its own when left out: both gears of a pair treated alike.");
    public static readonly Field Film = Subject.Amount("film", "Least oil film in its contact", Dimension.Length, "µm", (0.02, 5), help: "Worked by the handbook from load, speed and oil; for the lambda ratio before and after.");
    public static readonly Field Compound = Subject.Text("compound", "Compound and stones", "As the bottle names them, with the strength that was mixed.");
    public static readonly Field Chemistry = Subject.Choice("chemistry", "Chemistry of the compound", [Neutral, Acid], "An acid one, oxalic or phosphoric, is a source of hydrogen; neutral when left out.");
    public static readonly Field Time = Subject.Amount("time", "Time in the bowl", Dimension.Time, "h", (0.2, 24), "timer", "One to ten hours, by the roughness at the start (common practice, no source).");
    public static readonly Field Masked = Subject.Text("masked", "Faces that are masked or plugged", "Threads, bores with fits, oil holes, separated by semicolons; photos are kept with this field.");
}
