using System.Numerics;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// The explicit Runge-Kutta pair of order 5(4) whose last stage is the first of the next step. Dormand and Prince, A family of
/// embedded Runge-Kutta formulae, J. Comput. Appl. Math. 6 (1980) 19-26, table 2, RK5(4)7M; order verified by test.
/// </summary>
internal sealed class ExplicitStep : IStep
{
    private readonly IMotion _motion;
    private readonly double[] _perError;
    private readonly double[] _k2;
    private readonly double[] _k3;
    private readonly double[] _k4;
    private readonly double[] _k5;
    private readonly double[] _k6;
    private readonly double[] _trial;

    /// <param name="motion">The equations.</param>
    /// <param name="perError">One over the error allowed in each component; as long as a state.</param>
    public ExplicitStep(IMotion motion, double[] perError)
    {
        (_motion, _perError) = (motion, perError);
        var size = motion.Size;
        (_k2, _k3, _k4, _k5, _k6, _trial) = (new double[size], new double[size], new double[size], new double[size], new double[size], new double[size]);
    }

    public double Exponent => 0.2;

    public double Try(double time, double step, double[] from, double[] fromRates, double[] to, double[] toRates)
    {
        var h = new Vector<double>(step);
        for (var i = 0; i < from.Length; i += Vector<double>.Count)
        {
            Lanes.Put(_trial, i, Lanes.At(from, i) + (h * (1.0 / 5) * Lanes.At(fromRates, i)));
        }

        _motion.Rates(time + (step / 5), _trial, _k2);
        for (var i = 0; i < from.Length; i += Vector<double>.Count)
        {
            Lanes.Put(_trial, i, Lanes.At(from, i) + (h * (((3.0 / 40) * Lanes.At(fromRates, i)) + ((9.0 / 40) * Lanes.At(_k2, i)))));
        }

        _motion.Rates(time + (0.3 * step), _trial, _k3);
        for (var i = 0; i < from.Length; i += Vector<double>.Count)
        {
            var slope = ((44.0 / 45) * Lanes.At(fromRates, i)) - ((56.0 / 15) * Lanes.At(_k2, i)) + ((32.0 / 9) * Lanes.At(_k3, i));
            Lanes.Put(_trial, i, Lanes.At(from, i) + (h * slope));
        }

        _motion.Rates(time + (0.8 * step), _trial, _k4);
        for (var i = 0; i < from.Length; i += Vector<double>.Count)
        {
            var slope = ((19372.0 / 6561) * Lanes.At(fromRates, i)) - ((25360.0 / 2187) * Lanes.At(_k2, i))
                + ((64448.0 / 6561) * Lanes.At(_k3, i)) - ((212.0 / 729) * Lanes.At(_k4, i));
            Lanes.Put(_trial, i, Lanes.At(from, i) + (h * slope));
        }

        _motion.Rates(time + (8.0 / 9 * step), _trial, _k5);
        for (var i = 0; i < from.Length; i += Vector<double>.Count)
        {
            var slope = ((9017.0 / 3168) * Lanes.At(fromRates, i)) - ((355.0 / 33) * Lanes.At(_k2, i))
                + ((46732.0 / 5247) * Lanes.At(_k3, i)) + ((49.0 / 176) * Lanes.At(_k4, i)) - ((5103.0 / 18656) * Lanes.At(_k5, i));
            Lanes.Put(_trial, i, Lanes.At(from, i) + (h * slope));
        }

        _motion.Rates(time + step, _trial, _k6);
        for (var i = 0; i < from.Length; i += Vector<double>.Count)
        {
            var slope = ((35.0 / 384) * Lanes.At(fromRates, i)) + ((500.0 / 1113) * Lanes.At(_k3, i))
                + ((125.0 / 192) * Lanes.At(_k4, i)) - ((2187.0 / 6784) * Lanes.At(_k5, i)) + ((11.0 / 84) * Lanes.At(_k6, i));
            Lanes.Put(to, i, Lanes.At(from, i) + (h * slope));
        }

        _motion.Rates(time + step, to, toRates);
        return Error(h, fromRates, toRates);
    }

    private double Error(Vector<double> h, double[] first, double[] last)
    {
        var greatest = Vector<double>.Zero;
        for (var i = 0; i < first.Length; i += Vector<double>.Count)
        {
            var error = ((71.0 / 57600) * Lanes.At(first, i)) - ((71.0 / 16695) * Lanes.At(_k3, i)) + ((71.0 / 1920) * Lanes.At(_k4, i))
                - ((17253.0 / 339200) * Lanes.At(_k5, i)) + ((22.0 / 525) * Lanes.At(_k6, i)) - ((1.0 / 40) * Lanes.At(last, i));
            greatest = Vector.Max(greatest, Vector.Abs(h * error * Lanes.At(_perError, i)));
        }

        var most = greatest[0];
        for (var lane = 1; lane < Vector<double>.Count; lane++)
        {
            most = Math.Max(most, greatest[lane]);
        }

        return most;
    }
}
