using Gudgeon.Book.Drawings;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Drawings;

/// <summary>
/// A section through piston, barrel, gasket and head at TDC, px. Widths, chamber and crown are to one scale; the gaps
/// between piston, deck and head are drawn larger by a stated factor, or nobody would see them.
/// </summary>
public sealed class CylinderGeometry
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 720, Height = 360;

    /// <summary>Thickness of the barrel's wall; not to scale.</summary>
    public const double Barrel = 42;

    private const double BoreWidth = 320, Middle = 340, HeadFaceAt = 140, RoomForGaps = 90;

    /// <summary>Widths and heights in place of those that are not known, m.</summary>
    private const double UsualBore = 80e-3, UsualGasket = 1e-3;

    private static readonly int[] Factors = [50, 20, 10, 5, 2, 1];

    /// <param name="section">The numbers.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public CylinderGeometry(CylinderSection section, bool imperial)
    {
        var bore = section.Bore ?? UsualBore;
        Scale = BoreWidth / bore;
        var (gasket, deck) = (section.Gasket ?? UsualGasket, section.Deck ?? 0);
        var gaps = Math.Max(gasket, gasket + deck);
        GapFactor = Factors.FirstOrDefault(f => gaps * Scale * f <= RoomForGaps, 1);
        Deck = HeadFace + (gasket * Scale * GapFactor);
        Crown = Deck + (deck * Scale * GapFactor);
        GasketInset = Math.Max(0, ((section.GasketBore ?? bore) - bore) / 2 * Scale);
        ChamberDepth = Depth(section.Chamber ?? 0, bore) * Scale;
        DomeHeight = Depth(section.Dome ?? 0, bore) * Scale;
        GasketKnown = section.Gasket is not null;
        DeckKnown = section.Deck is not null;
        ChamberKnown = section.Chamber is not null;
        Numbers =
        [
            Told.Length("bore", section.Bore, imperial),
            Told.Of("chamber in the head", section.Chamber, Dimension.Volume, "cm³", imperial),
            Told.Length("gasket, crushed", section.Gasket, imperial),
            Told.Length("gasket bore", section.GasketBore, imperial),
            Told.Length(section.Deck < 0 ? "piston proud of the deck" : "piston below the deck", section.Deck is { } d ? Math.Abs(d) : null, imperial),
            Told.Of(section.Dome < 0 ? "dish of the piston" : "dome of the piston", section.Dome is { } v ? Math.Abs(v) : null, Dimension.Volume, "cm³", imperial),
            Told.Length("squish, cold", section.Squish, imperial),
        ];
        Uprights =
        [
            new Upright(Left - Barrel - 14, HeadFace, Deck, Numbers[2]) { LeftWords = true },
            new Upright(Right + Barrel + 14, Math.Min(Deck, Crown), Math.Max(Deck, Crown), Numbers[4] with { Name = section.Deck < 0 ? "proud of deck" : "below deck" }),
            new Upright(Middle - 110, HeadFace, Crown, Numbers[6]),
        ];
    }

    /// <summary>px for each metre of width.</summary>
    public double Scale { get; }

    /// <summary>How many times as large the gaps are drawn.</summary>
    public int GapFactor { get; }

    /// <summary>Gasket face of the head.</summary>
    public double HeadFace => HeadFaceAt;

    /// <summary>Top of the barrel.</summary>
    public double Deck { get; }

    /// <summary>Edge of the crown; above the deck when the piston stands proud.</summary>
    public double Crown { get; }

    /// <summary>Walls of the bore.</summary>
    public double Left => Middle - (BoreWidth / 2);

    /// <inheritdoc cref="Left"/>
    public double Right => Middle + (BoreWidth / 2);

    /// <summary>Middle of the bore.</summary>
    public double Centre => Middle;

    /// <summary>How far the gasket stands back from the bore.</summary>
    public double GasketInset { get; }

    /// <summary>Half the mouth of the chamber; its outline is not known, only its volume.</summary>
    public double MouthHalf => BoreWidth * MouthShare;

    /// <summary>Depth of a half ellipsoid of the chamber's volume.</summary>
    public double ChamberDepth { get; }

    /// <summary>Height of the dome; negative for a dish.</summary>
    public double DomeHeight { get; }

    /// <summary>Whether it is known; else drawn dashed.</summary>
    public bool GasketKnown { get; }

    /// <inheritdoc cref="GasketKnown"/>
    public bool DeckKnown { get; }

    /// <inheritdoc cref="GasketKnown"/>
    public bool ChamberKnown { get; }

    /// <summary>Every number, for the list.</summary>
    public IReadOnlyList<Told> Numbers { get; }

    /// <summary>Dimension lines.</summary>
    public IReadOnlyList<Upright> Uprights { get; }

    private const double MouthShare = 0.36;

    /// <summary>Depth, m, at which half an ellipsoid over the mouth holds a volume, m³; with the volume's sign.</summary>
    private static double Depth(double volume, double bore)
    {
        var half = bore * MouthShare;
        return 3 * volume / (2 * Math.PI * half * half);
    }
}
