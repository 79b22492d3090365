using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Seats;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Head;

/// <summary>One valve on its seat and in its guide. SI; null where it is not known.</summary>
/// <param name="Valve">The valve, or the side when its valves are not told apart.</param>
/// <param name="HeadDiameter">Head, m.</param>
/// <param name="Width">Width of the contact band along the cone, m.</param>
/// <param name="Angle">Angle of the face from the plane of the head, rad.</param>
/// <param name="MeanDiameter">Mean diameter of the band, m.</param>
/// <param name="Area">Area of the band, m².</param>
/// <param name="SeatPressure">Pressure on the band at the greatest cylinder pressure, Pa.</param>
/// <param name="Stem">Stem diameter, m.</param>
/// <param name="Bore">Guide bore, m.</param>
/// <param name="Cold">Stem clearance cold, m.</param>
/// <param name="Hot">Stem clearance hot, m.</param>
/// <param name="StemTension">Greatest tension in the stem, Pa.</param>
public sealed record SeatRow(
    string Valve,
    double? HeadDiameter,
    double? Width,
    double? Angle,
    double? MeanDiameter,
    double? Area,
    double? SeatPressure,
    double? Stem,
    double? Bore,
    double? Cold,
    double? Hot,
    double? StemTension);

/// <summary>Leak test of a cylinder.</summary>
/// <param name="Cylinder">Its number; empty for all.</param>
/// <param name="Leakage">Share of the supply lost.</param>
/// <param name="Meaning">What the place where it is heard means; empty when nobody wrote it down.</param>
public sealed record LeakRow(string Cylinder, double Leakage, string Meaning);

/// <summary>Seats, guides, stems and leak tests.</summary>
/// <param name="Rows">One for each valve or side.</param>
/// <param name="GreatestPressure">Greatest cylinder pressure of the engine run above the air outside, Pa; null when there was none.</param>
/// <param name="Leaks">One for each cylinder that was tested.</param>
public sealed record SeatSheet(IReadOnlyList<SeatRow> Rows, double? GreatestPressure, IReadOnlyList<LeakRow> Leaks)
{
    /// <summary>What stands beside the step.</summary>
    public static readonly IReadOnlyList<string> Remarks =
    [
        "Lapped or cut valves are proved by a leak test before the head goes on: solvent in the port overnight, or air (common practice, no source).",
        "Seat width with marking blue all the way round: an even band, towards the outer edge of the face (common practice, no source).",
        "Guides are measured after they are pressed in, and the seats cut from them: a new guide means a new cut (common practice, no source).",
    ];

    /// <summary>What can hurt.</summary>
    public const string Caution = "Hot heads burn, seats at 200 °C look cold. For a leak test lock the crank before the air is opened; no spanner on the crank.";

    /// <summary>The sheet of the values that hold.</summary>
    /// <param name="view">With a desk where the seat pressure is wanted, for it takes an engine run.</param>
    public static SeatSheet Of(View view)
    {
        var pressure = FittedValve.Greatest(view).Pressure;
        var keys = Sketch.Keys(Instances.Valves(view, Valve.SeatWidth.Subject, Guide.Bore.Subject, Spring.InstalledHeight.Subject));
        return new SeatSheet(
            [.. keys.Select(k => Row(view, k, pressure))],
            double.IsNaN(pressure) ? null : pressure,
            [.. new LeakDownCheck().Instances(view).Select(c => new LeakRow(c, Sketch.Known(() => LeakDownCheck.Leakage(view, c)) ?? double.NaN, LeakDownCheck.Meaning(view, c))).Where(l => !double.IsNaN(l.Leakage))]);
    }

    private static SeatRow Row(View view, string key, double pressure)
    {
        var valve = new FittedValve(view, key);
        return new SeatRow(
            key,
            view.AmountIf(Valve.HeadDiameter, key),
            view.AmountIf(Valve.SeatWidth, key),
            view.AmountIf(Valve.SeatAngle, key),
            Sketch.Known(() => valve.Contact().MeanDiameter),
            Sketch.Known(() => valve.Contact().Area),
            Sketch.Known(() => valve.SeatPressure(pressure)),
            view.AmountIf(Valve.StemDiameter, key),
            view.AmountIf(Guide.Bore, key),
            Sketch.Known(valve.Clearance),
            Sketch.Known(valve.ClearanceHot),
            Sketch.Known(valve.StemTension));
    }
}
