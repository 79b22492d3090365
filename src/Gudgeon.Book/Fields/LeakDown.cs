using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;

namespace Gudgeon.Book.Fields;

/// <summary>The leak test of a cylinder: cylinder[1].leakDown.</summary>
public static class LeakDown
{
    private static readonly Subject Subject = new("cylinder", "Cylinder", Indexing.Cylinder);

    public static readonly Field Supply = Subject.Amount("leakSupply", "Leak test: air before the orifice, gauge", Dimension.Pressure, "kPa", (200, 900), "gauge of the leak tester", "Lock the crank first: the piston is pushed down with several hundred newtons.");
    public static readonly Field Held = Subject.Amount("leakHeld", "Leak test: held in the cylinder, gauge", Dimension.Pressure, "kPa", (100, 900), "gauge of the leak tester", zero: true);
    public static readonly Field Leakage = Subject.Amount("leakDown", "Leak test: leakage as the tester reads it", Dimension.Number, "%", (0, 60), "leak tester with a percentage scale", "Worked from both pressures where those are known.", zero: true, most: 1);
    public static readonly Field From = Subject.Choice<LeakPath>("leakFrom", "Leak test: where it is heard", "Listen at throttle, exhaust, oil filler and coolant; soap on the gasket's edge.");
}
