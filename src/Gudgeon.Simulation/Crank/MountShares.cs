using MathNet.Numerics.LinearAlgebra;
using Complex = System.Numerics.Complex;

namespace Gudgeon.Simulation.Crank;

/// <summary>A place where the engine is held. m; axes as in <see cref="LoadCourse"/> from the crank axis, z along the crank.</summary>
public readonly record struct MountPoint(string Name, double X, double Y, double Position);

/// <summary>Greatest load on a mount at one order, and over a turn from all orders together. N.</summary>
/// <param name="Name">The mount.</param>
/// <param name="Orders">Amplitude at each order asked for.</param>
/// <param name="Greatest">Greatest size over two turns of the crank.</param>
public sealed record MountLoad(string Name, IReadOnlyList<double> Orders, double Greatest);

/// <summary>
/// How rigid mounts share the shaking of a rigid engine: all equally stiff every way, so that the shares are those of the
/// least sum of squares. The engine's own mass takes nothing off them, as it would on rubber.
/// </summary>
public sealed class MountShares
{
    private const int Components = 6;
    private const double Dependent = 1e-9;

    private readonly IReadOnlyList<MountPoint> _mounts;
    private readonly Matrix<double> _shares;
    private readonly double _about;

    private MountShares(IReadOnlyList<MountPoint> mounts, Matrix<double> shares, double about) => (_mounts, _shares, _about) = (mounts, shares, about);

    /// <summary>The shares; null when the mounts cannot hold every force and couple, as fewer than three or three in a line cannot.</summary>
    /// <param name="mounts">Where the engine is held.</param>
    /// <param name="about">Place along the crank that couples are about, m.</param>
    public static MountShares? Of(IReadOnlyList<MountPoint> mounts, double about)
    {
        if (mounts.Count < 3)
        {
            return null;
        }

        var balance = Matrix<double>.Build.Dense(Components, 3 * mounts.Count);
        for (var i = 0; i < mounts.Count; i++)
        {
            var (x, y, z) = (mounts[i].X, mounts[i].Y, mounts[i].Position - about);
            double[][] moments = [[0, -z, y], [z, 0, -x], [-y, x, 0]];
            for (var row = 0; row < 3; row++)
            {
                balance[row, (3 * i) + row] = 1;
                for (var column = 0; column < 3; column++)
                {
                    balance[3 + row, (3 * i) + column] = moments[row][column];
                }
            }
        }

        var singular = balance.Svd(computeVectors: false).S;
        return singular[Components - 1] > Dependent * singular[0] ? new MountShares(mounts, balance.PseudoInverse(), about) : null;
    }

    /// <summary>Loads of a shaking engine on its mounts.</summary>
    /// <param name="shaking">The shaking, about the same place.</param>
    /// <param name="orders">Orders of the crank that are wanted one by one.</param>
    public IReadOnlyList<MountLoad> Loads(Shaking shaking, IReadOnlyList<double> orders)
    {
        var each = orders.Select(o => Amplitudes(Load(shaking, o))).ToList();
        var greatest = new double[_mounts.Count];
        for (var i = 0; i < shaking.Angles.Length; i++)
        {
            var load = _shares * Vector<double>.Build.Dense(Load(shaking.Force[i], shaking.Couple[i] + ((shaking.About - _about) * shaking.Force[i]), shaking.Roll[i]));
            for (var m = 0; m < greatest.Length; m++)
            {
                greatest[m] = Math.Max(greatest[m], load.SubVector(3 * m, 3).L2Norm());
            }
        }

        return [.. _mounts.Select((p, m) => new MountLoad(p.Name, [.. each.Select(a => a[m])], greatest[m]))];
    }

    /// <summary>Fx, Fy, Fz, Mx, My, Mz of a force and a lever-weighted force.</summary>
    private static double[] Load(Complex force, Complex couple, double roll) => [force.Imaginary, force.Real, 0, -couple.Real, couple.Imaginary, roll];

    /// <summary>Cosine and sine parts of the load at an order.</summary>
    private static (double[] Cosine, double[] Sine) Load(Shaking shaking, double order)
    {
        var (force, couple, roll) = (shaking.ForceAt(order), shaking.CoupleAt(order), shaking.RollAt(order));
        var i = Complex.ImaginaryOne;
        return (Load(force.With + force.Against, couple.With + couple.Against, roll.Real), Load(i * (force.With - force.Against), i * (couple.With - couple.Against), -roll.Imaginary));
    }

    private double[] Amplitudes((double[] Cosine, double[] Sine) load)
    {
        var (cosine, sine) = (_shares * Vector<double>.Build.Dense(load.Cosine), _shares * Vector<double>.Build.Dense(load.Sine));
        return [.. Enumerable.Range(0, _mounts.Count).Select(m => Longest(cosine.SubVector(3 * m, 3), sine.SubVector(3 * m, 3)))];
    }

    /// <summary>Half the long axis of the ellipse that c cos + s sin traces.</summary>
    private static double Longest(Vector<double> c, Vector<double> s)
    {
        var (cc, ss, cs) = (c * c, s * s, c * s);
        return Math.Sqrt(((cc + ss) / 2) + Math.Sqrt(((cc - ss) * (cc - ss) / 4) + (cs * cs)));
    }
}
