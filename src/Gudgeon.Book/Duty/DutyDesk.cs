using System.Collections.Concurrent;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>
/// Where engine runs are made and kept: a run is made again only when a value that it read has changed. Runs with nudged
/// values start from the run that they are nudged from.
/// </summary>
public sealed class DutyDesk
{
    /// <summary>Speeds of a run.</summary>
    public const int Speeds = 14;

    private const int Kept = 6;

    private readonly Lock _gate = new();
    private readonly List<Run> _runs = [];
    private int _made;

    /// <summary>Told the share of points done, 0 to 1.</summary>
    public IProgress<double>? Progress { get; set; }

    /// <summary>Stops a run between cycles.</summary>
    public CancellationToken Cancellation { get; set; }

    /// <summary>Where runs by the wave model are kept; null for nowhere but here.</summary>
    public IDutyShelf? Shelf { get; set; }

    /// <summary>Where motions of valve trains are kept.</summary>
    public Head.MotionShelf Motions { get; } = new();

    /// <summary>Where bearings that were run through their loads are kept.</summary>
    public Bottom.FilmShelf Films { get; } = new();

    /// <summary>Runs made so far, nudged ones included.</summary>
    public int Runs => _made;

    /// <summary>The duty for a view, and what the run read.</summary>
    internal (EngineDuty? Duty, Trace Trace) Get(View view)
    {
        Run run;
        lock (_gate)
        {
            run = Base(view.Snapshot);
        }

        var nudges = view.Nudged.Where(n => run.Trace.Reads.Any(r => r.Found?.Source == n.Key)).OrderBy(n => n.Key, StringComparer.Ordinal).ToList();
        if (nudges.Count == 0 || run.Duty is not { } duty)
        {
            return (run.Duty, run.Trace);
        }

        var speeds = view.Slightly ? duty.TellingSpeeds : null;
        var key = (view.Slightly ? "~" : "") + string.Join(';', nudges.Select(n => string.Create(CultureInfo.InvariantCulture, $"{n.Key}={n.Value:R}")));
        var nudged = run.Nudged.GetOrAdd(key, _ => new(() => RunOf(new View(view.Snapshot, null, nudges.ToDictionary(n => n.Key, n => n.Value, StringComparer.Ordinal)), duty, speeds)));
        try
        {
            return (nudged.Value, run.Trace);
        }
        catch (OperationCanceledException)
        {
            // A run that was stopped is made when it is next asked for: the answer of a stopped one would be kept for good.
            run.Nudged.TryRemove(key, out _);
            throw;
        }
    }

    /// <summary>The run of a snapshot: one kept whose reads all hold, else a new one started from the last.</summary>
    private Run Base(Snapshot snapshot)
    {
        if (_runs.Find(r => r.Trace.HoldsIn(snapshot)) is { } kept)
        {
            return kept;
        }

        var view = new View(snapshot);
        var run = new Run(RunOf(view, _runs.LastOrDefault(r => r.Duty is not null)?.Duty), view.Trace);
        _runs.Add(run);
        if (_runs.Count > Kept)
        {
            _runs.RemoveAt(0);
        }

        return run;
    }

    private EngineDuty? RunOf(View view, EngineDuty? near, IReadOnlyList<double>? only = null)
    {
        try
        {
            var speeds = only ?? RunSpeeds(view);
            return EngineAssembly.Build(view, Depths.Of(view)) is { } spec && speeds.Count > 0 ? RunAt(view, spec, speeds, near) : null;
        }
        catch (Exception e) when (e is EngineSpecException or BadInputException or FormulaDomainException or OutOfRangeException)
        {
            // Noted here, where everything that was read is on the trace, so that putting it right is noticed.
            view.Unknown(e is OutOfRangeException range ? Rows.FormulaCall.Sentence(range) : e.Message);
            return null;
        }
    }

    private EngineDuty? RunAt(View view, EngineSpec spec, IReadOnlyList<double> speeds, EngineDuty? near)
    {
        var shelf = spec.Pipework is null ? null : Shelf;
        var reads = shelf is null ? [] : KeptDuty.Read(view);
        var key = shelf is null ? "" : KeptDuty.Key(reads, speeds);
        if (KeptDuty.Parse(shelf?.Find(key)) is { } kept)
        {
            return kept.Of(spec);
        }

        Interlocked.Increment(ref _made);
        var points = EngineRun.Run(spec, speeds, near, Progress, Cancellation);
        var failed = points.Where(p => !p.Converged).Select(p => Engine.RevLimit.Print(p.Speed)).ToList();
        if (failed.Count > 0)
        {
            view.Unknown($"an engine run that settles (it did not at {string.Join(", ", failed)})");
            return null;
        }

        shelf?.Keep(key, view.Nudged.Count > 0, KeptDuty.Write(reads, points));
        return new EngineDuty(points, spec.Ambient, spec);
    }

    private static IReadOnlyList<double> RunSpeeds(View view)
    {
        var limit = view.Amount(Engine.RevLimit);
        var from = view.AmountOr(Engine.RunFrom, 3000 * Math.PI / 30);
        if (from >= limit)
        {
            view.Unknown($"a run that starts below the rev limit ({Engine.RunFrom.Path} is {Engine.RunFrom.Print(from)}, the limit {Engine.RevLimit.Print(limit)})");
            return [];
        }

        return double.IsNaN(limit) ? [] : [.. Enumerable.Range(0, Speeds).Select(i => from + ((limit - from) * i / (Speeds - 1)))];
    }

    /// <summary>A run, what it read, and the runs nudged from it.</summary>
    private sealed record Run(EngineDuty? Duty, Trace Trace)
    {
        public ConcurrentDictionary<string, Lazy<EngineDuty?>> Nudged { get; } = new(StringComparer.Ordinal);
    }
}
