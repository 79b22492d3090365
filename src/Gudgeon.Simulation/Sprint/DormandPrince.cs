namespace Gudgeon.Simulation.Sprint;

/// <summary>Right-hand side of a set of ordinary differential equations that do not depend on time itself.</summary>
/// <param name="state">Where the system is.</param>
/// <param name="rates">Filled with the time derivatives.</param>
public delegate void Rates(ReadOnlySpan<double> state, Span<double> rates);

/// <summary>
/// One step of the explicit Runge-Kutta pair of order 5(4). Dormand and Prince, A family of embedded Runge-Kutta
/// formulae, J. Comput. Appl. Math. 6 (1980) 19-26, table 2, RK5(4)7M; coefficients recalled, order verified by test.
/// </summary>
public sealed class DormandPrince
{
    private static readonly double[][] A =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    private static readonly double[] ErrorWeights =
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    private readonly Rates _rates;
    private readonly double[][] _slopes;
    private readonly double[] _trial;

    /// <param name="size">Number of equations.</param>
    /// <param name="rates">The right-hand side.</param>
    public DormandPrince(int size, Rates rates)
    {
        _rates = rates;
        _trial = new double[size];
        _slopes = [.. A.Select(_ => new double[size])];
    }

    /// <summary>Goes from <paramref name="from"/> over time <paramref name="step"/> to <paramref name="to"/>.</summary>
    public void Step(ReadOnlySpan<double> from, double step, Span<double> to)
    {
        from.CopyTo(_trial);
        for (var stage = 0; stage < A.Length; stage++)
        {
            if (stage > 0)
            {
                Advance(from, step, stage);
            }

            _rates(_trial, _slopes[stage]);
        }

        // The weights of the fifth-order result are those of the last stage.
        _trial.CopyTo(to);
    }

    /// <summary>Estimated error of one component of the last step, absolute.</summary>
    public double Error(int component, double step)
    {
        var sum = 0.0;
        for (var stage = 0; stage < ErrorWeights.Length; stage++)
        {
            sum += ErrorWeights[stage] * _slopes[stage][component];
        }

        return Math.Abs(step * sum);
    }

    private void Advance(ReadOnlySpan<double> from, double step, int stage)
    {
        var weights = A[stage];
        for (var i = 0; i < _trial.Length; i++)
        {
            var sum = 0.0;
            for (var j = 0; j < weights.Length; j++)
            {
                sum += weights[j] * _slopes[j][i];
            }

            _trial[i] = from[i] + (step * sum);
        }
    }
}
