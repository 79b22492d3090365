using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>Which side of Mach 1.</summary>
public enum FlowBranch
{
    /// <summary>M below 1.</summary>
    Subsonic,

    /// <summary>M above 1.</summary>
    Supersonic,
}

/// <summary>Static over stagnation state and area over throat area.</summary>
/// <param name="PressureRatio">p/p0.</param>
/// <param name="DensityRatio">ρ/ρ0.</param>
/// <param name="TemperatureRatio">T/T0.</param>
/// <param name="AreaRatio">A/A*.</param>
public readonly record struct IsentropicRatios(
    [Quantity("pressure ratio p/p0", Dimension.Number)] double PressureRatio,
    [Quantity("density ratio ρ/ρ0", Dimension.Number)] double DensityRatio,
    [Quantity("temperature ratio T/T0", Dimension.Number)] double TemperatureRatio,
    [Quantity("area ratio A/A*", Dimension.Number)] double AreaRatio);

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

/// <summary>Steady one-dimensional flow of a perfect gas without friction or heat, and the normal shock.</summary>
public static class IsentropicFlow
{
    private const double HighestMach = 50;

    /// <summary>Ratios at a Mach number.</summary>
    /// <param name="mach">Mach number.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("isentropic flow ratios", "T/T0 = 1 / (1 + (γ - 1)/2 M^2); p/p0 = (T/T0)^(γ/(γ-1)); ρ/ρ0 = (T/T0)^(1/(γ-1)); A/A* = ((2/(γ+1)) (1 + (γ - 1)/2 M^2))^((γ+1)/(2(γ-1))) / M", "NACA Report 1135, 1953, eqs 43-45, 80")]
    public static IsentropicRatios Ratios(
        [Quantity("Mach number", Dimension.Number, Symbol = "M", Above = 0, Max = HighestMach)] double mach,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var temperature = 1 / (1 + (0.5 * (gamma - 1) * mach * mach));
        return new(
            Math.Pow(temperature, gamma / (gamma - 1)),
            Math.Pow(temperature, 1 / (gamma - 1)),
            temperature,
            AreaRatio(mach, gamma));
    }

    /// <summary>Mach number where the area has a given ratio to the throat's.</summary>
    /// <param name="areaRatio">A/A*, at least 1.</param>
    /// <param name="branch">Which side of Mach 1.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Mach number from area ratio", "A/A* = ((2/(γ+1)) (1 + (γ - 1)/2 M^2))^((γ+1)/(2(γ-1))) / M, solved for M", "NACA Report 1135, 1953, eq. 80")]
    [return: Quantity("Mach number", Dimension.Number, Symbol = "M")]
    public static double MachFromAreaRatio(
        [Quantity("area ratio A/A*", Dimension.Number, Min = 1, Max = 1e4)] double areaRatio,
        [Quantity("branch", Dimension.Number)] FlowBranch branch = FlowBranch.Subsonic,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var (low, high) = branch == FlowBranch.Subsonic ? (1e-5, 1.0) : (1.0, HighestMach);
        FormulaDomainException.Unless(branch == FlowBranch.Subsonic || areaRatio <= AreaRatio(HighestMach, gamma), "area ratio: past Mach 50");
        for (var i = 0; i < 100 && high - low > 1e-16 * high; i++)
        {
            var middle = 0.5 * (low + high);
            var tooWide = AreaRatio(middle, gamma) > areaRatio;
            (low, high) = tooWide == (branch == FlowBranch.Subsonic) ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    /// <summary>Mach number at a given static over stagnation pressure.</summary>
    /// <param name="pressureRatio">p/p0.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Mach number from pressure ratio", "M = sqrt(2/(γ-1) (P^(-(γ-1)/γ) - 1))", "NACA Report 1135, 1953, eq. 44 solved for M")]
    [return: Quantity("Mach number", Dimension.Number, Symbol = "M")]
    public static double MachFromPressureRatio(
        [Quantity("pressure ratio p/p0", Dimension.Number, Symbol = "P", Above = 0, Max = 1)] double pressureRatio,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4) =>
        Math.Sqrt(2 / (gamma - 1) * (Math.Pow(pressureRatio, -(gamma - 1) / gamma) - 1));

    /// <summary>Ratios across a normal shock.</summary>
    /// <param name="mach">Mach number before the shock, at least 1.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("normal shock", "M2^2 = ((γ-1) M1^2 + 2) / (2 γ M1^2 - (γ-1)); p2/p1 = (2 γ M1^2 - (γ-1)) / (γ+1); ρ2/ρ1 = (γ+1) M1^2 / ((γ-1) M1^2 + 2); T2/T1 = (p2/p1) / (ρ2/ρ1); p02/p01 = (ρ2/ρ1)^(γ/(γ-1)) (p2/p1)^(-1/(γ-1))", "NACA Report 1135, 1953, eqs 93-99")]
    public static ShockRatios NormalShock(
        [Quantity("Mach number before", Dimension.Number, Symbol = "M1", Min = 1, Max = HighestMach)] double mach,
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
            Math.Pow(density, gamma / (gamma - 1)) * Math.Pow(pressure, -1 / (gamma - 1)));
    }

    private static double AreaRatio(double mach, double gamma) =>
        Math.Pow(2 / (gamma + 1) * (1 + (0.5 * (gamma - 1) * mach * mach)), (gamma + 1) / (2 * (gamma - 1))) / mach;
}
