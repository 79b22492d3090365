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

/// <summary>Steady one-dimensional flow of a perfect gas without friction or heat.</summary>
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

    private static double AreaRatio(double mach, double gamma) =>
        Math.Pow(2 / (gamma + 1) * (1 + (0.5 * (gamma - 1) * mach * mach)), (gamma + 1) / (2 * (gamma - 1))) / mach;
}
