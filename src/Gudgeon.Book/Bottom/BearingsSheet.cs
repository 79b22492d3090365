using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Bearings;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>One bearing as it is built and as it runs at the speed shown. SI; null or NaN where it is not known.</summary>
/// <param name="Bearing">Its key.</param>
/// <param name="Journal">Journal diameter, m.</param>
/// <param name="Housing">Housing bore, m.</param>
/// <param name="Shell">Shell thickness, m.</param>
/// <param name="Clearance">Diametral clearance, cold, m.</param>
/// <param name="Tightest">Least at any station, m; null where only single readings are known.</param>
/// <param name="Loosest">Greatest at any station, m.</param>
/// <param name="Hot">Diametral clearance, running, m.</param>
/// <param name="Least">Least clearance allowed, cold, m.</param>
/// <param name="Greatest">Greatest clearance allowed, cold, m.</param>
/// <param name="Load">Greatest load of the cycle, N.</param>
/// <param name="Film">Thinnest film of the cycle, m.</param>
/// <param name="FilmAt">Where it stands, degrees after firing TDC of cylinder 1.</param>
/// <param name="Pressure">Greatest film pressure of the cycle, Pa.</param>
/// <param name="PressureAt">Where it stands, degrees.</param>
/// <param name="Temperature">Temperature of the oil that leaves, K.</param>
/// <param name="Flow">Oil that goes through, m³/s.</param>
/// <param name="Loss">Power that the film takes, W.</param>
public sealed record BearingRow(
    string Bearing,
    double? Journal,
    double? Housing,
    double? Shell,
    double? Clearance,
    double? Tightest,
    double? Loosest,
    double? Hot,
    double? Least,
    double? Greatest,
    double? Load,
    double? Film,
    double? FilmAt,
    double? Pressure,
    double? PressureAt,
    double? Temperature,
    double? Flow,
    double? Loss);

/// <summary>A bearing run through its loads at one speed, for drawing.</summary>
/// <param name="Bearing">Its key.</param>
/// <param name="State">The bearing over the cycle.</param>
/// <param name="OrbitX">Where the journal stands in the clearance, to the right, in axes of its shells: those of a big end turn with the rod.</param>
/// <param name="OrbitY">The same, up: along the first cylinder, or up the rod.</param>
/// <param name="Load">Load on the shells in the same axes, N.</param>
/// <param name="Order">Degrees after firing TDC of cylinder 1, 0 to 720, rising, each with its place in the cycle.</param>
public sealed record BearingCourse(string Bearing, FilmState State, double[] OrbitX, double[] OrbitY, LoadCourse Load, IReadOnlyList<(double Degrees, int At)> Order);

/// <summary>The bearings of the crank in their oil.</summary>
/// <param name="Rows">Each bearing at the speed shown.</param>
/// <param name="Courses">Those that could be run, at the speed shown.</param>
/// <param name="Speeds">Thinnest film of each bearing that could be run, m, at each speed of the engine run.</param>
/// <param name="Demands">Oil at each speed of the engine run.</param>
/// <param name="Speed">Crank speed shown, rad/s; null when there is none.</param>
/// <param name="Facts">What belongs to all bearings together.</param>
/// <param name="Troubles">What is not known, or cannot be: one sentence each.</param>
public sealed record BearingsSheet(
    IReadOnlyList<BearingRow> Rows,
    IReadOnlyList<BearingCourse> Courses,
    IReadOnlyList<(double Speed, IReadOnlyList<double> Film)> Speeds,
    IReadOnlyList<OilDemand> Demands,
    double? Speed,
    IReadOnlyList<Fact> Facts,
    IReadOnlyList<string> Troubles)
{
    /// <summary>What the films rest on.</summary>
    public const string Remark = "Films by the mobility method with shells of their own length, round and stiff; all of the warmth leaves with the oil, and the film is as warm as the oil that leaves. A bent or tapered journal has less film than is told here.";

    /// <summary>What it is worth minding.</summary>
    public const string Caution = "Prime before the first start: fill the filter, oil every shell and journal, and turn the engine over without plugs until the gauge shows pressure. Keep hands, sleeves and tools out of the primary drive meanwhile. Hot oil burns: let the engine cool before a gauge line or the filter is opened.";

    /// <summary>The sheet of the values that hold.</summary>
    /// <param name="view">With a desk: it takes an engine run.</param>
    /// <param name="at">Crank speed to show, rad/s; the highest of the run when left out.</param>
    public static BearingsSheet Of(View view, double? at = null)
    {
        var loads = view.Try(CycleLoads.All);
        var films = BearingFilms.Of(view, loads);
        var shown = loads.Count == 0 ? null : at is { } speed ? loads.MinBy(l => Math.Abs(l.Speed - speed)) : loads[^1];
        var place = shown is null ? -1 : loads.ToList().IndexOf(shown);
        var courses = shown is null ? [] : films.Drawn(shown, place, CrankAssembly.Mains(view));
        var demands = films.Demands(view);
        return new BearingsSheet(
            [.. BearingFit.Keys(view).Where(k => k.Length > 0).Select(k => Row(view, k, courses.FirstOrDefault(c => c.Bearing == k), shown))],
            courses,
            [.. loads.Select((l, i) => (l.Speed, (IReadOnlyList<double>)[.. films.Bearings.Select(b => b.States[i].Settled ? b.States[i].Least.Film : 0)]))],
            demands,
            shown?.Speed,
            [.. Told(view, courses, place < 0 || demands.Count == 0 ? null : demands[place])],
            films.Troubles);
    }

    private static BearingRow Row(View view, string index, BearingCourse? run, CrankLoads? loads)
    {
        double? Known(Func<View, double> work) => view.Try(v => Drawings.Sketch.Known(() => work(v)));
        var state = run?.State is { Settled: true } settled ? settled : null;
        var stations = view.Try(v => BearingFit.Stations(v, index));
        return new BearingRow(
            index,
            Known(v => BearingFit.Journal(v, index)),
            Known(v => BearingFit.Housing(v, index)),
            view.AmountIf(Bearing.ShellThickness, index),
            Known(v => BearingFit.Clearance(v, index)),
            stations?.Least,
            stations?.Greatest,
            Known(v => WarmBearing.Of(v, index).Clearance(v, index)),
            view.AmountIf(Bearing.ClearanceMin, index),
            view.AmountIf(Bearing.ClearanceMax, index),
            run?.Load.Greatest.Load,
            state?.Least.Film,
            state is null ? null : CyclePlace.Degrees(loads!.Throws[0].Angle[state.Least.At]),
            state?.Peak.Pressure,
            state is null ? null : CyclePlace.Degrees(loads!.Throws[0].Angle[state.Peak.At]),
            state?.Temperature,
            state?.Flow,
            state?.Loss);
    }

    private static IEnumerable<Fact> Told(View view, IReadOnlyList<BearingCourse> courses, OilDemand? demand)
    {
        if (EngineOil.Of(view) is { } oil && view.AmountIf(Oil.Temperature) is { } supply)
        {
            yield return new Fact("oil viscosity where it comes in", oil.ViscosityAt(supply), Dimension.DynamicViscosity, "mPa·s") { Remark = $"at {Oil.Temperature.Print(supply)}, thinned by shear as at 150 °C" };
        }

        foreach (var course in courses.Where(c => c.State.Settled))
        {
            var (spec, mean) = (course.State.Spec, course.Load.Mean);
            yield return new Fact($"{course.Bearing}: Sommerfeld number at the mean load", JournalBearing.Sommerfeld(course.State.Viscosity, course.State.Speed, mean, spec.Diameter, spec.Carrying, spec.Clearance), Dimension.Number, "") { Remark = "of the charts of Raimondi and Boyd" };
            yield return new Fact($"{course.Bearing}: greatest load by projected area", BearingOil.ProjectedLoad(course.Load.Greatest.Load, spec.Diameter, spec.Carrying), Dimension.Pressure, "MPa");
        }

        if (demand is not null)
        {
            var without = BearingFit.Keys(view).Where(k => courses.All(c => c.Bearing != k)).ToList();
            yield return new Fact("oil through the shell bearings", demand.Bearings, Dimension.VolumeFlow, "L/min") { Remark = without.Count == 0 ? "" : $"without {string.Join(", ", without)}: not known yet" };
            yield return new Fact("oil that goes elsewhere", demand.Other, Dimension.VolumeFlow, "L/min");
            yield return new Fact("oil that the pump gives", demand.Pump, Dimension.VolumeFlow, "L/min") { Remark = double.IsNaN(demand.Pump) ? "wants oil.pumpDisplacement and oil.pumpRatio" : "" };
            yield return new Fact("power that the films take", demand.Loss, Dimension.Power, "kW");
        }
    }
}
