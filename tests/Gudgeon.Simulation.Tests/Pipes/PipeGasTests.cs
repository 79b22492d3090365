using System.Globalization;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>The polynomials of the pipes' gas law against the NASA polynomials they were fitted to.</summary>
public class PipeGasTests
{
    private static readonly GasTable Rich = new(PipeRig.AirMixture, Fuels.Petrol95, 0.078);

    private static readonly GasTable Methanol = new(Air.Of(AirModel.StandardDry, 0.01), Fuels.Methanol, 0.15);

    public static TheoryData<string> Mixtures => ["air", "burned", "fuel and air", "a bit of all", "methanol and air", "burned methanol"];

    /// <summary>Cells that hold the energy of the NASA polynomials, and last stood 25 K off, find its temperature and ratio of specific heats.</summary>
    [Theory]
    [MemberData(nameof(Mixtures))]
    public void TemperatureComesBackFromTheEnergyOfTheNasaPolynomials(string mixture)
    {
        var (law, shares, mix) = Of(mixture);
        var temperatures = Enumerable.Range(0, 239).Select(k => 220.0 + (10 * k)).ToArray();
        var gas = new GasColumn(temperatures.Length, shares.Length);
        for (var i = 0; i < temperatures.Length; i++)
        {
            law.Set(gas, i, shares, temperatures[i] + (i % 2 == 0 ? 25 : -25), 100, 2e5);
            gas.Total[i + 1] = gas.Density[i + 1] * (mix.Energy(temperatures[i]) + (0.5 * 100 * 100));
        }

        Padding(law, gas, shares);
        law.Solve(gas);
        var off = temperatures.Select((t, i) => Math.Abs(gas.Temperature[i + 1] - t)).ToArray();
        var gammaOff = temperatures.Select((t, i) => Math.Abs(1 + (1 / gas.Degrees[i + 1]) - mix.Gamma(t))).ToArray();
        Report($"{mixture}: worst {off.Max():F4} K at {temperatures[Array.IndexOf(off, off.Max())]} K; γ off by {gammaOff.Max():E2} at {temperatures[Array.IndexOf(gammaOff, gammaOff.Max())]} K");
        Assert.InRange(off.Max(), 0, 0.05);
        Assert.InRange(gammaOff.Max(), 0, 1e-3);
        Assert.All(Enumerable.Range(0, temperatures.Length), i => Assert.Equal(1, gas.Pressure[i + 1] / (gas.Density[i + 1] * mix.R * gas.Temperature[i + 1]), 1e-12));
        Assert.All(Enumerable.Range(0, temperatures.Length), i => Assert.Equal(1, gas.Sound[i + 1] * gas.Sound[i + 1] / (mix.R * temperatures[i] * mix.Gamma(temperatures[i])), 1.5e-3));
    }

    /// <summary>The pipe's energies are those of the table the volumes use, so that nothing is made or lost between them.</summary>
    [Theory]
    [InlineData(300)]
    [InlineData(750)]
    [InlineData(1500)]
    public void PipesAndVolumesCountTheSameEnergy(double temperature)
    {
        var law = new PipeGas(Rich.AirMixture, Fuels.Petrol95, Rich.Frozen);
        ReadOnlySpan<double> shares = [0.03, 0.2, 0.01];
        var table = Rich.Energy(new Mixture(0.76, 0.03, 0.2, 0.01), temperature, 1e5);
        Assert.Equal(table, law.Energy(shares, temperature), 80.0);
        Assert.Equal(Rich.GasConstant(new Mixture(0.76, 0.03, 0.2, 0.01), temperature, 1e5), law.GasConstant(shares), 1e-9);
    }

    /// <summary>Far outside the range of the fit a cell still has a temperature, a pressure above nothing and a speed of sound.</summary>
    [Theory]
    [InlineData(40)]
    [InlineData(120)]
    [InlineData(3200)]
    [InlineData(6000)]
    public void OutsideItsRangeTheLawStillGivesGas(double temperature)
    {
        var gas = new GasColumn(1, 2);
        PipeRig.AirLaw.Set(gas, 0, [0, 0], 300, 0, 1e5);
        gas.Total[1] = gas.Density[1] * PipeRig.AirMixture.Energy(temperature);
        Padding(PipeRig.AirLaw, gas, [0, 0]);
        for (var turn = 0; turn < 8; turn++)
        {
            PipeRig.AirLaw.Solve(gas);
        }

        Assert.InRange(gas.Temperature[1], 1, 4000);
        Assert.True(gas.Pressure[1] > 0 && gas.Sound[1] > 0 && gas.Degrees[1] > 1);
    }

    private static (PipeGas Law, double[] Shares, Mix Mix) Of(string mixture)
    {
        var petrol = new PipeGas(Rich.AirMixture, Fuels.Petrol95, Rich.Frozen);
        var methanol = new PipeGas(Methanol.AirMixture, Fuels.Methanol, Methanol.Frozen);
        return mixture switch
        {
            "air" => (petrol, [0, 0], new(Rich, Fuels.Petrol95, [0, 0])),
            "burned" => (petrol, [0, 1], new(Rich, Fuels.Petrol95, [0, 1])),
            "fuel and air" => (petrol, [0.07, 0], new(Rich, Fuels.Petrol95, [0.07, 0])),
            "a bit of all" => (petrol, [0.04, 0.3], new(Rich, Fuels.Petrol95, [0.04, 0.3])),
            "methanol and air" => (methanol, [0.15, 0], new(Methanol, Fuels.Methanol, [0.15, 0])),
            _ => (methanol, [0, 1], new(Methanol, Fuels.Methanol, [0, 1])),
        };
    }

    private static void Padding(PipeGas law, GasColumn gas, ReadOnlySpan<double> shares)
    {
        for (var cell = gas.Cells; cell < gas.Density.Length - 1; cell++)
        {
            law.Set(gas, cell, shares, 300, 0, 1e5);
        }
    }

    /// <summary>A mixture of air, fuel vapour and burned gas by the NASA polynomials themselves.</summary>
    private sealed record Mix(GasTable Table, Fuel Fuel, double[] Shares)
    {
        private double AirShare => 1 - Shares[0] - Shares[1];

        public double R => (AirShare * Table.AirMixture.GasConstant) + (Shares[0] * Fuel.VapourGasConstant) + (Shares[1] * Table.Frozen.GasConstant);

        public double Energy(double t) => (AirShare * Table.AirMixture.Energy(t)) + (Shares[0] * Fuel.VapourEnergy(t)) + (Shares[1] * Table.Frozen.Energy(t));

        public double Gamma(double t)
        {
            var cp = (AirShare * Table.AirMixture.HeatCapacity(t)) + (Shares[0] * Fuel.VapourHeatCapacity(t)) + (Shares[1] * Table.Frozen.HeatCapacity(t));
            return cp / (cp - R);
        }
    }

    private static void Report(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
