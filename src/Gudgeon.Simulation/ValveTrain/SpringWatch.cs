namespace Gudgeon.Simulation.ValveTrain;

/// <summary>What one spring did over a turn of the cam.</summary>
internal sealed class SpringWatch(ColumnLayout spring, int index)
{
    private double _surge;
    private double _least = double.PositiveInfinity;
    private double _greatest;
    private double _room = double.PositiveInfinity;

    /// <summary>Takes down a state in which the forces have just been evaluated.</summary>
    public void See(double[] state, TrainForces forces)
    {
        _least = Math.Min(_least, forces.SpringForces[index]);
        _greatest = Math.Max(_greatest, forces.SpringForces[index]);
        for (var e = 0; e < spring.Elements; e++)
        {
            _room = Math.Min(_room, 1 - (TrainBooks.Squeeze(spring, e, state, 0) / spring.Room));
            if (e > 0)
            {
                _surge = Math.Max(_surge, Math.Abs(state[spring.First + e - 1] - (state[0] * e / spring.Elements)));
            }
        }
    }

    public SpringMotion Motion() => new(_surge, _least, _greatest, double.IsFinite(spring.Room) ? _room : null);
}
