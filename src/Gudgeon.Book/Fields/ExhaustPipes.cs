using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The exhaust pipe of one cylinder; exhaust.primary[1] is that of cylinder 1. The wave depth of the engine model reads it and those below.</summary>
public static class ExhaustPrimary
{
    private static readonly Subject Subject = new("exhaust.primary", "Primary exhaust pipe", Indexing.Cylinder);

    public static readonly Field Length = Subject.Amount("length", "Length from valve seat to the merge", Dimension.Length, "mm", (100, 1500), "wire along the outside of the bends, and a little less", "The port in the head counts in. To the open end where pipes stay separate.");
    public static readonly Field Diameter = Subject.Amount("diameter", "Inside diameter at the head", Dimension.Length, "mm", (15, 90), "calliper");
    public static readonly Field EndDiameter = Subject.Amount("endDiameter", "Inside diameter at its end", Dimension.Length, "mm", (15, 110), "calliper", "As at the head when left out.");
    public static readonly Field Shape = Subject.Table("shape", "Diameter along the pipe", "From the valve seat (distance 0) on; goes before length and diameters. The same distance twice is a step.", PipeShape.Columns);
    public static readonly Field BendLoss = Subject.Amount("bendLoss", "Loss in bends", Dimension.Number, "", (0, 2), help: "Sum of the loss coefficients: 0.2 for 90° on a radius of twice the diameter; 0.3 when left out (common practice).", zero: true);
    public static readonly Field Roughness = Subject.Amount("roughness", "Roughness of the wall", Dimension.Length, "µm", (0.5, 500), help: "1.5 µm new drawn tube, more with soot; 10 µm when left out (common practice).");
}

/// <summary>The pipe after two primaries have met, where pairs meet again.</summary>
public static class ExhaustSecondary
{
    private static readonly Subject Subject = new("exhaust.secondary", "Secondary exhaust pipe");

    public static readonly Field Length = Subject.Amount("length", "Length from the first merge to the second", Dimension.Length, "mm", (50, 1500), "wire along the outside of the bends, and a little less");
    public static readonly Field Diameter = Subject.Amount("diameter", "Inside diameter", Dimension.Length, "mm", (20, 100), "calliper");
    public static readonly Field BendLoss = Subject.Amount("bendLoss", "Loss in bends", Dimension.Number, "", (0, 2), help: "Sum of the loss coefficients; 0 when left out (common practice).", zero: true);
    public static readonly Field Roughness = Subject.Amount("roughness", "Roughness of the wall", Dimension.Length, "µm", (0.5, 500), help: "10 µm when left out (common practice).");
}

/// <summary>Where exhaust pipes meet.</summary>
public static class ExhaustMerge
{
    private static readonly Subject Subject = new("exhaust.merge", "Merge of exhaust pipes");

    public static readonly Field Volume = Subject.Amount("volume", "Volume of each merge", Dimension.Volume, "cm³", (10, 3000), "fill with water", "A slim one when left out.");
}

/// <summary>The last pipe: straight, or a megaphone when its end is wider.</summary>
public static class ExhaustTail
{
    private static readonly Subject Subject = new("exhaust.tail", "Tail pipe or megaphone");

    public static readonly Field Length = Subject.Amount("length", "Length", Dimension.Length, "mm", (50, 2000), "tape", "Behind each primary where pipes stay separate; left out when there is none. With a turbine it ends at the turbine's flange.");
    public static readonly Field Diameter = Subject.Amount("diameter", "Inside diameter where it begins", Dimension.Length, "mm", (20, 130), "calliper");
    public static readonly Field EndDiameter = Subject.Amount("endDiameter", "Inside diameter at the open end", Dimension.Length, "mm", (20, 250), "calliper", "As where it begins when left out.");
    public static readonly Field Shape = Subject.Table("shape", "Diameter along the pipe", "From where it begins (distance 0) to the open end; goes before length and diameters. The same distance twice is a step.", PipeShape.Columns);
    public static readonly Field BendLoss = Subject.Amount("bendLoss", "Loss in bends", Dimension.Number, "", (0, 2), help: "Sum of the loss coefficients; 0 when left out (common practice).", zero: true);
    public static readonly Field Roughness = Subject.Amount("roughness", "Roughness of the wall", Dimension.Length, "µm", (0.5, 500), help: "10 µm when left out (common practice).");
}

/// <summary>A silencer that works as a box: gas comes to rest in it and leaves through a pipe of its own.</summary>
public static class Silencer
{
    private static readonly Subject Subject = new("exhaust.silencer", "Silencer");

    public static readonly Field Volume = Subject.Amount("volume", "Volume of the box", Dimension.Volume, "L", (0, 20), "fill with water, or reckon from the outside", "0, or left out, when there is no box, or behind a turbine: gas passes straight through an absorption silencer, which is a stretch of the tail pipe.", zero: true);
    public static readonly Field TailLength = Subject.Amount("tailLength", "Length of the pipe out of the box", Dimension.Length, "mm", (20, 1000), "tape");
    public static readonly Field TailDiameter = Subject.Amount("tailDiameter", "Inside diameter of the pipe out of the box", Dimension.Length, "mm", (10, 100), "calliper");
}
