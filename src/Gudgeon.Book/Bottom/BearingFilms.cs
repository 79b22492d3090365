using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Bearings;
using Gudgeon.Simulation.Bearings;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>Every bearing at every speed of the engine run.</summary>
/// <param name="Bearings">Those that could be run, each with its state at each speed.</param>
/// <param name="Troubles">Why the others could not: one sentence each.</param>
internal sealed record BearingFilms(IReadOnlyList<(string Key, IReadOnlyList<FilmState> States)> Bearings, IReadOnlyList<string> Troubles)
{
    /// <summary>Runs the bearings of a book, on all cores.</summary>
    public static BearingFilms Of(View view, IReadOnlyList<CrankLoads> loads)
    {
        var troubles = new List<string>();
        if (loads.Count == 0)
        {
            troubles.Add("The loads of the bottom end are not known yet, so no film can be run: see the sheet of the loads.");
        }

        var mains = CrankAssembly.Mains(view);
        var runs = new List<(string Key, IReadOnlyList<FilmState> States)>();
        foreach (var key in BearingFit.Keys(view).Where(k => k.Length > 0 && loads.Count > 0))
        {
            var probe = new View(view.Snapshot);
            var spec = BearingFilm.Spec(probe, key);
            var courses = loads.Select(l => BearingFilm.Course(l, mains, key)).OfType<OrbitCourse>().ToList();
            if (spec is not { } known)
            {
                troubles.Add($"{key}: its film is not known yet; wanted {Checks.Wanted.Words([.. probe.Trace.Missing])}.");
            }
            else if (courses.Count < loads.Count)
            {
                troubles.Add($"{key}: its load is not known; a main wants {Bearing.Position.Path} and {Crank.BobWeight.Path}, a big end is named after its cylinder.");
            }
            else
            {
                Run(view, key, known, courses, loads, runs, troubles);
            }
        }

        return new BearingFilms(runs, troubles);
    }

    /// <summary>A bearing as it is drawn: in axes of its shells.</summary>
    /// <param name="key">The bearing.</param>
    /// <param name="state">The bearing over the cycle.</param>
    /// <param name="loads">Loads of the bottom end.</param>
    /// <param name="course">Loads on its journal.</param>
    private static BearingCourse Drawn(string key, FilmState state, CrankLoads loads, OrbitCourse course)
    {
        // In the course the axes have changed places, for the crank turns from x to y there.
        var (orbit, load) = (new LoadCourse(state.Path.Y, state.Path.X), new LoadCourse(course.Y, course.X));
        if (BearingFit.IsBigEnd(key) && BearingFilm.BigEnd(loads, key) is { } cylinder)
        {
            double Turn(int i) => cylinder.Throw.Bank - cylinder.RodAngle[i];
            (orbit, load) = (orbit.Turned(Turn), load.Turned(Turn));
        }

        return new BearingCourse(key, state, orbit.X, orbit.Y, load, LoadsSheet.AfterFiring(loads.Throws[0]));
    }

    /// <summary>The bearings at one of the speeds as they are drawn.</summary>
    public IReadOnlyList<BearingCourse> Drawn(CrankLoads loads, int at, IReadOnlyList<string> mains) =>
        [.. Bearings.Select(b => Drawn(b.Key, b.States[at], loads, BearingFilm.Course(loads, mains, b.Key)!))];

    /// <summary>Oil at each speed.</summary>
    public IReadOnlyList<OilDemand> Demands(View view)
    {
        if (Bearings.Count == 0)
        {
            return [];
        }

        var (displacement, ratio) = (view.AmountIf(Oil.Displacement) ?? double.NaN, view.AmountIf(Oil.Ratio) ?? double.NaN);
        var (efficiency, other) = (view.AmountOr(Oil.Efficiency, OilDemand.UsualEfficiency), view.AmountOr(Oil.OtherFlow, 0));
        return [.. Enumerable.Range(0, Bearings[0].States.Count).Select(i =>
        {
            var speed = Bearings[0].States[i].Speed;
            var pump = double.IsNaN(displacement + ratio) ? double.NaN : BearingOil.PumpDelivery(displacement, ratio, speed, efficiency);
            return new OilDemand(speed, Bearings.Sum(b => b.States[i].Flow), other, pump, Bearings.Sum(b => b.States[i].Loss));
        })];
    }

    private static void Run(View view, string key, FilmSpec spec, List<OrbitCourse> courses, IReadOnlyList<CrankLoads> loads, List<(string Key, IReadOnlyList<FilmState> States)> runs, List<string> troubles)
    {
        try
        {
            var states = new FilmState[courses.Count];
            states[0] = view.Film(spec, courses[0], loads[0].Speed);
            Parallel.For(1, states.Length, i => states[i] = view.Film(spec, courses[i], loads[i].Speed));
            runs.Add((key, states));
            troubles.AddRange(states.Where(s => !s.Settled).Take(1).Select(s => s.Path.Touches
                ? $"{key}: no film is left at {Engine.RevLimit.Print(s.Speed)}: the journal touches its shells."
                : $"{key}: its oil gets ever hotter at {Engine.RevLimit.Print(s.Speed)}: the flow cannot take the warmth along."));
        }
        catch (BadInputException e)
        {
            troubles.Add($"{key}: {e.Message}");
        }
    }
}
