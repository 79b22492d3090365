namespace Gudgeon.Simulation.Engine;

/// <summary>
/// A turbine in the exhaust on one shaft with the compressor, with its wastegate: a nozzle of fixed area whose efficiency is a
/// parabola over the ratio of tip speed to jet speed.
/// </summary>
public sealed record TurbineSpec
{
    /// <summary>Effective area of the nozzle that passes the turbine's flow, m².</summary>
    public required double ThroatArea { get; init; }

    /// <summary>Rotor diameter, m.</summary>
    public required double RotorDiameter { get; init; }

    /// <summary>Greatest efficiency, total to static.</summary>
    public double Efficiency { get; init; } = 0.68;

    /// <summary>Tip speed over jet speed at which it is reached; 0.6 to 0.7 for a radial turbine.</summary>
    public double BestSpeedRatio { get; init; } = 0.65;

    /// <summary>Volume of the volute before the nozzle, m³.</summary>
    public double VoluteVolume { get; init; } = 0.4e-3;

    /// <summary>Effective area of the wastegate fully open, m²; 0 for none.</summary>
    public double WastegateArea { get; init; }

    /// <summary>Gauge pressure at the plenum at which the wastegate begins to open, Pa.</summary>
    public double WastegateOpening { get; init; } = 1e5;

    /// <summary>Rise of that pressure until it is fully open, Pa.</summary>
    public double WastegateBand { get; init; } = 0.2e5;
}
