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
}
