using System.Globalization;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Simulation.Tests.Sprint;

public class StandingStartTests(ITestOutputHelper output)
{
    /// <summary>
    /// Common practice, no published source: about 300 hp and 300 to 330 kg all up run the quarter in 8.5 to 9.9 s.
    /// </summary>
    [Theory]
    [InlineData(1.1)]
    [InlineData(1.2)]
    [InlineData(1.4)]
    [InlineData(1.6)]
    public void ThreeHundredHorsepowerRunsTheQuarterInEightToNineSeconds(double friction)
    {
        var run = StandingStart.Run(Machines.ThreeHundredHorsepower(friction));
        var quarter = run.At(402.336)!;
        output.WriteLine($"friction {friction}: 60 ft {run.Splits[0].Time:0.000} s, 1/8 {run.At(201.168)!.Time:0.000} s, 1/4 {quarter.Time:0.000} s at {quarter.TrapSpeed / 0.44704:0.0} mph; {string.Join(", ", run.LimitTimes.Select(l => $"{l.Key} {l.Value:0.00} s"))}; shifts {string.Join(", ", run.Shifts.Select(s => $"{s.Time:0.00} s {s.EngineSpeedBefore / Machines.Rpm:0}>{s.EngineSpeedAfter / Machines.Rpm:0}"))}; {run.Trace.Count} points; unaccounted {run.Energy.Unaccounted / run.Energy.EngineWork:g3}");
        Assert.InRange(quarter.Time, 8.5, 9.9);
        Assert.InRange(quarter.TrapSpeed / 0.44704, 140, 175);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.6)]
    public void EveryJouleOfTheEngineIsAccountedFor(double friction)
    {
        var energy = StandingStart.Run(Machines.ThreeHundredHorsepower(friction)).Energy;
        Assert.True(energy.EngineWork > 1e6);
        Assert.True(energy is { ClutchSlip: > 0, Shifts: > 0, Driveline: > 0, Drag: > 0, Rolling: > 0 });
        Assert.Equal(0, energy.Unaccounted / energy.EngineWork, 1e-9);
    }

    /// <summary>Without shift gaps: a gap taken earlier can cost a grip-limited run some microseconds.</summary>
    [Fact]
    public void MorePowerIsNeverSlower()
    {
        var times = Enumerable.Range(0, 12).Select(i => Scaled(0.6 + (0.1 * i))).Select(spec => Time(spec with { Driveline = spec.Driveline with { ShiftTime = 0 } })).ToArray();
        Assert.All(times.Zip(times.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1e-7));
        Assert.True(times[^1] < times[0] - 1);
    }

    /// <summary>Ballast at the centre of gravity leaves traction and wheelie accelerations as they are, and costs wherever power or drag count.</summary>
    [Fact]
    public void HeavierIsNeverQuicker()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var times = Enumerable.Range(0, 10).Select(i => 1 + (0.05 * i))
            .Select(more => Time(spec with { Machine = spec.Machine with { Mass = 230 * more }, Rider = spec.Rider with { Mass = 80 * more } })).ToArray();
        Assert.All(times.Zip(times.Skip(1)), pair => Assert.True(pair.Second > pair.First));
    }

    [Fact]
    public void BestShiftsAreNotBeatenByAnyCommonShiftSpeed()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var best = Time(spec with { Driveline = spec.Driveline with { ShiftTime = 0 } });
        for (var rpm = 9500; rpm <= 11300; rpm += 200)
        {
            var shifts = Enumerable.Repeat(rpm * Machines.Rpm, 5).ToArray();
            Assert.True(best <= Time(spec with { Driveline = spec.Driveline with { ShiftTime = 0, ShiftSpeeds = shifts } }) + 1e-3);
        }
    }

    [Fact]
    public void HeadWindCostsAndTailWindGives()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var (tail, still, head) = (Time(Wind(-5)), Time(Wind(0)), Time(Wind(5)));
        Assert.True(tail < still && still < head);

        SprintSpec Wind(double speed) => spec with { Air = spec.Air with { HeadWind = speed } };
    }

    /// <summary>The limits together take as long as the run does, roll-out and all.</summary>
    [Theory]
    [InlineData(201.168)]
    [InlineData(402.336)]
    public void TheLimitsShareTheTimeOfTheRunAmongThem(double distance)
    {
        var run = StandingStart.Run(Machines.ThreeHundredHorsepower(1.2));
        Assert.Equal(run.RolloutTime + run.At(distance)!.Time, run.TimeUnder(distance).Sum(t => t.Seconds), 0.03);
    }

    [Fact]
    public void SplitsDoNotDependOnHowFarTheRunGoes()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var mile = StandingStart.Run(spec with { Strip = spec.Strip with { Finish = 1609.344 } });
        Assert.Equal(["60 ft", "330 ft", "1/8 mile", "1000 ft", "1/4 mile", "1 km", "1 mile"], mile.Splits.Select(s => s.Name));
        Assert.Equal(Time(spec), mile.At(402.336)!.Time, 1e-6);
    }

    [Fact]
    public void RunThatCannotMoveOffSaysSo()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var run = StandingStart.Run(spec with { Wheels = spec.Wheels with { RollingResistance = 0.5 }, Driveline = spec.Driveline with { ClutchCapacity = 1 } });
        Assert.False(run.Finished);
        Assert.Contains("does not move off", run.Ending, StringComparison.Ordinal);
        Assert.Empty(run.Splits);
    }

    [Fact]
    public void RunThatCrawlsSaysHowFarItCame()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var run = StandingStart.Run(spec with { Air = spec.Air with { DragArea = 10 }, Driveline = spec.Driveline with { ClutchCapacity = 10 }, Strip = spec.Strip with { Finish = 5000 } });
        Assert.False(run.Finished);
        Assert.InRange(run.Distance, 1, 4999);
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"After 600 s the machine has still not reached the end. It came {run.Distance:0.0} m past the start beam."), run.Ending);
    }

    [Fact]
    public void TorqueScaleFindsTheTimeAgain()
    {
        var spec = Machines.ThreeHundredHorsepower();
        var wanted = Time(Scaled(0.8));
        var found = StandingStart.TorqueScaleFor(spec, wanted);
        Assert.True(found.Possible);
        Assert.Equal(0.8, found.Scale, 1e-6);
    }

    [Fact]
    public void TorqueScaleSaysWhenGripForbidsTheTime()
    {
        var found = StandingStart.TorqueScaleFor(Machines.ThreeHundredHorsepower(friction: 0.8), 7.5);
        Assert.False(found.Possible);
        Assert.True(found.BestTime > 7.5);
        Assert.Equal(SprintLimit.Traction, found.ChiefLimit);
    }

    [Fact]
    public void TraceIsInOrder()
    {
        var run = StandingStart.Run(Machines.ThreeHundredHorsepower());
        Assert.All(run.Trace.Zip(run.Trace.Skip(1)), pair => Assert.True(pair.Second.Time >= pair.First.Time && pair.Second.Distance >= pair.First.Distance));
        Assert.Equal(run.Trace[^1].Time - run.Trace[0].Time, run.LimitTimes.Values.Sum(), 1e-9);
        Assert.All(run.Trace, p => Assert.Equal(310 * 9.80665, p.FrontLoad + p.RearLoad, 1e-6));
    }

    [Fact]
    public void RunTakesMilliseconds()
    {
        var spec = Machines.ThreeHundredHorsepower();
        StandingStart.Run(spec);
        var fastest = Enumerable.Range(0, 20).Min(_ =>
        {
            var watch = System.Diagnostics.Stopwatch.StartNew();
            StandingStart.Run(spec);
            return watch.Elapsed.TotalMilliseconds;
        });
        output.WriteLine($"{fastest:0.00} ms");
        Assert.InRange(fastest, 0, 10);
    }

    private static double Time(SprintSpec spec) => StandingStart.Run(spec).At(402.336)!.Time;

    private static SprintSpec Scaled(double factor)
    {
        var spec = Machines.ThreeHundredHorsepower();
        return spec with { Engine = spec.Engine with { Torques = [.. spec.Engine.Torques.Select(t => t * factor)] } };
    }
}
