using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>Range of oil clearance the trade builds to.</summary>
/// <param name="Least">Least diametral clearance, m.</param>
/// <param name="Greatest">Greatest diametral clearance, m.</param>
/// <param name="GreatestHighOutput">Greatest diametral clearance for high output, m.</param>
public readonly record struct ClearanceRule(
    [Quantity("least diametral clearance", Dimension.Length, "mm", Symbol = "cmin")] double Least,
    [Quantity("greatest diametral clearance", Dimension.Length, "mm", Symbol = "cmax")] double Greatest,
    [Quantity("greatest diametral clearance for high output", Dimension.Length, "mm", Symbol = "chigh")] double GreatestHighOutput);

/// <summary>Diametral oil clearance a shell pairing can give over the tolerance of one mark.</summary>
/// <param name="Least">Smallest housing and largest journal, thickest shells, m.</param>
/// <param name="Greatest">Largest housing and smallest journal, thinnest shells, m.</param>
/// <param name="Middle">Middle of the two, m.</param>
public readonly record struct ShellClearanceRange(
    [Quantity("least diametral clearance", Dimension.Length, "mm", Symbol = "cmin")] double Least,
    [Quantity("greatest diametral clearance", Dimension.Length, "mm", Symbol = "cmax")] double Greatest,
    [Quantity("middle of the clearance", Dimension.Length, "mm", Symbol = "cmid")] double Middle);

/// <summary>Oil clearance of thin shells from the three parts that make it.</summary>
public static class ShellClearance
{
    /// <summary>Diametral oil clearance, m.</summary>
    /// <param name="housing">Bore of the housing with its bolts tight, m.</param>
    /// <param name="wall">Wall thickness of the upper shell at the crown, m.</param>
    /// <param name="journal">Journal diameter, m.</param>
    /// <param name="secondWall">Wall thickness of the lower shell, m; 0 when it is the same as the upper.</param>
    [Formula(
        "shell bearing clearance",
        "c = H - w1 - w2 - d",
        "Geometry of housing, two shells and journal; manufacturers' selection tables",
        Provenance = Provenance.Definition,
        Caution = "The press of the shells opens a light-alloy housing a little: a bore gauge inside the fitted shells is the better reading.")]
    [return: Quantity("diametral clearance", Dimension.Length, "mm", Symbol = "c")]
    public static double Clearance(
        [Quantity("housing bore", Dimension.Length, "mm", Symbol = "H", Above = 0, Max = 1)] double housing,
        [Quantity("shell wall", Dimension.Length, "mm", Symbol = "w1", Above = 0, Max = 0.05)] double wall,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 1)] double journal,
        [Quantity("wall of the second shell, 0 for the same", Dimension.Length, "mm", Symbol = "w2", Min = 0, Max = 0.05)] double secondWall = 0) =>
        housing - wall - (secondWall > 0 ? secondWall : wall) - journal;

    /// <summary>Diametral oil clearance when the parts are warm, m.</summary>
    /// <param name="housing">Bore of the housing with its bolts tight, cold, m.</param>
    /// <param name="walls">Thickness of both shells at the crown together, m.</param>
    /// <param name="journal">Journal diameter, cold, m.</param>
    /// <param name="housingExpansion">Thermal expansion of the housing, 1/K.</param>
    /// <param name="housingRise">How much warmer than when measured the housing is, K.</param>
    /// <param name="shellRise">The same of the shells, K.</param>
    /// <param name="journalRise">The same of the journal, K.</param>
    /// <param name="steelExpansion">Thermal expansion of journal and shells, 1/K.</param>
    [Formula(
        "hot shell bearing clearance",
        "c = H (1 + αh ΔTh) - w (1 + αs ΔTs) - d (1 + αs ΔTj)",
        "thermal expansion of housing, shells and journal",
        Provenance = Provenance.Definition,
        Validity = "Each part of one temperature; shells that still press on the housing, so that they follow it.")]
    [return: Quantity("diametral clearance, hot", Dimension.Length, "mm", Symbol = "c")]
    public static double Hot(
        [Quantity("housing bore", Dimension.Length, "mm", Symbol = "H", Above = 0, Max = 1)] double housing,
        [Quantity("both shell walls", Dimension.Length, "mm", Symbol = "w", Above = 0, Max = 0.1)] double walls,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 1)] double journal,
        [Quantity("thermal expansion of the housing", Dimension.ThermalExpansion, "µm/(m·K)", Symbol = "αh", Min = 0)] double housingExpansion,
        [Quantity("rise of the housing", Dimension.TemperatureDifference, "K", Symbol = "ΔTh")] double housingRise,
        [Quantity("rise of the shells", Dimension.TemperatureDifference, "K", Symbol = "ΔTs")] double shellRise,
        [Quantity("rise of the journal", Dimension.TemperatureDifference, "K", Symbol = "ΔTj")] double journalRise,
        [Quantity("thermal expansion of journal and shells", Dimension.ThermalExpansion, "µm/(m·K)", Symbol = "αs", Min = 0)] double steelExpansion = 12e-6) =>
        (housing * (1 + (housingExpansion * housingRise))) - (walls * (1 + (steelExpansion * shellRise))) - (journal * (1 + (steelExpansion * journalRise)));

    /// <summary>Range of diametral clearance that part limits allow, m.</summary>
    /// <param name="housingMin">Smallest housing bore, m.</param>
    /// <param name="housingMax">Largest housing bore, m.</param>
    /// <param name="wallMin">Thinnest shell, m.</param>
    /// <param name="wallMax">Thickest shell, m.</param>
    /// <param name="journalMin">Smallest journal, m.</param>
    /// <param name="journalMax">Largest journal, m.</param>
    [Formula(
        "shell bearing clearance from part limits",
        "cmin = Hmin - 2 wmax - dmax; cmax = Hmax - 2 wmin - dmin; cmid = (cmin + cmax) / 2",
        "Geometry of housing, two shells and journal",
        Provenance = Provenance.Definition)]
    public static ShellClearanceRange FromLimits(
        [Quantity("smallest housing bore", Dimension.Length, "mm", Symbol = "Hmin", Above = 0, Max = 1)] double housingMin,
        [Quantity("largest housing bore", Dimension.Length, "mm", Symbol = "Hmax", Above = 0, Max = 1)] double housingMax,
        [Quantity("thinnest shell", Dimension.Length, "mm", Symbol = "wmin", Above = 0, Max = 0.05)] double wallMin,
        [Quantity("thickest shell", Dimension.Length, "mm", Symbol = "wmax", Above = 0, Max = 0.05)] double wallMax,
        [Quantity("smallest journal", Dimension.Length, "mm", Symbol = "dmin", Above = 0, Max = 1)] double journalMin,
        [Quantity("largest journal", Dimension.Length, "mm", Symbol = "dmax", Above = 0, Max = 1)] double journalMax)
    {
        FormulaDomainException.Unless(housingMax >= housingMin, "largest housing bore: must not be below the smallest");
        FormulaDomainException.Unless(wallMax >= wallMin, "thickest shell: must not be below the thinnest");
        FormulaDomainException.Unless(journalMax >= journalMin, "largest journal: must not be below the smallest");
        var least = housingMin - (2 * wallMax) - journalMax;
        var greatest = housingMax - (2 * wallMin) - journalMin;
        return new ShellClearanceRange(least, greatest, (least + greatest) / 2);
    }

    /// <summary>Wall thickness that gives a wanted clearance, m.</summary>
    /// <param name="housing">Bore of the housing, m.</param>
    /// <param name="journal">Journal diameter, m.</param>
    /// <param name="clearance">Wanted diametral clearance, m.</param>
    [Formula("shell wall for a clearance", "w = (H - d - c) / 2", "Geometry of housing, two shells and journal", Provenance = Provenance.Definition)]
    [return: Quantity("shell wall", Dimension.Length, "mm", Symbol = "w")]
    public static double WallFor(
        [Quantity("housing bore", Dimension.Length, "mm", Symbol = "H", Above = 0, Max = 1)] double housing,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 1)] double journal,
        [Quantity("diametral clearance", Dimension.Length, "mm", Symbol = "c", Min = 0)] double clearance)
    {
        FormulaDomainException.Unless(housing > journal + clearance, "housing bore: must be greater than journal and clearance together");
        return (housing - journal - clearance) / 2;
    }

    /// <summary>Trade range of diametral clearance for a shell bearing.</summary>
    /// <param name="journal">Journal diameter, m.</param>
    [Formula(
        "shell clearance rule",
        "cmin = 0.00075 d; cmax = 0.001 d; chigh = 0.001 d + 0.0127 mm",
        "Bearing makers' guidance: 0.00075 to 0.0010 in per inch of journal, 0.0005 in more for high output",
        Provenance = Provenance.CommonPractice,
        Caution = "The engine maker's limits come first; motorcycle makers print 0.028 mm to 0.052 mm on crank pins.")]
    public static ClearanceRule Rule(
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 1)] double journal) =>
        new(0.00075 * journal, 0.001 * journal, (0.001 * journal) + 0.0127e-3);

    /// <summary>Shell mark where the maker adds the housing's and the journal's marks.</summary>
    /// <param name="housingMark">Number stamped on rod or case.</param>
    /// <param name="journalMark">Number stamped on the crank.</param>
    [Formula("shell mark by sum", "m = a + b", "Manufacturers' selection tables of the adding kind", Provenance = Provenance.CommonPractice)]
    [return: Quantity("shell mark", Dimension.Number, Symbol = "m")]
    public static double MarkBySum(
        [Quantity("housing mark", Dimension.Number, Symbol = "a", Min = 0)] int housingMark,
        [Quantity("journal mark", Dimension.Number, Symbol = "b", Min = 0)] int journalMark) =>
        housingMark + journalMark;

    /// <summary>Shell mark where the maker subtracts the journal's mark from the housing's.</summary>
    /// <param name="housingMark">Number stamped on rod or case.</param>
    /// <param name="journalMark">Number stamped on the crank.</param>
    [Formula("shell mark by difference", "m = a - b", "Manufacturers' selection tables of the subtracting kind", Provenance = Provenance.CommonPractice)]
    [return: Quantity("shell mark", Dimension.Number, Symbol = "m")]
    public static double MarkByDifference(
        [Quantity("housing mark", Dimension.Number, Symbol = "a", Min = 0)] int housingMark,
        [Quantity("journal mark", Dimension.Number, Symbol = "b", Min = 0)] int journalMark)
    {
        FormulaDomainException.Unless(housingMark >= journalMark, "journal mark: must not be greater than the housing mark");
        return housingMark - journalMark;
    }
}
