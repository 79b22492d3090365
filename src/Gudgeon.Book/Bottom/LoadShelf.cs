using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>Where loads in the bottom end are kept for one engine run: many checks ask for the same ones, and most nudged values do not touch them.</summary>
internal sealed class LoadShelf
{
    private const int Most = 80;

    private readonly Lock _gate = new();
    private readonly Dictionary<(CrankLine Line, int Point), CrankLoads> _loads = [];

    /// <summary>Loads of a crank at a point of the run: kept, or worked now.</summary>
    public CrankLoads At(CrankLine line, int point, Func<CrankLoads> work)
    {
        lock (_gate)
        {
            if (_loads.TryGetValue((line, point), out var kept))
            {
                return kept;
            }
        }

        var loads = work();
        lock (_gate)
        {
            if (_loads.Count >= Most)
            {
                _loads.Clear();
            }

            return _loads[(line, point)] = loads;
        }
    }
}
