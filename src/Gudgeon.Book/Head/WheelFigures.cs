using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>The lobe centre by degree wheel, and the correction at the sprocket.</summary>
/// <param name="Rows">Lift, m; opening, closing and the centre between them, crank rad from overlap TDC.</param>
/// <param name="Centre">Lobe centre from overlap TDC, inlet after and exhaust before it, crank rad.</param>
/// <param name="Expanded">Its expanded uncertainty, k = 2, rad.</param>
/// <param name="Facts">Its numbers and the correction.</param>
public sealed record WheelFigures(IReadOnlyList<(double Lift, double Opening, double Closing, double Centre)> Rows, double Centre, double Expanded, IReadOnlyList<Fact> Facts)
{
    private const double UsualReading = 0.5 * Math.PI / 180;

    /// <summary>What the readings of one side say; null when there are none.</summary>
    internal static WheelFigures? Of(View view, string index)
    {
        if (CentreOf(view, index) is not var (centre, wheel, table))
        {
            return null;
        }

        var zero = view.Snapshot.Find(new FieldAddress(Cam.WheelZero, index))?.Value.StandardUncertainty ?? 0;
        var expanded = 2 * Math.Sqrt((wheel.Uncertainty * wheel.Uncertainty) + (zero * zero));
        var rows = table["lift"].Select((l, i) => (l, table["opening"][i], table["closing"][i], (table["opening"][i] + table["closing"][i]) / 2)).ToList();
        return new WheelFigures(rows, centre, expanded, [.. Say(view, index, centre, expanded, wheel)]);
    }

    /// <summary>Lobe centre from overlap TDC, inlet after and exhaust before it, with what it rests on; null when no reading was taken.</summary>
    internal static (double Centre, WheelCentre Wheel, Table Table)? CentreOf(View view, string index)
    {
        if (view.TableIf(Cam.WheelTable, index) is not { } table)
        {
            return null;
        }

        var wheel = view.Work(DegreeWheel.Centre, table["opening"], table["closing"], view.AmountOr(Cam.WheelReading, UsualReading, index));
        var centre = wheel.Centre - view.AmountOr(Cam.WheelZero, 0, index);
        return (index.StartsWith("inlet", StringComparison.Ordinal) ? centre : -centre, wheel, table);
    }

    private static IEnumerable<Fact> Say(View view, string index, double centre, double expanded, WheelCentre wheel)
    {
        yield return new Fact("lobe centre by degree wheel", centre, Dimension.Angle, "°") { Remark = $"± {Figures.Print(expanded, Dimension.Angle, "°", 2)} (k = 2)" };
        yield return new Fact("spread over the heights", Math.Round(wheel.Spread, 9), Dimension.Angle, "°") { Remark = "one that grows with the height is a lobe with two different flanks" };
        if (view.AmountIf(Cam.CentreWanted, index) is not { } wanted)
        {
            yield break;
        }

        // The exhaust's centre counts before TDC: the greater, the earlier.
        var later = index.StartsWith("inlet", StringComparison.Ordinal) ? centre - wanted : wanted - centre;
        yield return new Fact("lobe centre wanted", wanted, Dimension.Angle, "°");
        yield return new Fact(later > 0 ? "advance the cam by" : "retard the cam by", Math.Abs(later), Dimension.Angle, "°") { Remark = "crank degrees; opens " + (later > 0 ? "earlier" : "later") };
        foreach (var fact in Corrections(view, index, later))
        {
            yield return fact;
        }
    }

    private static IEnumerable<Fact> Corrections(View view, string index, double later)
    {
        if (view.AmountIf(Cam.SlotRadius, index) is { } radius)
        {
            var move = view.Work(SprocketSetting.Slot, later, radius).Move;
            var travel = view.AmountIf(Cam.SlotTravel, index);
            yield return new Fact("move along the slots", Math.Abs(move), Dimension.Length, "mm") { Remark = (move > 0 ? "the cam forwards in its sprocket" : "the cam back in its sprocket") + (Math.Abs(move) > travel ? $"; the slots allow only {Cam.SlotTravel.Print(travel.Value)}: move the sprocket a tooth first" : "") };
        }

        if (view.Knows(Cam.VernierHub, index) && view.Knows(Cam.VernierSprocket, index))
        {
            var holes = view.Work(SprocketSetting.Vernier, later, view.Count(Cam.VernierHub, index), view.Count(Cam.VernierSprocket, index));
            yield return new Fact("vernier sprocket gives", Math.Abs(holes.Correction), Dimension.Angle, "°") { Remark = $"hub hole {holes.Hub} on sprocket hole {holes.Sprocket}, counted forwards from those used now; {Figures.Print(Math.Abs(holes.Left), Dimension.Angle, "°", 2)} left" };
        }

        if (view.Knows(Cam.SprocketTeeth, index))
        {
            var tooth = view.Work(SprocketSetting.Tooth, view.Count(Cam.SprocketTeeth, index));
            yield return new Fact("one tooth of the cam sprocket", tooth, Dimension.Angle, "°") { Remark = Math.Abs(later) > 0.75 * tooth ? "the chain may be a tooth out: count the marks again" : "not a tooth out" };
        }
    }
}
