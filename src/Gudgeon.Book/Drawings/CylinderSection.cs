using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Chamber;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Drawings;

/// <summary>Piston at TDC, deck, gasket and chamber of one cylinder. SI; null where it is not known.</summary>
/// <param name="Bore">m.</param>
/// <param name="Deck">Piston below the deck, m; negative when it stands proud.</param>
/// <param name="Gasket">Crushed gasket, m.</param>
/// <param name="GasketBore">m.</param>
/// <param name="Chamber">Volume in the head, m³.</param>
/// <param name="Dome">Volume that stands above the crown's edge, m³; negative for a dish.</param>
/// <param name="Squish">Clearance between crown and head, cold, m.</param>
public sealed record CylinderSection(double? Bore, double? Deck, double? Gasket, double? GasketBore, double? Chamber, double? Dome, double? Squish)
{
    /// <summary>Keys of the cylinders.</summary>
    public static IReadOnlyList<string> Keys(Snapshot now) => Sketch.Keys(Checks.Instances.Cylinders(new View(now)));

    /// <summary>The numbers of one cylinder.</summary>
    public static CylinderSection Of(Snapshot now, string cylinder)
    {
        var view = new View(now);
        return new CylinderSection(
            view.AmountIf(Cylinder.Bore, cylinder),
            view.AmountIf(Cylinder.DeckHeight, cylinder),
            view.AmountIf(Cylinder.GasketThickness, cylinder),
            view.AmountIf(Cylinder.GasketBore, cylinder),
            view.AmountIf(Cylinder.ChamberVolume, cylinder),
            view.AmountIf(Cylinder.DomeVolume, cylinder),
            Sketch.Known(() => SquishCheck.Cold(view, cylinder)));
    }
}
