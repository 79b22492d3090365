using Gudgeon.Calc.Boost;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>Where a centrifugal blower stands on its map at one engine speed.</summary>
/// <param name="EngineSpeed">rad/s.</param>
/// <param name="Flow">Flow at the map's reference conditions, kg/s.</param>
/// <param name="Ratio">Pressure ratio.</param>
/// <param name="Speed">Impeller speed at the map's reference temperature, rad/s.</param>
public sealed record MapSpot(double EngineSpeed, double Flow, double Ratio, double Speed);

/// <summary>A run laid on the map of its blower.</summary>
public static class BlowerDuty
{
    /// <summary>The map that the engine was run with; null without a centrifugal blower.</summary>
    public static CompressorMap? Map(EngineDuty duty) => (duty.Spec.Intake.Induction as CentrifugalInduction)?.Map;

    /// <summary>The operating line, in rising engine speed; empty without a centrifugal blower.</summary>
    public static IReadOnlyList<MapSpot> Line(EngineDuty duty) => Map(duty) is { } map
        ? [.. Points(duty).Select(p => Spot(p.Speed, p.Figures.Blower!, map, duty.Ambient))]
        : [];

    /// <summary>The point of a run at which the blower passes the most air; null without a run or a blower.</summary>
    public static (double Speed, PointFigures Figures)? MostAir(EngineDuty? duty) => Points(duty).Select(p => ((double, PointFigures)?)p).MaxBy(p => p!.Value.Item2.Blower!.Flow);

    /// <summary>The points of a run that have a blower; none without a run.</summary>
    public static IEnumerable<(double Speed, PointFigures Figures)> Points(EngineDuty? duty) => duty?.Figures.Where(p => p.Figures.Blower is not null) ?? [];

    /// <summary>The least of a figure of the blower over a run, and the engine speed, rad/s, at which it stands; NaN where there is none.</summary>
    public static (double Value, double Speed) Least(EngineDuty? duty, Func<BlowerFigures, double?> figure) => Points(duty)
        .Select(p => (Value: figure(p.Figures.Blower!) ?? double.NaN, p.Speed))
        .Where(p => !double.IsNaN(p.Value))
        .DefaultIfEmpty((Value: double.NaN, Speed: double.NaN))
        .MinBy(p => p.Value);

    /// <summary>Surge margin by flow at the same pressure ratio, the surge line straight between the ends of the map's lines; null above the last of them.</summary>
    public static double? MarginAtRatio(CompressorMap map, MapSpot spot)
    {
        (double Flow, double Ratio)[] line = [(0, 1), .. map.Lines.Select(l => (l.Points[0].CorrectedFlow, l.Points[0].PressureRatio))];
        var upper = Array.FindIndex(line, p => p.Ratio >= spot.Ratio);
        if (upper < 1)
        {
            return null;
        }

        var (low, high) = (line[upper - 1], line[upper]);
        var flow = low.Flow + ((high.Flow - low.Flow) * (spot.Ratio - low.Ratio) / (high.Ratio - low.Ratio));
        return Compressor.SurgeMarginAtRatio(spot.Flow, flow);
    }

    private static MapSpot Spot(double speed, BlowerFigures blower, CompressorMap map, AmbientSpec ambient)
    {
        var corrected = Compressor.Corrected(blower.Flow, blower.Speed, ambient.Temperature, blower.MeanInletPressure, map.ReferenceTemperature, map.ReferencePressure);
        return new MapSpot(speed, corrected.MassFlow, blower.PressureRatio, corrected.Speed);
    }
}
