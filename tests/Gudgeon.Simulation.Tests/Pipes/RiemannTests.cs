using System.Globalization;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>
/// The scheme against exact Riemann solutions: Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics, 3rd ed.
/// 2009, table 4.1 (tests 1 to 5), and the moving contact of section 6.4, with its diaphragms and times (from memory).
/// </summary>
public class RiemannTests
{
    private const double Gamma = 1.4;

    public static TheoryData<int, double[], double[], double, double> Tests => new()
    {
        { 1, [1, 0, 1], [0.125, 0, 0.1], 0.5, 0.2 },
        { 2, [1, -2, 0.4], [1, 2, 0.4], 0.5, 0.15 },
        { 3, [1, 0, 1000], [1, 0, 0.01], 0.5, 0.012 },
        { 4, [1, 0, 0.01], [1, 0, 100], 0.5, 0.035 },
        { 5, [5.99924, 19.5975, 460.894], [5.99242, -6.19633, 46.0950], 0.4, 0.035 },
        { 6, [1, -19.59745, 1000], [1, -19.59745, 0.01], 0.8, 0.012 },
    };

    /// <summary>The error in density falls with the cell, as fast as a shock allows: by nearly half for cells of half the length.</summary>
    [Theory]
    [MemberData(nameof(Tests))]
    public void TheErrorFallsWithTheCell(int number, double[] left, double[] right, double diaphragm, double time)
    {
        var errors = new[] { 100, 200, 400, 800 }.Select(n => Error(n, left, right, diaphragm, time)).ToArray();
        var orders = errors.Zip(errors.Skip(1), (a, b) => Math.Log2(a / b)).ToArray();
        TestContext.Current.TestOutputHelper?.WriteLine($"test {number}: errors {string.Join(", ", errors.Select(e => e.ToString("E2", CultureInfo.InvariantCulture)))}; orders {string.Join(", ", orders.Select(o => o.ToString("F2", CultureInfo.InvariantCulture)))}");
        Assert.True(Math.Log2(errors[0] / errors[^1]) / 3 > 0.7, $"test {number}: mean order of {string.Join(", ", orders)}");
    }

    /// <summary>
    /// Sod's tube at CFL 0.9: independent code of the same scheme (MUSCL–Hancock, HLLC, MC limiter), in Fortran, comes to
    /// 2.54e-3, 6.27e-4 and 8.40e-5 for 200, 1,000 and 10,000 cells (recalled).
    /// </summary>
    [Theory]
    [InlineData(200, 2.54e-3)]
    [InlineData(1000, 6.27e-4)]
    public void SodsErrorIsThatOfTheScheme(int cells, double independent)
    {
        var error = Error(cells, [1, 0, 1], [0.125, 0, 0.1], 0.5, 0.2);
        Assert.InRange(error, 0.5 * independent, 1.1 * independent);
    }

    /// <summary>A smooth wave of density carried along: second order.</summary>
    [Fact]
    public void ASmoothWaveConvergesWithSecondOrder()
    {
        double Error(int cells)
        {
            var pipe = new PerfectPipe(new Duct([Taper.Straight(1, 0.04)], 1.0 / cells), Gamma);
            double Density(double x) => 1 + (0.2 * Math.Exp(-200 * (x - 0.4) * (x - 0.4)));
            Fill(pipe, x => new(Density(x), 1, 1));
            March(pipe, 0.2);
            return Enumerable.Range(0, cells).Average(i => Math.Abs(pipe.Gas.Density[i + 1] - Density(((i + 0.5) / cells) - 0.2)));
        }

        Assert.InRange(Math.Log2(Error(200) / Error(400)), 1.7, 2.4);
    }

    /// <summary>Mass and energy of a closed pipe stay to round-off, whatever goes on inside.</summary>
    [Fact]
    public void AClosedTaperedPipeLosesNothing()
    {
        var duct = new Duct([new(0.3, 0.03, 0.05), new(0.4, 0.05, 0.05), new(0.3, 0.05, 0.04)], 0.005);
        var pipe = new PerfectPipe(duct, Gamma) { First = PerfectEnd.Closed, Last = PerfectEnd.Closed };
        Fill(pipe, x => x < 0.4 ? new(1.2, 0, 3e5) : new(1.2, 0, 1e5));
        (double Mass, double Energy) Held() => (
            Enumerable.Range(0, duct.Cells).Sum(i => duct.Volume[i] * pipe.Gas.Density[i + 1]),
            Enumerable.Range(0, duct.Cells).Sum(i => duct.Volume[i] * pipe.Gas.Total[i + 1]));
        var before = Held();
        for (var k = 0; k < 20_000; k++)
        {
            pipe.March(pipe.Step(0.8));
        }

        var after = Held();
        Assert.Equal(1, after.Mass / before.Mass, 1e-12);
        Assert.Equal(1, after.Energy / before.Energy, 1e-12);
    }

    /// <summary>A wall is a Riemann problem with its mirror image: gas that comes is stopped by a shock, gas that goes by a rarefaction.</summary>
    [Theory]
    [InlineData(1.2, 150, 2e5)]
    [InlineData(1.2, 900, 1e5)]
    [InlineData(0.6, -80, 1e5)]
    [InlineData(0.6, -700, 3e5)]
    public void AWallIsTheMiddleOfAMirroredRiemannProblem(double density, double towards, double pressure)
    {
        var star = RiemannProblem.Solve(new FlowState(density, towards, pressure), new FlowState(density, -towards, pressure), Gamma);
        Assert.Equal(0, star.Velocity, 1e-6);
        Assert.Equal(1, Wall.Pressure(density, towards, pressure, Gamma) / star.Pressure, 1e-8);
    }

    /// <summary>
    /// Steady flow without loss through a taper stays as the area relation of isentropic flow has it, with an error that
    /// falls with the square of the cell. Looked at in the middle, where no wave from an end has come yet.
    /// </summary>
    [Fact]
    public void SteadyFlowThroughATaperConvergesWithSecondOrder()
    {
        double Error(int cells)
        {
            var duct = new Duct([new(1, 0.05, 0.035)], 1.0 / cells);
            var pipe = new PerfectPipe(duct, Gamma);
            var states = Enumerable.Range(0, cells).Select(i => Steady(duct.Volume[i] / duct.CellLength)).ToArray();
            for (var i = 0; i < cells; i++)
            {
                PerfectGas.Set(pipe.Gas, i, Gamma, states[i].Density, states[i].Velocity, states[i].Pressure);
            }

            March(pipe, 0.6e-3);
            return Enumerable.Range(cells * 2 / 5, cells / 5).Average(i => Math.Abs(pipe.Gas.Velocity[i + 1] - states[i].Velocity));
        }

        Assert.InRange(Math.Log2(Error(100) / Error(200)), 1.7, 2.3);
        Assert.InRange(Error(200), 0, 2e-3);
    }

    [Fact]
    public void GasAtRestInATaperStaysAtRest()
    {
        var pipe = new PerfectPipe(new Duct([new(0.5, 0.03, 0.06), new(0.2, 0.06, 0.02)], 0.01), Gamma) { First = PerfectEnd.Closed, Last = PerfectEnd.Closed };
        Fill(pipe, _ => new(1.2, 0, 101_325));
        var dt = pipe.Step(0.8);
        for (var k = 0; k < 100_000; k++)
        {
            pipe.March(dt);
        }

        Assert.All(Enumerable.Range(1, pipe.Gas.Cells), i => Assert.InRange(Math.Abs(pipe.Gas.Velocity[i]), 0, 1e-9));
        Assert.All(Enumerable.Range(1, pipe.Gas.Cells), i => Assert.Equal(101_325, pipe.Gas.Pressure[i], 1e-6));
    }

    [Fact]
    public void MarchingAllocatesNothing()
    {
        var pipe = new PerfectPipe(new Duct([new(0.5, 0.03, 0.06)], 0.01), Gamma);
        Fill(pipe, x => x < 0.2 ? new(1.2, 0, 2e5) : new(1.2, 0, 1e5));
        pipe.March(1e-6);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var k = 0; k < 1000; k++)
        {
            pipe.March(1e-6);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>Subsonic state at an area, m², of a flow from rest at 1 bar and 1.2 kg/m³ (invented) that chokes at 0.8 of the narrow end's area: area over Mach number by Anderson, Modern Compressible Flow, eq. 5.20 (from memory).</summary>
    private static FlowState Steady(double area)
    {
        var throat = 0.8 * Math.PI / 4 * 0.035 * 0.035;
        var (low, high) = (1e-3, 1.0);
        for (var k = 0; k < 100; k++)
        {
            var mach = (low + high) / 2;
            var ratio = Math.Pow((2 + ((Gamma - 1) * mach * mach)) / (Gamma + 1), (Gamma + 1) / (2 * (Gamma - 1))) / mach;
            (low, high) = ratio > area / throat ? (mach, high) : (low, mach);
        }

        var cooling = 1 + ((Gamma - 1) / 2 * low * low);
        var pressure = 1e5 * Math.Pow(cooling, -Gamma / (Gamma - 1));
        var density = 1.2 * Math.Pow(cooling, -1 / (Gamma - 1));
        return new(density, low * Math.Sqrt(Gamma * pressure / density), pressure);
    }

    private static double Error(int cells, double[] left, double[] right, double diaphragm, double time)
    {
        var (l, r) = (new FlowState(left[0], left[1], left[2]), new FlowState(right[0], right[1], right[2]));
        var pipe = new PerfectPipe(new Duct([Taper.Straight(1, 0.04)], 1.0 / cells), Gamma);
        Fill(pipe, x => x < diaphragm ? l : r);
        March(pipe, time);
        Assert.All(Enumerable.Range(1, cells), i => Assert.True(pipe.Gas.Density[i] > 0 && pipe.Gas.Pressure[i] > 0, "a cell has lost its gas"));
        return Enumerable.Range(0, cells).Average(i => Math.Abs(pipe.Gas.Density[i + 1] - RiemannProblem.Sample(l, r, Gamma, (((i + 0.5) / cells) - diaphragm) / time).Density));
    }

    private static void Fill(PerfectPipe pipe, Func<double, FlowState> state)
    {
        for (var i = 0; i < pipe.Gas.Cells; i++)
        {
            var s = state((i + 0.5) / pipe.Gas.Cells);
            PerfectGas.Set(pipe.Gas, i, Gamma, s.Density, s.Velocity, s.Pressure);
        }
    }

    private static void March(PerfectPipe pipe, double time)
    {
        for (var (t, step) = (0.0, 0); t < time; step++)
        {
            // The first steps of a burst diaphragm are taken small: the fastest wave is not yet there to be seen (Toro 2009, section 6.3.2).
            var dt = Math.Min(pipe.Step(step < 5 ? 0.2 : 0.9), time - t);
            pipe.March(dt);
            t += dt;
        }
    }
}
