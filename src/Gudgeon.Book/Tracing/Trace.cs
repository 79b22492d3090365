using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Tracing;

/// <summary>One field read: what was asked for and what was found.</summary>
/// <param name="Address">What was asked for.</param>
/// <param name="Found">What was found; null when nothing is known.</param>
/// <param name="Fallback">What was used when nothing is known; null when that makes the field missing.</param>
public sealed record Read(FieldAddress Address, Found? Found, string? Fallback)
{
    /// <summary>Whether the value is needed and not known.</summary>
    public bool IsMissing => Found is null && Fallback is null;

    /// <summary>"94.01 mm (measured with bore gauge by Ada)", "not known yet".</summary>
    public string Words => this switch
    {
        { IsMissing: true } => "not known yet",
        { Found: null } => $"{Fallback} (customary, nothing known)",
        _ => $"{Found.Value.Content} ({How}){(Found.Source != Address.Path ? $" from {Found.Source}" : "")}",
    };

    /// <summary>How what was found is known: "change forged-pistons, drawing".</summary>
    public string How => Found is null ? "" : $"{(Found.Under.Length > 0 ? $"change {Found.Under}, " : "")}{Found.Value.Story}";
}

/// <summary>One formula worked, with its numbers.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Arguments">SI arguments.</param>
/// <param name="Results">SI results.</param>
public sealed record Step(Formula Formula, IReadOnlyList<object> Arguments, IReadOnlyList<double> Results);

/// <summary>
/// What a computation read and which formulas it worked. The reads are the dependency graph: nobody writes dependencies
/// down by hand.
/// </summary>
public sealed class Trace
{
    private readonly Dictionary<string, Read> _reads = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string?> _limits = new(StringComparer.Ordinal);
    private readonly List<(Subject Subject, IReadOnlyList<string> Indices)> _indices = [];
    private readonly List<Step> _steps = [];
    private readonly List<string> _unknown = [];
    private readonly List<string> _refused = [];
    private readonly HashSet<string> _dutySources = new(StringComparer.Ordinal);
    private readonly HashSet<string> _throughDuty = new(StringComparer.Ordinal);
    private readonly HashSet<string> _unmoved = new(StringComparer.Ordinal);

    /// <summary>Fields read, each once.</summary>
    public IReadOnlyCollection<Read> Reads => _reads.Values;

    /// <summary>Fields read by the computation itself, not by the engine run that it asked for.</summary>
    public IEnumerable<Read> Direct => _reads.Values.Where(r => !_throughDuty.Contains(r.Address.Path));

    /// <summary>Fields that only the engine run read.</summary>
    public IEnumerable<Read> ThroughDuty => _reads.Values.Where(r => _throughDuty.Contains(r.Address.Path));

    /// <summary>Names of the limits asked for.</summary>
    public IReadOnlyCollection<string> Limits => _limits.Keys;

    /// <summary>Formulas worked, in order.</summary>
    public IReadOnlyList<Step> Steps => _steps;

    /// <summary>What is needed and not known: paths of fields, names of limits, and why a run gave no figures.</summary>
    public IEnumerable<string> Missing => _reads.Values.Where(r => r.IsMissing).Select(r => r.Address.Path).Concat(_unknown).Distinct(StringComparer.Ordinal);

    /// <summary>Why what was given cannot be worked with, each once: sentences of formulas, words that are none of the known ones.</summary>
    public IReadOnlyList<string> Refused => _refused;

    /// <summary>Sources read that carry an uncertainty, by the path under which they are written; not those of a run that nudges do not move.</summary>
    public IEnumerable<Found> Uncertain => _reads.Values.Where(r => !_unmoved.Contains(r.Address.Path)).Select(r => r.Found).OfType<Found>().Where(f => f.Value.StandardUncertainty > 0).DistinctBy(f => f.Source);

    /// <summary>Sources that the engine run read, when it was asked for.</summary>
    public IReadOnlySet<string> DutySources => _dutySources;

    internal void Add(Read read)
    {
        Keep(read);
        _throughDuty.Remove(read.Address.Path);
        _unmoved.Remove(read.Address.Path);
    }

    internal void AddLimit(string name, string? text) => _limits.TryAdd(name, text);

    internal void AddIndices(Subject subject, IReadOnlyList<string> indices) => _indices.Add((subject, indices));

    /// <summary>Adds a step; the same formula with the same numbers is shown once.</summary>
    internal void AddStep(Step step)
    {
        if (!_steps.Exists(s => s.Formula == step.Formula && s.Arguments.SequenceEqual(step.Arguments)))
        {
            _steps.Add(step);
        }
    }

    internal void AddUnknown(string what) => _unknown.Add(what);

    internal void AddRefused(string sentence)
    {
        if (!_refused.Contains(sentence))
        {
            _refused.Add(sentence);
        }
    }

    /// <summary>Takes in what something read that is done without where it cannot be had: nothing of it is missing.</summary>
    internal void AddTrial(Trace trial)
    {
        foreach (var read in trial.Reads.Select(Optional))
        {
            var (first, path) = (Keep(read), read.Address.Path);
            if (first && trial._throughDuty.Contains(path))
            {
                _throughDuty.Add(path);
            }

            if (!trial._unmoved.Contains(path))
            {
                _unmoved.Remove(path);
            }
            else if (first)
            {
                _unmoved.Add(path);
            }
        }

        _dutySources.UnionWith(trial._dutySources);
        _indices.AddRange(trial._indices);
        foreach (var (name, text) in trial._limits)
        {
            AddLimit(name, text);
        }
    }

    private static Read Optional(Read read) => read with { Fallback = read.Fallback ?? "none" };

    /// <summary>Takes in what the engine run read.</summary>
    /// <param name="duty">Its trace.</param>
    /// <param name="wanted">Whether something is missing where the run lacks it; else it is done without.</param>
    /// <param name="moved">Whether nudged values move it.</param>
    internal void AddDuty(Trace duty, bool wanted = true, bool moved = true)
    {
        foreach (var read in duty.Reads.Select(r => wanted ? r : Optional(r)))
        {
            var (first, path) = (Keep(read), read.Address.Path);
            if (first)
            {
                _throughDuty.Add(path);
            }

            if (moved)
            {
                _unmoved.Remove(path);
            }
            else if (first)
            {
                _unmoved.Add(path);
            }

            if (read.Found is { } found)
            {
                _dutySources.Add(found.Source);
            }
        }

        _indices.AddRange(duty._indices);
        _unknown.AddRange(wanted ? duty._unknown : []);
    }

    /// <summary>Keeps a read and says whether it is the first of its field. What is needed outlasts what was asked for with a fallback.</summary>
    private bool Keep(Read read)
    {
        var first = _reads.TryAdd(read.Address.Path, read);
        if (!first && read.IsMissing)
        {
            _reads[read.Address.Path] = read;
        }

        return first;
    }

    /// <summary>Whether everything that was read reads the same in another snapshot.</summary>
    public bool HoldsIn(Snapshot snapshot) =>
        _reads.Values.All(r => Same(r.Found, snapshot.Find(r.Address)))
        && _limits.All(l => snapshot.Limits.GetValueOrDefault(l.Key)?.Text == l.Value)
        && _indices.TrueForAll(i => snapshot.Indices(i.Subject).SequenceEqual(i.Indices));

    private static bool Same(Found? a, Found? b) => ReferenceEquals(a, b) || (a is not null && b is not null && a.Source == b.Source && a.Value.Equals(b.Value));
}
