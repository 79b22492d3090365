using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Chamber;

/// <summary>Clearance between the piston edge and the squish band of the head.</summary>
public static class Squish
{
    /// <summary>Cold squish clearance, m.</summary>
    /// <param name="gasketThickness">Crushed gasket thickness, m.</param>
    /// <param name="deck">Piston edge below the deck at top dead centre, m; negative when proud.</param>
    /// <param name="headRecess">Squish band above the gasket face of the head, m; negative when it stands into the bore.</param>
    [Formula(
        "squish clearance",
        "c = tg + h + hr",
        "Geometry of the parts at top dead centre",
        Provenance = Provenance.Definition,
        Caution = "Trade figures run from 0.9 mm to 1.0 mm with a steel rod in small bores up to 1.4 mm to 1.8 mm in big singles, measured cold. Check with solder over the gudgeon pin, and on both sides for rock.")]
    [return: Quantity("squish clearance", Dimension.Length, "mm", Symbol = "c")]
    public static double Clearance(
        [Quantity("crushed gasket thickness", Dimension.Length, "mm", Symbol = "tg", Min = 0, Max = 0.05)] double gasketThickness,
        [Quantity("deck height", Dimension.Length, "mm", Symbol = "h", Min = -0.05, Max = 0.2, Help = "piston below the deck positive")] double deck,
        [Quantity("squish band recess in the head", Dimension.Length, "mm", Symbol = "hr", Min = -0.05, Max = 0.05)] double headRecess = 0) =>
        gasketThickness + deck + headRecess;

    /// <summary>What is left of the squish clearance at speed, m.</summary>
    /// <param name="cold">Cold squish clearance, m.</param>
    /// <param name="rodStretch">Stretch of rod and pin at overlap top dead centre, m.</param>
    /// <param name="rock">Rise of the piston edge as the piston tips, m.</param>
    /// <param name="bearing">Diametral clearance of big and small end together, m.</param>
    /// <param name="growth">Net growth of rod and piston against the cylinder from cold to hot, m; negative when the cylinder grows more.</param>
    [Formula("running squish clearance", "cr = c - x - k - b - g", "Sum of the movements at top dead centre", Provenance = Provenance.CommonPractice)]
    [return: Quantity("running squish clearance", Dimension.Length, "mm", Symbol = "cr")]
    public static double Running(
        [Quantity("cold squish clearance", Dimension.Length, "mm", Symbol = "c")] double cold,
        [Quantity("rod stretch", Dimension.Length, "mm", Symbol = "x", Min = 0)] double rodStretch,
        [Quantity("piston rock at the edge", Dimension.Length, "mm", Symbol = "k", Min = 0)] double rock = 0,
        [Quantity("bearing clearance taken up", Dimension.Length, "mm", Symbol = "b", Min = 0)] double bearing = 0,
        [Quantity("net growth of rod and piston", Dimension.Length, "mm", Symbol = "g")] double growth = 0) =>
        cold - rodStretch - rock - bearing - growth;

    /// <summary>By how much crank, rod and piston outgrow the cylinder from cold to hot, m; negative when the cylinder grows more.</summary>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Rod length, m.</param>
    /// <param name="crown">Gudgeon pin to the edge of the crown, m.</param>
    /// <param name="steel">Expansion coefficient of crank and rod, 1/K.</param>
    /// <param name="steelRise">By how much crank and rod warm up, K.</param>
    /// <param name="piston">Expansion coefficient of the piston, 1/K.</param>
    /// <param name="pistonRise">By how much the piston warms up, K.</param>
    /// <param name="cylinder">Expansion coefficient of cylinder and case, 1/K.</param>
    /// <param name="cylinderRise">By how much cylinder and case warm up, K.</param>
    [Formula(
        "growth of rod and piston against the cylinder",
        "g = as (r + l) ΔTs + ap h ΔTp - ac (r + l + h) ΔTc",
        "Linear thermal expansion from the crank's axis to the crown",
        Provenance = Provenance.Definition,
        Validity = "One mean temperature for each part.")]
    [return: Quantity("net growth of rod and piston", Dimension.Length, "mm", Symbol = "g")]
    public static double Growth(
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("pin to the crown's edge", Dimension.Length, "mm", Symbol = "h", Above = 0, Max = 2)] double crown,
        [Quantity("expansion coefficient of crank and rod", Dimension.ThermalExpansion, "1/K", Symbol = "as", Min = 0, Max = 5e-5)] double steel,
        [Quantity("temperature rise of crank and rod", Dimension.TemperatureDifference, "K", Symbol = "ΔTs", Min = -300, Max = 1000)] double steelRise,
        [Quantity("expansion coefficient of the piston", Dimension.ThermalExpansion, "1/K", Symbol = "ap", Min = 0, Max = 5e-5)] double piston,
        [Quantity("temperature rise of the piston", Dimension.TemperatureDifference, "K", Symbol = "ΔTp", Min = -300, Max = 1000)] double pistonRise,
        [Quantity("expansion coefficient of the cylinder", Dimension.ThermalExpansion, "1/K", Symbol = "ac", Min = 0, Max = 5e-5)] double cylinder,
        [Quantity("temperature rise of the cylinder", Dimension.TemperatureDifference, "K", Symbol = "ΔTc", Min = -300, Max = 1000)] double cylinderRise) =>
        (steel * (radius + rod) * steelRise) + (piston * crown * pistonRise) - (cylinder * (radius + rod + crown) * cylinderRise);

    /// <summary>Share of the bore that is squish band.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="chamberArea">Plan area of the open chamber inside the band, m².</param>
    [Formula("squish area ratio", "q = 1 - 4 A / (π B^2)", "Definition", Provenance = Provenance.Definition)]
    [return: Quantity("squish area ratio", Dimension.Number, "%", Symbol = "q")]
    public static double AreaRatio(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0)] double bore,
        [Quantity("chamber plan area", Dimension.Area, "mm²", Symbol = "A", Min = 0)] double chamberArea)
    {
        var ratio = 1 - (chamberArea / CompressionRatio.BoreArea(bore));
        FormulaDomainException.Unless(ratio >= 0, "chamber plan area: must not be greater than the bore area");
        return ratio;
    }
}
