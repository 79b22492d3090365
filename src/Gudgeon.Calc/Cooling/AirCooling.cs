using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Cooling;

/// <summary>Heat from warm walls and fins to the air.</summary>
public static class AirCooling
{
    private const string Source = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed., ";

    /// <summary>Nusselt number of a flat plate along a stream.</summary>
    /// <param name="reynolds">Reynolds number over its length.</param>
    /// <param name="prandtl">Prandtl number.</param>
    [Formula("flat plate Nusselt number", "Nu = 0.664 Re^0.5 Pr^(1/3) to Re = 5e5, (0.037 Re^0.8 - 871) Pr^(1/3) above", Source + "eqs 7.30, 7.38", Provenance = Provenance.FromMemory, Validity = "Prandtl numbers from 0.6, Reynolds numbers to 1e8; mean over the plate.")]
    [return: Quantity("Nusselt number", Dimension.Number, Symbol = "Nu")]
    public static double Plate(
        [Quantity("Reynolds number", Dimension.Number, Symbol = "Re", Min = 0)] double reynolds,
        [Quantity("Prandtl number", Dimension.Number, Symbol = "Pr", Above = 0)] double prandtl = 0.7) =>
        (reynolds <= 5e5 ? 0.664 * Math.Sqrt(reynolds) : (0.037 * Math.Pow(reynolds, 0.8)) - 871) * Math.Cbrt(prandtl);

    /// <summary>Nusselt number of an upright plate in still air.</summary>
    /// <param name="rayleigh">Rayleigh number over its height.</param>
    /// <param name="prandtl">Prandtl number.</param>
    [Formula("upright plate Nusselt number", "Nu = (0.825 + 0.387 Ra^(1/6) / (1 + (0.492 / Pr)^(9/16))^(8/27))^2", "Churchill & Chu 1975; " + Source + "eq. 9.26", Provenance = Provenance.FromMemory)]
    [return: Quantity("Nusselt number", Dimension.Number, Symbol = "Nu")]
    public static double Upright(
        [Quantity("Rayleigh number", Dimension.Number, Symbol = "Ra", Min = 0)] double rayleigh,
        [Quantity("Prandtl number", Dimension.Number, Symbol = "Pr", Above = 0)] double prandtl = 0.7)
    {
        var root = 0.825 + (0.387 * Math.Pow(rayleigh, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27));
        return root * root;
    }

    /// <summary>Nusselt number of a cylinder across a stream.</summary>
    /// <param name="reynolds">Reynolds number over its diameter.</param>
    /// <param name="prandtl">Prandtl number.</param>
    [Formula("cylinder in a stream Nusselt number", "Nu = 0.3 + 0.62 Re^0.5 Pr^(1/3) / (1 + (0.4 / Pr)^(2/3))^(1/4) (1 + (Re / 282000)^(5/8))^(4/5)", "Churchill & Bernstein 1977; " + Source + "eq. 7.54", Provenance = Provenance.FromMemory, Validity = "Re Pr from 0.2.")]
    [return: Quantity("Nusselt number", Dimension.Number, Symbol = "Nu")]
    public static double Cylinder(
        [Quantity("Reynolds number", Dimension.Number, Symbol = "Re", Min = 0)] double reynolds,
        [Quantity("Prandtl number", Dimension.Number, Symbol = "Pr", Above = 0)] double prandtl = 0.7) =>
        0.3 + (0.62 * Math.Sqrt(reynolds) * Math.Cbrt(prandtl) / Math.Pow(1 + Math.Pow(0.4 / prandtl, 2.0 / 3), 0.25) * Math.Pow(1 + Math.Pow(reynolds / 282_000, 0.625), 0.8));

    /// <summary>Efficiency of a straight fin.</summary>
    /// <param name="coefficient">Heat transfer coefficient, W/(m²·K).</param>
    /// <param name="conductivity">Conductivity of the fin, W/(m·K).</param>
    /// <param name="thickness">Thickness, m.</param>
    /// <param name="height">Height from the wall, m.</param>
    [Formula("fin efficiency", "η = tanh(a) / a; a = (H + t / 2) sqrt(2 h / (k t))", Source + "eq. 3.89, corrected for the tip", Provenance = Provenance.FromMemory)]
    [return: Quantity("fin efficiency", Dimension.Number, Symbol = "η")]
    public static double Fin(
        [Quantity("heat transfer coefficient", Dimension.HeatTransferCoefficient, "W/(m²·K)", Symbol = "h", Above = 0)] double coefficient,
        [Quantity("conductivity", Dimension.ThermalConductivity, "W/(m·K)", Symbol = "k", Above = 0)] double conductivity,
        [Quantity("thickness", Dimension.Length, "mm", Symbol = "t", Above = 0)] double thickness,
        [Quantity("height", Dimension.Length, "mm", Symbol = "H", Above = 0)] double height)
    {
        var span = (height + (thickness / 2)) * Math.Sqrt(2 * coefficient / (conductivity * thickness));
        return Math.Tanh(span) / span;
    }
}
