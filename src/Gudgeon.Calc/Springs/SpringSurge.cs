using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Mass in motion and first natural frequency of a spring between plates.</summary>
/// <param name="Rate">Spring rate, N/m.</param>
/// <param name="ActiveMass">Mass of the active coils, kg.</param>
/// <param name="Frequency">First surge frequency, Hz.</param>
public readonly record struct Surge(
    [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R")] double Rate,
    [Quantity("active mass", Dimension.Mass, "g", Symbol = "m")] double ActiveMass,
    [Quantity("surge frequency", Dimension.Frequency, "Hz", Symbol = "f")] double Frequency);

/// <summary>Surge: the spring's own vibration along its axis.</summary>
public static class SpringSurge
{
    /// <summary>Mass of the coils that deflect, kg.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m; must exceed the wire.</param>
    /// <param name="activeCoils">Active coils.</param>
    /// <param name="density">Density of the wire, kg/m³.</param>
    [Formula("spring active mass", "m = π^2 d^2 D n ρ / 4", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 10-8")]
    [return: Quantity("active mass", Dimension.Mass, "g", Symbol = "m")]
    public static double ActiveMass(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("active coils", Dimension.Number, Symbol = "n", Above = 0)] double activeCoils,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850)
    {
        _ = HelicalSpring.Index(wire, meanDiameter);
        return Math.PI * Math.PI / 4 * wire * wire * meanDiameter * activeCoils * density;
    }

    /// <summary>First surge frequency of a spring held between parallel plates, from its dimensions.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m; must exceed the wire.</param>
    /// <param name="activeCoils">Active coils.</param>
    /// <param name="shearModulus">Shear modulus, Pa.</param>
    /// <param name="density">Density of the wire, kg/m³.</param>
    [Formula("spring surge frequency", "R = G d^4 / (8 D^3 n); m = π^2 d^2 D n ρ / 4; f = 0.5 sqrt(R / m)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 10-8; EN 13906-1:2013", Validity = "both ends held between parallel plates; cylindrical spring of constant pitch")]
    public static Surge Frequency(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("active coils", Dimension.Number, Symbol = "n", Above = 0)] double activeCoils,
        [Quantity("shear modulus", Dimension.Pressure, "GPa", Symbol = "G", Above = 0)] double shearModulus = 79.3e9,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density = 7850)
    {
        var rate = HelicalSpring.Rate(wire, meanDiameter, activeCoils, shearModulus);
        var mass = ActiveMass(wire, meanDiameter, activeCoils, density);
        return new Surge(rate, mass, FromMass(rate, mass));
    }

    /// <summary>First surge frequency from a rate and the mass of the active coils, Hz.</summary>
    /// <param name="rate">Spring rate, N/m.</param>
    /// <param name="activeMass">Mass of the active coils, kg.</param>
    [Formula("surge frequency from rate and mass", "f = 0.5 sqrt(R / m)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 10-8", Validity = "both ends held between parallel plates")]
    [return: Quantity("surge frequency", Dimension.Frequency, "Hz", Symbol = "f")]
    public static double FromMass(
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R", Above = 0)] double rate,
        [Quantity("active mass", Dimension.Mass, "g", Symbol = "m", Above = 0)] double activeMass) =>
        0.5 * Math.Sqrt(rate / activeMass);

    /// <summary>Surge frequency over the turning frequency of the cam: the harmonic of the lift that drives the surge.</summary>
    /// <param name="frequency">Surge frequency, Hz.</param>
    /// <param name="crankSpeed">Crankshaft speed, rad/s; the cam of a four-stroke turns at half of it.</param>
    [Formula("surge order", "o = f / (w / (4 π))", "definition, cam at half crank speed", Provenance = Provenance.Definition, Caution = "Low orders carry strong harmonics of the lift; an order near a whole number is resonance.")]
    [return: Quantity("surge order", Dimension.Number, Symbol = "o")]
    public static double Order(
        [Quantity("surge frequency", Dimension.Frequency, "Hz", Symbol = "f", Above = 0)] double frequency,
        [Quantity("crankshaft speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double crankSpeed) =>
        frequency / (crankSpeed / (4 * Math.PI));
}
