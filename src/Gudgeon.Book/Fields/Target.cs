using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>What the builder wants of the machine.</summary>
public static class Target
{
    private static readonly Subject Subject = new("target", "Target");

    public static readonly Field Power = Subject.Amount("power", "Target power at the crank", Dimension.Power, "kW", (10, 500), help: "The power that the parts must hold and the run must show.");
    public static readonly Field QuarterTime = Subject.Amount("quarter", "Target quarter-mile time", Dimension.Time, "s", (6, 20));
    public static readonly Field Budget = Subject.Amount("budget", "Budget for parts", Dimension.Number, "", (10, 200000), help: "All parts of the list together, in the shop's own money; bolts of the joints are on a list of their own.");
    public static readonly Field Mass = Subject.Amount("mass", "Target mass of the parts together", Dimension.Mass, "kg", (0.1, 300), help: "All parts of the list that are not scrapped.");
}
