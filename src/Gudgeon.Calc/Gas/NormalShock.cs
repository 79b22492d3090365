using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>State behind a normal shock over the state before it.</summary>
/// <param name="MachBehind">Mach number behind.</param>
/// <param name="PressureRatio">p2/p1.</param>
/// <param name="DensityRatio">ρ2/ρ1.</param>
/// <param name="TemperatureRatio">T2/T1.</param>
/// <param name="StagnationPressureRatio">p02/p01.</param>
public readonly record struct ShockRatios(
    [Quantity("Mach number behind", Dimension.Number, Symbol = "M2")] double MachBehind,
    [Quantity("pressure ratio p2/p1", Dimension.Number)] double PressureRatio,
    [Quantity("density ratio ρ2/ρ1", Dimension.Number)] double DensityRatio,
    [Quantity("temperature ratio T2/T1", Dimension.Number)] double TemperatureRatio,
    [Quantity("stagnation pressure ratio p02/p01", Dimension.Number)] double StagnationPressureRatio);

/// <summary>The normal shock of a perfect gas.</summary>
public static class NormalShock
{
    /// <summary>Ratios across a normal shock.</summary>
    /// <param name="mach">Mach number before the shock, at least 1.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("normal shock", "M2^2 = ((γ-1) M1^2 + 2) / (2 γ M1^2 - (γ-1)); p2/p1 = (2 γ M1^2 - (γ-1)) / (γ+1); ρ2/ρ1 = (γ+1) M1^2 / ((γ-1) M1^2 + 2); T2/T1 = (p2/p1) / (ρ2/ρ1); p02/p01 = (ρ2/ρ1)^(γ/(γ-1)) (p2/p1)^(-1/(γ-1))", "NACA Report 1135, 1953, eqs 93-99")]
    public static ShockRatios Ratios(
        [Quantity("Mach number before", Dimension.Number, Symbol = "M1", Min = 1, Max = 50)] double mach,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var m2 = mach * mach;
        var slow = ((gamma - 1) * m2) + 2;
        var strong = (2 * gamma * m2) - (gamma - 1);
        var pressure = strong / (gamma + 1);
        var density = (gamma + 1) * m2 / slow;
        return new(
            Math.Sqrt(slow / strong),
            pressure,
            density,
            pressure / density,
            Math.Exp(((gamma * Math.Log(density)) - Math.Log(pressure)) / (gamma - 1)));
    }
}
