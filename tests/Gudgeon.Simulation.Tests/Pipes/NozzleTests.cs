using System.Globalization;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>Steady flow without friction through tapers, open mouths and throats, against the closed forms of isentropic flow.</summary>
public class NozzleTests
{
    private const double Rest = 1.0e5, Warm = 300;

    private static double Gamma(double temperature) => PipeRig.AirMixture.HeatCapacityRatio(temperature);

    private static double R => PipeRig.AirMixture.GasConstant;

    /// <summary>Reservoir, converging taper, open end: choked from 0.528 of the pressure down.</summary>
    [Theory]
    [InlineData(0.9e5)]
    [InlineData(0.7e5)]
    [InlineData(0.4e5)]
    [InlineData(0.1e5)]
    public void AConvergingNozzleFlowsAsItsEndAllows(double outside)
    {
        var rig = Rig(new(1, PipeRig.Frictionless, 0.6 * PipeRig.Frictionless), new(PipeRig.AirLaw, Rest, Warm), new(PipeRig.AirLaw, outside, Warm));
        var flow = rig.Settle();
        var gamma = Gamma(270);
        var expected = OrificeFlow.MassFlow(rig.Pipe.Last.Area, Rest, outside, Warm, gamma: gamma, gasConstant: R);
        Report($"outside {outside:F0}: flow over closed form {flow / expected:F5}");
        Assert.Equal(1, flow / expected, 0.001);
        var sonicArea = flow / OrificeFlow.Choked(Rest, Warm, gamma, R).MassFlux;
        for (var cell = 0; cell < rig.Cells - 3; cell++)
        {
            var area = rig.Pipe.Duct.Volume[cell] / rig.Pipe.Duct.CellLength;
            Assert.Equal(1, rig.Mach(cell) / IsentropicFlow.MachFromAreaRatio(area / sonicArea, gamma: gamma), 0.002);
        }
    }

    /// <summary>A straight pipe without friction has one Mach number: that of its pressure in the table of isentropic flow.</summary>
    [Theory]
    [InlineData(0.98e5)]
    [InlineData(0.8e5)]
    [InlineData(0.6e5)]
    public void AnOpenEntryOfOneHeadIsIsentropic(double outside)
    {
        var rig = Rig(Taper.Straight(1, PipeRig.Frictionless), new(PipeRig.AirLaw, Rest, Warm), new(PipeRig.AirLaw, outside, Warm));
        rig.Settle();
        var mach = IsentropicFlow.MachFromPressureRatio(outside / Rest, Gamma(280));
        Assert.All(Enumerable.Range(0, rig.Cells), i => Assert.Equal(1, rig.Mach(i) / mach, 0.0005));
        Assert.All(Enumerable.Range(0, rig.Cells), i => Assert.Equal(1, rig.Pressure(i) / outside, 0.0005));
    }

    /// <summary>An entry of one and a half heads: the pressure beyond is the pipe's and one and a half times what it would gain at rest.</summary>
    [Fact]
    public void AnEntryLossCostsItsHeads()
    {
        const double Outside = 0.9e5, Heads = 1.5;
        var rig = Rig(Taper.Straight(1, PipeRig.Frictionless), new(PipeRig.AirLaw, Rest, Warm) { Heads = Heads }, new(PipeRig.AirLaw, Outside, Warm));
        rig.Settle();
        var total = Outside / IsentropicFlow.Ratios(rig.Mach(rig.Cells / 2), Gamma(290)).PressureRatio;
        Assert.Equal(Rest - Outside, Heads * (total - Outside), 0.001 * (Rest - Outside));
    }

    /// <summary>A throat at the end: isentropic from the rest in the reservoir to the pressure beyond, whatever the pipe before it.</summary>
    [Theory]
    [InlineData(0.9e5, 0.3)]
    [InlineData(0.6e5, 0.3)]
    [InlineData(0.2e5, 0.3)]
    [InlineData(0.9e5, 0.8)]
    [InlineData(0.6e5, 0.8)]
    [InlineData(0.2e5, 0.8)]
    [InlineData(0.2e5, 0.95)]
    public void AThroatAtTheEndFlowsFromRest(double outside, double opening)
    {
        var throat = opening * Area;
        var rig = Rig(Taper.Straight(1, PipeRig.Frictionless), new(PipeRig.AirLaw, Rest, Warm), new(PipeRig.AirLaw, outside, Warm) { Throat = throat });
        var flow = rig.Settle();
        var expected = OrificeFlow.MassFlow(throat, Rest, outside, Warm, gamma: Gamma(275), gasConstant: R);
        Report($"outside {outside:F0}, opening {opening}: flow over closed form {flow / expected:F5}");
        Assert.Equal(1, flow / expected, 0.001);
    }

    /// <summary>A throat at the entry: isentropic to the pressure in the pipe; the head of the jet is lost and its heat stays.</summary>
    [Theory]
    [InlineData(0.9e5, 0.3)]
    [InlineData(0.6e5, 0.3)]
    [InlineData(0.2e5, 0.15)]
    [InlineData(0.9e5, 0.8)]
    public void AThroatAtTheEntryLosesItsHead(double outside, double opening)
    {
        var throat = opening * Area;
        var rig = Rig(Taper.Straight(1, PipeRig.Frictionless), new(PipeRig.AirLaw, Rest, Warm) { Throat = throat }, new(PipeRig.AirLaw, outside, Warm));
        var flow = rig.Settle();
        var expected = OrificeFlow.MassFlow(throat, Rest, outside, Warm, gamma: Gamma(275), gasConstant: R);
        var middle = rig.Cells / 2;
        var t = rig.Pipe.Gas.Temperature[middle + 1];
        Report($"outside {outside:F0}, opening {opening}: flow over closed form {flow / expected:F5}; rest temperature {t + (rig.Velocity(middle) * rig.Velocity(middle) / (2 * PipeRig.AirMixture.HeatCapacity(t))):F3}");
        Assert.Equal(1, flow / expected, 0.001);
        Assert.Equal(1, rig.Pressure(middle) / outside, 0.001);
        Assert.Equal(Warm, t + (rig.Velocity(middle) * rig.Velocity(middle) / (2 * PipeRig.AirMixture.HeatCapacity(t))), 0.02);
    }

    /// <summary>
    /// A taper that doubles or halves the area over 8 cells: what the scheme loses there of itself, in dynamic heads of the
    /// narrow part. It falls with the square of the number of cells and grows as the flow gets slower.
    /// </summary>
    [Theory]
    [InlineData(0.8, 4, true, 0.008)]
    [InlineData(0.8, 4, false, 0.008)]
    [InlineData(0.5, 8, true, 0.015)]
    [InlineData(0.5, 8, false, 0.015)]
    public void ASteepTaperLosesLittle(double ratio, int cells, bool widening, double most)
    {
        var (loss, mach) = Loss(ratio, cells, widening, 0.4);
        Report($"areas 1 to {1 / ratio:F2} over {cells} cells: loss coefficient {loss:F4} at Mach {mach:F3}; all at once it would be {PipeFriction.SuddenExpansion(ratio, 1):F4}");
        Assert.InRange(mach, 0.25, 0.35);
        Assert.InRange(loss, -1e-3, most);
    }

    private static (double K, double Mach) Loss(double ratio, int cells, bool widening, double throat)
    {
        const double Cell = 0.02;
        var (narrow, wide) = (PipeRig.Frictionless * Math.Sqrt(ratio), PipeRig.Frictionless);
        var (from, to) = widening ? (narrow, wide) : (wide, narrow);
        List<Taper> tapers = [Taper.Straight(0.5, from), Taper.Straight(0.5, to)];
        if (cells > 0)
        {
            tapers.Insert(1, new(cells * Cell, from, to));
        }

        var rig = new PipeRig(new Duct(tapers, Cell))
        {
            First = new Reservoir(PipeRig.AirLaw, 1.4 * Rest, Warm) { Throat = throat * Math.PI / 4 * narrow * narrow },
            Last = new Reservoir(PipeRig.AirLaw, Rest, Warm),
        };
        rig.Fill(_ => (Warm, 0, Rest));
        rig.Settle(1e-5, 30_000);
        double Total(int cell) => rig.Pressure(cell) / IsentropicFlow.Ratios(Math.Abs(rig.Mach(cell)), Gamma(Warm)).PressureRatio;
        var slim = widening ? rig.Cells / 4 : 3 * rig.Cells / 4;
        return ((Total(rig.Cells / 4) - Total(3 * rig.Cells / 4)) / (0.5 * rig.Pipe.Gas.Density[slim + 1] * rig.Velocity(slim) * rig.Velocity(slim)), rig.Mach(slim));
    }

    /// <summary>The pipe turned round flows the same the other way.</summary>
    [Theory]
    [InlineData(0.8e5)]
    [InlineData(0.3e5)]
    public void ThePipeTurnedRoundFlowsTheSame(double outside)
    {
        var (from, to) = (PipeRig.Frictionless, 0.7 * PipeRig.Frictionless);
        var there = Rig(new(1, from, to), new(PipeRig.AirLaw, Rest, Warm), new(PipeRig.AirLaw, outside, Warm)).Settle();
        var back = Rig(new(1, to, from), new(PipeRig.AirLaw, outside, Warm), new(PipeRig.AirLaw, Rest, Warm)).Settle();
        Assert.Equal(-1, back / there, 1e-6);
    }

    private static double Area => Math.PI / 4 * PipeRig.Frictionless * PipeRig.Frictionless;

    private static PipeRig Rig(Taper taper, Reservoir first, Reservoir last)
    {
        var rig = new PipeRig(new Duct([taper], 0.01)) { First = first, Last = last };
        rig.Fill(_ => (Warm, 0, 0.5 * (first.Gas.Pressure + last.Gas.Pressure)));
        return rig;
    }

    private static void Report(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
