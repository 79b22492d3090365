using System.Numerics;

namespace Gudgeon.Simulation.Crank;

/// <summary>How the line swings at one speed.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Joints">Greatest vibratory torque in the joint of each rotor over the cycle, all orders together, N·m.</param>
/// <param name="Orders">For each order the amplitude in each joint, N·m.</param>
/// <param name="Rigid">What each joint would carry were the line stiff, N·m.</param>
/// <param name="Twist">Greatest swing of each rotor against the first over the cycle, rad.</param>
public sealed record TorsionalPoint(double Speed, double[] Joints, double[][] Orders, double[] Rigid, double[] Twist);

/// <summary>A speed at which an order of the torque meets a natural frequency.</summary>
/// <param name="Mode">Number of the natural frequency, from 1.</param>
/// <param name="Order">Times per turn of the crank.</param>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Joints">Amplitude of that order in the joint of each rotor there, N·m.</param>
public sealed record CriticalSpeed(int Mode, double Order, double Speed, double[] Joints);

/// <summary>The torsional vibration of a line over its speeds, driven by its cylinders.</summary>
/// <param name="Line">The line.</param>
/// <param name="Shapes">Natural frequencies and shapes.</param>
/// <param name="Points">Speeds, rising.</param>
/// <param name="Criticals">Critical speeds between the first and the last, by mode and order.</param>
public sealed record TorsionalSweep(TorsionalLine Line, IReadOnlyList<TorsionalShape> Shapes, IReadOnlyList<TorsionalPoint> Points, IReadOnlyList<CriticalSpeed> Criticals)
{
    private const int Steps = 180;

    private static readonly Complex[] Turns = [.. Enumerable.Range(0, Steps).Select(i => Complex.FromPolarCoordinates(1, 2 * Math.PI * i / Steps))];

    /// <summary>The sweep.</summary>
    /// <param name="line">The line.</param>
    /// <param name="torque">Torque of the cylinders.</param>
    /// <param name="speeds">Crank speeds, rad/s, rising.</param>
    public static TorsionalSweep Of(TorsionalLine line, TorqueOrders torque, IReadOnlyList<double> speeds)
    {
        var (shapes, rigid) = (line.Shapes(), line.Stiffened());
        var points = speeds.Select(s => Point(line, rigid, torque, s)).ToList();
        var criticals = from mode in Enumerable.Range(0, shapes.Count)
                        from place in Enumerable.Range(0, TorqueOrders.Count)
                        let speed = Calc.Crank.Torsion.CriticalSpeed(shapes[mode].Frequency, TorqueOrders.Order(place))
                        where speed >= speeds[0] && speed <= speeds[^1]
                        select new CriticalSpeed(mode + 1, TorqueOrders.Order(place), speed, [.. Amplitudes(line, torque, place, speed).Joints.Select(j => j.Magnitude)]);
        return new TorsionalSweep(line, shapes, points, [.. criticals]);
    }

    private static TorsionalPoint Point(TorsionalLine line, TorsionalLine rigid, TorqueOrders torque, double speed)
    {
        var each = Enumerable.Range(0, TorqueOrders.Count).Select(k => Amplitudes(line, torque, k, speed)).ToArray();
        var stiff = Enumerable.Range(0, TorqueOrders.Count).Select(k => Amplitudes(rigid, torque, k, speed).Joints).ToArray();
        var count = line.Rotors.Count;
        return new TorsionalPoint(
            speed,
            Greatest(count, (k, j) => each[k].Joints[j]),
            Array.ConvertAll(each, e => Array.ConvertAll(e.Joints, j => j.Magnitude)),
            Greatest(count, (k, j) => stiff[k][j]),
            Greatest(count, (k, j) => each[k].Swings[j] - each[k].Swings[0]));
    }

    private static (Complex[] Swings, Complex[] Joints) Amplitudes(TorsionalLine line, TorqueOrders torque, int place, double speed)
    {
        var count = line.Rotors.Count;
        var (torques, swings, joints) = (new Complex[count], new Complex[count], new Complex[count]);
        for (var i = 0; i < count; i++)
        {
            foreach (var cylinder in line.Rotors[i].Cylinders)
            {
                torques[i] += torque.At(cylinder, place, speed);
            }
        }

        line.Respond(TorqueOrders.Order(place) * speed, torques, swings, joints);
        return (swings, joints);
    }

    /// <summary>Greatest size over the cycle of a sum of orders, for each rotor.</summary>
    private static double[] Greatest(int count, Func<int, int, Complex> order)
    {
        var greatest = new double[count];
        var amplitudes = new Complex[TorqueOrders.Count];
        for (var j = 0; j < count; j++)
        {
            for (var k = 0; k < amplitudes.Length; k++)
            {
                amplitudes[k] = order(k, j);
            }

            for (var i = 0; i < Steps; i++)
            {
                var sum = 0.0;
                for (var k = 0; k < amplitudes.Length; k++)
                {
                    var turn = Turns[(k + 1) * i % Steps];
                    sum += (amplitudes[k].Real * turn.Real) - (amplitudes[k].Imaginary * turn.Imaginary);
                }

                greatest[j] = Math.Max(greatest[j], Math.Abs(sum));
            }
        }

        return greatest;
    }
}
