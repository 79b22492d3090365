using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Roughness Rz of the faces that bed in.</summary>
public enum RoughnessBand
{
    /// <summary>Rz under 10 µm.</summary>
    Below10,

    /// <summary>Rz from 10 to 40 µm.</summary>
    From10To40,

    /// <summary>Rz from 40 to 160 µm.</summary>
    From40To160,
}

/// <summary>Direction of the working load.</summary>
public enum JointLoading
{
    /// <summary>Tension or compression along the bolt.</summary>
    Axial,

    /// <summary>Shear across the bolt.</summary>
    Shear,
}

/// <summary>How much each place of a joint beds in.</summary>
/// <param name="Thread">The thread, m.</param>
/// <param name="Face">Each head or nut face, m.</param>
/// <param name="Interface">Each interface between parts, m.</param>
/// <param name="Total">All of the joint, m.</param>
public readonly record struct EmbeddingAmounts(
    [Quantity("embedding of the thread", Dimension.Length, "µm", Symbol = "fG")] double Thread,
    [Quantity("embedding of a head or nut face", Dimension.Length, "µm", Symbol = "fK")] double Face,
    [Quantity("embedding of an interface", Dimension.Length, "µm", Symbol = "fI")] double Interface,
    [Quantity("embedding", Dimension.Length, "µm", Symbol = "fZ")] double Total);

/// <summary>Bedding-in of rough faces under preload.</summary>
public static class Embedding
{
    /// <summary>Guide values of embedding for a joint of steel parts.</summary>
    /// <param name="roughness">Roughness Rz of the faces.</param>
    /// <param name="loading">Direction of the working load.</param>
    /// <param name="faces">Head and nut faces: 1 for a tapped joint, 2 for a through bolt.</param>
    /// <param name="interfaces">Interfaces between clamped parts.</param>
    [Formula("embedding guide", "fZ = fG + nK fK + nI fI", "VDI 2230-1:2003, table 5", Provenance = Provenance.FromMemory, Caution = "Not verified against the printed table; soft gaskets and coatings lose far more.")]
    public static EmbeddingAmounts Guide(
        [Quantity("roughness", Dimension.Number)] RoughnessBand roughness,
        [Quantity("loading", Dimension.Number)] JointLoading loading = JointLoading.Axial,
        [Quantity("head and nut faces", Dimension.Number, Symbol = "nK", Min = 0)] int faces = 1,
        [Quantity("interfaces", Dimension.Number, Symbol = "nI", Min = 0)] int interfaces = 1)
    {
        var (face, between) = (roughness, loading) switch
        {
            (RoughnessBand.Below10, JointLoading.Axial) => (2.5e-6, 1.5e-6),
            (RoughnessBand.From10To40, JointLoading.Axial) => (3e-6, 2e-6),
            (RoughnessBand.From40To160, JointLoading.Axial) => (4e-6, 3e-6),
            (RoughnessBand.Below10, _) => (3e-6, 2e-6),
            (RoughnessBand.From10To40, _) => (4.5e-6, 2.5e-6),
            _ => (6.5e-6, 3.5e-6),
        };
        const double Thread = 3e-6;
        return new EmbeddingAmounts(Thread, face, between, Thread + (faces * face) + (interfaces * between));
    }
}
