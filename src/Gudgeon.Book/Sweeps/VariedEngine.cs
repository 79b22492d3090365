using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Sweeps;

/// <summary>The engine of a book with values laid over it as an edit would lay them.</summary>
/// <param name="book">The build.</param>
internal sealed class VariedEngine(BuildBook book)
{
    private EngineModel? _like;

    /// <summary>The values that hold with others laid over them.</summary>
    /// <param name="laid">The values, by path.</param>
    public Snapshot Snapshot(IReadOnlyDictionary<string, KnownValue> laid) => book.Supposing(laid).Now();

    /// <summary>Refuses fields that the run of the engine never looks at: varying them would show nothing.</summary>
    /// <param name="tried">Values of them, by path; more than one lot, for the engine may not go together with some.</param>
    /// <exception cref="BadInputException">The run does not read one of the fields.</exception>
    public void DemandRead(params IEnumerable<IReadOnlyDictionary<string, KnownValue>> tried)
    {
        foreach (var laid in tried)
        {
            if (Reads(laid) is { } reads)
            {
                var unread = laid.FirstOrDefault(l => !reads.Any(r => ReferenceEquals(r.Found?.Value, l.Value))).Key;
                if (unread is not null)
                {
                    throw new BadInputException($"{unread}: the run does not read it, so varying it changes nothing");
                }

                return;
            }
        }
    }

    /// <summary>Runs the engine at some speeds, from a run of nearly the same engine.</summary>
    /// <param name="laid">The values laid over the book, by path.</param>
    /// <param name="speeds">Crank speeds, rad/s.</param>
    /// <param name="near">Where to start from; null to start cold.</param>
    /// <param name="stop">Stops it between cycles.</param>
    /// <returns>A point for each speed, and those that settled to start the next from; null when none did.</returns>
    /// <exception cref="BadInputException">The engine cannot be run with these values.</exception>
    public (IReadOnlyList<OperatingPoint> Points, EngineDuty? Settled) Run(IReadOnlyDictionary<string, KnownValue> laid, IReadOnlyList<double> speeds, EngineDuty? near, CancellationToken stop) => WhatIf.Told(() =>
    {
        var spec = Assemble(laid).Spec;
        var model = new EngineModel(spec, _like);
        _like = model;
        var points = EngineRun.Run(model, speeds, near, cancellation: stop).Select(p => p.Converged || near is null ? p : Afresh(model, p.Speed, stop)).ToList();
        var settled = points.Where(p => p.Converged).OrderBy(p => p.Speed).ToList();
        return ((IReadOnlyList<OperatingPoint>)points, settled.Count > 0 ? new EngineDuty(settled, spec.Ambient, spec) : null);
    });

    /// <summary>A start from a neighbour may lead astray where one from nothing does not.</summary>
    private static OperatingPoint Afresh(EngineModel model, double speed, CancellationToken stop) => model.RunPoint(speed, new RunOptions { Speeds = [speed], Cancellation = stop });

    private IReadOnlyCollection<Read>? Reads(IReadOnlyDictionary<string, KnownValue> laid)
    {
        try
        {
            return Assemble(laid).Trace.Reads;
        }
        catch (BadInputException)
        {
            return null;
        }
    }

    private (EngineSpec Spec, Trace Trace) Assemble(IReadOnlyDictionary<string, KnownValue> laid) => WhatIf.Told(() =>
    {
        var view = new View(Snapshot(laid));
        return (EngineAssembly.Build(view, Depths.Of(view)) ?? throw Wanted.Refusal("the engine cannot be run", view.Trace), view.Trace);
    });
}
