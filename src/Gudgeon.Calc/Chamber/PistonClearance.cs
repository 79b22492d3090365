using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Chamber;

/// <summary>Least and greatest clearance of an opening over the part that runs in it.</summary>
/// <param name="Least">Smallest opening over largest part, m; negative is interference.</param>
/// <param name="Greatest">Largest opening over smallest part, m.</param>
public readonly record struct ClearanceRange(
    [Quantity("least clearance", Dimension.Length, "mm", Symbol = "cmin")] double Least,
    [Quantity("greatest clearance", Dimension.Length, "mm", Symbol = "cmax")] double Greatest);

/// <summary>Piston in its bore, rod beside its web: clearance from part limits, and hot.</summary>
public static class PistonClearance
{
    /// <summary>Clearance that the limits of two parts allow, m: piston in bore, rod on its pin, ring in its groove.</summary>
    /// <param name="openingMin">Smallest opening, m.</param>
    /// <param name="openingMax">Largest opening, m.</param>
    /// <param name="partMin">Smallest part, m.</param>
    /// <param name="partMax">Largest part, m.</param>
    [Formula(
        "running clearance from part limits",
        "cmin = Hmin - Smax; cmax = Hmax - Smin",
        "ISO 286-1:2010, limits of fit",
        Provenance = Provenance.Definition,
        Caution = "Where the maker grades parts and fits them selectively, the printed clearance is narrower than the limits allow. The maker's figure holds.")]
    public static ClearanceRange FromLimits(
        [Quantity("smallest opening", Dimension.Length, "mm", Symbol = "Hmin", Above = 0)] double openingMin,
        [Quantity("largest opening", Dimension.Length, "mm", Symbol = "Hmax", Above = 0)] double openingMax,
        [Quantity("smallest part", Dimension.Length, "mm", Symbol = "Smin", Above = 0)] double partMin,
        [Quantity("largest part", Dimension.Length, "mm", Symbol = "Smax", Above = 0)] double partMax)
    {
        FormulaDomainException.Unless(openingMax >= openingMin, "largest opening: must not be smaller than the smallest opening");
        FormulaDomainException.Unless(partMax >= partMin, "largest part: must not be smaller than the smallest part");
        return new ClearanceRange(openingMin - partMax, openingMax - partMin);
    }

    /// <summary>How much the piston clearance shrinks from cold to hot, m; negative when it opens.</summary>
    /// <param name="bore">Nominal diameter, m.</param>
    /// <param name="pistonExpansion">Expansion coefficient of the piston, 1/K.</param>
    /// <param name="skirtTemperature">Skirt temperature, K.</param>
    /// <param name="boreExpansion">Expansion coefficient of the bore, 1/K.</param>
    /// <param name="boreTemperature">Bore temperature, K.</param>
    /// <param name="cold">Temperature of the measurement, K.</param>
    [Formula(
        "piston clearance lost when hot",
        "x = D (ap (Tp - T0) - ab (Tb - T0))",
        "Linear thermal expansion",
        Provenance = Provenance.Definition,
        Validity = "Round and free to grow: the cam and barrel of a real skirt are in the maker's cold clearance.")]
    [return: Quantity("clearance lost", Dimension.Length, "mm", Symbol = "x")]
    public static double LostWhenHot(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 1)] double bore,
        [Quantity("expansion coefficient of the piston", Dimension.ThermalExpansion, "1/K", Symbol = "ap", Min = 0, Max = 5e-5)] double pistonExpansion,
        [Quantity("skirt temperature", Dimension.Temperature, "°C", Symbol = "Tp", Above = 0, Max = 1000)] double skirtTemperature,
        [Quantity("expansion coefficient of the bore", Dimension.ThermalExpansion, "1/K", Symbol = "ab", Min = 0, Max = 5e-5)] double boreExpansion,
        [Quantity("bore temperature", Dimension.Temperature, "°C", Symbol = "Tb", Above = 0, Max = 1000)] double boreTemperature,
        [Quantity("measuring temperature", Dimension.Temperature, "°C", Symbol = "T0", Above = 0, Max = 400)] double cold = 293.15) =>
        bore * ((pistonExpansion * (skirtTemperature - cold)) - (boreExpansion * (boreTemperature - cold)));

    /// <summary>Mean pressure of the skirt on the wall, Pa.</summary>
    /// <param name="thrust">Side thrust, N.</param>
    /// <param name="diameter">Piston diameter, m.</param>
    /// <param name="skirt">Length of the skirt, m.</param>
    [Formula("skirt pressure", "q = F / (D L)", "Kolchin & Demidov, Design of Automotive Engines, piston skirt (from memory)", Provenance = Provenance.FromMemory, Validity = "On the projected area: what a slipper skirt bears on is less.")]
    [return: Quantity("pressure on the skirt", Dimension.Pressure, "MPa", Symbol = "q")]
    public static double SkirtPressure(
        [Quantity("side thrust", Dimension.Force, "kN", Symbol = "F", Min = 0)] double thrust,
        [Quantity("piston diameter", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 1)] double diameter,
        [Quantity("length of the skirt", Dimension.Length, "mm", Symbol = "L", Above = 0, Max = 1)] double skirt) =>
        thrust / (diameter * skirt);
}
