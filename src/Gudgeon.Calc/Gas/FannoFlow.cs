using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>State of a flow with friction over the state it would have where friction brings it to Mach 1.</summary>
/// <param name="FrictionLength">f L*/D with Darcy's f (four times Fanning's), L* the length from here to Mach 1.</param>
/// <param name="PressureRatio">p/p*.</param>
/// <param name="DensityRatio">ρ/ρ*.</param>
/// <param name="TemperatureRatio">T/T*.</param>
/// <param name="StagnationPressureRatio">p0/p0*.</param>
public readonly record struct FannoRatios(
    [Quantity("friction length f L*/D", Dimension.Number)] double FrictionLength,
    [Quantity("pressure ratio p/p*", Dimension.Number)] double PressureRatio,
    [Quantity("density ratio ρ/ρ*", Dimension.Number)] double DensityRatio,
    [Quantity("temperature ratio T/T*", Dimension.Number)] double TemperatureRatio,
    [Quantity("stagnation pressure ratio p0/p0*", Dimension.Number)] double StagnationPressureRatio);

/// <summary>
/// Steady flow of a perfect gas through a straight pipe with friction and without heat. Friction takes every such flow
/// towards Mach 1. The friction factor is Darcy's; tables that print 4 f L*/D mean Fanning's, a quarter of it.
/// </summary>
public static class FannoFlow
{
    private const double HighestMach = 50;
    private const string Source = "Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 1, 1953, chapter 6";
    private const string FrictionExpression = "f L*/D = (1 - M^2)/(γ M^2) + (γ+1)/(2 γ) ln((γ+1) M^2 / (2 + (γ-1) M^2))";

    /// <summary>Ratios at a Mach number.</summary>
    /// <param name="mach">Mach number.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Fanno flow ratios", FrictionExpression + "; T/T* = (γ+1) / (2 + (γ-1) M^2); p/p* = sqrt(T/T*) / M; ρ/ρ* = 1 / (M sqrt(T/T*)); p0/p0* = (T/T*)^(-(γ+1)/(2(γ-1))) / M", Source, Provenance = Provenance.FromMemory)]
    public static FannoRatios Ratios(
        [Quantity("Mach number", Dimension.Number, Symbol = "M", Min = 1e-4, Max = HighestMach)] double mach,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var temperature = TemperatureRatio(mach, gamma);
        var root = Math.Sqrt(temperature);
        return new(
            FrictionLength(mach, gamma),
            root / mach,
            1 / (mach * root),
            temperature,
            Math.Exp(-0.5 * (gamma + 1) / (gamma - 1) * Math.Log(temperature)) / mach);
    }

    /// <summary>Mach number from which friction brings a flow to Mach 1 in a given length.</summary>
    /// <param name="frictionLength">f L*/D with Darcy's f.</param>
    /// <param name="branch">Which side of Mach 1.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Mach number from friction length", "X = f L*/D; X = (1 - M^2)/(γ M^2) + (γ+1)/(2 γ) ln((γ+1) M^2 / (2 + (γ-1) M^2)), solved for M", Source, Provenance = Provenance.FromMemory)]
    [return: Quantity("Mach number", Dimension.Number, Symbol = "M")]
    public static double MachFromFrictionLength(
        [Quantity("friction length f L*/D", Dimension.Number, Symbol = "X", Min = 0, Max = 1e7)] double frictionLength,
        [Quantity("branch", Dimension.Number)] FlowBranch branch = FlowBranch.Subsonic,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var (low, high) = branch == FlowBranch.Subsonic ? (1e-4, 1.0) : (1.0, HighestMach);
        FormulaDomainException.Unless(branch == FlowBranch.Subsonic || frictionLength <= FrictionLength(HighestMach, gamma), "friction length: longer than a supersonic flow of Mach 50 lasts");
        for (var i = 0; i < 100 && high - low > 1e-16 * high; i++)
        {
            var middle = 0.5 * (low + high);
            var tooFar = FrictionLength(middle, gamma) > frictionLength;
            (low, high) = tooFar == (branch == FlowBranch.Subsonic) ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    /// <summary>Mach number where the pressure has a given ratio to that at Mach 1; above 1 the flow is subsonic.</summary>
    /// <param name="pressureRatio">p/p*.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Mach number from Fanno pressure ratio", "M^2 = ((γ+1)/P^2) / (1 + sqrt(1 + (γ^2-1)/P^2))", Source + ": p/p* solved for M", Provenance = Provenance.FromMemory)]
    [return: Quantity("Mach number", Dimension.Number, Symbol = "M")]
    public static double MachFromPressureRatio(
        [Quantity("pressure ratio p/p*", Dimension.Number, Symbol = "P", Min = 1e-4, Max = 1e5)] double pressureRatio,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var square = 1 / (pressureRatio * pressureRatio);
        return Math.Sqrt((gamma + 1) * square / (1 + Math.Sqrt(1 + (((gamma * gamma) - 1) * square))));
    }

    private static double TemperatureRatio(double mach, double gamma) => (gamma + 1) / (2 + ((gamma - 1) * mach * mach));

    private static double FrictionLength(double mach, double gamma)
    {
        var square = mach * mach;
        return ((1 - square) / (gamma * square)) + ((gamma + 1) / (2 * gamma) * Math.Log(square * TemperatureRatio(mach, gamma)));
    }
}
