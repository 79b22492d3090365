using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The passages in the head: port[inlet], port[exhaust.2].</summary>
public static class Port
{
    private static readonly Subject Subject = new("port", "Port", Indexing.Valve);

    public static readonly Field AreaTable = Subject.Table("areaTable", "Area along the port", "Area of the passage, of all branches together, against the distance from the valve seat along its middle; by rubber cast, or from diameters at each place.", new Column("distance", Dimension.Length, "mm", Place: true), new Column("area", Dimension.Area, "mm²"));
    public static readonly Field Volume = Subject.Amount("volume", "Volume of the port in the head", Dimension.Volume, "cm³", (10, 500), "burette, valve shut, to the flange", "Of one cylinder. The engine model reads intake.portVolume, which counts the runner too.");
}
