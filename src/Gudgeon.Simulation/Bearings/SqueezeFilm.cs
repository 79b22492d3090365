namespace Gudgeon.Simulation.Bearings;

/// <summary>
/// Oil film of a journal that moves without turning, by the Reynolds equation in two directions: isoviscous, no pressure
/// below that at the ends. In axes that turn with the mean speed of journal and shell every load on a journal is carried by
/// such a film, so its forces at all places and directions are all that the mobility method asks for. Lengths are in radial
/// clearances, angles from the place where the journal is nearest to the shell; pressure in μ (R/c)² V/c.
/// </summary>
/// <remarks>
/// Half of the bearing, from one end to the plane of symmetry; second-order conservative differences, projected
/// over-relaxation. The pressure of one solution is where the next one starts.
/// </remarks>
public sealed class SqueezeFilm
{
    private const int Across = 16;
    private const double Tolerance = 1e-7;
    private const int MaxSweeps = 20_000;
    private readonly int _around;
    private readonly double _step;
    private readonly double _slenderness;
    private readonly double[] _node;
    private readonly double[] _face;
    private readonly double[] _cos;
    private readonly double[] _sin;
    private readonly double[] _pressure;

    /// <param name="eccentricity">Eccentricity ratio, 0 to 0.995.</param>
    /// <param name="slenderness">Length over diameter.</param>
    /// <param name="around">Nodes round the shell.</param>
    public SqueezeFilm(double eccentricity, double slenderness, int around)
    {
        (_around, _step, _slenderness) = (around, Math.Tau / around, slenderness);
        (_node, _face, _cos, _sin) = (new double[around], new double[around], new double[around], new double[around]);
        _pressure = new double[around * (Across + 1)];
        for (var i = 0; i < around; i++)
        {
            (_sin[i], _cos[i]) = Math.SinCos(i * _step);
            _node[i] = Cube(1 - (eccentricity * _cos[i]));
            _face[i] = Cube(1 - (eccentricity * Math.Cos((i + 0.5) * _step)));
        }
    }

    /// <summary>
    /// Ring at which oil stands without pressure, as in a bearing that is fed there by a groove along it; none when negative:
    /// the film then begins wherever its own pressure does.
    /// </summary>
    internal int Fed { get; init; } = -1;

    /// <summary>Load along the line of centres, in μ (R/c)² V/c R L.</summary>
    public double Along { get; private set; }

    /// <summary>Load a quarter turn on from it.</summary>
    public double Sideways { get; private set; }

    /// <summary>Greatest pressure.</summary>
    public double Peak { get; private set; }

    /// <summary>Oil that leaves over both ends, in L D V.</summary>
    public double SideFlow { get; private set; }

    /// <summary>Solves it for a unit velocity.</summary>
    /// <param name="direction">Direction of the velocity from the line of centres, rad.</param>
    public void Solve(double direction)
    {
        Relax(direction);
        Integrate();
    }

    private void Relax(double direction)
    {
        var ratio = _step * Across / _slenderness;
        var axial = ratio * ratio;
        var relaxation = Relaxation(axial);
        var (sin, cos) = Math.SinCos(direction);
        for (var sweep = 0; sweep < MaxSweeps; sweep++)
        {
            double change = 0, size = 1e-300;
            for (var i = 0; i < _around; i++)
            {
                if (i != Fed)
                {
                    var source = 12 * _step * _step * ((cos * _cos[i]) + (sin * _sin[i]));
                    Ring(i, axial, relaxation, source, ref change, ref size);
                }
            }

            if (change <= Tolerance * size)
            {
                return;
            }
        }

        throw new InvalidOperationException("the oil film did not converge");
    }

    private void Ring(int i, double axial, double relaxation, double source, ref double change, ref double size)
    {
        const int Row = Across + 1;
        var before = i == 0 ? _around - 1 : i - 1;
        var after = i + 1 == _around ? 0 : i + 1;
        var (low, high, side) = (_face[before], _face[i], axial * _node[i]);
        var diagonal = 1 / (low + high + (2 * side));
        var back = _pressure.AsSpan(before * Row, Row);
        var here = _pressure.AsSpan(i * Row, Row);
        var on = _pressure.AsSpan(after * Row, Row);
        for (var j = 1; j <= Across; j++)
        {
            var mirror = j == Across ? here[j - 1] : here[j + 1];
            var balanced = ((low * back[j]) + (high * on[j]) + (side * (here[j - 1] + mirror)) + source) * diagonal;
            var next = Math.Max(0, here[j] + (relaxation * (balanced - here[j])));
            change = Math.Max(change, Math.Abs(next - here[j]));
            size = Math.Max(size, next);
            here[j] = next;
        }
    }

    /// <summary>Best relaxation for the slowest error: half a wave over the half turn under pressure, a quarter over the half length.</summary>
    private double Relaxation(double axial)
    {
        var slowest = (Math.Cos(2 * Math.PI / _around) + (axial * Math.Cos(Math.PI / (2 * Across)))) / (1 + axial);
        return 2 / (1 + Math.Sqrt(1 - (slowest * slowest)));
    }

    private void Integrate()
    {
        double along = 0, sideways = 0, peak = 0, flow = 0;
        for (var i = 0; i < _around; i++)
        {
            var ring = _pressure.AsSpan(i * (Across + 1), Across + 1);
            var mean = ring[Across] / 2;
            for (var j = 1; j < Across; j++)
            {
                mean += ring[j];
            }

            mean /= Across;
            along += _step * mean * _cos[i];
            sideways += _step * mean * _sin[i];
            peak = Math.Max(peak, ring[Across]);
            flow += _step * _node[i] * ((4 * ring[1]) - ring[2]) * Across / 2;
        }

        (Along, Sideways, Peak, SideFlow) = (along, sideways, peak, flow / (24 * _slenderness * _slenderness));
    }

    private static double Cube(double x) => x * x * x;
}
