using Gudgeon.Book.Checks.Strength;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Bottom;

/// <summary>One throw of the crank with its fillets. SI; null where it is not known.</summary>
/// <param name="Cylinder">Whose.</param>
/// <param name="Facts">Its numbers.</param>
/// <param name="Pin">Diameter of the crank pin, m.</param>
/// <param name="Journal">Diameter of the slimmer journal beside it, m.</param>
/// <param name="Radius">Crank radius, m.</param>
/// <param name="Overlap">Overlap of pin and journal, m; negative when there is none.</param>
/// <param name="WebThickness">m.</param>
/// <param name="WebWidth">m.</param>
/// <param name="PinLength">m.</param>
public sealed record ThrowFigures(string Cylinder, IReadOnlyList<Fact> Facts, double? Pin, double? Journal, double? Radius, double? Overlap, double? WebThickness, double? WebWidth, double? PinLength)
{
    /// <summary>The throw of a cylinder.</summary>
    internal static ThrowFigures Of(View view, string cylinder)
    {
        var strength = new CrankStrength(view, cylinder);
        var overlap = Sketch.Known(() => strength.Overlap);
        var (pin, journal) = (Fillet(strength.PinFillet), Fillet(strength.JournalFillet));
        var swing = strength.Swings.Count == 0 ? default : strength.Swings.MaxBy(s => s.Radial);
        double? Swings(double of) => swing == default ? null : of;
        return new ThrowFigures(
            cylinder,
            [
                RodSheet.Length("overlap of pin and journal", overlap),
                RodSheet.Force("load along the throw, mean", Swings(swing.MeanRadial)) with { Remark = "outwards positive" },
                RodSheet.Force("load along the throw, alternating", Swings(swing.Radial)) with { Remark = swing == default ? "" : RodSheet.At(swing.Speed) },
                new Fact("torque that passes, mean", Swings(swing.MeanTorque), Dimension.Torque, "N·m"),
                new Fact("torque that passes, alternating", Swings(swing.Torque), Dimension.Torque, "N·m"),
                RodSheet.Stress("pin fillet, alternating stress", pin?.Stress),
                RodSheet.Stress("pin fillet bears", pin?.Strength),
                RodSheet.Stress("journal fillet, alternating stress", journal?.Stress),
                RodSheet.Stress("journal fillet bears", journal?.Strength),
            ],
            Sketch.Known(() => strength.PinDiameter),
            Sketch.Known(() => strength.JournalDiameter),
            view.AmountIf(Crank.Stroke) / 2,
            overlap,
            view.AmountIf(Crank.WebThickness),
            view.AmountIf(Crank.WebWidth),
            view.AmountIf(Crank.PinLength));
    }

    /// <summary>A fillet; null also where its measures lie outside the rule.</summary>
    private static FilletStress? Fillet(Func<FilletStress?> work) => Sketch.Known(work) is { } fillet && double.IsFinite(fillet.Stress + fillet.Strength) ? fillet : null;
}
