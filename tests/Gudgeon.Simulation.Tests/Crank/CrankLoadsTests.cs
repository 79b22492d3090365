using CsCheck;
using Gudgeon.Calc.Crank;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Simulation.Tests.Crank;

public class CrankLoadsTests
{
    private const int Steps = 1440;

    private static readonly double[] Cycle = [.. Enumerable.Range(0, Steps).Select(i => 4 * Math.PI * i / Steps)];

    private static readonly double[] Nothing = new double[Steps];

    private static CrankThrow Throw(double piston, double rod, double bore = 0.076) => new() { Pin = 0, Bore = bore, Rod = rod, Piston = piston, SmallEnd = 0, BigEnd = 0 };

    /// <summary>Reference SC-13: piston set 0.265 kg, rod 0.330 kg of which 30 % small end, r 27.5, l 104 mm, 12000 rpm, overlap TDC (two masses at the exact dead centre).</summary>
    [Fact]
    public void PullsAtOverlapTopDeadCentreAreThoseOfTheReference()
    {
        var line = new CrankLine { Radius = 0.0275, Throws = [Throw(0.265, 0.104) with { SmallEnd = 0.099, BigEnd = 0.231 }] };
        var one = CrankLoads.Of(line, 12000 * Math.PI / 30, Cycle, [Nothing]).Throws[0];
        Assert.Equal(-14550.9, one.PinAlong[0], 0.1);
        Assert.Equal(30018.4, one.Radial[0], 0.1);
        Assert.Equal(30018.4, one.BigEnd.Y[0], 0.1);
        Assert.Equal(0, one.BigEnd.X[0], 1e-6);
    }

    /// <summary>Reference BA-06: a right-angled V-twin on one pin has a primary force of constant size that turns with the crank; its secondary lies across the V.</summary>
    [Fact]
    public void ARightAngledTwinShakesAsTheTextbookHasIt()
    {
        const double Speed = 9500 * Math.PI / 30, Radius = 0.034, Rod = 0.124, Mass = 0.45;
        var line = new CrankLine { Radius = Radius, Mains = [-0.05, 0.05], Throws = [Throw(Mass, Rod), Throw(Mass, Rod) with { Bank = Math.PI / 2, Firing = Math.PI / 2 }] };
        var loads = CrankLoads.Of(line, Speed, Cycle, [Nothing, Nothing]);
        var (x, y) = OnTheCase(loads);
        foreach (var i in new[] { 0, 100, 200, 300, 700 })
        {
            var (sin, cos) = Math.SinCos(Cycle[i]);
            Assert.Equal(15142.4 * sin, Harmonic(x, 1)(Cycle[i]), 1.0);
            Assert.Equal(15142.4 * cos, Harmonic(y, 1)(Cycle[i]), 1.0);
        }

        // The exact second harmonic in place of r / l; along (1, −1), across the line between the banks.
        var secondary = Math.Sqrt(2) * AccelerationHarmonics.Of(Radius / Rod).Second * Mass * Radius * Speed * Speed;
        Assert.InRange(secondary, 5871.76, 1.03 * 5871.76);
        Assert.Equal(secondary / Math.Sqrt(2), Harmonic(y, 2)(0), 1.0);
        Assert.Equal(-secondary / Math.Sqrt(2), Harmonic(x, 2)(0), 1.0);
    }

    [Fact]
    public void TheTorqueDoesTheWorkOfTheGas() =>
        Gen.Select(Gen.Double[0.05, 0.1], Gen.Double[0.02, 0.05], Gen.Double[2.6, 5], Gen.Double[-0.06, 0.06], Gen.Double[100, 1200]).Sample((bore, radius, slenderness, offset, speed) =>
        {
            var one = Throw(0.4, slenderness * radius, bore) with { Offset = offset * radius, SmallEnd = 0.1, BigEnd = 0.3 };
            var pressure = Array.ConvertAll(Cycle, a => 2e6 + (3e6 * Math.Cos(a / 2)) + (1e6 * Math.Sin(a)));
            var loads = CrankLoads.Of(new CrankLine { Radius = radius, Throws = [one] }, speed, Cycle, [pressure]);
            var volume = Array.ConvertAll(Cycle, a => Math.PI / 4 * bore * bore * SliderCrank.Motion(radius, one.Rod, a, speed, one.Offset).Travel);
            var work = Enumerable.Range(0, Steps).Sum(i => pressure[i] * (volume[(i + 1) % Steps] - volume[(i + Steps - 1) % Steps]) / 2);
            Assert.Equal(work, loads.Torque.Average() * 4 * Math.PI, 2e-3 * Math.PI / 4 * bore * bore * 2 * radius * 3e6);
        });

    [Fact]
    public void MainsCarryWhatThePinsBringAndItsMoment() =>
        Gen.Select(Gen.Double[-0.2, 0.2], Gen.Double[0.02, 0.1], Gen.Double[0.02, 0.1]).Sample((position, first, second) =>
        {
            double[] mains = [-first, 0, second];
            var shares = CrankLoads.Shares(mains, position).ToList();
            Assert.Equal(1, shares.Sum(s => s.Share), 1e-12);
            Assert.Equal(position, shares.Sum(s => s.Share * mains[s.Main]), 1e-12);
            Assert.Equal(position <= 0 ? [0, 1] : [1, 2], shares.Select(s => s.Main));
        });

    [Fact]
    public void CounterweightsTakeTheirShareOffTheMains()
    {
        var bare = new CrankLine { Radius = 0.03, Mains = [-0.04, 0.04], Throws = [Throw(0.3, 0.12) with { SmallEnd = 0.1, BigEnd = 0.3 }] };
        double Load(double bobWeight) => CrankLoads.Of(bare with { BobWeight = bobWeight }, 800, Cycle, [Nothing]).Mains[0].Y[0];
        Assert.Equal(0.3 * 0.03 * 800 * 800 / 2, Load(0) - Load(0.3), 1e-6);
    }

    [Fact]
    public void ACourseKeepsItsSizeInAxesThatTurn()
    {
        var course = new LoadCourse([3, 0, -1], [4, 2, 0]);
        var turned = course.Turned(i => 0.7 * (i + 1));
        Assert.Equal([5, 2, 1], Enumerable.Range(0, 3).Select(i => Math.Round(turned.At(i), 12)));
        Assert.Equal(0, course.Turned(i => Math.Atan2(course.X[i], course.Y[i])).X[0], 1e-12);
    }

    /// <summary>What shakes the crankcase: the crank on its mains and the pistons on their walls; the gas pushes on the head as much as on the piston, and there is none here.</summary>
    private static (double[] X, double[] Y) OnTheCase(CrankLoads loads)
    {
        var (x, y) = (new double[Steps], new double[Steps]);
        for (var i = 0; i < Steps; i++)
        {
            foreach (var one in loads.Throws)
            {
                var (sin, cos) = Math.SinCos(one.Throw.Bank);
                x[i] -= one.Side[i] * cos;
                y[i] += one.Side[i] * sin;
            }

            x[i] += loads.Mains.Sum(m => m.X[i]);
            y[i] += loads.Mains.Sum(m => m.Y[i]);
        }

        return (x, y);
    }

    private static Func<double, double> Harmonic(double[] course, int order)
    {
        var cos = 2.0 / Steps * course.Zip(Cycle, (c, a) => c * Math.Cos(order * a)).Sum();
        var sin = 2.0 / Steps * course.Zip(Cycle, (c, a) => c * Math.Sin(order * a)).Sum();
        return a => (cos * Math.Cos(order * a)) + (sin * Math.Sin(order * a));
    }
}
