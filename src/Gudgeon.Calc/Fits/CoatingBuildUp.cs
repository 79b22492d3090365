using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>What a coating does to sizes.</summary>
/// <param name="Face">Growth of one face, m.</param>
/// <param name="Shaft">Growth of an outer diameter, m.</param>
/// <param name="Bore">Change of a bore, m; negative, it closes.</param>
/// <param name="ThreadPitch">Growth of the pitch diameter of an outer 60° thread, m.</param>
public readonly record struct SizeChange(
    [Quantity("growth of a face", Dimension.Length, "µm", Symbol = "g")] double Face,
    [Quantity("growth of a shaft diameter", Dimension.Length, "µm", Symbol = "Δd")] double Shaft,
    [Quantity("change of a bore diameter", Dimension.Length, "µm", Symbol = "ΔD")] double Bore,
    [Quantity("growth of a thread pitch diameter", Dimension.Length, "µm", Symbol = "Δd2")] double ThreadPitch);

/// <summary>Size left for a coating: plating grows outward, hard anodising half in and half out.</summary>
public static class CoatingBuildUp
{
    /// <summary>Growth of faces, diameters and threads under a coating.</summary>
    /// <param name="thickness">Coating thickness, m.</param>
    /// <param name="outward">Share of the thickness that grows outward: 1 for plating and PVD, 0.5 for hard anodising.</param>
    [Formula("coating build-up", "g = q t; Δd = 2 g; ΔD = -2 g; Δd2 = 4 g", "geometry; half of a hard anodic coating grows outward, MIL-PRF-8625 type III practice", Provenance = Provenance.CommonPractice, Validity = "even coating; 60° thread flanks, 2 g / sin(30°)")]
    public static SizeChange Change(
        [Quantity("coating thickness", Dimension.Length, "µm", Symbol = "t", Min = 0)] double thickness,
        [Quantity("share that grows outward", Dimension.Number, Symbol = "q", Min = 0, Max = 1, Help = "1 for plating and PVD, 0.5 for hard anodising")] double outward = 1)
    {
        var face = thickness * outward;
        return new SizeChange(face, 2 * face, -2 * face, 4 * face);
    }
}
