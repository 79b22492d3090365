using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Surfaces;

/// <summary>Cast steel shot numbers of SAE J444.</summary>
public enum CastShot
{
    /// <summary>S70.</summary>
    S70,

    /// <summary>S110.</summary>
    S110,

    /// <summary>S170.</summary>
    S170,

    /// <summary>S230.</summary>
    S230,

    /// <summary>S330.</summary>
    S330,

    /// <summary>S460.</summary>
    S460,

    /// <summary>S550.</summary>
    S550,
}

/// <summary>Steels by strength for the default peening intensity.</summary>
public enum PeenedSteel
{
    /// <summary>Below 200 ksi (1380 MPa).</summary>
    BelowHighStrength,

    /// <summary>200 ksi (1380 MPa) and above.</summary>
    HighStrength,
}

/// <summary>Range of intensity.</summary>
/// <param name="Least">Least intensity, m.</param>
/// <param name="Greatest">Greatest intensity, m; without end where there is none.</param>
public readonly record struct IntensityRange(
    [Quantity("least intensity", Dimension.Length, "mm")] double Least,
    [Quantity("greatest intensity", Dimension.Length, "mm")] double Greatest);

/// <summary>Shot sizes and default intensities.</summary>
public static class PeeningMedia
{
    private const double Mil = 25.4e-6;

    /// <summary>Nominal size of cast steel shot, m.</summary>
    /// <param name="shot">Shot number.</param>
    [Formula("cast shot size", "table of nominal screen openings", "SAE J444: the number is about the nominal opening in 0.0001 in")]
    [return: Quantity("nominal opening", Dimension.Length, "mm")]
    public static double ShotSize([Quantity("shot number", Dimension.Number)] CastShot shot) => shot switch
    {
        CastShot.S70 => 7.0 * Mil,
        CastShot.S110 => 11.7 * Mil,
        CastShot.S170 => 16.5 * Mil,
        CastShot.S230 => 23.4 * Mil,
        CastShot.S330 => 33.1 * Mil,
        CastShot.S460 => 46.9 * Mil,
        _ => 55.5 * Mil,
    };

    /// <summary>Nominal size of cut wire shot, m.</summary>
    /// <param name="number">Number after CW: the wire diameter in 0.001 in.</param>
    [Formula("cut wire shot size", "d = CW 0.001 in", "SAE J441", Provenance = Provenance.FromMemory)]
    [return: Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d")]
    public static double CutWireSize([Quantity("cut wire number", Dimension.Number, Symbol = "CW", Min = 10, Max = 125)] int number) => number * Mil;

    /// <summary>Largest media for a slot or a hole, m.</summary>
    /// <param name="opening">Width of the slot or diameter of the hole, m.</param>
    [Formula("largest peening media for an opening", "d = b / 4", "Shop rule: media not over a quarter of slot width or hole diameter", Provenance = Provenance.CommonPractice)]
    [return: Quantity("largest media diameter", Dimension.Length, "mm", Symbol = "d")]
    public static double LargestFor([Quantity("slot width or hole diameter", Dimension.Length, "mm", Symbol = "b", Above = 0)] double opening) => opening / 4;

    /// <summary>Largest media that reaches the bottom of a fillet, m.</summary>
    /// <param name="fillet">Smallest fillet radius to be peened, m.</param>
    [Formula("largest peening media for a fillet", "d = R / 2", "Shop rule, in peening specifications such as MIL-S-13165 too: media not over half of the smallest fillet radius (from memory)", Provenance = Provenance.FromMemory)]
    [return: Quantity("largest media diameter", Dimension.Length, "mm", Symbol = "d")]
    public static double LargestForFillet([Quantity("smallest fillet radius", Dimension.Length, "mm", Symbol = "R", Above = 0)] double fillet) => fillet / 2;

    /// <summary>Default intensity for steel, on strip A, where the drawing gives none.</summary>
    /// <param name="steel">Strength of the steel.</param>
    /// <param name="thickness">Thickness of the part, m.</param>
    [Formula("default peening intensity for steel", "table", "AMS-S-13165 (1997), Table VI and note 4", Caution = "Steels above 200 ksi want hard or ceramic shot. Thinner than 2.3 mm: agree it and try it on a spare.")]
    public static IntensityRange DefaultIntensity(
        [Quantity("steel", Dimension.Number)] PeenedSteel steel,
        [Quantity("thickness", Dimension.Length, "mm", Symbol = "t", Min = 2.286e-3)] double thickness)
    {
        var (least, greatest) = steel == PeenedSteel.HighStrength ? (6, 10) : thickness <= 375 * Mil ? (8, 12) : (12, 16);
        return new IntensityRange(least * Mil, greatest * Mil);
    }
}
