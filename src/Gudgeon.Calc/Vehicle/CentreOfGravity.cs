using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Vehicle;

/// <summary>Mass and centre of gravity.</summary>
/// <param name="Mass">Total mass, kg.</param>
/// <param name="Ahead">Distance ahead of the rear tyre's contact, m.</param>
/// <param name="Height">Height above the ground, m.</param>
public readonly record struct MassCentre(
    [Quantity("total mass", Dimension.Mass, "kg", Symbol = "m")] double Mass,
    [Quantity("centre of gravity ahead of the rear contact", Dimension.Length, "mm", Symbol = "b")] double Ahead,
    [Quantity("height of the centre of gravity", Dimension.Length, "mm", Symbol = "h")] double Height);

/// <summary>Where machine and rider carry their weight.</summary>
public static class CentreOfGravity
{
    /// <summary>Centre of gravity of several parts: machine, rider, ballast.</summary>
    /// <param name="masses">Mass of each part, kg.</param>
    /// <param name="ahead">Distance of each part's centre of gravity ahead of the rear contact, m.</param>
    /// <param name="heights">Height of each part's centre of gravity above the ground, m.</param>
    /// <returns>Total mass and its centre.</returns>
    [Formula("combined centre of gravity", "m = sum mi; b = sum(mi bi) / m; h = sum(mi hi) / m", "static moments about the rear contact", Provenance = Provenance.Definition)]
    public static MassCentre Combined(
        [Quantity("masses of the parts", Dimension.Mass, "kg", Symbol = "mi", Min = 0)] double[] masses,
        [Quantity("their centres ahead of the rear contact", Dimension.Length, "mm", Symbol = "bi")] double[] ahead,
        [Quantity("heights of their centres", Dimension.Length, "mm", Symbol = "hi")] double[] heights)
    {
        FormulaDomainException.Unless(masses.Length == ahead.Length && masses.Length == heights.Length, "masses, distances and heights: as many of each are wanted");
        var (mass, forward, upward) = (0.0, 0.0, 0.0);
        for (var i = 0; i < masses.Length; i++)
        {
            mass += masses[i];
            forward += masses[i] * ahead[i];
            upward += masses[i] * heights[i];
        }

        FormulaDomainException.Unless(mass > 0, "masses of the parts: at least one must be above zero");
        return new MassCentre(mass, forward / mass, upward / mass);
    }
}
