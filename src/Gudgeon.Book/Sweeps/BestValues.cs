using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Sweeps;

/// <summary>A field that was free between bounds.</summary>
/// <param name="Range">The field and its bounds.</param>
/// <param name="Now">Its value in the book; null when the book has none, or other ones for its instances.</param>
/// <param name="Best">The value found.</param>
/// <param name="Bound">The bound at which it stands: -1 the lower, 1 the upper, 0 neither.</param>
/// <param name="Ahead">Whether a reading that does not say under which changes it was taken would go before the value in a change.</param>
public sealed record FreeField(FieldRange Range, KnownValue? Now, KnownValue Best, int Bound, bool Ahead);

/// <summary>A finding that had to hold.</summary>
/// <param name="Before">As the book stands.</param>
/// <param name="After">With the values found.</param>
public sealed record Held(Finding Before, Finding After)
{
    /// <summary>Whether its reserve is another one, more than the settling of a run makes it.</summary>
    public bool Moved => !(Math.Abs(After.Reserve - Before.Reserve) <= 1e-5 * Math.Abs(Before.Reserve));
}

/// <summary>What was found to be best.</summary>
/// <param name="Aim">What it is best for.</param>
/// <param name="Fields">The free fields.</param>
/// <param name="Before">The aim on the book as it stands, SI; NaN when that run does not settle.</param>
/// <param name="After">The aim with the values found, SI.</param>
/// <param name="Held">Findings that had to hold, as the book stands and with the values found, by the least reserve.</param>
/// <param name="Holds">Whether they all do.</param>
/// <param name="Trials">Combinations tried.</param>
/// <param name="Runs">Of them, engine runs that were made.</param>
/// <param name="Unsettled">Of them, runs that did not settle or could not be made.</param>
/// <param name="Closed">Whether the search came to its end; else its trials were used up.</param>
public sealed record BestAnswer(Aim Aim, IReadOnlyList<FreeField> Fields, double Before, double After, IReadOnlyList<Held> Held, bool Holds, int Trials, int Runs, int Unsettled, bool Closed)
{
    /// <summary>Reserves below this are said to be near their limit.</summary>
    public const double NearLimit = 1.05;

    /// <summary>Whether it is better than the book as it stands.</summary>
    public bool IsBetter => Holds && !(After <= Before);

    /// <summary>Held findings near their limit, the least reserve first.</summary>
    public IEnumerable<Held> Near => Held.Where(h => !(h.After.Reserve >= NearLimit) || h.After.Verdict != Verdict.Holds);
}

/// <summary>
/// Values of a few fields between bounds that make power or torque the greatest while checks hold. Every combination is laid over the book as
/// an edit would lay it; the search is <see cref="BoxSearch"/>. One desk makes the runs, so that each starts from the one before.
/// </summary>
/// <param name="book">The build.</param>
/// <param name="free">The fields and their bounds, 1 to 6.</param>
/// <param name="aim">What is to be as great as it can be.</param>
public sealed class BestValues(BuildBook book, IReadOnlyList<FieldRange> free, Aim aim)
{
    private readonly VariedEngine _engine = new(book);
    private readonly DutyDesk _desk = new();
    private HeldChecks? _held;
    private EngineDuty? _near;
    private int _runs;
    private int _unsettled;

    /// <summary>Speeds at which the aim is looked at, rad/s, rising; null for those of every run.</summary>
    public IReadOnlyList<double>? Speeds { get; init; }

    /// <summary>Checks or findings that must hold; "all" for what holds now.</summary>
    public IReadOnlyList<string> Holding { get; init; } = [];

    /// <summary>Told how far it is, 0 to 1; it mostly ends before.</summary>
    public IProgress<double>? Progress { get; init; }

    /// <summary>Stops it between cycles.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <summary>Searches.</summary>
    /// <exception cref="BadInputException">Too many fields, one twice, one that the run does not read, or an engine that cannot be run.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BestAnswer Find()
    {
        Check();
        _desk.Cancellation = Cancellation;
        var now = book.Now();
        Demand.Engine(new View(now, _desk));
        _held = HeldChecks.Of(now, _desk, Holding);
        var heldNow = _held.On(now);
        var before = Value(Laid([]), now);
        var present = free.Select(f => now.Find(f.Address)?.Value).ToList();
        var start = free.Select((f, i) => present[i] is { } value ? f.ShareOf(value.Si) : 0.5).ToArray();
        var search = new BoxSearch(free.Count, Try) { Progress = Progress, Cancellation = Cancellation };
        var found = search.Run(start);
        if (double.IsNaN(found.Best.Value))
        {
            throw new BadInputException($"the engine run settles with none of the {found.Trials} combinations tried between these bounds");
        }

        return Answer(found, heldNow, before, present);
    }

    private BestAnswer Answer(SearchResult found, IReadOnlyList<Finding> heldNow, double before, List<KnownValue?> present)
    {
        var best = Values(found.Best.At);
        var pairs = heldNow.Zip(_held!.On(_engine.Snapshot(Laid(best))), (a, b) => new Held(a, b)).OrderBy(h => h.After.Reserve).ToList();
        var fields = free.Select((f, i) => new FreeField(f, present[i], best[i], BoundAt(found.Best.At[i]), Ahead(f.Address))).ToList();
        return new BestAnswer(aim, fields, before, found.Best.Value, pairs, found.Best.Holds, found.Trials, _runs + _desk.Runs, _unsettled, found.Closed);
    }

    private bool Ahead(FieldAddress address) => book.Measurements.Any(m => m.Under is null && m.Address.WithGroups().Contains(address));

    private static int BoundAt(double share) => share < 2e-3 ? -1 : share > 1 - 2e-3 ? 1 : 0;

    private void Check()
    {
        if (free.Count < 1 || free.Count > BoxSearch.MostDimensions)
        {
            throw new BadInputException($"--let: given {free.Count} fields, wanted 1 to {BoxSearch.MostDimensions}");
        }

        if (free.GroupBy(f => f.Address.Path).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new BadInputException($"--let: {twice.Key} is given twice");
        }

        _engine.DemandRead(Laid(Values([.. free.Select(_ => 0.5)])), Laid(Values(new double[free.Count])), Laid(Values([.. free.Select(_ => 1.0)])));
    }

    private KnownValue[] Values(double[] at) => [.. free.Select((f, i) => f.At(at[i]))];

    private Dictionary<string, KnownValue> Laid(IEnumerable<KnownValue> values) => free.Zip(values).ToDictionary(v => v.First.Address.Path, v => v.Second, StringComparer.Ordinal);

    private Trial Try(double[] at)
    {
        var laid = Laid(Values(at));
        var snapshot = _engine.Snapshot(laid);
        var value = Value(laid, snapshot);
        _unsettled += double.IsNaN(value) ? 1 : 0;
        return double.IsNaN(value) ? new Trial(at, value) : new Trial(at, value, HeldChecks.Margin(_held!.On(snapshot)));
    }

    /// <summary>The aim with these values; NaN when the run does not settle or cannot be made.</summary>
    private double Value(Dictionary<string, KnownValue> laid, Snapshot snapshot)
    {
        if (Speeds is null)
        {
            return new View(snapshot, _desk).Duty() is { } duty ? aim.Of(duty.Points) : double.NaN;
        }

        try
        {
            _runs++;
            var (points, settled) = _engine.Run(laid, Speeds, _near, Cancellation);
            _near = settled ?? _near;
            return aim.Of(points);
        }
        catch (BadInputException)
        {
            return double.NaN;
        }
    }
}
