using CsCheck;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Simulation.Tests.ValveTrain;

/// <summary>What a valve train does, against the rigid train and against sense.</summary>
public class TrainBehaviourTests
{
    private static readonly TrainOptions Usual = new();

    /// <summary>VT-08: 250 N, 45 N/mm, 60 g, 8.5 mm over 150° of cam leave the nose at 5683.02 cam rpm, by equilibrium.</summary>
    [Fact]
    public void RigidTrainComesApartAtThePublishedSpeed()
    {
        var liftOff = RigidTrain.LiftOff(Trains.FloatCase());
        Assert.Equal(5683.02, liftOff.Speed / Trains.Rpm, 0.01);
        Assert.Equal(0, liftOff.Angle, 1e-9);
        Assert.Equal(0, RigidTrain.LeastContactForce(Trains.FloatCase(), liftOff.Speed).Force, 1e-9);
        var margin = ValveFloat.Margin(60e-3, 250, 45e3, 8.5e-3, 150 * Trains.Degree, 10000 * Trains.Rpm);
        Assert.Equal(margin.LeastMargin, RigidTrain.LeastContactForce(Trains.FloatCase(), 5000 * Trains.Rpm).Force, 1e-4 * margin.LeastMargin);
    }

    /// <summary>The same train marched with a very stiff contact leaves its cam within 3 % of the rigid estimate.</summary>
    [Fact]
    public void StiffTrainLiftsOffNearTheRigidEstimate()
    {
        var spec = Trains.FloatCase() with { CamStiffness = 1e9, CamDamping = 0.3 };
        var sweep = TrainSweep.Over(new TrainModel(spec), new SpeedRange(5000 * Trains.Rpm, 6500 * Trains.Rpm, 7), Usual, new TrainThresholds(2e-6));
        Assert.Equal(LimitKind.Found, sweep.LiftOff.Kind);
        Assert.Equal(5683.02, sweep.LiftOff.Speed / Trains.Rpm, 0.03 * 5683);
    }

    /// <summary>Turned slowly, the valve follows the cam, and the cam carries springs, gas and friction.</summary>
    [Fact]
    public void TurnedSlowlyTheTrainIsQuasiStatic()
    {
        var spec = Trains.Finger() with { GuideFriction = 0 };
        var speed = 50 * Trains.Rpm;
        var trace = new TrainModel(spec).At(speed, Usual with { TracePoints = 720 }).Motion!.Trace!;
        for (var i = 0; i < trace.Angles.Length; i++)
        {
            if (trace.CamLift[i] > 0.5e-3)
            {
                var expected = RigidTrain.ContactForce(spec, speed, trace.Angles[i]);
                Assert.Equal(expected, trace.CamForce[i], 0.02 * expected);
                Assert.Equal(trace.CamLift[i], trace.Lift[i], 0.08e-3);
            }
        }
    }

    [Fact]
    public void MoreSpringFloatsLaterAndMoreMassEarlier() => Gen.Select(Gen.Double[1.1, 1.6], Gen.Double[1.1, 1.6]).Sample(
        (spring, mass) =>
        {
            var spec = Trains.FloatCase();
            var usual = LiftOff(spec);
            Assert.True(LiftOff(spec with { Springs = [new SpringColumn(45e3 * spring, 250 * spring, 0) { Elements = 1 }] }) > usual);
            Assert.True(LiftOff(spec with { ValveMass = spec.ValveMass * mass }) < usual);
        },
        iter: 6);

    /// <summary>Without float the cam lets the valve down: it lands as quickly as the cam lowers it there, and harder on more lash.</summary>
    [Fact]
    public void ValveLandsAsTheCamLowersIt()
    {
        const double Speed = 2000 * Trains.Rpm;
        double Landing(double lash)
        {
            var spec = Trains.FloatCase() with { Lash = lash };
            var motion = new TrainModel(spec).At(Speed, Usual).Motion!;

            // The seat gives by 5 µm under the springs, the contact by 2.5 µm and a little for what the valve is slowed by.
            Assert.Equal(lash + 7.8e-6, spec.Profile.At(motion.SeatingAngle!.Value).Lift, 1e-6);
            Assert.Equal(-spec.Profile.At(motion.SeatingAngle.Value).Slope * Speed, motion.SeatingVelocity!.Value, 0.02 * motion.SeatingVelocity.Value);
            return motion.SeatingVelocity.Value;
        }

        Assert.True(Landing(0.4e-3) > 1.3 * Landing(0.2e-3));
    }

    /// <summary>On a soft seat, which lets steps be long, the landing is still met to the moment: 50 µm before rest, and 2.6 µm for the contact.</summary>
    [Fact]
    public void LandingIsMetToTheMoment()
    {
        var spec = Trains.FloatCase() with { Lash = 0.2e-3, SeatStiffness = 5e6 };
        var motion = new TrainModel(spec).At(2000 * Trains.Rpm, Usual with { Tolerance = 1e-4 }).Motion!;
        Assert.Equal(0.2526e-3, spec.Profile.At(motion.SeatingAngle!.Value).Lift, 0.8e-6);
    }

    /// <summary>What is taken down step by step is what a dense trace shows.</summary>
    [Fact]
    public void FiguresAreThoseOfTheTrace()
    {
        var motion = new TrainModel(Trains.FloatCase()).At(6500 * Trains.Rpm, Usual with { TracePoints = 28800 }).Motion!;
        var trace = motion.Trace!;
        Assert.Equal(trace.CamForce.Max(), motion.GreatestCamForce, 0.01 * motion.GreatestCamForce);
        Assert.Equal(trace.Lift.Max(), motion.GreatestLift, 1e-8);
        var rest = 250 / 5e7;
        var landed = Array.FindIndex(trace.Angles, a => a > motion.SeatingAngle!.Value);
        Assert.True(trace.Lift[landed - 1] >= rest - 1e-7 && trace.Lift[landed + 1] < rest);
        Assert.Equal(-trace.Velocity[landed - 1], motion.SeatingVelocity!.Value, 0.01 * motion.SeatingVelocity.Value);
        var after = trace.Lift[landed..];
        Assert.Equal(after.Max() - rest, motion.BounceHeight, 1e-7);
        var crossings = after.Zip(after.Skip(1)).Count(p => p.First <= rest + 1e-5 && p.Second > rest + 1e-5);
        Assert.Equal(crossings, motion.Bounces);
        Assert.True(motion.Bounces >= 2);
    }

    /// <summary>Lash taken up on a flank knocks the follower off the cam; float, where the cam falls away, is told apart from it.</summary>
    [Fact]
    public void KnockIsNotTakenForFloat()
    {
        var slow = new TrainModel(Trains.Finger() with { Lash = 0.4e-3 }).At(3500 * Trains.Rpm, Usual).Motion!;
        Assert.InRange(slow.Knock!.From / Trains.Degree, -75, -60);
        Assert.True(slow.Knock.Gap > 20e-6 && (slow.Lost?.Gap ?? 0) < 5e-6);
        var quick = new TrainModel(Trains.FloatCase()).At(6000 * Trains.Rpm, Usual).Motion!;
        Assert.InRange(quick.Lost!.From / Trains.Degree, -30, 0);
        Assert.True(quick.Lost.Gap > 100e-6 && quick.Lost.To > 0);
    }

    /// <summary>Heavily damped contacts still do not stick: where parts leave each other no force pulls them back.</summary>
    [Fact]
    public void NothingPulls()
    {
        var spec = Trains.FloatCase() with { CamDamping = 1, SeatDamping = 1 };
        var trace = new TrainModel(spec).At(6000 * Trains.Rpm, Usual with { TracePoints = 14400 }).Motion!.Trace!;
        Assert.Equal(0, trace.CamForce.Min());
        Assert.Equal(0, TrainForces.Push(10, -11));
        Assert.Equal(0, TrainForces.Push(-1, 20));
        Assert.Equal(4, TrainForces.Push(10, -6));
    }

    /// <summary>A third of the spring's mass counts at the valve when nothing surges, whatever the number of elements.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(20)]
    public void ThirdOfTheSpringCounts(int elements)
    {
        var column = new ColumnLayout(new SpringColumn(30e3, 200, 60e-3) { Elements = elements }, 1);
        var moved = Enumerable.Range(1, elements - 1).Sum(i => column.BodyMass * i * i / (elements * (double)elements));
        Assert.Equal(20e-3, moved + column.EndMass, 1e-15);
    }

    [Fact]
    public void SurgingSpringLiftsOffEarlierThanASilentOne()
    {
        var spec = Trains.FloatCase();
        var silent = LiftOff(spec with { Springs = [new SpringColumn(45e3, 250, 45e-3) { Elements = 1 }] });
        var surging = LiftOff(spec with { Springs = [new SpringColumn(45e3, 250, 45e-3)] });
        Assert.True(surging < silent);
    }

    [Fact]
    public void CoilsClashWhereTheirRoomIsShort()
    {
        var spec = Trains.FloatCase() with { Springs = [new SpringColumn(45e3, 250, 45e-3, 8.7e-3)] };
        var slow = new TrainModel(spec).At(500 * Trains.Rpm, Usual).Motion!.Springs[0];
        var quick = new TrainModel(spec).At(5000 * Trains.Rpm, Usual).Motion!.Springs[0];
        Assert.Equal(1 - (8.5 / 8.7), slow.LeastRoom!.Value, 5e-3);
        Assert.True(quick.LeastRoom < 0);
        Assert.True(quick.Surge > 2 * slow.Surge);
    }

    /// <summary>Squeezed slowly beyond bind, the coils take load as their clash stiffness says: thirty times the rate.</summary>
    [Fact]
    public void CoilsThatTouchCarry()
    {
        var spec = Trains.FloatCase() with { Springs = [new SpringColumn(45e3, 250, 20e-3, 8e-3)] };
        var spring = new TrainModel(spec).At(100 * Trains.Rpm, Usual).Motion!.Springs[0];
        Assert.Equal(250 + (45e3 * 8.5e-3) + (30 * 45e3 * 0.5e-3), spring.GreatestForce, 20.0);
        Assert.Equal(1 - (8.5 / 8), spring.LeastRoom!.Value, 2e-3);
    }

    [Fact]
    public void GasThatOpensTheValveTakesTheTrainApartEarlier()
    {
        var pushed = Trains.FloatCase() with { Gas = new GasForce([-1, 1], [100, 100]) };
        Assert.True(LiftOff(pushed) < LiftOff(Trains.FloatCase()));
        Assert.Equal(Math.Sqrt((632.5 - 100) / 632.5) * 5683.02, RigidTrain.LiftOff(pushed).Speed / Trains.Rpm, 0.1);
    }

    /// <summary>An undamped spring never comes to repeat itself; that is said, and there is no motion to look at.</summary>
    [Fact]
    public void WhatDoesNotSettleIsNoResult()
    {
        var spec = Trains.FloatCase() with { Springs = [new SpringColumn(45e3, 250, 45e-3) { Damping = 0 }] };
        var point = new TrainModel(spec).At(4321 * Trains.Rpm, Usual with { MaxRevolutions = 12 });
        Assert.False(point.Settled);
        Assert.Null(point.Motion);
        Assert.Contains("did not repeat within 12 turns", point.WhyNot, StringComparison.Ordinal);
        Assert.Equal(12, point.Revolutions);
    }

    [Fact]
    public void SweepStopsWhenToldAndReportsItsProgress()
    {
        using var stop = new CancellationTokenSource();
        var told = new List<double>();
        var progress = new Counter(share =>
        {
            told.Add(share);
            if (told.Count == 3)
            {
                stop.Cancel();
            }
        });
        var options = Usual with { DegreeOfParallelism = 1, Cancellation = stop.Token, Progress = progress };
        Assert.Throws<OperationCanceledException>(() => TrainSweep.Over(new TrainModel(Trains.FloatCase()), new SpeedRange(100, 400, 40), options));
        Assert.Equal([1 / 40.0, 2 / 40.0, 3 / 40.0], told);
    }

    [Fact]
    public void LimitsSayHowTheyWereFound()
    {
        var model = new TrainModel(Trains.FloatCase());
        Assert.Equal(LimitKind.NotReached, TrainSweep.Over(model, new SpeedRange(100, 200, 3), Usual).LiftOff.Kind);
        Assert.Equal(LimitKind.Passed, TrainSweep.Over(model, new SpeedRange(700, 720, 2), Usual).LiftOff.Kind);
    }

    /// <summary>Just below a limit its threshold is kept, at it it is passed.</summary>
    [Fact]
    public void LimitsLieWhereTheThresholdsArePassed()
    {
        var model = new TrainModel(Trains.FloatCase());
        var sweep = TrainSweep.Over(model, new SpeedRange(5000 * Trains.Rpm, 6600 * Trains.Rpm, 9), Usual);
        Assert.Equal((LimitKind.Found, LimitKind.Found), (sweep.LiftOff.Kind, sweep.Bounce.Kind));
        TrainMotion At(double speed) => model.At(speed, Usual).Motion!;
        Assert.InRange(At(sweep.LiftOff.Speed).Lost!.Gap, 0.05e-3, 0.06e-3);
        Assert.InRange(At(sweep.LiftOff.Speed - 0.15).Lost!.Gap, 0.04e-3, 0.05e-3);
        Assert.True(At(sweep.Bounce.Speed).BounceHeight > 0.1e-3);
        Assert.True(At(sweep.Bounce.Speed - 0.15).BounceHeight <= 0.1e-3);
    }

    private static double LiftOff(TrainSpec spec)
    {
        var limit = TrainSweep.Over(new TrainModel(spec), new SpeedRange(2500 * Trains.Rpm, 9000 * Trains.Rpm, 27), Usual, new TrainThresholds(10e-6)).LiftOff;
        Assert.Contains(limit.Kind, new[] { LimitKind.Found, LimitKind.Unsettled });
        return limit.Speed;
    }

    private sealed class Counter(Action<double> told) : IProgress<double>
    {
        public void Report(double value) => told(value);
    }
}
