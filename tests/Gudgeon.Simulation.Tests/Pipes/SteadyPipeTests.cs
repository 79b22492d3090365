using System.Globalization;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>Pipes with friction and heat in steady flow, against Fanno, Rayleigh and the equations of both together.</summary>
public class SteadyPipeTests
{
    private const double Diameter = 0.04, Roughness = 0.2e-3, Rest = 1.5e5, Warm = 300;

    private static double R => PipeRig.AirMixture.GasConstant;

    /// <summary>
    /// Reservoir, entry without loss, rough pipe, lower pressure. The closed form takes one friction factor (Haaland's at the
    /// temperature halfway) and one ratio of specific heats; the factor changes by less than 0.1 % along so rough a pipe.
    /// </summary>
    [Theory]
    [InlineData(2, 1.3e5)]
    [InlineData(3, 1.0e5)]
    [InlineData(4, 1.4e5)]
    public void FrictionMakesFannosMachNumbers(double length, double outside)
    {
        var rig = Rough(length, outside);
        var flow = rig.Settle();
        var (mach, flux, friction, gamma) = Fanno(length, m => PressureBehind(m.Mach, m.Length) - outside);
        Report($"mass flow {flow:E6}, Fanno {flux * Area:E6}; inlet Mach {rig.Mach(0):F5}, Fanno {mach:F5}");
        Assert.Equal(1, flow / (flux * Area), 0.0005);
        var lengthToSonic = FannoFlow.Ratios(mach, gamma).FrictionLength;
        for (var cell = 0; cell < rig.Cells; cell++)
        {
            var expected = FannoFlow.MachFromFrictionLength(lengthToSonic - (friction * rig.Place(cell) / Diameter), FlowBranch.Subsonic, gamma);
            Assert.Equal(1, rig.Mach(cell) / expected, 0.002);
        }

        double PressureBehind(double m, double l)
        {
            var (f, g) = Factors(m);
            var start = FannoFlow.Ratios(m, g);
            var left = start.FrictionLength - (f * l / Diameter);
            if (left <= 0)
            {
                return 0;
            }

            var end = FannoFlow.Ratios(FannoFlow.MachFromFrictionLength(left, FlowBranch.Subsonic, g), g);
            return Rest * IsentropicFlow.Ratios(m, g).PressureRatio * end.PressureRatio / start.PressureRatio;
        }
    }

    /// <summary>Into next to nothing: Mach 1 at the end, and no more flow than friction over the whole length lets through.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void AChokedPipeEndsAtMachOne(double length)
    {
        var rig = Rough(length, 0.2e5);
        var flow = rig.Settle();
        var (mach, flux, _, gamma) = Fanno(length, m => FannoFlow.Ratios(m.Mach, Factors(m.Mach).Gamma).FrictionLength - (Factors(m.Mach).Friction * m.Length / Diameter));
        ref readonly var mouth = ref rig.Pipe.Last.Flow;
        var atMouth = mouth.Velocity / Math.Sqrt(gamma * mouth.Pressure / mouth.Density);
        var critical = Rest * IsentropicFlow.Ratios(mach, gamma).PressureRatio / FannoFlow.Ratios(mach, gamma).PressureRatio;
        Report($"mass flow {flow:E6}, Fanno {flux * Area:E6}; Mach at the mouth {atMouth:F4}; pressure there {mouth.Pressure:F0}, p* {critical:F0}");
        Assert.Equal(1, atMouth, 0.001);
        Assert.Equal(1, flow / (flux * Area), 0.0005);
        Assert.Equal(1, mouth.Pressure / critical, 0.002);
    }

    /// <summary>The bends' loss acts as a friction length of the same coefficient.</summary>
    [Fact]
    public void BendsLoseTheirHeads()
    {
        const double Loss = 1.5, Outside = 1.38e5;
        var rig = new PipeRig(new Duct([Taper.Straight(2, PipeRig.Frictionless)], 0.02), bendLoss: Loss) { First = new Reservoir(PipeRig.AirLaw, Rest, Warm), Last = new Reservoir(PipeRig.AirLaw, Outside, Warm) };
        rig.Fill(_ => (Warm, 0, Outside));
        var flow = rig.Settle();
        var gamma = PipeRig.AirMixture.HeatCapacityRatio(295);
        var start = FannoFlow.MachFromFrictionLength(Loss + FannoFlow.Ratios(rig.Mach(rig.Cells - 1), gamma).FrictionLength, FlowBranch.Subsonic, gamma);
        var (_, _, flux) = GeneralFlow.FromRest(Rest, Warm, start);
        Assert.Equal(1, flow / (flux * rig.Pipe.First.Area), 0.002);
    }

    /// <summary>Heat without friction, little enough that the ratio of specific heats stays: Rayleigh's closed form.</summary>
    [Theory]
    [InlineData(500, 1.45e5)]
    [InlineData(160, 1.45e5)]
    [InlineData(420, 1.30e5)]
    public void HeatMakesRayleighsPressures(double wall, double outside)
    {
        var rig = Heated(wall, outside, heatScale: 3000);
        var flow = rig.Settle();
        var gamma = PipeRig.AirMixture.HeatCapacityRatio(0.5 * (rig.Pipe.Gas.Temperature[1] + rig.Pipe.Gas.Temperature[rig.Cells]));
        var (first, last) = (At(rig, 0), At(rig, rig.Cells - 1));
        var start = RayleighFlow.Ratios(first.Mach, gamma);
        var mach = RayleighFlow.MachFromStagnationTemperatureRatio(start.StagnationTemperatureRatio * last.Total / first.Total, FlowBranch.Subsonic, gamma);
        var end = RayleighFlow.Ratios(mach, gamma);
        Report($"flow {flow:E4}; T0 {first.Total:F1} to {last.Total:F1} K; Mach {first.Mach:F4} to {last.Mach:F4}, Rayleigh {mach:F4}; p2/p1 {last.Pressure / first.Pressure:F5}, Rayleigh {end.PressureRatio / start.PressureRatio:F5}");
        Assert.InRange(Math.Abs(last.Total - first.Total), 15, 120);
        Assert.Equal(1, last.Mach / mach, 0.001);
        Assert.Equal(end.PressureRatio / start.PressureRatio, last.Pressure / first.Pressure, 0.0003);
    }

    /// <summary>Friction and heat together, hot and cold walls: velocities and temperatures along the pipe.</summary>
    [Theory]
    [InlineData(900, 1.2e5, 1)]
    [InlineData(220, 1.2e5, 3)]
    [InlineData(700, 1.4e5, 8)]
    public void FrictionAndHeatTogetherFollowTheirEquations(double wall, double outside, double heatScale)
    {
        var rig = Rough(2, outside, heatScale);
        Array.Fill(rig.Pipe.Walls.Temperature, wall);
        var flow = rig.Settle();
        var law = new GeneralFlow { Diameter = Diameter, Roughness = Roughness, HeatScale = heatScale, WallTemperature = wall };
        var (low, high) = (0.01, 0.9);
        for (var k = 0; k < 60; k++)
        {
            var mach = 0.5 * (low + high);
            var (u, t, flux) = GeneralFlow.FromRest(Rest, Warm, mach);
            var (uEnd, tEnd) = law.Follow(flux, u, t, 2);
            var chokedOrLow = !(uEnd > u / 10 && uEnd * uEnd < 1.4 * R * tEnd && GeneralFlow.Pressure(flux, uEnd, tEnd) > outside);
            (low, high) = chokedOrLow ? (low, mach) : (mach, high);
        }

        var (u0, t0, g) = GeneralFlow.FromRest(Rest, Warm, low);
        Report($"flow {flow:E5}, equations {g * Area:E5}");
        Assert.Equal(1, flow / (g * Area), 0.0005);
        foreach (var cell in new[] { rig.Cells / 4, rig.Cells / 2, 3 * rig.Cells / 4, rig.Cells - 1 })
        {
            var (u, t) = law.Follow(g, u0, t0, rig.Place(cell));
            Assert.Equal(1, rig.Velocity(cell) / u, 0.002);
            Assert.Equal(1, rig.Pipe.Gas.Temperature[cell + 1] / t, 0.001);
        }
    }

    /// <summary>Once steady, what the walls give by their own books is what the gas carries out more than it brought in.</summary>
    [Fact]
    public void TheWallsBooksAgreeWithTheGas()
    {
        const double Wall = 600;
        var rig = Rough(2, 1.2e5, heatScale: 2);
        Array.Fill(rig.Pipe.Walls.Temperature, Wall);
        rig.Settle(1e-10);
        var walls = rig.Pipe.Walls;
        Array.Clear(walls.Coefficient);
        Array.Clear(walls.CoefficientTemperature);
        var dt = rig.Step();
        rig.March(dt);
        var given = Enumerable.Range(0, rig.Cells).Sum(i => 4 / rig.Pipe.Duct.Diameter[i] * rig.Pipe.Duct.Volume[i] * ((walls.Coefficient[i + 1] * Wall) - walls.CoefficientTemperature[i + 1])) / dt;
        var carried = (rig.Pipe.Gas.EnergyFlux[rig.Cells] - rig.Pipe.Gas.EnergyFlux[0]) * Area;
        Assert.InRange(given, 1000, 1e5);
        Assert.Equal(1, carried / given, 1e-5);
    }

    private static double Area => Math.PI / 4 * Diameter * Diameter;

    private static PipeRig Rough(double length, double outside, double heatScale = 0)
    {
        var rig = new PipeRig(new Duct([Taper.Straight(length, Diameter)], 0.02), roughness: Roughness, heatScale: heatScale)
        {
            First = new Reservoir(PipeRig.AirLaw, Rest, Warm),
            Last = new Reservoir(PipeRig.AirLaw, outside, Warm),
        };
        rig.Fill(_ => (Warm, 0, outside));
        return rig;
    }

    private static PipeRig Heated(double wall, double outside, double heatScale)
    {
        var rig = new PipeRig(new Duct([Taper.Straight(2, PipeRig.Frictionless)], 0.02), heatScale: heatScale)
        {
            First = new Reservoir(PipeRig.AirLaw, Rest, Warm),
            Last = new Reservoir(PipeRig.AirLaw, outside, Warm),
        };
        Array.Fill(rig.Pipe.Walls.Temperature, wall);
        rig.Fill(_ => (Warm, 0, outside));
        return rig;
    }

    private static (double Mach, double Pressure, double Total) At(PipeRig rig, int cell)
    {
        var t = rig.Pipe.Gas.Temperature[cell + 1];
        return (rig.Mach(cell), rig.Pressure(cell), t + (rig.Velocity(cell) * rig.Velocity(cell) / (2 * PipeRig.AirMixture.HeatCapacity(t))));
    }

    /// <summary>Friction factor and ratio of specific heats of the flow that enters with a Mach number.</summary>
    private static (double Friction, double Gamma) Factors(double mach)
    {
        var (_, t, flux) = GeneralFlow.FromRest(Rest, Warm, mach);
        return (PipeFriction.Haaland(flux * Diameter / AirTransport.Viscosity(0.95 * t), Roughness / Diameter), PipeRig.AirMixture.HeatCapacityRatio(0.95 * t));
    }

    /// <summary>Mach number at the entry at which something that falls with it is nothing.</summary>
    private static (double Mach, double Flux, double Friction, double Gamma) Fanno(double length, Func<(double Mach, double Length), double> left)
    {
        var (low, high) = (0.01, 0.95);
        for (var k = 0; k < 60; k++)
        {
            var mach = 0.5 * (low + high);
            (low, high) = left((mach, length)) > 0 ? (mach, high) : (low, mach);
        }

        var (friction, gamma) = Factors(low);
        return (low, GeneralFlow.FromRest(Rest, Warm, low).Flux, friction, gamma);
    }

    private static void Report(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
