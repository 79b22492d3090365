using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>A place in a pipe, written "primary 1:0.3m".</summary>
/// <param name="Pipe">Name of the pipe.</param>
/// <param name="Distance">From the end at which the flow comes in, m.</param>
public sealed record PipePlace(string Pipe, double Distance)
{
    /// <summary>Reads a place.</summary>
    /// <param name="option">What it is given for.</param>
    /// <param name="text">PIPE:DISTANCE.</param>
    /// <exception cref="BadInputException">Not a pipe and a distance.</exception>
    public static PipePlace Parse(string option, string text)
    {
        var parts = text.Split(':', StringSplitOptions.TrimEntries);
        return parts.Length == 2 && parts[0].Length > 0
            ? new(parts[0], Amount.Parse(option, parts[1], Dimension.Length, "m").Si)
            : throw new BadInputException($"{option}: given '{text}', wanted a pipe and the distance from the end where the flow comes in, such as \"primary 1:0.3m\"");
    }

    /// <summary>Pressure there.</summary>
    /// <exception cref="BadInputException">No such pipe, or it is shorter.</exception>
    internal TraceCurve Curve(TracedCycle cycle)
    {
        var pipe = Pipes.Find(cycle.Trace, Pipe);
        return Distance >= 0 && Distance <= pipe.Length
            ? new($"pressure in {pipe.Name} at {Figures.Number(Distance)} m", $"{pipe.Name} at {Figures.Number(Distance)} m", TraceQuantity.Port, Math.Max(0, pipe.Cylinder), pipe.At(Distance))
            : throw new BadInputException($"{pipe.Name}: given a place at {Figures.Number(Distance)} m, wanted 0 to {Figures.Number(pipe.Length)} m, which is its length");
    }
}

/// <summary>Finds the pipes of a cycle.</summary>
public static class Pipes
{
    private const string Cylinder = "cylinder ";

    /// <summary>The pipe of this name.</summary>
    /// <exception cref="BadInputException">There is none; the sentence names those that there are.</exception>
    public static PipeTrace Find(CycleTrace trace, string name) => Named(trace, name) ?? throw None(trace, name, InOrder(trace).Select(p => p.Name));

    /// <summary>The pipes as the gas meets them: inlet, then exhaust.</summary>
    public static IEnumerable<PipeTrace> InOrder(CycleTrace trace) => trace.Pipes.OrderBy(p => (p.Intake, p.Cylinder >= 0) switch
    {
        (true, false) => 0,
        (true, true) => 1,
        (false, true) => 2,
        (false, false) => p.Trunk.Length > 0 ? 3 : 4,
    });

    /// <summary>What a wave picture can show: each pipe, and the way through each cylinder.</summary>
    public static IReadOnlyList<string> Ways(CycleTrace trace) =>
        trace.Pipes.Count == 0 ? [] : [.. InOrder(trace).Select(p => p.Name), .. Enumerable.Range(1, trace.Cylinders.Count).Select(c => FormattableString.Invariant($"{Cylinder}{c}"))];

    /// <summary>The pipe of this name alone, or all the pipes that the gas of a cylinder goes through, in its direction.</summary>
    /// <exception cref="BadInputException">There is none; the sentence names those that there are.</exception>
    public static IReadOnlyList<PipeTrace> Way(CycleTrace trace, string name)
    {
        if (Named(trace, name) is { } pipe)
        {
            return [pipe];
        }

        var ways = Ways(trace);
        var at = Enumerable.Range(0, trace.Cylinders.Count).FirstOrDefault(c => ways.Count > 0 && string.Equals(name.Trim(), FormattableString.Invariant($"{Cylinder}{c + 1}"), StringComparison.OrdinalIgnoreCase), -1);
        return at < 0 ? throw None(trace, name, ways) : [.. Airwards(trace, at, intake: true).Reverse(), .. Airwards(trace, at, intake: false)];
    }

    private static IEnumerable<PipeTrace> Airwards(CycleTrace trace, int cylinder, bool intake)
    {
        for (var pipe = trace.Pipes.FirstOrDefault(p => p.Intake == intake && p.Cylinder == cylinder); pipe is not null; pipe = Named(trace, pipe.Trunk))
        {
            yield return pipe;
        }
    }

    private static PipeTrace? Named(CycleTrace trace, string name) => trace.Pipes.FirstOrDefault(p => string.Equals(p.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    private static BadInputException None(CycleTrace trace, string name, IEnumerable<string> names) => new(trace.Pipes.Count == 0
        ? $"there is no pipe '{name}': the lumped model has none; ask for --depth wave"
        : $"there is no pipe '{name}'; there are {string.Join(", ", names)}");
}
