using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Seats;

/// <summary>What the checks of valves on their seats and in their guides share.</summary>
public abstract class SeatCheck : Check
{
    public override string Family => "seats and lash";

    /// <summary>The valves of which something is known that this check is about.</summary>
    protected static IEnumerable<string> Known(View view, Field field, params Subject[] subjects) =>
        Checks.Instances.Valves(view, [field.Subject, .. subjects]).Where(i => view.Knows(field, i));
}

/// <summary>Width of the contact band.</summary>
public sealed class SeatWidthCheck : SeatCheck
{
    public override string Id => "seat-width";

    public override string Title => "Valve seat width";

    public override string Source => "inlet 0.9 to 1.5 mm, exhaust 1.1 to 1.8 mm, for the exhaust gives its heat away through the seat: common practice, no source; the maker's figure goes first";

    public override string Caution => "Prove lapped or cut valves by a leak test before the head goes on: solvent in the port, or air.";

    public override IEnumerable<string> Instances(View view) => Known(view, Valve.SeatWidth);

    public override Judgement Examine(View view, string index)
    {
        var inlet = index.StartsWith("inlet", StringComparison.Ordinal);
        return Judgement.Between(
            "seat width",
            view.Amount(Valve.SeatWidth, index),
            view.Limit(inlet ? "seat-width.inletMin" : "seat-width.exhaustMin", Dimension.Length, "mm", inlet ? 0.9e-3 : 1.1e-3),
            view.Limit(inlet ? "seat-width.inletMax" : "seat-width.exhaustMax", Dimension.Length, "mm", inlet ? 1.5e-3 : 1.8e-3),
            Dimension.Length,
            "mm",
            "common practice, no source");
    }
}

/// <summary>Pressure on the seat at the greatest cylinder pressure.</summary>
public sealed class SeatPressureCheck : SeatCheck
{
    public override string Id => "seat-pressure";

    public override string Title => "Pressure on the valve seat";

    public override string Source => "spring load and greatest cylinder pressure of the run on the contact band, no friction on the cone; limit by the maker of the seats";

    public override IEnumerable<string> Instances(View view) => Known(view, Valve.SeatPressureLimit, Spring.InstalledHeight.Subject);

    public override Judgement Examine(View view, string index)
    {
        var (pressure, speed) = FittedValve.Greatest(view);
        return Judgement.AtMost("seat pressure", new FittedValve(view, index).SeatPressure(pressure), view.Amount(Valve.SeatPressureLimit, index), Dimension.Pressure, "MPa", "valve.seatPressureLimit") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }
}

/// <summary>Clearance of the stem in its guide, cold.</summary>
public sealed class StemClearanceCheck : SeatCheck
{
    public override string Id => "stem-clearance";

    public override string Title => "Stem clearance, cold";

    public override string Source => "guide bore less stem; limits by the maker of valve or guide";

    public override IEnumerable<string> Instances(View view) => Known(view, Guide.Bore, Valve.StemDiameter.Subject);

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "stem clearance", new FittedValve(view, index).Clearance(), view.Amount(Guide.ClearanceMin, index), view.Amount(Guide.ClearanceMax, index), Dimension.Length, "mm", "guide.clearanceMin and guide.clearanceMax");
}

/// <summary>Clearance of the stem in its guide at running temperature.</summary>
public sealed class StemClearanceHotCheck : SeatCheck
{
    /// <summary>What an oil film wants at the least, m.</summary>
    private const double UsualLeast = 5e-6;

    public override string Id => "stem-clearance-hot";

    public override string Title => "Stem clearance, hot";

    public override string Source => "linear expansion of stem and guide; 0.005 mm left for the oil: common practice, no source";

    public override string Caution => "An exhaust stem that seizes meets the piston: leave clearance for the day when it runs hotter than was thought.";

    public override IEnumerable<string> Instances(View view) => Known(view, Guide.StemTemperature, Valve.StemDiameter.Subject);

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "stem clearance, hot", new FittedValve(view, index).ClearanceHot(), view.AmountOr(Guide.HotMin, UsualLeast, index), Dimension.Length, "mm", "guide.hotMin");
}

/// <summary>Tension in the stem.</summary>
public sealed class StemStressCheck : SeatCheck
{
    public override string Id => "stem-stress";

    public override string Title => "Tension in the valve stem";

    public override string Source => "spring at full lift, or shut with the blow of seating as a stress wave (from memory); limit by the maker of the valve";

    public override string Caution => "A valve that drops wrecks piston, head and barrel: no nicks or grinding marks in the collets' groove, and new collets with new valves.";

    public override IEnumerable<string> Instances(View view) => Known(view, Valve.StemStressLimit, Spring.InstalledHeight.Subject);

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "tension in the stem", new FittedValve(view, index).StemTension(), view.Amount(Valve.StemStressLimit, index), Dimension.Pressure, "MPa", "valve.stemStressLimit") with { Remark = "counted as steel" };
}
