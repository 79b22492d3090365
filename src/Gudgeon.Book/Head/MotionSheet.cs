using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>How one valve moves from low speed to beyond the rev limit.</summary>
/// <param name="Index">"inlet.1.2".</param>
/// <param name="Sweep">Its motions over the cam's speed and where they come apart.</param>
/// <param name="AtLimit">Its motion at the rev limit, with traces.</param>
/// <param name="Rigid">Cam speed at which a rigid train would come apart.</param>
/// <param name="Motion">What the cam asks of it.</param>
/// <param name="Facts">Its numbers, crank speeds.</param>
public sealed record MotionFigures(string Index, TrainSweep Sweep, TrainPoint AtLimit, RigidLiftOff Rigid, CamMotion Motion, IReadOnlyList<Fact> Facts);

/// <summary>What a motion sheet is asked for.</summary>
/// <param name="From">Lowest crank speed, rad/s; half the rev limit when null.</param>
/// <param name="To">Highest, rad/s; a third beyond the rev limit when null.</param>
/// <param name="Points">Speeds between them.</param>
/// <param name="Valve">The valve; of each side the one that a rigid train would lose first when empty.</param>
public sealed record MotionWish(double? From = null, double? To = null, int Points = 33, string Valve = "");

/// <summary>The motion of the valve trains: one valve of each side over the speed range.</summary>
/// <param name="Valves">Valves that could be marched.</param>
/// <param name="Missing">What is wanted for the others, for people.</param>
/// <param name="RevLimit">Rev limit, crank rad/s; NaN when not known.</param>
/// <param name="WithGas">Whether the gas of an engine run acts on the valves.</param>
public sealed record MotionSheet(IReadOnlyList<MotionFigures> Valves, IReadOnlyList<string> Missing, double RevLimit, bool WithGas)
{
    /// <summary>What the model leaves out.</summary>
    public const string Remark = "Lumped masses, straight spring rates, usual stiffnesses where none was measured: lift-off and bounce come out within some 5 to 10 % (common practice, no source). A curve read at the valve says little about the last tenth of lift, and so about how fast the valve meets its seat.";

    /// <summary>The sheet of the values that hold.</summary>
    /// <param name="view">The values, with a desk where the gas of an engine run is to act.</param>
    /// <param name="wish">What is asked for.</param>
    /// <param name="progress">Told the share of speeds done, 0 to 1.</param>
    /// <param name="cancellation">Stops it between turns of a cam.</param>
    /// <exception cref="BadInputException">Values that make no train, or speeds that make no range.</exception>
    public static MotionSheet Of(View view, MotionWish? wish = null, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var asked = wish ?? new MotionWish();
        var limit = view.Amount(Engine.RevLimit);
        var (valves, missing, gas) = (new List<MotionFigures>(), new List<string>(), false);
        foreach (var index in Wanted(view, asked, missing))
        {
            var (spec, motion) = TrainAssembly.Build(view, index)!.Value;
            var options = MotionShelf.Options with { TracePoints = 0, Cancellation = cancellation, Progress = progress };
            gas |= spec.Gas is not null;
            valves.Add(Marched(view, index, spec, motion, Range(asked, limit), limit, options));
        }

        return new MotionSheet(valves, missing, limit, gas);
    }

    /// <summary>One valve of each side that can be marched; what the others lack is noted.</summary>
    private static List<string> Wanted(View view, MotionWish asked, List<string> missing)
    {
        var wanted = new List<string>();
        foreach (var side in Checks.Instances.Valves(view, Spring.InstalledHeight.Subject, Valve.Lift.Subject).GroupBy(i => i.Split('.')[0]))
        {
            var valves = side.Where(i => asked.Valve.Length == 0 || i == asked.Valve).ToList();
            var rigid = valves.ToDictionary(i => i, i => view.Try(v => TrainAssembly.Build(v, i)) is { Item1: var spec } ? RigidTrain.LiftOff(spec).Speed : double.NaN, StringComparer.Ordinal);
            if (valves.Find(i => double.IsNaN(rigid[i])) is { } lacking)
            {
                var trial = new View(view.Snapshot);
                TrainAssembly.Build(trial, lacking);
                missing.Add($"{lacking}: not known yet: {string.Join(", ", trial.Trace.Missing)}");
            }

            wanted.AddRange(valves.Where(i => !double.IsNaN(rigid[i])).OrderBy(i => rigid[i]).Take(1));
        }

        return wanted.Count > 0 || missing.Count > 0 || asked.Valve.Length == 0 ? wanted : throw new BadInputException($"there is no valve '{asked.Valve}'; wanted one such as inlet.1.2, or inlet where the valves of a side are alike");
    }

    private static SpeedRange Range(MotionWish asked, double limit)
    {
        var (from, to) = (asked.From ?? (0.5 * limit), asked.To ?? (limit * 4 / 3));
        if (double.IsNaN(from + to))
        {
            throw new BadInputException($"{Engine.RevLimit.Path} is not known; give the speeds");
        }

        return from > 0 && to > from ? new SpeedRange(from / 2, to / 2, asked.Points) : throw new BadInputException($"speeds from {Engine.RevLimit.Print(from)} to {Engine.RevLimit.Print(to)} given, wanted them to rise from above zero");
    }

    private static MotionFigures Marched(View view, string index, TrainSpec spec, CamMotion motion, SpeedRange range, double limit, TrainOptions options)
    {
        try
        {
            var model = new TrainModel(spec);
            var sweep = TrainSweep.Over(model, range, options);
            var at = model.At((double.IsNaN(limit) ? range.To * 2 : limit) / 2, options with { TracePoints = MotionShelf.Options.TracePoints, Progress = null });
            var rigid = RigidTrain.LiftOff(spec);
            return new MotionFigures(index, sweep, at, rigid, motion, [.. MotionFacts.Of(view, index, sweep, at, rigid, motion, limit)]);
        }
        catch (TrainSpecException e)
        {
            throw new BadInputException($"{index}: {e.Message}");
        }
    }
}
