namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// Looks on while a train goes through one turn of its cam and takes down where it came apart, how it landed, how its springs
/// surged, its books, and traces. Reads each step at its middle and its end.
/// </summary>
internal sealed class RevolutionWatch
{
    /// <summary>A bounce lower than this is not counted, m.</summary>
    private const double Counted = 1e-5;

    private readonly TrainLayout _layout;
    private readonly TrainForces _forces;
    private readonly StepCurve _curve;
    private readonly SpringWatch[] _springs;
    private readonly double[] _state;
    private readonly double[] _rates;
    private readonly TrainTrace? _trace;
    private Reading _last;
    private int _traced;
    private (double From, double Gap)? _apart;
    private Separation? _lost;
    private Separation? _knock;
    private (double Velocity, double Angle)? _landing;
    private double _flight;
    private double _highestFlight;
    private int _bounces;
    private (double Force, double Angle) _greatest;
    private double _highest;
    private double _storedAtBegin;
    private (double Cam, double Gas, double Lost, double Most) _books;

    /// <param name="layout">The train.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    /// <param name="tracePoints">Points of the traces; 0 for none.</param>
    public RevolutionWatch(TrainLayout layout, double speed, int tracePoints)
    {
        (_layout, _forces) = (layout, new TrainForces(layout, speed, TrainMarch.BeginOf(layout.Spec.Profile)));
        (_state, _rates, _curve) = (new double[layout.Size], new double[layout.Size], new StepCurve(layout));
        _springs = [.. layout.Springs.Select((s, i) => new SpringWatch(s, i))];
        double[] Row() => new double[tracePoints];
        _trace = tracePoints == 0 ? null : new TrainTrace([.. Enumerable.Range(0, tracePoints).Select(i => _forces.Begin + (2 * Math.PI * i / tracePoints))], Row(), Row(), Row(), Row(), Row());
    }

    /// <summary>The turn begins in a state.</summary>
    public void Begin(double[] state, double[] rates)
    {
        _ = rates;
        _last = Read(0, state);
        _storedAtBegin = _last.Stored;
    }

    /// <summary>The turn has gone over one more step, s.</summary>
    public void Pass(double time, double step, double[] from, double[] fromRates, double[] to, double[] toRates)
    {
        _curve.Fit(step, from, fromRates, to, toRates);
        _curve.At(0.5, _state);
        var middle = Read(time + (0.5 * step), _state);
        var end = Read(time + step, to);
        Force(_last, middle, end);
        Contact(_last, middle, end);
        Seat(_last, middle, end);
        Account(step, middle, end);
        Trace(time, step);
        _last = end;
    }

    /// <summary>What was seen.</summary>
    public TrainMotion Motion() => new()
    {
        GreatestLift = _highest,
        GreatestCamForce = _greatest.Force,
        GreatestCamForceAngle = _greatest.Angle,
        Lost = _lost,
        Knock = _knock,
        SeatingVelocity = _landing?.Velocity,
        SeatingAngle = _landing?.Angle,
        BounceHeight = Math.Max(_highestFlight, _landing is null ? 0 : _flight),
        Bounces = _bounces + (_flight > Counted ? 1 : 0),
        Springs = [.. _springs.Select(s => s.Motion())],
        Energy = new TrainEnergy(_books.Cam, _books.Gas, _books.Lost, _last.Stored - _storedAtBegin, _books.Most - _storedAtBegin),
        Trace = _trace,
    };

    private Reading Read(double time, double[] state)
    {
        _forces.Rates(time, state, _rates);
        var (cam, n) = (_layout.CamBody, _layout.Bodies);
        var camGap = state[cam] - _forces.CamLift;
        var trainGap = cam == 1 ? state[0] - state[1] : camGap;
        foreach (var spring in _springs)
        {
            spring.See(state, _forces);
        }

        return new Reading(
            _forces.Begin + (_forces.Speed * time),
            state[0],
            state[n],
            _forces.CamLift,
            _forces.CamForce,
            Math.Max(camGap, trainGap),
            Math.Max(camGap, 0) + (cam == 1 ? Math.Max(trainGap, 0) : 0),
            _forces.CamForce * _forces.CamVelocity,
            _forces.Gas * state[n],
            TrainBooks.Loss(_layout, _forces, state),
            TrainBooks.Stored(_layout, _forces, state));
    }

    private void Force(in Reading last, in Reading middle, in Reading end)
    {
        _highest = Math.Max(_highest, Top(last.Travel, middle.Travel, end.Travel));
        var force = Top(last.CamForce, middle.CamForce, end.CamForce);
        if (force > _greatest.Force)
        {
            _greatest = (force, force > end.CamForce ? middle.Angle : end.Angle);
        }
    }

    private void Contact(in Reading last, in Reading middle, in Reading end)
    {
        var carries = end.CamLift > 0;
        if (_apart is null && carries && end.Opening > 0)
        {
            var share = last.Opening < 0 ? last.Opening / (last.Opening - end.Opening) : 0;
            _apart = (last.Angle + (share * (end.Angle - last.Angle)), 0);
        }

        if (_apart is not { } apart)
        {
            return;
        }

        _apart = apart with { Gap = Math.Max(apart.Gap, Top(last.Gap, middle.Gap, end.Gap)) };
        if (!carries || end.Opening <= 0)
        {
            Keep(new Separation(apart.From, end.Angle, _apart.Value.Gap));
            _apart = null;
        }
    }

    private void Keep(Separation apart)
    {
        if (_layout.Spec.Profile.At(apart.From).Curvature < 0)
        {
            _lost = apart.Gap > (_lost?.Gap ?? 0) ? apart : _lost;
        }
        else
        {
            _knock = apart.Gap > (_knock?.Gap ?? 0) ? apart : _knock;
        }
    }

    private void Seat(in Reading last, in Reading middle, in Reading end)
    {
        if (_landing is null && end.Angle > 0 && last.Travel > _layout.SeatRest && end.Travel <= _layout.SeatRest)
        {
            _landing = (-end.Velocity, end.Angle);
            return;
        }

        if (_landing is null || end.CamLift > 0)
        {
            return;
        }

        _flight = Math.Max(_flight, Top(last.Travel, middle.Travel, end.Travel) - _layout.SeatRest);
        if (end.Travel <= _layout.SeatRest)
        {
            _bounces += _flight > Counted ? 1 : 0;
            (_highestFlight, _flight) = (Math.Max(_highestFlight, _flight), 0);
        }
    }

    /// <summary>Simpson's rule over the step.</summary>
    private void Account(double step, in Reading middle, in Reading end)
    {
        var weight = step / 6;
        _books.Cam += weight * (_last.CamPower + (4 * middle.CamPower) + end.CamPower);
        _books.Gas += weight * (_last.GasPower + (4 * middle.GasPower) + end.GasPower);
        _books.Lost += weight * (_last.Loss + (4 * middle.Loss) + end.Loss);
        _books.Most = Math.Max(_books.Most, end.Stored);
    }

    private void Trace(double time, double step)
    {
        if (_trace is not { } trace)
        {
            return;
        }

        var spacing = 2 * Math.PI / (_forces.Speed * trace.Angles.Length);
        for (; _traced < trace.Angles.Length && spacing * _traced <= time + step; _traced++)
        {
            _curve.At(((spacing * _traced) - time) / step, _state);
            _forces.Rates(spacing * _traced, _state, _rates);
            trace.CamLift[_traced] = Math.Max(_forces.CamLift, 0);
            trace.Lift[_traced] = _state[0];
            trace.Velocity[_traced] = _state[_layout.Bodies];
            trace.CamForce[_traced] = _forces.CamForce;
            trace.SpringForce[_traced] = _forces.SpringForces.Sum();
        }
    }

    /// <summary>Greatest value of the parabola through the begin, the middle and the end of a step.</summary>
    private static double Top(double begin, double middle, double end)
    {
        var (slope, bend) = (end - begin, begin - (2 * middle) + end);
        return bend < 0 && Math.Abs(slope) < -2 * bend ? middle - (slope * slope / (8 * bend)) : Math.Max(begin, Math.Max(middle, end));
    }

    private readonly record struct Reading(
        double Angle,
        double Travel,
        double Velocity,
        double CamLift,
        double CamForce,
        double Opening,
        double Gap,
        double CamPower,
        double GasPower,
        double Loss,
        double Stored);
}
