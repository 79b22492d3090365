using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>
/// The TCC-III optical engine, motored at 800 rpm with its measured port pressures. Geometry, lifts and temperatures as
/// published with the data; the valve head diameter (30 mm) is recalled and the flow coefficients are the customary ones,
/// since none were published. Nothing is tuned.
/// </summary>
internal static class MotoredRig
{
    public const double Speed = 800 * Math.PI / 30;

    public static EngineSpec Spec { get; } = new()
    {
        Cylinders =
        [
            new CylinderSpec
            {
                Bore = 0.092,
                Stroke = 0.086,
                Rod = 0.231,
                CompressionRatio = 10,
                FiringAngle = 0,
                Inlet = Valve("inlet"),
                Exhaust = Valve("exhaust"),
            },
        ],
        Fuel = Fuels.IsoOctane,
        Combustion = null,
        Walls = new WallSpec { Head = 310.66, Piston = 310.66, Liner = 310.66, HeadAreaRatio = 1, PistonAreaRatio = 1 },
        Ambient = new AmbientSpec { Pressure = 94_260, Temperature = 317.68, RelativeHumidity = 0 },
        ImposedPorts = new ImposedPorts(Port(1), 317.68, Port(2), 314.7),
    };

    /// <summary>Measured cylinder pressure, Pa, by degrees after exchange top dead centre.</summary>
    public static double[] Measured { get; } = [.. MeasuredData.Rows("motored-cylinder-pressure.csv").Select(r => 1e3 * MeasuredData.Number(r[1]))];

    private static ValveSpec Valve(string name)
    {
        var rows = MeasuredData.Rows("motored-lifts.csv").Where(r => r[0] == name).ToArray();
        double[] angles = [.. rows.Select(r => MeasuredData.Number(r[1]) - 360)];
        double[] lifts = [.. rows.Select(r => 1e-3 * MeasuredData.Number(r[2]))];
        return new ValveSpec
        {
            Count = 1,
            HeadDiameter = 0.030,
            Lift = new LiftCurve([angles[0] - 5, .. angles, angles[^1] + 5], [0, .. lifts, 0]),
            Flow = FlowTable.Customary,
        };
    }

    private static PressureTrace Port(int column)
    {
        var rows = MeasuredData.Rows("motored-port-pressures.csv");
        return new PressureTrace([.. rows.Select(r => MeasuredData.Number(r[0]) - 360)], [.. rows.Select(r => 1e3 * MeasuredData.Number(r[column]))]);
    }
}
