using Gudgeon.Calc.Boost;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>Where a centrifugal blower stands on its map at one engine speed.</summary>
/// <param name="EngineSpeed">rad/s.</param>
/// <param name="Flow">Flow at the map's reference conditions, kg/s.</param>
/// <param name="Ratio">Pressure ratio.</param>
public sealed record MapSpot(double EngineSpeed, double Flow, double Ratio);

/// <summary>A run laid on the map of its blower.</summary>
public static class BlowerDuty
{
    /// <summary>The map that the engine was run with; null without a centrifugal blower.</summary>
    public static CompressorMap? Map(EngineDuty duty) => (duty.Spec.Intake.Induction as CentrifugalInduction)?.Map;

    /// <summary>The operating line, in rising engine speed; empty without a centrifugal blower.</summary>
    public static IReadOnlyList<MapSpot> Line(EngineDuty duty) => Map(duty) is { } map
        ? [.. duty.Figures.Where(p => p.Figures.Blower is not null).Select(p => Spot(p.Speed, p.Figures.Blower!, map, duty.Ambient))]
        : [];

    private static MapSpot Spot(double speed, BlowerFigures blower, CompressorMap map, AmbientSpec ambient)
    {
        var corrected = Compressor.Corrected(blower.Flow, blower.Speed, ambient.Temperature, blower.MeanInletPressure, map.ReferenceTemperature, map.ReferencePressure);
        return new MapSpot(speed, corrected.MassFlow, blower.PressureRatio);
    }
}
