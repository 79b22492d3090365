using System.Numerics;

namespace Gudgeon.Simulation.Crank;

/// <summary>
/// Torque of each cylinder on its throw by orders of the crank, at any speed between those of an engine run: gas as run, in
/// between by straight lines, inertia by the square of the speed. Orders are halves, for a cycle is two turns.
/// </summary>
public sealed class TorqueOrders
{
    /// <summary>Orders that are counted: 0.5 to 12.</summary>
    public const int Count = 24;

    private readonly double[] _speeds;
    private readonly Complex[][][] _gas;
    private readonly Complex[][] _inertia;

    private TorqueOrders(double[] speeds, Complex[][][] gas, Complex[][] inertia) => (_speeds, _gas, _inertia) = (speeds, gas, inertia);

    /// <summary>Speeds of the run, rad/s, rising; empty when only inertia is known.</summary>
    public IReadOnlyList<double> Speeds => _speeds;

    /// <summary>The order at a place, times per turn.</summary>
    public static double Order(int place) => (place + 1) / 2.0;

    /// <summary>The orders of an engine run, or of inertia alone where there is none.</summary>
    /// <param name="line">The crank.</param>
    /// <param name="run">Loads at the speeds of the run.</param>
    public static TorqueOrders Of(CrankLine line, IReadOnlyList<CrankLoads> run)
    {
        const int Steps = 720;
        double[] angles = run.Count > 0 ? run[0].Angles : [.. Enumerable.Range(0, Steps).Select(i => 4 * Math.PI * i / Steps)];
        var none = line.Throws.Select(_ => new double[angles.Length]).ToList();
        var inertia = CrankLoads.Of(line, 1, angles, none).TorqueOrders;
        var rising = run.OrderBy(r => r.Speed).ToList();
        return new TorqueOrders(
            [.. rising.Select(r => r.Speed)],
            [.. rising.Select(r => r.TorqueOrders.Zip(inertia, (all, masses) => all.Zip(masses, (a, m) => a - (r.Speed * r.Speed * m)).ToArray()).ToArray())],
            inertia);
    }

    /// <summary>Torque of a cylinder at an order, N·m: the real part of it times exp(i order θ).</summary>
    public Complex At(int cylinder, int place, double speed) => Gas(cylinder, place, speed) + (speed * speed * _inertia[cylinder][place]);

    /// <summary>Complex amplitudes of a course over a cycle.</summary>
    internal static Complex[] Orders(double[] course)
    {
        var length = course.Length;
        var (cos, sin) = (new double[length], new double[length]);
        for (var i = 0; i < length; i++)
        {
            (sin[i], cos[i]) = Math.SinCos(2 * Math.PI * i / length);
        }

        var orders = new Complex[Count];
        for (var k = 0; k < Count; k++)
        {
            var (real, imaginary, turn) = (0.0, 0.0, 0);
            foreach (var value in course)
            {
                real += value * cos[turn];
                imaginary -= value * sin[turn];
                turn = (turn + k + 1) % length;
            }

            orders[k] = new Complex(real, imaginary) * 2 / length;
        }

        return orders;
    }

    private Complex Gas(int cylinder, int place, double speed)
    {
        if (_speeds.Length == 0)
        {
            return Complex.Zero;
        }

        var above = Array.FindIndex(_speeds, s => s >= speed);
        if (above <= 0)
        {
            return _gas[above < 0 ? _speeds.Length - 1 : 0][cylinder][place];
        }

        var share = (speed - _speeds[above - 1]) / (_speeds[above] - _speeds[above - 1]);
        return ((1 - share) * _gas[above - 1][cylinder][place]) + (share * _gas[above][cylinder][place]);
    }
}
