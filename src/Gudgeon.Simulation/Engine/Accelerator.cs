namespace Gudgeon.Simulation.Engine;

/// <summary>
/// Anderson's acceleration of the map from the state at the start of a cycle to the state at its end (Anderson, J. ACM 12
/// (1965) 547; Walker and Ni, SIAM J. Numer. Anal. 49 (2011) 1715). Plenum and airbox fill over tens of cycles; from the last
/// few cycles the fixed point is foreseen, so that far fewer are needed. The converged cycle itself is never touched.
/// </summary>
internal sealed class Accelerator(int size)
{
    private const int Memory = 6;

    private readonly double[][] _residualSteps = Arrays(size);
    private readonly double[][] _resultSteps = Arrays(size);
    private readonly double[] _residual = new double[size];
    private readonly double[] _result = new double[size];
    private readonly double[,] _normal = new double[Memory, Memory];
    private readonly double[] _right = new double[Memory];
    private int _seen;

    /// <summary>Forgets everything but the last cycle, after a jump that made things worse.</summary>
    public void Restart() => _seen = Math.Min(_seen, 1);

    /// <summary>Takes in one cycle and writes the next start into <paramref name="next"/>.</summary>
    /// <param name="start">State at the start, scaled by <paramref name="scale"/>.</param>
    /// <param name="end">State at the end.</param>
    /// <param name="scale">Size of each component.</param>
    /// <param name="next">Where to start the next cycle.</param>
    public void Take(ReadOnlySpan<double> start, ReadOnlySpan<double> end, ReadOnlySpan<double> scale, Span<double> next)
    {
        var slot = (_seen - 1 + Memory) % Memory;
        for (var j = 0; j < size; j++)
        {
            var residual = (end[j] - start[j]) / scale[j];
            _residualSteps[slot][j] = residual - _residual[j];
            _resultSteps[slot][j] = end[j] - _result[j];
            _residual[j] = residual;
            _result[j] = end[j];
        }

        end.CopyTo(next);
        _seen++;
        var count = Math.Min(_seen - 1, Memory);
        if (count == 0 || !Solve(count))
        {
            return;
        }

        for (var k = 0; k < count; k++)
        {
            for (var j = 0; j < size; j++)
            {
                next[j] -= _right[k] * _resultSteps[k][j];
            }
        }
    }

    /// <summary>Least-squares combination of the past residual steps that cancels the residual; false when they say nothing.</summary>
    private bool Solve(int count)
    {
        for (var a = 0; a < count; a++)
        {
            _right[a] = Dot(_residualSteps[a], _residual);
            for (var b = 0; b <= a; b++)
            {
                _normal[a, b] = _normal[b, a] = Dot(_residualSteps[a], _residualSteps[b]);
            }
        }

        for (var a = 0; a < count; a++)
        {
            _normal[a, a] *= 1 + 1e-10;
        }

        return Eliminate(count);
    }

    /// <summary>Cholesky's method in place.</summary>
    private bool Eliminate(int count)
    {
        for (var a = 0; a < count; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                var sum = _normal[a, b];
                for (var k = 0; k < b; k++)
                {
                    sum -= _normal[a, k] * _normal[b, k];
                }

                if (a != b)
                {
                    _normal[a, b] = sum / _normal[b, b];
                }
                else if (sum > 0)
                {
                    _normal[a, a] = Math.Sqrt(sum);
                }
                else
                {
                    return false;
                }
            }
        }

        Substitute(count);
        return true;
    }

    private void Substitute(int count)
    {
        for (var a = 0; a < count; a++)
        {
            for (var k = 0; k < a; k++)
            {
                _right[a] -= _normal[a, k] * _right[k];
            }

            _right[a] /= _normal[a, a];
        }

        for (var a = count - 1; a >= 0; a--)
        {
            for (var k = a + 1; k < count; k++)
            {
                _right[a] -= _normal[k, a] * _right[k];
            }

            _right[a] /= _normal[a, a];
        }
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var j = 0; j < a.Length; j++)
        {
            sum += a[j] * b[j];
        }

        return sum;
    }

    private static double[][] Arrays(int size) => [.. Enumerable.Range(0, Memory).Select(_ => new double[size])];
}
