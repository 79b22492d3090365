using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;

namespace Gudgeon.Book.Fields;

/// <summary>Piston, pin and rings; piston[1] is that of cylinder 1.</summary>
public static class Piston
{
    private static readonly Subject Subject = new("piston", "Piston", Indexing.Cylinder);

    public static readonly Field Mass = Subject.Amount("mass", "Piston with pin and rings", Dimension.Mass, "g", (50, 1500), "scale");
    public static readonly Field CompressionLimit = Subject.Amount("peakPressureLimit", "Peak cylinder pressure allowed by the piston", Dimension.Pressure, "bar", (40, 200), help: "By the maker of the piston.");
    public static readonly Field TopRingGap = Subject.Amount("topRingGap", "Top ring end gap", Dimension.Length, "mm", (0.1, 1.5), "feeler gauge, ring squared in the bore");
    public static readonly Field SecondRingGap = Subject.Amount("secondRingGap", "Second ring end gap", Dimension.Length, "mm", (0.1, 1.5), "feeler gauge, ring squared in the bore");
    public static readonly Field RingService = Subject.Choice<RingService>("ringService", "Duty of the rings", "Chooses the trade's gap factor; the ring maker's figure wins, set as a limit.");
    public static readonly Field Diameter = Subject.Amount("diameter", "Piston diameter at the gauge point", Dimension.Length, "mm", (30, 130), "micrometer across the thrust faces at the maker's height");
    public static readonly Field ClearanceMin = Subject.Amount("clearanceMin", "Least piston-to-bore clearance", Dimension.Length, "mm", (0.01, 0.3), help: "By the maker of the piston, at 20 °C.");
    public static readonly Field ClearanceMax = Subject.Amount("clearanceMax", "Greatest piston-to-bore clearance", Dimension.Length, "mm", (0.02, 0.4), help: "By the maker of the piston, at 20 °C.");
}
