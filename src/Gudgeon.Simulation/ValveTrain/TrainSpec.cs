namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// One valve with its cam, follower, seat and springs as lumped masses, all of them as they count at the valve: a mass on the
/// cam's side of a rocker of ratio q (valve lift over cam lift) is divided by q², a stiffness too. SI.
/// </summary>
public sealed record TrainSpec
{
    /// <summary>Kinematic lift at the valve, lash not taken off.</summary>
    public required LiftProfile Profile { get; init; }

    /// <summary>Lash at the valve as it is when the engine runs, m; 0 or more.</summary>
    public double Lash { get; init; }

    /// <summary>What moves with the stem: valve, retainer, collets, shim or lash cap; without its springs; kg.</summary>
    public required double ValveMass { get; init; }

    /// <summary>Bucket, or the finger's or rocker's inertia over the square of its arm to the valve, kg; 0 or more, above 0 with a <see cref="TrainStiffness"/>.</summary>
    public double FollowerMass { get; init; }

    /// <summary>Stiffness of the contact of cam and follower with camshaft and bearings behind it, N/m.</summary>
    public double CamStiffness { get; init; } = 2e7;

    /// <summary>Share of critical damping of the follower on that contact.</summary>
    public double CamDamping { get; init; } = 0.05;

    /// <summary>Stiffness between follower and valve: the bending of finger or rocker and its pivot, N/m; null for a bucket, which moves as one with the valve.</summary>
    public double? TrainStiffness { get; init; }

    /// <summary>Share of critical damping between follower and valve.</summary>
    public double TrainDamping { get; init; } = 0.05;

    /// <summary>Stiffness of seat, valve head and stem against closing, N/m.</summary>
    public double SeatStiffness { get; init; } = 5e7;

    /// <summary>Share of critical damping of the valve on its seat.</summary>
    public double SeatDamping { get; init; } = 0.1;

    /// <summary>The springs on the valve, one or more; at least one of them holds it shut.</summary>
    public required IReadOnlyList<SpringColumn> Springs { get; init; }

    /// <summary>Gas force on the valve; null for none.</summary>
    public GasForce? Gas { get; init; }

    /// <summary>Friction of the stem in its guide, N, against the motion; led through zero below 0.02 m/s.</summary>
    public double GuideFriction { get; init; }

    /// <summary>Load of all springs with the valve shut, N.</summary>
    public double ShutLoad => Springs.Sum(s => s.ShutLoad);

    /// <summary>Rate of all springs, N/m.</summary>
    public double Rate => Springs.Sum(s => s.Rate);

    /// <summary>What the train weighs at the valve when all of it moves as one: a third of each spring counts; kg.</summary>
    public double RigidMass => ValveMass + FollowerMass + Springs.Sum(s => s.ActiveMass / 3);
}

/// <summary>
/// A spring as a column of equal elements with its mass between them, so that it can surge. One end rests in the head, the
/// other moves with the valve; both only push.
/// </summary>
/// <param name="Rate">Static rate, N/m.</param>
/// <param name="ShutLoad">Load with the valve shut, N; 0 or more.</param>
/// <param name="ActiveMass">Mass of the coils that deflect, kg; 0 for a spring that cannot surge, which has one element.</param>
/// <param name="BindTravel">Travel from the valve shut until the coils touch, m; infinite when not looked at.</param>
public sealed record SpringColumn(double Rate, double ShutLoad, double ActiveMass, double BindTravel = double.PositiveInfinity)
{
    /// <summary>Share of critical damping of the first surge; higher ones are damped more, as their frequencies.</summary>
    public double Damping { get; init; } = 0.02;

    /// <summary>Elements of the column; 8 or more to surge truly, 1 for a spring that carries a third of its mass at the valve and does not surge.</summary>
    public int Elements { get; init; } = 8;
}
