using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Baking of a treated part, to drive hydrogen out of hard steel: bake[spindle].</summary>
public static class Bake
{
    private static readonly Subject Subject = new("bake", "Baking for hydrogen", Indexing.Name);

    public static readonly Field Time = Subject.Amount("time", "Time at temperature", Dimension.Time, "h", (1, 48), "recorder of the oven", "From when the part itself is hot.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Baking temperature", Dimension.Temperature, "°C", (120, 260), "thermocouple on the part");
    public static readonly Field Delay = Subject.Amount("delay", "Delay from bath to oven", Dimension.Time, "h", (0, 24), "clock", zero: true);
}
