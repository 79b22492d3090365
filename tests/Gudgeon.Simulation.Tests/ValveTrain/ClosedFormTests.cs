using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Simulation.Tests.ValveTrain;

/// <summary>Where the train is a linear oscillator its motion is known. Rao, Mechanical Vibrations: free, base-excited and shock response.</summary>
public class ClosedFormTests
{
    private const double Mass = 0.1;
    private const double Stiffness = 4.1e6;
    private static readonly TrainOptions Fine = new() { Tolerance = 1e-9, LongestStep = 0.01 };

    public static TheoryData<TrainMethod> Methods => [TrainMethod.Explicit, TrainMethod.Implicit];

    /// <summary>Base-excited steady state: a cam with s = A (1 + cos φ) all round, which drives through spring and damper.</summary>
    [Theory]
    [InlineData(TrainMethod.Explicit, 300)]
    [InlineData(TrainMethod.Implicit, 300)]
    [InlineData(TrainMethod.Explicit, 5000)]
    public void HarmonicCamGivesTheKnownAmplitude(TrainMethod method, double speed)
    {
        const double Amplitude = 0.2e-3;
        var angles = Enumerable.Range(0, 721).Select(i => (i - 360) * Math.PI / 360).ToArray();
        var profile = LiftProfile.FromPoints(angles, [.. angles.Select(a => new LiftPoint(Amplitude * (1 + Math.Cos(a)), -Amplitude * Math.Sin(a), -Amplitude * Math.Cos(a)))]);
        var layout = new TrainLayout(Trains.Oscillator(profile, 0.2));
        var march = new TrainMarch(layout, speed, Fine with { Method = method });
        march.State[0] = 1e-3;
        for (var turn = 0; turn < 200; turn++)
        {
            march.Revolve();
        }

        var watch = new RevolutionWatch(layout, speed, 360);
        march.Revolve(watch);
        var lift = watch.Motion().Trace!.Lift;
        var damping = 2 * 0.2 * Math.Sqrt(4e6 * Mass);
        var drive = new System.Numerics.Complex(4e6, damping * speed);
        var expected = Amplitude * (drive / new System.Numerics.Complex(Stiffness - (Mass * speed * speed), damping * speed)).Magnitude;
        Assert.Equal(expected, (lift.Max() - lift.Min()) / 2, 2e-4 * expected);
    }

    /// <summary>A cycloidal rise leaves an undamped follower ringing in the dwell with an amplitude known in closed form.</summary>
    [Theory]
    [InlineData(TrainMethod.Explicit, 3.3)]
    [InlineData(TrainMethod.Implicit, 3.3)]
    [InlineData(TrainMethod.Explicit, 1.5)]
    [InlineData(TrainMethod.Explicit, 6.4)]
    public void CycloidalRiseLeavesTheKnownResidual(TrainMethod method, double periodsInRise)
    {
        const double Lift = 1e-3;
        const double Rise = 1.0;
        var natural = Math.Sqrt(Stiffness / Mass);
        var speed = Rise * natural / (2 * Math.PI * periodsInRise);
        var layout = new TrainLayout(Trains.Oscillator(RiseDwellReturn(Lift, Rise), 0));
        var march = new TrainMarch(layout, speed, Fine with { Method = method });
        var rest = ((4e6 * 3e-3) - 8e3) / Stiffness;
        march.State[0] = rest;
        var watch = new RevolutionWatch(layout, speed, 7200);
        march.Revolve(watch);
        var trace = watch.Motion().Trace!;
        var dwell = trace.Lift.Where((_, i) => trace.Angles[i] is > -1.4 and < 1.4).ToArray();
        var time = Rise / speed;
        var turning = 2 * Math.PI / time;
        var input = 4e6 / Stiffness * Lift;
        var expected = input / time * 2 * Math.Abs(Math.Sin(natural * time / 2)) * turning * turning / (natural * Math.Abs((turning * turning) - (natural * natural)));
        Assert.Equal(expected, (dwell.Max() - dwell.Min()) / 2, 2e-3 * expected);
        Assert.Equal(rest + input, (dwell.Max() + dwell.Min()) / 2, 1e-3 * input);
    }

    /// <summary>A valve pressed into its seat and let go: a damped oscillation about rest.</summary>
    [Theory]
    [MemberData(nameof(Methods))]
    public void ValveOnItsSeatRingsFreely(TrainMethod method)
    {
        var spec = Trains.FloatCase() with { Lash = 1e-3, SeatDamping = 0.05 };
        var layout = new TrainLayout(spec);
        var speed = 1500.0;
        var march = new TrainMarch(layout, speed, Fine with { Method = method });
        march.State[0] = 1e-6;
        var watch = new RevolutionWatch(layout, speed, 3600);
        march.Revolve(watch);
        var trace = watch.Motion().Trace!;
        var (stiffness, mass) = (spec.SeatStiffness + 45e3, 60e-3);
        var decay = 0.05 * Math.Sqrt(spec.SeatStiffness / mass);
        var turning = Math.Sqrt((stiffness / mass) - (decay * decay));
        for (var i = 0; i < 200; i++)
        {
            var t = 2 * Math.PI / speed * i / 3600;
            var expected = 1e-6 * Math.Exp(-decay * t) * (Math.Cos(turning * t) + (decay / turning * Math.Sin(turning * t)));
            Assert.Equal(expected, trace.Lift[i], 1e-9);
        }
    }

    private static LiftProfile RiseDwellReturn(double lift, double rise)
    {
        const double HalfDwell = 1.5;
        var angles = Enumerable.Range(0, 2001).Select(i => (i - 1000) / 1000.0 * (HalfDwell + rise)).ToArray();
        return LiftProfile.FromPoints(angles, [.. angles.Select(At)]);

        LiftPoint At(double angle)
        {
            var u = Math.Min(1, (HalfDwell + rise - Math.Abs(angle)) / rise);
            var law = Gudgeon.Calc.ValveTrain.CamLaws.At(Gudgeon.Calc.ValveTrain.CamLaw.Cycloidal, u);
            return new LiftPoint(lift * law.Lift, -Math.Sign(angle) * lift * law.Slope / rise, lift * law.Curvature / (rise * rise));
        }
    }
}
