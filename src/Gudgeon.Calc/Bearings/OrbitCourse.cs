namespace Gudgeon.Calc.Bearings;

/// <summary>What drives a journal over one cycle, at evenly spaced crank angles; linear in between and round the cycle. The journal turns from x to y.</summary>
/// <param name="X">Load on the journal along x, N.</param>
/// <param name="Y">Load on the journal along y, N.</param>
/// <param name="Entrainment">Mean speed of journal and shell in the axes of the loads over crank speed: ½ for a main bearing in axes that stand still.</param>
/// <param name="Cycle">Crank angle of one cycle, rad.</param>
public sealed record OrbitCourse(double[] X, double[] Y, double[] Entrainment, double Cycle)
{
    /// <summary>How many angles there are.</summary>
    public int Count => X.Length;

    /// <summary>Crank angle from one to the next, rad.</summary>
    public double Step => Cycle / Count;
}

/// <summary>Where the journal stands over one cycle: eccentricity ratios at the angles of its <see cref="OrbitCourse"/>.</summary>
public sealed class OrbitPath
{
    /// <param name="count">How many angles there are.</param>
    public OrbitPath(int count) => (X, Y) = (new double[count], new double[count]);

    /// <summary>Eccentricity ratio along x.</summary>
    public double[] X { get; }

    /// <summary>Eccentricity ratio along y.</summary>
    public double[] Y { get; }

    /// <summary>Distance between the ends of the last two cycles, in clearances: small when the orbit has closed.</summary>
    public double Drift { get; internal set; } = double.PositiveInfinity;

    /// <summary>Whether no film was left somewhere in the last cycle.</summary>
    public bool Touches { get; internal set; }

    /// <summary>Eccentricity ratio at an angle.</summary>
    public double Eccentricity(int i) => Math.Sqrt((X[i] * X[i]) + (Y[i] * Y[i]));

    /// <summary>Greatest eccentricity ratio and its place in the cycle.</summary>
    public (double Eccentricity, int At) Greatest()
    {
        var (greatest, at) = (0.0, 0);
        for (var i = 0; i < X.Length; i++)
        {
            if (Eccentricity(i) is var e && e > greatest)
            {
                (greatest, at) = (e, i);
            }
        }

        return (greatest, at);
    }
}
