namespace Gudgeon.Simulation.Sprint;

/// <summary>Full-throttle torque over engine speed, straight lines between the points: nothing is invented between two readings.</summary>
internal sealed class TorqueCurve
{
    private readonly double[] _speeds;
    private readonly double[] _torques;
    private int _last;

    public TorqueCurve(IReadOnlyList<double> speeds, IReadOnlyList<double> torques)
    {
        _speeds = [.. speeds];
        _torques = [.. torques];
    }

    public double LowestSpeed => _speeds[0];

    /// <summary>Torque at this engine speed, N·m; the end values are held just outside the ends, where a trial step may look.</summary>
    public double At(double speed)
    {
        if (speed <= _speeds[0])
        {
            return _torques[0];
        }

        if (speed >= _speeds[^1])
        {
            return _torques[^1];
        }

        var i = Segment(speed);
        var share = (speed - _speeds[i]) / (_speeds[i + 1] - _speeds[i]);
        return _torques[i] + (share * (_torques[i + 1] - _torques[i]));
    }

    // A run asks for one speed after the next: the segment of the last question is nearly always right.
    private int Segment(double speed)
    {
        if (speed < _speeds[_last] || speed >= _speeds[_last + 1])
        {
            var found = Array.BinarySearch(_speeds, speed);
            _last = found >= 0 ? found : ~found - 1;
        }

        return _last;
    }
}
