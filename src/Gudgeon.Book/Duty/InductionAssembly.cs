using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>Puts the supercharger together from a snapshot.</summary>
internal static class InductionAssembly
{
    /// <summary>Efficiency of a radial turbine at its best, what its bearings take counted as lost: common practice.</summary>
    private const double UsualTurbineEfficiency = 0.65;

    /// <summary>Whether a turbine in the exhaust drives the blower.</summary>
    public static bool IsTurbocharged(View view) => view.WordOr(Blower.Kind, BlowerKinds.None) == BlowerKinds.ExhaustDriven;

    /// <summary>The blower; null when there is none, or something needed is not known, which the view's trace then says.</summary>
    /// <exception cref="EngineSpecException">A map whose lines are out of order or cross.</exception>
    public static Induction? Build(View view, Depth depth) => view.Word(Blower.Kind) switch
    {
        BlowerKinds.Centrifugal => Centrifugal(view),
        BlowerKinds.ExhaustDriven => ExhaustDriven(view, depth),
        BlowerKinds.Displacement => new PositiveDisplacementInduction
        {
            DriveRatio = view.Amount(Blower.DriveRatio),
            BeltSlip = view.AmountOr(Blower.BeltSlip, 0),
            MechanicalEfficiency = view.AmountOr(Blower.DriveEfficiency, 0.95),
            Displacement = view.Amount(Blower.Displacement),
            LeakArea = view.AmountOr(Blower.LeakArea, 20e-6),
            InternalCompression = view.AmountOr(Blower.InternalCompression, 1),
            Efficiency = view.AmountOr(Blower.Efficiency, 0.8),
        },
        _ => null,
    };

    /// <summary>The compressor map as it is written.</summary>
    /// <exception cref="EngineSpecException">Lines out of order or crossing.</exception>
    public static CompressorMap Map(Table table, double pressure, double temperature)
    {
        var (speeds, flows, ratios, efficiencies) = (table["speed"], table["flow"], table["ratio"], table["efficiency"]);
        var lines = Enumerable.Range(0, speeds.Length)
            .GroupBy(i => Math.Round(speeds[i], 6))
            .Select(g => new SpeedLine(g.Key, [.. g.Select(i => new CompressorPoint(flows[i], ratios[i], efficiencies[i]))]));
        return new CompressorMap([.. lines], pressure, temperature);
    }

    private static CentrifugalInduction? Centrifugal(View view)
    {
        var map = Map(view);
        var (ratio, stepUp) = (view.Amount(Blower.DriveRatio), view.AmountOr(Blower.StepUp, 1));
        var (slip, efficiency) = (view.AmountOr(Blower.BeltSlip, 0), view.AmountOr(Blower.DriveEfficiency, 0.95));
        return map is null || double.IsNaN(ratio) ? null : new CentrifugalInduction { DriveRatio = ratio, StepUp = stepUp, BeltSlip = slip, MechanicalEfficiency = efficiency, Map = map };
    }

    /// <summary>What the bearings of the shaft take is in the turbine's efficiency; a drive ratio means nothing here.</summary>
    private static CentrifugalInduction? ExhaustDriven(View view, Depth depth)
    {
        var (map, turbine) = (Map(view), TurbineOf(view, depth));
        return map is null ? null : new CentrifugalInduction { DriveRatio = 1, MechanicalEfficiency = 1, Map = map, Turbine = turbine };
    }

    private static TurbineSpec TurbineOf(View view, Depth depth)
    {
        var usual = new TurbineSpec { ThroatArea = view.Amount(Turbine.ThroatArea), RotorDiameter = view.Amount(Turbine.RotorDiameter) };
        var turbine = usual with
        {
            Efficiency = view.AmountOr(Turbine.Efficiency, UsualTurbineEfficiency),
            BestSpeedRatio = view.AmountOr(Turbine.BestSpeedRatio, usual.BestSpeedRatio),
            VoluteVolume = depth == Depth.Wave ? view.AmountOr(Turbine.VoluteVolume, usual.VoluteVolume) : usual.VoluteVolume,
        };
        return BoostSetting.WastegateArea(view) is not { } area ? turbine : turbine with
        {
            WastegateArea = area,
            WastegateOpening = view.Amount(Wastegate.OpeningPressure),
            WastegateBand = view.AmountOr(Wastegate.Band, usual.WastegateBand),
        };
    }

    private static CompressorMap? Map(View view)
    {
        var table = view.Table(Blower.Map);
        var (pressure, temperature) = (view.Amount(Blower.MapPressure), view.Amount(Blower.MapTemperature));
        return table is null || double.IsNaN(pressure + temperature) ? null : Map(table, pressure, temperature);
    }
}
