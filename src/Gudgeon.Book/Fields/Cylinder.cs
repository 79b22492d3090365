using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Cylinder and combustion chamber; cylinder[1] is cylinder 1.</summary>
public static class Cylinder
{
    private static readonly Subject Subject = new("cylinder", "Cylinder", Indexing.Cylinder);

    public static readonly Field Bore = Subject.Amount("bore", "Bore", Dimension.Length, "mm", (30, 130), "bore gauge, three heights and two axes");
    public static readonly Field ChamberVolume = Subject.Amount("chamberVolume", "Chamber volume in the head", Dimension.Volume, "cm³", (3, 200), "burette and plate, valves and plug fitted");
    public static readonly Field DomeVolume = Subject.Amount("domeVolume", "Dome volume of the piston", Dimension.Volume, "cm³", (-60, 60), "burette with the piston a known depth down", "What stands above the crown's edge; a dish or valve pockets count negative.", signed: true);
    public static readonly Field DeckHeight = Subject.Amount("deckHeight", "Piston below the deck at TDC", Dimension.Length, "mm", (-3, 6), "dial gauge on a bridge over the pin axis", "Negative when the piston stands proud.", signed: true);
    public static readonly Field GasketThickness = Subject.Amount("gasketThickness", "Head gasket, crushed", Dimension.Length, "mm", (0.1, 3), "micrometer on a gasket that has been tightened");
    public static readonly Field GasketBore = Subject.Amount("gasketBore", "Gasket bore", Dimension.Length, "mm", (30, 135), "calliper");
    public static readonly Field RatioMin = Subject.Amount("ratioMin", "Least compression ratio wanted", Dimension.Number, "", (6, 16));
    public static readonly Field RatioMax = Subject.Amount("ratioMax", "Greatest compression ratio wanted", Dimension.Number, "", (6, 18));
    public static readonly Field BlowByArea = Subject.Amount("blowByArea", "Leak past the rings", Dimension.Area, "mm²", (0.01, 3), help: "Effective area; 0.3 mm² when left out.");
}
