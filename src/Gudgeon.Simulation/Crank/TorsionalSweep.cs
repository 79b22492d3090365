using System.Numerics;

namespace Gudgeon.Simulation.Crank;

/// <summary>How the line swings at one speed.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Joints">Greatest vibratory torque in the joint of each rotor over the cycle, all orders together, N·m.</param>
/// <param name="Orders">For each order the amplitude in each joint, N·m.</param>
public sealed record TorsionalPoint(double Speed, double[] Joints, double[][] Orders);

/// <summary>A speed at which an order of the torque meets a natural frequency.</summary>
/// <param name="Mode">Number of the natural frequency, from 1.</param>
/// <param name="Order">Times per turn of the crank.</param>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Joints">Amplitude of that order in the joint of each rotor there, N·m.</param>
public sealed record CriticalSpeed(int Mode, double Order, double Speed, double[] Joints);

/// <summary>The torsional vibration of a line over its speeds, driven by its cylinders.</summary>
/// <param name="Line">The line.</param>
/// <param name="Torque">Torque of the cylinders.</param>
/// <param name="Shapes">Natural frequencies and shapes.</param>
/// <param name="Points">Speeds, rising.</param>
/// <param name="Criticals">Critical speeds between the first and the last, by mode and order.</param>
public sealed record TorsionalSweep(TorsionalLine Line, TorqueOrders Torque, IReadOnlyList<TorsionalShape> Shapes, IReadOnlyList<TorsionalPoint> Points, IReadOnlyList<CriticalSpeed> Criticals)
{
    private const int Steps = 180;

    private static readonly double[] Cos = [.. Enumerable.Range(0, Steps).Select(i => Math.Cos(2 * Math.PI * i / Steps))];

    private static readonly double[] Sin = [.. Enumerable.Range(0, Steps).Select(i => Math.Sin(2 * Math.PI * i / Steps))];

    /// <summary>The sweep.</summary>
    /// <param name="line">The line.</param>
    /// <param name="torque">Torque of the cylinders.</param>
    /// <param name="speeds">Crank speeds, rad/s, rising.</param>
    public static TorsionalSweep Of(TorsionalLine line, TorqueOrders torque, IReadOnlyList<double> speeds)
    {
        var shapes = line.Shapes();
        var points = speeds.Select(s => Point(line, torque, s)).ToList();
        var criticals = from mode in Enumerable.Range(0, shapes.Count)
                        from place in Enumerable.Range(0, TorqueOrders.Count)
                        let speed = Calc.Crank.Torsion.CriticalSpeed(shapes[mode].Frequency, TorqueOrders.Order(place))
                        where speed >= speeds[0] && speed <= speeds[^1]
                        select new CriticalSpeed(mode + 1, TorqueOrders.Order(place), speed, Array.ConvertAll(Joints(line, torque, place, speed), j => j.Magnitude));
        return new TorsionalSweep(line, torque, shapes, points, [.. criticals]);
    }

    /// <summary>What a joint would carry at a crank speed, rad/s, were the line stiff: the greatest over the cycle, N·m.</summary>
    public double Rigid(int joint, double speed)
    {
        var stiff = Line.Stiffened();
        return Greatest([.. Enumerable.Range(0, TorqueOrders.Count).Select(k => Joints(stiff, Torque, k, speed)[joint])]);
    }

    private static TorsionalPoint Point(TorsionalLine line, TorqueOrders torque, double speed)
    {
        var orders = Enumerable.Range(0, TorqueOrders.Count).Select(k => Joints(line, torque, k, speed)).ToArray();
        return new TorsionalPoint(
            speed,
            [.. Enumerable.Range(0, line.Rotors.Count).Select(j => Greatest(Array.ConvertAll(orders, o => o[j])))],
            Array.ConvertAll(orders, o => Array.ConvertAll(o, j => j.Magnitude)));
    }

    /// <summary>Torque in each joint at one order.</summary>
    private static Complex[] Joints(TorsionalLine line, TorqueOrders torque, int place, double speed)
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
        return joints;
    }

    /// <summary>Greatest size over the cycle of a sum of orders.</summary>
    private static double Greatest(Complex[] orders)
    {
        var greatest = 0.0;
        for (var i = 0; i < Steps; i++)
        {
            var (sum, turn) = (0.0, 0);
            foreach (var order in orders)
            {
                turn = turn + i < Steps ? turn + i : turn + i - Steps;
                sum += (order.Real * Cos[turn]) - (order.Imaginary * Sin[turn]);
            }

            greatest = Math.Max(greatest, Math.Abs(sum));
        }

        return greatest;
    }
}
