using Gudgeon.Calc.Gas;
using Gudgeon.Calc.Vehicle;

namespace Gudgeon.Simulation.Sprint;

/// <summary>The forces and torques of one moment.</summary>
internal readonly record struct SprintMoment(
    double Acceleration,
    double EngineSpeed,
    double EngineTorque,
    double ClutchTorque,
    double Drag,
    SprintLimit Limit);

/// <summary>
/// The machine as a rigid body on two wheels: what accelerates it at a given road speed, with the clutch slipping,
/// locked, or without drive. Nothing here knows of time or distance.
/// </summary>
internal sealed class SprintModel
{
    private readonly SprintSpec _spec;
    private readonly TorqueCurve _curve;
    private readonly double[] _turns;
    private readonly double _weight;
    private readonly double _ahead;
    private readonly double _height;
    private readonly double _frontMass;
    private readonly double _wheelMomentum;

    public SprintModel(SprintSpec spec)
    {
        _spec = spec;
        _curve = new TorqueCurve(spec.Engine.Speeds, spec.Engine.Torques);
        var (machine, rider) = (spec.Machine, spec.Rider);
        (Mass, _ahead, _height) = CentreOfGravity.Combined([machine.Mass, rider.Mass], [machine.Ahead, rider.Ahead], [machine.Height, rider.Height]);
        _weight = Mass * PhysicalConstants.StandardGravity;

        var (wheels, driveline) = (spec.Wheels, spec.Driveline);
        var rearRadius = wheels.RearCircumference / (2 * Math.PI);
        _frontMass = wheels.FrontInertia / (wheels.FrontRadius * wheels.FrontRadius);
        RollingMass = Mass + _frontMass + (wheels.RearInertia / (rearRadius * rearRadius));
        _wheelMomentum = (wheels.FrontInertia / wheels.FrontRadius) + (wheels.RearInertia / rearRadius);
        _turns = [.. driveline.GearRatios.Select(gear => driveline.PrimaryRatio * gear * driveline.FinalRatio / rearRadius)];
    }

    /// <summary>Machine and rider, kg.</summary>
    public double Mass { get; }

    /// <summary>Machine and rider with the equivalent mass of both wheels, kg.</summary>
    public double RollingMass { get; }

    public double RollingForce => _spec.Wheels.RollingResistance * _weight;

    public int TopGear => _turns.Length - 1;

    public double LowestSpeed => _curve.LowestSpeed;

    /// <summary>Engine speed with the clutch locked, rad/s.</summary>
    public double EngineSpeed(int gear, double speed) => speed * Turns(gear, speed);

    /// <summary>Road speed at which a gear turns the engine at <paramref name="engineSpeed"/>, m/s; infinite when tyre growth keeps it out of reach.</summary>
    public double RoadSpeed(int gear, double engineSpeed)
    {
        var turns = _turns[gear];
        var root = (turns * turns) - (4 * _spec.Wheels.RearGrowth * engineSpeed * engineSpeed);
        return root >= 0 ? 2 * engineSpeed / (turns + Math.Sqrt(root)) : double.PositiveInfinity;
    }

    /// <summary>First gear, clutch slipping, engine held at the launch speed by clutch and throttle.</summary>
    public SprintMoment Slipping(double speed)
    {
        var engine = _spec.Engine;
        var drag = Drag(speed);
        var torque = _curve.At(engine.LaunchSpeed);
        var turns = Turns(0, speed);
        var (limit, acceleration) = Held(SprintLimit.Power, ThrustOf(torque, turns, drag) / RollingMass, turns, drag);
        var clutch = ClutchTorque(acceleration, turns, drag);
        return new SprintMoment(acceleration, engine.LaunchSpeed, clutch, clutch, drag, limit);
    }

    /// <summary>Clutch locked in <paramref name="gear"/>: the engine's inertia accelerates with the machine.</summary>
    public SprintMoment Locked(int gear, double speed)
    {
        var drag = Drag(speed);
        var (turns, slope) = (Turns(gear, speed), TurnsSlope(gear, speed));
        var engineSpeed = speed * turns;
        var (limit, acceleration) = Held(SprintLimit.Power, FullThrottle(gear, speed), turns, drag);
        var clutch = ClutchTorque(acceleration, turns, drag);
        return new SprintMoment(acceleration, engineSpeed, clutch + (_spec.Engine.Inertia * slope * acceleration), clutch, drag, limit);
    }

    private double FullThrottle(int gear, double speed)
    {
        var (turns, slope) = (Turns(gear, speed), TurnsSlope(gear, speed));
        var engineMass = _spec.Driveline.Efficiency * _spec.Engine.Inertia * turns * slope;
        return ThrustOf(_curve.At(speed * turns), turns, Drag(speed)) / (RollingMass + engineMass);
    }

    /// <summary>No drive: the machine coasts.</summary>
    public SprintMoment Coasting(double speed, double engineSpeed)
    {
        var drag = Drag(speed);
        return new SprintMoment(-(drag + RollingForce) / RollingMass, engineSpeed, 0, 0, drag, SprintLimit.Shift);
    }

    /// <summary>Engine on its rev limit in top gear: just the torque that holds the speed.</summary>
    public SprintMoment OnRevLimit(double speed)
    {
        var drag = Drag(speed);
        var turns = Turns(TopGear, speed);
        var torque = ClutchTorque(0, turns, drag);
        return new SprintMoment(0, speed * turns, torque, torque, drag, SprintLimit.RevLimit);
    }

    /// <summary>Loads on the tyres, N; a wheelie bar takes its share off the rear.</summary>
    public (double Front, double Rear) Loads(double acceleration, double drag)
    {
        var pitch = Pitch(acceleration, drag);
        var front = pitch / _spec.Wheels.Wheelbase;
        var bar = front < 0 && _spec.Wheels.WheelieBar > 0 ? -pitch / _spec.Wheels.WheelieBar : 0;
        return (Math.Max(front, 0), _weight - Math.Max(front, 0) - bar);
    }

    private double Turns(int gear, double speed) => _turns[gear] / (1 + (_spec.Wheels.RearGrowth * speed * speed));

    private double TurnsSlope(int gear, double speed)
    {
        var growth = _spec.Wheels.RearGrowth * speed * speed;
        return _turns[gear] * (1 - growth) / ((1 + growth) * (1 + growth));
    }

    private double Drag(double speed)
    {
        var air = _spec.Air;
        var airSpeed = speed + air.HeadWind;
        return 0.5 * air.Density * air.DragArea * airSpeed * Math.Abs(airSpeed);
    }

    private double ThrustOf(double torque, double turns, double drag) => (_spec.Driveline.Efficiency * torque * turns) - drag - RollingForce;

    private double ClutchTorque(double acceleration, double turns, double drag) =>
        ((RollingMass * acceleration) + drag + RollingForce) / (_spec.Driveline.Efficiency * turns);

    private (SprintLimit Limit, double Acceleration) Held(SprintLimit limit, double acceleration, double turns, double drag)
    {
        Lower(SprintLimit.Clutch, ThrustOf(_spec.Driveline.ClutchCapacity, turns, drag) / RollingMass);
        var wheelie = ((_weight * _ahead) - (drag * _spec.Air.DragHeight)) / PitchMass;
        var traction = Traction(drag);
        if (_spec.Wheels.WheelieBar > 0 && traction > wheelie)
        {
            Lower(SprintLimit.Traction, TractionOnBar(drag));
        }
        else
        {
            Lower(SprintLimit.Wheelie, wheelie);
            Lower(SprintLimit.Traction, traction);
        }

        // A closed throttle is the least that the rider can do.
        return (limit, Math.Max(acceleration, -(drag + RollingForce) / RollingMass));

        void Lower(SprintLimit candidate, double value)
        {
            if (value < acceleration)
            {
                (limit, acceleration) = (candidate, value);
            }
        }
    }

    /// <summary>Pitching moment per acceleration, kg·m: the mass at its height and the wheels being spun up.</summary>
    private double PitchMass => (Mass * _height) + _wheelMomentum;

    /// <summary>Moment about the rear contact that keeps the front wheel down, N·m.</summary>
    private double Pitch(double acceleration, double drag) => (_weight * _ahead) - (drag * _spec.Air.DragHeight) - (PitchMass * acceleration);

    /// <summary>Acceleration at which the drive force at the rear contact equals friction times load, front wheel on the ground.</summary>
    private double Traction(double drag)
    {
        var (friction, wheelbase) = (_spec.Strip.Friction, _spec.Wheels.Wheelbase);
        var still = (_weight * (wheelbase - _ahead)) + (drag * _spec.Air.DragHeight);
        var mass = Mass + _frontMass - (friction * PitchMass / wheelbase);

        // So much grip that load transfer outruns the drive force: the wheel never spins.
        return mass > 0 ? ((friction * still / wheelbase) - drag - RollingForce) / mass : double.PositiveInfinity;
    }

    /// <summary>The same with the front wheel off the ground and the bar's roller on it.</summary>
    private double TractionOnBar(double drag)
    {
        var (friction, bar) = (_spec.Strip.Friction, _spec.Wheels.WheelieBar);
        var load = _weight + (Pitch(0, drag) / bar);
        return ((friction * load) - drag - RollingForce) / (Mass + _frontMass + (friction * PitchMass / bar));
    }
}
