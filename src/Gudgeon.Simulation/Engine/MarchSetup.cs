using Gudgeon.Calc.Gas;
using Gudgeon.Calc.Weather;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Engine;

/// <summary>What every point of an engine shares: checked description, gases, network.</summary>
internal sealed class MarchSetup
{
    private readonly Dictionary<int, CylinderTable[]> _tables = [];
    private readonly Lock _gate = new();

    public MarchSetup(EngineSpec spec, MarchSetup? like = null)
    {
        Spec = spec;
        var ambient = spec.Ambient;
        var vapour = ambient.RelativeHumidity * WaterVapour.SaturationOverWaterOrIce(ambient.Temperature);
        var humidity = MoistAir.HumidityRatio(ambient.Pressure, vapour);
        var fuel = spec.Combustion is null ? null : spec.Fuel;
        FuelPerAir = fuel is null ? 0 : 1 / (spec.Lambda * fuel.StoichiometricAirFuelRatio() * (1 + humidity));
        Gas = like is not null && HaveSameGases(like.Spec, spec) ? like.Gas : new GasTable(Air.Of(AirModel.StandardDry, humidity), fuel, FuelPerAir);
        Network = new Network(spec);
        if (Network.Piped)
        {
            PipeGas = ReferenceEquals(Gas, like?.Gas) && like.PipeGas is { } same ? same : new PipeGas(Gas.AirMixture, fuel, Gas.Frozen);
        }
    }

    public EngineSpec Spec { get; }

    public GasTable Gas { get; }

    /// <summary>The gases as the pipes have them; null without pipes.</summary>
    public PipeGas? PipeGas { get; }

    public Network Network { get; }

    /// <summary>Mass of fuel to mass of moist air; 0 when motored.</summary>
    public double FuelPerAir { get; }

    public double AmbientDensity => Spec.Ambient.Pressure / (Gas.AirR * Spec.Ambient.Temperature);

    /// <summary>The cylinders' tables over a cycle of so many steps, made once.</summary>
    public CylinderTable[] Tables(int steps)
    {
        lock (_gate)
        {
            if (!_tables.TryGetValue(steps, out var tables))
            {
                tables = [.. Spec.Cylinders.Select(c => new CylinderTable(c, steps))];
                _tables.Add(steps, tables);
            }

            return tables;
        }
    }

    /// <summary>
    /// Steps per cycle: the crank step asked for, divided further until the quickest node, filled or emptied through its
    /// openings with the flow function's steepest slope, stays within the stability of the second-order march.
    /// </summary>
    public int Steps(double speed, double crankStep)
    {
        const double Stable = 1.9;
        var wanted = (int)Math.Ceiling(720 / crankStep);
        if (Network.Piped)
        {
            wanted = Math.Max(wanted, StepsOfPipes(4 * Math.PI / speed, wanted));
        }

        var stepTime = 4 * Math.PI / speed / wanted;
        return wanted * Math.Clamp((int)Math.Ceiling(stepTime * QuickestRate(Tables(720)) / Stable), 1, 4000);
    }

    /// <summary>
    /// Steps in which the waves of hot exhaust cross no cell, or twice as long ones, which the hot pipes then halve, when that
    /// still divides the cycle finely enough. Rounded up so that neighbouring speeds share tables.
    /// </summary>
    private int StepsOfPipes(double cycleTime, int least)
    {
        const double HotWave = 1000;
        const int Round = 40;
        var shortest = Network.Pipes.Min(p => p.Duct.CellLength);
        var steps = cycleTime * HotWave / (March.Courant * shortest);
        steps = steps / 2 > least ? steps / 2 : steps;
        return (int)Math.Ceiling(steps / Round) * Round;
    }

    private static bool HaveSameGases(EngineSpec a, EngineSpec b) =>
        a.Fuel == b.Fuel && a.Lambda == b.Lambda && a.Ambient == b.Ambient && a.Combustion is null == b.Combustion is null;

    /// <summary>Largest rate of pressure equalisation of any node, 1/s.</summary>
    private double QuickestRate(CylinderTable[] tables)
    {
        // Sound speed times slope of the softened flow function: cool side 380 m/s, hot side 750 m/s.
        var slope = Math.Sqrt(2 * 1.35 / FlowFunction.Softening);
        var (cool, hot) = (380 * slope, 750 * slope);
        var rate = 0.0;
        for (var c = 0; c < tables.Length && !Network.Piped; c++)
        {
            var t = tables[c];
            for (var i = 0; i < t.Angle.Length; i++)
            {
                rate = Math.Max(rate, ((hot * Math.Max(t.ExhaustOut[i], t.ExhaustIn[i])) + (cool * Math.Max(t.InletIn[i], t.InletOut[i]))) / t.Volume[i]);
            }

            if (!Network.Imposed)
            {
                rate = Math.Max(rate, cool * (Spec.Intake.RunnerArea + t.InletIn.Max()) / Spec.Intake.PortVolume);
            }
        }

        return Math.Max(rate, VolumeRate(tables, cool, hot));
    }

    private double VolumeRate(CylinderTable[] tables, double cool, double hot)
    {
        if (Network.Imposed)
        {
            return 0;
        }

        var (intake, exhaust) = (Spec.Intake, Spec.Exhaust);
        var runners = Network.Piped ? 0 : intake.RunnerArea * tables.Length;
        var collector = Network.Piped ? 0 : hot * (exhaust.OutletArea + tables.Sum(t => t.ExhaustOut.Max())) / exhaust.CollectorVolume;
        var plenum = cool * (intake.ThrottleArea + runners) / intake.PlenumVolume;
        var airbox = cool * (intake.FilterArea + intake.ThrottleArea) / intake.AirboxVolume;
        var delivery = intake.Induction is null ? 0 : cool * intake.ThrottleArea / intake.DeliveryVolume;
        return Math.Max(Math.Max(collector, plenum), Math.Max(airbox, delivery));
    }
}
