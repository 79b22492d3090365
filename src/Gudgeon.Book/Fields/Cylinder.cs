using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Cylinder and combustion chamber; cylinder[1] is cylinder 1.</summary>
public static class Cylinder
{
    private static readonly Subject Subject = new("cylinder", "Cylinder", Indexing.Cylinder);

    public static readonly Field Bore = Subject.Amount("bore", "Bore", Dimension.Length, "mm", (30, 130), "bore gauge, three heights and two axes");
    public static readonly Field BoreTable = Subject.Stations("boreTable", "Bore readings", "Distance from the deck and the bores along and across the crank, at three heights or more; a height that stands twice was read twice. gudgeon measuring-plan makes their mean.", Bore);
    public static readonly Field ChamberVolume = Subject.Amount("chamberVolume", "Chamber volume in the head", Dimension.Volume, "cm³", (3, 200), "burette and plate, valves and plug fitted");
    public static readonly Field DomeVolume = Subject.Amount("domeVolume", "Dome volume of the piston", Dimension.Volume, "cm³", (-60, 60), "burette with the piston a known depth down", "What stands above the crown's edge; a dish or valve pockets count negative.", signed: true);
    public static readonly Field DeckHeight = Subject.Amount("deckHeight", "Piston below the deck at TDC", Dimension.Length, "mm", (-3, 6), "dial gauge on a bridge over the pin axis", "Negative when the piston stands proud.", signed: true);
    public static readonly Field GasketThickness = Subject.Amount("gasketThickness", "Head gasket, crushed", Dimension.Length, "mm", (0.1, 3), "micrometer on a gasket that has been tightened");
    public static readonly Field GasketBore = Subject.Amount("gasketBore", "Gasket bore", Dimension.Length, "mm", (30, 135), "calliper");
    public static readonly Field RatioMin = Subject.Amount("ratioMin", "Least compression ratio wanted", Dimension.Number, "", (6, 16));
    public static readonly Field RatioMax = Subject.Amount("ratioMax", "Greatest compression ratio wanted", Dimension.Number, "", (6, 18));
    public static readonly Field BlowByArea = Subject.Amount("blowByArea", "Leak past the rings", Dimension.Area, "mm²", (0.01, 3), help: "Effective area; 0.3 mm² when left out.");
    public static readonly Field Bank = Subject.Amount("bank", "Angle of the cylinder from that of the first", Dimension.Angle, "°", (-180, 180), help: "In the direction that the crank turns; 0 for cylinders in line, 90° for the second of a right-angled V.", signed: true);
    public static readonly Field Position = Subject.Amount("position", "Place of the cylinder along the crank", Dimension.Length, "mm", (-500, 500), help: "From any mark, the same for all cylinders and main bearings.", signed: true);
    public static readonly Field Offset = Subject.Amount("offset", "Offset of cylinder or gudgeon pin", Dimension.Length, "mm", (-10, 10), help: "Of the cylinder's axis from the crank's, or of the pin in the piston, to the side that the crank pin moves to after top dead centre; none when left out.", signed: true);
    public static readonly Field Pin = Subject.Count("pin", "Crank pin that its rod is on", (1, 6), help: "Counted along the crank; both cylinders of a V-twin may share one. A pin of its own when left out.");
    public static readonly Field Expansion = Subject.Amount("expansion", "Thermal expansion of the cylinder", Dimension.ThermalExpansion, "µm/(m·K)", (9, 25), help: "Aluminium with a plated bore 21 to 23, iron 11.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Temperature of the cylinder beside the skirt, running", Dimension.Temperature, "°C", (60, 200), help: "About 100 to 120 °C at full load: common practice, no source.");
    public static readonly Field TopTemperature = Subject.Amount("topTemperature", "Temperature of the bore where the top ring turns back", Dimension.Temperature, "°C", (60, 260), help: "About 140 to 180 °C at full load: common practice, no source.");
}
