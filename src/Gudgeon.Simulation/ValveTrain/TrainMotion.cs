namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// One cam speed of a valve train. The motion exists only when it repeats from turn to turn; a speed at which it did not
/// settle has none to be mistaken for a result.
/// </summary>
/// <param name="Speed">Cam speed, rad/s.</param>
/// <param name="Revolutions">Turns of the cam marched.</param>
/// <param name="Residual">Largest change over the last turn, over full lift and the cam's greatest lifting speed.</param>
/// <param name="Motion">The settled motion; null when there is none.</param>
/// <param name="WhyNot">Why there is none, in one sentence; null when there is one.</param>
public sealed record TrainPoint(double Speed, int Revolutions, double Residual, TrainMotion? Motion, string? WhyNot)
{
    /// <summary>Whether the motion repeats.</summary>
    public bool Settled => Motion is not null;
}

/// <summary>The settled motion of a valve train over one turn of its cam, SI, angles from the nose of the lobe.</summary>
public sealed record TrainMotion
{
    /// <summary>Greatest lift of the valve off its seat, m.</summary>
    public required double GreatestLift { get; init; }

    /// <summary>Greatest force of the cam on the follower, at the valve, N.</summary>
    public required double GreatestCamForce { get; init; }

    /// <summary>Cam angle of it, rad.</summary>
    public required double GreatestCamForceAngle { get; init; }

    /// <summary>Float: the largest gap that opened where the cam falls away from the follower; null when there was none.</summary>
    public required Separation? Lost { get; init; }

    /// <summary>Knock: the largest gap that opened on a flank, where the cam pushes, as when lash is taken up on too quick a ramp; null when there was none.</summary>
    public required Separation? Knock { get; init; }

    /// <summary>Velocity with which the valve first meets its seat, m/s, positive; null when it never does.</summary>
    public required double? SeatingVelocity { get; init; }

    /// <summary>Cam angle of that, rad; null when it never does.</summary>
    public required double? SeatingAngle { get; init; }

    /// <summary>How far the valve leaves its seat again after it has closed, m; 0 when it stays.</summary>
    public required double BounceHeight { get; init; }

    /// <summary>How often it does so by more than a hundredth of a millimetre.</summary>
    public required int Bounces { get; init; }

    /// <summary>Each spring, in the order of the specification.</summary>
    public required IReadOnlyList<SpringMotion> Springs { get; init; }

    /// <summary>Where the work of the cam went.</summary>
    public required TrainEnergy Energy { get; init; }

    /// <summary>Traces when asked for.</summary>
    public required TrainTrace? Trace { get; init; }
}

/// <summary>A train come apart between cam and follower or follower and valve, while the cam held the valve open.</summary>
/// <param name="From">Cam angle at which contact is lost, rad.</param>
/// <param name="To">Cam angle at which it is found again or the cam has closed, rad.</param>
/// <param name="Gap">Largest gap, of both contacts together, m.</param>
public sealed record Separation(double From, double To, double Gap);

/// <summary>One spring over a turn of the cam.</summary>
/// <param name="Surge">Greatest distance of any coil from where it would be if the spring were moved slowly, m.</param>
/// <param name="LeastForce">Least force on the valve, N; 0 where the spring leaves its retainer.</param>
/// <param name="GreatestForce">Greatest force on the valve, N.</param>
/// <param name="LeastRoom">Least share of a coil's travel to bind that is left anywhere in the spring; 0 and below: coils clash. Null when the travel to bind is not given.</param>
public sealed record SpringMotion(double Surge, double LeastForce, double GreatestForce, double? LeastRoom);

/// <summary>The books of one turn, J: what cam and gas put in is lost in dampers and friction or still stored.</summary>
/// <param name="CamWork">Work of the cam.</param>
/// <param name="GasWork">Work of the gas.</param>
/// <param name="Lost">Heat of contacts, springs and guide.</param>
/// <param name="Stored">Rise of kinetic and elastic energy over the turn; nearly nought when settled.</param>
/// <param name="Handled">Greatest energy stored during the turn above that at its begin.</param>
public sealed record TrainEnergy(double CamWork, double GasWork, double Lost, double Stored, double Handled)
{
    /// <summary>What does not add up, J.</summary>
    public double Unaccounted => CamWork + GasWork - Lost - Stored;
}

/// <summary>Traces over one turn of the cam, from the base circle over the lobe.</summary>
/// <param name="Angles">Cam angle from the nose, rad.</param>
/// <param name="CamLift">Kinematic lift at the valve less lash, nought on the base circle, m.</param>
/// <param name="Lift">Travel of the valve from shut, m.</param>
/// <param name="Velocity">Velocity of the valve, m/s.</param>
/// <param name="CamForce">Force of the cam on the follower, at the valve, N.</param>
/// <param name="SpringForce">Force of all springs on the valve, N.</param>
public sealed record TrainTrace(double[] Angles, double[] CamLift, double[] Lift, double[] Velocity, double[] CamForce, double[] SpringForce);
