namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// The train made linear at one state: stiffness and damping of whatever pushes there, each between a body and the head or
/// between a body and the one it hangs on. Since the bodies make a tree, the matrix of an implicit step is solved from the
/// leaves to the valve and back without any filling in, in a number of operations that goes with the number of bodies.
/// </summary>
internal sealed class TrainTangent(TrainLayout layout)
{
    private readonly TrainLayout _layout = layout;
    private readonly double[] _groundStiffness = new double[layout.Bodies];
    private readonly double[] _groundDamping = new double[layout.Bodies];
    private readonly double[] _linkStiffness = new double[layout.Bodies];
    private readonly double[] _linkDamping = new double[layout.Bodies];
    private readonly double[] _pivots = new double[layout.Bodies];
    private readonly double[] _shares = new double[layout.Bodies];
    private readonly double[] _loads = new double[layout.Bodies];
    private double _inverse;
    private double _camStiffness;
    private double _camDamping;

    /// <summary>Whether the cam pushes in the state taken.</summary>
    public bool CamPushes => _camStiffness > 0;

    /// <summary>Takes stiffness and damping of all that pushes in a state.</summary>
    public void Take(TrainForces forces, double time, double[] state)
    {
        var (spec, bodies, cam) = (_layout.Spec, _layout.Bodies, _layout.CamBody);
        Array.Clear(_groundStiffness);
        Array.Clear(_groundDamping);
        TakeSeat(state[0], state[bodies]);
        var point = spec.Profile.At(forces.Begin + (forces.Speed * time));
        var (overlap, closing) = (point.Lift - spec.Lash - state[cam], (point.Slope * forces.Speed) - state[bodies + cam]);
        var carries = TrainForces.Push(spec.CamStiffness * overlap, _layout.CamDamping * closing) > 0;
        (_camStiffness, _camDamping) = carries ? (spec.CamStiffness, _layout.CamDamping) : (0, 0);
        if (cam == 1)
        {
            var pushes = TrainForces.Push(_layout.TrainStiffness * (state[1] - state[0]), _layout.TrainDamping * (state[bodies + 1] - state[bodies])) > 0;
            (_linkStiffness[1], _linkDamping[1]) = pushes ? (_layout.TrainStiffness, _layout.TrainDamping) : (0, 0);
        }

        foreach (var spring in _layout.Springs)
        {
            TakeColumn(spring, state);
        }
    }

    /// <summary>
    /// What the forces change by with time when valve and follower keep their places on the moving cam, N/s: the cam's own
    /// then does not change, but seat and springs are moved.
    /// </summary>
    /// <param name="velocity">Of the cam's lift, m/s.</param>
    /// <param name="acceleration">Of the cam's lift, m/s².</param>
    /// <param name="rises">One for each body.</param>
    public void Carry(double velocity, double acceleration, double[] rises)
    {
        for (var i = 0; i < rises.Length; i++)
        {
            rises[i] = i <= _layout.CamBody ? -(_groundStiffness[i] * velocity) - (_groundDamping[i] * acceleration) : 0;
        }

        for (var i = _layout.CamBody + 1; i < rises.Length; i++)
        {
            if (_layout.Parents[i] == 0)
            {
                var rise = (_linkStiffness[i] * velocity) + (_linkDamping[i] * acceleration);
                rises[i] += rise;
                rises[0] -= rise;
            }
        }
    }

    /// <summary>Splits (inverse² M + inverse C + K) into its pivots. <paramref name="inverse"/> is one over γ times the step, 1/s.</summary>
    public void Factor(double inverse)
    {
        _inverse = inverse;
        for (var i = 0; i < _pivots.Length; i++)
        {
            _pivots[i] = (inverse * ((inverse * _layout.Masses[i]) + _groundDamping[i] + (i == 0 ? 0 : _linkDamping[i]))) + _groundStiffness[i] + (i == 0 ? 0 : _linkStiffness[i]);
        }

        _pivots[_layout.CamBody] += (inverse * _camDamping) + _camStiffness;
        for (var i = 1; i < _pivots.Length; i++)
        {
            _pivots[_layout.Parents[i]] += Link(i);
        }

        for (var i = 1; i < _pivots.Length; i++)
        {
            _shares[i] = Link(i) / _pivots[i];
            _pivots[_layout.Parents[i]] -= Link(i) * _shares[i];
        }
    }

    /// <summary>Solves (inverse − J) x = right, J the Jacobian of the rates; right and x are as long as a state.</summary>
    public void Solve(double[] right, double[] x)
    {
        var n = _pivots.Length;
        for (var i = 0; i < n; i++)
        {
            _loads[i] = (_layout.Masses[i] * (right[n + i] + (_inverse * right[i]))) + (_groundDamping[i] * right[i]);
        }

        _loads[_layout.CamBody] += _camDamping * right[_layout.CamBody];
        for (var i = 1; i < n; i++)
        {
            var parent = _layout.Parents[i];
            var damped = _linkDamping[i] * (right[i] - right[parent]);
            _loads[i] += damped;
            _loads[parent] -= damped;
        }

        for (var i = 1; i < n; i++)
        {
            _loads[_layout.Parents[i]] += _shares[i] * _loads[i];
        }

        x[0] = _loads[0] / _pivots[0];
        for (var i = n - 1; i > 0; i--)
        {
            x[i] = (_loads[i] / _pivots[i]) + (_shares[i] * x[_layout.Parents[i]]);
        }

        for (var i = 0; i < n; i++)
        {
            x[n + i] = (_inverse * x[i]) - right[i];
        }
    }

    private double Link(int body) => (_inverse * _linkDamping[body]) + _linkStiffness[body];

    private void TakeSeat(double travel, double speed)
    {
        if (TrainForces.Push(_layout.Spec.SeatStiffness * (_layout.SeatRest - travel), -_layout.SeatDamping * speed) > 0)
        {
            _groundStiffness[0] += _layout.Spec.SeatStiffness;
            _groundDamping[0] += _layout.SeatDamping;
        }

        if (Math.Abs(speed) < TrainForces.FrictionSpeed)
        {
            _groundDamping[0] += _layout.Spec.GuideFriction / TrainForces.FrictionSpeed;
        }
    }

    private void TakeColumn(ColumnLayout spring, double[] state)
    {
        var (last, bodies, below, belowSpeed) = (spring.Elements - 1, _layout.Bodies, 0.0, 0.0);
        for (var e = 0; e <= last; e++)
        {
            var body = e == last ? 0 : spring.First + e;
            var (squeeze, rate) = (state[body] - below, state[bodies + body] - belowSpeed);
            (below, belowSpeed) = (state[body], state[bodies + body]);
            var pushes = (e > 0 && e < last) || TrainForces.Push(spring.ShutLoad + (spring.Stiffness * squeeze), spring.Damping * rate) > 0;
            var (stiffness, damping) = pushes ? (spring.Stiffness, spring.Damping) : (0, 0);
            stiffness += squeeze > spring.Room ? spring.ClashStiffness : 0;
            if (e == 0)
            {
                _groundStiffness[body] += stiffness;
                _groundDamping[body] += damping;
            }
            else
            {
                (_linkStiffness[spring.First + e - 1], _linkDamping[spring.First + e - 1]) = (stiffness, damping);
            }
        }
    }
}
