using System.Globalization;

namespace Gudgeon.Simulation.Sprint;

/// <summary>
/// Marches one run through its phases: clutch slipping, a gear, a shift, the rev limit. Every moment where something
/// happens (a timed mark, lock-up, a shift) ends a step exactly there.
/// </summary>
internal sealed class SprintRun
{
    private const double LongestStep = 0.02;
    private const double LongestRun = 600;
    private const double Standstill = 0.01;
    private const double Tolerance = 1e-9;

    // Travel and speed are the motion; the rest adds up where the engine's work went.
    private const int Travel = 0;
    private const int Speed = 1;
    private const int EngineWork = 2;
    private const int DragWork = 3;
    private const int RollingWork = 4;
    private const int ClutchHeat = 5;
    private const int DrivelineLoss = 6;
    private const int Size = 7;

    private readonly SprintSpec _spec;
    private readonly SprintModel _model;
    private readonly double[] _shiftAt;
    private readonly SprintMarks _marks;
    private readonly DormandPrince _integrator;
    private readonly List<SprintPoint> _trace = new(1024);
    private readonly List<SprintShift> _shifts = [];
    private readonly double[] _limitTimes = new double[Enum.GetValues<SprintLimit>().Length];
    private readonly double[] _state = new double[Size];
    private readonly double[] _next = new double[Size];

    private Phase _phase = Phase.Slip;
    private int _gear;
    private int _mark;
    private double _time;
    private double _step = 1e-4;
    private double _shiftStart;
    private double _engineSpeedBeforeShift;
    private double _shiftLoss;
    private string? _ending;

    public SprintRun(SprintSpec spec)
    {
        _spec = spec;
        _model = new SprintModel(spec);
        _shiftAt = ShiftPoints.For(spec, _model);
        _marks = new SprintMarks(spec.Strip);
        _mark = spec.Strip.Rollout == 0 ? 1 : 0;
        _integrator = new DormandPrince(Size, Rates);
    }

    private enum Phase
    {
        Slip,
        Gear,
        Shift,
        RevLimit,
    }

    private double PhaseEnd => _phase == Phase.Shift ? _shiftStart + _spec.Driveline.ShiftTime : double.PositiveInfinity;

    public SprintResult Run()
    {
        if (Moment(_state).Acceleration <= 0)
        {
            _ending = "The machine does not move off: what drives it is less than what holds it.";
        }

        Record();
        while (_ending is null)
        {
            March();
        }

        return Result();
    }

    /// <summary>One accepted step, cut short at the first event inside it.</summary>
    private void March()
    {
        var step = TryStep(Math.Min(Math.Min(_step, LongestStep), PhaseEnd - _time));
        var (happening, at) = FirstEvent(step);
        if (at < step)
        {
            _integrator.Step(_state, at, _next);
        }

        Tally(at, _trace[^1].Limit);
        _next.CopyTo(_state, 0);
        _time += at;
        happening?.Invoke();
        if (_phase == Phase.Shift && _time >= PhaseEnd - 1e-12)
        {
            Engage();
        }

        if (_time >= LongestRun)
        {
            _ending ??= $"After {LongestRun:0} s the machine has still not reached the end.";
        }

        Record();
    }

    /// <summary>Takes the longest step whose estimated error is small enough and says how long it was, s.</summary>
    private double TryStep(double step)
    {
        while (true)
        {
            _integrator.Step(_state, step, _next);
            var error = Math.Max(_integrator.Error(Travel, step), _integrator.Error(Speed, step)) / (Tolerance * (1 + _next[Speed]));
            var factor = error > 0 ? Math.Clamp(0.9 * Math.Pow(error, -0.2), 0.2, 5) : 5;
            if (error <= 1 || step < 1e-9)
            {
                _step = Math.Max(step * factor, 1e-9);
                return step;
            }

            step *= factor;
        }
    }

    /// <summary>What happens first within the step just tried, and when; nothing at the end of the step.</summary>
    private (Action? Happening, double At) FirstEvent(double step)
    {
        (Action? Happening, double At) first = (null, step);
        Consider(_next[Travel] - _marks.Travel[_mark], Travel, _marks.Travel[_mark], PassMark);
        switch (_phase)
        {
            case Phase.Slip:
                var lockUp = _model.RoadSpeed(0, _spec.Engine.LaunchSpeed);
                Consider(_next[Speed] - lockUp, Speed, lockUp, LockUp);
                break;
            case Phase.Gear:
                Consider(_next[Speed] - _shiftAt[_gear], Speed, _shiftAt[_gear], LeaveGear);
                var stall = _model.RoadSpeed(_gear, _model.LowestSpeed);
                Consider(stall - _next[Speed], Speed, stall, Stall);
                break;
            case Phase.Shift:
                Consider(Standstill - _next[Speed], Speed, Standstill, Stop);
                break;
        }

        return first;

        void Consider(double past, int component, double target, Action happening)
        {
            if (past >= 0 && Locate(component, target, step) is var at && (at < first.At || first.Happening is null))
            {
                first = (happening, at);
            }
        }
    }

    /// <summary>Step after which one component is just past the target, s: bisection and regula falsi (Illinois) on whole steps.</summary>
    private double Locate(int component, double target, double step)
    {
        var trial = new double[Size];
        var (low, atLow) = (0.0, _state[component] - target);
        var (high, atHigh) = (step, _next[component] - target);
        while (high - low > 1e-13 && atHigh != 0)
        {
            var middle = low + ((high - low) * Math.Clamp(atLow / (atLow - atHigh), 0.001, 0.999));
            _integrator.Step(_state, middle, trial);
            var value = trial[component] - target;
            if (Math.Sign(value) == Math.Sign(atHigh))
            {
                (high, atHigh, atLow) = (middle, value, 0.5 * atLow);
            }
            else
            {
                (low, atLow, atHigh) = (middle, value, 0.5 * atHigh);
            }
        }

        return high;
    }

    private void PassMark()
    {
        _marks.Pass(_mark, _time, _state[Speed]);
        _mark++;
        if (_mark == _marks.Travel.Length)
        {
            _ending = "The machine reached the end of the run.";
        }
    }

    private void LockUp()
    {
        _phase = Phase.Gear;
        if (_state[Speed] >= _shiftAt[0])
        {
            LeaveGear();
        }
    }

    private void LeaveGear()
    {
        if (_gear == _model.TopGear)
        {
            _phase = Phase.RevLimit;
            return;
        }

        (_phase, _shiftStart, _engineSpeedBeforeShift) = (Phase.Shift, _time, _model.EngineSpeed(_gear, _state[Speed]));
        _gear++;
    }

    private void Engage()
    {
        var after = _model.EngineSpeed(_gear, _state[Speed]);
        SprintSpecException.Unless(
            after > _model.LowestSpeed,
            $"torque curve: after the shift into gear {_gear + 1} the engine turns at {SprintChecks.Rpm(after)}, but the curve starts at {SprintChecks.Rpm(_model.LowestSpeed)}");
        var before = _engineSpeedBeforeShift;
        _shiftLoss += 0.5 * _spec.Engine.Inertia * ((before * before) - (after * after));
        _shifts.Add(new SprintShift(_gear, _shiftStart, _model.RoadSpeed(_gear - 1, before), before, after));
        _phase = Phase.Gear;
        if (_state[Speed] >= _shiftAt[_gear])
        {
            LeaveGear();
        }
    }

    private void Stall() => _ending = $"The engine fell below its torque curve in gear {_gear + 1}.";

    private void Stop() => _ending = "The machine came to a stop during a shift.";

    private void Rates(ReadOnlySpan<double> state, Span<double> rates)
    {
        var moment = Moment(state);
        var speed = state[Speed];
        var turns = _model.EngineSpeed(_gear, speed);
        rates[Travel] = speed;
        rates[Speed] = moment.Acceleration;
        rates[EngineWork] = moment.EngineTorque * moment.EngineSpeed;
        rates[DragWork] = moment.Drag * speed;
        rates[RollingWork] = _model.RollingForce * speed;
        rates[ClutchHeat] = moment.ClutchTorque * (moment.EngineSpeed - turns);
        rates[DrivelineLoss] = moment.ClutchTorque * turns * (1 - _spec.Driveline.Efficiency);
    }

    private SprintMoment Moment(ReadOnlySpan<double> state) => _phase switch
    {
        Phase.Slip => _model.Slipping(state[Speed]),
        Phase.Gear => _model.Locked(_gear, state[Speed]),
        Phase.Shift => _model.Coasting(state[Speed], 0),
        _ => _model.OnRevLimit(state[Speed]),
    };

    /// <summary>Gives half of a step's time to the limit at either end.</summary>
    private void Tally(double step, SprintLimit before)
    {
        _limitTimes[(int)before] += 0.5 * step;
        _limitTimes[(int)Moment(_next).Limit] += 0.5 * step;
    }

    private void Record()
    {
        var moment = Moment(_state);
        var (front, rear) = _model.Loads(moment.Acceleration, moment.Drag);
        var engineSpeed = _phase == Phase.Shift ? FallingEngineSpeed() : moment.EngineSpeed;
        _trace.Add(new SprintPoint(_time, _state[Travel], _state[Speed], moment.Acceleration, engineSpeed, moment.EngineTorque, front, rear, _gear + 1, moment.Limit));
    }

    // How the engine comes down during the cut is not modelled: a straight line to the coming gear's speed is drawn.
    private double FallingEngineSpeed()
    {
        var share = _spec.Driveline.ShiftTime > 0 ? (_time - _shiftStart) / _spec.Driveline.ShiftTime : 1;
        return _engineSpeedBeforeShift + (share * (_model.EngineSpeed(_gear, _state[Speed]) - _engineSpeedBeforeShift));
    }

    private SprintResult Result()
    {
        var (clock, rollout) = (_marks.RolloutTime, _spec.Strip.Rollout);
        var offset = double.IsNaN(clock) ? 0 : clock;
        var (finished, distance) = (_mark == _marks.Travel.Length, _state[Travel] - rollout);
        return new SprintResult(
            finished,
            finished ? _ending! : string.Create(CultureInfo.InvariantCulture, $"{_ending} It came {Math.Max(distance, 0):0.0} m past the start beam."),
            distance,
            clock,
            _marks.Splits(),
            [.. _shifts.Select(shift => shift with { Time = shift.Time - offset })],
            Enum.GetValues<SprintLimit>().ToDictionary(limit => limit, limit => _limitTimes[(int)limit]),
            Energy(),
            [.. _trace.Select(point => point with { Time = point.Time - offset, Distance = point.Distance - rollout })]);
    }

    private SprintEnergy Energy()
    {
        var speed = _state[Speed];
        var engineSpeed = _phase == Phase.Shift ? _engineSpeedBeforeShift : Moment(_state).EngineSpeed;
        var launch = _spec.Engine.LaunchSpeed;
        var wheels = 0.5 * (_model.RollingMass - _model.Mass) * speed * speed;
        var engine = 0.5 * _spec.Engine.Inertia * ((engineSpeed * engineSpeed) - (launch * launch));
        return new SprintEnergy(
            _state[EngineWork],
            0.5 * _model.Mass * speed * speed,
            wheels + engine,
            _state[DragWork],
            _state[RollingWork],
            _state[ClutchHeat],
            _state[DrivelineLoss],
            _shiftLoss);
    }
}
