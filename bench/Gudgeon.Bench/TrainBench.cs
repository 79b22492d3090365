using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Bench;

/// <summary>Valve-train dynamics: one turn of a cam against a plain loop, springs that surge, a sweep.</summary>
internal static class TrainBench
{
    private const int Turns = 40;
    private const double Rpm = Math.PI / 30;

    private static readonly TrainSpec TwoMasses = new()
    {
        Profile = LiftProfile.Polynomial(8.5e-3, 150 * Math.PI / 180),
        Lash = 0.1e-3,
        ValveMass = 40e-3,
        FollowerMass = 20e-3,
        TrainStiffness = 1.5e7,
        Springs = [new SpringColumn(45e3, 250, 0) { Elements = 1 }],
    };

    private static readonly TrainSpec TwoSprings = TwoMasses with
    {
        Springs = [new SpringColumn(28e3, 160, 30e-3, 12e-3), new SpringColumn(17e3, 90, 15e-3, 12e-3)],
    };

    /// <summary>One turn of the cam at 9000 rpm of it and of the crank, from rest.</summary>
    public static void Turn()
    {
        foreach (var rpm in new[] { 9000, 4500 })
        {
            var speed = rpm * Rpm;

            // What the plain loop allows in velocity, 1e-6 m/s and more, as a share of the cam's greatest lifting speed.
            var same = new TrainOptions { Tolerance = 1e-6 / (TwoMasses.Profile.GreatestSlope * speed) };
            SideBySide.Run(
                FormattableString.Invariant($"one turn of a cam at {rpm} rpm from rest, two masses; {Trials(TwoMasses, speed, same)} trial steps, plain loop {PlainTrain.Revolve(speed)}"),
                "µs",
                1e6 / Turns,
                ("plain loop, 1e-6 absolute and relative", () => Repeat(() => PlainTrain.Revolve(speed))),
                ("the march, error of a step 1e-6 m/s", () => Repeat(() => Trials(TwoMasses, speed, same))),
                ("the march, its usual tolerance", () => Repeat(() => Trials(TwoMasses, speed, new TrainOptions()))),
                ("implicit, its usual tolerance", () => Repeat(() => Trials(TwoMasses, speed, new TrainOptions { Method = TrainMethod.Implicit }))),
                ("two springs of eight elements", () => Repeat(() => Trials(TwoSprings, speed, new TrainOptions()))));
        }
    }

    /// <summary>A very stiff train turned slowly: what the implicit formula is for.</summary>
    public static void Stiff()
    {
        var hard = TwoMasses with { CamStiffness = 5e8, TrainStiffness = null, SeatStiffness = 5e8 };
        SideBySide.Run(
            "one turn at 300 rpm from rest, contacts of 5e8 N/m",
            "µs",
            1e6,
            ("explicit", () => Trials(hard, 300 * Rpm, new TrainOptions { Method = TrainMethod.Explicit })),
            ("implicit", () => Trials(hard, 300 * Rpm, new TrainOptions { Method = TrainMethod.Implicit })));
    }

    /// <summary>Forty speeds to where the motion repeats, with both limits.</summary>
    public static void Sweep()
    {
        var model = new TrainModel(TwoSprings);
        var range = new SpeedRange(1000 * Rpm, 6000 * Rpm, 40);
        SideBySide.Run(
            "40 cam speeds until they repeat, both limits halved for, two springs",
            "ms",
            1e3,
            ("one core", () => TrainSweep.Over(model, range, new TrainOptions { DegreeOfParallelism = 1 })),
            ("two cores", () => TrainSweep.Over(model, range, new TrainOptions { DegreeOfParallelism = 2 })));
    }

    private static int Trials(TrainSpec spec, double speed, TrainOptions options)
    {
        var march = new TrainMarch(new TrainLayout(spec), speed, options);
        march.Revolve();
        return march.Trials;
    }

    private static void Repeat(Action turn)
    {
        for (var i = 0; i < Turns; i++)
        {
            turn();
        }
    }
}
