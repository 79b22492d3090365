using Gudgeon.Calc.Bearings;
using Gudgeon.Simulation.Bearings;

namespace Gudgeon.Book.Bottom;

/// <summary>Where bearings that were run through their loads are kept: several checks ask for the same one, and most nudged values do not touch it.</summary>
public sealed class FilmShelf
{
    private const int Most = 1000;

    private readonly Lock _gate = new();
    private readonly Dictionary<(FilmSpec Spec, double Speed, ulong Loads), FilmState> _states = [];

    /// <summary>Bearings run so far.</summary>
    public int Marched { get; private set; }

    /// <summary>A bearing at a speed: kept, or run now.</summary>
    internal FilmState At(in FilmSpec spec, OrbitCourse course, double speed)
    {
        var key = (spec, speed, Print(course));
        lock (_gate)
        {
            if (_states.TryGetValue(key, out var kept))
            {
                return kept;
            }
        }

        var state = FilmRun.Of(spec, course, speed);
        lock (_gate)
        {
            if (_states.Count >= Most)
            {
                _states.Clear();
            }

            Marched++;
            return _states[key] = state;
        }
    }

    /// <summary>A fingerprint of every number of the loads, by Fowler, Noll and Vo's sum on whole numbers.</summary>
    private static ulong Print(OrbitCourse course)
    {
        var sum = 14695981039346656037UL;
        foreach (var numbers in (ReadOnlySpan<double[]>)[course.X, course.Y, course.Entrainment])
        {
            foreach (var number in numbers)
            {
                sum = (sum ^ BitConverter.DoubleToUInt64Bits(number)) * 1099511628211UL;
            }
        }

        return sum;
    }
}
