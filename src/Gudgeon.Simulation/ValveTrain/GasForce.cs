namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// Gas force on the valve over one turn of the cam: positive opens it, negative presses it shut. Read straight between the
/// points, repeated every turn.
/// </summary>
public sealed class GasForce
{
    private const int Grid = 1440;
    private readonly double[] _forces = new double[Grid + 1];

    /// <param name="angles">Cam angles from the nose of the lobe, rad, rising over less than one turn.</param>
    /// <param name="forces">Force at each, N.</param>
    /// <exception cref="TrainSpecException">The points make no course of a force.</exception>
    public GasForce(IReadOnlyList<double> angles, IReadOnlyList<double> forces)
    {
        TrainSpecException.Unless(
            angles.Count == forces.Count && angles.Count >= 2,
            $"gas force: {angles.Count} angles and {forces.Count} forces given, wanted at least two of each and as many of one as of the other");
        for (var i = 0; i < angles.Count; i++)
        {
            TrainSpecException.Unless(double.IsFinite(angles[i]) && (i == 0 || angles[i] > angles[i - 1]), $"gas force: cam angles must rise, but point {i + 1} does not");
            TrainSpecException.Unless(double.IsFinite(forces[i]), $"gas force: the force at point {i + 1} is not a number");
        }

        TrainSpecException.Unless(angles[^1] - angles[0] < 2 * Math.PI, $"gas force: the angles go over {(angles[^1] - angles[0]) * 180 / Math.PI:0.#}° of cam, wanted less than 360°");
        double[] closedAngles = [.. angles, angles[0] + (2 * Math.PI)];
        double[] closedForces = [.. forces, forces[0]];
        for (var i = 0; i <= Grid; i++)
        {
            var angle = Turned((2 * Math.PI * i / Grid) - angles[0]) + angles[0];
            _forces[i] = Engine.Table.Read(closedAngles, closedForces, angle);
        }

        _forces[Grid] = _forces[0];
    }

    /// <summary>Force at a cam angle from the nose, rad, N.</summary>
    public double At(double angle) => At(angle, out _);

    /// <summary>Force and what it changes by per cam rad, N and N/rad.</summary>
    internal double At(double angle, out double slope)
    {
        var place = Turned(angle) * (Grid / (2 * Math.PI));
        var i = Math.Min((int)place, Grid - 1);
        var step = _forces[i + 1] - _forces[i];
        slope = step * (Grid / (2 * Math.PI));
        return _forces[i] + ((place - i) * step);
    }

    private static double Turned(double angle) => angle - (2 * Math.PI * Math.Floor(angle / (2 * Math.PI)));
}
