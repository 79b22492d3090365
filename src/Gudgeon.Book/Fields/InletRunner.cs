using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The pipe from the plenum to the inlet valves; intake.runner[1] is that of cylinder 1. The wave depth of the engine model reads it.</summary>
public static class InletRunner
{
    private static readonly Subject Subject = new("intake.runner", "Inlet runner", Indexing.Cylinder);

    public static readonly Field Length = Subject.Amount("length", "Length from plenum to valve seat", Dimension.Length, "mm", (40, 1000), "wire along the middle of the passage", "Of a cylinder that shares a port: from its valve seat to where the passages meet.");
    public static readonly Field Diameter = Subject.Amount("diameter", "Diameter at the plenum end", Dimension.Length, "mm", (15, 90), "calliper or telescopic gauge", "Of a passage that is not round: √(4 A/π). The bellmouth does not count.");
    public static readonly Field PortDiameter = Subject.Amount("portDiameter", "Diameter at the valve", Dimension.Length, "mm", (15, 90), "telescopic gauge below the valve guide", "Of all valves of the cylinder together, where the port has branched. As at the plenum end when left out.");
    public static readonly Field Shape = Subject.Table("shape", "Diameter along the runner", "From the plenum (distance 0) to the valve seat; goes before length and diameters. The same distance twice is a step.", PipeShape.Columns);
    public static readonly Field BendLoss = Subject.Amount("bendLoss", "Loss in bends", Dimension.Number, "", (0, 2), "flow bench: pressure lost over dynamic head", "Sum of the loss coefficients; 0 when left out (common practice), for the port's own bend is in the bench readings of the valve.", zero: true);
    public static readonly Field EntryLoss = Subject.Amount("entryLoss", "Loss at the mouth", Dimension.Number, "", (0.02, 1), help: "In dynamic heads: 0.03 with a bellmouth, 0.5 cut off square; 0.1 when left out (common practice).", zero: true);
    public static readonly Field Roughness = Subject.Amount("roughness", "Roughness of the wall", Dimension.Length, "µm", (0.5, 500), "roughness tester or comparison plates", "Height of the sand grain that it is like: 1.5 µm drawn tube, 100 to 300 µm as cast; 50 µm when left out (common practice).");
    public static readonly Field WallTemperature = Subject.Amount("wallTemperature", "Wall temperature", Dimension.Temperature, "°C", (0, 150), "thermocouple under the runner, engine hot", "60 °C when left out (common practice): between the head and the air.");
}

/// <summary>Siamese inlet ports: cylinders that share the passage next to the plenum.</summary>
public static class SharedRunner
{
    private static readonly Subject Subject = new("intake", "Intake");

    public static readonly Field Shared = Subject.Text("runner.shared", "Cylinders that share a port", "The cylinders of each shared port with dashes between, ports with commas: 1-2, 3-4; or none, as when left out.");
    public static readonly Field StemLength = Subject.Amount("runner.stemLength", "Length of the shared part", Dimension.Length, "mm", (20, 800), "wire along the middle of the passage", "From the plenum to where the passages part.");
    public static readonly Field StemDiameter = Subject.Amount("runner.stemDiameter", "Diameter of the shared part", Dimension.Length, "mm", (15, 90), "calliper or telescopic gauge");
    public static readonly Field JunctionVolume = Subject.Amount("runner.junctionVolume", "Volume where the passages part", Dimension.Volume, "cm³", (5, 500), "burette", "A slim one when left out.");
}
