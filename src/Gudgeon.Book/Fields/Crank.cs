using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Crankshaft.</summary>
public static class Crank
{
    private static readonly Subject Subject = new("crank", "Crankshaft");

    public static readonly Field Stroke = Subject.Amount("stroke", "Stroke", Dimension.Length, "mm", (30, 130), "depth gauge at both dead centres");
    public static readonly Field Mass = Subject.Amount("mass", "Crankshaft mass", Dimension.Mass, "kg", (3, 40), "scale", "About 17 kg in a big twin (common practice, no source).");
    public static readonly Field Inertia = Subject.Amount("inertia", "Inertia at crank speed", Dimension.MomentOfInertia, "kg·m²", (0.001, 0.3), help: "Crank, clutch basket and everything geared to it, referred to crank speed.");
    public static readonly Field BobWeight = Subject.Amount("bobWeight", "Bob weight on each crank pin", Dimension.Mass, "g", (100, 6000), "scale, the bare crank in balance on knife edges or machine", "With this on every pin the bare crank is in balance.");
    public static readonly Field BalanceFactor = Subject.Amount("balanceFactor", "Balance factor wanted", Dimension.Number, "%", (0, 100), help: "Share of the reciprocating mass that the counterweights balance; what it was before the changes when left out.", zero: true);
    public static readonly Field CounterweightRadius = Subject.Amount("counterweightRadius", "Radius at which the counterweights are drilled", Dimension.Length, "mm", (20, 150), "calliper from the journal", "Middle of the hole, from the crank axis.");
    public static readonly Field BalanceHole = Subject.Amount("balanceHole", "Diameter of a balance hole", Dimension.Length, "mm", (5, 40), help: "Of the drill, or of a heavy-metal slug.");
    public static readonly Field SlugDensity = Subject.Amount("slugDensity", "Density of a heavy-metal slug", Dimension.Density, "kg/m³", (9000, 19500), help: "17000 kg/m³, a tungsten alloy, when left out: by its maker.");
    public static readonly Field PinLength = Subject.Amount("pinLength", "Length of the crank pin between the webs", Dimension.Length, "mm", (12, 90), "gauge blocks or inside micrometer");
    public static readonly Field PinBore = Subject.Amount("pinBore", "Bore of the crank pin", Dimension.Length, "mm", (2, 60), help: "Solid when left out.", zero: true);
    public static readonly Field JournalBore = Subject.Amount("journalBore", "Bore of the main journals", Dimension.Length, "mm", (2, 60), help: "Solid when left out.", zero: true);
    public static readonly Field WebThickness = Subject.Amount("webThickness", "Web thickness", Dimension.Length, "mm", (8, 60), "calliper");
    public static readonly Field WebWidth = Subject.Amount("webWidth", "Web width where pin and journal overlap", Dimension.Length, "mm", (30, 160), "calliper");
    public static readonly Field PinFillet = Subject.Amount("pinFillet", "Fillet radius of the crank pin", Dimension.Length, "mm", (0.8, 8), "radius gauge");
    public static readonly Field JournalFillet = Subject.Amount("journalFillet", "Fillet radius of the main journals", Dimension.Length, "mm", (0.8, 8), "radius gauge");
    public static readonly Field PinRecess = Subject.Amount("pinRecess", "Depth of the pin's fillet in the web", Dimension.Length, "mm", (0.1, 3), help: "For undercut fillets; none when left out.", zero: true);
    public static readonly Field JournalRecess = Subject.Amount("journalRecess", "Depth of the journals' fillets in the web", Dimension.Length, "mm", (0.1, 3), help: "For undercut fillets; none when left out.", zero: true);
    public static readonly Field FilletRoughness = Subject.Amount("filletRoughness", "Roughness Rz of the fillets", Dimension.Length, "µm", (0.3, 40), "roughness tester", "Counts as polished when left out.");
    public static readonly Field TensileStrength = Subject.Amount("tensileStrength", "Tensile strength of the crank", Dimension.Pressure, "MPa", (400, 1600), help: "Of the core, not of a hardened skin.");
    public static readonly Field ForgingFactor = Subject.Amount("forgingFactor", "Factor of how the crank was made", Dimension.Number, "", (0.9, 1.1), help: "1.05 forged with the grain, 1 free forged or from the billet, 0.93 cast; 1 when left out.");
    public static readonly Field FilletTreatment = Subject.Amount("filletTreatment", "Gain in fatigue strength by treating the fillets", Dimension.Number, "", (1, 2), help: "Rolled, nitrided or peened, by tests of who did it; 1, untreated, when left out.");
    public static readonly Field DrivePosition = Subject.Amount("drivePosition", "Place of the primary drive along the crank", Dimension.Length, "mm", (-600, 600), help: "From the mark that the cylinders count from; beyond the last cylinder when left out.", signed: true);
    public static readonly Field EndFloat = Subject.Amount("endFloat", "End float of the crank", Dimension.Length, "mm", (0.02, 0.6), "dial gauge on the nose, crank levered both ways");
    public static readonly Field EndFloatMin = Subject.Amount("endFloatMin", "Least end float of the crank", Dimension.Length, "mm", (0.02, 0.2), help: "By the maker of the engine.");
    public static readonly Field EndFloatMax = Subject.Amount("endFloatMax", "Greatest end float of the crank", Dimension.Length, "mm", (0.08, 0.6), help: "By the maker of the engine.");
}
