using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Crankshaft.</summary>
public static class Crank
{
    private static readonly Subject Subject = new("crank", "Crankshaft");

    public static readonly Field Stroke = Subject.Amount("stroke", "Stroke", Dimension.Length, "mm", (30, 130), "depth gauge at both dead centres");
    public static readonly Field Mass = Subject.Amount("mass", "Crankshaft mass", Dimension.Mass, "kg", (3, 40), "scale");
    public static readonly Field Inertia = Subject.Amount("inertia", "Inertia at crank speed", Dimension.MomentOfInertia, "kg·m²", (0.001, 0.3), help: "Crank, clutch basket and everything geared to it, referred to crank speed.");
    public static readonly Field BobWeight = Subject.Amount("bobWeight", "Bob weight on each crank pin", Dimension.Mass, "g", (100, 6000), "scale, the bare crank in balance on knife edges or machine", "With this on every pin the bare crank is in balance.");
    public static readonly Field BalanceFactor = Subject.Amount("balanceFactor", "Balance factor wanted", Dimension.Number, "%", (0, 100), help: "Share of the reciprocating mass that the counterweights balance; what it was before the changes when left out.", zero: true);
    public static readonly Field CounterweightRadius = Subject.Amount("counterweightRadius", "Radius at which the counterweights are drilled", Dimension.Length, "mm", (20, 150), "calliper from the journal", "Middle of the hole, from the crank axis.");
    public static readonly Field BalanceHole = Subject.Amount("balanceHole", "Diameter of a balance hole", Dimension.Length, "mm", (5, 40), help: "Of the drill, or of a heavy-metal slug.");
    public static readonly Field SlugDensity = Subject.Amount("slugDensity", "Density of a heavy-metal slug", Dimension.Density, "kg/m³", (9000, 19500), help: "17000 kg/m³, a tungsten alloy, when left out: by its maker.");
}
