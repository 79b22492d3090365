using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>How the ends of a compression spring are made.</summary>
public enum SpringEnd
{
    /// <summary>Closed (squared) and ground: every valve spring.</summary>
    SquaredGround,

    /// <summary>Closed (squared), not ground.</summary>
    Squared,

    /// <summary>Open (plain), ground.</summary>
    PlainGround,

    /// <summary>Open (plain), not ground.</summary>
    Plain,
}

/// <summary>Coils and lengths that follow from the end form.</summary>
/// <param name="ActiveCoils">Coils that deflect.</param>
/// <param name="SolidLength">Length with all coils touching, m.</param>
public readonly record struct SpringCoils(
    [Quantity("active coils", Dimension.Number, Symbol = "n")] double ActiveCoils,
    [Quantity("solid length", Dimension.Length, "mm", Symbol = "Ls")] double SolidLength);

/// <summary>What the end form does to active coils, solid length and pitch.</summary>
public static class SpringEnds
{
    /// <summary>Active coils and solid length from the counted coils and the end form.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="totalCoils">Coils counted from tip to tip.</param>
    /// <param name="ends">End form.</param>
    [Formula("spring solid length", "Ls = d nt; n = nt - 2", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., table 10-1", Provenance = Provenance.FromMemory, Validity = "squared and ground ends as written; other ends lose 0 (plain), 1 (plain ground) or 2 coils, and ends not ground add one wire to the solid length", Caution = "A measured solid length goes before this estimate.")]
    public static SpringCoils Solid(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("total coils", Dimension.Number, Symbol = "nt", Above = 2)] double totalCoils,
        [Quantity("end form", Dimension.Number)] SpringEnd ends = SpringEnd.SquaredGround) => new(
            totalCoils - DeadCoils(ends),
            wire * (totalCoils + (IsGround(ends) ? 0 : 1)));

    /// <summary>Pitch of the free spring, m.</summary>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="freeLength">Free length, m.</param>
    /// <param name="totalCoils">Coils counted from tip to tip.</param>
    /// <param name="ends">End form.</param>
    [Formula("spring pitch", "p = (L0 - 2 d) / (nt - 2)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., table 10-1", Provenance = Provenance.FromMemory, Validity = "squared and ground ends as written; squared (L0 - 3 d) / (nt - 2), plain (L0 - d) / nt, plain ground L0 / nt")]
    [return: Quantity("pitch", Dimension.Length, "mm", Symbol = "p")]
    public static double Pitch(
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("free length", Dimension.Length, "mm", Symbol = "L0", Above = 0)] double freeLength,
        [Quantity("total coils", Dimension.Number, Symbol = "nt", Above = 2)] double totalCoils,
        [Quantity("end form", Dimension.Number)] SpringEnd ends = SpringEnd.SquaredGround)
    {
        FormulaDomainException.Unless(freeLength > Solid(wire, totalCoils, ends).SolidLength, "free length: must be greater than the solid length");
        return ends switch
        {
            SpringEnd.SquaredGround => (freeLength - (2 * wire)) / (totalCoils - 2),
            SpringEnd.Squared => (freeLength - (3 * wire)) / (totalCoils - 2),
            SpringEnd.PlainGround => freeLength / totalCoils,
            _ => (freeLength - wire) / totalCoils,
        };
    }

    private static double DeadCoils(SpringEnd ends) => ends switch
    {
        SpringEnd.Plain => 0,
        SpringEnd.PlainGround => 1,
        _ => 2,
    };

    private static bool IsGround(SpringEnd ends) => ends is SpringEnd.SquaredGround or SpringEnd.PlainGround;
}
