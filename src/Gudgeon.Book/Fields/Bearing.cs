using Gudgeon.Calc.Bearings;
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
    public static readonly Field JournalTable = Subject.Stations("journalTable", "Journal readings", "Distance from one end and the diameters in two axes at right angles, at two stations or more. Their mean is the journal diameter where that is not known by itself.", Journal);
    public static readonly Field HousingTable = Subject.Stations("housingTable", "Housing readings, cap tightened", "Distance from one end and the bores in two axes, along the parting line left out. Their mean is the housing bore where that is not known by itself.", Housing);
    public static readonly Field ClearanceWanted = Subject.Amount("clearanceWanted", "Diametral clearance wanted", Dimension.Length, "mm", (0.01, 0.15), help: "The middle of what is allowed when left out.");
    public static readonly Field Width = Subject.Amount("width", "Width of the shells", Dimension.Length, "mm", (8, 60), "calliper");
    public static readonly Field Feed = Subject.Choice<OilFeed>("feed", "How the oil comes in", "A hole, a groove round the shell that is not loaded, or a groove all round; half a groove for mains and a hole for big ends when left out.");
    public static readonly Field Opening = Subject.Amount("opening", "Width of the groove, or diameter of the hole", Dimension.Length, "mm", (1, 12), "calliper");
    public static readonly Field Excess = Subject.Amount("excess", "Excess of a pair of shells over the bore (nip, crush)", Dimension.Length, "mm", (0.01, 0.3), "cap slackened on one side until it stands free, feeler gauge at the joint", "Sum of both joints: how much longer round the pair is than the bore.");
    public static readonly Field HousingOuter = Subject.Amount("housingOuter", "Outside diameter of the housing as a ring", Dimension.Length, "mm", (35, 200), "calliper, where the ring is thinnest");
    public static readonly Field HousingModulus = Subject.Amount("housingModulus", "Young's modulus of the housing", Dimension.Pressure, "GPa", (40, 220), help: "72 GPa for mains and 206 GPa for big ends when left out.");
    public static readonly Field HousingStressLimit = Subject.Amount("housingStressLimit", "Hoop stress allowed in the housing", Dimension.Pressure, "MPa", (30, 800), help: "By the maker of the material, with his factor.");
    public static readonly Field HousingExpansion = Subject.Amount("housingExpansion", "Thermal expansion of the housing", Dimension.ThermalExpansion, "µm/(m·K)", (8, 28), help: "21 µm/(m·K) for mains in a light-alloy case and 12 µm/(m·K) for steel big ends when left out.");
    public static readonly Field HousingTemperature = Subject.Amount("housingTemperature", "Temperature of the housing, running", Dimension.Temperature, "°C", (20, 180), help: "That of the oil for mains, that of the journal for big ends when left out (common practice).");
    public static readonly Field JournalTemperature = Subject.Amount("journalTemperature", "Temperature of the journal, running", Dimension.Temperature, "°C", (20, 200), help: "20 K above the oil when left out (common practice).");
    public static readonly Field JournalRoughness = Subject.Amount("journalRoughness", "Roughness Ra of the journal", Dimension.Length, "µm", (0.02, 0.8), "roughness tester, along the journal", "That of the superfinishing that names this bearing when left out.");
    public static readonly Field ShellRoughness = Subject.Amount("shellRoughness", "Roughness Ra of the shells", Dimension.Length, "µm", (0.05, 2), "by the maker of the shells");
    public static readonly Field PeakPressureLimit = Subject.Amount("peakPressureLimit", "Film pressure that the shells bear", Dimension.Pressure, "MPa", (30, 400), help: "By the maker of the shells: for fatigue of the lining, greatest of the cycle.");
    public static readonly Field LoadLimit = Subject.Amount("loadLimit", "Load by projected area that the shells bear", Dimension.Pressure, "MPa", (10, 150), help: "By the maker of the shells: greatest of the cycle.");
}
