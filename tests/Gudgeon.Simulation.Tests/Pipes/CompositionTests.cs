using System.Globalization;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>Gas of other kinds carried through a pipe.</summary>
public class CompositionTests
{
    private static readonly GasTable Table = new(PipeRig.AirMixture, Fuels.Petrol95, 0.07);

    private static readonly PipeGas Law = new(PipeRig.AirMixture, Fuels.Petrol95, Table.Frozen);

    /// <summary>
    /// A slug of burned gas in air, all at one pressure and velocity, stays at that pressure and velocity: to the last digits at
    /// one temperature. Hot against cold a sharp contact must mix within a cell, and gases whose heat capacity rises with the
    /// temperature then press more, adiabatically and truly: no more than the worst mixture does, and little once the contact
    /// is some cells wide.
    /// </summary>
    [Theory]
    [InlineData(15, 300, 0)]
    [InlineData(200, 300, 0)]
    [InlineData(60, 900, 0)]
    [InlineData(-120, 1400, 0)]
    [InlineData(60, 900, 0.2)]
    [InlineData(-120, 1400, 0.2)]
    public void AContactOfOtherGasMovesWithoutAPush(double velocity, double temperature, double width)
    {
        var rig = Slug(velocity, temperature, width);
        var (worst, late) = (0.0, 0.0);
        while (rig.Time < 3e-3)
        {
            rig.March(rig.Step());

            // Away from the closed ends, whose own waves have not come as far.
            var reach = 900 * rig.Time;
            var now = Enumerable.Range(0, rig.Cells).Where(i => rig.Place(i) > reach && rig.Place(i) < 10 - reach).Max(i => Math.Abs((rig.Pressure(i) / 1e5) - 1));
            (worst, late) = (Math.Max(worst, now), now);
        }

        var mixing = Mixing(temperature);
        Report($"velocity {velocity}, {temperature} K over {width} m: pressure off by {worst:E2} at most, {late:E2} in the end; mixing in a cell {mixing:E2}");
        Assert.InRange(worst, 0, width > 0 ? 0.002 : temperature == 300 ? 1e-5 : mixing);
        Assert.Equal(velocity * rig.Time, Centre(rig) - 5, 0.01);
    }

    /// <summary>Whatever waves go to and fro in a closed tapered pipe, every kind of gas stays as much as it was, and its share a share.</summary>
    [Fact]
    public void AClosedPipeKeepsEveryKindOfGas()
    {
        var duct = new Duct([new(0.3, 0.03, 0.05), new(0.4, 0.05, 0.05), new(0.3, 0.05, 0.04)], 0.01);
        var rig = new PipeRig(duct, Law, 3, roughness: 1e-5);
        for (var cell = 0; cell < rig.Cells; cell++)
        {
            ReadOnlySpan<double> shares = cell < 30 ? [0, 1, 0] : cell < 60 ? [0.05, 0.1, 0.02] : [0, 0, 0];
            rig.Pipe.Set(cell, shares, cell < 30 ? 1200 : 320, 0, cell < 30 ? 3e5 : 1e5);
        }

        rig.Pipe.Solve();
        var before = Enumerable.Range(0, 3).Select(k => Held(rig, k)).ToArray();
        for (var step = 0; step < 20_000; step++)
        {
            rig.March(rig.Step());
            if (step % 100 == 0)
            {
                SharesAreShares(rig, 1e-12);
            }
        }

        for (var k = 0; k < 3; k++)
        {
            Assert.Equal(1, Held(rig, k) / before[k], 1e-12);
        }
    }

    /// <summary>A slug that leaves through an open mouth while air comes in at the other: what is gone is what the ends let through.</summary>
    [Fact]
    public void WhatLeavesIsWhatTheMouthsLetThrough()
    {
        var rig = new PipeRig(new Duct([new(0.5, 0.03, 0.04)], 0.01), Law, 2, roughness: 1e-5)
        {
            First = new Reservoir(Law, 1.3e5, 320) { Shares = [0.06, 0.05, 0] },
            Last = new Reservoir(Law, 1e5, 300) { Throat = 5e-4, Shares = [0, 0.5, 0] },
        };
        for (var cell = 0; cell < rig.Cells; cell++)
        {
            rig.Pipe.Set(cell, cell < 25 ? [0, 1] : [0, 0], cell < 25 ? 900 : 300, 0, 0.9e5);
        }

        rig.Pipe.Solve();
        var (before, through) = (new[] { Held(rig, 0), Held(rig, 1) }, new double[2]);
        var left = 0.0;
        while (rig.Time < 0.05)
        {
            var dt = rig.Step();
            rig.March(dt);
            var flux = rig.Pipe.Gas.ShareFlux;
            for (var k = 0; k < 2; k++)
            {
                through[k] += dt * ((flux[k][0] * rig.Pipe.First.Area) - (flux[k][rig.Cells] * rig.Pipe.Last.Area));
            }

            left += dt * flux[1][rig.Cells] * rig.Pipe.Last.Area;
            SharesAreShares(rig, 1e-12);
        }

        Assert.InRange(left / before[1], 1, 100);
        Assert.All(Enumerable.Range(0, 2), k => Assert.Equal(before[k] + through[k], Held(rig, k), 1e-12 * before[1]));
        Assert.All(Enumerable.Range(0, rig.Cells), i => Assert.Equal(0.06, rig.Pipe.Gas.Share[PipeGas.Vapour][i + 1], 1e-3));
    }

    /// <summary>Most by which hot burned gas and air at 300 K press more when they mix in a closed cell, by the NASA polynomials.</summary>
    private static double Mixing(double temperature)
    {
        var (air, burned) = (PipeRig.AirMixture, Table.Frozen);
        return Enumerable.Range(1, 99).Max(k =>
        {
            var (hot, cold) = (k / 100.0 / (burned.GasConstant * temperature), (1 - (k / 100.0)) / (air.GasConstant * 300));
            var energy = (hot * burned.Energy(temperature)) + (cold * air.Energy(300));
            var (low, high) = (250.0, temperature + 50);
            for (var turn = 0; turn < 60; turn++)
            {
                var t = 0.5 * (low + high);
                (low, high) = (hot * burned.Energy(t)) + (cold * air.Energy(t)) < energy ? (t, high) : (low, t);
            }

            return Math.Abs((((hot * burned.GasConstant) + (cold * air.GasConstant)) * low) - 1);
        });
    }

    /// <summary>A slug in the middle fifth of 10 m, its edges spread over a width: the pipe is long so that its ends are heard late.</summary>
    private static PipeRig Slug(double velocity, double temperature, double width)
    {
        var rig = new PipeRig(new Duct([Taper.Straight(10, PipeRig.Frictionless)], 0.01), Law, 2);
        for (var cell = 0; cell < rig.Cells; cell++)
        {
            var inside = width == 0 ? Math.Abs(rig.Place(cell) - 5) < 1 ? 1 : 0 : 0.5 * (1 + Math.Tanh((1 - Math.Abs(rig.Place(cell) - 5)) * 2 / width));
            rig.Pipe.Set(cell, [0, inside], 300 + (inside * (temperature - 300)), velocity, 1e5);
        }

        rig.Pipe.Solve();
        return rig;
    }

    private static double Centre(PipeRig rig)
    {
        var burned = rig.Pipe.Gas.ShareDensity[PipeGas.Burned];
        var cells = Enumerable.Range(0, rig.Cells).ToArray();
        return cells.Sum(i => burned[i + 1] * rig.Place(i)) / cells.Sum(i => burned[i + 1]);
    }

    private static double Held(PipeRig rig, int k) => Enumerable.Range(0, rig.Cells).Sum(i => rig.Pipe.Duct.Volume[i] * rig.Pipe.Gas.ShareDensity[k][i + 1]);

    private static void SharesAreShares(PipeRig rig, double slack)
    {
        for (var cell = 1; cell <= rig.Cells; cell++)
        {
            var sum = rig.Pipe.Gas.Share.Sum(s => s[cell]);
            Assert.InRange(sum, -slack, 1 + slack);
            Assert.All(rig.Pipe.Gas.Share, s => Assert.InRange(s[cell], -slack, 1 + slack));
        }
    }

    private static void Report(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
