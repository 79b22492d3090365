using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>Engines for the tests. Every value is invented: none of them is an engine that exists.</summary>
internal static class Engines
{
    public static double Rpm(double rpm) => rpm * Math.PI / 30;

    /// <summary>Invented: parallel twin of 899 cm³ with a crank-driven centrifugal compressor and a water charge cooler.</summary>
    public static EngineSpec BlownTwin(double driveRatio = 2.6) => new()
    {
        Cylinders = [TwinCylinder(0), TwinCylinder(450)],
        Fuel = Fuels.Petrol102,
        Lambda = 0.86,
        Combustion = new CombustionSpec { Burned50 = 11, Burned50Slope = 0, Duration = 27 },
        Intake = new IntakeSpec
        {
            Induction = new CentrifugalInduction { DriveRatio = driveRatio, StepUp = 4.5, BeltSlip = 0.01, Map = InventedMap() },
            Cooler = new ChargeCooler { Effectiveness = 0.75, CoolantTemperature = 308, EffectiveArea = 3e-3 },
            PlenumVolume = 3e-3,
            ThrottleArea = 3e-3,
            PortVolume = 0.25e-3,
            RunnerArea = 1.9e-3,
        },
        Exhaust = new ExhaustSpec { CollectorVolume = 6e-3, OutletArea = 2.2e-3 },
    };

    /// <summary>Invented: the twin with a Roots blower.</summary>
    public static EngineSpec RootsTwin()
    {
        var twin = BlownTwin();
        return twin with { Intake = twin.Intake with { Induction = new PositiveDisplacementInduction { DriveRatio = 1.3, Displacement = 0.6e-3, LeakArea = 20e-6, Efficiency = 0.85 } } };
    }

    /// <summary>Invented: naturally aspirated single of 499 cm³ on methanol.</summary>
    public static EngineSpec MethanolSingle() => new()
    {
        Cylinders =
        [
            new CylinderSpec
            {
                Bore = 0.095,
                Stroke = 0.0704,
                Rod = 0.125,
                CompressionRatio = 14,
                FiringAngle = 0,
                Inlet = Valves(2, 0.038, 328, 602, 0.0112),
                Exhaust = Valves(2, 0.032, 112, 392, 0.0105),
            },
        ],
        Fuel = Fuels.Methanol,
        Lambda = 0.88,
        Delivery = new FuelDelivery { EvaporatedInPort = 0.3 },
        Intake = new IntakeSpec { ThrottleArea = 1.9e-3, PlenumVolume = 8e-3, PortVolume = 0.25e-3, RunnerArea = 2e-3 },
        Exhaust = new ExhaustSpec { CollectorVolume = 6e-3, OutletArea = 1.4e-3 },
    };

    /// <summary>Invented: the methanol single on petrol and a lower compression ratio.</summary>
    public static EngineSpec PetrolSingle()
    {
        var methanol = MethanolSingle();
        return methanol with
        {
            Cylinders = [methanol.Cylinders[0] with { CompressionRatio = 12 }],
            Fuel = Fuels.Petrol98,
            Delivery = new FuelDelivery(),
        };
    }

    public static ValveSpec Valves(int count, double head, double opens, double closes, double lift) => new()
    {
        Count = count,
        HeadDiameter = head,
        Lift = LiftCurve.Smooth(opens, closes, lift),
        Flow = FlowTable.Customary,
    };

    private static CylinderSpec TwinCylinder(double firing) => new()
    {
        Bore = 0.086,
        Stroke = 0.0774,
        Rod = 0.138,
        CompressionRatio = 9.0,
        FiringAngle = firing,
        Inlet = Valves(2, 0.034, 332, 600, 0.0105),
        Exhaust = Valves(2, 0.029, 114, 386, 0.0100),
    };

    /// <summary>Invented lines by a formula; no compressor that exists.</summary>
    public static CompressorMap InventedMap() => new(
        [.. new[] { 0.35, 0.5, 0.65, 0.8, 0.9, 1.0, 1.1 }.Select(InventedLine)],
        referencePressure: 100_000,
        referenceTemperature: 298.15);

    private static SpeedLine InventedLine(double s)
    {
        var points = new CompressorPoint[9];
        for (var i = 0; i < points.Length; i++)
        {
            var x = i / (points.Length - 1.0);
            var flow = (0.085 * Math.Pow(s, 1.2) * (1 - x)) + (0.235 * s * x);
            var head = 0.34 * s * s * (1 - (0.45 * Math.Pow(x, 2.2)));
            var efficiency = 0.76 - (0.45 * (x - 0.4) * (x - 0.4)) - (0.04 * (s - 0.7) * (s - 0.7));
            points[i] = new(flow, Math.Pow(1 + head, 3.5), efficiency);
        }

        return new SpeedLine(Rpm(110_000 * s), points);
    }
}
