using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Shell bearings: bearing[main.1], bearing[bigEnd.2]. A value of bearing[main] holds for all mains.</summary>
public static class Bearing
{
    private static readonly Subject Subject = new("bearing", "Shell bearing", Indexing.Name);

    public static readonly Field Journal = Subject.Amount("journal", "Journal diameter", Dimension.Length, "mm", (20, 80), "micrometer, two ends and two axes");
    public static readonly Field Housing = Subject.Amount("housing", "Housing bore, cap tightened", Dimension.Length, "mm", (20, 90), "bore gauge, two ends and two axes");
    public static readonly Field ShellThickness = Subject.Amount("shellThickness", "Shell thickness at the crown", Dimension.Length, "mm", (0.8, 4), "ball-anvil micrometer");
    public static readonly Field ClearanceMin = Subject.Amount("clearanceMin", "Least diametral clearance", Dimension.Length, "mm", (0.005, 0.1), help: "By the maker of the engine or the shells.");
    public static readonly Field ClearanceMax = Subject.Amount("clearanceMax", "Greatest diametral clearance", Dimension.Length, "mm", (0.01, 0.2), help: "By the maker of the engine or the shells.");
    public static readonly Field Position = Subject.Amount("position", "Place of the main bearing along the crank", Dimension.Length, "mm", (-600, 600), help: "Middle of the bearing, from the mark that the cylinders count from.", signed: true);
}
