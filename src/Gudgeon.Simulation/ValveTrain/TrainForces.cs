using System.Runtime.CompilerServices;

namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// All forces of the train at one cam speed, and what they make of the velocities. What touches only pushes: a contact has a
/// linear spring and damper while its bodies overlap, never pulls, and is nothing when they are apart.
/// </summary>
internal sealed class TrainForces : IMotion
{
    /// <summary>Speed of the stem below which guide friction is led through zero, m/s.</summary>
    public const double FrictionSpeed = 0.02;

    private readonly TrainLayout _layout;
    private readonly LiftProfile _profile;
    private readonly GasForce? _gas;
    private readonly ColumnLayout[] _springs;
    private readonly double[] _perMass;
    private readonly double _camStiffness;
    private readonly double _camDamping;
    private readonly double _trainStiffness;
    private readonly double _trainDamping;
    private readonly double _seatStiffness;
    private readonly double _seatDamping;
    private readonly double _seatRest;
    private readonly double _lash;
    private readonly double _friction;
    private readonly int _bodies;
    private readonly int _camBody;

    /// <param name="layout">The train.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    /// <param name="begin">Cam angle from the nose at time 0, rad.</param>
    public TrainForces(TrainLayout layout, double speed, double begin)
    {
        var spec = layout.Spec;
        (_layout, Speed, Begin) = (layout, speed, begin);
        (_profile, _gas, _springs) = (spec.Profile, spec.Gas, layout.Springs);
        (_camStiffness, _seatStiffness, _lash, _friction) = (spec.CamStiffness, spec.SeatStiffness, spec.Lash, spec.GuideFriction);
        (_camDamping, _trainStiffness, _trainDamping) = (layout.CamDamping, layout.TrainStiffness, layout.TrainDamping);
        (_seatDamping, _seatRest) = (layout.SeatDamping, layout.SeatRest);
        (_bodies, _camBody) = (layout.Bodies, layout.CamBody);
        _perMass = [.. layout.Masses.Select(m => 1 / m)];
        SpringForces = new double[_springs.Length];
    }

    public int Size => _layout.Size;

    /// <summary>Cam speed, rad/s.</summary>
    public double Speed { get; }

    /// <summary>Cam angle from the nose at time 0, rad.</summary>
    public double Begin { get; }

    /// <summary>Kinematic lift less lash at the last evaluation, m; negative on the base circle.</summary>
    public double CamLift { get; private set; }

    /// <summary>How quickly the cam lifts at the last evaluation, m/s.</summary>
    public double CamVelocity { get; private set; }

    /// <summary>Force of the cam on the follower at the last evaluation, N.</summary>
    public double CamForce { get; private set; }

    /// <summary>Gas force at the last evaluation, N.</summary>
    public double Gas { get; private set; }

    /// <summary>Force of each spring on the valve at the last evaluation, N.</summary>
    public double[] SpringForces { get; }

    /// <summary>Velocities and accelerations of a state; <paramref name="time"/> counts from the begin of the turn, s.</summary>
    public void Rates(double time, double[] state, double[] rates)
    {
        var y = state.AsSpan();
        var velocity = y.Slice(_bodies, _bodies);
        var acceleration = rates.AsSpan(_bodies, _bodies);
        velocity.CopyTo(rates);
        var angle = Begin + (Speed * time);
        var lift = _profile.LiftAt(angle, out var slope) - _lash;
        var lifting = slope * Speed;
        var gas = _gas?.At(angle) ?? 0;
        (CamLift, CamVelocity, Gas) = (lift, lifting, gas);

        var (travel, speed) = (y[0], velocity[0]);
        var onValve = gas + Push(_seatStiffness * (_seatRest - travel), -_seatDamping * speed);
        onValve -= _friction * Math.Clamp(speed * (1 / FrictionSpeed), -1, 1);
        var push = Push(_camStiffness * (lift - y[_camBody]), _camDamping * (lifting - velocity[_camBody]));
        CamForce = push;
        if (_camBody == 1)
        {
            var onFollower = push;
            push = Push(_trainStiffness * (y[1] - travel), _trainDamping * (velocity[1] - speed));
            acceleration[1] = (onFollower - push) * _perMass[1];
        }

        onValve += push;
        for (var s = 0; s < _springs.Length; s++)
        {
            SpringForces[s] = Column(_springs[s], y, velocity, acceleration);
            onValve -= SpringForces[s];
        }

        acceleration[0] = onValve * _perMass[0];
    }

    /// <summary>Elastic force and damping of a contact: it pushes or does nothing.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Push(double elastic, double damping) => elastic > 0 ? Math.Max(0, elastic + damping) : 0;

    /// <summary>Accelerations of a spring's inner masses; gives back its force on the valve, N.</summary>
    private static double Column(ColumnLayout spring, ReadOnlySpan<double> travels, ReadOnlySpan<double> velocities, Span<double> accelerations)
    {
        var inner = spring.Elements - 1;
        if (inner == 0)
        {
            return End(spring, travels[0], velocities[0]);
        }

        var travel = travels.Slice(spring.First, inner);
        var velocity = velocities.Slice(spring.First, inner);
        var acceleration = accelerations.Slice(spring.First, inner);
        var (stiffness, damping, shut, room, clash, perMass) = (spring.Stiffness, spring.Damping, spring.ShutLoad, spring.Room, spring.ClashStiffness, spring.PerMass);
        var below = End(spring, travel[0], velocity[0]);
        for (var i = 1; i < travel.Length; i++)
        {
            var squeeze = travel[i] - travel[i - 1];
            var above = shut + (stiffness * squeeze) + (damping * (velocity[i] - velocity[i - 1])) + (clash * Math.Max(0, squeeze - room));
            acceleration[i - 1] = (above - below) * perMass;
            below = above;
        }

        var onValve = End(spring, travels[0] - travel[^1], velocities[0] - velocity[^1]);
        acceleration[^1] = (onValve - below) * perMass;
        return onValve;
    }

    /// <summary>Force of an element at an end of its spring, N: it can leave head or retainer, so it only pushes.</summary>
    private static double End(ColumnLayout spring, double squeeze, double rate) =>
        Push(spring.ShutLoad + (spring.Stiffness * squeeze), spring.Damping * rate) + (spring.ClashStiffness * Math.Max(0, squeeze - spring.Room));
}
