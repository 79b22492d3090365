namespace Gudgeon.Calc.Bearings;

/// <summary>
/// Pressure in the oil film of a plain journal bearing of finite length: the isoviscous Reynolds equation, fed at
/// ambient pressure along the line of greatest film thickness, with the film breaking up where the pressure would fall
/// below ambient (Swift-Stieber). Second-order conservative differences, projected over-relaxation. Pressures are in
/// units of μ ω (R/c)², angles from the greatest film.
/// </summary>
internal sealed class ReynoldsFilm
{
    private const int Around = 240;
    private const int Across = 20;
    private const double Step = Math.Tau / Around;
    private readonly double _eccentricity;
    private readonly double[,] _pressure = new double[Around + 1, Across + 1];
    private readonly double[] _node = new double[Around + 1];
    private readonly double[] _face = new double[Around + 1];

    private ReynoldsFilm(double eccentricity)
    {
        _eccentricity = eccentricity;
        for (var i = 0; i <= Around; i++)
        {
            _node[i] = Thickness(i * Step);
            _face[i] = Thickness((i + 0.5) * Step);
        }
    }

    /// <summary>Load along the line of centres, towards the greatest film positive, in μ ω (R/c)² R L.</summary>
    public double Along { get; private set; }

    /// <summary>Load across the line of centres, in μ ω (R/c)² R L.</summary>
    public double Across90 { get; private set; }

    /// <summary>Greatest pressure in μ ω (R/c)².</summary>
    public double Peak { get; private set; }

    /// <summary>Flow into the film at its greatest thickness, in R c N L.</summary>
    public double InFlow { get; private set; }

    /// <summary>Flow that leaves over the ends, in R c N L.</summary>
    public double SideFlow { get; private set; }

    /// <summary>Mean over the length of the integral of 1/h round the full film.</summary>
    public double FilmShear { get; private set; }

    /// <summary>The same integral over the broken film, where oil fills the share (h at rupture)/h of the width.</summary>
    public double StreamerShear { get; private set; }

    /// <summary>Solves the film for one eccentricity and length.</summary>
    /// <param name="eccentricity">Eccentricity ratio, 0 to 0.97.</param>
    /// <param name="slenderness">Length over diameter.</param>
    public static ReynoldsFilm Solve(double eccentricity, double slenderness)
    {
        var film = new ReynoldsFilm(eccentricity);
        film.Relax(slenderness);
        film.Integrate();
        return film;
    }

    private double Thickness(double angle) => 1 + (_eccentricity * Math.Cos(angle));

    /// <summary>Half of the bearing, from one end (j = 0) to the plane of symmetry (j = Across).</summary>
    private void Relax(double slenderness)
    {
        const double Tolerance = 1e-8;
        const int MaxSweeps = 20_000;
        var ratio = Step * Across / slenderness;
        var axial = ratio * ratio;
        var relaxation = Relaxation(axial);
        var p = _pressure;
        for (var sweep = 0; sweep < MaxSweeps; sweep++)
        {
            double change = 0, size = 0;
            for (var i = 1; i < Around; i++)
            {
                var before = Cube(_face[i - 1]);
                var after = Cube(_face[i]);
                var side = axial * Cube(_node[i]);
                var wedge = 6 * Step * (_face[i] - _face[i - 1]);
                var diagonal = 1 / (before + after + (2 * side));
                for (var j = 1; j <= Across; j++)
                {
                    var mirror = j == Across ? p[i, j - 1] : p[i, j + 1];
                    var balanced = ((before * p[i - 1, j]) + (after * p[i + 1, j]) + (side * (p[i, j - 1] + mirror)) - wedge) * diagonal;
                    var next = Math.Max(0, p[i, j] + (relaxation * (balanced - p[i, j])));
                    change = Math.Max(change, Math.Abs(next - p[i, j]));
                    size = Math.Max(size, next);
                    p[i, j] = next;
                }
            }

            if (change <= Tolerance * size)
            {
                return;
            }
        }

        throw new InvalidOperationException("the oil film did not converge");
    }

    /// <summary>Best relaxation for the slowest error: half a wave over the half turn under load, a quarter over the half length.</summary>
    private static double Relaxation(double axial)
    {
        var slowest = (Math.Cos(2 * Math.PI / Around) + (axial * Math.Cos(Math.PI / (2 * Across)))) / (1 + axial);
        return 2 / (1 + Math.Sqrt(1 - (slowest * slowest)));
    }

    private void Integrate()
    {
        for (var j = 0; j <= Across; j++)
        {
            // Trapezoid over the half length, whose ends are the bearing end and the plane of symmetry.
            IntegrateRing(j, (j is 0 or Across ? 0.5 : 1.0) / Across);
        }
    }

    private void IntegrateRing(int j, double weight)
    {
        var rupture = 0;
        for (var i = 1; i < Around; i++)
        {
            var p = _pressure[i, j];
            var (sin, cos) = Math.SinCos(i * Step);
            Along += weight * Step * p * cos;
            Across90 += weight * Step * p * sin;
            Peak = Math.Max(Peak, p);
            rupture = p > 0 ? i : rupture;
        }

        // On the end ring there is no pressure; its film runs as far as that of its neighbour.
        if (rupture == 0 && j == 0)
        {
            rupture = LastWet(1);
        }

        var slope = ((4 * _pressure[1, j]) - _pressure[2, j]) / (2 * Step);
        var inFlow = Math.PI * (_node[0] - (Cube(_node[0]) * slope / 6));
        var broken = _face[rupture];
        InFlow += weight * inFlow;
        SideFlow += weight * (inFlow - (Math.PI * broken));
        Shear(rupture, broken, weight);
    }

    private int LastWet(int j)
    {
        var i = Around - 1;
        while (i > 0 && _pressure[i, j] <= 0)
        {
            i--;
        }

        return i;
    }

    private void Shear(int rupture, double broken, double weight)
    {
        for (var i = 0; i < Around; i++)
        {
            var h = _face[i];
            if (i <= rupture)
            {
                FilmShear += weight * Step / h;
            }
            else
            {
                StreamerShear += weight * Step * broken / (h * h);
            }
        }
    }

    private static double Cube(double x) => x * x * x;
}
