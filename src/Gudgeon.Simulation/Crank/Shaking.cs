using System.Numerics;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Simulation.Crank;

/// <summary>What shakes at one order: a vector that turns with the crank and one that turns against it.</summary>
/// <param name="Order">Times per turn of the crank.</param>
/// <param name="With">Turns with the crank; its angle at top dead centre of cylinder 1 from y towards x.</param>
/// <param name="Against">Turns against it.</param>
public readonly record struct Turning(double Order, Complex With, Complex Against)
{
    /// <summary>Greatest size over a turn.</summary>
    public double Greatest => With.Magnitude + Against.Magnitude;

    /// <summary>Least size over a turn.</summary>
    public double Least => Math.Abs(With.Magnitude - Against.Magnitude);

    /// <summary>Size at a crank angle after top dead centre of cylinder 1, rad.</summary>
    public double SizeAt(double angle) => ((With * Complex.FromPolarCoordinates(1, Order * angle)) + (Against * Complex.FromPolarCoordinates(1, -Order * angle))).Magnitude;
}

/// <summary>
/// Inertia forces and couples of pistons, rods, crank and balance shafts on the engine at one speed, over two turns. Exact
/// slider-crank, rods as two masses, everything rigid; gas forces do not shake an engine and are not in it, but for their
/// torque, which the roll leaves out. Forces are complex: y (along the first bank, away from the crankcase) is real, x (to the
/// side that a throw moves to at top dead centre) imaginary, so that exp(iθ) is a throw at angle θ.
/// </summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="About">Place along the crank that the couples are about, m.</param>
/// <param name="Angles">Crank angles after top dead centre of cylinder 1, rad, evenly spaced over two turns.</param>
/// <param name="Force">Force, N.</param>
/// <param name="Couple">Couple that rocks the engine end to end, N·m: force times its place along the crank, in the force's direction.</param>
/// <param name="Roll">Couple about the crank axis, N·m, from x towards y.</param>
public sealed record Shaking(double Speed, double About, double[] Angles, Complex[] Force, Complex[] Couple, double[] Roll)
{
    private const int PerTurn = 360;

    /// <summary>Greatest force over a turn, N.</summary>
    public double GreatestForce => Force.Max(f => f.Magnitude);

    /// <summary>Greatest rocking couple over a turn, N·m.</summary>
    public double GreatestCouple => Couple.Max(c => c.Magnitude);

    /// <summary>The shaking of a crank with its balance shafts.</summary>
    /// <param name="line">The crank.</param>
    /// <param name="shafts">Weights that it drives.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="about">Place along the crank that couples are about, m; the middle between the end cylinders when null.</param>
    public static Shaking Of(CrankLine line, IReadOnlyList<Spinner> shafts, double speed, double? about = null)
    {
        const int Count = 2 * PerTurn;
        var place = about ?? ((line.Throws.Min(t => t.Position) + line.Throws.Max(t => t.Position)) / 2);
        var shaking = new Shaking(speed, place, new double[Count], new Complex[Count], new Complex[Count], new double[Count]);
        for (var i = 0; i < Count; i++)
        {
            var angle = shaking.Angles[i] = 2 * Math.PI * i / PerTurn;
            foreach (var cylinder in line.Throws)
            {
                shaking.Add(i, line, cylinder, angle + line.Throws[0].Firing - cylinder.Firing);
            }

            foreach (var shaft in shafts)
            {
                var force = shaft.At(angle) * speed * speed;
                shaking.Add(i, force, shaft.Position);
                shaking.Roll[i] += (shaft.X * force.Real) - (shaft.Y * force.Imaginary);
            }
        }

        return shaking;
    }

    /// <summary>Force at an order, times per turn; halves are possible with shafts at half speed.</summary>
    public Turning ForceAt(double order) => At(Force, order);

    /// <summary>Rocking couple at an order.</summary>
    public Turning CoupleAt(double order) => At(Couple, order);

    /// <summary>Amplitude of the roll about the crank axis at an order, N·m, complex.</summary>
    public Complex RollAt(double order) => Harmonic(Roll.Length, i => Roll[i], order) * 2;

    private static Turning At(Complex[] course, double order) => new(order, Harmonic(course.Length, i => course[i], order), Harmonic(course.Length, i => course[i], -order));

    private static Complex Harmonic(int count, Func<int, Complex> of, double order)
    {
        var sum = Complex.Zero;
        for (var i = 0; i < count; i++)
        {
            sum += of(i) * Complex.FromPolarCoordinates(1.0 / count, -2 * Math.PI * order * i / PerTurn);
        }

        return sum;
    }

    private void Add(int i, Complex force, double position)
    {
        Force[i] += force;
        Couple[i] += (position - About) * force;
    }

    private void Add(int i, CrankLine line, CrankThrow cylinder, double angle)
    {
        var (square, axis) = (Speed * Speed, Complex.FromPolarCoordinates(1, cylinder.Bank));
        var motion = SliderCrank.Motion(line.Radius, cylinder.Rod, angle, Speed, cylinder.Offset);
        var along = cylinder.Reciprocating * motion.Acceleration;

        // What the bare crank lacks in balance is shared among the rods of its pin.
        var turning = cylinder.BigEnd - (line.BobWeight / line.Throws.Count(t => t.Pin == cylinder.Pin));
        Add(i, axis * (along + (turning * line.Radius * square * Complex.FromPolarCoordinates(1, angle))), cylinder.Position);

        // The crank is kept turning evenly, so the engine feels the torque that the pistons' inertia puts on the crank, turned round.
        var torque = -along * motion.Velocity / Speed;
        Roll[i] += (cylinder.Offset * along) + torque;
    }
}
