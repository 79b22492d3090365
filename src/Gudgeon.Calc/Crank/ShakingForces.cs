using System.Numerics;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Amplitudes of the unbalanced reciprocating forces and couples of an in-line engine.</summary>
/// <param name="PrimaryForce">Once a turn, N.</param>
/// <param name="PrimaryCouple">Once a turn, about the middle of the cylinders, N·m.</param>
/// <param name="SecondaryForce">Twice a turn, N.</param>
/// <param name="SecondaryCouple">Twice a turn, about the middle of the cylinders, N·m.</param>
public readonly record struct InlineShaking(
    [Quantity("primary force", Dimension.Force, "N", Symbol = "F1")] double PrimaryForce,
    [Quantity("primary couple", Dimension.Torque, "N·m", Symbol = "M1")] double PrimaryCouple,
    [Quantity("secondary force", Dimension.Force, "N", Symbol = "F2")] double SecondaryForce,
    [Quantity("secondary couple", Dimension.Torque, "N·m", Symbol = "M2")] double SecondaryCouple);

/// <summary>Shaking force of any layout, as vectors turning with and against the crank.</summary>
/// <param name="PrimaryWith">Primary force turning with the crank: a counterweight on the crank can take it away, N.</param>
/// <param name="PrimaryAgainst">Primary force turning against the crank, N.</param>
/// <param name="PrimaryGreatest">Greatest primary force, N.</param>
/// <param name="SecondaryGreatest">Greatest secondary force, N.</param>
/// <param name="SecondaryLeast">Least secondary force over a turn, N.</param>
/// <param name="PrimaryCouple">Greatest primary couple about the middle of the cylinders, N·m.</param>
/// <param name="SecondaryCouple">Greatest secondary couple about the middle of the cylinders, N·m.</param>
public readonly record struct LayoutShaking(
    [Quantity("primary force turning with the crank", Dimension.Force, "N", Symbol = "Fw")] double PrimaryWith,
    [Quantity("primary force turning against the crank", Dimension.Force, "N", Symbol = "Fa")] double PrimaryAgainst,
    [Quantity("greatest primary force", Dimension.Force, "N", Symbol = "F1")] double PrimaryGreatest,
    [Quantity("greatest secondary force", Dimension.Force, "N", Symbol = "F2")] double SecondaryGreatest,
    [Quantity("least secondary force", Dimension.Force, "N", Symbol = "F2min")] double SecondaryLeast,
    [Quantity("greatest primary couple", Dimension.Torque, "N·m", Symbol = "M1")] double PrimaryCouple,
    [Quantity("greatest secondary couple", Dimension.Torque, "N·m", Symbol = "M2")] double SecondaryCouple);

/// <summary>Shaking forces of a V-twin with a common crank pin, along and across the bisector of the V.</summary>
/// <param name="PrimaryAlong">Primary amplitude along the bisector, N.</param>
/// <param name="PrimaryAcross">Primary amplitude across it, N.</param>
/// <param name="SecondaryAlong">Secondary amplitude along the bisector, N.</param>
/// <param name="SecondaryAcross">Secondary amplitude across it, N.</param>
public readonly record struct VTwinShaking(
    [Quantity("primary force along the bisector", Dimension.Force, "N", Symbol = "Px")] double PrimaryAlong,
    [Quantity("primary force across the bisector", Dimension.Force, "N", Symbol = "Py")] double PrimaryAcross,
    [Quantity("secondary force along the bisector", Dimension.Force, "N", Symbol = "Sx")] double SecondaryAlong,
    [Quantity("secondary force across the bisector", Dimension.Force, "N", Symbol = "Sy")] double SecondaryAcross);

/// <summary>
/// Primary and secondary shaking forces of reciprocating masses before any counterweight. A force along a fixed line is
/// the sum of two vectors of half its size turning with and against the crank; cylinders are added as such vectors.
/// </summary>
public static class ShakingForces
{
    private const string Source = "Phasor sum of the two-term law; patterns in Den Hartog, Mechanical Vibrations, Taylor vol. 2 and Norton, Design of Machinery, ch. 14";

    /// <summary>Shaking of an in-line engine of any number of cylinders and any crank.</summary>
    /// <param name="mass">Reciprocating mass of one cylinder, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="throws">Angle of each throw, rad, in the order of the cylinders.</param>
    /// <param name="positions">Position of each cylinder along the crank, m.</param>
    [Formula(
        "shaking of an in-line engine",
        "F = m r w^2; F1 = F |Σ exp(i β)|; M1 = F |Σ (z - zm) exp(i β)|; F2 = F r / l |Σ exp(2 i β)|; M2 = F r / l |Σ (z - zm) exp(2 i β)|",
        Source,
        Validity = "Before counterweights; couples about the middle between first and last cylinder.")]
    public static InlineShaking Inline(
        [Quantity("reciprocating mass of one cylinder", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("throw angles", Dimension.Angle, "°", Symbol = "β")] double[] throws,
        [Quantity("cylinder positions", Dimension.Length, "mm", Symbol = "z")] double[] positions)
    {
        var layout = Layout(mass, radius, rod, speed, new double[throws.Length], throws, positions);
        return new InlineShaking(layout.PrimaryGreatest, layout.PrimaryCouple, layout.SecondaryGreatest, layout.SecondaryCouple);
    }

    /// <summary>Shaking of any layout: in-line, V, flat or radial.</summary>
    /// <param name="mass">Reciprocating mass of one cylinder, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="axes">Tilt of each cylinder axis, rad, in the direction of rotation.</param>
    /// <param name="throws">Angle of each cylinder's throw, rad; equal for a common crank pin.</param>
    /// <param name="positions">Position of each cylinder along the crank, m.</param>
    [Formula(
        "shaking of any layout",
        "F = m r w^2; Fw = F / 2 |Σ exp(i β)|; Fa = F / 2 |Σ exp(i (2 γ - β))|; F1 = Fw + Fa; F2 = F r / (2 l) (|Σ exp(i (2 β - γ))| + |Σ exp(i (3 γ - 2 β))|)",
        Source,
        Validity = "Before counterweights; all rods on plain crank pins; couples about the middle between first and last cylinder.")]
    public static LayoutShaking Layout(
        [Quantity("reciprocating mass of one cylinder", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("cylinder axis angles", Dimension.Angle, "°", Symbol = "γ")] double[] axes,
        [Quantity("throw angles", Dimension.Angle, "°", Symbol = "β")] double[] throws,
        [Quantity("cylinder positions", Dimension.Length, "mm", Symbol = "z")] double[] positions)
    {
        FormulaDomainException.Unless(axes.Length == throws.Length && throws.Length == positions.Length, "throw angles: give one angle and one position for each cylinder");
        SliderCrank.RequireRunning(radius, rod, 0);
        var middle = (positions.Min() + positions.Max()) / 2;
        Complex with = 0, against = 0, with2 = 0, against2 = 0, coupleWith = 0, coupleAgainst = 0, coupleWith2 = 0, coupleAgainst2 = 0;
        for (var i = 0; i < throws.Length; i++)
        {
            var (axis, pin, arm) = (axes[i], throws[i], positions[i] - middle);
            var (w1, a1) = (Unit(pin), Unit((2 * axis) - pin));
            var (w2, a2) = (Unit((2 * pin) - axis), Unit((3 * axis) - (2 * pin)));
            (with, against, with2, against2) = (with + w1, against + a1, with2 + w2, against2 + a2);
            (coupleWith, coupleAgainst, coupleWith2, coupleAgainst2) = (coupleWith + (arm * w1), coupleAgainst + (arm * a1), coupleWith2 + (arm * w2), coupleAgainst2 + (arm * a2));
        }

        var half = mass * radius * speed * speed / 2;
        var half2 = half * radius / rod;
        return new LayoutShaking(
            half * with.Magnitude,
            half * against.Magnitude,
            half * (with.Magnitude + against.Magnitude),
            half2 * (with2.Magnitude + against2.Magnitude),
            half2 * Math.Abs(with2.Magnitude - against2.Magnitude),
            half * (coupleWith.Magnitude + coupleAgainst.Magnitude),
            half2 * (coupleWith2.Magnitude + coupleAgainst2.Magnitude));
    }

    /// <summary>Shaking of a V-twin with both rods on one crank pin.</summary>
    /// <param name="mass">Reciprocating mass of one cylinder, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="vee">Angle between the cylinders, rad.</param>
    [Formula(
        "shaking of a V-twin",
        "F = m r w^2; Px = 2 F cos(A / 2)^2; Py = 2 F sin(A / 2)^2; Sx = 2 F r / l cos(A / 2) cos(A); Sy = 2 F r / l sin(A / 2) sin(A)",
        Source,
        Validity = "Before counterweights; at a right angle the primary is constant, turns with the crank and is taken away by a counterweight of one cylinder's m r.")]
    public static VTwinShaking VTwin(
        [Quantity("reciprocating mass of one cylinder", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("V angle", Dimension.Angle, "°", Symbol = "A", Min = 0, Max = 3.14159265358979)] double vee)
    {
        SliderCrank.RequireRunning(radius, rod, 0);
        var force = 2 * mass * radius * speed * speed;
        var (sin, cos) = Math.SinCos(vee / 2);
        return new VTwinShaking(
            force * cos * cos,
            force * sin * sin,
            Math.Abs(force * radius / rod * cos * Math.Cos(vee)),
            Math.Abs(force * radius / rod * sin * Math.Sin(vee)));
    }

    private static Complex Unit(double angle) => Complex.FromPolarCoordinates(1, angle);
}
