namespace Gudgeon.Calc.Catalogue;

/// <summary>
/// What kind of thing a number measures. Torque and energy are kept apart although both are kg·m²/s²,
/// so that a spring load given as a torque is caught at the border.
/// </summary>
public enum Dimension
{
    /// <summary>A pure number, ratio or count; SI value 1.</summary>
    Number,

    /// <summary>m</summary>
    Length,

    /// <summary>m²</summary>
    Area,

    /// <summary>m³</summary>
    Volume,

    /// <summary>rad</summary>
    Angle,

    /// <summary>s</summary>
    Time,

    /// <summary>Hz</summary>
    Frequency,

    /// <summary>m/s</summary>
    Speed,

    /// <summary>m/s²</summary>
    Acceleration,

    /// <summary>m/s³</summary>
    Jerk,

    /// <summary>rad/s</summary>
    RotationalSpeed,

    /// <summary>rad/s²</summary>
    RotationalAcceleration,

    /// <summary>kg</summary>
    Mass,

    /// <summary>kg/s</summary>
    MassFlow,

    /// <summary>kg/(m²·s)</summary>
    MassFlux,

    /// <summary>m³/s</summary>
    VolumeFlow,

    /// <summary>kg/m³</summary>
    Density,

    /// <summary>kg/m</summary>
    LinearDensity,

    /// <summary>kg/mol</summary>
    MolarMass,

    /// <summary>kg·m²</summary>
    MomentOfInertia,

    /// <summary>kg·m, mass times radius of a balance weight</summary>
    Unbalance,

    /// <summary>N</summary>
    Force,

    /// <summary>N/m, spring rate or line load</summary>
    ForcePerLength,

    /// <summary>m/N, resilience of a bolt or a clamped part</summary>
    Compliance,

    /// <summary>N·m</summary>
    Torque,

    /// <summary>N·m/rad</summary>
    RotationalStiffness,

    /// <summary>Pa, pressure or stress</summary>
    Pressure,

    /// <summary>J</summary>
    Energy,

    /// <summary>W</summary>
    Power,

    /// <summary>J/kg</summary>
    SpecificEnergy,

    /// <summary>J/(kg·K)</summary>
    SpecificHeat,

    /// <summary>J/mol</summary>
    MolarEnergy,

    /// <summary>J/(mol·K)</summary>
    MolarHeat,

    /// <summary>K</summary>
    Temperature,

    /// <summary>K, a difference of two temperatures</summary>
    TemperatureDifference,

    /// <summary>1/K</summary>
    ThermalExpansion,

    /// <summary>W/(m·K)</summary>
    ThermalConductivity,

    /// <summary>W/(m²·K)</summary>
    HeatTransferCoefficient,

    /// <summary>W/m²</summary>
    HeatFlux,

    /// <summary>Pa·s</summary>
    DynamicViscosity,

    /// <summary>m²/s</summary>
    KinematicViscosity,

    /// <summary>kg/J, brake specific fuel consumption</summary>
    SpecificFuelConsumption,
}

/// <summary>How a dimension is spoken of: its SI unit and the noun used in a sentence to the user.</summary>
public static class Dimensions
{
    /// <summary>SI unit symbol; empty for a pure number.</summary>
    public static string SiUnit(this Dimension dimension) => dimension switch
    {
        Dimension.Number => "",
        Dimension.Length => "m",
        Dimension.Area => "m²",
        Dimension.Volume => "m³",
        Dimension.Angle => "rad",
        Dimension.Time => "s",
        Dimension.Frequency => "Hz",
        Dimension.Speed => "m/s",
        Dimension.Acceleration => "m/s²",
        Dimension.Jerk => "m/s³",
        Dimension.RotationalSpeed => "rad/s",
        Dimension.RotationalAcceleration => "rad/s²",
        Dimension.Mass => "kg",
        Dimension.MassFlow => "kg/s",
        Dimension.MassFlux => "kg/(m²·s)",
        Dimension.VolumeFlow => "m³/s",
        Dimension.Density => "kg/m³",
        Dimension.LinearDensity => "kg/m",
        Dimension.MolarMass => "kg/mol",
        Dimension.MomentOfInertia => "kg·m²",
        Dimension.Unbalance => "kg·m",
        Dimension.Force => "N",
        Dimension.ForcePerLength => "N/m",
        Dimension.Compliance => "m/N",
        Dimension.Torque => "N·m",
        Dimension.RotationalStiffness => "N·m/rad",
        Dimension.Pressure => "Pa",
        Dimension.Energy => "J",
        Dimension.Power => "W",
        Dimension.SpecificEnergy => "J/kg",
        Dimension.SpecificHeat => "J/(kg·K)",
        Dimension.MolarEnergy => "J/mol",
        Dimension.MolarHeat => "J/(mol·K)",
        Dimension.Temperature => "K",
        Dimension.TemperatureDifference => "K",
        Dimension.ThermalExpansion => "1/K",
        Dimension.ThermalConductivity => "W/(m·K)",
        Dimension.HeatTransferCoefficient => "W/(m²·K)",
        Dimension.HeatFlux => "W/m²",
        Dimension.DynamicViscosity => "Pa·s",
        Dimension.KinematicViscosity => "m²/s",
        Dimension.SpecificFuelConsumption => "kg/J",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, null),
    };

    /// <summary>The words for the dimension in a sentence: "a force", "a spring rate or line load".</summary>
    public static string Noun(this Dimension dimension) => dimension switch
    {
        Dimension.Number => "a plain number",
        Dimension.ForcePerLength => "a spring rate or line load",
        Dimension.Pressure => "a pressure or stress",
        Dimension.Compliance => "a resilience",
        Dimension.Unbalance => "a mass times radius",
        Dimension.Area or Dimension.Angle or Dimension.Acceleration or Dimension.Energy => "an " + Words(dimension),
        _ => "a " + Words(dimension),
    };

    private static string Words(Dimension dimension) =>
        string.Concat(dimension.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));
}
