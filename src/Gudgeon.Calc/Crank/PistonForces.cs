using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Which law gives the piston's acceleration.</summary>
public enum PistonLaw
{
    /// <summary>Closed geometry of the slider-crank.</summary>
    Exact,

    /// <summary>First and second harmonic only, as most textbook examples have it.</summary>
    TwoTerm,
}

/// <summary>Forces from the piston to the crank pin at one crank angle. Towards the crank is positive.</summary>
/// <param name="Gas">Gas force on the crown, N.</param>
/// <param name="Inertia">Inertia force of the reciprocating parts, N.</param>
/// <param name="Effort">Net force along the cylinder on the gudgeon pin, N.</param>
/// <param name="SideThrust">Side thrust on the cylinder wall, N.</param>
/// <param name="Rod">Force along the rod, N; positive in compression.</param>
/// <param name="Tangential">Force on the crank pin in the direction of rotation, N.</param>
/// <param name="Radial">Force on the crank pin towards the crank axis, N.</param>
/// <param name="Torque">Torque on the crank, N·m.</param>
public readonly record struct PistonForceSet(
    [Quantity("gas force", Dimension.Force, "N", Symbol = "Fg")] double Gas,
    [Quantity("inertia force", Dimension.Force, "N", Symbol = "Fi")] double Inertia,
    [Quantity("piston effort", Dimension.Force, "N", Symbol = "F")] double Effort,
    [Quantity("side thrust", Dimension.Force, "N", Symbol = "Fs")] double SideThrust,
    [Quantity("rod force", Dimension.Force, "N", Symbol = "Fr")] double Rod,
    [Quantity("tangential force on the crank pin", Dimension.Force, "N", Symbol = "Ft")] double Tangential,
    [Quantity("radial force on the crank pin", Dimension.Force, "N", Symbol = "Fn")] double Radial,
    [Quantity("crank torque", Dimension.Torque, "N·m", Symbol = "T")] double Torque);

/// <summary>Gas and inertia forces carried from the piston to the crank.</summary>
public static class PistonForces
{
    private const string Source = "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 15; Heywood, Internal Combustion Engine Fundamentals, 1st ed., ch. 2 (geometry)";

    /// <summary>Piston effort, side thrust, rod force, crank pin forces and torque at one crank angle.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="pressure">Pressure above the piston less pressure below it, Pa.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="mass">Reciprocating mass: piston set and small end of the rod, kg.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="angle">Crank angle after top dead centre, rad.</param>
    /// <param name="law">Law of the piston's acceleration.</param>
    /// <param name="gravity">Gravity along the cylinder towards the crank, m/s²; 9.80665 for an upright cylinder.</param>
    /// <param name="offset">Offset of the cylinder axis from the crank axis, m; exact law only.</param>
    [Formula(
        "piston forces",
        "Fg = p π B^2 / 4; Fi = -m a; F = Fg + Fi + m g; Fs = F tan(φ); Fr = F / cos(φ); Ft = F (sin(θ) + cos(θ) tan(φ)); Fn = F (cos(θ) - sin(θ) tan(φ)); T = Ft r",
        Source,
        Validity = "Rod as two masses; friction left out.")]
    public static PistonForceSet At(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("pressure difference across the piston", Dimension.Pressure, "bar", Symbol = "p")] double pressure,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("reciprocating mass", Dimension.Mass, "kg", Symbol = "m", Min = 0)] double mass,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ")] double angle,
        [Quantity("acceleration law", Dimension.Number)] PistonLaw law = PistonLaw.Exact,
        [Quantity("gravity along the cylinder", Dimension.Acceleration, "m/s²", Symbol = "g")] double gravity = 0,
        [Quantity("pin offset", Dimension.Length, "mm", Symbol = "e")] double offset = 0)
    {
        var motion = MotionBy(law, radius, rod, angle, speed, offset);
        var gas = pressure * Math.PI * bore * bore / 4;
        var inertia = -mass * motion.Acceleration;
        var effort = gas + inertia + (mass * gravity);
        var (sin, cos) = Math.SinCos(angle);
        var tan = Math.Tan(motion.RodAngle);
        var tangential = effort * (sin + (cos * tan));
        return new PistonForceSet(
            gas, inertia, effort, effort * tan, effort / Math.Cos(motion.RodAngle), tangential, effort * (cos - (sin * tan)), tangential * radius);
    }

    /// <summary>Crank speed at which the load on the gudgeon pin reverses at a crank angle, rad/s.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="pressure">Pressure above the piston less pressure below it, Pa.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    /// <param name="mass">Reciprocating mass, kg.</param>
    /// <param name="angle">Crank angle after top dead centre, rad.</param>
    /// <param name="law">Law of the piston's acceleration.</param>
    /// <param name="gravity">Gravity along the cylinder towards the crank, m/s².</param>
    [Formula("load reversal speed", "w = sqrt((p π B^2 / 4 + m g) / (m a1)); a1 = a(θ) at 1 rad/s", Source)]
    [return: Quantity("load reversal speed", Dimension.RotationalSpeed, "rpm", Symbol = "w")]
    public static double ReversalSpeed(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 2)] double bore,
        [Quantity("pressure difference across the piston", Dimension.Pressure, "bar", Symbol = "p")] double pressure,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod,
        [Quantity("reciprocating mass", Dimension.Mass, "kg", Symbol = "m", Above = 0)] double mass,
        [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ")] double angle,
        [Quantity("acceleration law", Dimension.Number)] PistonLaw law = PistonLaw.Exact,
        [Quantity("gravity along the cylinder", Dimension.Acceleration, "m/s²", Symbol = "g")] double gravity = 0)
    {
        var load = (pressure * Math.PI * bore * bore / 4) + (mass * gravity);
        var unit = mass * MotionBy(law, radius, rod, angle, 1, 0).Acceleration;
        FormulaDomainException.Unless(load * unit > 0, "crank angle: gas and inertia forces do not oppose each other there, so the load does not reverse");
        return Math.Sqrt(load / unit);
    }

    private static PistonMotion MotionBy(PistonLaw law, double radius, double rod, double angle, double speed, double offset)
    {
        FormulaDomainException.Unless(law == PistonLaw.Exact || offset == 0, "pin offset: the two-term law has none; use the exact law");
        return law == PistonLaw.Exact ? SliderCrank.Motion(radius, rod, angle, speed, offset) : TwoTermCrank.Motion(radius, rod, angle, speed);
    }
}
