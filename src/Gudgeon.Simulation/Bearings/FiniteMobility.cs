using System.Globalization;
using Gudgeon.Calc.Bearings;

namespace Gudgeon.Simulation.Bearings;

/// <summary>
/// Mobility, greatest pressure and side flow of a bearing of finite length, read smoothly from a table of films that were
/// solved once (<see cref="MobilityNode"/>); the table is made by the bench: <c>bearings table</c>.
/// </summary>
public readonly struct FiniteMobility : IMobility
{
    /// <summary>Longest bearing that the table holds, length over diameter.</summary>
    public const double Longest = 1;

    /// <summary>Lengths over diameter that were solved.</summary>
    public static readonly IReadOnlyList<double> Slendernesses = [0, 0.15, 0.25, 0.35, 0.5, 0.7, Longest];

    private const int Rings = 16, Rays = 19, Shares = 4;
    private const double RingStep = 0.06, RayStep = Math.PI / (Rays - 1);
    private const double Centre = 0.02;
    private const int Width = Rays + 2;
    private static readonly Lazy<double[]> Solved = new(Read);

    private readonly double _slenderness;

    /// <summary>The table at this length, with a ring and a ray more at each edge.</summary>
    private readonly double[] _table;

    /// <param name="slenderness">Length over diameter, above 0 and up to <see cref="Longest"/>.</param>
    public FiniteMobility(double slenderness)
    {
        BearingSpecException.Unless(slenderness is > 0 and <= Longest, $"bearing length: given {slenderness:0.###} of the journal diameter, wanted more than 0 and at most {Longest:0.#}");
        _slenderness = slenderness;
        _table = new double[(Rings + 2) * Width * Shares];
        Fill();
        Edge();
    }

    /// <summary>Eccentricity ratio of a ring of the table: they stand closer near the shell. The first is a little off the middle, where directions mean nothing.</summary>
    public static double Ring(int ring)
    {
        var left = 1 - (ring * RingStep);
        return Math.Max(Centre, 1 - (left * left));
    }

    /// <summary>The table as text, by solving every film; takes a minute or two.</summary>
    public static IEnumerable<string> Make()
    {
        foreach (var slenderness in Slendernesses)
        {
            for (var ring = 0; ring < Rings; ring++)
            {
                var nodes = Enumerable.Range(0, Rays).Select(ray => MobilityNode.Solve(Ring(ring), ray * RayStep, slenderness));
                yield return string.Join(' ', nodes.Select(n => string.Create(CultureInfo.InvariantCulture, $"{n.Along:0.####} {n.Across:0.####} {n.Peak:0.####} {n.SideFlow:0.####}")));
            }
        }
    }

    /// <inheritdoc/>
    public MobilityVector At(double along, double across)
    {
        Span<double> weights = stackalloc double[8];
        var at = Place(along, across, weights);
        return new MobilityVector(
            Blend(at, 0, weights) * MobilityNode.ClosedAlong(along, _slenderness),
            Blend(at, 1, weights) * MobilityNode.ClosedAcross(along, across, _slenderness));
    }

    /// <summary>Greatest pressure over load by projected area, and side flow over what the journal sweeps.</summary>
    public (double Peak, double SideFlow) Film(double along, double across)
    {
        Span<double> weights = stackalloc double[8];
        var at = Place(along, across, weights);
        return (Blend(at, 2, weights) / Math.Sqrt(1 - along), Math.Min(1, Blend(at, 3, weights)));
    }

    /// <summary>First of the four rings and rays around a place, and the weights of Catmull and Rom's cubic on them.</summary>
    private static int Place(double along, double across, Span<double> weights)
    {
        var eccentricity = Math.Sqrt((along * along) + (across * across));
        var ring = Math.Min((1 - Math.Sqrt(Math.Max(0, 1 - eccentricity))) / RingStep, Rings - 1);
        var ray = Math.Min(Math.Atan2(Math.Abs(across), along) / RayStep, Rays - 1);
        var (i, j) = (Math.Min((int)ring, Rings - 2), Math.Min((int)ray, Rays - 2));
        Weights(ring - i, weights);
        Weights(ray - j, weights[4..]);
        return ((i * Width) + j) * Shares;
    }

    private static void Weights(double t, Span<double> weights)
    {
        var (square, cube) = (t * t, t * t * t);
        weights[0] = (-t + (2 * square) - cube) / 2;
        weights[1] = (2 - (5 * square) + (3 * cube)) / 2;
        weights[2] = (t + (4 * square) - (3 * cube)) / 2;
        weights[3] = (cube - square) / 2;
    }

    private double Blend(int at, int share, ReadOnlySpan<double> weights)
    {
        double sum = 0;
        for (var i = 0; i < 4; i++)
        {
            var row = at + (i * Width * Shares) + share;
            sum += weights[i] * ((weights[4] * _table[row]) + (weights[5] * _table[row + Shares]) + (weights[6] * _table[row + (2 * Shares)]) + (weights[7] * _table[row + (3 * Shares)]));
        }

        return sum;
    }

    /// <summary>The table at this length: a cubic through the four lengths around it.</summary>
    private void Fill()
    {
        var nodes = Slendernesses;
        var first = 0;
        while (first + 4 < nodes.Count && nodes[first + 2] < _slenderness)
        {
            first++;
        }

        for (var k = first; k < first + 4; k++)
        {
            var weight = 1.0;
            for (var m = first; m < first + 4; m++)
            {
                weight *= m == k ? 1 : (_slenderness - nodes[m]) / (nodes[k] - nodes[m]);
            }

            for (var ring = 0; ring < Rings; ring++)
            {
                for (var n = 0; n < Rays * Shares; n++)
                {
                    _table[((((ring + 1) * Width) + 1) * Shares) + n] += weight * Solved.Value[(((k * Rings) + ring) * Rays * Shares) + n];
                }
            }
        }
    }

    /// <summary>Beyond the line of the load the film is its own mirror image; beyond the first and last ring it goes on straight.</summary>
    private void Edge()
    {
        for (var ring = 1; ring <= Rings; ring++)
        {
            for (var share = 0; share < Shares; share++)
            {
                var row = (ring * Width * Shares) + share;
                _table[row] = _table[row + (2 * Shares)];
                _table[row + ((Rays + 1) * Shares)] = _table[row + ((Rays - 1) * Shares)];
            }
        }

        const int Row = Width * Shares;
        for (var n = 0; n < Row; n++)
        {
            _table[n] = (2 * _table[Row + n]) - _table[(2 * Row) + n];
            _table[((Rings + 1) * Row) + n] = (2 * _table[(Rings * Row) + n]) - _table[((Rings - 1) * Row) + n];
        }
    }

    private static double[] Read()
    {
        using var stream = typeof(FiniteMobility).Assembly.GetManifestResourceStream("FiniteMobility.txt") ?? throw new InvalidOperationException("the table of mobilities is not in the program");
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
    }
}
