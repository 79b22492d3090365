using System.Globalization;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>The real pipe as a scheme: order, near vacuum, garbage.</summary>
public class PipeMarchTests
{
    /// <summary>
    /// A smooth wave of some size, air with its own heat capacities: the difference between one grid and the next finer falls
    /// with the square of the cell. In the inside of a taper, at a wall and at an open end.
    /// </summary>
    [Theory]
    [InlineData("inside", 0.035, 0.6e-3, 1.8)]
    [InlineData("wall", 0.05, 1.5e-3, 1.8)]
    [InlineData("wall in a taper", 0.035, 1.5e-3, 1.8)]
    [InlineData("open", 0.05, 1.5e-3, 1.8)]
    [InlineData("open in a taper", 0.035, 1.5e-3, 1.8)]
    [InlineData("throat", 0.05, 1.5e-3, 1.8)]
    public void ASmoothWaveConvergesWithSecondOrder(string where, double diameter, double time, double least)
    {
        var cells = new[] { 100, 200, 400, 800, 1600 };
        var pressures = cells.Select(n => Pressures(where, diameter, time, n)).ToArray();
        var errors = Enumerable.Range(0, cells.Length - 1).Select(k => Difference(pressures[k], pressures[k + 1])).ToArray();
        var orders = errors.Zip(errors.Skip(1), (a, b) => Math.Log2(a / b)).ToArray();
        Report($"{where}: differences {string.Join(", ", errors.Select(e => e.ToString("F3", CultureInfo.InvariantCulture)))} Pa; orders {string.Join(", ", orders.Select(o => o.ToString("F2", CultureInfo.InvariantCulture)))}");
        Assert.True(Math.Log2(errors[0] / errors[^1]) / orders.Length >= least, $"orders {string.Join(", ", orders)}");

        static double Difference(double[] coarse, double[] fine) => coarse.Select((p, i) => Math.Abs(p - (0.5 * (fine[2 * i] + fine[(2 * i) + 1])))).Average();
    }

    private static double[] Pressures(string where, double diameter, double time, int cells)
    {
        IPipeStop stop = where.StartsWith("open", StringComparison.Ordinal) ? new Reservoir(PipeRig.AirLaw, 1e5, 300)
            : where == "throat" ? new Reservoir(PipeRig.AirLaw, 1e5, 300) { Throat = 0.3 * Math.PI / 4 * diameter * diameter }
            : new ClosedStop();
        var rig = new PipeRig(new Duct([new(1, 0.05, diameter)], 1.0 / cells)) { First = stop, Last = stop };
        rig.Fill(x => (300 + (11.4 * Hill(x)), 0, 1e5 * Math.Pow(1 + (11.4 / 300 * Hill(x)), 3.5)));
        while (time - rig.Time > 1e-12)
        {
            rig.March(Math.Min(0.7 / cells / 420, time - rig.Time));
        }

        return [.. Enumerable.Range(0, cells).Select(rig.Pressure)];

        static double Hill(double x) => Math.Exp(-100 * (x - 0.5) * (x - 0.5));
    }

    /// <summary>Gases that draw apart, to near nothing and past it: every cell keeps gas, pressure and temperature.</summary>
    [Theory]
    [InlineData(500)]
    [InlineData(900)]
    [InlineData(1500)]
    [InlineData(2000)]
    public void GasesThatDrawApartLeaveSome(double speed)
    {
        var rig = new PipeRig(new Duct([Taper.Straight(1, 0.04)], 0.005)) { First = new Reservoir(PipeRig.AirLaw, 1e5, 300), Last = new Reservoir(PipeRig.AirLaw, 1e5, 300) };
        rig.Fill(x => (300, x < 0.5 ? -speed : speed, 1e5));
        for (var step = 0; step < 2_000; step++)
        {
            rig.March(rig.Step(step < 5 ? 0.2 : 0.8));
            for (var i = 1; i <= rig.Cells; i++)
            {
                Assert.True(rig.Pipe.Gas.Density[i] > 0 && rig.Pipe.Gas.Pressure[i] > 0 && rig.Pipe.Gas.Temperature[i] > 0, $"step {step}, cell {i}: {rig.Pipe.Gas.Density[i]} kg/m³, {rig.Pipe.Gas.Pressure[i]} Pa, {rig.Pipe.Gas.Temperature[i]} K");
            }
        }
    }

    [Fact]
    public void MarchingAllocatesNothing()
    {
        var stop = new Reservoir(PipeRig.AirLaw, 2e5, 400);
        var rig = new PipeRig(new Duct([new(0.5, 0.03, 0.06)], 0.01), carried: 3, roughness: 1e-5, bendLoss: 1, heatScale: 1) { First = stop, Last = new Reservoir(PipeRig.AirLaw, 1e5, 300) { Throat = 5e-4 } };
        rig.Fill(_ => (300, 0, 1e5));
        rig.March(1e-6);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var step = 0; step < 1000; step++)
        {
            rig.March(1e-6);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.InRange(rig.Velocity(1), 1, 1000);
    }

    /// <summary>Still gas in a still pipe of many tapers stays so, whatever the ends, if nothing is beyond them but the same.</summary>
    [Fact]
    public void GasAtRestStaysAtRest()
    {
        var rig = new PipeRig(new Duct([new(0.3, 0.03, 0.06), new(0.1, 0.06, 0.02), new(0.2, 0.05, 0.03)], 0.01), roughness: 1e-5, heatScale: 1)
        {
            First = new Reservoir(PipeRig.AirLaw, 101_325, 300),
            Last = new Reservoir(PipeRig.AirLaw, 101_325, 300) { Throat = 3e-4 },
        };
        rig.Fill(_ => (300, 0, 101_325));
        for (var step = 0; step < 20_000; step++)
        {
            rig.March(2e-5);
        }

        Assert.All(Enumerable.Range(0, rig.Cells), i => Assert.InRange(Math.Abs(rig.Velocity(i)), 0, 1e-6));
        Assert.All(Enumerable.Range(0, rig.Cells), i => Assert.Equal(101_325, rig.Pressure(i), 1e-3));
    }

    private static void Report(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
