using System.Numerics;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Simulation.Crank;

/// <summary>
/// A load that turns and changes over the cycle, in axes that stand still: y along the first bank away from the crankcase,
/// x to the side that a throw moves to at top dead centre. A throw at angle θ points along (sin θ, cos θ).
/// </summary>
/// <param name="X">N.</param>
/// <param name="Y">N.</param>
public sealed record LoadCourse(double[] X, double[] Y)
{
    /// <summary>Its size at a place of the cycle, N.</summary>
    public double At(int i) => Math.Sqrt((X[i] * X[i]) + (Y[i] * Y[i]));

    /// <summary>Greatest size and its place in the cycle.</summary>
    public (double Load, int At) Greatest => Enumerable.Range(0, X.Length).Select(i => (Load: At(i), i)).MaxBy(p => p.Load);

    /// <summary>Mean size over the cycle, N; the angles are evenly spaced.</summary>
    public double Mean => Enumerable.Range(0, X.Length).Average(At);

    /// <summary>The same load in axes that turn by an angle at each place, rad: what a part sees that turns with them.</summary>
    public LoadCourse Turned(Func<int, double> by)
    {
        var (x, y) = (new double[X.Length], new double[X.Length]);
        for (var i = 0; i < X.Length; i++)
        {
            var (sin, cos) = Math.SinCos(by(i));
            (x[i], y[i]) = ((X[i] * cos) - (Y[i] * sin), (X[i] * sin) + (Y[i] * cos));
        }

        return new LoadCourse(x, y);
    }
}

/// <summary>What one cylinder does to its parts over the cycle. N, SI; towards the crank is positive along the cylinder.</summary>
/// <param name="Throw">The cylinder.</param>
/// <param name="Angle">Angle of its throw after top dead centre at each place, rad.</param>
/// <param name="Gas">Gas force on the crown, against the air below.</param>
/// <param name="Inertia">Inertia of all that goes to and fro.</param>
/// <param name="Side">Thrust of the piston on the wall, positive to the side that the throw comes up on: the major side while it fires.</param>
/// <param name="Rod">Along the rod, positive in compression; at the small end less what the rod's own end makes, see <paramref name="PinAlong"/>.</param>
/// <param name="PinAlong">Load of the piston on the gudgeon pin along the cylinder.</param>
/// <param name="PinAcross">Load of the piston on the gudgeon pin across the cylinder, to the side that the throw moves to.</param>
/// <param name="BigEnd">Load of the big end on its crank pin in axes that stand still.</param>
/// <param name="Radial">The same, outwards along the throw.</param>
/// <param name="Tangential">The same, in the direction of rotation.</param>
/// <param name="Torque">Torque on the crank, N·m.</param>
/// <param name="RodAngle">Angle of the rod from the cylinder, rad; positive with the pin on the side it moves to.</param>
/// <param name="RodSpeed">How fast the rod turns in the direction of the crank, rad/s.</param>
/// <param name="Acceleration">Of the piston towards the crank, m/s².</param>
public sealed record ThrowLoads(
    CrankThrow Throw,
    double[] Angle,
    double[] Gas,
    double[] Inertia,
    double[] Side,
    double[] Rod,
    double[] PinAlong,
    double[] PinAcross,
    LoadCourse BigEnd,
    double[] Radial,
    double[] Tangential,
    double[] Torque,
    double[] RodAngle,
    double[] RodSpeed,
    double[] Acceleration);

/// <summary>
/// Loads on pistons, rods, crank pins and main bearings over a cycle from gas and inertia: exact slider-crank, rods as two
/// masses, friction and weight left out, and the crank hinged at its main bearings, so that each pin loads the two beside
/// it as a beam does (common practice; a stiff crank in a stiff case would share a little more widely).
/// </summary>
/// <param name="Line">The crank.</param>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Angles">Crank angles, rad, evenly spaced over the cycle.</param>
/// <param name="Throws">Each cylinder.</param>
/// <param name="Mains">Load of the crank on each main bearing, in axes that stand still.</param>
/// <param name="Torque">Torque of all cylinders on the crank, N·m.</param>
public sealed record CrankLoads(CrankLine Line, double Speed, double[] Angles, IReadOnlyList<ThrowLoads> Throws, IReadOnlyList<LoadCourse> Mains, double[] Torque)
{
    private readonly Lazy<Complex[][]> _torqueOrders = new(() => [.. Throws.Select(t => Crank.TorqueOrders.Orders(t.Torque))]);

    /// <summary>Complex amplitudes of each cylinder's torque by orders, N·m.</summary>
    internal Complex[][] TorqueOrders => _torqueOrders.Value;

    /// <summary>The loads at a speed.</summary>
    /// <param name="line">The crank.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="angles">Crank angles, rad, evenly spaced over the cycle.</param>
    /// <param name="pressures">For each cylinder the pressure above the piston less that below at each angle, Pa.</param>
    public static CrankLoads Of(CrankLine line, double speed, double[] angles, IReadOnlyList<double[]> pressures)
    {
        var throws = line.Throws.Select((t, i) => Of(line.Radius, t, speed, angles, pressures[i])).ToList();
        var torque = new double[angles.Length];
        for (var i = 0; i < torque.Length; i++)
        {
            torque[i] = throws.Sum(t => t.Torque[i]);
        }

        return new CrankLoads(line, speed, angles, throws, OnMains(line, speed, throws, angles.Length), torque);
    }

    /// <summary>Shares of a load at a place along the crank that two main bearings carry: as of a beam on two supports, also beyond them.</summary>
    /// <param name="mains">Places of the mains, m, rising.</param>
    /// <param name="position">Place of the load, m.</param>
    public static IEnumerable<(int Main, double Share)> Shares(IReadOnlyList<double> mains, double position)
    {
        if (mains.Count < 2)
        {
            return mains.Count == 1 ? [(0, 1)] : [];
        }

        var left = 0;
        while (left < mains.Count - 2 && position > mains[left + 1])
        {
            left++;
        }

        var share = (position - mains[left]) / (mains[left + 1] - mains[left]);
        return [(left, 1 - share), (left + 1, share)];
    }

    private static ThrowLoads Of(double radius, CrankThrow cylinder, double speed, double[] angles, double[] pressure)
    {
        double[] Course() => new double[angles.Length];
        var loads = new ThrowLoads(cylinder, Course(), Course(), Course(), Course(), Course(), Course(), Course(), new(Course(), Course()), Course(), Course(), Course(), Course(), Course(), Course());
        var centrifugal = cylinder.BigEnd * radius * speed * speed;
        for (var i = 0; i < angles.Length; i++)
        {
            var angle = angles[i] - cylinder.Firing;
            var motion = SliderCrank.Motion(radius, cylinder.Rod, angle, speed, cylinder.Offset);
            var forces = PistonForces.At(cylinder.Bore, pressure[i], radius, cylinder.Rod, cylinder.Reciprocating, speed, angle, PistonLaw.Exact, 0, cylinder.Offset);
            (loads.Angle[i], loads.Gas[i], loads.Inertia[i], loads.Side[i], loads.Rod[i]) = (angle, forces.Gas, forces.Inertia, forces.SideThrust, forces.Rod);
            (loads.PinAlong[i], loads.PinAcross[i]) = (forces.Gas - (cylinder.Piston * motion.Acceleration), forces.SideThrust);
            (loads.Radial[i], loads.Tangential[i], loads.Torque[i]) = (centrifugal - forces.Radial, forces.Tangential, forces.Torque);
            (loads.RodAngle[i], loads.Acceleration[i]) = (motion.RodAngle, motion.Acceleration);
            loads.RodSpeed[i] = -speed * radius * Math.Cos(angle) / (cylinder.Rod * Math.Cos(motion.RodAngle));
            var (sin, cos) = Math.SinCos(angle + cylinder.Bank);
            loads.BigEnd.X[i] = (loads.Radial[i] * sin) + (loads.Tangential[i] * cos);
            loads.BigEnd.Y[i] = (loads.Radial[i] * cos) - (loads.Tangential[i] * sin);
        }

        return loads;
    }

    private static List<LoadCourse> OnMains(CrankLine line, double speed, List<ThrowLoads> throws, int count)
    {
        var mains = line.Mains.Select(_ => new LoadCourse(new double[count], new double[count])).ToList();
        foreach (var one in throws)
        {
            // What the bare crank lacks in balance, shared among the rods of its pin.
            var crank = -line.BobWeight / line.Throws.Count(t => t.Pin == one.Throw.Pin) * line.Radius * speed * speed;
            foreach (var (main, share) in Shares(line.Mains, one.Throw.Position))
            {
                for (var i = 0; i < count; i++)
                {
                    var (sin, cos) = Math.SinCos(one.Angle[i] + one.Throw.Bank);
                    mains[main].X[i] += share * (one.BigEnd.X[i] + (crank * sin));
                    mains[main].Y[i] += share * (one.BigEnd.Y[i] + (crank * cos));
                }
            }
        }

        return mains;
    }
}
