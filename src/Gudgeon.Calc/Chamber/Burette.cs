using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Chamber;

/// <summary>Standard uncertainty of a compression ratio and of the clearance volume behind it.</summary>
/// <param name="Clearance">Standard uncertainty of the clearance volume, m³.</param>
/// <param name="Ratio">Standard uncertainty of the compression ratio.</param>
/// <param name="Expanded">Expanded uncertainty of the compression ratio, k = 2.</param>
public readonly record struct CompressionRatioUncertainty(
    [Quantity("standard uncertainty of the clearance volume", Dimension.Volume, "cm³", Symbol = "uc")] double Clearance,
    [Quantity("standard uncertainty of the compression ratio", Dimension.Number, Symbol = "u")] double Ratio,
    [Quantity("expanded uncertainty of the compression ratio", Dimension.Number, Symbol = "U")] double Expanded);

/// <summary>Volumes measured by filling them from a burette.</summary>
public static class Burette
{
    /// <summary>Compression ratio from the volume poured into the assembled cylinder at top dead centre.</summary>
    /// <param name="swept">Swept volume of one cylinder, m³.</param>
    /// <param name="poured">Volume poured in up to the top of the plug thread, m³.</param>
    /// <param name="plugHole">Volume of the plug hole that the plug fills in service, m³.</param>
    [Formula(
        "compression ratio by burette",
        "CR = 1 + Vs / (Vb - Vt)",
        "Definition of the compression ratio (ISO 7967-2)",
        Provenance = Provenance.Definition,
        Caution = "Seal the ring pack with grease and let the air out of the highest corner, or the reading is short.")]
    [return: Quantity("compression ratio", Dimension.Number, Symbol = "CR")]
    public static double CompressionRatio(
        [Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vs", Above = 0)] double swept,
        [Quantity("volume poured in", Dimension.Volume, "cm³", Symbol = "Vb", Above = 0)] double poured,
        [Quantity("plug hole volume", Dimension.Volume, "cm³", Symbol = "Vt", Min = 0)] double plugHole = 0)
    {
        FormulaDomainException.Unless(poured > plugHole, "volume poured in: must be greater than the plug hole volume");
        return 1 + (swept / (poured - plugHole));
    }

    /// <summary>Dome volume from a burette reading over the piston standing a known depth down the bore, m³.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="depth">Piston edge below the plate, m.</param>
    /// <param name="poured">Volume poured in under the plate, m³.</param>
    /// <returns>Dome volume, m³; negative for a dish.</returns>
    [Formula("dome volume by burette", "Vp = π B^2 h / 4 - Vb", "Geometry: cylinder less what was poured in", Provenance = Provenance.Definition)]
    [return: Quantity("dome volume", Dimension.Volume, "cm³", Symbol = "Vp")]
    public static double Dome(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("piston depth below the plate", Dimension.Length, "mm", Symbol = "h", Min = 0, Max = 1)] double depth,
        [Quantity("volume poured in", Dimension.Volume, "cm³", Symbol = "Vb", Min = 0)] double poured) =>
        (Chamber.CompressionRatio.BoreArea(bore) * depth) - poured;

    /// <summary>Uncertainty of a compression ratio built up from chamber, dome, gasket and deck, independent of each other.</summary>
    /// <param name="swept">Swept volume of one cylinder, m³; its own uncertainty is negligible beside the others.</param>
    /// <param name="clearance">Clearance volume, m³.</param>
    /// <param name="chamber">Standard uncertainty of the chamber volume, m³.</param>
    /// <param name="dome">Standard uncertainty of the dome volume, m³.</param>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="deck">Standard uncertainty of the deck height, m.</param>
    /// <param name="gasketBore">Gasket bore, m.</param>
    /// <param name="gasketThickness">Standard uncertainty of the gasket thickness, m.</param>
    [Formula(
        "compression ratio uncertainty",
        "uc = sqrt(uh^2 + up^2 + (π B^2 ud / 4)^2 + (π Dg^2 ug / 4)^2); u = Vs / Vc^2 uc; U = 2 u",
        "JCGM 100:2008 (GUM), eq. 10",
        Caution = "A limit of error of ±a is a standard uncertainty of a/√3.")]
    public static CompressionRatioUncertainty Uncertainty(
        [Quantity("swept volume", Dimension.Volume, "cm³", Symbol = "Vs", Above = 0)] double swept,
        [Quantity("clearance volume", Dimension.Volume, "cm³", Symbol = "Vc", Above = 0)] double clearance,
        [Quantity("standard uncertainty of the chamber volume", Dimension.Volume, "cm³", Symbol = "uh", Min = 0)] double chamber,
        [Quantity("standard uncertainty of the dome volume", Dimension.Volume, "cm³", Symbol = "up", Min = 0)] double dome,
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0)] double bore,
        [Quantity("standard uncertainty of the deck height", Dimension.Length, "mm", Symbol = "ud", Min = 0)] double deck,
        [Quantity("gasket bore", Dimension.Length, "mm", Symbol = "Dg", Above = 0)] double gasketBore,
        [Quantity("standard uncertainty of the gasket thickness", Dimension.Length, "mm", Symbol = "ug", Min = 0)] double gasketThickness)
    {
        var deckVolume = Chamber.CompressionRatio.BoreArea(bore) * deck;
        var gasketVolume = Chamber.CompressionRatio.BoreArea(gasketBore) * gasketThickness;
        var combined = Math.Sqrt((chamber * chamber) + (dome * dome) + (deckVolume * deckVolume) + (gasketVolume * gasketVolume));
        var ratio = swept / (clearance * clearance) * combined;
        return new CompressionRatioUncertainty(combined, ratio, 2 * ratio);
    }
}
