using System.Globalization;

namespace Gudgeon.Simulation.Sprint;

/// <summary>Points along the strip where the time is taken, as travel from rest.</summary>
internal sealed class SprintMarks
{
    private const double Foot = 0.3048;
    private const double Trap = 66 * Foot;

    private static readonly (string Name, double Distance)[] Strip =
    [
        ("60 ft", 60 * Foot),
        ("330 ft", 330 * Foot),
        ("1/8 mile", 660 * Foot),
        ("1000 ft", 1000 * Foot),
        ("1/4 mile", 1320 * Foot),
        ("1 km", 1000),
        ("1 mile", 5280 * Foot),
    ];

    private readonly double _rollout;
    private readonly (string Name, double Distance)[] _splits;
    private readonly double[] _times;
    private readonly double[] _speeds;

    public SprintMarks(SprintStrip strip)
    {
        _rollout = strip.Rollout;
        _splits = [.. Strip.Where(split => split.Distance < strip.Finish - 1e-6), Finish(strip.Finish)];
        Travel = [.. _splits.SelectMany(s => Points(s.Distance)).Append(0).Select(d => d + _rollout).Distinct().Order()];
        _times = new double[Travel.Length];
        _speeds = new double[Travel.Length];
        Array.Fill(_times, double.NaN);
        if (_rollout == 0)
        {
            Pass(0, 0, 0);
        }
    }

    /// <summary>Where the time is taken, rising, m from rest; the last is the end of the run.</summary>
    public double[] Travel { get; }

    /// <summary>Time from the first movement until the clock starts, s; NaN when it did not start.</summary>
    public double RolloutTime => _times[0];

    /// <summary>Notes that mark <paramref name="index"/> was passed.</summary>
    public void Pass(int index, double time, double speed) => (_times[index], _speeds[index]) = (time, speed);

    /// <summary>The splits that were passed.</summary>
    public IReadOnlyList<SprintSplit> Splits() =>
        [.. from split in _splits let i = Index(split.Distance) where !double.IsNaN(_times[i]) select Split(split.Name, split.Distance, i)];

    private SprintSplit Split(string name, double distance, int i)
    {
        var trap = HasTrap(distance) ? Trap / (_times[i] - _times[Index(distance - Trap)]) : double.NaN;
        return new SprintSplit(name, distance, _times[i] - RolloutTime, _speeds[i], trap);
    }

    private int Index(double distance) => Array.BinarySearch(Travel, distance + _rollout);

    private static bool HasTrap(double distance) => distance >= 660 * Foot;

    private static IEnumerable<double> Points(double distance) => HasTrap(distance) ? [distance - Trap, distance] : [distance];

    private static (string Name, double Distance) Finish(double distance)
    {
        var known = Array.Find(Strip, split => Math.Abs(split.Distance - distance) <= 1e-6);
        return known.Name is null ? (string.Create(CultureInfo.InvariantCulture, $"{distance:0.##} m"), distance) : known;
    }
}
