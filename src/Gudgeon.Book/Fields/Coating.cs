using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Plating, anodising or another coat of a treated part: coating[spindle].</summary>
public static class Coating
{
    public const string Shaft = "shaft", Bore = "bore", Face = "face", Thread = "thread", ToCome = "to come", Done = "done", Electrolytic = "acid or electrolytic", Dry = "dry";

    private static readonly Subject Subject = new("coating", "Coating", Indexing.Name);

    public static readonly Field Kind = Subject.Text("kind", "What the part is coated with", "Such as zinc-nickel, hard anodic, chromium nitride.");
    public static readonly Field Thickness = Subject.Amount("thickness", "Thickness of the coat", Dimension.Length, "µm", (0.5, 200), "magnetic or eddy-current gauge, or the diameter before and after, halved", "With its ±.");
    public static readonly Field Outward = Subject.Amount("outward", "Share of the coat that grows outward", Dimension.Number, "", (0.3, 1), help: "1 for plating and dry coats, 0.5 for hard anodising; 1 when left out.");
    public static readonly Field Where = Subject.Choice("where", "Where the size counts", [Shaft, Bore, Face, Thread], "A shaft when left out.");
    public static readonly Field Room = Subject.Amount("room", "Room left for it", Dimension.Length, "µm", (1, 400), help: "On the diameter, of a thread on the pitch diameter: the allowance of its class as measured; of a face, on that face.");
    public static readonly Field Fit = Subject.Text("fit", "Fit whose shaft or hole it is", "Its name, such as spigot: what is still to come is then counted there, where no coating is written.");
    public static readonly Field State = Subject.Choice("state", "Whether the coat is on", [ToCome, Done], "To come when left out: sizes were measured without it.");
    public static readonly Field Process = Subject.Choice("process", "How it is put on", [Electrolytic, Dry], "Acid or electrolytic, also when left out, is a source of hydrogen in steel.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Hottest that the part gets in it", Dimension.Temperature, "°C", (0, 550), help: "Dry coats are put on hot.");
    public static readonly Field Masked = Subject.Text("masked", "Faces that are masked or plugged", "Threads, bores with fits, earth points, separated by semicolons; photos are kept with this field.");
}
