using MathNet.Numerics.LinearAlgebra;

namespace Gudgeon.Book.Sweeps;

/// <summary>
/// A quadratic in a few numbers through points that were tried: of all that fit them best in the sense of least squares the one with the
/// least coefficients, so that fewer points than coefficients will do. Such models are taken for a step of direct search in
/// Conn and Le Digabel, Optim. Methods Softw. 28 (2013) 139–158.
/// </summary>
internal sealed class QuadraticModel
{
    private readonly double[] _centre;
    private readonly double _radius;
    private readonly Vector<double> _coefficients;

    private QuadraticModel(double[] centre, double radius, Vector<double> coefficients)
    {
        _centre = centre;
        _radius = radius;
        _coefficients = coefficients;
    }

    /// <summary>How many points decide every coefficient.</summary>
    public static int Coefficients(int dimensions) => (dimensions + 1) * (dimensions + 2) / 2;

    /// <summary>The model.</summary>
    /// <param name="centre">About where it is to be good.</param>
    /// <param name="points">The points.</param>
    /// <param name="values">A finite value for each.</param>
    public static QuadraticModel Fit(double[] centre, IReadOnlyList<double[]> points, IReadOnlyList<double> values)
    {
        var radius = Math.Max(points.Max(p => p.Zip(centre, (a, b) => Math.Abs(a - b)).Max()), 1e-9);
        var model = new QuadraticModel(centre, radius, Vector<double>.Build.Dense(1));
        var rows = Matrix<double>.Build.DenseOfRows(points.Select(model.Terms));
        return new QuadraticModel(centre, radius, rows.PseudoInverse() * Vector<double>.Build.DenseOfEnumerable(values));
    }

    /// <summary>Its value at a point.</summary>
    public double At(double[] point)
    {
        var (terms, sum) = (Terms(point), 0.0);
        for (var i = 0; i < terms.Length; i++)
        {
            sum += terms[i] * _coefficients[i];
        }

        return sum;
    }

    private double[] Terms(double[] point)
    {
        var n = point.Length;
        var terms = new double[Coefficients(n)];
        terms[0] = 1;
        var next = n + 1;
        for (var i = 0; i < n; i++)
        {
            terms[i + 1] = Scaled(point, i);
            for (var j = i; j < n; j++)
            {
                terms[next++] = Scaled(point, i) * Scaled(point, j) / (i == j ? 2 : 1);
            }
        }

        return terms;
    }

    private double Scaled(double[] point, int i) => (point[i] - _centre[i]) / _radius;
}
