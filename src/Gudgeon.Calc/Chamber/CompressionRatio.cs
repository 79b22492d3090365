using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Chamber;

/// <summary>The volumes above the piston at top dead centre and the ratio they give.</summary>
/// <param name="Ratio">Geometric compression ratio.</param>
/// <param name="Swept">Swept volume of one cylinder, m³.</param>
/// <param name="Clearance">Everything above the piston at top dead centre, m³.</param>
/// <param name="Gasket">Volume inside the gasket bore, m³.</param>
/// <param name="Deck">Volume between piston edge and deck, m³; negative when the piston stands proud.</param>
public readonly record struct CompressionParts(
    [Quantity("compression ratio", Dimension.Number, Symbol = "CR")] double Ratio,
    [Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vs")] double Swept,
    [Quantity("clearance volume", Dimension.Volume, "cm³", Symbol = "Vc")] double Clearance,
    [Quantity("gasket volume", Dimension.Volume, "cm³", Symbol = "Vg")] double Gasket,
    [Quantity("deck volume", Dimension.Volume, "cm³", Symbol = "Vd")] double Deck);

/// <summary>Swept volume, clearance volume and geometric compression ratio.</summary>
public static class CompressionRatio
{
    /// <summary>Swept volume of one or more cylinders, m³.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="stroke">Piston stroke, m; with an offset pin slightly more than twice the crank radius.</param>
    /// <param name="cylinders">Number of cylinders.</param>
    [Formula("swept volume", "Vs = z π B^2 s / 4", "Definition: ISO 7967-2", Provenance = Provenance.Definition)]
    [return: Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vs")]
    public static double SweptVolume(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0, Max = 4)] double stroke,
        [Quantity("number of cylinders", Dimension.Number, Symbol = "z", Min = 1)] int cylinders = 1) =>
        cylinders * BoreArea(bore) * stroke;

    /// <summary>Compression ratio from swept and clearance volume.</summary>
    /// <param name="swept">Swept volume of one cylinder, m³.</param>
    /// <param name="clearance">Clearance volume of one cylinder, m³.</param>
    [Formula("compression ratio", "CR = 1 + Vs / Vc", "Definition: ISO 7967-2", Provenance = Provenance.Definition)]
    [return: Quantity("compression ratio", Dimension.Number, Symbol = "CR")]
    public static double FromVolumes(
        [Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vs", Above = 0)] double swept,
        [Quantity("clearance volume", Dimension.Volume, "cm³", Symbol = "Vc", Above = 0)] double clearance) =>
        1 + (swept / clearance);

    /// <summary>Compression ratio from the measured parts: head, piston crown, gasket and deck.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="stroke">Piston stroke, m.</param>
    /// <param name="chamber">Chamber in the head, by burette, m³.</param>
    /// <param name="dome">Volume the crown stands above its edge, m³; a dish or valve pockets count negative.</param>
    /// <param name="gasketBore">Bore of the gasket, m; not always the cylinder bore.</param>
    /// <param name="gasketThickness">Thickness of the crushed gasket, m.</param>
    /// <param name="deck">Piston edge below the deck at top dead centre, m; negative when it stands proud.</param>
    [Formula(
        "compression ratio by parts",
        "CR = 1 + Vs / Vc; Vs = π B^2 s / 4; Vc = Vh - Vp + Vg + Vd; Vg = π Dg^2 tg / 4; Vd = π B^2 h / 4",
        "Definition of the compression ratio and of the volumes (ISO 7967-2)",
        Provenance = Provenance.Definition,
        Caution = "One millilitre of error in the chamber of a small cylinder moves the ratio by several tenths: level the head, use a flat plate and grease, and read the burette twice.")]
    public static CompressionParts ByParts(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0, Max = 4)] double stroke,
        [Quantity("chamber volume", Dimension.Volume, "cm³", Symbol = "Vh", Min = 0)] double chamber,
        [Quantity("dome volume", Dimension.Volume, "cm³", Symbol = "Vp", Help = "negative for a dish or pockets")] double dome,
        [Quantity("gasket bore", Dimension.Length, "mm", Symbol = "Dg", Above = 0, Max = 2)] double gasketBore,
        [Quantity("crushed gasket thickness", Dimension.Length, "mm", Symbol = "tg", Min = 0, Max = 0.05)] double gasketThickness,
        [Quantity("deck height", Dimension.Length, "mm", Symbol = "h", Min = -0.05, Max = 0.2, Help = "piston below the deck positive")] double deck = 0)
    {
        var swept = BoreArea(bore) * stroke;
        var gasket = BoreArea(gasketBore) * gasketThickness;
        var deckVolume = BoreArea(bore) * deck;
        var clearance = chamber - dome + gasket + deckVolume;
        FormulaDomainException.Unless(clearance > 0, "clearance volume: the dome fills more than the chamber, gasket and deck hold");
        return new CompressionParts(1 + (swept / clearance), swept, clearance, gasket, deckVolume);
    }

    /// <summary>Clearance volume that gives a wanted compression ratio, m³.</summary>
    /// <param name="swept">Swept volume of one cylinder, m³.</param>
    /// <param name="ratio">Wanted compression ratio.</param>
    [Formula("clearance volume for a compression ratio", "Vc = Vs / (CR - 1)", "Definition: ISO 7967-2", Provenance = Provenance.Definition)]
    [return: Quantity("clearance volume", Dimension.Volume, "cm³", Symbol = "Vc")]
    public static double ClearanceFor(
        [Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vs", Above = 0)] double swept,
        [Quantity("compression ratio", Dimension.Number, Symbol = "CR", Above = 1)] double ratio) =>
        swept / (ratio - 1);

    /// <summary>Spacer to put under the cylinder (or cut to take off, negative) to reach a wanted ratio, m.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="swept">Swept volume of one cylinder, m³.</param>
    /// <param name="clearance">Clearance volume as it is, m³.</param>
    /// <param name="ratio">Wanted compression ratio.</param>
    [Formula(
        "spacer for a compression ratio",
        "t = 4 (Vs / (CR - 1) - Vc) / (π B^2)",
        "Geometry: volume of a disc of the bore",
        Provenance = Provenance.Definition,
        Caution = "A spacer opens the squish and moves the cam timing; a cut closes the squish and the valve-to-piston clearance. Measure both again.")]
    [return: Quantity("spacer thickness", Dimension.Length, "mm", Symbol = "t")]
    public static double SpacerFor(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vs", Above = 0)] double swept,
        [Quantity("clearance volume", Dimension.Volume, "cm³", Symbol = "Vc", Above = 0)] double clearance,
        [Quantity("compression ratio", Dimension.Number, Symbol = "CR", Above = 1)] double ratio) =>
        (ClearanceFor(swept, ratio) - clearance) / BoreArea(bore);

    /// <summary>Area of a round bore, m².</summary>
    internal static double BoreArea(double bore) => Math.PI * bore * bore / 4;
}
