using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>Without heat loss, leak and burning time the engine is a textbook cycle.</summary>
public class IdealLimitTests
{
    private const double Slow = 30;

    /// <summary>Motored, adiabatic and closed, the charge stays on the isentrope of the polynomials' air.</summary>
    [Fact]
    public void MotoredAdiabaticIsIsentropic()
    {
        var spec = Ideal(10) with { Combustion = null };
        var point = Run(spec, Engines.Rpm(3000), 0.5);
        var trace = point.Trace!.Cylinders[0];
        var air = Air.Of(AirModel.StandardDry);
        var entropies = Indices(trace, 560, 718).Concat(Indices(trace, 0, 160)).Select(i => air.Entropy(trace.Temperature[i], trace.Pressure[i])).ToArray();
        Assert.True(entropies.Length > 300);
        Assert.InRange(entropies.Max() - entropies.Min(), 0, 0.15);
        Assert.Equal(0, point.Figures!.Cylinders[0].PeakPressureAngle, 0.02);
    }

    /// <summary>
    /// Burned at once at top dead centre: isentropic compression of the fresh charge, burning at constant volume to
    /// equilibrium, isentropic expansion in equilibrium; all recomputed with the equilibrium solver, without the tables.
    /// </summary>
    [Theory]
    [InlineData(8, 1.0)]
    [InlineData(11, 0.9)]
    [InlineData(11, 1.2)]
    public void InstantBurnIsTheConstantVolumeFuelAirCycle(double ratio, double lambda)
    {
        var spec = Ideal(ratio) with { Lambda = lambda, Combustion = new CombustionSpec { Burned50 = 0, Duration = 0.6, DurationSpeedExponent = 0, DurationMixtureFactor = 0, Efficiency = 1 } };
        var point = Run(spec, Engines.Rpm(2000), 0.1);
        var (trace, c) = (point.Trace!.Cylinders[0], point.Figures!.Cylinders[0]);
        var cycle = new FuelAirCycle(spec, c);
        var clearance = trace.Volume.Min();
        var (compressed, compressedPressure) = cycle.Compress(cycle.ClosingVolume, clearance);
        var before = Indices(trace, 718, 718.5).First();
        Assert.Equal(1, trace.Temperature[before] / cycle.Compress(cycle.ClosingVolume, trace.Volume[before]).Temperature, 0.002);

        var burned = cycle.Burn(compressed, clearance);
        Assert.True(burned.Pressure > 3 * compressedPressure);
        Assert.Equal(1, c.PeakPressure / burned.Pressure, 0.006);
        Assert.Equal(1, c.PeakTemperature / burned.Temperature, 0.004);

        var late = Indices(trace, 150, 150.5).First();
        var expanded = cycle.Expand(burned, trace.Volume[late]);
        Assert.Equal(1, trace.Pressure[late] / expanded.Pressure, 0.012);
        Assert.Equal(1, trace.Temperature[late] / expanded.Temperature, 0.008);
    }

    /// <summary>Efficiency rises with compression as 1 − r^(1−γ) with a γ near that of hot gas, and falls when rich.</summary>
    [Fact]
    public void EfficiencyFollowsTheOttoCycle()
    {
        double[] ratios = [7, 9, 11, 13];
        var efficiencies = ratios.Select(r => Efficiency(r, 1.0)).ToArray();
        Assert.Equal(efficiencies.Order(), efficiencies);
        Assert.All(ratios.Zip(efficiencies), p => Assert.InRange(1 - (Math.Log(1 - p.Second) / Math.Log(p.First)), 1.22, 1.30));
        Assert.True(Efficiency(11, 0.8) < efficiencies[2] - 0.05);
        Assert.True(Efficiency(11, 1.3) > efficiencies[2]);
    }

    /// <summary>
    /// Very slowly, adiabatic, large valves that open and close at the dead centres: the charge at equal port pressures fills the
    /// swept volume whatever stays behind; at unequal ones ηv = 1 − (pe/pi − 1)/(γ (r − 1)), Heywood 1988 eq. 6.5 with φ = 1 (from
    /// memory), constant γ.
    /// </summary>
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.3)]
    [InlineData(0.8)]
    public void SlowFillingIsTheClosedForm(double exhaustOverInlet)
    {
        const double Ratio = 9;
        const double InletPressure = 1e5;
        var ideal = Ideal(Ratio);
        var spec = ideal with
        {
            Combustion = null,
            Cylinders = [ideal.Cylinders[0] with { Inlet = Square(360, 540), Exhaust = Square(180, 360) }],
            ImposedPorts = new ImposedPorts(PressureTrace.Constant(InletPressure), 298.15, PressureTrace.Constant(exhaustOverInlet * InletPressure), 298.15),
            Ambient = new AmbientSpec { Pressure = InletPressure, Temperature = 298.15, RelativeHumidity = 0 },
        };
        var figures = Run(spec, Slow, 0.5).Figures!;
        var wanted = 1 - ((exhaustOverInlet - 1) / (1.4 * (Ratio - 1)));
        Assert.Equal(wanted, figures.VolumetricEfficiency, 0.006);
        Assert.Equal((1 - exhaustOverInlet) * InletPressure, figures.PumpingMep, 0.012 * InletPressure);
    }

    private static double Efficiency(double ratio, double lambda)
    {
        var spec = Ideal(ratio) with { Lambda = lambda, Combustion = new CombustionSpec { Burned50 = 0, Duration = 1, DurationSpeedExponent = 0, DurationMixtureFactor = 0, Efficiency = 1 } };
        var speed = Engines.Rpm(2000);
        var figures = Run(spec, speed, 0.25).Figures!;
        var work = figures.GrossImep * Math.PI / 4 * 0.086 * 0.086 * 0.086;
        return work / (figures.FuelFlow * 4 * Math.PI / speed * Fuels.IsoOctane.HeatingValue);
    }

    /// <summary>Adiabatic, tight, on iso-octane, with steady port pressures.</summary>
    private static EngineSpec Ideal(double ratio) => new()
    {
        Cylinders =
        [
            new CylinderSpec
            {
                Bore = 0.086,
                Stroke = 0.086,
                Rod = 0.150,
                CompressionRatio = ratio,
                FiringAngle = 0,
                BlowByArea = 0,
                Inlet = Engines.Valves(2, 0.034, 350, 560, 0.010),
                Exhaust = Engines.Valves(2, 0.030, 165, 370, 0.010),
            },
        ],
        Fuel = Fuels.IsoOctane,
        Lambda = 1,
        Walls = new WallSpec { WoschniScale = 0 },
        Ambient = new AmbientSpec { Pressure = 1e5, RelativeHumidity = 0 },
        ImposedPorts = new ImposedPorts(PressureTrace.Constant(1e5), 298.15, PressureTrace.Constant(1e5), 900),
    };

    /// <summary>Opens to its full lift within a degree.</summary>
    private static ValveSpec Square(double opens, double closes) => new()
    {
        Count = 1,
        HeadDiameter = 0.05,
        Lift = new LiftCurve([opens, opens + 1, closes - 1, closes], [0, 0.012, 0.012, 0]),
        Flow = FlowTable.Customary,
    };

    private static OperatingPoint Run(EngineSpec spec, double speed, double step) =>
        new EngineModel(spec).RunPoint(speed, new RunOptions { Speeds = [speed], CrankStep = step, WithTraces = true });

    private static IEnumerable<int> Indices(CylinderTrace trace, double from, double to)
    {
        var steps = trace.Pressure.Length;
        return Enumerable.Range(0, steps).Where(i => 720.0 * i / steps >= from && 720.0 * i / steps < to);
    }
}
