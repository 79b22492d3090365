using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Boost;

/// <summary>How a belt's give raises the torque of a sudden change of speed.</summary>
/// <param name="Period">Natural period of the driven inertia on the belt, s.</param>
/// <param name="Factor">Greatest torque over that of a stiff drive.</param>
public readonly record struct ShockFactor(
    [Quantity("natural period", Dimension.Time, "ms", Symbol = "τ")] double Period,
    [Quantity("shock factor", Dimension.Number, Symbol = "K")] double Factor);

/// <summary>Torque that a supercharger's inertia throws back into its drive.</summary>
public static class DriveShock
{
    private const string Whip = "A drive that lets go at speed whips: guard on, nobody in its plane.";

    /// <summary>Torque of an inertia whose speed is changed, N·m.</summary>
    /// <param name="inertia">Moment of inertia, referred to the shaft, kg·m².</param>
    /// <param name="change">Change of the shaft's speed, rad/s.</param>
    /// <param name="time">Time that it takes, s.</param>
    [Formula("inertia torque of a speed change", "T = J Δω / t", "Newton, on a shaft; the change even over its time", Provenance = Provenance.Definition)]
    [return: Quantity("torque", Dimension.Torque, "N·m", Symbol = "T")]
    public static double Torque(
        [Quantity("referred inertia", Dimension.MomentOfInertia, "kg·m²", Symbol = "J", Min = 0)] double inertia,
        [Quantity("change of speed", Dimension.RotationalSpeed, "rpm", Symbol = "Δω", Min = 0)] double change,
        [Quantity("time", Dimension.Time, "ms", Symbol = "t", Above = 0)] double time) =>
        inertia * change / time;

    /// <summary>Greatest torque in a belt over that of a stiff drive.</summary>
    /// <param name="inertia">Driven inertia, referred to the crank, kg·m².</param>
    /// <param name="stiffness">Stiffness of the belt, referred to the crank, N·m/rad.</param>
    /// <param name="time">Time that the change of speed takes, s.</param>
    [Formula(
        "shock factor of a drive",
        "τ = 2 π sqrt(J / k); K = 2 sin(π t / τ) below t = τ / 2, 2 from there",
        "One mass on one spring under an even acceleration of its footing, no damping: Thomson, Theory of Vibration with Applications, ch. 4, shock spectrum of a rectangular pulse",
        Provenance = Provenance.FromMemory,
        Validity = "An upper bound: damping and slip take from it.",
        Caution = Whip)]
    public static ShockFactor Factor(
        [Quantity("referred inertia", Dimension.MomentOfInertia, "kg·m²", Symbol = "J", Above = 0)] double inertia,
        [Quantity("referred stiffness", Dimension.RotationalStiffness, "N·m/rad", Symbol = "k", Above = 0)] double stiffness,
        [Quantity("time", Dimension.Time, "ms", Symbol = "t", Above = 0)] double time)
    {
        var period = Math.Tau * Math.Sqrt(inertia / stiffness);
        return new ShockFactor(period, 2 * Math.Sin(Math.PI * Math.Min(time / period, 0.5)));
    }

    /// <summary>Energy of a rotor, J.</summary>
    /// <param name="inertia">Moment of inertia on its own shaft, kg·m².</param>
    /// <param name="speed">Its own speed, rad/s.</param>
    [Formula("energy of a rotor", "E = J w^2 / 2", "Kinetic energy", Provenance = Provenance.Definition, Caution = "All of it comes out when the rotor bursts: containment by the maker's figures, and nobody in its plane.")]
    [return: Quantity("energy", Dimension.Energy, "J", Symbol = "E")]
    public static double Energy(
        [Quantity("inertia", Dimension.MomentOfInertia, "kg·mm²", Symbol = "J", Min = 0)] double inertia,
        [Quantity("speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed) =>
        inertia * speed * speed / 2;

    /// <summary>Speed at which a disc bursts, rad/s.</summary>
    /// <param name="inner">Radius of the bore, m.</param>
    /// <param name="outer">Radius of the rim, m.</param>
    /// <param name="tensile">Tensile strength at its temperature, Pa.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="use">Share of the strength that the mean hoop stress comes to at burst.</param>
    [Formula(
        "burst speed of a disc",
        "w = sqrt(3 c Sut (ro - ri) / (ρ (ro^3 - ri^3)))",
        "Mean hoop stress over the section comes to the strength (Robinson, Trans. ASME 66, 1944); c about 0.85",
        Provenance = Provenance.FromMemory,
        Validity = "A flat disc of the rim's diameter: an impeller that thins outwards stands more, its blades and balance cuts take from it. No fatigue.",
        Caution = "A part that bursts is shrapnel: the maker's greatest speed goes first, containment, and nobody in its plane.")]
    [return: Quantity("burst speed", Dimension.RotationalSpeed, "rpm", Symbol = "w")]
    public static double BurstSpeed(
        [Quantity("bore radius", Dimension.Length, "mm", Symbol = "ri", Min = 0)] double inner,
        [Quantity("rim radius", Dimension.Length, "mm", Symbol = "ro", Above = 0)] double outer,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Sut", Above = 0)] double tensile,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("share of the strength", Dimension.Number, Symbol = "c", Above = 0, Max = 1)] double use = 0.85)
    {
        FormulaDomainException.Unless(outer > inner, "rim radius: must be greater than the bore radius");
        return Math.Sqrt(3 * use * tensile * (outer - inner) / (density * (Math.Pow(outer, 3) - Math.Pow(inner, 3))));
    }
}
