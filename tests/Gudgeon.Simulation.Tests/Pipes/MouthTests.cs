using CsCheck;
using Gudgeon.Calc.Gas;
using Gudgeon.Simulation.Pipes;
using PipeEnd = Gudgeon.Simulation.Pipes.PipeEnd;

namespace Gudgeon.Simulation.Tests.Pipes;

/// <summary>What must hold at every mouth, whatever arrives and whatever is beyond.</summary>
public class MouthTests
{
    private const double Area = 1.2e-3;

    /// <summary>What arrives may run away from the mouth as fast as it likes, but not towards it faster than sound: then the end no longer decides alone.</summary>
    private static readonly Gen<PipeEnd> Ends =
        from logP in Gen.Double[Math.Log(3e4), Math.Log(12e5)]
        from t in Gen.Double[250, 1500]
        from mach in Gen.Double[-2, 0.98]
        from gamma in Gen.Double[1.25, 1.4]
        select End(Math.Exp(logP), t, mach, gamma);

    private static readonly Gen<(double Temperature, double Gamma)> Rests = Gen.Select(Gen.Double[250, 1500], Gen.Double[1.25, 1.4]);

    private static readonly Gen<double> Openings = Gen.OneOf(Gen.Double[0.001, 1], Gen.Const(1.0));

    private static readonly Gen<double> Pressures = Gen.Double[Math.Log(2e4), Math.Log(15e5)].Select(Math.Exp);

    /// <summary>The more pressure beyond, the less flows out, or the more flows in.</summary>
    [Fact]
    public void FlowFallsAsThePressureBeyondRises() => Gen.Select(Ends, Rests, Openings, Pressures, Gen.Double[1.0001, 3]).Sample((end, rest, opening, pressure, more) =>
    {
        var low = Throat(end, At(pressure, rest), opening);
        var high = Throat(end, At(pressure * more, rest), opening);
        Assert.True(high.Outwards <= low.Outwards + (1e-6 * Scale(end, pressure * more, rest)), $"{low.Outwards} kg/s at {pressure} Pa, {high.Outwards} at {pressure * more}");
    }, iter: 20_000);

    /// <summary>A bit more pressure beyond changes the flow by a bit: no jump where it chokes or turns, in throats and open mouths of any loss.</summary>
    [Fact]
    public void FlowHasNoJumps() => Gen.Select(Ends, Rests, Openings, Pressures, Gen.Double[0, 2], Gen.Bool).Sample((end, rest, opening, pressure, heads, open) =>
    {
        MouthFlow Flow(double p) => open ? Mouth.Open(end, At(p, rest), Area, heads, 0) : Throat(end, At(p, rest), opening);
        var (low, high) = (Flow(pressure), Flow(pressure * 1.0001));
        var scale = Scale(end, pressure, rest);

        // At rest the flow grows with the root of the difference: steeper than that nothing may be.
        Assert.True(high.Outwards <= low.Outwards + (1e-6 * scale), $"{low.Outwards} kg/s at {pressure} Pa, {high.Outwards} above; {end}; {rest}; {opening}; heads {heads} {open}");
        Assert.True(Math.Abs(high.Outwards - low.Outwards) < 0.03 * scale, $"from {low.Outwards} to {high.Outwards} kg/s at {pressure} Pa; {end}; {rest}; {opening}; heads {heads} {open}");
    }, iter: 100_000);

    /// <summary>The same over the whole range in small steps, where an entry of any loss comes to the speed of sound.</summary>
    [Theory]
    [InlineData(0, 380)]
    [InlineData(0.3, 380)]
    [InlineData(1, 380)]
    [InlineData(1.5, 380)]
    [InlineData(2, 1500)]
    public void AnEntryChokesWithoutAJump(double heads, double temperature)
    {
        var end = End(1.5e5, temperature, 0, 1.3);
        var last = 0.0;
        for (var pressure = 1.5e5; pressure < 15e5; pressure *= 1.001)
        {
            var flow = Mouth.Open(end, At(pressure, (1200, 1.33)), Area, heads, 0).Outwards;
            Assert.InRange(flow - last, -0.03 * Scale(end, pressure, (1200, 1.33)), 1e-9);
            last = flow;
        }

        Assert.InRange(last, -10, -1);
    }

    /// <summary>Thin hot gas before cold gas of sixteen times its pressure: far beyond choking, and so at the choked flow. Critical flow of an ideal gas behind a loss of two heads, by hand.</summary>
    [Fact]
    public void AnEntryOfTwoHeadsIntoThinGasIsChoked()
    {
        const double Gamma = 1.3010752688172043, Rest = 968245.4091159553, Temperature = 292.1794305643486;
        var flow = Mouth.Open(new(0.21574012703248244, 0, 59874.14171519782, 801436.5541836037, 2.8877578710102503), At(Rest, (Temperature, Gamma)), Area, 2, 0);
        var critical = 287 * Temperature * 2 / (Gamma + 1);
        var pressure = Rest / (1 + (2 * (Math.Pow((Gamma + 1) / 2, Gamma / (Gamma - 1)) - 1)));
        Assert.Equal(pressure, flow.Pressure, 1e-6 * pressure);
        Assert.Equal(-pressure / critical * Math.Sqrt(Gamma * critical) * Area, flow.Outwards, 1e-6);
    }

    /// <summary>No more than a throat lets through at the speed of sound, from the rest of the side that gives.</summary>
    [Fact]
    public void NoMoreFlowsThanChoked() => Gen.Select(Ends, Rests, Openings, Pressures).Sample((end, rest, opening, pressure) =>
    {
        var flow = Throat(end, At(pressure, rest), opening);
        double most;
        if (flow.Outwards > 0)
        {
            // From the stagnation state in the pipe at the mouth.
            var rt = flow.Pressure / flow.Density;
            var heating = 1 + ((end.Gamma - 1) / 2 * flow.Velocity * flow.Velocity / (end.Gamma * rt));
            most = OrificeFlow.Choked(flow.Pressure * Math.Pow(heating, end.Gamma / (end.Gamma - 1)), rt * heating / 287, end.Gamma, 287).MassFlux;
        }
        else
        {
            most = OrificeFlow.Choked(pressure, rest.Temperature, rest.Gamma, 287).MassFlux;
        }

        Assert.True(Math.Abs(flow.Outwards) <= opening * Area * most * (1 + 1e-5), $"{flow.Outwards} kg/s of {opening * Area * most}; {end}; beyond {pressure} Pa; opening {opening}");
    }, iter: 20_000);

    /// <summary>What goes through the mouth is what flows in the pipe there, and its enthalpy is that of the side that gives.</summary>
    [Fact]
    public void TheMouthKeepsMassAndEnergy() => Gen.Select(Ends, Rests, Openings, Pressures, Gen.Bool).Sample((end, rest, opening, pressure, open) =>
    {
        var beyond = At(pressure, rest);
        var flow = open ? Mouth.Open(end, beyond, Area, 1.1, 0) : Throat(end, beyond, opening);
        Assert.Equal(flow.Density * flow.Velocity * Area, flow.Outwards, 1e-12 * Scale(end, pressure, rest));
        Assert.True(flow.Pressure > 0 && flow.Density > 0 && double.IsFinite(flow.Velocity));
        if (Math.Abs(flow.Outwards) < 1e-9 * Scale(end, pressure, rest))
        {
            return;
        }

        if (flow.Outwards < 0)
        {
            Assert.Equal(beyond.Enthalpy, flow.Enthalpy);
        }
        else
        {
            var energy = end.Energy + (end.Degrees * ((flow.Pressure / flow.Density) - (end.Pressure / end.Density)));
            Assert.Equal(energy + (flow.Pressure / flow.Density) + (0.5 * flow.Velocity * flow.Velocity), flow.Enthalpy, 1e-6 * Math.Abs(flow.Enthalpy));
        }
    }, iter: 20_000);

    /// <summary>Gas at rest against gas at rest of the same pressure: nothing flows. A gas that comes flows on, one that goes is followed.</summary>
    [Fact]
    public void AtEqualPressureOnlyWhatMovesFlows() => Gen.Select(Ends, Rests, Openings).Sample((end, rest, opening) =>
    {
        var still = end with { Outwards = 0 };
        var scale = Scale(end, end.Pressure, rest);
        Assert.Equal(0, Throat(still, At(end.Pressure, rest), opening).Outwards, 1e-6 * scale);
        Assert.Equal(0, Mouth.Open(still, At(end.Pressure, rest), Area, 1, 0).Outwards, 1e-6 * scale);
        if (Math.Abs(end.Outwards) > 1)
        {
            Assert.Equal(Math.Sign(end.Outwards), Math.Sign(Throat(end, At(end.Pressure, rest), opening).Outwards));
        }
    }, iter: 5_000);

    /// <summary>The pressure last time only helps the search: the answer is the same from any start.</summary>
    [Fact]
    public void TheStartOfTheSearchDoesNotMatter() => Gen.Select(Ends, Rests, Openings, Pressures, Pressures).Sample((end, rest, opening, pressure, start) =>
    {
        var beyond = At(pressure, rest);
        var one = Mouth.Throat(end, beyond, Area, opening * Area, opening * Area, 0);
        var other = Mouth.Throat(end, beyond, Area, opening * Area, opening * Area, start);
        Assert.True(Math.Abs(one.Outwards - other.Outwards) <= 1e-6 * Scale(end, pressure, rest), $"{one.Outwards} or {other.Outwards} kg/s; {end}; beyond {pressure} Pa {rest}; opening {opening}; start {start}");
    }, iter: 20_000);

    /// <summary>A shut throat is a wall.</summary>
    [Fact]
    public void AShutThroatIsAWall() => Gen.Select(Ends, Pressures).Sample((end, pressure) =>
    {
        var flow = Mouth.Throat(end, At(pressure, (300, 1.4)), Area, 0, 0, 0);
        Assert.Equal(0, flow.Outwards);
        Assert.Equal(0, flow.Velocity);
        Assert.Equal(Wall.Pressure(end.Density, end.Outwards, end.Pressure, end.Gamma), flow.Pressure);
    }, iter: 1_000);

    /// <summary>A nearly shut throat is nearly a wall; a fully open one nearly an open mouth, for gas that leaves.</summary>
    [Fact]
    public void BetweenShutAndOpenTheFlowGrows() => Gen.Select(Ends, Rests, Pressures, Gen.Double[0.01, 0.9], Gen.Double[1.001, 1.11]).Sample((end, rest, pressure, opening, more) =>
    {
        var beyond = At(pressure, rest);
        var (small, large) = (Throat(end, beyond, opening), Throat(end, beyond, opening * more));
        Assert.True(Math.Abs(large.Outwards) >= Math.Abs(small.Outwards) - (1e-6 * Scale(end, pressure, rest)), $"{small.Outwards} then {large.Outwards}; {end}; {pressure} {rest}; {opening} {more}");
        Assert.Equal(Math.Sign(small.Outwards), Math.Sign(large.Outwards));
    }, iter: 20_000);

    [Fact]
    public void AFullThroatIsAnOpenMouthForGasThatLeaves() => Gen.Select(Ends, Rests, Pressures).Sample((end, rest, pressure) =>
    {
        var open = Mouth.Open(end, At(pressure, rest), Area, 1, 0);
        if (open.Outwards > 0)
        {
            Assert.Equal(open.Outwards, Throat(end, At(pressure, rest), 1).Outwards, 1e-5 * Scale(end, pressure, rest));
        }
    }, iter: 5_000);

    private static MouthFlow Throat(in PipeEnd end, in Beyond beyond, double opening) => Mouth.Throat(end, beyond, Area, opening * Area, opening * Area, 0);

    private static PipeEnd End(double pressure, double temperature, double mach, double gamma)
    {
        var rt = 287 * temperature;
        return new(pressure / rt, mach * Math.Sqrt(gamma * rt), pressure, rt / (gamma - 1), 1 / (gamma - 1));
    }

    private static Beyond At(double pressure, (double Temperature, double Gamma) rest) =>
        new(pressure, 287 * rest.Temperature, rest.Gamma, rest.Gamma / (rest.Gamma - 1) * 287 * rest.Temperature);

    /// <summary>A mass flow to measure errors by: that of the denser side at its speed of sound.</summary>
    private static double Scale(in PipeEnd end, double pressure, (double Temperature, double Gamma) rest) =>
        Area * Math.Max(end.Density * end.Sound, pressure / Math.Sqrt(287 * rest.Temperature));
}
