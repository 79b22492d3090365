using Gudgeon.Book.Bottom;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;
using Gudgeon.Simulation.Bearings;

namespace Gudgeon.Bench;

/// <summary>Oil films of bearings: the table of mobilities, one orbit against a plain loop, all bearings of a book.</summary>
internal static class BearingBench
{
    private const int Rounds = 20;

    /// <summary>Makes the table of mobilities afresh.</summary>
    public static void Table(string file) => File.WriteAllText(file, string.Join('\n', FiniteMobility.Make()) + "\n");

    /// <summary>The first big end of Heron at the rev limit: film of one warmth, then the oil's warmth sought.</summary>
    public static void Orbit()
    {
        var (spec, courses) = Heron()[0];
        var (course, speed) = courses[^1];
        var state = FilmRun.Of(spec, course, speed);
        var perRadian = 4 * spec.Clearance * spec.Clearance / (state.Viscosity * spec.Width * spec.Diameter * spec.Diameter * spec.Diameter * speed);
        var slenderness = spec.Width / spec.Diameter;
        var film = new FiniteMobility(slenderness);
        SideBySide.Run(
            FormattableString.Invariant($"one bearing through a cycle of {course.Count} angles until its orbit closes; plain loop comes to {PlainOrbit.March(course.X, course.Y, course.Entrainment, slenderness, perRadian):0.000} of the clearance, film of finite length to {1 - (state.Least.Film / spec.Clearance):0.000}"),
            "ms",
            1e3 / Rounds,
            ("plain loop, short film", () => Repeat(() => PlainOrbit.March(course.X, course.Y, course.Entrainment, slenderness, perRadian))),
            ("the march, the same short film", () => Repeat(() => new OrbitMarch<ShortFilm>(course, new ShortFilm(slenderness), perRadian).UntilClosed(new OrbitPath(course.Count), 8, 1e-5))),
            ("the march, film of finite length", () => Repeat(() => new OrbitMarch<FiniteMobility>(course, film, perRadian).UntilClosed(new OrbitPath(course.Count), 8, 1e-5))),
            ("with the oil's warmth sought, pressures and flows", () => Repeat(() => FilmRun.Of(spec, course, speed))));
    }

    /// <summary>Every bearing of Heron that is known, at every speed of the engine run.</summary>
    public static void Book()
    {
        var all = Heron().SelectMany(b => b.Courses.Select(c => (b.Spec, c.Course, c.Speed))).ToList();
        SideBySide.Run(
            FormattableString.Invariant($"Heron, {all.Count} orbits: its bearings at 14 speeds"),
            "ms",
            1e3,
            ("one core", () => all.ForEach(b => FilmRun.Of(b.Spec, b.Course, b.Speed))),
            ("two cores", () => Parallel.For(0, all.Count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => FilmRun.Of(all[i].Spec, all[i].Course, all[i].Speed))));
    }

    /// <summary>Bearings of Heron, big ends first.</summary>
    private static List<(FilmSpec Spec, List<(OrbitCourse Course, double Speed)> Courses)> Heron()
    {
        var book = BookFile.Open(Path.Combine(AppContext.BaseDirectory, "heron.json")).Book;
        var view = new View(book.Now(), new DutyDesk());
        var (loads, mains) = (CycleLoads.All(view), CrankAssembly.Mains(view));
        return
        [
            .. BearingFit.Keys(view).Order(StringComparer.Ordinal)
                .Select(k => (Spec: BearingFilm.Spec(view, k), Courses: loads.Select(l => (BearingFilm.Course(l, mains, k)!, l.Speed)).ToList()))
                .Where(b => b.Spec is not null)
                .Select(b => (b.Spec!.Value, b.Courses)),
        ];
    }

    private static void Repeat(Action march)
    {
        for (var i = 0; i < Rounds; i++)
        {
            march();
        }
    }

    private readonly struct ShortFilm(double slenderness) : IMobility
    {
        public MobilityVector At(double along, double across) => Mobility.ClosedForm(along, across, slenderness);
    }
}
