using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Round-wire helical compression springs: rate, load, stress.</summary>
public static class HelicalSpring
{
    /// <summary>Rate of a round-wire helical compression spring, N/m.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m; must exceed the wire.</param>
    /// <param name="activeCoils">Number of active coils.</param>
    /// <param name="shearModulus">Shear modulus of the wire, Pa; 79.3 GPa is usual for valve-spring wire.</param>
    /// <returns>Load per deflection, N/m.</returns>
    [Formula("helical spring rate", "R = G d^4 / (8 D^3 n)", "EN 13906-1:2013; Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-9")]
    [return: Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R")]
    public static double Rate(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0, Max = 0.05)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 0.5)] double meanDiameter,
        [Quantity("active coils", Dimension.Number, Symbol = "n", Above = 0, Max = 100)] double activeCoils,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9)
    {
        FormulaDomainException.Unless(meanDiameter > wire, "mean coil diameter: must be greater than the wire diameter");
        var d2 = wire * wire;
        return shearModulus * d2 * d2 / (8 * meanDiameter * meanDiameter * meanDiameter * activeCoils);
    }
}
