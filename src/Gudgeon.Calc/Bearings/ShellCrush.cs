using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>Stress and pressure that hold a thin shell in its housing.</summary>
/// <param name="Hoop">Hoop stress in the shell, Pa.</param>
/// <param name="Contact">Contact pressure on the back, Pa.</param>
public readonly record struct ShellGrip(
    [Quantity("hoop stress in the shell", Dimension.Pressure, "MPa", Symbol = "σ")] double Hoop,
    [Quantity("contact pressure on the back", Dimension.Pressure, "MPa", Symbol = "p")] double Contact);

/// <summary>Crush (nip) of thin bearing shells.</summary>
public static class ShellCrush
{
    /// <summary>Stress and back pressure from the peripheral excess of a pair of shells.</summary>
    /// <param name="housing">Housing bore, m.</param>
    /// <param name="wall">Shell wall, m.</param>
    /// <param name="excess">Total peripheral excess of both shells over the bore, m.</param>
    /// <param name="modulus">Young's modulus of the shell back, Pa.</param>
    [Formula(
        "shell crush",
        "σ = E n / (π D); p = 2 w σ / D",
        "Thin ring pressed into a rigid bore",
        Provenance = Provenance.Definition,
        Validity = "Upper bound: a light-alloy housing gives way and takes part of it.")]
    public static ShellGrip Grip(
        [Quantity("housing bore", Dimension.Length, "mm", Symbol = "D", Above = 0)] double housing,
        [Quantity("shell wall", Dimension.Length, "mm", Symbol = "w", Above = 0)] double wall,
        [Quantity("total peripheral excess", Dimension.Length, "mm", Symbol = "n", Min = 0)] double excess,
        [Quantity("Young's modulus of the shell back", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 206e9)
    {
        FormulaDomainException.Unless(wall < housing / 4, "shell wall: too thick for a thin shell in that bore");
        var hoop = modulus * excess / (Math.PI * housing);
        return new ShellGrip(hoop, 2 * wall * hoop / housing);
    }

    /// <summary>Peripheral excess that is left when housing and shells are warm, m.</summary>
    /// <param name="excess">Total peripheral excess when cold, m.</param>
    /// <param name="housing">Housing bore, m.</param>
    /// <param name="housingExpansion">Thermal expansion of the housing, 1/K.</param>
    /// <param name="housingRise">How much warmer than when measured the housing is, K.</param>
    /// <param name="shellRise">The same of the shells, K.</param>
    /// <param name="shellExpansion">Thermal expansion of the shells' steel backs, 1/K.</param>
    [Formula(
        "shell crush, hot",
        "n = n0 - π D (αh ΔTh - αs ΔTs)",
        "thermal expansion of housing and shells",
        Provenance = Provenance.Definition,
        Caution = "A light-alloy housing grows away from steel shells: without excess left they turn in it.")]
    [return: Quantity("total peripheral excess, hot", Dimension.Length, "mm", Symbol = "n")]
    public static double Hot(
        [Quantity("total peripheral excess, cold", Dimension.Length, "mm", Symbol = "n0", Min = 0)] double excess,
        [Quantity("housing bore", Dimension.Length, "mm", Symbol = "D", Above = 0)] double housing,
        [Quantity("thermal expansion of the housing", Dimension.ThermalExpansion, "µm/(m·K)", Symbol = "αh", Min = 0)] double housingExpansion,
        [Quantity("rise of the housing", Dimension.TemperatureDifference, "K", Symbol = "ΔTh")] double housingRise,
        [Quantity("rise of the shells", Dimension.TemperatureDifference, "K", Symbol = "ΔTs")] double shellRise,
        [Quantity("thermal expansion of the shells", Dimension.ThermalExpansion, "µm/(m·K)", Symbol = "αs", Min = 0)] double shellExpansion = 12e-6) =>
        excess - (Math.PI * housing * ((housingExpansion * housingRise) - (shellExpansion * shellRise)));
}
