using Gudgeon.Book.Bottom;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Measuring;

/// <summary>Where along a part one reads.</summary>
/// <param name="Name">"top".</param>
/// <param name="At">Distance from one end, m.</param>
public sealed record Station(string Name, double At);

/// <summary>One reading of a plan.</summary>
/// <param name="Round">Which repeat, from 1.</param>
/// <param name="Station">Where along the part.</param>
/// <param name="Axis">In which direction.</param>
public sealed record PlannedReading(int Round, Station Station, string Axis);

/// <summary>How one part is measured: at which stations and in which axes, and into which field the readings go.</summary>
/// <param name="Table">The table of the readings.</param>
/// <param name="Mean">The field of their mean.</param>
/// <param name="Stations">Stations in the order in which they are read.</param>
/// <param name="Axes">The two axes.</param>
public sealed record MeasuringPlan(FieldAddress Table, FieldAddress Mean, IReadOnlyList<Station> Stations, IReadOnlyList<string> Axes)
{
    /// <summary>Most rounds that a plan takes.</summary>
    public const int MostRounds = 10;

    // Common practice, no source.
    private const double InFromTheEnd = 0.010;
    private const double UsualWidth = 0.020;
    private static readonly string[] BoreAxes = ["along the crank", "across it"];
    private static readonly string[] JournalAxes = ["in the plane of the throw", "across it"];
    private static readonly string[] HousingAxes = ["45° to one side of the bolts", "45° to the other"];

    /// <summary>The plans of the parts that a build has.</summary>
    /// <param name="now">The values that hold.</param>
    public static IReadOnlyList<MeasuringPlan> All(Snapshot now)
    {
        var view = new View(now);
        return
        [
            .. Checks.Instances.Cylinders(view).Select(i => Bore(view, i)),
            .. BearingFit.Keys(view).Where(i => i.Length > 0).SelectMany(i => new[]
            {
                Ends(view, Bearing.JournalTable, i, JournalAxes),
                Ends(view, Bearing.HousingTable, i, HousingAxes),
            }),
        ];
    }

    /// <summary>
    /// The readings in their order: all places once, then all again. Between two readings of one place the instrument has been
    /// lifted off and set anew, which is what makes them independent.
    /// </summary>
    /// <param name="rounds">How often each place is read.</param>
    /// <exception cref="BadInputException">Less than one round, or more than anybody reads.</exception>
    public IEnumerable<PlannedReading> Readings(int rounds) => rounds is < 1 or > MostRounds
        ? throw new BadInputException($"given {rounds} rounds, wanted 1 to {MostRounds}")
        : from round in Enumerable.Range(1, rounds)
          from station in Stations
          from axis in Axes
          select new PlannedReading(round, station, axis);

    private static MeasuringPlan Bore(View view, string index)
    {
        // Where the rings run: the stroke is about as long as the worn part of the bore.
        var length = Math.Max(view.AmountIf(Crank.Stroke) ?? 0, 3 * InFromTheEnd);
        return Of(Cylinder.BoreTable, index, [new("top", InFromTheEnd), new("middle", Whole(length / 2)), new("bottom", Whole(length - InFromTheEnd))], BoreAxes);
    }

    private static MeasuringPlan Ends(View view, Field table, string index, string[] axes)
    {
        var width = view.AmountIf(Bearing.Width, index) ?? UsualWidth;
        return Of(table, index, [new("one end", Whole(width / 4)), new("other end", Whole(3 * width / 4))], axes);
    }

    private static MeasuringPlan Of(Field table, string index, Station[] stations, string[] axes) => new(new FieldAddress(table, index), new FieldAddress(table.Mean!, index), stations, axes);

    /// <summary>To the whole millimetre: nobody sets a station closer.</summary>
    private static double Whole(double length) => Math.Round(length * 1000) / 1000;
}
