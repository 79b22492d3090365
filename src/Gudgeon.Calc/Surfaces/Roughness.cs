using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Surfaces;

/// <summary>Shape of a roughness profile.</summary>
public enum ProfileShape
{
    /// <summary>Sine wave.</summary>
    Sine,

    /// <summary>Normally distributed heights: ground, lapped, superfinished.</summary>
    Gaussian,

    /// <summary>Triangle: turned with a sharp tool.</summary>
    Triangle,
}

/// <summary>Roughness figures of one surface from another.</summary>
public static class Roughness
{
    /// <summary>Root-mean-square roughness Rq from Ra, m.</summary>
    /// <param name="ra">Arithmetic mean roughness, m.</param>
    /// <param name="shape">Shape of the profile.</param>
    [Formula(
        "Rq from Ra",
        "Rq = k Ra; sine π / (2 √2), Gaussian √(π / 2), triangle 2 / √3",
        "Definitions of ISO 21920-2:2021 (formerly ISO 4287:1997)",
        Caution = "Exact for the shape named only; on a real surface measure it.")]
    [return: Quantity("Rq", Dimension.Length, "µm", Symbol = "Rq")]
    public static double RqFromRa(
        [Quantity("Ra", Dimension.Length, "µm", Symbol = "Ra", Min = 0)] double ra,
        [Quantity("profile shape", Dimension.Number, Symbol = "k")] ProfileShape shape = ProfileShape.Gaussian) =>
        ra * shape switch
        {
            ProfileShape.Sine => Math.PI / (2 * Math.Sqrt(2)),
            ProfileShape.Gaussian => Math.Sqrt(Math.PI / 2),
            _ => 2 / Math.Sqrt(3),
        };

    /// <summary>Rz of a sine profile from Ra, m.</summary>
    /// <param name="ra">Arithmetic mean roughness, m.</param>
    [Formula(
        "Rz of a sine profile",
        "Rz = π Ra",
        "Definition on a sine wave",
        Provenance = Provenance.Definition,
        Caution = "No fixed factor exists: real surfaces run from 4 to over 7. Never convert a drawing's Rz to Ra.")]
    [return: Quantity("Rz", Dimension.Length, "µm", Symbol = "Rz")]
    public static double RzOfSine([Quantity("Ra", Dimension.Length, "µm", Symbol = "Ra", Min = 0)] double ra) => Math.PI * ra;

    /// <summary>Theoretical peak-to-valley height of a turned surface, m.</summary>
    /// <param name="feed">Feed per turn, m.</param>
    /// <param name="nose">Nose radius of the tool, m.</param>
    [Formula("roughness left by turning", "Rt = f^2 / (8 r)", "Geometry of a round-nosed tool", Provenance = Provenance.Definition, Validity = "Feed well below the nose radius; a real tool leaves more.")]
    [return: Quantity("peak to valley", Dimension.Length, "µm", Symbol = "Rt")]
    public static double Turned(
        [Quantity("feed per turn", Dimension.Length, "mm", Symbol = "f", Above = 0)] double feed,
        [Quantity("nose radius", Dimension.Length, "mm", Symbol = "r", Above = 0)] double nose) =>
        feed * feed / (8 * nose);

    /// <summary>Fatigue strength of rough steel over that of polished steel.</summary>
    /// <param name="rz">Mean peak-to-valley height Rz, m.</param>
    /// <param name="tensile">Tensile strength, Pa.</param>
    [Formula(
        "fatigue factor of roughness",
        "KR = 1 - 0.22 log10(Rz) log10(2 Rm / 400 MPa), at most 1",
        "FKM guideline, Analytical strength assessment, roughness factor, wrought steel (from memory)",
        Provenance = Provenance.FromMemory,
        Validity = "Rz in µm, from 1 µm to 200 µm; smoother counts as polished.")]
    [return: Quantity("roughness factor", Dimension.Number, Symbol = "KR")]
    public static double FatigueFactor(
        [Quantity("Rz", Dimension.Length, "µm", Symbol = "Rz", Min = 0, Max = 200e-6)] double rz,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm", Min = 400e6, Max = 2500e6)] double tensile) =>
        1 - (0.22 * Math.Log10(Math.Max(rz * 1e6, 1)) * Math.Log10(2 * tensile / 400e6));
}
