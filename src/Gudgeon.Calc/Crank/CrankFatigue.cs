using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Safety of a stress that swings between two values.</summary>
/// <param name="Mean">Mean stress, Pa.</param>
/// <param name="Amplitude">Half of its swing, Pa.</param>
/// <param name="Safety">Strength over demand.</param>
public readonly record struct SwingingStress(
    [Quantity("mean stress", Dimension.Pressure, "MPa", Symbol = "σm")] double Mean,
    [Quantity("stress amplitude", Dimension.Pressure, "MPa", Symbol = "σa")] double Amplitude,
    [Quantity("safety against fatigue", Dimension.Number, Symbol = "n")] double Safety);

/// <summary>Fatigue strength of crankshafts, rods and pins.</summary>
public static class CrankFatigue
{
    private const string Rule = "IACS UR M53, Calculation of crankshafts for I.C. engines, Rev. 2, ";

    /// <summary>Alternating stress that a crank bears in a fillet, Pa.</summary>
    /// <param name="diameter">Diameter of pin or journal, m.</param>
    /// <param name="fillet">Fillet radius, m.</param>
    /// <param name="tensile">Tensile strength, Pa.</param>
    /// <param name="forging">1.05 forged with the grain, 1.0 free forged, 0.93 cast.</param>
    [Formula(
        "crank fatigue strength",
        "σD = K (0.42 Rm + 39.3) (0.264 + 1.073 D^-0.2 + (785 - Rm) / 4900 + 196 / Rm sqrt(1 / R))",
        Rule + "M53.6, as printed in Indian Register of Shipping, Calculation of Crankshafts for Internal Combustion Engines, January 2012, section 6",
        Validity = "D and R in mm, Rm in MPa; forged or cast steel, fillets smooth and untreated; R at least 2 mm counts.",
        Caution = "Rolling, nitriding and induction hardening of the fillets add to it; by how much only the maker's tests can say.")]
    [return: Quantity("fatigue strength", Dimension.Pressure, "MPa", Symbol = "σD")]
    public static double Strength(
        [Quantity("diameter", Dimension.Length, "mm", Symbol = "D", Min = 1e-3, Max = 2)] double diameter,
        [Quantity("fillet radius", Dimension.Length, "mm", Symbol = "R", Min = 1e-4, Max = 0.2)] double fillet,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm", Min = 200e6, Max = 2500e6)] double tensile,
        [Quantity("factor of the forging", Dimension.Number, Symbol = "K", Min = 0.5, Max = 1.5)] double forging = 1)
    {
        var (d, r, rm) = (diameter * 1e3, Math.Max(fillet * 1e3, 2), tensile / 1e6);
        return 1e6 * forging * ((0.42 * rm) + 39.3) * (0.264 + (1.073 * Math.Pow(d, -0.2)) + ((785 - rm) / 4900) + (196 / rm * Math.Sqrt(1 / r)));
    }

    /// <summary>Equivalent alternating stress in a fillet, Pa.</summary>
    /// <param name="bending">Alternating bending stress in the fillet, Pa.</param>
    /// <param name="torsion">Alternating torsional stress in the fillet, Pa.</param>
    /// <param name="added">Bending by misalignment and by axial movement of the webs, Pa.</param>
    [Formula("equivalent alternating stress of a crank", "σv = sqrt((σ + σadd)^2 + 3 τ^2)", Rule + "M53.4 and M53.5 (from memory); 10 MPa is added in trunk-piston engines", Provenance = Provenance.FromMemory)]
    [return: Quantity("equivalent alternating stress", Dimension.Pressure, "MPa", Symbol = "σv")]
    public static double Equivalent(
        [Quantity("alternating bending stress", Dimension.Pressure, "MPa", Symbol = "σ", Min = 0)] double bending,
        [Quantity("alternating torsional stress", Dimension.Pressure, "MPa", Symbol = "τ", Min = 0)] double torsion,
        [Quantity("added bending stress", Dimension.Pressure, "MPa", Symbol = "σadd", Min = 0)] double added = 10e6) =>
        Math.Sqrt(((bending + added) * (bending + added)) + (3 * torsion * torsion));

    /// <summary>Safety of a stress that swings, by Goodman's line; compression in the mean is given no credit.</summary>
    /// <param name="greatest">Greatest stress, Pa; tension positive.</param>
    /// <param name="least">Least stress, Pa.</param>
    /// <param name="strength">Amplitude that the part bears at no mean stress, Pa.</param>
    /// <param name="tensile">Tensile strength, Pa.</param>
    [Formula(
        "safety by Goodman's line",
        "σm = (σ1 + σ2) / 2; σa = (σ1 - σ2) / 2; 1 / n = σa / σw + max(σm, 0) / Rm",
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. 6-46 (from memory)",
        Provenance = Provenance.FromMemory,
        Validity = "Mean and amplitude grow together; endless life.")]
    public static SwingingStress Goodman(
        [Quantity("greatest stress", Dimension.Pressure, "MPa", Symbol = "σ1", Min = -1e11, Max = 1e11)] double greatest,
        [Quantity("least stress", Dimension.Pressure, "MPa", Symbol = "σ2", Min = -1e11, Max = 1e11)] double least,
        [Quantity("fatigue strength, reversed", Dimension.Pressure, "MPa", Symbol = "σw", Above = 0)] double strength,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm", Above = 0)] double tensile)
    {
        FormulaDomainException.Unless(greatest >= least, "greatest stress: must not be less than the least");
        var (mean, amplitude) = ((greatest + least) / 2, (greatest - least) / 2);
        var demand = (amplitude / strength) + (Math.Max(mean, 0) / tensile);
        FormulaDomainException.Unless(demand > 0, "greatest stress: the part carries no load at all");
        return new SwingingStress(mean, amplitude, 1 / demand);
    }
}
