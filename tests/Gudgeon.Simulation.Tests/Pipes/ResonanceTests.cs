using System.Globalization;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>Small waves in pipes sound at the frequencies of acoustics; without end corrections, which have no place in one dimension.</summary>
public class ResonanceTests
{
    private const double Warm = 293.15, Still = 101_325, Length = 0.6, Loud = 40;

    private static double Sound => Acoustics.SoundSpeed(Warm, PipeRig.AirMixture.HeatCapacityRatio(Warm), PipeRig.AirMixture.GasConstant);

    private static Reservoir Outside => new(PipeRig.AirLaw, Still, Warm);

    /// <summary>A pipe closed at its first end and open at its last: odd quarter waves.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void AClosedAndOpenPipeSoundsOddQuarterWaves(int mode)
    {
        var rig = Rig(new ClosedStop(), Outside, x => Math.Cos(((2 * mode) - 1) * Math.PI * x / (2 * Length)));
        Check(Acoustics.QuarterWave(Length, Sound, mode), Frequency(rig, _ => rig.Pressure(0), 12, mode));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void AnOpenPipeSoundsHalfWaves(int mode)
    {
        var rig = Rig(Outside, Outside, x => Math.Sin(mode * Math.PI * x / Length));
        Check(Acoustics.HalfWave(Length, Sound, mode), Frequency(rig, _ => rig.Pressure(rig.Cells / (2 * mode)), 12, mode));
    }

    [Fact]
    public void AClosedPipeSoundsHalfWaves()
    {
        var rig = Rig(new ClosedStop(), new ClosedStop(), x => Math.Cos(Math.PI * x / Length));
        Check(Acoustics.HalfWave(Length, Sound), Frequency(rig, _ => rig.Pressure(0), 12, 1));
    }

    /// <summary>A neck on a volume: a spring of air and a slug of it; and, closer, with the compression of the air in the neck: kL tan kL = A L / V.</summary>
    [Theory]
    [InlineData(0.10, 0.02, 1e-3)]
    [InlineData(0.06, 0.03, 3e-3)]
    public void AVolumeWithANeckIsHelmholtzsResonator(double length, double diameter, double volume)
    {
        var vessel = new RigVolume(PipeRig.AirLaw, volume, Warm, Still + Loud);
        var rig = new PipeRig(new Duct([Taper.Straight(length, diameter)], length / 12)) { First = vessel, Last = Outside };
        rig.Fill(_ => (Warm, 0, Still));
        var found = Frequency(rig, _ => vessel.Pressure, 8, 1);
        var area = rig.Pipe.First.Area;
        Report($"found {found:F3} Hz, Helmholtz {Acoustics.Helmholtz(area, length, volume, Sound):F3}, with the neck's own air {WithNeck(area, length, volume):F3}");
        Assert.Equal(1, found / Acoustics.Helmholtz(area, length, volume, Sound), 0.02);
        Assert.Equal(1, found / WithNeck(area, length, volume), 0.0006);
    }

    /// <summary>Volume and neck together hold what they held, less what went out of the mouth.</summary>
    [Fact]
    public void AVolumeGetsWhatThePipeGives()
    {
        var vessel = new RigVolume(PipeRig.AirLaw, 1e-3, 400, 2e5);
        var rig = new PipeRig(new Duct([Taper.Straight(0.1, 0.02)], 0.01)) { First = vessel };
        rig.Fill(_ => (300, 0, 1e5));
        (double Mass, double Energy) Held() => (
            vessel.Mass + Enumerable.Range(0, rig.Cells).Sum(i => rig.Pipe.Duct.Volume[i] * rig.Pipe.Gas.Density[i + 1]),
            vessel.Energy + Enumerable.Range(0, rig.Cells).Sum(i => rig.Pipe.Duct.Volume[i] * rig.Pipe.Gas.Total[i + 1]));
        var before = Held();
        rig.Until(0.05);
        var after = Held();
        Assert.Equal(1, after.Mass / before.Mass, 1e-12);
        Assert.Equal(1, after.Energy / before.Energy, 1e-12);
    }

    private static double WithNeck(double area, double length, double volume)
    {
        var (low, high) = (1e-3, 1.5);
        for (var k = 0; k < 60; k++)
        {
            var x = 0.5 * (low + high);
            (low, high) = x * Math.Tan(x) > area * length / volume ? (low, x) : (x, high);
        }

        return low * Sound / (2 * Math.PI * length);
    }

    private static PipeRig Rig(IPipeStop first, IPipeStop last, Func<double, double> shape)
    {
        var rig = new PipeRig(new Duct([Taper.Straight(Length, 0.04)], 0.01)) { First = first, Last = last };
        var gamma = PipeRig.AirMixture.HeatCapacityRatio(Warm);
        rig.Fill(x => (Warm * Math.Pow(1 + (Loud * shape(x) / Still), (gamma - 1) / gamma), 0, Still + (Loud * shape(x))));
        return rig;
    }

    /// <summary>Frequency from the first to the last of so many zeros of a pressure over the still one, a straight line between steps.</summary>
    private static double Frequency(PipeRig rig, Func<PipeRig, double> pressure, int zeros, int mode)
    {
        var found = new List<double>();
        var (time, before) = (0.0, pressure(rig) - Still);
        for (var step = 0; found.Count < zeros && step < 100_000; step++)
        {
            rig.March(rig.Step() / mode);
            var now = pressure(rig) - Still;
            if (before * now < 0)
            {
                found.Add(time + ((rig.Time - time) * before / (before - now)));
            }

            (time, before) = (rig.Time, now);
        }

        return 0.5 * (zeros - 1) / (found[^1] - found[0]);
    }

    private static void Check(double expected, double found)
    {
        Report($"found {found:F3} Hz, acoustics {expected:F3} Hz");
        Assert.Equal(1, found / expected, 0.001);
    }

    private static void Report(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
