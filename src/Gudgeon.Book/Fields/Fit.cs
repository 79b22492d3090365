using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Fits;
using Gudgeon.Calc.Materials;

namespace Gudgeon.Book.Fields;

/// <summary>Fits of a shaft in a hole: fit[spigot], fit[dowel.1], fit[mainSeat.2]. A value of fit[dowel] holds for all dowels.</summary>
public static class Fit
{
    private static readonly Subject Subject = new("fit", "Fit of shaft and hole", Indexing.Name);

    public static readonly Field Size = Subject.Amount("size", "Basic size", Dimension.Length, "mm", (1, 500), help: "The size on the drawing, from which the limits count.");
    public static readonly Field HoleClass = Subject.Text("holeClass", "Tolerance class of the hole", "Letter and grade of ISO 286, such as H7.");
    public static readonly Field ShaftClass = Subject.Text("shaftClass", "Tolerance class of the shaft", "Letter and grade of ISO 286, such as p6.");
    public static readonly Field Hole = Subject.Amount("hole", "Hole diameter", Dimension.Length, "mm", (1, 500), "bore gauge, two depths and two axes");
    public static readonly Field Shaft = Subject.Amount("shaft", "Shaft diameter", Dimension.Length, "mm", (1, 500), "micrometer, two places and two axes");
    public static readonly Field InterferenceMin = Subject.Amount("interferenceMin", "Least interference wanted", Dimension.Length, "mm", (-0.5, 0.5), help: "On the diameter; a clearance counts negative. By the tolerance classes when left out.", signed: true);
    public static readonly Field InterferenceMax = Subject.Amount("interferenceMax", "Greatest interference wanted", Dimension.Length, "mm", (-0.5, 0.5), help: "On the diameter; a clearance counts negative. By the tolerance classes when left out.", signed: true);
    public static readonly Field HoleCoating = Subject.Amount("holeCoating", "Coating still to come into the hole", Dimension.Length, "µm", (1, 200), help: "Thickness of plating or anodising after the measurement; that of the coating that names this fit when left out.");
    public static readonly Field ShaftCoating = Subject.Amount("shaftCoating", "Coating still to come on the shaft", Dimension.Length, "µm", (1, 200), help: "Thickness of plating or anodising after the measurement; that of the coating that names this fit when left out.");
    public static readonly Field CoatingOutward = Subject.Amount("coatingOutward", "Share of the coating that grows outward", Dimension.Number, "", (0.3, 1), help: "1 for plating, 0.5 for hard anodising; 1 when left out.");
    public static readonly Field HoleRoughness = Subject.Amount("holeRoughness", "Rz of the hole", Dimension.Length, "µm", (0.2, 40), "roughness tester");
    public static readonly Field ShaftRoughness = Subject.Amount("shaftRoughness", "Rz of the shaft", Dimension.Length, "µm", (0.2, 40), "roughness tester");
    public static readonly Field Length = Subject.Amount("length", "Length of the joint", Dimension.Length, "mm", (2, 300), "calliper, chamfers left out");
    public static readonly Field HubDiameter = Subject.Amount("hubDiameter", "Outside diameter of the hub", Dimension.Length, "mm", (4, 600), help: "Of the wall that carries the fit; of a case, that of the boss.");
    public static readonly Field ShaftBore = Subject.Amount("shaftBore", "Bore of the shaft", Dimension.Length, "mm", (1, 400), help: "None when left out: a solid shaft.");
    public static readonly Field HubMaterial = Subject.Choice<MaterialGrade>("hubMaterial", "Material of the hub", "Its stiffness, expansion and strength are those of the handbook's table.");
    public static readonly Field ShaftMaterial = Subject.Choice<MaterialGrade>("shaftMaterial", "Material of the shaft", "Its stiffness, expansion and strength are those of the handbook's table.");
    public static readonly Field Friction = Subject.Amount("friction", "Friction of the joint", Dimension.Number, "", (0.05, 0.3), help: "0.12 when left out: steel on steel, degreased and shrunk on, held low.");
    public static readonly Field HubTemperature = Subject.Amount("hubTemperature", "Temperature of the hub, running", Dimension.Temperature, "°C", (20, 400));
    public static readonly Field ShaftTemperature = Subject.Amount("shaftTemperature", "Temperature of the shaft, running", Dimension.Temperature, "°C", (20, 400));
    public static readonly Field SpeedRatio = Subject.Amount("speedRatio", "Turns for one turn of the crank", Dimension.Number, "", (0.1, 20), help: "A joint that stands still when left out.");
    public static readonly Field Torque = Subject.Amount("torque", "Greatest torque through the joint", Dimension.Torque, "N·m", (0.5, 2000));
    public static readonly Field AxialForce = Subject.Amount("axialForce", "Greatest axial force on the joint", Dimension.Force, "kN", (0.05, 200));
    public static readonly Field HeatLimit = Subject.Amount("heatLimit", "Hottest that the hub may be made", Dimension.Temperature, "°C", (80, 400), help: "By its temper and by what sits in it: below the tempering temperature of steel, below ageing of aluminium.");
    public static readonly Field ShaftColdest = Subject.Amount("shaftColdest", "Temperature to which the shaft is cooled for assembly", Dimension.Temperature, "°C", (-196, 20), help: "As it is in the room when left out.");
    public static readonly Field HandlingClearance = Subject.Amount("handlingClearance", "Clearance wanted while it goes together", Dimension.Length, "mm", (0.01, 0.3), help: "A thousandth of the size when left out (common practice).");
    public static readonly Field Taper = Subject.Amount("taper", "Taper: change of diameter over length", Dimension.Number, "", (0.02, 0.5), help: "0.1 for 1:10. The size is then the mean diameter.");
    public static readonly Field NutForce = Subject.Amount("nutForce", "Force of the nut on the taper", Dimension.Force, "kN", (1, 200));
    public static readonly Field KeyLength = Subject.Amount("keyLength", "Length of the key", Dimension.Length, "mm", (4, 200), "calliper", "Section by DIN 6885-1 from the size.");
    public static readonly Field KeyEnds = Subject.Choice<KeyEnds>("keyEnds", "Ends of the key", "Round when left out.");
    public static readonly Field KeyPressureLimit = Subject.Amount("keyPressureLimit", "Pressure allowed on the key's flank", Dimension.Pressure, "MPa", (20, 400), help: "Of the softer of hub, key and shaft.");
}
