using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Bearings;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>A bearing in its oil at one of the speeds where it has it hardest.</summary>
/// <param name="State">The bearing over the cycle.</param>
/// <param name="Course">Its loads, N.</param>
/// <param name="Loads">Loads of the bottom end.</param>
internal sealed record HardFilm(FilmState State, Calc.Bearings.OrbitCourse Course, CrankLoads Loads)
{
    /// <summary>Greatest load over the cycle, N.</summary>
    public double GreatestLoad => Course.X.Zip(Course.Y, (x, y) => Math.Sqrt((x * x) + (y * y))).Max();

    /// <summary>A bearing at the hardest speeds; none, and what is missing noted, when it cannot be run.</summary>
    public static IReadOnlyList<HardFilm> Of(View view, string index)
    {
        var spec = BearingFilm.Spec(view, index);
        var loads = CycleLoads.Hardest(view);
        if (spec is not { } known || loads.Count == 0)
        {
            return [];
        }

        var mains = CrankAssembly.Mains(view);
        List<HardFilm> films = [];
        foreach (var at in loads)
        {
            if (BearingFilm.Course(at, mains, index) is { } course)
            {
                films.Add(new HardFilm(view.Film(known, course, at.Speed), course, at));
            }
        }

        if (films.Count == 0)
        {
            view.Unknown($"the load on {index} (a main wants its place along the crank and crank.bobWeight, a big end is named after its cylinder)");
        }

        return films;
    }
}
