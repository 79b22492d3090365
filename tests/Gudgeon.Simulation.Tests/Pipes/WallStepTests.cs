using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>One step of friction and heat, all lanes of it, against the formulas of the catalogue.</summary>
public class WallStepTests
{
    private const double Prandtl = 0.7, Step = 1e-6, Bends = 2.5, Wall = 650;

    private static readonly double[] Velocities = [0, 0.05, -0.4, 2, 30, -75, 140, -300, 420, 1e-7, -600];

    [Fact]
    public void FrictionIsHaalands()
    {
        var (pipe, before) = Stepped(0);
        for (var cell = 0; cell < Velocities.Length; cell++)
        {
            var (u, d) = (Velocities[cell], pipe.Duct.Diameter[cell]);
            var slowed = pipe.Gas.Momentum[cell + 1] / pipe.Gas.Density[cell + 1];
            if (u == 0)
            {
                Assert.Equal(0, slowed);
                continue;
            }

            // The step is u' = u / (1 + dt |u| (f/D + K/L) / 2): small, so that what is left of 1 is known to 1e-9 or so.
            var perLength = ((u / slowed) - 1) * 2 / (Step * Math.Abs(u));
            var viscosity = AirTransport.Viscosity(before[cell].Temperature);
            var friction = PipeFriction.Haaland(before[cell].Density * Math.Abs(u) * d / viscosity, Roughness / d);
            var expected = (friction / d) + (Bends / pipe.Duct.Length);
            Assert.Equal(expected, perLength, Math.Max(1e-6 * expected, 1e-9 / (Step * Math.Abs(u))));
        }
    }

    /// <summary>Turbulent flow by the analogy; slower flow between pure conduction in a tube, Nu 3.66, and the analogy with 64/Re, which is Nu 8 Pr^(1/3).</summary>
    [Fact]
    public void HeatIsThatOfChiltonAndColburnAndNoLessThanConduction()
    {
        const double Scale = 1.7;
        var (pipe, before) = Stepped(Scale);
        for (var cell = 0; cell < Velocities.Length; cell++)
        {
            var (rho, t, total) = before[cell];
            var (u, d) = (Math.Abs(Velocities[cell]), pipe.Duct.Diameter[cell]);
            var (viscosity, cp) = (AirTransport.Viscosity(t), PipeRig.AirMixture.HeatCapacity(t));
            var h = pipe.Walls.Coefficient[cell + 1] / Step;
            var reynolds = rho * u * d / viscosity;
            if (reynolds > PipeFriction.Laminar)
            {
                Assert.Equal(1, h / (Scale * PipeFriction.ChiltonColburn(PipeFriction.Haaland(reynolds, Roughness / d), rho * u, cp, Prandtl)), 1e-3);
            }
            else
            {
                Assert.InRange(h / Scale * d * Prandtl / (viscosity * cp), 3.66 * 0.999, 8 * Math.Cbrt(Prandtl) * 1.001);
            }

            var recovered = t + (0.89 * u * u / (2 * cp));
            Assert.Equal(1, pipe.Walls.CoefficientTemperature[cell + 1] / (Step * h * recovered), 1e-4);
            Assert.Equal(Step * 4 / d * h * (Wall - recovered), pipe.Gas.Total[cell + 1] - total, Math.Abs(1e-3 * Step * 4 / d * h * (Wall - recovered)) + (1e-14 * Math.Abs(total)));
        }
    }

    /// <summary>An adiabatic wall counts nothing and takes nothing, and friction leaves the energy where it is.</summary>
    [Fact]
    public void WithoutHeatTheEnergyStays()
    {
        var (pipe, before) = Stepped(0);
        Assert.All(Enumerable.Range(0, Velocities.Length), i => Assert.Equal(before[i].Total, pipe.Gas.Total[i + 1]));
        Assert.All(pipe.Walls.Coefficient, c => Assert.Equal(0, c));
    }

    /// <summary>However long the step, friction brings a flow to rest and never turns it.</summary>
    [Theory]
    [InlineData(1e-3)]
    [InlineData(1)]
    public void FrictionNeverTurnsTheFlow(double step)
    {
        var (pipe, _) = Filled(0);
        pipe.Walls.Apply(pipe.Gas, step);
        for (var cell = 0; cell < Velocities.Length; cell++)
        {
            var slowed = pipe.Gas.Momentum[cell + 1] / pipe.Gas.Density[cell + 1];
            Assert.True(Math.Sign(slowed) == Math.Sign(Velocities[cell]) && Math.Abs(slowed) <= Math.Abs(Velocities[cell]), $"{Velocities[cell]} became {slowed}");
        }
    }

    private const double Roughness = 0.15e-3;

    private static (Pipe Pipe, (double Density, double Temperature, double Total)[] Before) Stepped(double heatScale)
    {
        var (pipe, before) = Filled(heatScale);
        pipe.Walls.Apply(pipe.Gas, Step);
        return (pipe, before);
    }

    private static (Pipe Pipe, (double Density, double Temperature, double Total)[] Before) Filled(double heatScale)
    {
        var duct = new Duct([new(0.3, 0.03, 0.05), Taper.Straight(0.25, 0.05)], 0.05);
        Assert.Equal(Velocities.Length, duct.Cells);
        var pipe = new Pipe(duct, PipeRig.AirLaw, 0, Roughness, Bends, heatScale);
        Array.Fill(pipe.Walls.Temperature, Wall);
        for (var cell = 0; cell < duct.Cells; cell++)
        {
            pipe.Set(cell, [], 280 + (70 * cell), Velocities[cell], 1e5 + (2e4 * cell));
        }

        pipe.Solve();
        return (pipe, [.. Enumerable.Range(1, duct.Cells).Select(i => (pipe.Gas.Density[i], pipe.Gas.Temperature[i], pipe.Gas.Total[i]))]);
    }
}
