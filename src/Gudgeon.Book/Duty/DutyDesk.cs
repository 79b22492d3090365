using System.Collections.Concurrent;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
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

    private readonly Lock _gate = new();
    private readonly ConcurrentDictionary<string, EngineDuty?> _nudged = new(StringComparer.Ordinal);
    private (EngineDuty? Duty, Trace Trace)? _base;

    /// <summary>Told the share of points done, 0 to 1.</summary>
    public IProgress<double>? Progress { get; init; }

    /// <summary>Stops a run between cycles.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <summary>Runs made so far, nudged ones included.</summary>
    public int Runs { get; private set; }

    /// <summary>The duty for a view, and what the run read.</summary>
    internal (EngineDuty? Duty, Trace Trace) Get(View view)
    {
        lock (_gate)
        {
            var (duty, trace) = Base(view.Snapshot);
            var nudges = view.Nudged.Where(n => trace.Reads.Any(r => r.Found?.Source == n.Key)).OrderBy(n => n.Key, StringComparer.Ordinal).ToList();
            if (nudges.Count == 0 || duty is null)
            {
                return (duty, trace);
            }

            var key = string.Join(';', nudges.Select(n => string.Create(CultureInfo.InvariantCulture, $"{n.Key}={n.Value:R}")));
            var nudged = _nudged.GetOrAdd(key, _ => Run(new View(view.Snapshot, null, nudges.ToDictionary(n => n.Key, n => n.Value, StringComparer.Ordinal)), duty));
            return (nudged, trace);
        }
    }

    private (EngineDuty? Duty, Trace Trace) Base(Snapshot snapshot)
    {
        if (_base is { } kept && kept.Trace.HoldsIn(snapshot))
        {
            return kept;
        }

        _nudged.Clear();
        var view = new View(snapshot);
        var duty = Run(view, _base?.Duty);
        _base = (duty, view.Trace);
        return _base.Value;
    }

    private EngineDuty? Run(View view, EngineDuty? near)
    {
        try
        {
            var speeds = RunSpeeds(view);
            return EngineAssembly.Build(view) is { } spec && speeds.Length > 0 ? Run(view, spec, speeds, near) : null;
        }
        catch (EngineSpecException e)
        {
            throw new BadInputException(e.Message);
        }
    }

    private EngineDuty? Run(View view, EngineSpec spec, double[] speeds, EngineDuty? near)
    {
        Runs++;
        var points = EngineRun.Run(spec, speeds, near, Progress, Cancellation);
        var failed = points.Where(p => !p.Converged).Select(p => Engine.RevLimit.Print(p.Speed)).ToList();
        if (failed.Count > 0)
        {
            view.Unknown($"an engine run that settles (it did not at {string.Join(", ", failed)})");
            return null;
        }

        return new EngineDuty(points, spec.Ambient, spec);
    }

    private static double[] RunSpeeds(View view)
    {
        var limit = view.Amount(Engine.RevLimit);
        var from = view.AmountOr(Engine.RunFrom, 3000 * Math.PI / 30);
        return double.IsNaN(limit) ? [] : [.. Enumerable.Range(0, Speeds).Select(i => from + ((limit - from) * i / (Speeds - 1)))];
    }
}
