using Gudgeon.Book.Values;
using Gudgeon.Calc.Fits;

namespace Gudgeon.Book.Fits;

/// <summary>One fit of a sheet. SI; null where it is not known. Interference is on the diameter, a clearance negative.</summary>
/// <param name="Index">The fit.</param>
/// <param name="Size">Basic size, m.</param>
/// <param name="Classes">"H7/p6"; empty when neither is known.</param>
/// <param name="HoleLimits">Limits of the hole by its class.</param>
/// <param name="ShaftLimits">Limits of the shaft by its class.</param>
/// <param name="Hole">Hole as it will be fitted.</param>
/// <param name="HoleBand">± of its measurement, k = 2.</param>
/// <param name="Shaft">Shaft as it will be fitted.</param>
/// <param name="ShaftBand">± of its measurement, k = 2.</param>
/// <param name="Interference">At 20 °C.</param>
/// <param name="Least">Least wanted.</param>
/// <param name="Greatest">Greatest wanted.</param>
/// <param name="Hot">At running temperatures.</param>
/// <param name="SlipTorque">Torque at which it slips as it runs, N·m.</param>
/// <param name="HubTemperature">Of the hub to go together, K.</param>
/// <param name="Window">Interference over the temperature of hub and shaft together, K and m; empty when not known.</param>
/// <param name="Facts">Everything else.</param>
public sealed record FitRow(
    string Index,
    double? Size,
    string Classes,
    SizeLimits? HoleLimits,
    SizeLimits? ShaftLimits,
    double? Hole,
    double? HoleBand,
    double? Shaft,
    double? ShaftBand,
    double? Interference,
    double? Least,
    double? Greatest,
    double? Hot,
    double? SlipTorque,
    double? HubTemperature,
    IReadOnlyList<(double Temperature, double Interference)> Window,
    IReadOnlyList<Fact> Facts)
{
    /// <summary>What was given and cannot be, each in one sentence; what hangs on it is left out.</summary>
    public IReadOnlyList<string> Refused { get; init; } = [];

    /// <summary>What a coating still to come makes of the hole's diameter, m, negative: it closes; null without one.</summary>
    public double? HoleBuildUp { get; init; }

    /// <summary>What a coating still to come makes of the shaft's diameter, m; null without one.</summary>
    public double? ShaftBuildUp { get; init; }
}

/// <summary>Several fits of one kind, as measured.</summary>
/// <param name="Name">What they have in common: "dowel".</param>
/// <param name="Count">How many.</param>
/// <param name="Mean">Mean interference, m.</param>
/// <param name="Deviation">Standard deviation, m.</param>
/// <param name="Least">Least found, m.</param>
/// <param name="Greatest">Greatest found, m.</param>
/// <param name="Outside">Share of more such parts that a normal distribution puts outside what is wanted; null when that is not known.</param>
public sealed record FitSpread(string Name, int Count, double Mean, double Deviation, double Least, double Greatest, double? Outside);
