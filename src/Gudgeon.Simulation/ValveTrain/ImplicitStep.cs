namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// The Rosenbrock pair of order 4(3) that is L-stable and stiffly accurate: Hairer and Wanner, Solving Ordinary Differential
/// Equations II, 2nd ed. (1996), section IV.10, RODAS; coefficients as published with the authors' code, order verified by test.
/// While the cam pushes, valve and follower are stepped in coordinates that ride on it: what presses them on it stiffly then stands still,
/// where in fixed ones it would move under a prescribed motion, which costs such formulas their order (Prothero and Robinson).
/// </summary>
internal sealed class ImplicitStep : IStep
{
    private const int Stages = 6;
    private const double Gamma = 0.25;

    private static readonly double[] Places = [0, 0.386, 0.21, 0.63, 1, 1];

    private static readonly double[] Rises = [0.25, -0.1043, 0.1035, -0.3620000000000023e-1, 0, 0];

    private static readonly double[][] A =
    [
        [],
        [1.544],
        [0.9466785280815826, 0.2557011698983284],
        [3.314825187068521, 2.896124015972201, 0.9986419139977817],
        [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950],
        [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1],
    ];

    private static readonly double[][] C =
    [
        [],
        [-5.6688],
        [-2.430093356833875, -0.2063599157091915],
        [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
        [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160],
        [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
    ];

    private readonly TrainLayout _layout;
    private readonly TrainForces _forces;
    private readonly TrainTangent _tangent;
    private readonly double[] _perError;
    private readonly double[][] _stages;
    private readonly double[] _start;
    private readonly double[] _startRates;
    private readonly double[] _rates;
    private readonly double[] _right;
    private readonly double[] _rises;

    /// <param name="layout">The train.</param>
    /// <param name="forces">Its forces.</param>
    /// <param name="perError">One over the error allowed in each component; as long as a state.</param>
    public ImplicitStep(TrainLayout layout, TrainForces forces, double[] perError)
    {
        (_layout, _forces, _perError, _tangent) = (layout, forces, perError, new TrainTangent(layout));
        _stages = [.. A.Select(_ => new double[forces.Size])];
        (_start, _startRates, _rates, _right) = (new double[forces.Size], new double[forces.Size], new double[forces.Size], new double[forces.Size]);
        _rises = new double[layout.Bodies];
    }

    public double Exponent => 0.25;

    public double Try(double time, double step, double[] from, double[] fromRates, double[] to, double[] toRates)
    {
        Begin(time, from, fromRates);
        _tangent.Factor(1 / (Gamma * step));
        for (var stage = 0; stage < Stages; stage++)
        {
            Sum(A[stage], _start, 1, to);
            if (stage > 0)
            {
                Rates(time + (Places[stage] * step), to);
            }

            Sum(C[stage], stage == 0 ? _startRates : _rates, 1 / step, _right);
            for (var i = 0; i < _rises.Length; i++)
            {
                _right[_layout.Bodies + i] += Rises[stage] * step * _rises[i];
            }

            _tangent.Solve(_right, _stages[stage]);
        }

        // The last stage was evaluated at the end of the step, off the riding coordinates, and is the step but for its own share.
        var (last, error) = (_stages[^1], 0.0);
        for (var i = 0; i < to.Length; i++)
        {
            to[i] += last[i];
            error = Math.Max(error, Math.Abs(last[i]) * _perError[i]);
        }

        _forces.Rates(time + step, to, toRates);
        return error;
    }

    /// <summary>State, rates and their change with time at the begin of a step, in riding coordinates.</summary>
    private void Begin(double time, double[] from, double[] fromRates)
    {
        _tangent.Take(_forces, time, from);
        var cam = CamAt(time);
        _tangent.Carry(cam.Velocity, cam.Acceleration, _rises);
        var gasSlope = 0.0;
        _ = _layout.Spec.Gas?.At(_forces.Begin + (_forces.Speed * time), out gasSlope);
        _rises[0] += gasSlope * _forces.Speed;
        for (var i = 0; i < _rises.Length; i++)
        {
            _rises[i] = (_rises[i] / _layout.Masses[i]) - (i <= _layout.CamBody ? cam.Jerk : 0);
        }

        from.CopyTo(_start, 0);
        fromRates.CopyTo(_startRates, 0);
        Ride(cam, -1, _start);
        RideRates(cam, _startRates);
    }

    /// <summary>Rates of a state in riding coordinates.</summary>
    private void Rates(double time, double[] state)
    {
        var cam = CamAt(time);
        Ride(cam, 1, state);
        _forces.Rates(time, state, _rates);
        RideRates(cam, _rates);
    }

    /// <summary>Puts valve and follower on the cam's lift (1) or takes them off it (−1).</summary>
    private void Ride(in CamMotion cam, int way, double[] state)
    {
        for (var i = 0; i <= _layout.CamBody; i++)
        {
            state[i] += way * cam.Lift;
            state[_layout.Bodies + i] += way * cam.Velocity;
        }
    }

    private void RideRates(in CamMotion cam, double[] rates)
    {
        for (var i = 0; i <= _layout.CamBody; i++)
        {
            rates[i] -= cam.Velocity;
            rates[_layout.Bodies + i] -= cam.Acceleration;
        }
    }

    /// <summary>What valve and follower ride on: the cam where it pushed at the begin of the step, else nothing.</summary>
    private CamMotion CamAt(double time)
    {
        if (!_tangent.CamPushes)
        {
            return default;
        }

        var (angle, speed) = (_forces.Begin + (_forces.Speed * time), _forces.Speed);
        var point = _layout.Spec.Profile.At(angle, out var third);
        return new CamMotion(point.Lift, point.Slope * speed, point.Curvature * speed * speed, third * speed * speed * speed);
    }

    private void Sum(double[] weights, double[] start, double scale, double[] sum)
    {
        for (var i = 0; i < sum.Length; i++)
        {
            var value = 0.0;
            for (var j = 0; j < weights.Length; j++)
            {
                value += weights[j] * _stages[j][i];
            }

            sum[i] = start[i] + (scale * value);
        }
    }

    private readonly record struct CamMotion(double Lift, double Velocity, double Acceleration, double Jerk);
}
