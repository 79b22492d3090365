using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Simulation.Tests.ValveTrain;

/// <summary>What the march itself must hold to.</summary>
public class TrainMarchTests
{
    private static readonly TrainOptions Usual = new();

    public static TheoryData<TrainMethod> Methods => [TrainMethod.Explicit, TrainMethod.Implicit];

    [Theory]
    [MemberData(nameof(Methods))]
    public void WithoutDampingEnergyIsKept(TrainMethod method)
    {
        var spec = Trains.Finger() with { CamDamping = 0, TrainDamping = 0, SeatDamping = 0, GuideFriction = 0, Springs = [.. Trains.Finger().Springs.Select(s => s with { Damping = 0 })] };
        var layout = new TrainLayout(spec);
        var speed = 4000 * Trains.Rpm;
        var march = new TrainMarch(layout, speed, Usual with { Tolerance = method == TrainMethod.Explicit ? 1e-10 : 1e-9, Method = method });
        for (var turn = 0; turn < 3; turn++)
        {
            var watch = new RevolutionWatch(layout, speed, 0);
            Assert.True(march.Revolve(watch));
            var books = watch.Motion().Energy;
            Assert.Equal(0, books.Lost);
            Assert.True(books.Handled > 1);
            Assert.Equal(0, books.Unaccounted / books.Handled, 1e-6);
        }
    }

    [Theory]
    [InlineData(3000, 1e-4)]
    [InlineData(5500, 1e-3)]
    public void BooksBalanceWithEverythingInThem(double rpm, double tolerance)
    {
        var books = new TrainModel(Trains.Finger()).At(rpm * Trains.Rpm, Usual).Motion!.Energy;
        Assert.True(books.Lost > 0 && books.GasWork != 0);
        Assert.Equal(0, books.Unaccounted / books.Handled, tolerance);
    }

    /// <summary>The column of elements between two plates, set going in its first shape, against 0.5 √(R/m).</summary>
    [Fact]
    public void ColumnSurgesAtItsFrequencyAndTheErrorFallsWithTheSquareOfItsElements()
    {
        var exact = 0.5 * Math.Sqrt(30e3 / 30e-3);
        var errors = new[] { 8, 16, 32 }.Select(n => (FirstSurge(n) / exact) - 1).ToArray();
        Assert.InRange(errors[0], -7e-3, -6e-3);
        Assert.InRange(errors[0] / errors[1], 3.9, 4.1);
        Assert.InRange(errors[1] / errors[2], 3.9, 4.1);
    }

    /// <summary>Fifty periods at a hundredth of critical leave exp(−0.01 · 2π · 50).</summary>
    [Fact]
    public void SurgeDiesAwayAsItsDampingSays()
    {
        var (travel, velocity) = Surged(16, 0.01);
        var left = Math.Sqrt((travel * travel) + Math.Pow(velocity / (2 * Math.PI * 500), 2)) / 1e-3;
        Assert.Equal(Math.Exp(-Math.PI), left, 0.03 * left);
    }

    [Theory]
    [InlineData(3000)]
    [InlineData(4500)]
    [InlineData(5500)]
    public void ExplicitAndImplicitAgree(double rpm)
    {
        var model = new TrainModel(Trains.Finger());
        var one = model.At(rpm * Trains.Rpm, Usual with { Method = TrainMethod.Explicit, Tolerance = 1e-8 }).Motion!;
        var other = model.At(rpm * Trains.Rpm, Usual with { Method = TrainMethod.Implicit, Tolerance = 1e-8 }).Motion!;
        Assert.Equal(1, other.GreatestCamForce / one.GreatestCamForce, 2e-3);
        Assert.Equal(1, other.SeatingVelocity!.Value / one.SeatingVelocity!.Value, 5e-3);
        Assert.Equal(one.GreatestLift, other.GreatestLift, 1e-6);
        Assert.Equal(one.BounceHeight, other.BounceHeight, 2e-6);
        Assert.Equal(1, other.Springs[0].Surge / one.Springs[0].Surge, 5e-3);
    }

    [Fact]
    public void NoLiftIsSteppedOverFromRest()
    {
        var layout = new TrainLayout(Trains.FloatCase() with { Lash = 0.2e-3 });
        Assert.Equal(8.3e-3, HighestOf(layout, Usual), 0.05e-3);
    }

    /// <summary>Without the cap the steps grow on the base circle, where nothing happens, until they leap over a short lobe.</summary>
    [Fact]
    public void WithoutTheLongestStepALobeIsSteppedOver()
    {
        var layout = new TrainLayout(Trains.FloatCase() with { Profile = LiftProfile.Polynomial(1e-3, 8 * Trains.Degree) });
        var speed = 100 * Trains.Rpm;
        var stiff = Usual with { Method = TrainMethod.Implicit };
        Assert.True(HighestOf(layout, stiff, speed) > 0.9e-3);
        Assert.Equal(0, HighestOf(layout, stiff with { LongestStep = 10 }, speed), 1e-6);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void MarchingAllocatesNothing(TrainMethod method)
    {
        var march = new TrainMarch(new TrainLayout(Trains.Finger()), 5000 * Trains.Rpm, Usual with { Method = method });
        march.Revolve();
        var before = GC.GetAllocatedBytesForCurrentThread();
        march.Revolve();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>An order a step halved gives: the error falls by 2⁵ and by 2⁴.</summary>
    [Theory]
    [InlineData(TrainMethod.Explicit, 4.7, 5.4)]
    [InlineData(TrainMethod.Implicit, 3.7, 4.4)]
    public void FormulasAreOfTheirOrder(TrainMethod method, double low, double high)
    {
        var errors = new[] { 120, 240, 2400 }.Select(steps => Rung(method, steps)).ToArray();
        Assert.InRange(Math.Log2(Math.Abs(errors[0] - errors[2]) / Math.Abs(errors[1] - errors[2])), low, high);
    }

    /// <summary>The tree solved from its leaves, against the Jacobian by differences of the rates: on the cam, on the seat, with coils in clash.</summary>
    [Theory]
    [InlineData(-0.5, 1)]
    [InlineData(0.2, 1)]
    [InlineData(2.5, 0)]
    public void TreeSolvesTheJacobian(double angle, double onCam)
    {
        var spec = Trains.Finger();
        spec = spec with { Springs = [spec.Springs[0] with { BindTravel = 3e-3 }, spec.Springs[1]] };
        var layout = new TrainLayout(spec);
        var forces = new TrainForces(layout, 4000 * Trains.Rpm, angle);
        var (state, n) = (new double[layout.Size], layout.Bodies);
        if (onCam > 0)
        {
            StartOnCam(layout, forces, state, angle);
        }

        state[n] += 0.004;
        var tangent = new TrainTangent(layout);
        tangent.Take(forces, 0, state);
        const double Inverse = 3e4;
        tangent.Factor(Inverse);
        var (right, x) = (new double[layout.Size], new double[layout.Size]);
        for (var i = 0; i < 2 * n; i++)
        {
            right[i] = Math.Sin(1 + (3 * i)) * (i < n ? 1e-3 : 1);
        }

        tangent.Solve(right, x);
        const double Step = 1e-3;
        double[] Moved(double way)
        {
            var rates = new double[layout.Size];
            forces.Rates(0, [.. state.Zip(x, (s, d) => s + (way * Step * d))], rates);
            return rates;
        }

        var (ahead, behind) = (Moved(1), Moved(-1));
        for (var i = 0; i < 2 * n; i++)
        {
            Assert.Equal(right[i], (Inverse * x[i]) - ((ahead[i] - behind[i]) / (2 * Step)), 1e-5);
        }
    }

    /// <summary>A stiff seat and light parts turned slowly: the automatic choice takes the stiff formula and agrees with it.</summary>
    [Fact]
    public void AutomaticTurnsToTheStiffFormulaWhereThatIsCheaper()
    {
        var spec = Trains.FloatCase() with { CamStiffness = 5e8, SeatStiffness = 5e8, CamDamping = 1, SeatDamping = 1 };
        var march = new TrainMarch(new TrainLayout(spec), 60 * Trains.Rpm, Usual);
        march.Revolve();
        var explicitTrials = march.Trials;
        march.Revolve();
        march.Revolve();
        Assert.True(march.Stiffly);
        Assert.True(march.Trials < explicitTrials / 10, $"{march.Trials} trials against {explicitTrials}");
    }

    private static double HighestOf(TrainLayout layout, TrainOptions options, double speed = 3000 * Trains.Rpm)
    {
        var march = new TrainMarch(layout, speed, options);
        var watch = new RevolutionWatch(layout, speed, 0);
        march.Revolve(watch);
        return watch.Motion().GreatestLift;
    }

    /// <summary>Travel of a ringing valve on a smooth part of its way after fixed steps, with cam, gas and springs at work.</summary>
    private static double Rung(TrainMethod method, int steps)
    {
        var layout = new TrainLayout(Trains.Finger() with { GuideFriction = 0, Gas = null });
        var forces = new TrainForces(layout, 4000 * Trains.Rpm, -0.5);
        var perError = new double[layout.Size];
        IStep stepper = method == TrainMethod.Explicit ? new ExplicitStep(forces, perError) : new ImplicitStep(layout, forces, perError);
        var (now, rates, next, nextRates) = (new double[layout.Size], new double[layout.Size], new double[layout.Size], new double[layout.Size]);
        StartOnCam(layout, forces, now, -0.5);
        forces.Rates(0, now, rates);
        var step = 1e-3 / steps;
        for (var i = 0; i < steps; i++)
        {
            stepper.Try(i * step, step, now, rates, next, nextRates);
            (now, next, rates, nextRates) = (next, now, nextRates, rates);
        }

        return now[0];
    }

    private static void StartOnCam(TrainLayout layout, TrainForces forces, double[] state, double angle)
    {
        var point = layout.Spec.Profile.At(angle);
        var (travel, speed, n) = (point.Lift - layout.Spec.Lash - 60e-6, point.Slope * forces.Speed, layout.Bodies);
        (state[0], state[1], state[n], state[n + 1]) = (travel, travel + 40e-6, speed, speed);
        foreach (var spring in layout.Springs)
        {
            for (var i = 1; i < spring.Elements; i++)
            {
                var share = (double)i / spring.Elements;
                (state[spring.First + i - 1], state[n + spring.First + i - 1]) = (share * travel, share * speed);
            }
        }
    }

    private static double FirstSurge(int elements)
    {
        var (travel, velocity) = Surged(elements, 0);

        // Near 50 periods in the turn of 0.1 s: the phase at its end tells the frequency.
        return 10 * (50 + (Math.Atan2(-velocity / (2 * Math.PI * 500), travel) / (2 * Math.PI)));
    }

    /// <summary>Middle of a column between plates, a millimetre out in its first shape, after 0.1 s.</summary>
    private static (double Travel, double Velocity) Surged(int elements, double damping)
    {
        // The valve weighs so much and its seat is so hard that it holds still; the cam is far away.
        var spring = new SpringColumn(30e3, 500, 30e-3) { Elements = elements, Damping = damping };
        var layout = new TrainLayout(Trains.FloatCase() with { ValveMass = 10, FollowerMass = 0, Lash = 1, SeatStiffness = 1e10, Springs = [spring] });
        var march = new TrainMarch(layout, 20 * Math.PI, new TrainOptions { Tolerance = 1e-11 });
        for (var i = 1; i < elements; i++)
        {
            march.State[layout.Springs[0].First + i - 1] = 1e-3 * Math.Sin(Math.PI * i / elements);
        }

        march.Revolve();
        var middle = layout.Springs[0].First + (elements / 2) - 1;
        return (march.State[middle], march.State[layout.Bodies + middle]);
    }
}
