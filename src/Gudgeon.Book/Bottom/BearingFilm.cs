using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;
using Gudgeon.Simulation.Bearings;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>A bearing of the book in its oil.</summary>
internal static class BearingFilm
{
    /// <summary>The bearing, warm and running; null, and what it lacks noted as missing, when it is not known whole.</summary>
    public static FilmSpec? Spec(View view, string index)
    {
        var oil = EngineOil.Of(view);
        var clearance = WarmBearing.Of(view, index).Clearance(view, index);
        var feed = view.ChoiceOr(Bearing.Feed, BearingFit.IsBigEnd(index) ? OilFeed.Hole : OilFeed.HalfGroove, index);
        var (diameter, width, pressure, temperature) = (BearingFit.Journal(view, index), view.Amount(Bearing.Width, index), view.Amount(Oil.Pressure), view.Amount(Oil.Temperature));
        return oil is not { } known || double.IsNaN(clearance + diameter + width + pressure + temperature) ? null : new FilmSpec
        {
            Diameter = diameter,
            Width = width,
            Clearance = clearance / 2,
            Feed = feed,
            Opening = view.AmountOr(Bearing.Opening, 3e-3, index),
            SupplyPressure = pressure,
            SupplyTemperature = temperature,
            Oil = known,
        };
    }

    /// <summary>
    /// What drives the journal of a bearing over the cycle: its load on the shells, and the oil that turns with the mean of journal and
    /// shell; null when the loads do not reach it.
    /// </summary>
    /// <param name="loads">Loads of the bottom end.</param>
    /// <param name="mains">Keys of the mains along the crank.</param>
    /// <param name="index">The bearing: "main.2", "bigEnd.1".</param>
    public static OrbitCourse? Course(CrankLoads loads, IReadOnlyList<string> mains, string index)
    {
        if (!BearingFit.IsBigEnd(index))
        {
            var at = mains.ToList().IndexOf(index);
            return at < 0 || double.IsNaN(loads.Line.BobWeight) ? null : Turned(loads.Mains[at], _ => 0.5, loads.Angles.Length);
        }

        // What the rod does to the pin is what the film does to the journal; the journal does the opposite to the film.
        var cylinder = BigEnd(loads, index);
        return cylinder is null ? null : Turned(cylinder.BigEnd.Turned(_ => Math.PI), i => (1 + (cylinder.RodSpeed[i] / loads.Speed)) / 2, loads.Angles.Length);
    }

    /// <summary>The cylinder of a big end: "bigEnd.2" is that of the second; null when there is no such cylinder.</summary>
    public static ThrowLoads? BigEnd(CrankLoads loads, string index) =>
        CycleLoads.Throw(loads, index[(index.LastIndexOf('.') + 1)..]);

    /// <summary>The crank turns from y to x of its loads, a journal from x to y of its course: the axes change places.</summary>
    private static OrbitCourse Turned(LoadCourse load, Func<int, double> entrainment, int count) => new(load.Y, load.X, [.. Enumerable.Range(0, count).Select(entrainment)], 4 * Math.PI);
}
