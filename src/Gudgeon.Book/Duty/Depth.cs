using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>How deep the engine model goes.</summary>
public enum Depth
{
    /// <summary>Volumes and restrictions: quick, and blind to the lengths of pipes.</summary>
    Lumped,

    /// <summary>Waves that run along the pipes.</summary>
    Wave,
}

/// <summary>Words for the depths.</summary>
public static class Depths
{
    /// <summary>"lumped", "wave".</summary>
    public static string Word(this Depth depth) => EnumWords.Of(depth.ToString());

    /// <summary>"from the wave model": what stands beside figures.</summary>
    public static string From(this Depth depth) => $"from the {depth.Word()} model";

    /// <summary>"Engine figures from the wave model.": what stands below findings.</summary>
    public static string Sentence(this Depth depth) => $"Engine figures {depth.From()}.";

    /// <summary>The depth that findings came from; null when none of them asked for the engine.</summary>
    public static Depth? Of(IEnumerable<Finding> findings) => findings.FirstOrDefault(f => f.Trace.DutySources.Count > 0) is { } finding ? Of(finding.Trace) : null;

    /// <summary>The depth at which an engine is run: by waves where it has pipes.</summary>
    public static Depth Of(EngineSpec spec) => spec.Pipework is null ? Depth.Lumped : Depth.Wave;

    /// <summary>The depth that a book's figures and checks come from.</summary>
    public static Depth Of(View view) => Named(view.WordOr(Engine.Depth, Depth.Lumped.Word()));

    /// <summary>The depth at which a computation asked for the engine.</summary>
    /// <param name="trace">What it read.</param>
    public static Depth Of(Trace trace) => Named(trace.Reads.FirstOrDefault(r => r.Address.Field == Engine.Depth)?.Found?.Value.Content as string);

    /// <summary>The depth of this word; lumped when there is none.</summary>
    public static Depth Named(string? word) => Array.Find(Enum.GetValues<Depth>(), d => d.Word() == word);
}
