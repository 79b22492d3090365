namespace Gudgeon.Calc.ValveTrain;

/// <summary>Law of a lobe that rises to its nose and falls again without a dwell.</summary>
public enum LobeLaw
{
    /// <summary>The cube of a parabola: h (1 − z²)³; soft at the seat, sharp over the nose.</summary>
    Cubed,

    /// <summary>Even powers of the angle from the nose, four of them above the square.</summary>
    Powers,

    /// <summary>A series of cosines with a peak above the flanks.</summary>
    Harmonic,
}
