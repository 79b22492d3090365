using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Fields;

/// <summary>Shot peening of a treated part, one for each step: peening[gears.coarse], peening[gears.fine].</summary>
public static class Peening
{
    public const string CastSteel = "cast steel", HardCastSteel = "hard cast steel", CutWire = "cut wire", Glass = "glass bead", Ceramic = "ceramic bead";

    private static readonly Subject Subject = new("peening", "Shot peening", Indexing.Name);

    public static readonly Field Step = Subject.Count("step", "Which step of peening it is", (1, 4), help: "Coarse is 1, fine is 2; by the order of the names when left out.");
    public static readonly Field Media = Subject.Choice("media", "Peening media", [CastSteel, HardCastSteel, CutWire, Glass, Ceramic], "Hard shot has 55 to 62 HRC.");
    public static readonly Field ShotSize = Subject.Amount("shotSize", "Nominal size of the media", Dimension.Length, "mm", (0.05, 1.6), "by the bag; sieved", "S230 is 0.594 mm, CW14 is 0.356 mm (SAE J444, J441).");
    public static readonly Field Strip = Subject.Choice("strip", "Almen strip", Enum.GetNames<AlmenStrip>(), "A when left out.");
    public static readonly Field IntensityMin = Subject.Amount("intensityMin", "Least intensity wanted", Dimension.Length, "mm", (0.03, 0.8), help: "Arc height on the strip named; for steel of known strength and thickness the customary one when left out.");
    public static readonly Field IntensityMax = Subject.Amount("intensityMax", "Greatest intensity wanted", Dimension.Length, "mm", (0.03, 0.8), help: "Arc height on the strip named; for steel of known strength and thickness the customary one when left out.");
    public static readonly Field Readings = Subject.Table("readings", "Almen strip readings", "Exposure and arc height of each strip, at least four, the last at twice the saturation time or more; each strip used once.", new Column("time", Dimension.Time, "s"), new Column("height", Dimension.Length, "mm"));
    public static readonly Field CoverageWanted = Subject.Amount("coverageWanted", "Coverage wanted", Dimension.Number, "%", (80, 400), help: "100 % is the time to full coverage, 200 % twice that time; 100 % when left out.");
    public static readonly Field CoverageSeen = Subject.Amount("coverageSeen", "Coverage seen after a short exposure", Dimension.Number, "%", (20, 97), "lens of ten times, on the part", most: 0.999);
    public static readonly Field CoverageTime = Subject.Amount("coverageTime", "Exposure after which it was seen", Dimension.Time, "s", (1, 3600), "stop watch");
    public static readonly Field Exposure = Subject.Amount("exposure", "Exposure of the part", Dimension.Time, "s", (2, 7200), "timer of the cabinet", "Of each face, with the nozzle at the same distance as over the strips.");
    public static readonly Field Masked = Subject.Text("masked", "Faces that are masked or plugged", "Threads, bearing and seal journals, bores with fits, ground flanks where the drawing gives a finish, oil holes. Separate them by semicolons; photos are kept with this field.");
    public static readonly Field HeatAfterwards = Subject.Amount("heatAfterwards", "Hottest that the part gets afterwards", Dimension.Temperature, "°C", (20, 500), help: "In shrinking on or in service; baking and coating are counted by themselves.");
}
