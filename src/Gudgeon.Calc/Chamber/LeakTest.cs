using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Chamber;

/// <summary>Differential cylinder leak test.</summary>
public static class LeakTest
{
    /// <summary>Leakage as the share of the supply pressure lost across the master orifice.</summary>
    /// <param name="supply">Gauge pressure before the orifice, Pa.</param>
    /// <param name="cylinder">Gauge pressure in the cylinder, Pa.</param>
    [Formula(
        "cylinder leakage",
        "q = (ps - pc) / ps",
        "FAA AC 43.13-1B (Chg 1), chapter 8, differential pressure test",
        Validity = "Readings compare only through the same orifice: 1.02 mm (0.040 in) for bores under 127 mm (5 in), 1.52 mm (0.060 in) above.",
        Caution = "The piston is pushed with several hundred newtons: lock the crank before opening the air. Trade reading: under 5 % good in a race engine, over 10 % find it; 25 % is the usual aircraft limit.")]
    [return: Quantity("leakage", Dimension.Number, "%", Symbol = "q")]
    public static double Leakage(
        [Quantity("supply pressure, gauge", Dimension.Pressure, "kPa", Symbol = "ps", Above = 0)] double supply,
        [Quantity("cylinder pressure, gauge", Dimension.Pressure, "kPa", Symbol = "pc", Min = 0)] double cylinder)
    {
        FormulaDomainException.Unless(cylinder <= supply, "cylinder pressure: must not exceed the supply pressure");
        return (supply - cylinder) / supply;
    }
}
