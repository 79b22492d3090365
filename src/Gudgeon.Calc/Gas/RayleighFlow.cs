using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>State of a flow that is heated or cooled over the state it would have where heat brings it to Mach 1.</summary>
/// <param name="StagnationTemperatureRatio">T0/T0*.</param>
/// <param name="TemperatureRatio">T/T*.</param>
/// <param name="PressureRatio">p/p*.</param>
/// <param name="StagnationPressureRatio">p0/p0*.</param>
/// <param name="VelocityRatio">V/V*, which is ρ*/ρ.</param>
public readonly record struct RayleighRatios(
    [Quantity("stagnation temperature ratio T0/T0*", Dimension.Number)] double StagnationTemperatureRatio,
    [Quantity("temperature ratio T/T*", Dimension.Number)] double TemperatureRatio,
    [Quantity("pressure ratio p/p*", Dimension.Number)] double PressureRatio,
    [Quantity("stagnation pressure ratio p0/p0*", Dimension.Number)] double StagnationPressureRatio,
    [Quantity("velocity ratio V/V*", Dimension.Number)] double VelocityRatio);

/// <summary>Steady flow of a perfect gas through a straight pipe with heat through the wall and without friction.</summary>
public static class RayleighFlow
{
    private const string Source = "Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 1, 1953, chapter 7";

    /// <summary>Ratios at a Mach number.</summary>
    /// <param name="mach">Mach number.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Rayleigh flow ratios", "p/p* = (γ+1) / (1 + γ M^2); T/T* = M^2 (p/p*)^2; V/V* = M^2 (p/p*); T0/T0* = (T/T*) (2 + (γ-1) M^2) / (γ+1); p0/p0* = (p/p*) ((2 + (γ-1) M^2) / (γ+1))^(γ/(γ-1))", Source, Provenance = Provenance.FromMemory)]
    public static RayleighRatios Ratios(
        [Quantity("Mach number", Dimension.Number, Symbol = "M", Above = 0, Max = 50)] double mach,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var square = mach * mach;
        var pressure = (gamma + 1) / (1 + (gamma * square));
        var heating = (2 + ((gamma - 1) * square)) / (gamma + 1);
        return new(
            square * pressure * pressure * heating,
            square * pressure * pressure,
            pressure,
            pressure * Math.Exp(gamma / (gamma - 1) * Math.Log(heating)),
            square * pressure);
    }

    /// <summary>Mach number where the stagnation temperature has a given ratio to that at Mach 1.</summary>
    /// <param name="stagnationTemperatureRatio">T0/T0*; supersonic not below 1 − 1/γ².</param>
    /// <param name="branch">Which side of Mach 1.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Mach number from Rayleigh stagnation temperature ratio", "S = sqrt(1 - Θ); subsonic M^2 = (1 - S) / (1 + γ S); supersonic M^2 = (1 + S) / (1 - γ S)", Source + ": T0/T0* solved for M", Provenance = Provenance.FromMemory)]
    [return: Quantity("Mach number", Dimension.Number, Symbol = "M")]
    public static double MachFromStagnationTemperatureRatio(
        [Quantity("stagnation temperature ratio T0/T0*", Dimension.Number, Symbol = "Θ", Above = 0, Max = 1)] double stagnationTemperatureRatio,
        [Quantity("branch", Dimension.Number)] FlowBranch branch = FlowBranch.Subsonic,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        var rest = Math.Sqrt(1 - stagnationTemperatureRatio);
        if (branch == FlowBranch.Subsonic)
        {
            // 1 − S without the loss of figures that small ratios would bring.
            return Math.Sqrt(stagnationTemperatureRatio / ((1 + rest) * (1 + (gamma * rest))));
        }

        FormulaDomainException.Unless(gamma * rest < 1, "stagnation temperature ratio: a supersonic flow has at least 1 - 1/γ²");
        return Math.Sqrt((1 + rest) / (1 - (gamma * rest)));
    }

    /// <summary>Mach number where the pressure has a given ratio to that at Mach 1; above 1 the flow is subsonic.</summary>
    /// <param name="pressureRatio">p/p*, below γ + 1.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Mach number from Rayleigh pressure ratio", "M^2 = ((γ+1)/P - 1) / γ", Source + ": p/p* solved for M", Provenance = Provenance.FromMemory)]
    [return: Quantity("Mach number", Dimension.Number, Symbol = "M")]
    public static double MachFromPressureRatio(
        [Quantity("pressure ratio p/p*", Dimension.Number, Symbol = "P", Above = 0)] double pressureRatio,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4)
    {
        FormulaDomainException.Unless(pressureRatio < gamma + 1, "pressure ratio: must stay below γ + 1, which a flow at rest has");
        return Math.Sqrt((((gamma + 1) / pressureRatio) - 1) / gamma);
    }
}
