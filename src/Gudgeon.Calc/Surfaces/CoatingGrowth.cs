using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Surfaces;

/// <summary>What a coating does to the sizes of a part.</summary>
/// <param name="Face">Growth of one face, m.</param>
/// <param name="Shaft">Growth of a shaft diameter, m.</param>
/// <param name="Bore">Change of a bore diameter, m; negative.</param>
/// <param name="ThreadPitch">Growth of the pitch diameter of a 60° thread, m.</param>
public readonly record struct CoatedSizes(
    [Quantity("growth of one face", Dimension.Length, "µm")] double Face,
    [Quantity("growth of a shaft diameter", Dimension.Length, "µm")] double Shaft,
    [Quantity("change of a bore diameter", Dimension.Length, "µm")] double Bore,
    [Quantity("growth of the pitch diameter of a 60° thread", Dimension.Length, "µm")] double ThreadPitch);

/// <summary>Growth of parts by coating.</summary>
public static class CoatingGrowth
{
    /// <summary>Change of sizes by a coating.</summary>
    /// <param name="thickness">Coating thickness, m.</param>
    /// <param name="outward">Share of the coating that stands above the old surface: 1/2 for hard anodise, 1 for plating and PVD.</param>
    [Formula(
        "coating growth",
        "face = k t; shaft = 2 k t; bore = -2 k t; thread pitch diameter = 4 k t",
        "Geometry; the half of hard anodise is the trade rule for MIL-PRF-8625 type III",
        Provenance = Provenance.CommonPractice,
        Caution = "Anodise share depends on alloy and bath: coat a trial piece. Mask fits, or machine them to suit.")]
    public static CoatedSizes Sizes(
        [Quantity("coating thickness", Dimension.Length, "µm", Symbol = "t", Min = 0, Max = 0.002)] double thickness,
        [Quantity("share above the old surface", Dimension.Number, "%", Symbol = "k", Min = 0, Max = 1)] double outward = 1)
    {
        var face = thickness * outward;
        return new CoatedSizes(face, 2 * face, -2 * face, 4 * face);
    }
}
