using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.LinearAlgebra;

namespace Gudgeon.Calc.Crank;

/// <summary>One torsional mode of a chain of rotors.</summary>
/// <param name="Frequency">Natural frequency, Hz.</param>
/// <param name="Amplitude">Swing of the asked station over that of the first rotor.</param>
public readonly record struct TorsionalMode(
    [Quantity("natural frequency", Dimension.Frequency, "Hz", Symbol = "f")] double Frequency,
    [Quantity("swing relative to the first rotor", Dimension.Number, Symbol = "θk")] double Amplitude);

/// <summary>What is left over at the end of a Holzer table.</summary>
/// <param name="Amplitude">Swing of the last rotor for unit swing of the first.</param>
/// <param name="Torque">Torque needed at the last rotor to keep the motion up; zero at a natural frequency, N·m.</param>
public readonly record struct HolzerResidual(
    [Quantity("swing of the last rotor", Dimension.Number, Symbol = "θn")] double Amplitude,
    [Quantity("residual torque per radian", Dimension.Torque, "N·m", Symbol = "Tr")] double Torque);

/// <summary>Torsional vibration of crank, flywheel and driveline as rotors on massless shafts.</summary>
public static class Torsion
{
    /// <summary>Natural frequency of two rotors on a shaft, Hz.</summary>
    /// <param name="first">Moment of inertia of the first rotor, kg·m².</param>
    /// <param name="second">Moment of inertia of the second rotor, kg·m².</param>
    /// <param name="stiffness">Torsional stiffness of the shaft, N·m/rad.</param>
    [Formula("torsional frequency of two rotors", "f = sqrt(k (1 / I1 + 1 / I2)) / (2 π)", "Den Hartog, Mechanical Vibrations; Bevan, The Theory of Machines, 3rd ed., ch. 15")]
    [return: Quantity("natural frequency", Dimension.Frequency, "Hz", Symbol = "f")]
    public static double TwoRotors(
        [Quantity("inertia of the first rotor", Dimension.MomentOfInertia, "kg·m²", Symbol = "I1", Above = 0)] double first,
        [Quantity("inertia of the second rotor", Dimension.MomentOfInertia, "kg·m²", Symbol = "I2", Above = 0)] double second,
        [Quantity("torsional stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "k", Above = 0)] double stiffness) =>
        Math.Sqrt(stiffness * ((1 / first) + (1 / second))) / Math.Tau;

    /// <summary>Natural frequency and mode shape of any number of rotors in a chain, free at both ends.</summary>
    /// <param name="inertias">Moments of inertia in order, kg·m².</param>
    /// <param name="stiffnesses">Torsional stiffnesses between neighbours, one fewer, N·m/rad.</param>
    /// <param name="mode">Number of the mode above rigid rotation, from 1.</param>
    /// <param name="station">Rotor whose relative swing is wanted, from 1; 0 for the last.</param>
    [Formula(
        "torsional mode of a rotor chain",
        "K φ = (2 π f)^2 J φ",
        "Eigenvalues of the chain of rotors; e.g. Thomson, Theory of Vibration with Applications, ch. 12",
        Validity = "Undamped; rotors rigid, shafts without mass; a geared branch is referred with the square of its ratio first.")]
    public static TorsionalMode Mode(
        [Quantity("inertias", Dimension.MomentOfInertia, "kg·m²", Symbol = "J", Above = 0)] double[] inertias,
        [Quantity("torsional stiffnesses", Dimension.RotationalStiffness, "N·m/rad", Symbol = "K", Above = 0)] double[] stiffnesses,
        [Quantity("mode", Dimension.Number, Min = 1)] int mode = 1,
        [Quantity("station", Dimension.Number, Min = 0)] int station = 0)
    {
        var n = inertias.Length;
        FormulaDomainException.Unless(stiffnesses.Length == n - 1, "torsional stiffnesses: one fewer than inertias is wanted");
        FormulaDomainException.Unless(mode < n, "mode: a chain has one mode fewer than it has rotors");
        FormulaDomainException.Unless(station <= n, "station: beyond the last rotor");
        var scaled = Matrix<double>.Build.Dense(n, n);
        for (var i = 0; i < n - 1; i++)
        {
            scaled[i, i] += stiffnesses[i] / inertias[i];
            scaled[i + 1, i + 1] += stiffnesses[i] / inertias[i + 1];
            scaled[i, i + 1] = scaled[i + 1, i] = -stiffnesses[i] / Math.Sqrt(inertias[i] * inertias[i + 1]);
        }

        var eigen = scaled.Evd(Symmetricity.Symmetric);
        var order = Enumerable.Range(0, n).OrderBy(i => eigen.EigenValues[i].Real).ElementAt(mode);
        var last = station == 0 ? n - 1 : station - 1;
        var shape = eigen.EigenVectors.Column(order);
        return new TorsionalMode(
            Math.Sqrt(eigen.EigenValues[order].Real) / Math.Tau,
            shape[last] / Math.Sqrt(inertias[last]) / (shape[0] / Math.Sqrt(inertias[0])));
    }

    /// <summary>Holzer's table at a trial frequency.</summary>
    /// <param name="inertias">Moments of inertia in order, kg·m².</param>
    /// <param name="stiffnesses">Torsional stiffnesses between neighbours, N·m/rad.</param>
    /// <param name="trial">Trial circular frequency, rad/s.</param>
    /// <param name="station">Rotor whose swing and running torque are wanted, from 1; 0 for the last.</param>
    [Formula(
        "Holzer residual",
        "T = w^2 Σ J θ; θ(i+1) = θ(i) - T / K(i); θ(1) = 1",
        "Thomson, Theory of Vibration with Applications, section 12.4")]
    public static HolzerResidual Holzer(
        [Quantity("inertias", Dimension.MomentOfInertia, "kg·m²", Symbol = "J", Above = 0)] double[] inertias,
        [Quantity("torsional stiffnesses", Dimension.RotationalStiffness, "N·m/rad", Symbol = "K", Above = 0)] double[] stiffnesses,
        [Quantity("trial circular frequency", Dimension.RotationalSpeed, "rad/s", Symbol = "w", Min = 0)] double trial,
        [Quantity("station", Dimension.Number, Min = 0)] int station = 0)
    {
        FormulaDomainException.Unless(stiffnesses.Length == inertias.Length - 1, "torsional stiffnesses: one fewer than inertias is wanted");
        FormulaDomainException.Unless(station <= inertias.Length, "station: beyond the last rotor");
        var last = station == 0 ? inertias.Length : station;
        double swing = 1, torque = 0;
        for (var i = 0; i < last; i++)
        {
            swing -= i == 0 ? 0 : torque / stiffnesses[i - 1];
            torque += trial * trial * inertias[i] * swing;
        }

        return new HolzerResidual(swing, torque);
    }

    /// <summary>What rods and pistons add to the inertia of a crank throw, kg·m²: the mean of their kinetic energy over a turn.</summary>
    /// <param name="rotating">Rotating mass on the pin, kg.</param>
    /// <param name="reciprocating">Reciprocating mass, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Connecting rod length between centres, m.</param>
    [Formula(
        "inertia of rod and piston on the crank",
        "J = r^2 (M + R / 2 (1 + (r / l)^2 / 4))",
        "Mean kinetic energy of the two-term law over a turn; without the last term in Ker Wilson, Practical Solution of Torsional Vibration Problems (recalled)",
        Provenance = Provenance.Definition)]
    [return: Quantity("inertia on the crank", Dimension.MomentOfInertia, "kg·m²", Symbol = "J")]
    public static double ThrowInertia(
        [Quantity("rotating mass on the pin", Dimension.Mass, "g", Symbol = "M", Min = 0)] double rotating,
        [Quantity("reciprocating mass", Dimension.Mass, "g", Symbol = "R", Min = 0)] double reciprocating,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "r", Above = 0, Max = 2)] double radius,
        [Quantity("rod length", Dimension.Length, "mm", Symbol = "l", Above = 0, Max = 10)] double rod)
    {
        SliderCrank.RequireRunning(radius, rod, 0);
        var ratio = radius / rod;
        return radius * radius * (rotating + (reciprocating / 2 * (1 + (ratio * ratio / 4))));
    }

    /// <summary>Inertia or stiffness of a geared shaft as it is felt on another shaft.</summary>
    /// <param name="inertia">Moment of inertia on its own shaft, kg·m².</param>
    /// <param name="ratio">Speed of its own shaft over speed of the shaft it is referred to.</param>
    [Formula("referred inertia", "Ir = I i^2", "Equal kinetic energy; Bevan, The Theory of Machines, 3rd ed., ch. 15")]
    [return: Quantity("referred inertia", Dimension.MomentOfInertia, "kg·m²", Symbol = "Ir")]
    public static double ReferredInertia(
        [Quantity("inertia", Dimension.MomentOfInertia, "kg·m²", Symbol = "I", Above = 0)] double inertia,
        [Quantity("speed ratio", Dimension.Number, Symbol = "i", Above = 0)] double ratio) =>
        inertia * ratio * ratio;

    /// <summary>Stiffness of a geared shaft as it is felt on another shaft, N·m/rad.</summary>
    /// <param name="stiffness">Torsional stiffness on its own shaft, N·m/rad.</param>
    /// <param name="ratio">Speed of its own shaft over speed of the shaft it is referred to.</param>
    [Formula("referred torsional stiffness", "kr = k i^2", "Equal strain energy; Bevan, The Theory of Machines, 3rd ed., ch. 15")]
    [return: Quantity("referred torsional stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "kr")]
    public static double ReferredStiffness(
        [Quantity("torsional stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "k", Above = 0)] double stiffness,
        [Quantity("speed ratio", Dimension.Number, Symbol = "i", Above = 0)] double ratio) =>
        stiffness * ratio * ratio;

    /// <summary>Crank speed at which an order excites a natural frequency, rad/s.</summary>
    /// <param name="frequency">Natural frequency, Hz.</param>
    /// <param name="order">Order: excitations per crank turn; halves for four-strokes.</param>
    [Formula("critical speed of an order", "w = 2 π f / n", "Definition of the order", Provenance = Provenance.Definition)]
    [return: Quantity("critical speed", Dimension.RotationalSpeed, "rpm", Symbol = "w")]
    public static double CriticalSpeed(
        [Quantity("natural frequency", Dimension.Frequency, "Hz", Symbol = "f", Above = 0)] double frequency,
        [Quantity("order", Dimension.Number, Symbol = "n", Above = 0)] double order) =>
        Math.Tau * frequency / order;
}
